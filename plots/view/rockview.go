package view

import (
	"cmp"
	_ "embed"
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/check"
	"rockerwright/sim/trial"
)

// Script moves every [RockingView] of a page that stands in a figure: true speed, pause, slow, again, by the keyboard
// too. It changes with the drawing, of which it knows the names of the groups and the writing of the samples.
//
//go:embed rocking.js
var Script string

// The rocking view on paper, mm: lower than the side view, for the trace stands beside it and a page goes on below.
const (
	rockingHigh  = 82.0
	rockingTop   = 22.0
	rockingLow   = 11.0
	narrowWide   = 88.0
	panelWide    = 58.0
	panelHigh    = 26.0
	rockingLeast = 66.0 // of the drawing: what the panel and the labels below it need
)

// The samples of a motion.
const (
	sampleEvery = 0.02 // s; a chair turns by a degree at most in between
	mostSampled = 12.0 // s
)

// RockingView draws the side view of a rocking with the tilt in time beside it, the path of the balance point and the
// stretch of floor it rolls on. The one who rocks stands at rest. As SVG it carries the samples of the motion: the time
// between two of them in seconds, then for each, parted by semicolons, where the piece is moved (x, y) and turned
// (degrees, clockwise) from where it is drawn, about the corner of the drawing, where the contact is moved, and where
// the point of the trace; then for each leg that stands on the floor where its ankle is moved, and by how much shank
// and foot are turned about it.
func RockingView(r trial.Rocking) scene.Picture {
	room := area{width: viewWidth - panelWide, high: rockingHigh, least: rockingLeast, top: rockingTop, low: rockingLow}
	s, trace, list := rocking(r, room, rockingLow-8) // clear of the mark of the contact
	s.Width = viewWidth
	s.Add(trace.draw(r, list)...)
	return scene.Picture{Name: "rocking", Scene: s}
}

// NarrowRockingView draws the same without the trace, for half the width of a page.
func NarrowRockingView(r trial.Rocking) scene.Picture {
	s, _, _ := rocking(r, area{width: narrowWide, high: rockingHigh, top: 31, low: 20, narrow: true}, 2.2)
	return scene.Picture{Name: "rocking", Scene: s}
}

// rocking draws all but the trace, the scale so far up the paper, and returns where the trace stands and of what.
func rocking(r trial.Rocking, room area, up float64) (s scene.Scene, trace panel, list []instant) {
	ghosts := ghostsOf(r.Report)
	moving := &ghosts[len(ghosts)-1]
	*moving = ghost{name: "seated", who: scene.Cut(r.Load.Name, 25), how: moving.how, load: r.Load,
		tilt: r.Load.Balance.Rest.Tilt, Pen: seatedPen, moves: true}
	list, span := instants(r)
	least, most := between(list)
	v := frameOf(r.Report, append([]ghost{{load: r.Load, tilt: least}, {load: r.Load, tilt: most}}, ghosts...), room)
	trace = panel{from: r2.Vec{X: v.width + 8, Y: v.height - rockingTop - 8 - panelHigh},
		size: r2.Vec{X: panelWide - 28, Y: panelHigh}, least: least, most: most, rest: moving.tilt, span: span}
	d := r.Report.Design
	s = v.standing(r.Report, ghosts...)
	s.Alt = "Side view to scale. " + scene.Cut(r.Load.Name, 60)
	if from := r.Start.Tilt - moving.tilt; from != 0 {
		s.Alt += fmt.Sprintf(", let go %s from the rest,", sided(from, d))
	}
	s.Alt += fmt.Sprintf(" rocks between %s and %s of tilt%s.%s",
		sided(least, d), sided(most, d), smallRock(r.Load), told(ghosts))
	marks := v.marks(r.Report, *moving)
	marks.Moves = scene.WithContact
	s.Add(v.paths(r, least, most)...)
	s.Add(marks)
	s.Add(v.labels(r.Report, ghosts)...)
	s.Add(v.rule(r.Report, up))
	s.Samples = v.written(r.Report, *moving, list, trace.at)
	return s, trace, list
}

// smallRock says how long a small rock of a load takes, if it has a time of its own.
func smallRock(l *check.Load) string {
	if t := l.Balance.Period; !math.IsNaN(t) {
		return fmt.Sprintf(", a small rock in %.1f s", t)
	}
	return ""
}

// An instant is a tilt at a time.
type instant struct{ time, tilt float64 }

