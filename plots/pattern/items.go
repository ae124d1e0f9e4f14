package pattern

import (
	"cmp"
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// An Item is a [Contour], [Line], [Mark], [Text], [Name], [Grain], [Arrow], [Corner] or [Dimension] of a drawing.
type Item interface {
	shapes(f face) ([]shape, label) // the label, if it has a text, is what is written beside it
}

// A Contour is a path on a layer; no layer is the outline.
type Contour struct {
	Layer Layer
	Path  bench.Path
}

func (c Contour) shapes(face) ([]shape, label) {
	return []shape{{layer: cmp.Or(c.Layer, Outline), path: c.Path}}, label{}
}

// A Line is straight. Its label is put beside it.
type Line struct {
	Layer    Layer // none is MARKS
	From, To r2.Vec
	Label    string
}

func (l Line) shapes(face) ([]shape, label) {
	middle := r2.Scale(0.5, r2.Add(l.From, l.To))
	places := func(half r2.Vec) []rect { return append(beside(half, l.From, l.To), around(half, l.To)...) }
	return []shape{stroke(cmp.Or(l.Layer, Marks), l.From, l.To)}, label{l.Label, places, &middle}
}

// A Mark is a cross at a point, turned by an angle (rad), with its label beside it.
type Mark struct {
	At    r2.Vec
	Angle float64
	Label string
}

// arm is half of a cross's line, m.
const arm = 4e-3

func (m Mark) shapes(face) ([]shape, label) {
	x := r2.Scale(arm, along(m.Angle))
	y := r2.Vec{X: -x.Y, Y: x.X}
	list := []shape{stroke(Marks, r2.Sub(m.At, x), r2.Add(m.At, x)), stroke(Marks, r2.Sub(m.At, y), r2.Add(m.At, y)),
		{layer: Marks, point: true, at: m.At}}
	return list, label{text: m.Label, places: func(half r2.Vec) []rect { return around(half, m.At) }}
}

// A Text stands on its place with its left end.
type Text struct {
	At   r2.Vec
	Text string
}

func (t Text) shapes(f face) ([]shape, label) {
	list := f.lettered(Texts, t.Text, t.At, 0)
	for i := range list {
		list[i].at.X += list[i].width / 2
	}
	return list, label{}
}

// A Name is a text at a place or, where something stands there, beside it.
type Name struct {
	At   r2.Vec
	Text string
}

func (n Name) shapes(face) ([]shape, label) {
	places := func(half r2.Vec) []rect { return append([]rect{{middle: n.At, half: half}}, around(half, n.At)...) }
	return nil, label{text: n.Text, places: places}
}

// A Grain is an arrow along the grain. It has one head, by which the mirrored one of a pair is told.
type Grain struct{ From, To r2.Vec }

func (g Grain) shapes(face) ([]shape, label) {
	back := r2.Sub(g.From, g.To)
	barb := r2.Scale(6e-3, along(math.Atan2(back.Y, back.X)))
	left, right := r2.Add(g.To, r2.Rotate(barb, 0.35, r2.Vec{})), r2.Add(g.To, r2.Rotate(barb, -0.35, r2.Vec{}))
	return []shape{stroke(Marks, g.From, g.To), stroke(Marks, left, g.To, right)},
		label{text: "grain", places: func(half r2.Vec) []rect { return beside(half, g.From, g.To) }}
}

// An Arrow has a name beside it, "up".
type Arrow struct {
	From, To r2.Vec
	Label    string
}

func (a Arrow) shapes(f face) ([]shape, label) {
	list, _ := Grain{a.From, a.To}.shapes(f)
	return list, label{text: a.Label, places: func(half r2.Vec) []rect { return around(half, a.From, a.To) }}
}

// A Corner is a square corner to lay a square against: one leg level, the other up from it.
type Corner struct{ At r2.Vec }

func (c Corner) shapes(face) ([]shape, label) {
	const leg, nick = 25e-3, 5e-3
	at := func(x, y float64) r2.Vec { return r2.Add(c.At, r2.Vec{X: x, Y: y}) }
	return []shape{stroke(Marks, at(leg, 0), c.At, at(0, leg)), stroke(Marks, at(nick, 0), at(nick, nick), at(0, nick))},
		label{"square corner", func(half r2.Vec) []rect { return around(half, at(0.018, 0.018), c.At) }, &c.At}
}

// A Dimension is a measure from point to point, its line set off to the left of the line between them.
type Dimension struct {
	Layer    Layer // none is MARKS
	From, To r2.Vec
	Offset   float64 // m
	Text     string
}

// shapes draws its line with ticks, the two lines out to it, the text over its middle.
func (d Dimension) shapes(f face) ([]shape, label) {
	layer, run := cmp.Or(d.Layer, Marks), r2.Sub(d.To, d.From)
	length := r2.Norm(run)
	if length == 0 {
		return nil, label{}
	}
	along := r2.Scale(1/length, run)
	off := r2.Vec{X: -along.Y, Y: along.X}
	from, to := r2.Add(d.From, r2.Scale(d.Offset, off)), r2.Add(d.To, r2.Scale(d.Offset, off))
	tick := r2.Scale(2.5e-3, r2.Add(along, off))
	list := []shape{stroke(layer, from, to),
		stroke(layer, r2.Sub(from, tick), r2.Add(from, tick)), stroke(layer, r2.Sub(to, tick), r2.Add(to, tick))}
	const gap = 2e-3
	if side := math.Copysign(1, d.Offset); math.Abs(d.Offset) > 2*gap {
		for _, p := range []r2.Vec{d.From, d.To} {
			list = append(list, stroke(layer, r2.Add(p, r2.Scale(side*gap, off)), r2.Add(p, r2.Scale(d.Offset+side*gap, off))))
		}
	}
	angle, lift := upright(math.Atan2(along.Y, along.X))
	text := f.lettered(layer, d.Text, r2.Scale(0.5, r2.Add(from, to)), angle)
	for i := range text {
		rise := gap
		if text[i].width > length-4*gap {
			rise = 2 * gap // over the ends and their ticks
		}
		text[i].at = r2.Add(text[i].at, r2.Scale(lift*rise, off))
	}
	return append(list, text...), label{}
}

// upright returns the angle at which a text along a line is read from below, and its side of it, +1 left or −1 right.
func upright(angle float64) (text, side float64) {
	if math.Cos(angle) < -1e-9 {
		return angle + math.Pi, -1
	}
	return angle, 1
}

// both writes a length in inches and in millimetres, the drawing's own unit first.
func both(x float64, units quantity.System) string {
	in, mm := quantity.With(x, quantity.Length, quantity.Inch), quantity.With(x, quantity.Length, quantity.Metric)
	if units == quantity.Metric {
		in, mm = mm, in
	}
	return fmt.Sprintf("%s / %s", in, mm)
}
