package plots

import (
	"slices"
	"strconv"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A sheet is a page of paper to write measures on, with its edge free for any printer.
type sheet struct {
	scene
	units quantity.System
	y     float64 // how far down it is filled, mm from the lower edge of the paper
}

// The type and lines of a sheet, mm.
const (
	edgeFree = 11.0
	small    = 2.9 // letters of a label, 8 points
	fineLine = 0.2
	line2    = 0.35
	ringSize = 2.7

	letterWide = 1.4 // of a small letter, the mean or a little more
)

// newSheet returns an empty page: letter for inches, A4 for millimetres.
func newSheet(units quantity.System, title string, how ...string) *sheet {
	s := &sheet{scene: scene{width: 215.9, height: 279.4, title: title, alt: title + ": a page to print and fill in."}, units: units}
	if units == quantity.Metric {
		s.width, s.height = 210, 297
	}
	s.y = s.height - edgeFree - 5
	s.draw("title", words(r2.Vec{X: edgeFree, Y: s.y}, 6, left, title))
	s.y -= 6
	for i, t := range append([]string{""}, how...) {
		s.draw("how", words(r2.Vec{X: edgeFree, Y: s.y - 4*float64(max(0, i-1))}, small, left, t))
	}
	return s
}

// draw adds shapes to a group of that name.
func (s *sheet) draw(name string, shapes ...shape) {
	for i := range s.groups {
		if s.groups[i].name == name {
			s.groups[i].add(shapes...)
			return
		}
	}
	s.groups = append(s.groups, group{name: name, shapes: shapes})
}

// picture returns the page as a picture.
func (s *sheet) picture(name string) Picture {
	return Picture{Name: name, Alt: s.alt, draw: s.write}
}

// ring is the number of a blank in a ring.
func ring(at r2.Vec, number int) []shape {
	return []shape{
		{points: []r2.Vec{at}, radius: ringSize, stroke: ink, fill: rgb(255, 255, 255), width: line2},
		words(r2.Vec{X: at.X, Y: at.Y - 1.05}, small, middle, strconv.Itoa(number)),
	}
}

// dimension is a measure with both ends of the tape: a line with a tick at each end and
// its number in the middle.
func dimension(from, to r2.Vec, number int) []shape {
	way := r2.Unit(r2.Sub(to, from))
	across := r2.Scale(1.6, r2.Vec{X: -way.Y, Y: way.X})
	shapes := []shape{
		path(ink, line2, from, to),
		path(ink, 0.5, r2.Add(from, across), r2.Sub(from, across)),
		path(ink, 0.5, r2.Add(to, across), r2.Sub(to, across)),
	}
	return append(shapes, ring(r2.Scale(0.5, r2.Add(from, to)), number)...)
}

// witness is a thin line from what is measured to the dimension.
func witness(points ...r2.Vec) shape { return path(soft, fineLine, points...).dashed(1, 0.8) }

// blanks returns the measures on the sheets by their numbers, the first of a number.
func blanks(from, to int) []piece.Measure {
	var list []piece.Measure
	for _, m := range piece.Measures() {
		if m.Blank >= from && m.Blank <= to && !slices.ContainsFunc(list, func(o piece.Measure) bool { return o.Blank == m.Blank }) {
			list = append(list, m)
		}
	}
	slices.SortFunc(list, func(a, b piece.Measure) int { return a.Blank - b.Blank })
	return list
}

// blank draws one line to write on: number, label, key, line, unit.
func (s *sheet) blank(m piece.Measure, x, y, width float64) {
	s.draw("blanks", ring(r2.Vec{X: x + ringSize, Y: y + 1}, m.Blank)...)
	s.draw("blanks", words(r2.Vec{X: x + 7, Y: y}, small, left, m.Label))
	unit := quantity.Unit(m.Kind, s.units)
	if m.Kind == quantity.Angle {
		unit = "deg"
	}
	end := x + width
	s.draw("blanks", words(r2.Vec{X: end, Y: y}, small, right, unit))
	to := end - 2*float64(len(unit)) - 1.5 // m is wide
	from := max(to-26, x+8+letterWide*float64(len(m.Label)))
	s.draw("blanks", path(ink, fineLine, r2.Vec{X: from, Y: y - 0.8}, r2.Vec{X: to, Y: y - 0.8}))
}

// foot writes the last lines of a page.
func (s *sheet) foot(texts ...string) {
	for i, t := range texts {
		s.draw("foot", words(r2.Vec{X: edgeFree, Y: edgeFree + 4*float64(len(texts)-1-i)}, small, left, t))
	}
}

// box is a place to tick, with a word behind it.
func box(at r2.Vec, word string) []shape {
	const side = 3.2
	return []shape{rectangle(ink, line2, at, r2.Vec{X: side, Y: side}), words(r2.Add(at, r2.Vec{X: side + 1.4, Y: 0.5}), small, left, word)}
}

// question draws a line of boxes behind a word.
func (s *sheet) question(label string, y float64, answers ...string) {
	s.draw("questions", words(r2.Vec{X: edgeFree, Y: y}, small, left, label))
	x := edgeFree + 30
	for _, a := range answers {
		s.draw("questions", box(r2.Vec{X: x, Y: y - 0.5}, a)...)
		x += 10 + 1.6*float64(len(a))
	}
	if len(answers) == 0 {
		s.draw("questions", path(ink, fineLine, r2.Vec{X: x, Y: y - 0.8}, r2.Vec{X: s.width - edgeFree, Y: y - 0.8}))
	}
}

// numbered says where the numbers come back.
func numbered() string {
	return "The numbers are those in the comments of a new design: rockerwright new chair"
}
