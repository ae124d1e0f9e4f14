package pattern

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/rocker/bench"
)

// LegWords are what is written at a leg in its two views.
type LegWords struct {
	Length string // along it, in the side view
	Rake   string // at its upper end
	Foot   string // at its foot: its angle to the rocker
	Front  string // along it, in the front view
	Track  string // between the feet of the pair
}

// A LegView is one leg in the two views.
type LegView struct {
	Line     bench.Leg
	Standing bench.Standing
	Side     float64 // m
	Short    float64 // of the rocker along the centre line where it ends on a block, sawn square, m
	LegWords
}

// around a view there is so much room for what is written, m.
const viewRoom = 16e-3

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
	low := rocker.Edge.Contact(0)
	scale := min((width-2*viewRoom)/(box.Max.X-box.Min.X), (height-2*viewRoom)/(high-low.Y))
	to := func(x, y float64) r2.Vec { return r2.Vec{X: scale * x, Y: scale * y} }
	v := View{Height: height, Items: []Item{
		Contour{Path: outline.Placed(func(p r2.Vec) r2.Vec { return r2.Scale(scale, p) })},
		Line{Layer: Centre, From: to(box.Min.X, low.Y), To: to(box.Max.X, low.Y)},
		Text{At: r2.Add(to(box.Min.X, low.Y), r2.Vec{Y: -6e-3}), Text: "floor"}, Mark{At: to(low.X, low.Y), Label: "low point"},
	}}
	for i, leg := range legs {
		seat, foot := to(leg.Line.Seat.X, leg.Line.Seat.Y), to(leg.Standing.Foot.X, leg.Standing.Foot.Y)
		v.Items = append(v.Items, leg.bar(seat, foot, scale*leg.Side)...)
		v.Items = append(v.Items, Line{Layer: Centre, From: foot, To: seat, Label: leg.Length},
			Text{At: r2.Add(seat, r2.Vec{X: -8e-3, Y: 3e-3}), Text: leg.Rake}, Mark{At: foot, Angle: leg.Standing.Slope, Label: leg.Foot})
		if i > 0 {
			other := legs[i-1].Line.Seat
			v.Items = append(v.Items, Line{Layer: Check, From: to(other.X, other.Y), To: seat, Label: "underside of the seat"})
		}
	}
	return v, nil
}

// FrontView returns both legs of each pair from the front, pair beside pair, within a width and height of paper, m.
func FrontView(rocker bench.Rocker, legs []LegView, width, height float64) View {
	v := View{Height: height}
	low, high, wide := math.Inf(1), math.Inf(-1), 0.0
	for _, leg := range legs {
		low, high = min(low, leg.Standing.Foot.Y), max(high, leg.Line.Seat.Y)
		wide = max(wide, leg.Standing.Foot.Z+leg.Side, leg.Line.Seat.Z+leg.Side)
	}
	each := width / float64(len(legs))
	scale := min((each-1.5*viewRoom)/(2*wide), (height-2*viewRoom)/(high-low+rocker.Depth))
	for i, leg := range legs {
		at := r2.Vec{X: each * (float64(i) + 0.5)}
		to := func(p r3.Vec, side float64) r2.Vec { // the sitter's right is on the left, seen from the front
			return r2.Add(at, r2.Scale(scale, r2.Vec{X: -side * p.Z, Y: p.Y - low}))
		}
		half, down := r2.Vec{X: scale * rocker.Width / 2}, r2.Vec{Y: -scale * rocker.Depth}
		for k, name := range []string{"right", "left"} {
			seat, foot := to(leg.Line.Seat, float64(1-2*k)), to(leg.Standing.Foot, float64(1-2*k))
			out, in := r2.Sub(foot, half), r2.Add(foot, half)
			v.Items = append(v.Items, leg.bar(seat, foot, scale*leg.Side)...)
			v.Items = append(v.Items, Line{Layer: Centre, From: foot, To: seat, Label: [2]string{leg.Front}[k]},
				Contour{Path: bench.Polyline(true, out, in, r2.Add(in, down), r2.Add(out, down))},
				Text{At: r2.Add(r2.Add(foot, down), r2.Vec{X: -5e-3, Y: -20e-3}), Text: name})
		}
		right, left := r2.Add(to(leg.Standing.Foot, 1), down), r2.Add(to(leg.Standing.Foot, -1), down)
		v.Items = append(v.Items, Dimension{From: right, To: left, Offset: -12e-3, Text: leg.Track})
	}
	return v
}

// bar returns the two sides and the upper end of a leg, and its foot where that is square.
func (leg LegView) bar(from, to r2.Vec, side float64) []Item {
	to = r2.Add(to, r2.Scale(leg.Short/leg.Standing.Length, r2.Sub(from, to)))
	up := r2.Unit(r2.Sub(to, from))
	half := r2.Scale(side/2, r2.Vec{X: -up.Y, Y: up.X})
	line := func(a, b r2.Vec) Item { return Line{From: a, To: b} }
	list := []Item{line(r2.Add(from, half), r2.Add(to, half)), line(r2.Sub(from, half), r2.Sub(to, half)),
		line(r2.Sub(from, half), r2.Add(from, half))}
	if leg.Short > 0 {
		list = append(list, line(r2.Sub(to, half), r2.Add(to, half)))
	}
	return list
}

// View returns the board with both outlines within a width of paper, m, an arrow along the grain of each.
func (p PairPattern) View(width float64) View {
	scale := width / p.Pair.Length
	size := r2.Scale(scale, r2.Vec{X: p.Pair.Length, Y: p.Pair.Width})
	v := View{Height: size.Y, Items: []Item{Contour{Layer: Stock, Path: rectangle(r2.Vec{}, size)}}}
	for _, part := range []bench.Half{p.Pair.Left, p.Pair.Right} {
		middle := r2.Scale(scale, inWood(part.Outline, 0.5, 0.5))
		at, half := r2.Add(middle, r2.Vec{X: -14e-3}), r2.Scale(0.012, part.Grain) // the arrow beside the name
		to, barb := r2.Add(at, half), r2.Scale(-0.25, half)
		v.Items = append(v.Items, Contour{Path: part.Outline.Placed(func(p r2.Vec) r2.Vec { return r2.Scale(scale, p) })},
			Line{From: r2.Sub(at, half), To: to},
			Line{From: to, To: r2.Add(to, r2.Rotate(barb, 0.4, r2.Vec{}))}, Line{From: to, To: r2.Add(to, r2.Rotate(barb, -0.4, r2.Vec{}))},
			Text{At: r2.Add(middle, r2.Vec{X: 1e-3, Y: -1.7e-3}), Text: part.Mark})
	}
	return v
}
