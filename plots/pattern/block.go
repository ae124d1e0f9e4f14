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

// titleRows returns the title block in its shapes, the better first.
func (d Drawing) titleRows(r *ruler, units quantity.System) [][]row {
	part, piece := r.fit(d.Part, heading, widest*0.7), r.fit(d.Piece, lettering, widest*0.7)
	unit := "unit: " + quantity.Unit(quantity.Length, units)
	date, owner := "date ____________", "owner ________________"
	const scale = "print at 100 %"
	both := r.fit(part, lettering, widest*0.4)
	if piece != "" {
		both += ", " + r.fit(piece, lettering, widest*0.4)
	}
	return [][]row{
		{{part, heading}, {piece, lettering}, {date + "  " + owner, lettering}, {scale + ", " + unit, lettering}},
		{{both, lettering}, {date + " " + owner, lettering}, {scale + ", " + unit, lettering}},
		{{both, lettering}, {date + "  " + owner + "  " + scale + ", " + unit, lettering}},
		{{part, lettering}, {piece, lettering}, {date, lettering}, {owner, lettering}, {scale, lettering}, {unit, lettering}},
	}
}

// note writes a note outside the outline and near to it, so that it takes no sheet of its own
// where that can be, and otherwise under everything.
func (y *yard) note(lines []string) {
	var rows []row
	for _, line := range lines {
		rows = append(rows, row{y.ruler.fit(line, lettering, 2*widest), lettering})
	}
	y.settle(y.outer(), rows)
}

// settle writes a block at one of some places in the first of its shapes for which there is room, and the first
// under everything where there is none.
func (y *yard) settle(places []spot, ways ...[]row) {
	for i, rows := range ways {
		ways[i] = slices.DeleteFunc(rows, func(r row) bool { return r.text == "" })
		if b, found := y.room(places, y.blockHalf(ways[i])); found {
			y.block(ways[i], b)
			return
		}
	}
	box, half := bounds(y.list), y.blockHalf(ways[0])
	y.block(ways[0], rect{middle: r2.Vec{X: box.Center().X, Y: box.Min.Y - half.Y - 8e-3}, half: half})
}

// A spot is a place where something could stand.
type spot struct {
	at   r2.Vec
	off  float64    // from the nearest end of a wall, m; not less than from the wall
	rank [2]float64 // by which the better ones come first
}

// inner returns places inside the outlines, those nearest to their edge first, where there
// is a sheet of paper anyway, and of these those nearest to the middle.
func (y *yard) inner() []spot {
	edge := slices.Concat(y.fences...)
	box := boxOf(edge)
	ends := make([]r2.Vec, 0, 2*len(y.walls))
	for _, w := range y.walls {
		ends = append(ends, w[0], w[1])
	}
	const sheet = 0.04 // m: what is nearer to the edge is on a sheet with it, mostly
	return y.spots(box, 60, true, func(s *spot) {
		s.off = math.Sqrt(nearest2(s.at, ends, math.Inf(1)))
		s.rank = [2]float64{max(math.Sqrt(nearest2(s.at, edge, math.Inf(1))), sheet), r2.Norm2(r2.Sub(s.at, box.Center()))}
	})
}

// outer returns places outside the outlines in the box around everything, those nearest to what stands there first.
func (y *yard) outer() []spot {
	box, edge := bounds(y.list), slices.Concat(y.fences...)
	return y.spots(box, 40, false, func(s *spot) {
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

// spots returns those of n by n places in a box that are inside the outlines, or are not, ranked.
func (y *yard) spots(box r2.Box, n int, inside bool, rank func(s *spot)) []spot {
	var list []spot
	size, count := box.Size(), float64(n)
	for i := range n * n {
		s := spot{at: r2.Vec{X: box.Min.X + size.X*(float64(i%n)+0.5)/count, Y: box.Min.Y + size.Y*(float64(i/n)+0.5)/count}}
		if y.inside(s.at) == inside {
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
func (y *yard) room(grid []spot, half r2.Vec) (rect, bool) {
	const gap = 2e-3
	narrow := min(half.X, half.Y) + gap
	for i := range 25 {
		angle := float64((i+1)/2) * math.Pi / 24 * float64(1-2*(i%2))
		for _, p := range grid {
			if p.off < narrow {
				continue // a wall runs into any such box
			}
			if b := (rect{p.at, half, angle}); y.clear(b, gap) {
				return b, true
			}
		}
	}
	return rect{}, false
}

// leading is from one line to the next, in heights of capitals.
const leading = 2.0

// blockHalf returns half the size of a block.
func (y *yard) blockHalf(rows []row) r2.Vec {
	var half r2.Vec
	for _, r := range rows {
		half.X = max(half.X, y.ruler.width(r.text, r.height)/2)
		half.Y += leading / 2 * r.height
	}
	return half
}

// block writes a block into its box, all its lines from the left.
func (y *yard) block(rows []row, b rect) {
	right, up := along(b.angle), along(b.angle+math.Pi/2)
	top := r2.Add(b.middle, r2.Scale(b.half.Y, up))
	for _, r := range rows {
		width := y.ruler.width(r.text, r.height)
		base := r2.Sub(top, r2.Scale(leading*0.75*r.height, up))
		base = r2.Sub(base, r2.Scale(b.half.X-width/2, right))
		y.add(shape{layer: Texts, text: r.text, at: base, height: r.height, width: width, angle: b.angle})
		top = r2.Sub(top, r2.Scale(leading*r.height, up))
	}
}
