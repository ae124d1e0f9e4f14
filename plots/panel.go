package plots

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// A panel is a small chart beside a side view: the tilt in time.
type panel struct {
	from, size  r2.Vec  // its lower left corner and its size, mm of paper
	least, most float64 // tilts, rad
	rest        float64
	span        float64 // s
}

// at returns where a tilt at a time lies, mm.
func (p panel) at(time, tilt float64) r2.Vec {
	return r2.Vec{X: p.from.X + p.size.X*time/p.span, Y: p.from.Y + p.size.Y*(tilt-p.least)/(p.most-p.least)}
}

// line returns instants as a line of the chart.
func (p panel) line(list []instant) []r2.Vec {
	var points []r2.Vec
	for _, s := range list {
		points = append(points, p.at(s.time, s.tilt))
	}
	return points
}

// level draws a line across the chart at a tilt.
func (p panel) level(pen pen, tilt float64) shape { return pen.line(p.at(0, tilt), p.at(p.span, tilt)) }

// restLine is the pen of the rest in time.
var restLine = pen{soft, 0.25, []float64{1.2, 1.2}}

// tick draws a mark below the chart at a time, with a word, if any, under it.
func (p panel) tick(time float64, word string) []shape {
	foot := r2.Vec{X: p.at(time, p.least).X, Y: p.from.Y}
	list := []shape{path(ink, 0.3, foot, r2.Sub(foot, r2.Vec{Y: 1.2}))}
	if word != "" {
		list = append(list, words(r2.Sub(foot, r2.Vec{Y: 4.8}), letter, middle, word))
	}
	return list
}

// below writes what the chart's marks count.
func (p panel) below(down float64, text string) shape {
	return words(r2.Vec{X: p.from.X + p.size.X/2, Y: p.from.Y - down}, letter, middle, text)
}

// above writes what is drawn.
func (p panel) above(up float64, texts ...string) []shape {
	return lines(r2.Vec{X: p.from.X, Y: p.from.Y + p.size.Y + up}, letter, letterRow, left, texts...)
}

// draw draws the trace, names its tilts, and adds the point
// that runs along it.
func (p panel) draw(r trial.Rocking, list []instant) []group {
	if !(p.most > p.least) || p.span <= 0 {
		return nil
	}
	trace := group{name: "trace"}
	trace.add(path(ink, 0.3, p.from, r2.Add(p.from, r2.Vec{X: p.size.X})))
	every := 2.0
	if p.span <= 5 {
		every = 1
	}
	for t := 0.0; t <= p.span; t += every {
		word := ""
		if math.Mod(t, 2*every) == 0 {
			word = fmt.Sprintf("%g", t)
		}
		trace.add(p.tick(t, word)...)
	}
	trace.add(p.below(9.2, "seconds"), p.level(restLine, p.rest))
	named := []float64{p.rest, p.least, p.most}
	var marks []float64
	for _, tilt := range r.Report.Design.Ways().Marks {
		marks = append(append([]float64{-tilt}, marks...), tilt)
	}
	for _, tilt := range marks {
		if p.least < tilt && tilt < p.most {
			trace.add(p.level(pen{blue, 0.3, []float64{0.4, 0.9}}, tilt))
			named = append(named, tilt)
		}
	}
	trace.add(path(ink, 0.45, p.line(list)...))
	trace.add(p.tilts(named, r.Report.Design.Units)...)
	trace.add(p.above(8.6, "tilt in time,", degreeSign(p.began(r)))...)
	return []group{trace, p.now(1.2)}
}

// now is the point that runs along the trace.
func (p panel) now(radius float64) group {
	point := pen{colour: ink, width: 0.3}.ring(p.at(0, p.rest), radius).filled(orange)
	return group{name: "now", moves: withTime, shapes: []shape{point}}
}

// tilts names tilts at the right of the trace, each at its own height where no other name is near.
func (p panel) tilts(named []float64, units quantity.System) []shape {
	var list []shape
	for _, tilt := range named {
		at := r2.Vec{X: p.from.X + p.size.X + 1.5, Y: p.at(0, tilt).Y - 1.1}
		if slices.ContainsFunc(list, func(other shape) bool { return math.Abs(other.points[0].Y-at.Y) < 4.2 }) {
			continue
		}
		text := quantity.Shop(tilt, quantity.Angle, units) + "°"
		if tilt == p.rest {
			text += " rest"
		}
		list = append(list, words(at, letter, left, text))
	}
	return list
}

// began says how the motion began.
func (p panel) began(r trial.Rocking) string {
	switch from := r.Start.Tilt - p.rest; {
	case r.Start.Push.Force != 0:
		return "pushed"
	case from != 0:
		return "let go " + sided(from, r.Report.Design)
	}
	return "started at rest"
}
