package view

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// A panel is a small chart at a side view, the tilt upwards, the time (s) or the righting arm (m) to the right.
type panel struct {
	from, size  r2.Vec  // its lower left corner and its size, mm of paper
	least, most float64 // tilts, rad
	rest        float64
	low, span   float64 // the first time or arm, and how much of it is shown
}

// at returns where a tilt at a time lies, mm.
func (p panel) at(time, tilt float64) r2.Vec {
	return r2.Vec{X: p.from.X + p.size.X*(time-p.low)/p.span, Y: p.from.Y + p.size.Y*(tilt-p.least)/(p.most-p.least)}
}

// level draws a line across the chart at a tilt.
func (p panel) level(pen scene.Pen, tilt float64) scene.Shape {
	return pen.Line(p.at(p.low, tilt), p.at(p.low+p.span, tilt))
}

// restLine is the pen of the rest in time.
var restLine = scene.Dashed(scene.Soft, 0.25, 1.2, 1.2)

// tick draws a mark below the chart at a time, with a word, if any, under it.
func (p panel) tick(time float64, word string) []scene.Shape {
	foot := r2.Vec{X: p.at(time, p.least).X, Y: p.from.Y}
	list := []scene.Shape{scene.Path(scene.Ink, 0.3, foot, r2.Sub(foot, r2.Vec{Y: 1.2}))}
	if word != "" {
		list = append(list, scene.Words(r2.Sub(foot, r2.Vec{Y: 4.8}), letter, scene.Middle, word))
	}
	return list
}

// below writes under the chart what its marks measure.
func (p panel) below(down float64, text string) scene.Shape {
	return scene.Words(r2.Vec{X: p.from.X + p.size.X/2, Y: p.from.Y - down}, letter, scene.Middle, text)
}

// above writes the title over the chart.
func (p panel) above(up float64, texts ...string) []scene.Shape {
	return scene.Lines(r2.Vec{X: p.from.X, Y: p.from.Y + p.size.Y + up}, letter, letterRow, scene.Left, texts...)
}

// draw draws the tilt in time with its marks, and the point that runs along it.
func (p panel) draw(r trial.Rocking, list []instant) []scene.Group {
	if !(p.most > p.least) || p.span <= 0 {
		return nil
	}
	trace := scene.Group{Name: "trace"}
	trace.Add(scene.Path(scene.Ink, 0.3, p.from, r2.Add(p.from, r2.Vec{X: p.size.X})))
	every := 2.0
	if p.span <= 5 {
		every = 1
	}
	for t := 0.0; t <= p.span; t += every {
		word := ""
		if math.Mod(t, 2*every) == 0 {
			word = fmt.Sprintf("%g", t)
		}
		trace.Add(p.tick(t, word)...)
	}
	trace.Add(p.below(9.2, "seconds"), p.level(restLine, p.rest))
	named := []float64{p.rest, p.least, p.most}
	var marks []float64
	for _, tilt := range r.Report.Design.Directions().Marks {
		marks = append(append([]float64{-tilt}, marks...), tilt)
	}
	for _, tilt := range marks {
		if p.least < tilt && tilt < p.most {
			trace.Add(p.level(scene.Dashed(scene.Blue, 0.3, 0.4, 0.9), tilt))
			named = append(named, tilt)
		}
	}
	var line []r2.Vec
	for _, s := range list {
		line = append(line, p.at(s.time, s.tilt))
	}
	trace.Add(scene.Path(scene.Ink, 0.45, line...))
	trace.Add(p.tilts(named, r.Report.Design.Units)...)
	trace.Add(p.above(8.6, "tilt in time,", degreeSign(p.began(r)))...)
	return []scene.Group{trace, p.now(1.2)}
}

// now is the point that runs along the trace.
func (p panel) now(radius float64) scene.Group {
	point := scene.Pen{Colour: scene.Ink, Width: 0.3}.Ring(p.at(0, p.rest), radius).Filled(scene.Orange)
	return scene.Group{Name: "now", Moves: scene.WithTime, Shapes: []scene.Shape{point}}
}

// tilts names tilts at the right of the trace, each at its own height where no other name is near.
func (p panel) tilts(named []float64, units quantity.System) []scene.Shape {
	var list []scene.Shape
	for _, tilt := range named {
		at := r2.Vec{X: p.from.X + p.size.X + 1.5, Y: p.at(0, tilt).Y - 1.1}
		if slices.ContainsFunc(list, func(other scene.Shape) bool { return math.Abs(other.Points[0].Y-at.Y) < 4.2 }) {
			continue
		}
		text := quantity.Shop(tilt, quantity.Angle, units) + "°"
		if tilt == p.rest {
			text += " rest"
		}
		list = append(list, scene.Words(at, letter, scene.Left, text))
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
