package pattern

import (
	"bytes"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
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
