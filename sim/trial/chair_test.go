package trial

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// readingChair is the chair of the built-in example, in numbers.
func readingChair() piece.Design {
	return piece.Design{
		Title: "Reading chair", Units: quantity.Inch,
		Rocker: piece.Rocker{Radius: 42 * quantity.In, Nose: 17 * quantity.In, Tail: 24 * quantity.In},
		Seat: piece.Seat{Front: 16.5 * quantity.In, Rear: 15.875 * quantity.In, Depth: 18 * quantity.In, Width: 20 * quantity.In,
			Behind: 7 * quantity.In},
		Back:  piece.Back{Recline: 15 * quantity.Deg, Height: 28 * quantity.In},
		Arms:  piece.Arms{Height: 8 * quantity.In},
		Piece: piece.Piece{Mass: 26 * quantity.Lb},
		Sitters: []piece.Sitter{{
			Name: "owner", Mass: 180 * quantity.Lb,
			Posture: person.Upright, Placed: piece.Place{Ahead: 6.75 * quantity.In, Above: 9.25 * quantity.In},
			AtEase: piece.Place{Ahead: 5.25 * quantity.In, Above: 8.875 * quantity.In},
			Rising: piece.Place{Ahead: 11 * quantity.In, Above: 10.5 * quantity.In},
		}},
		Limits: piece.Design{Kind: piece.Chair}.UsualLimits(),
	}
}

// plain is one body on one arc, for closed forms: all m, kg.
func plain(radius, nose, tail, mass float64, centre r2.Vec, inertia float64) piece.Design {
	return piece.Design{Rocker: piece.Rocker{Radius: radius, Nose: nose, Tail: tail},
		Body: body.Body{Mass: mass, Centre: centre, Inertia: inertia}}
}

// sized is the reading chair with its owner by size.
func sized() piece.Design {
	d := readingChair()
	d.Seat.Behind = 9 * quantity.In
	d.Sitters = []piece.Sitter{{Name: "owner", Mass: 82, Person: person.Given{Sizes: person.Measures{person.Stature: 1.78}}}}
	return d
}

func vec(x, y float64) r2.Vec { return r2.Vec{X: x, Y: y} }

// find returns the load of a name.
func find(t *testing.T, r check.Report, name string) *check.Load {
	t.Helper()
	l, err := r.LoadNamed(name)
	if err != nil || name == "" {
		t.Fatal(err)
	}
	return l
}

// checked returns the report of a design.
func checked(t *testing.T, d piece.Design) check.Report {
	t.Helper()
	r, err := check.Check(d)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// rocked returns a rock of a design.
func rocked(t *testing.T, d piece.Design, options RockOptions) Rocking {
	t.Helper()
	r, err := Rock(d, options)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

const g = 9.80665 // m/s², standard

func near(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

// multiple reports whether a number is a whole multiple of a step.
func multiple(x, step float64) bool { return math.Abs(math.Remainder(x, step)) < 1e-9*step }

// turned returns a place as it lies when the piece is tilted, from a point that it is turned about.
func turned(p, about r2.Vec, tilt float64) r2.Vec {
	return r2.Rotate(r2.Sub(p, about), tilt, r2.Vec{})
}
