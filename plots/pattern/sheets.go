package pattern

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

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

// seams draws the lines to cut along, left and above, and to glue up to, right and below, where there is a neighbour.
func (s *sheets) seams(row, col int, at r2.Vec, frame r2.Box, l *layout) {
	right, low := at.X+s.cell.X, at.Y-s.cell.Y
	if s.at(row, col-1) > 0 {
		s.line(cutLine, r2.Vec{X: at.X, Y: frame.Min.Y}, r2.Vec{X: at.X, Y: frame.Max.Y})
		x := (frame.Min.X + at.X) / 2
		s.note([]string{"cut"}, l, r2.Vec{X: x, Y: low}, r2.Vec{X: x, Y: at.Y}, 2e-3)
	}
	if s.at(row-1, col) > 0 {
		s.line(cutLine, r2.Vec{X: frame.Min.X, Y: at.Y}, r2.Vec{X: frame.Max.X, Y: at.Y})
		height := (frame.Max.Y + at.Y) / 2
		s.note([]string{"cut"}, l, r2.Vec{X: at.X, Y: height}, r2.Vec{X: right, Y: height}, 2e-3)
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

// note writes the first of its texts for which the drawing leaves room along a strip, none if there is none.
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
			note := s.write(text, height, r2.Sub(base, r2.Scale(width/2, along(angle))))
			note.Angle, note.Fill = angle, seamGrey
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
	s.write(head, 3e-3, r2.Vec{X: margin, Y: margin + 4.6e-3}).Bold = true
	below := s.name
	if s.count > 1 {
		below = "cross to cross " + both(s.cell.X, s.units) + " across, " + both(s.cell.Y, s.units) + " up.   " + s.name
	}
	s.write(s.fit(below, small, width), small, r2.Vec{X: margin, Y: margin + 0.4e-3})
}
