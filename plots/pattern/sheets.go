package pattern

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// sheets are the pages of a drawing that is glued together.
type sheets struct {
	*pages
	*tiling
	shapes []shape // turned
	name   string
	units  quantity.System
}

// small is the height of the capitals of what is not part of the pattern, m.
const small = 2.6e-3

// named returns the name of a sheet, "row-column" from 1.
func named(row, col int) string { return fmt.Sprintf("%d-%d", row+1, col+1) }

// sheet draws one sheet.
func (s *sheets) sheet(row, col int) {
	s.page(s.paper.Width, s.paper.Height)
	corner := s.corner(row, col)
	at := r2.Vec{X: margin + bleed, Y: s.paper.Height - margin - bleed}
	place := func(p r2.Vec) r2.Vec { return r2.Add(at, r2.Sub(p, corner)) }
	frame := r2.Box{Min: r2.Vec{X: margin, Y: margin + foot}, Max: r2.Vec{X: s.paper.Width - margin, Y: s.paper.Height - margin}}
	l := &layout{face: s.face} // of this page, for the notes in its strips

	s.group(&r2.Box{Min: milli(frame.Min), Max: milli(frame.Max)})
	for _, each := range s.shapes {
		if each = each.placed(place); meets(each, frame) {
			s.draw(each, styles[each.layer])
			l.add(each)
		}
	}
	s.group(nil)
	s.seams(row, col, at, frame, l)
	s.crosses(row, col, at)
	s.foot(row, col)
}

// meets reports whether the box around a shape meets a page.
func meets(s shape, frame r2.Box) bool {
	box := bounds([]shape{s})
	const line = 1e-3 // its width, and more
	return box.Min.X < frame.Max.X+line && box.Max.X > frame.Min.X-line &&
		box.Min.Y < frame.Max.Y+line && box.Max.Y > frame.Min.Y-line
}

// seams draws the lines to cut along, left and above, and those to glue up to, right and
// below, each where there is a sheet on the other side.
func (s *sheets) seams(row, col int, at r2.Vec, frame r2.Box, l *layout) {
	right, low := at.X+s.cell.X, at.Y-s.cell.Y
	if s.at(row, col-1) > 0 {
		s.line(cutLine, r2.Vec{X: at.X, Y: frame.Min.Y}, r2.Vec{X: at.X, Y: frame.Max.Y})
		s.note([]string{"cut"}, l, r2.Vec{X: (frame.Min.X + at.X) / 2, Y: low}, r2.Vec{X: (frame.Min.X + at.X) / 2, Y: at.Y}, 2e-3)
	}
	if s.at(row-1, col) > 0 {
		s.line(cutLine, r2.Vec{X: frame.Min.X, Y: at.Y}, r2.Vec{X: frame.Max.X, Y: at.Y})
		s.note([]string{"cut"}, l, r2.Vec{X: at.X, Y: (frame.Max.Y + at.Y) / 2}, r2.Vec{X: right, Y: (frame.Max.Y + at.Y) / 2}, 2e-3)
	}
	if s.at(row, col+1) > 0 {
		s.line(glueLine, r2.Vec{X: right, Y: frame.Min.Y}, r2.Vec{X: right, Y: frame.Max.Y})
		x := (right + frame.Max.X) / 2
		s.note(under(row, col+1), l, r2.Vec{X: x, Y: low}, r2.Vec{X: x, Y: at.Y}, small)
	}
	if s.at(row+1, col) > 0 {
		s.line(glueLine, r2.Vec{X: frame.Min.X, Y: low}, r2.Vec{X: frame.Max.X, Y: low})
		height := (low + frame.Min.Y) / 2
		s.note(under(row+1, col), l, r2.Vec{X: at.X, Y: height}, r2.Vec{X: right, Y: height}, small)
	}
}

// under says which sheet is glued over a strip, the shorter for where there is less room.
func under(row, col int) []string {
	name := named(row, col)
	return []string{"glue " + name + " over this, up to the line", "glue " + name + " over this", name}
}

// note writes the first of its texts for which the drawing leaves room along a strip, none
// if it leaves none.
func (s *sheets) note(texts []string, l *layout, from, to r2.Vec, height float64) {
	run := r2.Sub(to, from)
	angle := 0.0
	if run.Y > run.X {
		angle = math.Pi / 2
	}
	for _, text := range texts {
		width := s.width(text, height)
		for _, share := range []float64{0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9} {
			middle := r2.Add(from, r2.Scale(share, run))
			if !l.clear(rect{middle, r2.Vec{X: width / 2, Y: height / 2}, angle}, 1e-3) {
				continue
			}
			base := r2.Sub(middle, r2.Scale(height/2, along(angle+math.Pi/2)))
			s.write(text, r2.Sub(base, r2.Scale(width/2, along(angle))), script{height: height, angle: angle, colour: fromPattern})
			return
		}
	}
}

// crosses draws a registration mark at each corner that the cell shares with another sheet.
func (s *sheets) crosses(row, col int, at r2.Vec) {
	for _, c := range [][2]int{{0, 0}, {0, 1}, {1, 0}, {1, 1}} {
		r, k := row+c[0], col+c[1] // the corner between rows r−1 and r, columns k−1 and k
		if min(1, s.at(r-1, k-1))+min(1, s.at(r-1, k))+min(1, s.at(r, k-1))+min(1, s.at(r, k)) > 1 {
			mark := r2.Add(at, r2.Sub(s.corner(c[0], c[1]), s.origin))
			for _, half := range []r2.Vec{{X: arm}, {Y: arm}} {
				s.line(crossLine, r2.Sub(mark, half), r2.Add(mark, half))
			}
		}
	}
}

