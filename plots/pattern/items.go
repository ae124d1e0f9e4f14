package pattern

import (
	"cmp"
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// widest is where a text is cut, m.
const widest = 0.14

// lettered returns a text on a layer, its base line's middle at a point. No text is no shape.
func (r *ruler) lettered(layer Layer, text string, height float64, at r2.Vec, angle float64) []shape {
	text = r.fit(text, height, widest)
	if text == "" {
		return nil
	}
	return []shape{{layer: layer, text: text, at: at, height: height, width: r.width(text, height), angle: angle}}
}

func (c Curve) shapes(*ruler) []shape {
	return []shape{{layer: cmp.Or(c.Layer, Outline), path: c.Path}}
}

func (c Curve) points() []r2.Vec {
	list := []r2.Vec{c.Path.Start}
	for _, s := range c.Path.Strokes {
		list = append(list, s.To)
	}
	return list
}

func (l Line) shapes(*ruler) []shape {
	return []shape{stroke(cmp.Or(l.Layer, Marks), l.From, l.To)}
}

func (l Line) points() []r2.Vec { return []r2.Vec{l.From, l.To} }

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

func (m Mark) points() []r2.Vec { return []r2.Vec{m.At, {X: m.Angle}} }

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

func (t Text) points() []r2.Vec { return []r2.Vec{t.At, {X: t.Angle}} }

func (Name) shapes(*ruler) []shape { return nil }

func (n Name) points() []r2.Vec { return []r2.Vec{n.At} }

func (a Arrow) shapes(r *ruler) []shape { return Grain{a.From, a.To}.shapes(r) }

func (a Arrow) points() []r2.Vec { return []r2.Vec{a.From, a.To} }

func (g Grain) shapes(*ruler) []shape {
	back := r2.Sub(g.From, g.To)
	barb := r2.Scale(6e-3, along(math.Atan2(back.Y, back.X)))
	return []shape{
		stroke(Marks, g.From, g.To),
		stroke(Marks, r2.Add(g.To, r2.Rotate(barb, 0.35, r2.Vec{})), g.To, r2.Add(g.To, r2.Rotate(barb, -0.35, r2.Vec{}))),
	}
}

func (g Grain) points() []r2.Vec { return []r2.Vec{g.From, g.To} }

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

func (c Corner) points() []r2.Vec { return []r2.Vec{c.At, {X: c.Angle}} }

func (d Dimension) shapes(r *ruler) []shape {
	return d.on(Marks, r)
}

func (d Dimension) points() []r2.Vec { return []r2.Vec{d.From, d.To, {X: d.Offset}} }

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
