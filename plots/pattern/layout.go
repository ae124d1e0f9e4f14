package pattern

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// laid returns all shapes of a drawing at their places, with what every drawing carries;
// the test squares where asked for.
func (d Drawing) laid(units quantity.System, squares bool) ([]shape, error) {
	if err := d.check(); err != nil {
		return nil, err
	}
	y := &yard{ruler: newRuler(), list: slices.Clone(d.placed)}
	if d.placed == nil || d.placedFor != units {
		y.list = nil
		if err := y.lay(d.Items); err != nil {
			return nil, err
		}
		y.titleBlock(d, units)
		y.longCheck(d, units)
		for _, lines := range d.Notes {
			y.note(lines)
		}
	}
	if squares {
		y.squares()
	}
	return y.list, nil
}

// longCheck draws the measure from tip to tip as near to the part as it stands clear,
// above rather than below.
func (y *yard) longCheck(d Drawing, units quantity.System) {
	from, to := d.TipToTip[0], d.TipToTip[1]
	if from.X > to.X {
		from, to = to, from
	}
	way := r2.Sub(to, from)
	text := "tip to tip " + both(r2.Norm(way), units) + "   tape says __________"
	angle := math.Atan2(way.Y, way.X)
	off, middle := along(angle+math.Pi/2), r2.Scale(0.5, r2.Add(from, to))
	half := r2.Vec{X: max(r2.Norm(way), y.ruler.width(text, lettering))/2 + 3e-3, Y: 5e-3}
	offset := 0.0
	for step := 10e-3; offset == 0 && step < 4*largest; step += max(2e-3, step/50) {
		for _, o := range []float64{step, -step} {
			if offset == 0 && y.clear(rect{r2.Add(middle, r2.Scale(o+2e-3, off)), half, angle}, 2e-3) {
				offset = o
			}
		}
	}
	y.add(Dimension{From: from, To: to, Offset: offset, Text: text}.on(Check, y.ruler)...)
}

// A square is a test square and what it says.
type square struct {
	side float64
	text string
}

var testSquares = []square{{4 * inch, "4 in square"}, {0.1, "100 mm square"}}

// squares draws the two test squares side by side under everything.
func (y *yard) squares() {
	box := bounds(y.list)
	const gap = 10e-3
	at := r2.Vec{X: box.Min.X, Y: box.Min.Y - gap - testSquares[0].side}
	for _, s := range testSquares {
		y.add(s.shapes(y.ruler, at)...)
		at.X += s.side + gap
	}
}

// shapes draws a test square from its lower left corner, with what to do.
func (s square) shapes(r *ruler, at r2.Vec) []shape {
	size := r2.Vec{X: s.side, Y: s.side}
	list := []shape{{layer: Check, path: rectangle(at, size)}}
	middle := r2.Add(at, r2.Scale(0.5, size))
	for i, line := range []string{s.text, "measure both ways", "before you cut"} {
		list = append(list, r.lettered(Check, line, lettering, r2.Add(middle, r2.Vec{Y: 6e-3 - 8e-3*float64(i)}), 0)...)
	}
	return list
}
