package pattern

import (
	"fmt"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/rocker/bench"
)

// first draws the page before the sheets: the drawing small, its sheets numbered, both test squares, and what to do.
func (s *sheets) first() {
	paper := s.paper
	paper.Width, paper.Height = max(paper.Width, paper.Height), min(paper.Width, paper.Height)
	s.page(paper.Width, paper.Height)
	top := paper.Height - margin
	s.write(s.fit(s.name, heading, paper.Width-2*margin), heading, r2.Vec{X: margin, Y: top - heading}).Bold = true
	sheets := fmt.Sprintf("%d sheets", s.count)
	if s.count == 1 {
		sheets = "1 sheet"
	}
	s.write(sheets+" of "+paper.Name+" paper.   Print at 100 %, not \"fit to page\".",
		lettering, r2.Vec{X: margin, Y: top - 2.4*heading})
	at := r2.Vec{X: margin, Y: margin}
	for i, sq := range testSquares {
		s.instructed(sq, at, s.advice()[i])
		at.X += sq.side + 8e-3
	}
	low := margin + testSquares[0].side + 6e-3
	s.overview(r2.Box{Min: r2.Vec{X: margin, Y: low}, Max: r2.Vec{X: paper.Width - margin, Y: top - 3*heading}})
}

// advice is what stands in the test squares, by lines.
func (s *sheets) advice() [2][]string {
	together := []string{"One sheet: there is nothing to glue."}
	if s.count > 1 {
		together = []string{"Cut each sheet along its dashed line, at the left and at the top. Leave the dotted lines.",
			"Lay it over the strip of its neighbour, up to the dotted line, so that the halves of the crosses meet. " +
				"Tape, look, then glue.",
			"Begin at the top left and go along the rows."}
	}
	return [2][]string{
		{"Measure this square and the other one, both ways, before you print the rest. " +
			"If they are off, the printer has shrunk the page: set its scale to 100\u00a0%.",
			"The paper in the printer must be " + s.paper.Name + "."},
		append(together, "Then tape from tip to tip and write what the tape says beside what it should be.",
			"The edge is the middle of the line."),
	}
}

// instructed draws a test square with advice in it.
func (s *sheets) instructed(sq square, at r2.Vec, advice []string) {
	s.draw(sq.shapes(s.face, at)[0], scene.Pen{Colour: scene.Ink, Width: 0.25})
	const told = 2.9e-3 // height of the capitals of advice, m
	y := at.Y + sq.side - 10e-3
	left := at.X + 6e-3
	s.write("This square is "+sq.text[:len(sq.text)-len(" square")], lettering, r2.Vec{X: left, Y: y}).Bold = true
	for _, paragraph := range advice {
		y -= 3.5e-3
		for _, line := range s.wrapped(paragraph, told, sq.side-12e-3) {
			y -= 5.5e-3
			s.write(line, told, r2.Vec{X: left, Y: y})
		}
	}
}

// overview draws the whole drawing and its sheets into a box.
func (s *sheets) overview(box r2.Box) {
	all := r2.Vec{X: float64(s.cols) * s.cell.X, Y: float64(s.rows) * s.cell.Y}
	size := r2.Add(all, r2.Vec{X: bleed + s.strip, Y: bleed + s.strip})
	scale := min(box.Size().X/size.X, box.Size().Y/size.Y)
	middle := r2.Add(s.origin, r2.Vec{X: (all.X + s.strip - bleed) / 2, Y: -(all.Y + s.strip - bleed) / 2})
	place := func(p r2.Vec) r2.Vec { return r2.Add(box.Center(), r2.Scale(scale, r2.Sub(p, middle))) }
	s.each(func(row, col int) { s.cellOf(row, col, place) })
	l := &layout{face: s.face}
	for _, each := range s.shapes {
		if each.text == "" && each.layer != Check {
			pen := scene.Pen{Colour: scene.Ink, Width: 0.12}
			if each.layer == Outline {
				pen.Width = 0.3
			}
			each = each.placed(place)
			s.draw(each, pen)
			l.add(each)
		}
	}
	s.each(func(row, col int) { s.cellName(row, col, place, scale, l) })
}

// cellName writes the name of a sheet into the first corner of it that is clear, else into the first.
func (s *sheets) cellName(row, col int, place func(r2.Vec) r2.Vec, scale float64, l *layout) {
	height := min(4e-3, 0.25*scale*s.cell.X)
	half := r2.Vec{X: s.width(named(row, col), height) / 2 * 1.1, Y: height / 2} // bold is the wider
	middle := place(r2.Scale(0.5, r2.Add(s.corner(row, col), s.corner(row+1, col+1))))
	out := r2.Sub(r2.Scale(scale/2, s.cell), r2.Add(half, r2.Vec{X: 1e-3, Y: 1e-3}))
	at := func(c [2]float64) r2.Vec { return r2.Add(middle, r2.Vec{X: c[0] * out.X, Y: c[1] * out.Y}) }
	corners := [][2]float64{{-1, 1}, {1, 1}, {-1, -1}, {1, -1}, {0, 0}, {0, 1}, {0, -1}}
	free := slices.IndexFunc(corners, func(c [2]float64) bool { return l.clear(rect{middle: at(c), half: half}, 0.3e-3) })
	name := s.write(named(row, col), height, r2.Sub(at(corners[max(0, free)]), half))
	name.Bold, name.Fill = true, seamGrey
}

// cellOf draws one sheet of the overview; the outer ones reach to the edge of what they can print.
func (s *sheets) cellOf(row, col int, place func(r2.Vec) r2.Vec) {
	at, far := s.corner(row, col), s.corner(row+1, col+1)
	if row == 0 {
		at.Y += bleed
	}
	if col == 0 {
		at.X -= bleed
	}
	if row == s.rows-1 {
		far.Y -= s.strip
	}
	if col == s.cols-1 {
		far.X += s.strip
	}
	outline := shape{path: bench.Polyline(true, at, r2.Vec{X: far.X, Y: at.Y}, far, r2.Vec{X: at.X, Y: far.Y})}
	s.draw(outline.placed(place), scene.Pen{Colour: "#808080", Width: 0.15})
}
