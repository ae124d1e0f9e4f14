package pattern

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// A row is a line of a block: of the title block, or of a note.
type row struct {
	text   string
	height float64
}

// titleRows returns the forms in which a title block may be set, the better first.
func (d Drawing) titleRows(f face, units quantity.System) [][]row {
	part, piece := f.fit(d.Part, heading, widest*0.7), f.fit(d.Piece, lettering, widest*0.7)
	unit := "unit: " + quantity.Unit(quantity.Length, units)
	date, owner := "date ____________", "owner ________________"
	const scale = "print at 100 %"
	both := f.fit(part, lettering, widest*0.4)
	if piece != "" {
		both += ", " + f.fit(piece, lettering, widest*0.4)
	}
	return [][]row{
		{{part, heading}, {piece, lettering}, {date + "  " + owner, lettering}, {scale + ", " + unit, lettering}},
		{{both, lettering}, {date + " " + owner, lettering}, {scale + ", " + unit, lettering}},
		{{both, lettering}, {date + "  " + owner + "  " + scale + ", " + unit, lettering}},
		{{part, lettering}, {piece, lettering}, {date, lettering}, {owner, lettering}, {scale, lettering}, {unit, lettering}},
	}
}

// note writes a note outside the outline, on a sheet there is anyway where that can be, else under everything.
func (l *layout) note(lines []string) {
	var rows []row
	for _, line := range lines {
		rows = append(rows, row{l.face.fit(line, lettering, 2*widest), lettering})
	}
	l.settle(l.outer(), rows)
}

// settle writes a block, which may be set in one of several forms, in the first form for which one of some places has
// room; where none has, in its first form under everything.
func (l *layout) settle(places []spot, forms ...[]row) {
	for i, rows := range forms {
		forms[i] = slices.DeleteFunc(rows, func(r row) bool { return r.text == "" })
		if b, found := l.room(places, l.blockHalf(forms[i])); found {
			l.block(forms[i], b)
			return
		}
	}
	box, half := bounds(l.list), l.blockHalf(forms[0])
	l.block(forms[0], rect{middle: r2.Vec{X: box.Center().X, Y: box.Min.Y - half.Y - 8e-3}, half: half})
}

// A spot is a place where something could stand.
type spot struct {
	at   r2.Vec
	off  float64    // from the nearest end of an edge, m; not less than from the edge
	rank [2]float64 // by which the better ones come first
}

// inner returns places inside the outlines, those nearest to their edge first, where there
// is a sheet of paper anyway, and of these those nearest to the middle.
func (l *layout) inner() []spot {
	edge := slices.Concat(l.outlines...)
	box := boxOf(edge)
	ends := make([]r2.Vec, 0, 2*len(l.edges))
	for _, w := range l.edges {
		ends = append(ends, w[0], w[1])
	}
	const sheet = 0.04 // m: what is nearer to the edge is on a sheet with it, mostly
	return l.spots(box, 60, true, func(s *spot) {
		s.off = math.Sqrt(nearest2(s.at, ends, math.Inf(1)))
		s.rank = [2]float64{max(math.Sqrt(nearest2(s.at, edge, math.Inf(1))), sheet), r2.Norm2(r2.Sub(s.at, box.Center()))}
	})
}

// outer returns places outside the outlines in the box around everything, those nearest to what stands there first.
func (l *layout) outer() []spot {
	box, edge := bounds(l.list), slices.Concat(l.outlines...)
	return l.spots(box, 40, false, func(s *spot) {
		s.off = math.Sqrt(nearest2(s.at, edge, r2.Norm2(box.Size())))
		s.rank[0] = s.off
	})
}

// nearest2 returns the square of how far the nearest of some points is, at most that given, m².
func nearest2(at r2.Vec, points []r2.Vec, most float64) float64 {
	for _, p := range points {
		most = min(most, r2.Norm2(r2.Sub(at, p)))
	}
	return most
}

// spots returns those of n by n places in a box that are inside the outlines, or outside of them, the better first.
func (l *layout) spots(box r2.Box, n int, inside bool, rank func(s *spot)) []spot {
	var list []spot
	size, count := box.Size(), float64(n)
	for i := range n * n {
		s := spot{at: r2.Vec{X: box.Min.X + size.X*(float64(i%n)+0.5)/count, Y: box.Min.Y + size.Y*(float64(i/n)+0.5)/count}}
		if l.inside(s.at) == inside {
			rank(&s)
			list = append(list, s)
		}
	}
	slices.SortStableFunc(list, func(a, b spot) int {
		return cmp.Or(cmp.Compare(a.rank[0], b.rank[0]), cmp.Compare(a.rank[1], b.rank[1]))
	})
	return list
}

// room returns the first clear place for a box, the more level the better.
func (l *layout) room(grid []spot, half r2.Vec) (rect, bool) {
	const gap = 2e-3
	narrow := min(half.X, half.Y) + gap
	for i := range 25 {
		angle := float64((i+1)/2) * math.Pi / 24 * float64(1-2*(i%2))
		for _, p := range grid {
			if p.off < narrow {
				continue // an edge runs into any such box
			}
			if b := (rect{p.at, half, angle}); l.clear(b, gap) {
				return b, true
			}
		}
	}
	return rect{}, false
}

// leading is from one line to the next, in heights of capitals.
const leading = 2.0

// blockHalf returns half the size of a block.
func (l *layout) blockHalf(rows []row) r2.Vec {
	var half r2.Vec
	for _, r := range rows {
		half.X = max(half.X, l.face.width(r.text, r.height)/2)
		half.Y += leading / 2 * r.height
	}
	return half
}

// block writes a block into its box, all its lines from the left.
func (l *layout) block(rows []row, b rect) {
	right, up := along(b.angle), along(b.angle+math.Pi/2)
	top := r2.Add(b.middle, r2.Scale(b.half.Y, up))
	for _, r := range rows {
		width := l.face.width(r.text, r.height)
		base := r2.Sub(top, r2.Scale(leading*0.75*r.height, up))
		base = r2.Sub(base, r2.Scale(b.half.X-width/2, right))
		l.add(shape{layer: Texts, text: r.text, at: base, height: r.height, width: width, angle: b.angle})
		top = r2.Sub(top, r2.Scale(leading*r.height, up))
	}
}
