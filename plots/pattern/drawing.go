package pattern

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
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

// An Item is one thing on a drawing: a [Curve], [Line], [Mark], [Text], [Name], [Grain], [Arrow],
// [Corner], [Dimension] or [Note].
type Item interface {
	shapes(r *ruler) []shape
	points() []r2.Vec // what must be finite and of a size that makes sense
}

// A Curve is a path on a layer; no layer is the outline.
type Curve struct {
	Layer Layer
	Path  bench.Path
}

// A Line is straight. Its label is put beside it.
type Line struct {
	Layer    Layer // none is MARKS
	From, To r2.Vec
	Label    string
}

// A Mark is a cross at a point, turned by an angle (rad), with its label beside it.
type Mark struct {
	At    r2.Vec
	Angle float64
	Label string
}

// A Text stands on its place with its left end, turned by an angle (rad).
type Text struct {
	At     r2.Vec
	Height float64 // of its capitals, m; zero and all that is smaller means 3.5 mm
	Angle  float64
	Text   string
}

// A Name is a text at a place or, where something stands there, beside it.
type Name struct {
	At   r2.Vec
	Text string
}

// An Arrow has a name beside it, "up".
type Arrow struct {
	From, To r2.Vec
	Label    string
}

// A Grain is an arrow along the grain. It has one head, so that of a pair the mirrored one is seen
// to be.
type Grain struct{ From, To r2.Vec }

// A Corner is a square corner to lay a square against: one leg at an angle (rad), the
// other a right angle to the left of it.
type Corner struct {
	At    r2.Vec
	Angle float64
}

// A Dimension is a measure from point to point, its line set off to the left of the way.
type Dimension struct {
	From, To r2.Vec
	Offset   float64 // m
	Text     string
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

// reached returns a [*ReachError] for a point that is out of reach.
func reached(p r2.Vec) error {
	if reach := max(math.Abs(p.X), math.Abs(p.Y)); !(reach <= Furthest) {
		return &ReachError{reach}
	}
	return nil
}

// An Error says what cannot be drawn.
type Error struct{ Reason string }

func (e *Error) Error() string { return "pattern: " + e.Reason }

// check returns an [*Error] or a [*ReachError] for what cannot be drawn.
func (d Drawing) check() error {
	if len(d.Items) == 0 {
		return &Error{"a drawing has at least one item, and this has none"}
	}
	for i, item := range d.Items {
		for _, p := range item.points() {
			if err := reached(p); err != nil {
				return err
			}
		}
		if c, ok := item.(Curve); ok {
			if err := checkPath(i, c.Path); err != nil {
				return err
			}
		}
	}
	for _, p := range d.TipToTip {
		if err := reached(p); err != nil {
			return err
		}
	}
	if r2.Norm(r2.Sub(d.TipToTip[1], d.TipToTip[0])) < 1e-4 {
		return &Error{"the check from tip to tip has no length"}
	}
	return nil
}

// checkPath returns an error for strokes that are no arcs.
func checkPath(item int, p bench.Path) error {
	for j, s := range p.Strokes {
		if !(math.Abs(s.Turn) < 2*math.Pi) {
			return &Error{fmt.Sprintf("item %d, stroke %d turns by %g rad; an arc is less than a full turn: draw a circle as two", item, j, s.Turn)}
		}
	}
	for _, a := range arcs(p) {
		if err := reached(a.At(0.5)); err != nil {
			return err
		}
	}
	return nil
}
