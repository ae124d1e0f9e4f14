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

// draw draws the trace, names its tilts, and adds the point
// that runs along it.
func (p panel) draw(r trial.Rocking) []group {
	if !(p.most > p.least) || p.span <= 0 {
		return nil
	}
	trace := group{name: "trace"}
	end := p.from.X + p.size.X
	trace.add(path(ink, 0.3, p.from, r2.Vec{X: end, Y: p.from.Y}))
	every := 2.0
	if p.span <= 5 {
		every = 1
	}
	for t := 0.0; t <= p.span; t += every {
		foot := r2.Vec{X: p.at(t, p.least).X, Y: p.from.Y}
		trace.add(path(ink, 0.3, foot, r2.Sub(foot, r2.Vec{Y: 1.2})))
		if math.Mod(t, 2*every) == 0 {
			trace.add(words(r2.Sub(foot, r2.Vec{Y: 4.8}), letter, middle, fmt.Sprintf("%g", t)))
		}
	}
	trace.add(words(r2.Vec{X: p.from.X + p.size.X/2, Y: p.from.Y - 9.2}, letter, middle, "seconds"))
	trace.add(path(soft, 0.25, p.at(0, p.rest), p.at(p.span, p.rest)).dashed(1.2, 1.2))
	named := []float64{p.rest, p.least, p.most}
	var marks []float64
	for _, tilt := range r.Report.Design.Ways().Marks {
		marks = append(append([]float64{-tilt}, marks...), tilt)
	}
	for _, tilt := range marks {
		if p.least < tilt && tilt < p.most {
			trace.add(path(blue, 0.3, p.at(0, tilt), p.at(p.span, tilt)).dashed(0.4, 0.9))
			named = append(named, tilt)
		}
	}
	var line []r2.Vec
	for i := range samplesOf(r) + 1 {
		time := float64(i) * sampleEvery
		line = append(line, p.at(time, r.Trace.At(time).Tilt))
	}
	trace.add(path(ink, 0.45, line...))
	p.tilts(&trace, r, named)
	trace.add(words(r2.Vec{X: p.from.X, Y: p.from.Y + p.size.Y + 8.6}, letter, left, "tilt in time,"), words(r2.Vec{X: p.from.X, Y: p.from.Y + p.size.Y + 4.2}, letter, left, degreeSign(p.began(r))))
	now := group{name: "now", moves: withTime}
	now.add(shape{points: []r2.Vec{p.at(0, p.rest)}, radius: 1.2, fill: rgb(213, 94, 0), stroke: ink, width: 0.3})
	return []group{trace, now}
}

// tilts names tilts at the right of the trace, each at its own height: the first three,
// the others where no other name is near.
func (p panel) tilts(trace *group, r trial.Rocking, named []float64) {
	units := r.Report.Design.Units
	const lineHeight = 4.2
	var taken []float64
	for _, tilt := range named {
		y := p.at(0, tilt).Y - 1.1
		if near := slices.ContainsFunc(taken, func(other float64) bool { return math.Abs(other-y) < lineHeight }); near {
			continue
		}
		taken = append(taken, y)
		text := quantity.Shop(tilt, quantity.Angle, units) + "°"
		if tilt == p.rest {
			text += " rest"
		}
		trace.add(words(r2.Vec{X: p.from.X + p.size.X + 1.5, Y: y}, letter, left, text))
	}
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
