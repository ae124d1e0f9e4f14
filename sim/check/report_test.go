package check

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestCheckClosedForm reads one body on one arc through the whole report: R = 1, h =
// 0.6, k = 0.35 m on a level floor.
func TestCheckClosedForm(t *testing.T) {
	const radius, h, k, mass = 1.0, 0.6, 0.35, 80.0
	d := plain(radius, 0.4, 0.5, mass, r2.Vec{Y: h}, mass*k*k)
	d.Seat = piece.Seat{Rear: 0.4, Front: 0.42, Depth: 0.45, Behind: 0.2}
	d.Back = piece.Back{Height: 0.7, Recline: 0.2}
	r, err := Check(d)
	if err != nil || len(r.Loads) != 1 {
		t.Fatalf("Check: %v, %d loads", err, len(r.Loads))
	}
	l := r.Loads[0]
	g := sim.Gravity
	tipX, tipY := -radius*math.Sin(0.5), radius*(1-math.Cos(0.5))
	top := r2.Vec{X: -0.2 - 0.7*math.Sin(0.2), Y: 0.4 + 0.7*math.Cos(0.2)}
	one := math.Pi / 180
	// height of the top of the back: on an arc of radius R about (0, R)
	heightAt := func(tilt float64) float64 {
		return radius + top.X*math.Sin(tilt) + (top.Y-radius)*math.Cos(tilt)
	}
	for _, tt := range []struct {
		name      string
		got, want float64
	}{
		{"period", l.Balance.Period, 2 * math.Pi * math.Sqrt((k*k+h*h)/(g*(radius-h)))},
		{"tip", l.Balance.Back.Tip, math.Atan2(0-tipX, h-tipY)},
		{"lift", l.Balance.Back.Lift, math.Hypot(tipX, h-tipY) - h},
		{"effort", l.EffortBack, mass * g * (radius - h) * math.Sin(one) / heightAt(one)},
		{"effort forward", l.EffortForward, mass * g * (radius - h) * math.Sin(one) / heightAt(-one)},
		{"seat fall", l.SeatFall, math.Asin(0.02 / 0.45)},
		{"back", l.BackRecline, 0.2},
		{"tail tip", r.Tape.TailTip, tipY},
		{"tip to tip", r.Tape.TipToTip, 2 * radius * math.Sin(0.45)},
		{"edge", r.Tape.Edge, 0.9},
	} {
		if !near(tt.got, tt.want, 1e-12*math.Abs(tt.want)) {
			t.Errorf("%s: got %v, want %v", tt.name, tt.got, tt.want)
		}
	}
}

// TestMassDropsOut checks that at a fixed gyration a heavier body rocks the same.
func TestMassDropsOut(t *testing.T) {
	light, _ := Check(plain(1, 0.4, 0.5, 10, r2.Vec{X: 0.02, Y: 0.6}, 1))
	heavy, _ := Check(plain(1, 0.4, 0.5, 70, r2.Vec{X: 0.02, Y: 0.6}, 7))
	for _, release := range light.Releases {
		s, other := light.Loads[0].Swing(release), heavy.Loads[0].Swing(release)
		if !near(s.Period, other.Period, 1e-12*s.Period) || !near(s.Friction, other.Friction, 1e-12) {
			t.Errorf("let go from %v: %+v and %+v", s.Release, s, other)
		}
	}
}

// TestExampleHoldsAndShortTailDoesNot holds what the built-in chair is there to show.
func TestExampleHoldsAndShortTailDoesNot(t *testing.T) {
	d := readingChair()
	if r, err := Check(d); err != nil || !r.Holds() {
		t.Errorf("the reading chair: %v, limits %+v", err, r.Limits)
	}
	d.Rocker.Tail = 12 * quantity.In
	r, err := Check(d)
	if err != nil || r.Holds() {
		t.Fatalf("with a 12 in tail: %v, holds %v", err, r.Holds())
	}
	for _, l := range r.Limits {
		if !l.Holds && l.Load != "owner, at ease" {
			t.Errorf("with a 12 in tail %s of %s fails too", l.Name, l.Load)
		}
	}
	if r.Cause != TailLength || r.Try == nil || r.Try.Key != "rocker.tail" {
		t.Fatalf("cause %v, try %+v; want a longer tail", r.Cause, r.Try)
	}
	d.Rocker.Tail = r.Try.Value
	if after, err := Check(d); err != nil || !after.Holds() {
		t.Errorf("after the change it suggests: %v, %+v", err, after.Limits)
	}
}

// TestTryDoesWhatItSays: on designs that miss a limit, the change offered, typed as the
// shop writes it, makes all hold; mostly there is one.
func TestTryDoesWhatItSays(t *testing.T) {
	t.Run("going back alone", func(t *testing.T) {
		tryDoesWhatItSays(t, func(rng *rand.Rand) piece.Design {
			d := goingBack(readingChair())
			d.Rocker = piece.Rocker{Radius: (20 + 24*rng.Float64()) * quantity.In, Nose: 15 * quantity.In,
				Tail: (7 + 8*rng.Float64()) * quantity.In}
			return d
		})
	})
	t.Run("every limit", func(t *testing.T) {
		tryDoesWhatItSays(t, func(rng *rand.Rand) piece.Design {
			d := sized()
			d.Rocker = piece.Rocker{Radius: (30 + 14*rng.Float64()) * quantity.In, Nose: 15 * quantity.In,
				Tail: (12 + 8*rng.Float64()) * quantity.In}
			return d
		})
	})
}

