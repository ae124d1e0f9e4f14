package pattern

import (
	"bytes"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/rocker/bench"
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
	cutLine   = scene.Pen{Colour: fromPattern, Width: 0.15, Dash: []float64{4 * point, 3 * point}}
	glueLine  = scene.Pen{Colour: fromPattern, Width: 0.15, Dash: []float64{1 * point, 2 * point}}
	crossLine = scene.Pen{Colour: scene.Ink, Width: 0.2}
)

// fromPattern is the colour of what is told from the pattern on a sheet: its seams and their notes.
const fromPattern scene.Colour = "#595959"

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
func (p *pages) group(clip *r2.Box) { p.now().Add(scene.Group{Clip: clip}) }

// now returns the page that was begun last.
func (p *pages) now() *scene.Scene { return &p.list[len(p.list)-1] }

// add adds a shape to the group that was begun last.
func (p *pages) add(s scene.Shape) {
	groups := p.now().Groups
	groups[len(groups)-1].Add(s)
}

// line draws a straight line.
func (p *pages) line(pen scene.Pen, from, to r2.Vec) {
	p.draw(shape{path: bench.Polyline(false, from, to)}, pen)
}

// draw draws a shape, placed on its page.
func (p *pages) draw(s shape, pen scene.Pen) {
	for _, one := range s.onPaper() {
		if one.Text == "" {
			one.Pen = pen
		}
		p.add(one)
	}
}

// A script is how a text is written.
type script struct {
	height float64      // of the capitals, m
	angle  float64      // of the base line, rad
	colour scene.Colour // "" is black
	bold   bool
}

// write writes a text with its left end at a place.
func (p *pages) write(text string, at r2.Vec, how script) {
	if text == "" {
		return
	}
	s := scene.Words(milli(at), how.height*1e3/scene.Capital, scene.Left, text)
	s.Angle, s.Bold = how.angle, how.bold
	if how.colour != "" {
		s.Fill = how.colour
	}
	p.add(s)
}

// file returns the pages as a PDF.
func (p *pages) file(title string) ([]byte, error) {
	var out bytes.Buffer
	err := scene.WritePDF(&out, title, p.list...)
	return out.Bytes(), err
}

// onPaper returns a shape as a scene has it, without a pen; none of a point.
func (s shape) onPaper() []scene.Shape {
	if s.text != "" {
		text := scene.Words(milli(s.left()), s.height*1e3/scene.Capital, scene.Left, s.text)
		text.Angle = s.angle
		return []scene.Shape{text}
	}
	if len(s.path.Strokes) == 0 {
		return nil
	}
	line := scene.Shape{Points: []r2.Vec{milli(s.path.Start)}, Turns: []float64{0}, Closed: s.path.Closed}
	for _, a := range drawn(s.path) {
		line.Points, line.Turns = append(line.Points, milli(a.To)), append(line.Turns, a.Turn)
	}
	return []scene.Shape{line}
}

// milli returns a place of m in millimetres.
func milli(p r2.Vec) r2.Vec { return r2.Scale(1e3, p) }
