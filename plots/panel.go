package plots

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// A panel is a small chart beside a side view: the tilt in time, or over the righting arm, m, in place of it.
type panel struct {
	from, size  r2.Vec  // its lower left corner and its size, mm of paper
	least, most float64 // tilts, rad
	rest        float64
	low, span   float64 // the first time and how much of it, s
}

// at returns where a tilt at a time lies, mm.
func (p panel) at(time, tilt float64) r2.Vec {
	return r2.Vec{X: p.from.X + p.size.X*(time-p.low)/p.span, Y: p.from.Y + p.size.Y*(tilt-p.least)/(p.most-p.least)}
}

// level draws a line across the chart at a tilt.
func (p panel) level(pen pen, tilt float64) shape {
	return pen.line(p.at(p.low, tilt), p.at(p.low+p.span, tilt))
}

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
	for _, tilt := range r.Report.Design.Directions().Marks {
		marks = append(append([]float64{-tilt}, marks...), tilt)
	}
	for _, tilt := range marks {
		if p.least < tilt && tilt < p.most {
			trace.add(p.level(pen{blue, 0.3, []float64{0.4, 0.9}}, tilt))
			named = append(named, tilt)
		}
	}
	var line []r2.Vec
	for _, s := range list {
		line = append(line, p.at(s.time, s.tilt))
	}
	trace.add(path(ink, 0.45, line...))
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

// Where the two charts of a live view stand, mm.
const (
	panelLeft = 15.0
	panelGap  = 8.0
)

// setCharts lays out the two charts: the righting arm to the right, the tilt upwards, and beside it the time to
// the right over the same tilts.
func (v *liveView) setCharts() {
	each := (v.width - panelLeft - panelGap - 6) / 2
	arms := v.arms(v.watched.Load)
	if b := v.watched.Before; b != nil {
		arms = append(arms, v.arms(b.Load)...)
	}
	low, high := math.Inf(1), math.Inf(-1)
	for _, q := range arms {
		low, high = min(low, q.Arm), max(high, q.Arm)
	}
	if !(high > low) {
		low, high = -0.01, 0.01
	}
	room := 0.04 * (high - low)
	v.arm = panel{from: r2.Vec{X: panelLeft, Y: panelFoot}, size: r2.Vec{X: each, Y: livePanel}, least: v.least, most: v.most, rest: v.rest,
		low: low - room, span: high - low + 2*room}
	v.time = v.arm
	v.time.from.X, v.time.low, v.time.span = panelLeft+each+panelGap, 0, max(v.span, 1)
}

// arms returns the righting arms of a load at the tilts shown.
func (v *liveView) arms(l *check.Load) []check.Righting {
	return slices.DeleteFunc(l.Righting(), func(q check.Righting) bool { return q.Tilt < v.least || q.Tilt > v.most })
}

// charts draws both charts.
func (v *liveView) charts() []group {
	arm, time := group{name: "arm"}, group{name: "trace"}
	arm.add(rectangle(pale, 0.25, v.arm.from, v.arm.size))
	time.add(rectangle(pale, 0.25, v.time.from, v.time.size))
	arm.add(v.tiltMarks()...)
	arm.add(v.armMarks()...)
	time.add(v.timeMarks()...)
	arm.add(v.arm.level(restLine, v.rest), v.time.level(restLine, v.rest))
	curve := func(l *check.Load, pen pen) {
		var line []r2.Vec
		for _, q := range v.arms(l) {
			line = append(line, v.arm.at(q.Arm, q.Tilt))
		}
		arm.add(pen.line(line...))
	}
	if b := v.watched.Before; b != nil {
		curve(b.Load, pen{faded, 0.4, []float64{1.6, 1.2}})
	}
	curve(v.watched.Load, pen{colour: ink, width: 0.5})
	for _, m := range margins(v.watched.Load) { // the tilts at which the load goes over
		if m.Tip >= v.least && m.Tip <= v.most {
			arm.add(pen{colour: ink, width: 0.4}.ring(v.arm.at(0, m.Tip), 1.1).filled(white))
		}
	}
	if v.tilt == nil {
		return []group{arm, time}
	}
	var line []r2.Vec
	for t := 0.0; t <= v.span; t += sampleEvery {
		line = append(line, v.within(t, v.tilt(t)))
	}
	level := path(orange, 0.5, v.arm.at(v.arm.low, v.rest), v.time.at(v.time.span, v.rest))
	return []group{arm, time, {name: "tilt-in-time", shapes: []shape{path(ink, 0.5, line...)}},
		{name: "level", moves: withTilt, shapes: []shape{level}}, v.time.now(1.3)}
}

// within returns where a tilt at a time lies, not above or below the charts.
func (v *liveView) within(time, tilt float64) r2.Vec {
	at := v.time.at(time, tilt)
	at.Y = min(max(at.Y, v.arm.from.Y), v.arm.from.Y+v.arm.size.Y)
	return at
}

// tiltMarks writes the tilts at the left.
func (v *liveView) tiltMarks() []shape {
	var list []shape
	every := 15
	if v.most-v.least > 1.9 {
		every = 30
	}
	for n := int(math.Ceil(inDegrees(v.least)/float64(every))) * every; float64(n) <= inDegrees(v.most); n += every {
		at := v.arm.at(v.arm.low, float64(n)*quantity.Deg)
		list = append(list, path(ink, 0.3, at, r2.Sub(at, r2.Vec{X: 1.2})), words(r2.Sub(at, r2.Vec{X: 2.2, Y: 1.1}), letter, right, fmt.Sprintf("%d°", n)))
	}
	return list
}

// armMarks writes the arms below, and what is drawn above.
func (v *liveView) armMarks() []shape {
	units := v.watched.Report.Design.Units
	one := quantity.One(quantity.Length, units)
	every := 1.0
	if units == quantity.Metric {
		every = 25
	}
	for v.arm.span/one/every > 6 {
		every *= 2
	}
	var list []shape
	for n := math.Ceil(v.arm.low / one / every); n*every*one <= v.arm.low+v.arm.span; n++ {
		if n == 0 {
			list = append(list, path(soft, 0.3, v.arm.at(0, v.least), v.arm.at(0, v.most)))
		}
		list = append(list, v.arm.tick(n*every*one, fmt.Sprintf("%g", n*every))...)
	}
	title := "what brings it back (ring: goes over)"
	if v.narrow {
		title = "what brings it back"
	}
	return append(append(list, v.arm.below(9, "arm, "+quantity.Unit(quantity.Length, units))), v.arm.above(2, title)...)
}

// timeMarks writes the seconds below, and what is drawn above.
func (v *liveView) timeMarks() []shape {
	var list []shape
	every := 1.0
	for v.time.span/every > 7 || v.narrow && v.time.span/every > 4 {
		every *= 2
	}
	for t := 0.0; t <= v.time.span; t += every {
		list = append(list, v.time.tick(t, fmt.Sprintf("%g", t))...)
	}
	text := "tilt in time"
	if m := v.watched.Motion; m != nil && !v.narrow {
		text += ", " + degreeSign(v.time.began(*m))
	}
	return append(append(list, v.time.below(9, "seconds")), v.time.above(2, text)...)
}
