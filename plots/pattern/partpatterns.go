package pattern

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// A LegMark is where a leg stands on a rocker's pattern.
type LegMark struct {
	Standing bench.Standing
	Side     float64 // of the leg, along the top edge, m
	Label    string
}

// EndWords are what is written at the ends of a rocker or its form, and which way is up.
type EndWords struct{ Nose, Tail, Up string }

// items names the ends inside an outline, and draws an arrow up in it.
func (w EndWords) items(outline bench.Path) []Item {
	foot := inWood(outline, 0.4, 0.3)
	return []Item{Name{inWood(outline, 0.96, 0.5), w.Nose}, Name{inWood(outline, 0.04, 0.5), w.Tail},
		Arrow{foot, r2.Add(foot, r2.Vec{Y: 0.015}), w.Up}}
}

// A RockerPattern is what the pattern of one rocker is made up from.
type RockerPattern struct {
	Rocker   bench.Rocker
	Stations []bench.Station
	Places   []string // what is written at each station; "" for nothing
	Legs     []LegMark
	Grain    float64 // heading of the grain, rad
	EndWords
}

// Drawing returns the pattern: outline, centre line, low point, stations, legs, square corner
// with the floor line it stands on, and grain. The error is an [*bench.OutlineError].
func (p RockerPattern) Drawing() (Drawing, error) {
	outline, whole := p.Rocker.Outline()
	floor, wood, top, edges := p.Rocker.Edges()
	sweeps, corner, trammel := p.Rocker.Trammel()
	if err := cmp.Or(whole, edges, trammel); err != nil {
		return Drawing{}, err
	}
	tips := [2]r2.Vec{p.Rocker.Edge.Tail(), p.Rocker.Edge.Nose()}
	low := p.Rocker.Edge.Contact(0)
	items := []Item{Contour{Path: outline}, Contour{Layer: Centre, Path: between(wood, top)}}
	if p.Rocker.Sole > 0 {
		items = append(items, Contour{Layer: Marks, Path: floor})
	}
	items = append(items, Mark{At: low, Label: "low point"}, Corner{At: corner},
		Line{Layer: Centre, From: corner, To: r2.Vec{X: low.X, Y: corner.Y}, Label: "floor line"})
	for i, end := range []bench.End{p.Rocker.Tail, p.Rocker.Nose} {
		if end.Finish != bench.Square { // the wood does not show where to tape from
			items = append(items, Mark{At: tips[i], Label: "tip"})
		}
	}
	items = append(items, p.stations(corner.Y)...)
	for _, leg := range p.Legs {
		items = append(items, leg.items(p.Rocker.Depth)...)
	}
	for _, s := range sweeps[min(1, len(sweeps)):] {
		items = append(items, Mark{At: r2.Add(corner, s.From), Label: "tangent point"})
	}
	items = slices.Concat(items, []Item{grainIn(wood, top, p.Grain)}, p.EndWords.items(outline))
	return Drawing{TipToTip: tips, Items: items}, nil
}

// stations returns a tick on either edge at each place; floor is the height of the floor line.
func (p RockerPattern) stations(floor float64) []Item {
	const tick, same = 5e-3, 1e-9
	var list []Item
	add := func(station float64, edge r2.Vec, up float64, label string) {
		if math.Abs(edge.X-station) < same { // else this edge ends before the station
			from := r2.Add(edge, r2.Vec{Y: floor})
			list = append(list, Line{From: from, To: r2.Add(from, r2.Vec{Y: up}), Label: label})
		}
	}
	for i, s := range p.Stations {
		if i < len(p.Places) && p.Places[i] != "" {
			add(s.At, s.Wood, tick, p.Places[i])
			add(s.At, s.Top, -tick, "")
		}
	}
	return list
}

// items returns the marks of a leg: its centre line down into the wood, and both its sides on the top edge.
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

// across returns the two edges of the wood at a part of their lengths.
func across(wood, top bench.Path, part float64) (low, high r2.Vec) {
	back := top.Reversed()
	low, _ = wood.At(wood.Length() * part)
	high, _ = back.At(back.Length() * part)
	return low, high
}

// between returns the middle line of the wood, a point each hundredth of its length: it is looked at, not cut along.
func between(wood, top bench.Path) bench.Path {
	var list []r2.Vec
	for i := range 101 {
		low, high := across(wood, top, float64(i)/100)
		list = append(list, r2.Scale(0.5, r2.Add(low, high)))
	}
	return bench.Polyline(false, list...)
}

// grainIn returns an arrow along the grain in the middle of the wood, between low point and nose.
func grainIn(wood, top bench.Path, heading float64) Grain {
	low, high := across(wood, top, 0.74)
	middle, half := r2.Add(low, r2.Scale(0.3, r2.Sub(high, low))), r2.Scale(0.025, along(heading))
	return Grain{From: r2.Sub(middle, half), To: r2.Add(middle, half)}
}

// A FormPattern is the pattern of a form: its face, and a back behind it.
type FormPattern struct {
	Outline bench.Path
	Face    [2]r2.Vec // the ends of the face that the wood touches
	Low     r2.Vec    // the place of the low point on the face
	Side    float64   // on which side of its face the form lies: +1 above, −1 below
	EndWords
}

