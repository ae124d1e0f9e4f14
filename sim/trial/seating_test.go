package trial

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// seatOn is a piece of plain numbers with a drawn seat and back, on one arc of 1.05 m.
func seatOn(nose, tail float64) piece.Design {
	d := plain(1.05, nose, tail, 12, vec(-0.03, 0.45), 1.5)
	d.Seat = piece.Seat{Rear: 0.40, Front: 0.43, Depth: 0.45, Behind: 0.20, Width: 0.5}
	d.Back = piece.Back{Recline: 0.25, Height: 0.70}
	return d
}

// TestSeatingByHand holds the lever arms that are quoted (ISO 7174-1, 7.1.1 and 7.1.2: 600 N 50 mm from the front edge,
// or 175 mm from the back with a force 300 mm over the seat or at the top of a lower back; EN 1022: 60 mm, 20 N) by
// statics: the slow force is the most of m·g·Z/y, which stands where the arc ends. That end is put at a whole quarter of
// a degree from the rest, where it is looked.
func TestSeatingByHand(t *testing.T) {
	const radius = 1.05
	centre, meet, fall := vec(0, radius), vec(-0.20, 0.40), math.Asin(0.03/0.45)
	on := func(way float64) r2.Vec { return r2.Add(meet, r2.Scale(way, vec(math.Cos(fall), math.Sin(fall)))) }
	for _, high := range []float64{0.70, 0.22} {
		up := min(0.300, high)
		behind := r2.Add(meet, vec(-up*math.Tan(0.25), up))
		for i, tt := range []struct {
			load, at r2.Vec
			way      float64 // + back
			force    float64
		}{
			{on(0.45 - 0.050), on(0.45 - 0.050), -1, math.NaN()},
			{on(0.45 - 0.060), on(0.45 - 0.060), -1, -20},
			{on(0.175), behind, 1, math.NaN()},
			{on(0.175), behind, 1, 285.7 - 285.7*on(0.175).Y},
		} {
			whole := body.Join(body.Body{Mass: 12, Centre: vec(-0.03, 0.45)}, body.Body{Mass: 600 / g, Centre: tt.load})
			hangs := r2.Sub(whole.Centre, centre)
			rest := math.Atan2(-hangs.X, -hangs.Y)
			const turn = 80 * quantity.Deg / 4
			tilt := rest + tt.way*turn // at the end of the arc
			nose, tail := 0.6, 0.6
			if tt.way < 0 {
				nose = -radius * tilt
			} else {
				tail = radius * tilt
			}
			d := seatOn(nose, tail)
			d.Back.Height = high
			got := seating(checked(t, d))[i]
			want := whole.Mass * g * r2.Norm(hangs) * math.Sin(turn) / (radius + turned(tt.at, centre, tilt).Y)
			if !near(got.Tips/want, 1, 1e-9) || math.IsNaN(tt.force) != math.IsNaN(got.Force) || got.Force < tt.force-1e-9 ||
				got.Force > tt.force+1e-9 {
				t.Errorf("%s: tips under %v N, by statics %v; asks %v N, want %v", got.Name, got.Tips, want, got.Force, tt.force)
			}
			if got.Source == "" || got.Confidence == "" || got.Force < 0 && got.Outcome != sim.Rocks {
				t.Errorf("%+v", got)
			}
		}
	}
	for height, want := range map[float64]float64{0.720: 80.0, 0.400: 171.4, 1: 0} { // EN 1022 as it is remembered
		if got := RearForce(height); !near(got, want, 0.05) {
			t.Errorf("a seat of %v m is pulled with %v N, want %v", height, got, want)
		}
	}
}

// TestNoChildIsTried: no child's chair is put under a grown-up's weight.
func TestNoChildIsTried(t *testing.T) {
	d := sized()
	d.Sitters = []piece.Sitter{{Name: "our child", Person: person.Given{Age: 5}}}
	child := checked(t, d)
	if tried := seating(child); len(tried) != 0 || !child.ForAChild() {
		t.Errorf("a child's chair is tried with a grown-up's 600 N: %+v", tried)
	}
}

// TestSlopesByHand stands a horse's riders of 25 and 50 kg on ten degrees (EN 71-1, 8.23.1) by the closed forms of one
// arc: it rests at θ₀ + asin(R·sin α/d), and goes over a tip where the balance point stands plumb over it.
func TestSlopesByHand(t *testing.T) {
	const radius, reach = 1.2, 0.9
	d := plain(radius, reach, reach, 12, vec(0, 0.4), 1)
	d.Kind, d.Seat = piece.Horse, piece.Seat{Rear: 0.55, Behind: 0.12}
	d.Sitters = []piece.Sitter{{Name: "own", Person: person.Given{Age: 4}}}
	r := checked(t, d)
	rider := find(t, r, "own, riding").Person
	list, i := slopes(r), 0
	for _, mass := range []float64{25, 50} {
		whole := body.Join(d.Body, body.Body{Mass: mass, Centre: rider.Centre})
		hangs := r2.Sub(whole.Centre, vec(0, radius))
		for _, slope := range []float64{math.Pi / 18, -math.Pi / 18} {
			rest := math.Atan2(-hangs.X, -hangs.Y) + math.Asin(radius*math.Sin(slope)/r2.Norm(hangs))
			margin := math.Inf(1)
			for _, way := range []float64{1, -1} {
				tip := vec(-way*radius*math.Sin(reach/radius), radius*(1-math.Cos(reach/radius)))
				over := r2.Sub(whole.Centre, tip)
				margin = min(margin, way*(math.Atan2(over.X, over.Y)-rest))
			}
			if got := list[i]; !got.Rests || got.Slope != slope || !near(got.Margin, margin, 1e-9) {
				t.Errorf("%s: %+v, by hand %v from a rest at %v", got.Name, got, margin, rest)
			}
			i++
		}
	}
}