// instants returns what is drawn of a motion, some six rocks, at even times.
func instants(r trial.Rocking) (list []instant, span float64) {
	span = min(r.Trace.Duration, mostSampled)
	if t := r.Load.Balance.Period; !math.IsNaN(t) {
		span = min(span, max(4, math.Ceil(6*t)))
	}
	return sampled(span, func(time float64) float64 { return r.Trace.At(time).Tilt }), span
}

// sampled returns samples of a tilt over so many seconds, sampleEvery apart.
func sampled(span float64, tilt func(time float64) float64) []instant {
	list := make([]instant, int(span/sampleEvery+1e-9)+1)
	for i := range list {
		time := float64(i) * sampleEvery
		list[i] = instant{time, tilt(time)}
	}
	return list
}

// between returns the least and the largest tilt.
func between(list []instant) (least, most float64) {
	byTilt := func(a, b instant) int { return cmp.Compare(a.tilt, b.tilt) }
	return slices.MinFunc(list, byTilt).tilt, slices.MaxFunc(list, byTilt).tilt
}

// paths draws the path of the balance point and the stretch of floor that is rolled on, with their labels.
func (f frame) paths(r trial.Rocking, least, most float64) []scene.Group {
	const steps = 60
	var centre, rolled []r2.Vec
	for i := range steps + 1 {
		at := poseAt(r.Report, least+(most-least)*float64(i)/steps)
		centre = append(centre, f.paper(at.place(r.Load.Rig.Body.Centre)))
	}
	for _, tilt := range []float64{least, most} {
		at := poseAt(r.Report, tilt)
		rolled = append(rolled, f.paper(at.place(at.contact)))
	}
	paths := scene.Group{Name: "paths",
		Shapes: []scene.Shape{scene.Path(scene.Blue, 0.5, centre...), scene.Path(scene.Blue, 1.3, rolled...)}}
	names := scene.Group{Name: "path-labels", Still: true}
	name := func(place r2.Vec, align scene.Align, of, leader r2.Vec, texts ...string) {
		names.Add(scene.Lines(place, letter, letterRow, align, texts...)...)
		names.Add(scene.Path(scene.Blue, 0.25, of, r2.Add(place, leader)))
	}
	byX := func(a, b r2.Vec) int { return cmp.Compare(a.X, b.X) }
	far := slices.MaxFunc(rolled, byX)
	if f.narrow {
		low, leader := f.low-13, r2.Vec{X: 8, Y: 3.4}
		name(r2.Vec{X: 2, Y: low}, scene.Left, slices.MinFunc(centre, byX), leader, "balance point's path")
		leader.X = -leader.X
		name(r2.Vec{X: f.width - 2, Y: low}, scene.Right, far, leader, "rolls on this much")
	} else {
		beside, leader := f.width+8, r2.Vec{X: -1.5, Y: 1}
		name(r2.Vec{X: beside, Y: f.low + 13}, scene.Left, slices.MaxFunc(centre, byX), leader,
			"path of the", "balance point")
		name(r2.Vec{X: beside, Y: f.low + 1}, scene.Left, far, leader, "rolls on this much", "of the floor")
	}
	return []scene.Group{paths, names}
}

// written writes a ghost drawn at rest as samples, see [RockingView]; point says where on the trace each lies, mm.
func (f frame) written(report check.Report, g ghost, list []instant, point func(time, tilt float64) r2.Vec) string {
	rest := g.tilt
	at := func(tilt float64) (origin, contact r2.Vec) {
		q := poseAt(report, tilt)
		return f.svg(q.place(r2.Vec{})), f.svg(q.place(q.contact))
	}
	origin0, contact0 := at(rest)
	legs0 := poseAt(report, rest).legs(g.load)
	var b strings.Builder
	fmt.Fprint(&b, sampleEvery)
	for _, s := range list {
		origin, contact := at(s.tilt)
		moved := r2.Sub(origin, r2.Rotate(origin0, rest-s.tilt, r2.Vec{})) // y runs down: clockwise is +
		touched := r2.Sub(contact, contact0)
		point := r2.Sub(point(s.time, s.tilt), point(0, rest))
		fmt.Fprintf(&b, ";%.2f %.2f %.3f %.2f %.2f %.2f %.2f",
			moved.X, moved.Y, inDegrees(rest-s.tilt), touched.X, touched.Y, point.X, -point.Y)
		for i, l := range poseAt(report, s.tilt).legs(g.load) {
			b.WriteString(f.bent(legs0[i], l))
		}
	}
	return b.String()
}

// svg returns where a place of the view lies in the SVG, y down.
func (f frame) svg(p r2.Vec) r2.Vec {
	q := f.paper(p)
	return r2.Vec{X: q.X, Y: f.height - q.Y}
}
