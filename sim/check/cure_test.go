package check

import (
	"math"
	"testing"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// tilted is somebody of 75 kg on a light piece of one arc of 1 m, drawn as a chain of arcs: the seat moves them along
// the floor, so the piece rests at atan(X/(R − Y)), X the part of the weight that is behind.
func tilted(behind float64, units quantity.System) piece.Design {
	return piece.Design{
		Units:  units,
		Rocker: piece.Rocker{Nose: 0.45, Arcs: []piece.Arc{{Radius: 1, Length: 0.95}}},
		Seat:   piece.Seat{Rear: 0.4, Behind: behind},
		Parts:  []piece.Part{{Shape: piece.Point, Mass: 5, At: vec(0, 0.3)}},
		Sitters: []piece.Sitter{{
			Name: "owner", Mass: 75, Placed: piece.Place{Ahead: 0.2, Above: 0.2},
		}},
		Limits: piece.Limits{RestTilt: 5 * quantity.Deg},
	}
}

// TestCureIsTheNearest: what rests too far over is cured by the first whole half inch, or centimetre, of the seat
// forward or back after which it does not, by the closed form of one arc; what is told that it then gets is that.
func TestCureIsTheNearest(t *testing.T) {
	rest := func(behind float64) float64 {
		return math.Atan2(75*(behind-0.2)/80, 1-(75*0.6+5*0.3)/80)
	}
	for _, tt := range []struct {
		units quantity.System
		step  float64
	}{{quantity.Inch, quantity.In / 2}, {quantity.Metric, 0.010}} {
		for _, way := range []float64{1, -1} { // too far back, too far forward
			drawn := 0.2 + way*0.070
			drawn = tt.step * math.Round(drawn/tt.step)
			r := checked(t, tilted(drawn, tt.units))
			want := drawn
			for math.Abs(rest(want)) >= 5.25*quantity.Deg { // which reads as 5 1/2
				want -= way * tt.step
			}
			if r.Cause != RestsTilted || r.Try == nil || r.Try.Key != "seat.behind_low_point" || !near(r.Try.Value, want, 1e-9) ||
				!near(r.Try.Got, math.Abs(rest(want)), 1e-9) || r.Try.Limit.Holds || !near(r.Try.Limit.Got, math.Abs(rest(drawn)), 1e-9) {
				t.Errorf("%v, behind by %v: cause %v, %+v; want %v", tt.units, drawn, r.Cause, r.Try, want)
			}
			if key := r.LookAt(r.Try.Limit); key != "seat.behind_low_point" {
				t.Errorf("the first to look at is %q", key)
			}
		}
	}
	for key, arcs := range map[string][]piece.Arc{
		"rocker.arcs.3.flat":   {{Radius: 1, Length: 0.4}, {Radius: 2, Length: 0.4}, {Flat: 0.1}},
		"rocker.arcs.2.length": {{Flat: 0.1}, {Radius: 1, Length: 0.4}, {Turn: 0.1}},
	} {
		if got := lastArc(piece.Design{Rocker: piece.Rocker{Arcs: arcs}}); got != key {
			t.Errorf("the tail of %+v ends by %s, want %s", arcs, got, key)
		}
	}
}

// TestShares: a limit that gets just what it wants has a share of one, half of what is wanted a half, and of what may
// be at most so much twice as much nothing; so the worst is the one with the least.
func TestShares(t *testing.T) {
	least, most := Limit{Name: "back_margin", Want: 10}, Limit{Name: "rest_tilt", Want: 10, AtMost: true}
	for _, tt := range []struct{ got, least, most float64 }{{10, 1, 1}, {5, 0.5, 1.5}, {20, 2, 0}, {0, 0, 2}} {
		least.Got, most.Got = tt.got, tt.got
		if a, b := least.Share(), most.Share(); a != tt.least || b != tt.most {
			t.Errorf("of 10 wanted %v: %v, of 10 at most %v", tt.got, a, b)
		}
	}
	d := sized()
	d.Limits.ForwardMargin = 0 // nothing is asked there, so it is looked at
	r, err := Check(d)
	if err != nil || len(r.Look) != 1 {
		t.Fatal(err, r.Look)
	}
	// who is perched is looked at ahead: a bevel's whole degrees, less than is asked of who lies back
	if l := r.Look[0]; l.Holds != (l.Got >= l.Want) || !multiple(l.Want, quantity.Deg) || l.Want < quantity.Deg ||
		l.Want >= 15*quantity.Deg {
		t.Errorf("worth a look: %+v", l)
	}
	least.Got, most.Got = 8, 11
	if worst := worstOf([]Limit{most, least}); worst != 1 { // 0.8 beside 0.9
		t.Errorf("the worst is %d", worst)
	}
}

// TestFurthest scans what is well by hand: the end is that of the first stretch from the middle on, to a thousandth of
// a cell, on either side; where all is well it is where the looking ends.
func TestFurthest(t *testing.T) {
	for _, to := range []float64{180, 40} {
		for _, end := range []float64{0.03, 0.2, 0.51, 0.77, 0.999} { // of the way
			well := func(x float64) bool {
				way := (x - 80) / (to - 80)
				return way <= end || way > end+1.0/6 && way < end+1.0/3 // two cells further it is well again
			}
			if got, want := furthest(well, 80, to), 80+end*(to-80); math.Abs(got-want) > 1.001e-3*math.Abs(to-80)/12 {
				t.Errorf("from 80 to %v: %v, want %v", to, got, want)
			}
		}
		if got := furthest(func(float64) bool { return true }, 80, to); got != to {
			t.Errorf("all is well, and it ends at %v of %v", got, to)
		}
	}
}
