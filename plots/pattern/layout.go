package pattern

import (
	"cmp"
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
	y := &yard{ruler: newRuler()}
	if d.placed != nil && d.placedFor == units {
		y.list = slices.Clone(d.placed)
		if squares {
			y.squares()
		}
		return y.list, nil
	}
	y.lay(d.Items)
	y.titleBlock(d, units)
	y.longCheck(d, units)
	for _, item := range d.Items {
		if n, ok := item.(Note); ok {
			y.note(n)
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
	right, up := r2.Vec{X: s.side}, r2.Vec{Y: s.side}
	list := []shape{{layer: Check, path: polyline(true, at, r2.Add(at, right), r2.Add(at, r2.Add(right, up)), r2.Add(at, up))}}
	middle := r2.Add(at, r2.Scale(0.5, r2.Add(right, up)))
	for i, line := range []string{s.text, "measure both ways", "before you cut"} {
		list = append(list, r.lettered(Check, line, lettering, r2.Add(middle, r2.Vec{Y: 6e-3 - 8e-3*float64(i)}), 0)...)
	}
	return list
}

// A row is a line of a title block.
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

// titleBlock writes the title block inside the outline where it fits, for what is cut off
// is lost, and otherwise under the part.
func (y *yard) titleBlock(d Drawing, units quantity.System) {
	ways := d.titleRows(y.ruler, units)
	var points []r2.Vec
	for _, fence := range y.fences {
		points = append(points, fence...)
	}
	if len(points) > 0 {
		grid := y.grid(points)
		for _, rows := range ways {
			if b, found := y.room(grid, y.blockHalf(rows)); found {
				y.block(rows, b)
				return
			}
		}
	}
	y.under(ways[0])
}

// under writes a block under everything.
func (y *yard) under(rows []row) {
	box, half := bounds(y.list), y.blockHalf(rows)
	y.block(rows, rect{middle: r2.Vec{X: (box.Min.X + box.Max.X) / 2, Y: box.Min.Y - half.Y - 8e-3}, half: half})
}

// A spot is a place where something could stand.
type spot struct {
	at  r2.Vec
	off float64 // from the nearest end of a wall, m; not less than from the wall
}

// grid returns points inside the outlines, those nearest to their edge first, where there
// is a sheet of paper anyway, and of these those nearest to the middle.
func (y *yard) grid(points []r2.Vec) []spot {
	lo, hi := points[0], points[0]
	for _, p := range points {
		lo = r2.Vec{X: min(lo.X, p.X), Y: min(lo.Y, p.Y)}
		hi = r2.Vec{X: max(hi.X, p.X), Y: max(hi.Y, p.Y)}
	}
	const n = 60
	type ranked struct {
		spot
		edge, middle float64 // how far from them
	}
	var list []ranked
	for i := range n * n {
		p := r2.Vec{X: lo.X + (hi.X-lo.X)*(float64(i%n)+0.5)/n, Y: lo.Y + (hi.Y-lo.Y)*(float64(i/n)+0.5)/n}
		if y.inside(p) {
			edge, off := math.Inf(1), math.Inf(1)
			for _, q := range points {
				edge = min(edge, r2.Norm2(r2.Sub(p, q)))
			}
			for _, w := range y.walls {
				off = min(off, r2.Norm2(r2.Sub(p, w[0])), r2.Norm2(r2.Sub(p, w[1])))
			}
			const sheet = 0.04 // m: what is nearer to the edge is on a sheet with it, mostly
			list = append(list, ranked{spot{p, math.Sqrt(off)}, max(math.Sqrt(edge), sheet), r2.Norm2(r2.Sub(p, r2.Scale(0.5, r2.Add(lo, hi))))})
		}
	}
	slices.SortStableFunc(list, func(a, b ranked) int { return cmp.Or(cmp.Compare(a.edge, b.edge), cmp.Compare(a.middle, b.middle)) })
	sorted := make([]spot, len(list))
	for i, s := range list {
		sorted[i] = s.spot
	}
	return sorted
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

// blockHalf returns half the size of a title block.
func (y *yard) blockHalf(rows []row) r2.Vec {
	var half r2.Vec
	for _, r := range rows {
		if r.text != "" {
			half.X = max(half.X, y.ruler.width(r.text, r.height)/2)
			half.Y += leading / 2 * r.height
		}
	}
	return half
}

// block writes a title block into its box.
func (y *yard) block(rows []row, b rect) {
	right, up := along(b.angle), along(b.angle+math.Pi/2)
	top := r2.Add(b.middle, r2.Scale(b.half.Y, up))
	for _, r := range rows {
		if r.text == "" {
			continue
		}
		width := y.ruler.width(r.text, r.height)
		base := r2.Sub(top, r2.Scale(leading*0.75*r.height, up))
		base = r2.Sub(base, r2.Scale(b.half.X-width/2, right)) // all begin at the left
		y.add(shape{layer: Texts, text: r.text, at: base, height: r.height, width: width, angle: b.angle})
		top = r2.Sub(top, r2.Scale(leading*r.height, up))
	}
}
