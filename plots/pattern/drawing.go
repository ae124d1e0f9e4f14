package pattern

import (
	"fmt"
	"math"
	"slices"

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

// largest is the size that a drawing is held to, m, for its sheets to end; Furthest how far from the origin it reaches.
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
	for _, a := range arcs(s.path) {
		ends = append(ends, a.At(0.5)) // where an arc may bulge out of reach
	}
	return reached(ends...)
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

// laid returns all shapes of a drawing, with what every drawing carries; the test squares where asked for.
func (d Drawing) laid(units quantity.System, squares bool) ([]shape, error) {
	if err := d.check(); err != nil {
		return nil, err
	}
	l := &layout{face: newFace(), list: slices.Clone(d.placed)}
	if d.placed == nil || d.placedFor != units {
		l.list = nil
		if err := l.lay(d.Items); err != nil {
			return nil, err
		}
		l.settle(l.inner(), d.titleRows(l.face, units)...) // inside the outline, for what is cut off is lost
		l.longCheck(d, units)
		for _, lines := range d.Notes {
			l.note(lines)
		}
	}
	if squares {
		l.squares()
	}
	return l.list, nil
}

// longCheck draws the measure from tip to tip, as near to the part as it stands clear, above rather than below.
func (l *layout) longCheck(d Drawing, units quantity.System) {
	from, to := d.TipToTip[0], d.TipToTip[1]
	if from.X > to.X {
		from, to = to, from
	}
	run := r2.Sub(to, from)
	text := "tip to tip " + both(r2.Norm(run), units) + "   tape says __________"
	angle := math.Atan2(run.Y, run.X)
	off, middle := along(angle+math.Pi/2), r2.Scale(0.5, r2.Add(from, to))
	half := r2.Vec{X: max(r2.Norm(run), l.face.width(text, lettering))/2 + 3e-3, Y: 5e-3}
	offset := 0.0
	for step := 10e-3; offset == 0 && step < 4*largest; step += max(2e-3, step/50) {
		for _, o := range []float64{step, -step} {
			if offset == 0 && l.clear(rect{r2.Add(middle, r2.Scale(o+2e-3, off)), half, angle}, 2e-3) {
				offset = o
			}
		}
	}
	list, _ := Dimension{Check, from, to, offset, text}.shapes(l.face)
	l.add(list...)
}

// A square is a test square and what it says.
type square struct {
	side float64
	text string
}

var testSquares = []square{{4 * quantity.In, "4 in square"}, {0.1, "100 mm square"}}

// squares draws the two test squares side by side under everything.
func (l *layout) squares() {
	box := bounds(l.list)
	const gap = 10e-3
	at := r2.Vec{X: box.Min.X, Y: box.Min.Y - gap - testSquares[0].side}
	for _, s := range testSquares {
		l.add(s.shapes(l.face, at)...)
		at.X += s.side + gap
	}
}

// shapes draws a test square from its lower left corner, with what to do.
func (s square) shapes(f face, at r2.Vec) []shape {
	size := r2.Vec{X: s.side, Y: s.side}
	list := []shape{{layer: Check, path: rectangle(at, size)}}
	middle := r2.Add(at, r2.Scale(0.5, size))
	for i, line := range []string{s.text, "measure both ways", "before you cut"} {
		list = append(list, f.lettered(Check, line, r2.Add(middle, r2.Vec{Y: 6e-3 - 8e-3*float64(i)}), 0)...)
	}
	return list
}
