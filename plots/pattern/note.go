package pattern

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"
)

// A Note is lines of text that stand together wherever the drawing leaves room for them.
type Note struct{ Lines []string }

func (n Note) shapes(*ruler) []shape { return nil }

func (n Note) points() []r2.Vec { return nil }

// notes returns texts as notes.
func notes(texts [][]string) []Item {
	list := make([]Item, len(texts))
	for i, lines := range texts {
		list[i] = Note{lines}
	}
	return list
}

// note writes a note outside the outline and near to it, so that it takes no sheet of its own
// where that can be, and otherwise under everything.
func (y *yard) note(n Note) {
	var rows []row
	for _, line := range n.Lines {
		rows = append(rows, row{y.ruler.fit(line, lettering, 2*widest), lettering})
	}
	half := y.blockHalf(rows)
	if half.Y == 0 {
		return
	}
	if b, found := y.room(y.outside(bounds(y.list)), half); found {
		y.block(rows, b)
		return
	}
	y.under(rows)
}

// outside returns points in a box but not inside the outlines, those nearest to what stands there first.
func (y *yard) outside(box r2.Box) []spot {
	const n = 40
	var list []spot
	size := r2.Sub(box.Max, box.Min)
	for i := range n * n {
		p := r2.Add(box.Min, r2.Vec{X: size.X * (float64(i%n) + 0.5) / n, Y: size.Y * (float64(i/n) + 0.5) / n})
		if y.inside(p) {
			continue
		}
		off := r2.Norm2(size)
		for _, fence := range y.fences {
			for _, q := range fence {
				off = min(off, r2.Norm2(r2.Sub(p, q)))
			}
		}
		list = append(list, spot{p, math.Sqrt(off)})
	}
	slices.SortStableFunc(list, func(a, b spot) int { return cmp.Compare(a.off, b.off) })
	return list
}
