package plots

import (
	"fmt"
	"image/color"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

// paired are the two charts of a live view: the righting arm to the right, the tilt
// upwards, and beside it the time to the right over the same tilts.
type paired struct {
	view *liveView
	arm  panel   // its time is the arm, m
	low  float64 // least arm shown, m
	time panel
}

// Where the two charts stand, mm.
const (
	panelLeft = 15.0
	panelGap  = 8.0
)

func livePanels(v *liveView) paired {
	each := (v.width - panelLeft - panelGap - 6) / 2
	size := r2.Vec{X: each, Y: livePanel}
	p := paired{view: v}
	low, high := math.Inf(1), math.Inf(-1)
	for _, l := range p.loads() {
		for _, q := range l.Righting() {
			if q.Tilt >= v.least && q.Tilt <= v.most {
				low, high = min(low, q.Arm), max(high, q.Arm)
			}
		}
	}
	if !(high > low) {
		low, high = -0.01, 0.01
	}
	room := 0.04 * (high - low)
	p.low = low - room
	p.arm = panel{from: r2.Vec{X: panelLeft, Y: panelFoot}, size: size, least: v.least, most: v.most, rest: v.rest, span: high - low + 2*room}
	p.time = panel{from: r2.Vec{X: panelLeft + each + panelGap, Y: panelFoot}, size: size, least: v.least, most: v.most, rest: v.rest, span: max(v.span, 1)}
	return p
}

// loads returns whose righting arms are drawn.
func (p *paired) loads() []*check.Load {
	list := []*check.Load{p.view.watched.Load}
	if b := p.view.watched.Before; b != nil {
		list = append(list, b.Load)
	}
	return list
}

// groups draws both charts.
func (p *paired) groups() []group {
	v := p.view
	arm, time := group{name: "arm"}, group{name: "trace"}
	arm.add(rectangle(pale, 0.25, p.arm.from, p.arm.size))
	time.add(rectangle(pale, 0.25, p.time.from, p.time.size))
	arm.add(p.tiltMarks()...)
	arm.add(p.armMarks()...)
	time.add(p.timeMarks()...)
	for _, one := range []*panel{&p.arm, &p.time} {
		arm.add(path(soft, 0.25, one.at(0, v.rest), one.at(one.span, v.rest)).dashed(1.2, 1.2))
	}
	if b := v.watched.Before; b != nil {
		arm.add(p.curve(b.Load, rgb(140, 140, 140), 0.4).dashed(1.6, 1.2))
	}
	arm.add(p.curve(v.watched.Load, ink, 0.5))
	arm.add(p.hilltops()...)
	groups := []group{arm, time}
	if v.tilt == nil {
		return groups
	}
	trace := group{name: "tilt-in-time"}
	var line []r2.Vec
	for t := 0.0; t <= v.span; t += sampleEvery {
		line = append(line, p.within(p.time.at(t, v.tilt(t))))
	}
	trace.add(path(ink, 0.5, line...))
	orange := rgb(213, 94, 0)
	level := group{name: "level", moves: withTilt}
	level.add(path(orange, 0.5, p.arm.at(0, v.rest), p.time.at(p.time.span, v.rest)))
	now := group{name: "now", moves: withTime}
	now.add(shape{points: []r2.Vec{p.time.at(0, v.rest)}, radius: 1.3, fill: orange, stroke: ink, width: 0.3})
	return append(groups, trace, level, now)
}

// within returns a place of the charts, not above or below them.
func (p *paired) within(at r2.Vec) r2.Vec {
	at.Y = min(max(at.Y, p.arm.from.Y), p.arm.from.Y+p.arm.size.Y)
	return at
}

// tiltMarks writes the tilts at the left.
func (p *paired) tiltMarks() []shape {
	v := p.view
	var list []shape
	every := 15
	if v.most-v.least > 1.9 {
		every = 30
	}
	for n := int(math.Ceil(inDegrees(v.least)/float64(every))) * every; float64(n) <= inDegrees(v.most); n += every {
		at := p.arm.at(0, float64(n)*math.Pi/180)
		list = append(list, path(ink, 0.3, at, r2.Sub(at, r2.Vec{X: 1.2})), words(r2.Sub(at, r2.Vec{X: 2.2, Y: 1.1}), letter, right, fmt.Sprintf("%d°", n)))
	}
	return list
}

// armMarks writes the arms below, and what is drawn above.
func (p *paired) armMarks() []shape {
	units := p.view.watched.Report.Design.Units
	one := scaleOf(quantity.Length, units)
	every := 1.0
	if units == quantity.Metric {
		every = 25
	}
	for p.arm.span/one/every > 6 {
		every *= 2
	}
	var list []shape
	for n := math.Ceil(p.low / one / every); n*every*one <= p.low+p.arm.span; n++ {
		x := n * every
		foot := r2.Vec{X: p.arm.at(x*one-p.low, 0).X, Y: p.arm.from.Y}
		if n == 0 {
			list = append(list, path(soft, 0.3, foot, r2.Add(foot, r2.Vec{Y: p.arm.size.Y})))
		}
		list = append(list, path(ink, 0.3, foot, r2.Sub(foot, r2.Vec{Y: 1.2})), words(r2.Sub(foot, r2.Vec{Y: 4.8}), letter, middle, fmt.Sprintf("%g", x)))
	}
	unit := quantity.Unit(quantity.Length, units)
	list = append(list, words(r2.Vec{X: p.arm.from.X + p.arm.size.X/2, Y: p.arm.from.Y - 9}, letter, middle, "arm, "+unit))
	title := "what brings it back (ring: goes over)"
	if p.view.narrow {
		title = "what brings it back"
	}
	return append(list, words(r2.Vec{X: p.arm.from.X, Y: p.arm.from.Y + p.arm.size.Y + 2}, letter, left, title))
}

// timeMarks writes the seconds below, and what is drawn above.
func (p *paired) timeMarks() []shape {
	var list []shape
	every := 1.0
	for p.time.span/every > 7 || p.view.narrow && p.time.span/every > 4 {
		every *= 2
	}
	for t := 0.0; t <= p.time.span; t += every {
		foot := r2.Vec{X: p.time.at(t, 0).X, Y: p.time.from.Y}
		list = append(list, path(ink, 0.3, foot, r2.Sub(foot, r2.Vec{Y: 1.2})), words(r2.Sub(foot, r2.Vec{Y: 4.8}), letter, middle, fmt.Sprintf("%g", t)))
	}
	list = append(list, words(r2.Vec{X: p.time.from.X + p.time.size.X/2, Y: p.time.from.Y - 9}, letter, middle, "seconds"))
	text := "tilt in time"
	if m := p.view.watched.Motion; m != nil && !p.view.narrow {
		text += ", " + degreeSign(p.time.began(*m))
	}
	return append(list, words(r2.Vec{X: p.time.from.X, Y: p.time.from.Y + p.time.size.Y + 2}, letter, left, text))
}

// curve returns the righting arm of a load.
func (p *paired) curve(l *check.Load, colour color.RGBA, wide float64) shape {
	var line []r2.Vec
	for _, q := range l.Righting() {
		if q.Tilt >= p.view.least && q.Tilt <= p.view.most && q.Arm >= p.low && q.Arm <= p.low+p.arm.span {
			line = append(line, p.arm.at(q.Arm-p.low, q.Tilt))
		}
	}
	return path(colour, wide, line...)
}

// hilltops rings the tilts at which the load goes over.
func (p *paired) hilltops() []shape {
	l := p.view.watched.Load
	if !l.Upright() {
		return nil
	}
	var list []shape
	for _, m := range []sim.Margin{l.Balance.Back, l.Balance.Forward} {
		if m.Exists() && m.Tip >= p.view.least && m.Tip <= p.view.most {
			list = append(list, shape{points: []r2.Vec{p.arm.at(-p.low, m.Tip)}, radius: 1.1, stroke: ink, width: 0.4, fill: rgb(255, 255, 255)})
		}
	}
	return list
}
