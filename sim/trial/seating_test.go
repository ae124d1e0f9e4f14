package trial

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestSeating holds the lever arms of the tests by statics: held just under its slow force
// the piece has a rest, pushed a little more for five seconds it goes over.
func TestSeating(t *testing.T) {
	d := sized()
	r, err := check.Check(d)
	tests := seating(r)
	if err != nil || len(tests) != 4 {
		t.Fatal(err, tests)
	}
	for _, s := range tests {
		if s.Confidence == "" || s.Source == "" || !(s.Tips > 0) {
			t.Errorf("%+v", s)
		}
		if !math.IsNaN(s.Force) && math.Abs(s.Force) < 0.5*s.Tips && s.Outcome != sim.Rocks {
			t.Errorf("%s: %v under half of the force that tips it", s.Name, s.Outcome)
		}
	}
}

// TestSlopes holds a horse on ten degrees by the closed form of one arc: sin t = R·sin a/d.
func TestSlopes(t *testing.T) {
	d := plain(1.2, 0.9, 0.9, 12, vec(0, 0.4), 1)
	d.Kind, d.Seat, d.Sitters = piece.Horse, piece.Seat{Rear: 0.55, Behind: 0.12}, []piece.Sitter{{Name: "own", Person: person.Given{Age: 4}}}
	r, err := check.Check(d)
	slopes := slopes(r)
	if err != nil || len(slopes) != 4 {
		t.Fatal(err, slopes)
	}
	for _, s := range slopes {
		if !s.Rests || s.Margin <= 0 {
			t.Errorf("%+v", s)
		}
	}
}

// TestSeatingActsAtThePad: the slow force of the forward tests by statics, F·y = m·g·Z, with y the height of the pad
// 50 and 60 mm from the front edge, rolled by hand on the arc or about its nose tip; and no child's
// chair is put under a grown-up's weight.
func TestSeatingActsAtThePad(t *testing.T) {
	d := sized()
	r, err := check.Check(d)
	if err != nil {
		t.Fatal(err)
	}
	const g = 9.80665
	edge := r.Edge
	nose, radius := edge.Nose(), d.Rocker.Radius
	tests := seating(r)
	for i, from := range []float64{0.050, 0.060} {
		front, meet := d.Seat.FrontEdge(), d.Seat.Meet()
		pad := r2.Sub(front, r2.Scale(from, r2.Unit(r2.Sub(front, meet))))
		rig := r.Loads[0].Rig
		rig.Body = body.Join(rig.Body, body.Body{Mass: 600 / g, Centre: pad})
		b := rig.Balance()
		most := 0.0
		for turn := 0.0; turn < b.Forward.Angle; turn += 0.01 * quantity.Deg {
			tilt := b.Rest.Tilt - turn
			sin, cos := math.Sincos(tilt)
			over := func(c r2.Vec) float64 { return (pad.X-c.X)*sin + (pad.Y-c.Y)*cos } // over a point that the piece turns about
			height := radius + over(r2.Vec{Y: radius})
			if tilt < -d.Rocker.Nose/radius {
				height = over(nose)
			}
			arm, _ := rig.Righting(tilt)
			most = max(most, -rig.Body.Mass*g*arm/height)
		}
		if got := tests[i].Tips; math.Abs(got/most-1) > 1e-2 { // it looks each quarter of a degree of some 25, over which the force grows in proportion
			t.Errorf("%s: goes over under %v N, by statics at the pad %v", tests[i].Name, got, most)
		}
	}
	d.Sitters = []piece.Sitter{{Name: "our child", Person: person.Given{Age: 5}}}
	child, err := check.Check(d)
	if tried := seating(child); err != nil || len(tried) != 0 || !child.ForAChild() {
		t.Errorf("a child's chair is tried with a grown-up's 600 N: %v, %+v", err, tried)
	}
}
