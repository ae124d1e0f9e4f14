package pattern

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

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
	d.Items = append(d.Items, Curve{Path: bench.Polyline(true, append(under, over...)...)})
	for _, r := range []float64{panel.Radius, panel.Radius + stave.Thick} {
		d.Items = append(d.Items, Curve{Layer: Centre, Path: bench.Path{Start: on(r, -all), Strokes: []bench.Stroke{{To: on(r, all), Turn: 2 * all}}}})
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
		Curve{Layer: Stock, Path: rectangle(r2.Vec{}, size)}, Curve{Path: p.Pair.Left.Outline}, Curve{Path: p.Pair.Right.Outline},
	}}
	for i, part := range []bench.Part{p.Pair.Left, p.Pair.Right} {
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

// inWood returns a point in the wood at a share of an outline's length, from the left, and at a share of
// its height there.
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
