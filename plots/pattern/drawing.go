package pattern

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// A Layer is the name under which a file keeps things together.
type Layer string

// The layers of every drawing.
const (
	Outline Layer = "OUTLINE" // what is cut
	Stock   Layer = "STOCK"   // the board that parts are cut from
	Centre  Layer = "CENTRE"  // centre lines
	Marks   Layer = "MARKS"   // points, legs, grain
	Texts   Layer = "TEXT"    // labels and the title block
	Check   Layer = "CHECK"   // test squares and the long check
)

// layers are all of them, in the order in which they are written.
var layers = []Layer{Outline, Stock, Centre, Marks, Texts, Check}

// A Drawing is one part at full size, in metres, y up.
type Drawing struct {
	Part  string // "Rocker"
	Piece string // the title of the piece it belongs to
	Items []Item
	Notes [][]string // texts, each by its lines, that stand wherever there is room for them

	// TipToTip are the two points to be taped after joining, the longest straight measure.
	TipToTip [2]r2.Vec

	placed    []shape // all but the test squares, where that was done before
	placedFor quantity.System
}

// Placed returns the drawing with its texts in their places for a maker's units, which several
// files then share. The error is an [*Error] or a [*ReachError] for what cannot be drawn.
func (d Drawing) Placed(units quantity.System) (Drawing, error) {
	var err error
	d.placed, err = d.laid(units, false)
	d.placedFor = units
	return d, err
}

// largest is the size that a drawing is held to, m: beyond it something is wrong, and the
// sheets would not end. Furthest is how far from the origin it reaches.
const (
	largest  = 20.0
	Furthest = largest / 2
)

// A ReachError is a drawing that reaches further than [Furthest], m along x or y, or not to a number.
type ReachError struct{ Reach float64 }

func (e *ReachError) Error() string {
	return fmt.Sprintf("pattern: the drawing reaches %g m from the origin, and %g m is the furthest", e.Reach, Furthest)
}

// An Error says what cannot be drawn.
type Error struct{ Reason string }

func (e *Error) Error() string { return "pattern: " + e.Reason }

// reached returns a [*ReachError] for the first of some points that is out of reach.
func reached(points ...r2.Vec) error {
	for _, p := range points {
		if reach := max(math.Abs(p.X), math.Abs(p.Y)); !(reach <= Furthest) {
			return &ReachError{reach}
		}
	}
	return nil
}

// check returns an [*Error] or a [*ReachError] for a shape that cannot be drawn.
func (s shape) check() error {
	ends := []r2.Vec{s.at, s.path.Start}
	for i, stroke := range s.path.Strokes {
		if !(math.Abs(stroke.Turn) < 2*math.Pi) {
			return &Error{fmt.Sprintf("stroke %d of a path turns by %g rad; an arc is less than a full turn: draw a circle as two", i, stroke.Turn)}
		}
		ends = append(ends, stroke.To)
	}
	if err := reached(ends...); err != nil {
		return err
	}
	var middles []r2.Vec
	for _, a := range arcs(s.path) {
		middles = append(middles, a.At(0.5))
	}
	return reached(middles...)
}

// check returns an [*Error] or a [*ReachError] for a drawing that cannot be taped from tip to tip.
func (d Drawing) check() error {
	if len(d.Items) == 0 {
		return &Error{"a drawing has at least one item, and this has none"}
	}
	if err := reached(d.TipToTip[:]...); err != nil {
		return err
	}
	if r2.Norm(r2.Sub(d.TipToTip[1], d.TipToTip[0])) < 1e-4 {
		return &Error{"the check from tip to tip has no length"}
	}
	return nil
}
