package check

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
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

// goingBack is a design of which nothing is asked but not to go over backwards.
func goingBack(d piece.Design) piece.Design {
	d.Limits = piece.Limits{BackMargin: d.Limits.BackMargin, BackLift: d.Limits.BackLift}
	return d
}

// plain is one body on one arc, for closed forms: all m, kg.
func plain(radius, nose, tail, mass float64, centre r2.Vec, inertia float64) piece.Design {
	return piece.Design{Rocker: piece.Rocker{Radius: radius, Nose: nose, Tail: tail},
		Body: body.Body{Mass: mass, Centre: centre, Inertia: inertia}}
}

func near(got, want, tolerance float64) bool {
	return math.Abs(got-want) <= tolerance
}

// checked returns the report of a design.
func checked(t *testing.T, d piece.Design) Report {
	t.Helper()
	r, err := Check(d)
	if err != nil {
		t.Fatal(err)
	}
	return r
}
