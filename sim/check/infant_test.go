package check

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim/piece"
)

// TestInfantGivenAPlace holds that a maker's infant lies where it is put, by its own
// weight and length, and that an endwise one turns about its middle like a long body.
func TestInfantGivenAPlace(t *testing.T) {
	d := plain(0.8, 0.3, 0.3, 12, r2.Vec{Y: 0.2}, 1)
	d.Kind, d.Bed = piece.Cradle, piece.Bed{Height: 0.12, Length: 0.85, Width: 0.42}
	d.Sitters = []piece.Sitter{{Name: "our own", Mass: 5, Person: person.Given{Sizes: person.Measures{person.Stature: 0.6}},
		Placed: piece.Place{Ahead: -0.05}}}
	side := checked(t, d)
	d.Rocks = piece.End
	end := checked(t, d)
	capsule := person.Capsule(5, 0.6)
	want := body.Body{Mass: 5, Centre: r2.Vec{X: -0.05, Y: 0.12 + capsule.Radius}, Inertia: capsule.Along}
	if got := find(t, side, "our own").Person; got != want {
		t.Errorf("sideways %+v, want %+v", got, want)
	}
	want.Inertia = capsule.Across
	if got := find(t, end, "our own").Person; got != want {
		t.Errorf("endwise %+v, want %+v", got, want)
	}
	find(t, side, "newborn, in the middle") // the usual ones are checked beside it
}

// TestChildOnTheTail holds both readings by hand: a weight at the feet on the tail tip,
// and the whole child upright over it.
func TestChildOnTheTail(t *testing.T) {
	d := sized()
	r := checked(t, d)
	depth := d.Rocker.DepthOr()
	tip := r2.Add(r.Edge.Tail(), r2.Vec{Y: depth})
	mass := (20.68 + 20.24) / 2 // CDC (2000), boys and girls of 6
	foot, holding := find(t, r, "child on the tail"), find(t, r, "child on the tail, holding the back")
	if got := foot.Person; math.Abs(got.Mass-mass) > 1e-9 || got.Inertia != 0 || got.Centre != tip {
		t.Errorf("at the foot: %+v, want %v kg at %v", got, mass, tip)
	}
	// a child's balance point stands at 0.55 to 0.6 of the stature
	if got := holding.Person; got.Inertia <= 0 || math.Abs(got.Centre.Y-tip.Y-0.58*1.15) > 0.05 {
		t.Errorf("holding the back: %+v over %v", got, tip)
	}
	if foot.Role != piece.Hazard || holding.Role != piece.Hazard {
		t.Error("a child on the tail is no hazard")
	}
}

// TestInfantsTouch: an infant rolled to a side of the bed touches it, one at the foot or the head does there, and all lie
// on the mattress; their ages are what they are called by.
func TestInfantsTouch(t *testing.T) {
	for rocks, places := range map[piece.Direction][]string{
		piece.Side: {"in the middle", "at the right side", "at the left side"}, piece.End: {"in the middle", "at the foot", "at the head"},
	} {
		d := plain(0.8, 0.3, 0.3, 12, r2.Vec{Y: 0.2}, 1)
		d.Kind, d.Bed, d.Rocks = piece.Cradle, piece.Bed{Height: 0.12, Length: 0.85, Width: 0.42}, rocks
		r := checked(t, d)
		for who, months := range map[string]float64{"newborn": 0, "five months": 5} {
			infant := person.NewInfant(person.Either, months/12, 50)
			reach, half := infant.Radius, 0.42/2
			if rocks == piece.End {
				reach, half = infant.Length/2, 0.85/2
			}
			for i, side := range []float64{0, 1, -1} {
				at := find(t, r, who+", "+places[i]).Person
				if !near(at.Mass, infant.Mass, 1e-12) || !near(at.Centre.Y-infant.Radius, 0.12, 1e-12) ||
					!near(at.Centre.X, side*(half-reach), 1e-12) {
					t.Errorf("%s, %s: %+v", who, places[i], at)
				}
			}
		}
	}
}
