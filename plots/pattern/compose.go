package pattern

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// A LegMark is where a leg stands on a rocker's pattern.
type LegMark struct {
	Standing bench.Standing
	Side     float64 // of the leg, along the top edge, m
	Label    string
}

// A RockerPattern is what the pattern of one rocker is made up from.
type RockerPattern struct {
	Part, Piece string
	Rocker      bench.Rocker
	Stations    []bench.Station
	Places      []string // what is written at each station; "" for nothing
	Legs        []LegMark
	Grain       float64 // heading of the grain, rad
	Notes       []Note
}

// Drawing returns the pattern: outline, centre line, low point, stations, legs, square corner
// with the floor line it stands on, and grain. The error is an [*bench.OutlineError].
func (p RockerPattern) Drawing() (Drawing, error) {
	outline, err := p.Rocker.Outline()
	if err != nil {
		return Drawing{}, err
	}
	floor, wood, top, err := p.Rocker.Edges()
	if err != nil {
		return Drawing{}, err
	}
	sweeps, corner, err := p.Rocker.Trammel()
	if err != nil {
		return Drawing{}, err
	}
	d := Drawing{Part: p.Part, Piece: p.Piece, TipToTip: [2]r2.Vec{p.Rocker.Edge.Tail(), p.Rocker.Edge.Nose()}}
	low := p.Rocker.Edge.Contact(0)
	d.Items = append(d.Items, Curve{Path: outline}, Curve{Layer: Centre, Path: between(wood, top)})
	if p.Rocker.Sole > 0 {
		d.Items = append(d.Items, Curve{Layer: Marks, Path: floor})
	}
	d.Items = append(d.Items, Mark{At: low, Label: "low point"}, Corner{At: corner},
		Line{Layer: Centre, From: corner, To: r2.Vec{X: low.X, Y: corner.Y}, Label: "floor line"})
	for _, end := range []struct {
		finish bench.Finish
		at     r2.Vec
	}{{p.Rocker.Nose.Finish, d.TipToTip[1]}, {p.Rocker.Tail.Finish, d.TipToTip[0]}} {
		if end.finish != bench.Square { // the wood does not show where to tape from
			d.Items = append(d.Items, Mark{At: end.at, Label: "tip"})
		}
	}
	for i, s := range p.Stations {
		if i >= len(p.Places) || p.Places[i] == "" {
			continue
		}
		const tick, same = 5e-3, 1e-9
		up := r2.Vec{Y: tick}
		if math.Abs(s.Wood.X-s.At) < same { // else this edge ends before the station
			from := r2.Vec{X: s.Wood.X, Y: s.Wood.Y + corner.Y}
			d.Items = append(d.Items, Line{From: from, To: r2.Add(from, up), Label: p.Places[i]})
		}
		if math.Abs(s.Top.X-s.At) < same {
			to := r2.Vec{X: s.Top.X, Y: s.Top.Y + corner.Y}
			d.Items = append(d.Items, Line{From: to, To: r2.Sub(to, up)})
		}
	}
	for _, leg := range p.Legs {
		d.Items = append(d.Items, leg.items(p.Rocker.Depth)...)
	}
	if len(sweeps) > 1 {
		for _, s := range sweeps[1:] {
			d.Items = append(d.Items, Mark{At: r2.Add(corner, s.From), Label: "tangent point"})
		}
	}
	d.Items = append(d.Items, grainIn(wood, top, p.Grain))
	for _, n := range p.Notes {
		d.Items = append(d.Items, n)
	}
	return d, nil
}

// items returns the marks of a leg: its centre line down into the wood and both its sides on
// the top edge.
func (m LegMark) items(depth float64) []Item {
	s := m.Standing
	foot := r2.Vec{X: s.Foot.X, Y: s.Foot.Y}
	down := along(s.Slope + s.Angle + math.Pi)
	side := r2.Scale(m.Side/2, along(s.Slope))
	into := r2.Scale(min(0.7*depth, 0.05), down)
	list := []Item{Line{Layer: Centre, From: foot, To: r2.Add(foot, into), Label: m.Label}}
	for _, at := range []r2.Vec{r2.Add(foot, side), r2.Sub(foot, side)} {
		list = append(list, Line{From: at, To: r2.Add(at, r2.Scale(0.35, into))})
	}
	return list
}

// between returns the middle line of the wood, by points a hundredth of its length apart: it
// is looked at, not cut along.
func between(wood, top bench.Path) bench.Path {
	const n = 100
	back := top.Reversed()
	var list []r2.Vec
	for i := range n + 1 {
		a, _ := wood.At(wood.Length() * float64(i) / n)
		b, _ := back.At(back.Length() * float64(i) / n)
		list = append(list, r2.Scale(0.5, r2.Add(a, b)))
	}
	return polyline(false, list...)
}

// grainIn returns an arrow along the grain in the middle of the wood, between low point and nose.
func grainIn(wood, top bench.Path, heading float64) Grain {
	back := top.Reversed()
	a, _ := wood.At(wood.Length() * 0.74)
	b, _ := back.At(back.Length() * 0.74)
	middle := r2.Add(a, r2.Scale(0.3, r2.Sub(b, a)))
	half := r2.Scale(0.025, along(heading))
	return Grain{From: r2.Sub(middle, half), To: r2.Add(middle, half)}
}