// Drawing returns the pattern of the form.
func (p FormPattern) Drawing() Drawing {
	items := []Item{Contour{Path: p.Outline}, Mark{At: p.Low},
		Line{Layer: Centre, From: p.Low, To: r2.Add(p.Low, r2.Vec{Y: p.Side * 0.03}), Label: "low point"}}
	return Drawing{TipToTip: p.Face, Items: append(items, p.EndWords.items(p.Outline)...)}
}

// Behind returns the outline of a form on a level back: its face, from nose to tail, hangs through below its ends.
func Behind(face bench.Path) bench.Path {
	const behind = 0.1016 // m: the wood under the lowest of the face
	back := face.Bounds().Min.Y - behind
	under := []bench.Stroke{{To: r2.Vec{X: face.End().X, Y: back}}, {To: r2.Vec{X: face.Start.X, Y: back}}}
	return bench.Path{Start: face.Start, Closed: true, Strokes: slices.Concat(face.Strokes, under)}
}

// PanelPattern returns the section of a coopered panel, hollow side up: the staves as sawn in one outline, which
// can be cut as a template, the joints between them as marks, and the two finished faces.
func PanelPattern(panel bench.Coopered, stave bench.Stave) Drawing {
	half := stave.Bevel
	turn := 2 * half
	flat := panel.Radius * math.Cos(half)
	all := turn * float64(panel.Staves) / 2
	on := func(r, angle float64) r2.Vec { return r2.Vec{X: r * math.Sin(angle), Y: -r * math.Cos(angle)} }
	d := Drawing{TipToTip: [2]r2.Vec{on(panel.Radius, -all), on(panel.Radius, all)}}
	var under, over []r2.Vec // the corners of the round side, and of the hollow one, from the left
	for i := range panel.Staves + 1 {
		at := float64(i)*turn - all
		under, over = append(under, on((flat+panel.Stock)/math.Cos(half), at)), append(over, on(flat/math.Cos(half), at))
		if i > 0 && i < panel.Staves {
			d.Items = append(d.Items, Line{From: over[i], To: under[i]})
		}
	}
	slices.Reverse(over)
	d.Items = append(d.Items, Contour{Path: bench.Polyline(true, append(under, over...)...)})
	for _, r := range []float64{panel.Radius, panel.Radius + stave.Thick} {
		arc := bench.Path{Start: on(r, -all), Strokes: []bench.Stroke{{To: on(r, all), Turn: 2 * all}}}
		d.Items = append(d.Items, Contour{Layer: Centre, Path: arc})
	}
	return d
}

// PairWords are what is written in both outlines of a pair, as they lie with the grain of the left one to the
// right: at the two ends, at the upper and the lower edge, and what each of them is.
type PairWords struct{ Ahead, Behind, Upper, Lower, Left, Right string }

// A PairPattern is a left and a right one in one board.
type PairPattern struct {
	Pair bench.Pair
	PairWords
}

// Drawing returns the board with both outlines in it, and in each the grain arrow and what is at its ends and edges.
func (p PairPattern) Drawing() Drawing {
	size := r2.Vec{X: p.Pair.Length, Y: p.Pair.Width}
	d := Drawing{TipToTip: [2]r2.Vec{{}, {X: size.X}}, Items: []Item{
		Contour{Layer: Stock, Path: rectangle(r2.Vec{}, size)}, Contour{Path: p.Pair.Left.Outline}, Contour{Path: p.Pair.Right.Outline},
	}}
	for i, part := range []bench.Half{p.Pair.Left, p.Pair.Right} {
		in := func(along, up float64) r2.Vec { return inWood(part.Outline, along, up) }
		middle, half := in(0.5, 0.5), r2.Scale(0.03, part.Grain)
		ahead, behind := 0.95, 0.05
		if part.Grain.X < 0 {
			ahead, behind = behind, ahead
		}
		d.Items = append(d.Items, Grain{From: r2.Sub(middle, half), To: r2.Add(middle, half)},
			Text{At: r2.Add(middle, r2.Vec{X: 0.036, Y: -1.7e-3}), Text: [2]string{p.Left, p.Right}[i]},
			Name{in(ahead, 0.5), p.Ahead}, Name{in(behind, 0.5), p.Behind}, Name{in(0.3, 0.85), p.Upper}, Name{in(0.3, 0.15), p.Lower})
	}
	return d
}

// inWood returns a point in the wood at a share of an outline's length, from the left, and of its height there.
func inWood(outline bench.Path, along, up float64) r2.Vec {
	box := outline.Bounds()
	x := box.Min.X + along*(box.Max.X-box.Min.X)
	low, top := math.Inf(1), math.Inf(-1)
	points := outline.Flattened(1e-4)
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		if (a.X > x) == (b.X > x) {
			continue
		}
		y := a.Y + (b.Y-a.Y)*(x-a.X)/(b.X-a.X)
		low, top = min(low, y), max(top, y)
	}
	return r2.Vec{X: x, Y: low + up*(top-low)}
}
