package piece

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// readingChair is the chair of the built-in example, in numbers.
func readingChair() Design {
	return Design{
		Title: "Reading chair", Units: quantity.Inch,
		Rocker: Rocker{Radius: 42 * inch, Nose: 17 * inch, Tail: 24 * inch},
		Seat:   Seat{Front: 16.5 * inch, Rear: 15.875 * inch, Depth: 18 * inch, Width: 20 * inch, Behind: 7 * inch},
		Back:   Back{Recline: 15 * degree, Height: 28 * inch},
		Arms:   Arms{Height: 8 * inch},
		Piece:  Piece{Mass: 26 * pound},
		Sitters: []Sitter{{
			Name: "owner", Mass: 180 * pound,
			Sitting:   Place{6.75 * inch, 9.25 * inch},
			LyingBack: Place{5.25 * inch, 8.875 * inch},
			Perched:   Place{11 * inch, 10.5 * inch},
		}},
		Limits: DefaultLimits(Chair),
	}
}

// plain is one body on one arc, for closed forms: all m, kg.
func plain(radius, nose, tail, mass float64, centre r2.Vec, inertia float64) Design {
	return Design{Rocker: Rocker{Radius: radius, Nose: nose, Tail: tail}, Body: Body{mass, centre, inertia}}
}

func near(got, want, tolerance float64) bool {
	return math.Abs(got-want) <= tolerance
}