// foot writes the name of a sheet under the drawing.
func (s *sheets) foot(row, col int) {
	width := s.paper.Width - 2*margin
	head := fmt.Sprintf("Sheet %s   %d of %d   for %s paper   print at 100 %%",
		named(row, col), s.at(row, col), s.count, s.paper.Name)
	s.write(head, r2.Vec{X: margin, Y: margin + 4.6e-3}, script{height: 3e-3, bold: true})
	below := s.name
	if s.count > 1 {
		below = "cross to cross " + both(s.cell.X, s.units) + " across, " + both(s.cell.Y, s.units) + " up.   " + s.name
	}
	s.write(s.fit(below, small, width), r2.Vec{X: margin, Y: margin + 0.4e-3}, script{height: small})
}

// first draws the page before the sheets: the whole drawing small with its sheets
// numbered, the two test squares at true size, and what to do.
func (s *sheets) first() {
	paper := s.paper
	if paper.Width < paper.Height {
		paper.Width, paper.Height = paper.Height, paper.Width
	}
	s.page(paper.Width, paper.Height)
	top := paper.Height - margin
	s.write(s.fit(s.name, heading, paper.Width-2*margin), r2.Vec{X: margin, Y: top - heading},
		script{height: heading, bold: true})
	sheets := fmt.Sprintf("%d sheets", s.count)
	if s.count == 1 {
		sheets = "1 sheet"
	}
	s.write(sheets+" of "+paper.Name+" paper.   Print at 100 %, not \"fit to page\".",
		r2.Vec{X: margin, Y: top - 2.4*heading}, script{height: lettering})
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
		together = []string{
			"Cut each sheet along its dashed line, at the left and at the top. Leave the dotted lines.",
			"Lay it over the strip of its neighbour, up to the dotted line, so that the halves of the crosses meet. Tape, look, then glue.",
			"Begin at the top left and go along the rows.",
		}
	}
	return [2][]string{
		{
			"Measure this square and the other one, both ways, before you print the rest. " +
				"If they are off, the printer has shrunk the page: set its scale to 100\u00a0%.",
			"The paper in the printer must be " + s.paper.Name + ".",
		},
		append(together, "Then tape from tip to tip and write what the tape says beside what it should be.",
			"The edge is the middle of the line."),
	}
}

// instructed draws a test square with advice in it.
func (s *sheets) instructed(sq square, at r2.Vec, advice []string) {
	s.draw(sq.shapes(s.face, at)[0], scene.Pen{Colour: scene.Ink, Width: 0.25})
	const told = 2.9e-3 // height of the capitals of advice, m
	y := at.Y + sq.side - 10e-3
	s.write("This square is "+sq.text[:len(sq.text)-len(" square")], r2.Vec{X: at.X + 6e-3, Y: y},
		script{height: lettering, bold: true})
	for _, paragraph := range advice {
		y -= 3.5e-3
		for _, line := range s.wrapped(paragraph, told, sq.side-12e-3) {
			y -= 5.5e-3
			s.write(line, r2.Vec{X: at.X + 6e-3, Y: y}, script{height: told})
		}
	}
}

// overview draws the whole drawing and its sheets into a box.
func (s *sheets) overview(box r2.Box) {
	all := r2.Vec{X: float64(s.cols) * s.cell.X, Y: float64(s.rows) * s.cell.Y}
	size := r2.Add(all, r2.Vec{X: bleed + s.strip, Y: bleed + s.strip})
	scale := min(box.Size().X/size.X, box.Size().Y/size.Y)
	middle := r2.Add(s.origin, r2.Vec{X: (all.X + s.strip - bleed) / 2, Y: -(all.Y + s.strip - bleed) / 2})
	place := func(p r2.Vec) r2.Vec {
		return r2.Add(box.Center(), r2.Scale(scale, r2.Sub(p, middle)))
	}
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

// cellName writes the name of a sheet into a corner of it where it is clear.
func (s *sheets) cellName(row, col int, place func(r2.Vec) r2.Vec, scale float64, l *layout) {
	height := min(4e-3, 0.25*scale*s.cell.X)
	half := r2.Vec{X: s.width(named(row, col), height) / 2 * 1.1, Y: height / 2} // bold is the wider
	middle := place(r2.Scale(0.5, r2.Add(s.corner(row, col), s.corner(row+1, col+1))))
	out := r2.Sub(r2.Scale(scale/2, s.cell), r2.Add(half, r2.Vec{X: 1e-3, Y: 1e-3}))
	at := r2.Add(middle, r2.Vec{X: -out.X, Y: out.Y})
	for _, c := range []r2.Vec{{X: -1, Y: 1}, {X: 1, Y: 1}, {X: -1, Y: -1}, {X: 1, Y: -1}, {}, {Y: 1}, {Y: -1}} {
		if p := r2.Add(middle, r2.Vec{X: c.X * out.X, Y: c.Y * out.Y}); l.clear(rect{middle: p, half: half}, 0.3e-3) {
			at = p
			break
		}
	}
	s.write(named(row, col), r2.Sub(at, half), script{height: height, colour: fromPattern, bold: true})
}

// cellOf draws one sheet of the overview; the outer ones reach to the edge
// of what they can print.
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
