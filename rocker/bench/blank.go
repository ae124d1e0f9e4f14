package bench

import (
	"cmp"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"
)

// blankWithin is how far the chords that a blank is looked for on may leave the outline, m. The
// sizes of the blank found are those of the true outline.
const blankWithin = 5e-6

// A Blank is the rectangle of wood out of which a part is sawn. Its grain runs along Length.
type Blank struct {
	Length, Width float64 // m, Length ≥ Width
	Grain         float64 // the heading of Length in the frame of the outline, −π/2 to π/2, rad
}

// SmallestBlank returns the rectangle of least area round a closed outline, of like ones the
// one nearest to level. An outline without length has the zero Blank.
//
// Of a polygon such a rectangle has a side along the convex hull (between two of its edges both widths go as
// a sine of the angle, and their product has no least value inside), so the edges of the flattened outline's
// hull are tried; the sizes are taken from the true arcs. It is exact to well under 0.1 mm.
func SmallestBlank(outline Path) Blank {
	corners := hull(outline.Flattened(blankWithin))
	best, least := math.NaN(), math.Inf(1)
	for i := range corners {
		edge := r2.Sub(corners[(i+1)%len(corners)], corners[i])
		if edge == (r2.Vec{}) {
			continue
		}
		angle := math.Remainder(math.Atan2(edge.Y, edge.X), math.Pi)
		length, width := extent(corners, ahead(angle)), extent(corners, left(angle))
		if length < width {
			angle = math.Remainder(angle+math.Pi/2, math.Pi)
		}
		area := length * width
		if area < least*(1-1e-9) || area < least*(1+1e-9) && math.Abs(angle) < math.Abs(best) {
			best, least = angle, area
		}
	}
	if math.IsNaN(best) {
		return Blank{}
	}
	return BlankAlong(outline, best)
}

// BlankAlong returns the rectangle round an outline whose grain has the given heading, rad.
// Its Length is along the grain even where that is the shorter side.
func BlankAlong(outline Path, grain float64) Blank {
	box := outline.Turned(-grain, r2.Vec{}).Bounds()
	size := r2.Sub(box.Max, box.Min)
	return Blank{size.X, size.Y, grain}
}

// extent returns how far the points reach along a unit vector, m.
func extent(points []r2.Vec, along r2.Vec) float64 {
	low, high := math.Inf(1), math.Inf(-1)
	for _, q := range points {
		reach := r2.Dot(q, along)
		low, high = min(low, reach), max(high, reach)
	}
	return high - low
}

// hull returns the corners of the convex hull, counter-clockwise, by Andrew's two chains over points sorted by x.
func hull(points []r2.Vec) []r2.Vec {
	sorted := slices.Clone(points)
	slices.SortFunc(sorted, func(p, q r2.Vec) int { return cmp.Or(cmp.Compare(p.X, q.X), cmp.Compare(p.Y, q.Y)) })
	half := func(points []r2.Vec) []r2.Vec {
		var chain []r2.Vec
		for _, q := range points {
			for n := len(chain); n > 1 && r2.Cross(r2.Sub(chain[n-1], chain[n-2]), r2.Sub(q, chain[n-1])) <= 0; n = len(chain) {
				chain = chain[:n-1]
			}
			chain = append(chain, q)
		}
		return chain[:len(chain)-1]
	}
	lower := half(sorted)
	slices.Reverse(sorted)
	return append(lower, half(sorted)...)
}
