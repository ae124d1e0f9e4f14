package check

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim/piece"
)

// TestChecked lists who was checked, the lightest first, and no hazards.
func TestChecked(t *testing.T) {
	d := piece.Design{
		Rocker: piece.Rocker{Radius: 1, Nose: 0.4, Tail: 0.5},
		Body:   body.Body{Mass: 10, Centre: r2.Vec{Y: 0.5}, Inertia: 1},
		Sitters: []piece.Sitter{
			{Name: "heavy", Mass: 90, Centre: r2.Vec{Y: 0.6}, Inertia: 8},
			{Name: "light", Role: piece.Other, Mass: 50, Centre: r2.Vec{Y: 0.6}, Inertia: 4},
			{Name: "hazard", Role: piece.Hazard, Mass: 20, Centre: r2.Vec{X: -0.3, Y: 0.2}},
		},
	}
	r := checked(t, d)
	got := r.Checked()
	if len(got) != 2 || got[0] != (Checked{"light", 50, 1}) || got[1] != (Checked{"heavy", 90, 1}) {
		t.Errorf("Checked = %v", got)
	}
	d.Body, d.Seat = body.Body{}, piece.Seat{Front: 0.42, Rear: 0.4, Depth: 0.45, Width: 0.5, Behind: 0.2}
	d.Back, d.Piece = piece.Back{Recline: 0.26, Height: 0.7}, piece.Piece{Mass: 12}
	d.Sitters = []piece.Sitter{{Name: "one", Mass: 70, Person: person.Given{}}}
	r = checked(t, d)
	for _, c := range r.Checked() {
		if c.Name == "one" && (c.Mass != 70 || c.Postures < 3) {
			t.Errorf("%+v; want the weight given, without a child on the lap, and several postures", c)
		}
	}
}

// TestTipsAtRest: balanced over the low point of one arc, the piece rests as drawn, and its
// tips stand R(1 − cos φ) over the floor, φ the edge's length over R.
func TestTipsAtRest(t *testing.T) {
	r := Balanced{Edge: rocker.Single(1, 0.4, 0.5)}
	var l Load
	l.Rig.Profile = r.Edge
	l.Balance.Rest.Tilt = 0
	nose, tail := r.TipsAtRest(&l)
	for _, c := range []struct{ got, want float64 }{{nose, 1 - math.Cos(0.4)}, {tail, 1 - math.Cos(0.5)}} {
		if math.Abs(c.got-c.want) > 1e-12 { // a dozen roundings
			t.Errorf("a tip stands %v m over the floor, want %v", c.got, c.want)
		}
	}
}
