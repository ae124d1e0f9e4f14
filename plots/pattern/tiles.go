package pattern

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/quantity"
)

// Parts of a sheet, m. Where two sheets meet there is one line: the one is cut along it, at its left and upper edge,
// and laid over the strip that its neighbour has beyond it.
const (
	margin = 10e-3 // free on all sides, for any printer
	foot   = 9e-3  // under the drawing, for the sheet's name
	bleed  = arm   // drawn beyond a cut line and cut off, as far as a cross reaches
)

// A tiling says how a drawing is cut into sheets: cells of one size in columns and rows
// that leave no gap. The upper left cell's corner is at the origin, rows go down.
type tiling struct {
	angle      float64 // by which the drawing is turned
	paper      Paper   // as it is held
	origin     r2.Vec  // of the turned drawing
	cell       r2.Vec
	strip      float64
	cols, rows int
	number     []int // of each cell, row by row, from 1; 0 where nothing falls
	count      int
}

// corner returns the upper left corner of a cell, of the turned drawing.
func (t *tiling) corner(row, col int) r2.Vec {
	return r2.Add(t.origin, r2.Vec{X: float64(col) * t.cell.X, Y: -float64(row) * t.cell.Y})
}

// at returns the number of a cell, 0 for none.
func (t *tiling) at(row, col int) int {
	if row < 0 || col < 0 || row >= t.rows || col >= t.cols {
		return 0
	}
	return t.number[row*t.cols+col]
}

// each calls do for every cell on which something falls, row by row.
func (t *tiling) each(do func(row, col int)) {
	for i, n := range t.number {
		if n > 0 {
			do(i/t.cols, i%t.cols)
		}
	}
}

// tile returns the tiling of the fewest sheets: the drawing as it is drawn, turned by a
// right angle, or by any other where that saves a sheet; the paper upright or not.
func tile(shapes []shape, paper Paper, units quantity.System) *tiling {
	var spots []r2.Vec
	for _, s := range shapes {
		spots = append(spots, s.spots(4e-3)...) // what falls between two is less than 2 mm deep in a cell, and on its neighbour
	}
	strip := quantity.In / 2 // that is glued over
	if units == quantity.Metric {
		strip = 15e-3
	}
	var best *tiling
	for _, angle := range turns(60) {
		points := scene.Placed(spots, r2.NewRotation(angle, r2.Vec{}).Rotate)
		box := boxOf(points)
		for _, p := range []Paper{paper, {paper.Name, paper.Height, paper.Width}} {
			best = fewest(best, tiling{angle: angle, paper: p, strip: strip}, points, box)
		}
	}
	return best
}

// fewest returns the best so far or a better one: t with the drawing moved about on its sheets.
func fewest(best *tiling, t tiling, points []r2.Vec, box r2.Box) *tiling {
	const free = 2e-3 // beside the drawing, for the width of a line
	t.cell.X = t.paper.Width - 2*margin - bleed - t.strip
	t.cell.Y = t.paper.Height - 2*margin - foot - bleed - t.strip
	cells := func(length, cell float64) (n int, slack float64) {
		n = max(1, int(math.Ceil((length+2*free-bleed-t.strip)/cell)))
		return n, float64(n)*cell + bleed + t.strip - length - 2*free
	}
	var slack r2.Vec
	t.cols, slack.X = cells(box.Size().X, t.cell.X)
	t.rows, slack.Y = cells(box.Size().Y, t.cell.Y)
	for _, across := range []float64{0.5, 0, 0.25, 0.75, 1} {
		for _, down := range []float64{0.5, 0, 0.25, 0.75, 1} {
			u := t
			u.origin = r2.Vec{X: box.Min.X - free - across*slack.X + bleed, Y: box.Max.Y + free + down*slack.Y - bleed}
			u.fill(points)
			if best == nil || u.count < best.count && u.joined() {
				best = &u
			}
		}
		if t.cols == 1 && t.rows == 1 {
			break // nothing to save
		}
	}
	return best
}

// fill numbers the cells on which something falls.
func (t *tiling) fill(points []r2.Vec) {
	t.number = make([]int, t.cols*t.rows)
	for _, p := range points {
		// what lies beyond the outer cells is on their bleed or strip
		col := min(max(int(math.Floor((p.X-t.origin.X)/t.cell.X)), 0), t.cols-1)
		row := min(max(int(math.Floor((t.origin.Y-p.Y)/t.cell.Y)), 0), t.rows-1)
		t.number[row*t.cols+col] = 1
	}
	t.count = 0
	for i, n := range t.number {
		if n > 0 {
			t.count++
			t.number[i] = t.count
		}
	}
}

// joined reports whether all sheets hang together by their edges.
func (t *tiling) joined() bool {
	reached := make([]bool, len(t.number))
	var visit func(row, col int) int
	visit = func(row, col int) int {
		if t.at(row, col) == 0 || reached[row*t.cols+col] {
			return 0
		}
		reached[row*t.cols+col] = true
		return 1 + visit(row-1, col) + visit(row+1, col) + visit(row, col-1) + visit(row, col+1)
	}
	first := slices.Index(t.number, 1)
	return first >= 0 && visit(first/t.cols, first%t.cols) == t.count
}

// turns returns angles by which a drawing can be turned, rad: none, a right angle, and then
// all others of n steps in half a turn, none of which stands letters on their heads.
func turns(n int) []float64 {
	list := []float64{0, math.Pi / 2}
	for i := 1; i < n; i++ {
		if 2*i != n {
			list = append(list, math.Remainder(float64(i)*math.Pi/float64(n), math.Pi))
		}
	}
	return list
}