func tryDoesWhatItSays(t *testing.T, made func(rng *rand.Rand) piece.Design) {
	rng := rand.New(rand.NewPCG(1, 1))
	missed, offered := 0, 0
	for range 200 {
		units := quantity.System(rng.IntN(2))
		d := made(rng)
		d.Units = units
		r := checked(t, d)
		if r.Holds() {
			continue
		}
		missed++
		if r.Try == nil {
			continue
		}
		offered++
		_, field, err := d.Measure(r.Try.Key)
		if err != nil {
			t.Fatal(err)
		}
		typed, err := quantity.Parse(quantity.Shop(r.Try.Value, r.Try.Kind, d.Units), r.Try.Kind, d.Units)
		if err != nil {
			t.Fatal(err)
		}
		*field = typed
		after, err := Check(d)
		if err != nil || !after.Holds() || after.Tape != r.Try.Tape {
			t.Errorf("%s = %v: %v, %+v", r.Try.Key, typed, err, after.Limits)
		}
	}
	if missed < 50 || offered*2 < missed {
		t.Errorf("%d designs miss a limit, %d of them are offered a change", missed, offered)
	}
}

// TestOrdinaryChairs asks how many chairs of the range in the trade (radius 36 to 48 in,
// 31 to 40 in along the rocker; common practice) keep the limits, built like the reading
// chair with its low point 45, 50 and 58 % of the way from the nose. A limit that most
// of them missed would say nothing about a chair. Here those on going back are asked, of people in plain numbers.
func TestOrdinaryChairs(t *testing.T) {
	for _, tailShare := range []float64{0.45, 0.50, 24.0 / 41} {
		hold, all := 0, 0
		t.Logf("tail %.0f %% of the rocker; margin in degrees / lift in mm of the owner lying back", 100*tailShare)
		for radius := 36.0; radius <= 48; radius += 2 {
			line := ""
			for length := 31.0; length <= 40; length++ {
				d := goingBack(readingChair())
				d.Rocker = piece.Rocker{Radius: radius * quantity.In, Nose: (1 - tailShare) * length * quantity.In,
					Tail: tailShare * length * quantity.In}
				r := checked(t, d)
				all++
				if r.Holds() {
					hold++
				}
				back := r.Loads[2].Balance.Back
				line += " " + shown(back.Angle/quantity.Deg) + "/" + shown(back.Lift*1000)
			}
			t.Logf("%2.0f in %s", radius, line)
		}
		t.Logf("%d of %d hold", hold, all)
		if hold*10 < all*9 {
			t.Errorf("only %d of %d ordinary chairs keep the limits", hold, all)
		}
	}
}

func shown(x float64) string {
	n := int(math.Round(x))
	digits := string(rune('0'+n/10%10)) + string(rune('0'+n%10))
	return digits
}

// TestOrdinaryChairsKeepEveryLimit asks the same of every limit and of people by sizes, with the low point 50 and 58 % of
// the way: three quarters keep all, and no limit is missed by most.
func TestOrdinaryChairsKeepEveryLimit(t *testing.T) {
	for _, tailShare := range []float64{0.50, 24.0 / 41} {
		hold, all, missed := 0, 0, map[string]int{}
		for radius := 36.0; radius <= 48; radius += 2 {
			for length := 31.0; length <= 40; length++ {
				d := sized()
				d.Rocker = piece.Rocker{Radius: radius * quantity.In, Nose: (1 - tailShare) * length * quantity.In,
					Tail: tailShare * length * quantity.In}
				r := checked(t, d)
				all++
				if r.Holds() {
					hold++
				}
				once := map[string]bool{}
				for _, l := range r.Limits {
					if l.Fails() && !once[l.Name] {
						once[l.Name] = true
						missed[l.Name]++
					}
				}
			}
		}
		t.Logf("tail %.0f %% of the rocker: %d of %d hold; missed %v", 100*tailShare, hold, all, missed)
		if 4*hold < 3*all {
			t.Errorf("only %d of %d ordinary chairs keep the limits", hold, all)
		}
		for name, n := range missed {
			if 2*n > all {
				t.Errorf("%s: %d of %d ordinary chairs miss it", name, n, all)
			}
		}
	}
}

// TestSpreadIsSmallBesideAPerson holds that the guess of how the weight is spread
// matters most for the empty chair.
func TestSpreadIsSmallBesideAPerson(t *testing.T) {
	r, err := Check(readingChair())
	if err != nil || !r.Spread.Estimated || r.Spread.EmptyRest <= r.Spread.Rest || r.Spread.Rest <= 0 {
		t.Errorf("spread %+v, %v", r.Spread, err)
	}
}

func BenchmarkCheck(b *testing.B) {
	d := readingChair()
	d.Sitters = append(d.Sitters, piece.Sitter{
		Name: "large man", Role: piece.Other, Mass: 253 * quantity.Lb,
		Posture: person.Upright, Placed: piece.Place{Ahead: 7.5 * quantity.In, Above: 10.25 * quantity.In},
		AtEase: piece.Place{Ahead: 5.875 * quantity.In, Above: 9.75 * quantity.In},
	}, piece.Sitter{
		Name: "child on the tail", Role: piece.Hazard, Mass: 46 * quantity.Lb,
		Placed: piece.Place{Ahead: -16 * quantity.In, Above: -9 * quantity.In},
	})
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Check(d); err != nil {
			b.Fatal(err)
		}
	}
}
