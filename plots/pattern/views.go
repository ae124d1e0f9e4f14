package pattern

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/rocker/bench"
)

// A LegView is one leg in the two views.
type LegView struct {
	Line     bench.Leg
	Standing bench.Standing
	Side     float64 // m
	Length   string  // what is written along it
	Foot     string  // at its foot in the side view: its angle to the rocker
	Front    string  // beside it in the front view: its splay
}

// SideView returns the rocker with its legs from the side, within a width and height of paper, m:
// where each centre line meets the rocker, and its numbers. The error is an [*bench.OutlineError].
func SideView(rocker bench.Rocker, legs []LegView, width, height float64) (View, error) {
	outline, err := rocker.Outline()
	if err != nil {
		return View{}, err
	}
	box := outline.Bounds()
	high := box.Max.Y
	for _, leg := range legs {
		high = max(high, leg.Line.Seat.Y)
	}
	const room = 14e-3 // for what is written around
	floor := rocker.Edge.Contact(0).Y
	scale := min((width-2*room)/(box.Max.X-box.Min.X), (height-2*room)/(high-floor))
	to := func(p r2.Vec) r2.Vec { return r2.Scale(scale, p) }
	v := View{Height: height}
	v.Items = append(v.Items, Curve{Path: polyline(true, scaled(unclosed(outline.Flattened(1e-4)), scale, r2.Vec{})...)},
		Line{Layer: Check, From: to(r2.Vec{X: box.Min.X, Y: floor}), To: to(r2.Vec{X: box.Max.X, Y: floor}), Label: "floor"},
		Mark{At: to(rocker.Edge.Contact(0)), Label: "low point"})
	for _, leg := range legs {
		seat, foot := r2.Vec{X: leg.Line.Seat.X, Y: leg.Line.Seat.Y}, r2.Vec{X: leg.Standing.Foot.X, Y: leg.Standing.Foot.Y}
		v.Items = append(v.Items, bar(to(seat), to(foot), scale*leg.Side)...)
		v.Items = append(v.Items, Line{Layer: Centre, From: to(foot), To: to(seat), Label: leg.Length})
		v.Items = append(v.Items, Mark{At: to(foot), Angle: leg.Standing.Slope, Label: leg.Foot})
	}
	return v, nil
}

// FrontView returns both legs of each pair from the front, left and right, side by side.
func FrontView(rocker bench.Rocker, legs []LegView, width, height float64) View {
	v := View{Height: height}
	if len(legs) == 0 {
		return v
	}
	const room = 14e-3
	low, high, wide := math.Inf(1), math.Inf(-1), 0.0
	for _, leg := range legs {
		low, high = min(low, leg.Standing.Foot.Y), max(high, leg.Line.Seat.Y)
		wide = max(wide, leg.Standing.Foot.Z, leg.Line.Seat.Z)
	}
	wide += rocker.Width + legs[0].Side
	each := width / float64(len(legs))
	scale := min((each-room)/(2*wide), (height-2*room)/(high-low+rocker.Depth))
	for i, leg := range legs {
		at := r2.Vec{X: each * (float64(i) + 0.5)}
		for _, side := range []float64{1, -1} {
			to := func(p r3.Vec) r2.Vec {
				return r2.Add(at, r2.Scale(scale, r2.Vec{X: -side * p.Z, Y: p.Y - low})) // the sitter's right is on the left, seen from the front
			}
			seat, foot := to(leg.Line.Seat), to(leg.Standing.Foot)
			v.Items = append(v.Items, bar(seat, foot, scale*leg.Side)...)
			label := ""
			if side > 0 {
				label = leg.Front
			}
			v.Items = append(v.Items, Line{Layer: Centre, From: foot, To: seat, Label: label})
			half := r2.Vec{X: scale * rocker.Width / 2}
			down := r2.Vec{Y: -scale * rocker.Depth}
			v.Items = append(v.Items, Curve{Path: polyline(true, r2.Sub(foot, half), r2.Add(foot, half), r2.Add(r2.Add(foot, half), down), r2.Add(r2.Sub(foot, half), down))})
			mark := "right"
			if side < 0 {
				mark = "left"
			}
			v.Items = append(v.Items, Line{From: r2.Add(r2.Sub(foot, half), down), To: r2.Add(r2.Add(foot, half), down), Label: mark})
		}
	}
	return v
}

// bar returns the two sides and the upper end of a leg.
func bar(from, to r2.Vec, side float64) []Item {
	way := r2.Unit(r2.Sub(to, from))
	half := r2.Scale(side/2, r2.Vec{X: -way.Y, Y: way.X})
	return []Item{
		Line{From: r2.Add(from, half), To: r2.Add(to, half)},
		Line{From: r2.Sub(from, half), To: r2.Sub(to, half)},
		Line{From: r2.Sub(from, half), To: r2.Add(from, half)},
	}
}

// unclosed returns the points of a closed path without its start at the end.
func unclosed(points []r2.Vec) []r2.Vec { return points[:len(points)-1] }

// View returns the drawing within a width and height of paper, m, for a card: its labels at
// the size in which they are read, its test squares and long check left out.
func (d Drawing) View(width, height float64) View {
	var all []r2.Vec
	for _, item := range d.Items {
		if c, ok := item.(Curve); ok {
			box := c.Path.Bounds()
			all = append(all, box.Min, box.Max)
		}
	}
	if len(all) == 0 {
		return View{}
	}
	lo, hi := all[0], all[0]
	for _, p := range all {
		lo, hi = r2.Vec{X: min(lo.X, p.X), Y: min(lo.Y, p.Y)}, r2.Vec{X: max(hi.X, p.X), Y: max(hi.Y, p.Y)}
	}
	scale := min(width/(hi.X-lo.X), height/(hi.Y-lo.Y))
	to := func(p r2.Vec) r2.Vec { return r2.Scale(scale, p) }
	v := View{Height: (hi.Y - lo.Y) * scale}
	for _, item := range d.Items {
		switch it := item.(type) {
		case Curve:
			it.Path = smaller(it.Path, scale)
			item = it
		case Line:
			it.From, it.To = to(it.From), to(it.To)
			item = it
		case Mark:
			it.At = to(it.At)
			item = it
		case Grain:
			middle := to(r2.Scale(0.5, r2.Add(it.From, it.To)))
			half := r2.Scale(0.5, r2.Sub(it.To, it.From))
			item = Grain{From: r2.Sub(middle, half), To: r2.Add(middle, half)}
		default:
			continue
		}
		v.Items = append(v.Items, item)
	}
	return v
}

// smaller returns a path at a scale.
func smaller(p bench.Path, scale float64) bench.Path {
	q := bench.Path{Start: r2.Scale(scale, p.Start), Closed: p.Closed}
	for _, s := range p.Strokes {
		q.Strokes = append(q.Strokes, bench.Stroke{To: r2.Scale(scale, s.To), Turn: s.Turn})
	}
	return q
}
