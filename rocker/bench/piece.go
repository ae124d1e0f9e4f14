package bench

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// straightBow is the rise of an arc over its chord below which it is a line where pieces meet, m: a nanometre. The
// rounding of the centre of a still flatter arc would be more.
const straightBow = 1e-9

// A Piece is a [Stroke] with where it begins. It is followed by its chord and the half angles,
// so that an arc of the largest radius loses no digits.
type Piece struct {
	From r2.Vec // m
	Stroke
}

// chord returns the way from one end to the other, m.
func (s Piece) chord() r2.Vec { return r2.Sub(s.To, s.From) }

// straight reports whether the piece is a line for all that follows.
func (s Piece) straight() bool { return r2.Norm(s.chord())*math.Abs(s.Turn) < 8*straightBow }

// heading returns the direction at a part of the length, rad. It does not jump within the piece.
func (s Piece) heading(part float64) float64 {
	c := s.chord()
	return math.Atan2(c.Y, c.X) + s.Turn*(part-0.5)
}

// Radius returns the radius, m, above zero where the centre is to the left; infinite of a line.
func (s Piece) Radius() float64 { return r2.Norm(s.chord()) / (2 * math.Sin(s.Turn/2)) }

// centre returns the centre of an arc, m.
func (s Piece) centre() r2.Vec { return r2.Add(s.From, r2.Scale(s.Radius(), left(s.heading(0)))) }

// Length returns the length along the piece, m: c·(τ/2)/sin(τ/2).
func (s Piece) Length() float64 {
	c := r2.Norm(s.chord())
	if half := s.Turn / 2; half != 0 {
		c *= half / math.Sin(half)
	}
	return c
}

// At returns the point at a part of the length, m. A chord from the start sees the part of the turn under
// half its angle, so it is c·sin(τ·part/2)/sin(τ/2) long and lies τ/2·(1 − part) to the right of the whole chord.
func (s Piece) At(part float64) r2.Vec {
	switch {
	case part == 1:
		return s.To
	case s.Turn == 0:
		return r2.Add(s.From, r2.Scale(part, s.chord()))
	}
	share := math.Sin(s.Turn*part/2) / math.Sin(s.Turn/2)
	return r2.Add(s.From, r2.Scale(share, r2.Rotate(s.chord(), -s.Turn/2*(1-part), r2.Vec{})))
}

// Cut returns what lies between two parts of the length.
func (s Piece) Cut(from, to float64) Piece {
	return Piece{s.At(from), Stroke{s.At(to), s.Turn * (to - from)}}
}

// segment returns the area between arc and chord, m², above zero on the right of the chord.
func (s Piece) segment() float64 {
	t := s.Turn
	if math.Abs(t) < 0.01 { // the series of the quotient; the next term is below 1e-16 of it
		return r2.Norm2(s.chord()) * t / 12 * (1 + t*t/30 + t*t*t*t/840)
	}
	sin := math.Sin(t / 2)
	return r2.Norm2(s.chord()) * (t - math.Sin(t)) / (8 * sin * sin)
}

// ahead returns the unit vector of a heading, left the one square to it on the left.
func ahead(heading float64) r2.Vec {
	sin, cos := math.Sincos(heading)
	return r2.Vec{X: cos, Y: sin}
}

func left(heading float64) r2.Vec {
	sin, cos := math.Sincos(heading)
	return r2.Vec{X: -sin, Y: cos}
}