// A FormPattern is the pattern of a form: its face, and a back behind it.
type FormPattern struct {
	Part, Piece string
	Outline     bench.Path
	Face        [2]r2.Vec // the ends of the face that the wood touches
	Low         r2.Vec    // the place of the low point on the face
	Side        float64   // on which side of its face the form lies: +1 above, −1 below
	Notes       []Note
}

// Drawing returns the pattern of the form.
func (p FormPattern) Drawing() Drawing {
	d := Drawing{Part: p.Part, Piece: p.Piece, TipToTip: p.Face, Items: []Item{
		Curve{Path: p.Outline},
		Mark{At: p.Low},
		Line{Layer: Centre, From: p.Low, To: r2.Add(p.Low, r2.Vec{Y: p.Side * 0.03}), Label: "low point"},
	}}
	for _, n := range p.Notes {
		d.Items = append(d.Items, n)
	}
	return d
}

// behind is how much wood a form outside the curve has under the lowest of its face, m.
const behind = 0.1016

// Behind returns the outline of a form with a face, from the nose to the tail, that hangs
// through below its ends, on a level back.
func Behind(face bench.Path) bench.Path {
	back := face.Bounds().Min.Y - behind
	outline := bench.Path{Start: face.Start, Closed: true, Strokes: append([]bench.Stroke{}, face.Strokes...)}
	outline.Strokes = append(outline.Strokes, bench.Stroke{To: r2.Vec{X: face.End().X, Y: back}}, bench.Stroke{To: r2.Vec{X: face.Start.X, Y: back}})
	return outline
}

// A PanelPattern is the section of a coopered panel.
type PanelPattern struct {
	Part, Piece string
	Panel       bench.Coopered
	Stave       bench.Stave
	Notes       []Note
}

// Drawing returns the section, hollow side up: the staves as sawn, and the two finished faces.
func (p PanelPattern) Drawing() Drawing {
	half := p.Stave.Bevel
	turn := 2 * half
	flat := p.Panel.Radius * math.Cos(half)
	d := Drawing{Part: p.Part, Piece: p.Piece}
	all := turn * float64(p.Panel.Staves) / 2
	on := func(r, angle float64) r2.Vec { return r2.Vec{X: r * math.Sin(angle), Y: -r * math.Cos(angle)} }
	for i := range p.Panel.Staves {
		a, b := float64(i)*turn-all, float64(i+1)*turn-all
		in, out := flat/math.Cos(half), (flat+p.Panel.Stock)/math.Cos(half)
		d.Items = append(d.Items, Curve{Path: polyline(true, on(out, a), on(out, b), on(in, b), on(in, a))})
	}
	for _, r := range []float64{p.Panel.Radius, p.Panel.Radius + p.Stave.Thick} {
		d.Items = append(d.Items, Curve{Layer: Centre, Path: bench.Path{Start: on(r, -all), Strokes: []bench.Stroke{{To: on(r, all), Turn: 2 * all}}}})
	}
	d.TipToTip = [2]r2.Vec{on(p.Panel.Radius, -all), on(p.Panel.Radius, all)}
	for _, n := range p.Notes {
		d.Items = append(d.Items, n)
	}
	return d
}

// A PairPattern is two rockers in one board, marked left and right.
type PairPattern struct {
	Part, Piece string
	Pair        bench.Pair
}

// Drawing returns the board with both outlines in it and the grain arrow in each.
func (p PairPattern) Drawing() Drawing {
	size := r2.Vec{X: p.Pair.Length, Y: p.Pair.Width}
	d := Drawing{Part: p.Part, Piece: p.Piece, TipToTip: [2]r2.Vec{{}, {X: size.X}}, Items: []Item{
		Curve{Layer: Centre, Path: polyline(true, r2.Vec{}, r2.Vec{X: size.X}, size, r2.Vec{Y: size.Y})},
	}}
	for _, part := range []bench.Part{p.Pair.Left, p.Pair.Right} {
		d.Items = append(d.Items, Curve{Path: part.Outline})
	}
	for _, part := range []bench.Part{p.Pair.Left, p.Pair.Right} {
		middle := within(part.Outline)
		half := r2.Scale(0.03, part.Grain)
		d.Items = append(d.Items, Grain{From: r2.Sub(middle, half), To: r2.Add(middle, half)}, Text{At: r2.Add(middle, r2.Vec{X: 0.036, Y: -1.7e-3}), Text: part.Mark})
	}
	return d
}

// within returns a point in the wood over the middle of an outline's length: half-way between
// its two edges there.
func within(outline bench.Path) r2.Vec {
	box := outline.Bounds()
	x := (box.Min.X + box.Max.X) / 2
	low, high := math.Inf(1), math.Inf(-1)
	points := outline.Flattened(1e-4)
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		if (a.X > x) == (b.X > x) {
			continue
		}
		y := a.Y + (b.Y-a.Y)*(x-a.X)/(b.X-a.X)
		low, high = min(low, y), max(high, y)
	}
	return r2.Vec{X: x, Y: (low + high) / 2}
}
