package pattern

import (
	"bytes"
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/quantity"
)

// point is a point of printers, mm.
const point = 25.4 / 72

var (
	styles = map[Layer]scene.Pen{
		Outline: {Colour: scene.Ink, Width: 0.35},
		Stock:   {Colour: scene.Ink, Width: 0.18, Dash: []float64{8 * point, 4 * point}},
		Centre:  {Colour: scene.Ink, Width: 0.18, Dash: []float64{14 * point, 3 * point, 2 * point, 3 * point}},
		Marks:   {Colour: scene.Ink, Width: 0.25},
		Texts:   {Colour: scene.Ink, Width: 0.18},
		Check:   {Colour: scene.Ink, Width: 0.18},
	}
	cutLine   = scene.Pen{Colour: seamGrey, Width: 0.15, Dash: []float64{4 * point, 3 * point}}
	glueLine  = scene.Pen{Colour: seamGrey, Width: 0.15, Dash: []float64{1 * point, 2 * point}}
	crossLine = scene.Pen{Colour: scene.Ink, Width: 0.2}
)

// seamGrey is the colour of what stands on a sheet and is no part of the pattern: seams and their notes.
const seamGrey scene.Colour = "#595959"

// pages are what is printed: places are metres from the lower left corner of the page that was begun last.
type pages struct {
	face
	list []scene.Scene
}

// page begins a page of a size, m.
func (p *pages) page(width, height float64) {
	p.list = append(p.list, scene.Scene{Width: width * 1e3, Height: height * 1e3})
	p.group(nil)
}

// group begins a group, of which only what lies in a box is drawn; nil draws all.
func (p *pages) group(clip *r2.Box) { p.list[len(p.list)-1].Add(scene.Group{Clip: clip}) }

// add adds a shape to the group that was begun last, and returns it.
func (p *pages) add(s scene.Shape) *scene.Shape {
	groups := p.list[len(p.list)-1].Groups
	group := &groups[len(groups)-1]
	group.Add(s)
	return &group.Shapes[len(group.Shapes)-1]
}

func (p *pages) line(pen scene.Pen, from, to r2.Vec) { p.add(pen.Line(milli(from), milli(to))) }

// draw draws a shape, placed on its page; a text has no pen.
func (p *pages) draw(s shape, pen scene.Pen) {
	for _, one := range s.onPaper() {
		if one.Text == "" {
			one.Pen = pen
		}
		p.add(one)
	}
}

// write writes a text from its left end, its capitals so high (m), black and level, and returns it to be changed.
func (p *pages) write(text string, height float64, at r2.Vec) *scene.Shape {
	return p.add(textOf(text, height, at))
}

// file returns the pages as a PDF.
func (p *pages) file(title string) ([]byte, error) {
	var out bytes.Buffer
	err := scene.WritePDF(&out, title, p.list...)
	return out.Bytes(), err
}

// textOf returns a text as a scene has it.
func textOf(text string, height float64, at r2.Vec) scene.Shape {
	return scene.Words(milli(at), height*1e3/scene.Capital, scene.Left, text)
}

// onPaper returns a shape as a scene has it, without a pen; none of a point.
func (s shape) onPaper() []scene.Shape {
	if s.text != "" {
		text := textOf(s.text, s.height, s.left())
		text.Angle = s.angle
		return []scene.Shape{text}
	}
	if len(s.path.Strokes) == 0 {
		return nil
	}
	line := scene.Shape{Points: []r2.Vec{milli(s.path.Start)}, Turns: []float64{0}, Closed: s.path.Closed}
	list := arcs(s.path)
	if n := len(list); s.path.Closed && n > 1 && list[n-1].Turn == 0 { // the straight stroke home
		list = list[:n-1]
	}
	for _, a := range list {
		line.Points, line.Turns = append(line.Points, milli(a.To)), append(line.Turns, a.Turn)
	}
	return []scene.Shape{line}
}

// milli returns a place of m in millimetres.
func milli(p r2.Vec) r2.Vec { return r2.Scale(1e3, p) }

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
