package view

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

// Where the two charts of a live view stand, mm.
const (
	panelLeft = 15.0
	panelGap  = 8.0
)

// setCharts lays out both charts, the tilt upwards: one with the righting arm to the right, beside it one with the time.
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
	v.arm = panel{from: r2.Vec{X: panelLeft, Y: panelFoot}, size: r2.Vec{X: each, Y: livePanel},
		least: v.least, most: v.most, rest: v.rest, low: low - room, span: high - low + 2*room}
	v.time = v.arm
	v.time.from.X, v.time.low, v.time.span = panelLeft+each+panelGap, 0, max(v.span, 1)
}

// arms returns the righting arms of a load at the tilts shown.
func (v *liveView) arms(l *check.Load) []check.Righting {
	return slices.DeleteFunc(l.Righting(), func(q check.Righting) bool { return q.Tilt < v.least || q.Tilt > v.most })
}

func (v *liveView) charts() []scene.Group {
	arm, time := scene.Group{Name: "arm"}, scene.Group{Name: "trace"}
	arm.Add(scene.Rectangle(scene.Pale, 0.25, v.arm.from, v.arm.size))
	arm.Add(append(v.tiltMarks(), v.armMarks()...)...)
	arm.Add(v.arm.level(restLine, v.rest), v.time.level(restLine, v.rest))
	time.Add(scene.Rectangle(scene.Pale, 0.25, v.time.from, v.time.size))
	time.Add(v.timeMarks()...)
	curve := func(l *check.Load, pen scene.Pen) {
		var line []r2.Vec
		for _, q := range v.arms(l) {
			line = append(line, v.arm.at(q.Arm, q.Tilt))
		}
		arm.Add(pen.Line(line...))
	}
	if b := v.watched.Before; b != nil {
		curve(b.Load, beforePen)
	}
	curve(v.watched.Load, scene.Pen{Colour: scene.Ink, Width: 0.5})
	for _, m := range margins(v.watched.Load) { // the tilts at which the load goes over
		if m.Tip >= v.least && m.Tip <= v.most {
			arm.Add(scene.Pen{Colour: scene.Ink, Width: 0.4}.Ring(v.arm.at(0, m.Tip), 1.1).Filled(scene.White))
		}
	}
	if v.tilt == nil {
		return []scene.Group{arm, time}
	}
	var line []r2.Vec
	for t := 0.0; t <= v.span; t += sampleEvery {
		line = append(line, v.within(t, v.tilt(t)))
	}
	level := scene.Path(scene.Orange, 0.5, v.arm.at(v.arm.low, v.rest), v.time.at(v.time.span, v.rest))
	return []scene.Group{arm, time, {Name: "tilt-in-time", Shapes: []scene.Shape{scene.Path(scene.Ink, 0.5, line...)}},
		{Name: "level", Moves: scene.WithTilt, Shapes: []scene.Shape{level}}, v.time.now(1.3)}
}

// within returns where a tilt at a time lies, not above or below the charts.
func (v *liveView) within(time, tilt float64) r2.Vec {
	at := v.time.at(time, tilt)
	at.Y = min(max(at.Y, v.arm.from.Y), v.arm.from.Y+v.arm.size.Y)
	return at
}

// tiltMarks writes the tilts at the left.
func (v *liveView) tiltMarks() []scene.Shape {
	var list []scene.Shape
	every := 15
	if v.most-v.least > 1.9 {
		every = 30
	}
	for n := int(math.Ceil(inDegrees(v.least)/float64(every))) * every; float64(n) <= inDegrees(v.most); n += every {
		at := v.arm.at(v.arm.low, float64(n)*quantity.Deg)
		list = append(list, scene.Path(scene.Ink, 0.3, at, r2.Sub(at, r2.Vec{X: 1.2})),
			scene.Words(r2.Sub(at, r2.Vec{X: 2.2, Y: 1.1}), letter, scene.Right, fmt.Sprintf("%d°", n)))
	}
	return list
}

// armMarks writes the arms below, and what is drawn above.
func (v *liveView) armMarks() []scene.Shape {
	units := v.watched.Report.Design.Units
	one := quantity.One(quantity.Length, units)
	every := 1.0
	if units == quantity.Metric {
		every = 25
	}
	for v.arm.span/one/every > 6 {
		every *= 2
	}
	var list []scene.Shape
	for n := math.Ceil(v.arm.low / one / every); n*every*one <= v.arm.low+v.arm.span; n++ {
		if n == 0 {
			list = append(list, scene.Path(scene.Soft, 0.3, v.arm.at(0, v.least), v.arm.at(0, v.most)))
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
func (v *liveView) timeMarks() []scene.Shape {
	var list []scene.Shape
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
