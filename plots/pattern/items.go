package pattern

import (
	"cmp"
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// An Item is one thing on a drawing: a [Curve], [Line], [Mark], [Text], [Name], [Grain], [Arrow],
// [Corner], [Dimension] or [Note].
type Item interface {
	shapes(r *ruler) []shape // but for what is written beside it where there is room
}

// A Curve is a path on a layer; no layer is the outline.
type Curve struct {
	Layer Layer
	Path  bench.Path
}

func (c Curve) shapes(*ruler) []shape {
	return []shape{{layer: cmp.Or(c.Layer, Outline), path: c.Path}}
}

// A Line is straight. Its label is put beside it.
type Line struct {
	Layer    Layer // none is MARKS
	From, To r2.Vec
	Label    string
}

func (l Line) shapes(*ruler) []shape {
	return []shape{stroke(cmp.Or(l.Layer, Marks), l.From, l.To)}
}

// A Mark is a cross at a point, turned by an angle (rad), with its label beside it.
type Mark struct {
	At    r2.Vec
	Angle float64
	Label string
}

// arm is half of a cross's line, m.
const arm = 4e-3

func (m Mark) shapes(*ruler) []shape {
	x := r2.Scale(arm, along(m.Angle))
	y := r2.Vec{X: -x.Y, Y: x.X}
	return []shape{
		stroke(Marks, r2.Sub(m.At, x), r2.Add(m.At, x)),
		stroke(Marks, r2.Sub(m.At, y), r2.Add(m.At, y)),
		{layer: Marks, point: true, at: m.At},
	}
}

// A Text stands on its place with its left end, turned by an angle (rad).
type Text struct {
	At     r2.Vec
	Height float64 // of its capitals, m; zero and all that is smaller means 3.5 mm
	Angle  float64
	Text   string
}

func (t Text) shapes(r *ruler) []shape {
	height := lettering
	if t.Height > lettering {
		height = min(t.Height, 0.1)
	}
	list := r.lettered(Texts, t.Text, height, t.At, t.Angle)
	for i := range list {
		list[i].at = r2.Add(t.At, r2.Scale(list[i].width/2, along(t.Angle)))
	}
	return list
}

// A Name is a text at a place or, where something stands there, beside it.
type Name struct {
	At   r2.Vec
	Text string
}

func (Name) shapes(*ruler) []shape { return nil }

// A Note is lines of text that stand together wherever the drawing leaves room for them.
type Note struct{ Lines []string }

func (Note) shapes(*ruler) []shape { return nil }

// notes returns texts as notes.
func notes(texts [][]string) []Item {
	list := make([]Item, len(texts))
	for i, lines := range texts {
		list[i] = Note{lines}
	}
	return list
}

// A Grain is an arrow along the grain. It has one head, so that of a pair the mirrored one is seen
// to be.
type Grain struct{ From, To r2.Vec }

func (g Grain) shapes(*ruler) []shape {
	back := r2.Sub(g.From, g.To)
	barb := r2.Scale(6e-3, along(math.Atan2(back.Y, back.X)))
	return []shape{
		stroke(Marks, g.From, g.To),
		stroke(Marks, r2.Add(g.To, r2.Rotate(barb, 0.35, r2.Vec{})), g.To, r2.Add(g.To, r2.Rotate(barb, -0.35, r2.Vec{}))),
	}
}

// An Arrow has a name beside it, "up".
type Arrow struct {
	From, To r2.Vec
	Label    string
}

func (a Arrow) shapes(r *ruler) []shape { return Grain{a.From, a.To}.shapes(r) }

// A Corner is a square corner to lay a square against: one leg at an angle (rad), the
// other a right angle to the left of it.
type Corner struct {
	At    r2.Vec
	Angle float64
}

func (c Corner) shapes(*ruler) []shape {
	const leg, nick = 25e-3, 5e-3
	x := along(c.Angle)
	y := r2.Vec{X: -x.Y, Y: x.X}
	at := func(a, b float64) r2.Vec { return r2.Add(c.At, r2.Add(r2.Scale(a, x), r2.Scale(b, y))) }
	return []shape{
		stroke(Marks, at(leg, 0), c.At, at(0, leg)),
		stroke(Marks, at(nick, 0), at(nick, nick), at(0, nick)),
	}
}

// A Dimension is a measure from point to point, its line set off to the left of the way.
type Dimension struct {
	From, To r2.Vec
	Offset   float64 // m
	Text     string
}

func (d Dimension) shapes(r *ruler) []shape { return d.on(Marks, r) }

// on draws a dimension on a layer: its line with ticks, the two lines out to it, the text
// over its middle.
func (d Dimension) on(layer Layer, r *ruler) []shape {
	way := r2.Sub(d.To, d.From)
	length := r2.Norm(way)
	if length == 0 {
		return nil
	}
	way = r2.Scale(1/length, way)
	off := r2.Vec{X: -way.Y, Y: way.X}
	from, to := r2.Add(d.From, r2.Scale(d.Offset, off)), r2.Add(d.To, r2.Scale(d.Offset, off))
	tick := r2.Scale(2.5e-3, r2.Add(way, off))
	list := []shape{
		stroke(layer, from, to),
		stroke(layer, r2.Sub(from, tick), r2.Add(from, tick)),
		stroke(layer, r2.Sub(to, tick), r2.Add(to, tick)),
	}
	const gap = 2e-3
	if side := math.Copysign(1, d.Offset); math.Abs(d.Offset) > 2*gap {
		for _, p := range []r2.Vec{d.From, d.To} {
			list = append(list, stroke(layer, r2.Add(p, r2.Scale(side*gap, off)), r2.Add(p, r2.Scale(d.Offset+side*gap, off))))
		}
	}
	angle, lift := upright(math.Atan2(way.Y, way.X))
	text := r.lettered(layer, d.Text, lettering, r2.Scale(0.5, r2.Add(from, to)), angle)
	for i := range text {
		rise := gap
		if text[i].width > length-4*gap {
			rise = 2 * gap // over the ends and their ticks
		}
		text[i].at = r2.Add(text[i].at, r2.Scale(lift*rise, off))
	}
	return append(list, text...)
}

// upright returns the angle at which a text along a line is read from below, and on which
// side of the line, +1 left or −1 right, it then stands.
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
