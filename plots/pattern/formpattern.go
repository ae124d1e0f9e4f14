package pattern

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// A FormPattern is the pattern of a form: its face, and a back behind it.
type FormPattern struct {
	Part, Piece string
	Outline     bench.Path
	Face        [2]r2.Vec // the ends of the face that the wood touches
	Low         r2.Vec    // the place of the low point on the face
	Side        float64   // on which side of its face the form lies: +1 above, −1 below
	EndWords
	Notes [][]string // texts, each by its lines
}

// Drawing returns the pattern of the form.
func (p FormPattern) Drawing() Drawing {
	d := Drawing{Part: p.Part, Piece: p.Piece, TipToTip: p.Face, Items: []Item{
		Curve{Path: p.Outline},
		Mark{At: p.Low},
		Line{Layer: Centre, From: p.Low, To: r2.Add(p.Low, r2.Vec{Y: p.Side * 0.03}), Label: "low point"},
	}}
	d.Items = append(d.Items, p.EndWords.items(p.Outline)...)
	d.Items = append(d.Items, notes(p.Notes)...)
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
