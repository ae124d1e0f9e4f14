package sheets

import (
	"slices"
	"strconv"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A sheet is a page of paper to write measures on, with its edge free for any printer.
type sheet struct {
	scene.Scene
	units quantity.System
	y     float64 // how far down it is filled, mm from the lower edge of the paper
}

// The type and lines of a sheet, mm.
const (
	edgeFree = 11.0
	small    = 2.9 // letters of a label, 8 points
	smallRow = 4.0 // from base line to base line
	fineLine = 0.2
	line2    = 0.35
	ringSize = 2.7

	letterWide = 1.4 // of a small letter, the mean or a little more
)

// newSheet returns an empty page: letter for inches, A4 for millimetres.
func newSheet(units quantity.System, title string, how ...string) *sheet {
	s := &sheet{units: units}
	s.Width, s.Height, s.White = 215.9, 279.4, true
	s.Title, s.Alt = title, title+": a page to print and fill in."
	if units == quantity.Metric {
		s.Width, s.Height = 210, 297
	}
	s.y = s.Height - edgeFree - 5
	s.draw("title", scene.Words(r2.Vec{X: edgeFree, Y: s.y}, 6, scene.Left, title))
	s.y -= 6
	s.draw("how", scene.Lines(r2.Vec{X: edgeFree, Y: s.y}, small, smallRow, scene.Left, how...)...)
	return s
}

// draw adds shapes to a group of that name.
func (s *sheet) draw(name string, shapes ...scene.Shape) {
	i := slices.IndexFunc(s.Groups, func(g scene.Group) bool { return g.Name == name })
	if i < 0 {
		i = len(s.Groups)
		s.Add(scene.Group{Name: name})
	}
	s.Groups[i].Add(shapes...)
}

// ring is the number of a blank in a ring.
func ring(number int, at r2.Vec) []scene.Shape {
	return []scene.Shape{scene.Pen{Colour: scene.Ink, Width: line2}.Ring(at, ringSize).Filled(scene.White),
		scene.Words(r2.Vec{X: at.X, Y: at.Y - 1.05}, small, scene.Middle, strconv.Itoa(number))}
}

// dimension is a measure with both ends of the tape: a line with a tick at each end and its number in the
// middle; before it thin lines, each by its two ends, that lead to it from what is measured.
func dimension(number int, from, to r2.Vec, leads ...r2.Vec) []scene.Shape {
	var shapes []scene.Shape
	for ends := range slices.Chunk(leads, 2) {
		shapes = append(shapes, lead(ends...))
	}
	along := r2.Unit(r2.Sub(to, from))
	across := r2.Scale(1.6, r2.Vec{X: -along.Y, Y: along.X})
	shapes = append(shapes, inked(line2, from, to),
		inked(0.5, r2.Add(from, across), r2.Sub(from, across)), inked(0.5, r2.Add(to, across), r2.Sub(to, across)))
	return append(shapes, ring(number, r2.Scale(0.5, r2.Add(from, to)))...)
}

// lead is a thin line from what is measured to the dimension.
func lead(points ...r2.Vec) scene.Shape {
	return scene.Dashed(scene.Soft, fineLine, 1, 0.8).Line(points...)
}

// blanks returns the measures on the sheets by their numbers, the first of a number.
func blanks(from, to int) []piece.Measure {
	list := slices.DeleteFunc(piece.Measures(), func(m piece.Measure) bool { return m.Blank < from || m.Blank > to })
	slices.SortStableFunc(list, func(a, b piece.Measure) int { return a.Blank - b.Blank })
	return slices.CompactFunc(list, func(a, b piece.Measure) bool { return a.Blank == b.Blank })
}

// blank draws one line to write on: number, label, key, line, unit.
func (s *sheet) blank(m piece.Measure, x, y, width float64) {
	unit := quantity.Unit(m.Kind, s.units)
	if m.Kind == quantity.Angle {
		unit = "deg"
	}
	end := x + width
	to := end - 2*float64(len(unit)) - 1.5 // m is wide
	from := max(to-26, x+8+letterWide*float64(len(m.Label)))
	s.draw("blanks", ring(m.Blank, r2.Vec{X: x + ringSize, Y: y + 1})...)
	s.draw("blanks", scene.Words(r2.Vec{X: x + 7, Y: y}, small, scene.Left, m.Label),
		scene.Words(r2.Vec{X: end, Y: y}, small, scene.Right, unit),
		inked(fineLine, r2.Vec{X: from, Y: y - 0.8}, r2.Vec{X: to, Y: y - 0.8}))
}

// foot writes the last lines of a page.
func (s *sheet) foot(texts ...string) {
	at := r2.Vec{X: edgeFree, Y: edgeFree + smallRow*float64(len(texts)-1)}
	s.draw("foot", scene.Lines(at, small, smallRow, scene.Left, texts...)...)
}

// question draws a line of boxes to tick behind a word, each with its answer; without answers a line to write on.
func (s *sheet) question(label string, y float64, answers ...string) {
	const side = 3.2
	s.draw("questions", scene.Words(r2.Vec{X: edgeFree, Y: y}, small, scene.Left, label))
	x := edgeFree + 30
	for _, a := range answers {
		s.draw("questions", scene.Rectangle(scene.Ink, line2, r2.Vec{X: x, Y: y - 0.5}, r2.Vec{X: side, Y: side}),
			scene.Words(r2.Vec{X: x + side + 1.4, Y: y}, small, scene.Left, a))
		x += 10 + 1.6*float64(len(a))
	}
	if len(answers) == 0 {
		s.draw("questions", inked(fineLine, r2.Vec{X: x, Y: y - 0.8}, r2.Vec{X: s.Width - edgeFree, Y: y - 0.8}))
	}
}

// numbered says where the numbers come back.
const numbered = "The numbers are those in the comments of a new design: rockerwright new chair"

func inked(width float64, points ...r2.Vec) scene.Shape {
	return scene.Path(scene.Ink, width, points...)
}
