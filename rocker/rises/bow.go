package rises

import (
	"iter"
	"math"
	"slices"
	"sort"

	"rockerwright/rocker"
)

// A bow is a curve of arcs with continuous tangents over the straightedge, by height and slope at x = 0, the
// curvature of each arc and where they join. Along x the sine of its slope p changes by the curvature κ,
//
//	dp/dx = κ,   y = ∫ p/√(1 − p²) dx
//
// so that on one arc y grows by (√(1 − p₁²) − √(1 − p₂²))/κ (derived here: with slope φ
// and arc length s, dφ/ds = κ and dx = cos φ ds give d sin φ = κ dx).
type bow struct {
	height, slope float64   // y (m) and p at x = 0
	curvature     []float64 // of each arc from the nose, 1/m
	joint         []float64 // x between them, falling, m
}

// parameters returns all numbers of the bow that a fit can change, the joints last.
func (b *bow) parameters() []float64 {
	return slices.Concat([]float64{b.height, b.slope}, b.curvature, b.joint)
}

// with returns the bow with its first parameters changed.
func (b *bow) with(first []float64) bow {
	all := append(slices.Clip(first), b.parameters()[len(first):]...)
	joints := 2 + len(b.curvature)
	return bow{all[0], all[1], all[2:joints], all[joints:]}
}

// arcs yields, from one x to another, the curvature of each arc in turn and how far it goes along x.
func (b *bow) arcs(from, to float64) iter.Seq2[float64, float64] {
	return func(yield func(curvature, dx float64) bool) {
		i := sort.Search(len(b.joint), func(i int) bool { return !(from < b.joint[i]) })
		for {
			end, next := to, i
			switch {
			case to > from && i > 0 && to > b.joint[i-1]:
				end, next = b.joint[i-1], i-1
			case to < from && i < len(b.joint) && to < b.joint[i]:
				end, next = b.joint[i], i+1
			}
			if !yield(b.curvature[i], end-from) || next == i {
				return
			}
			from, i = end, next
		}
	}
}

// at returns height and slope at x, starting from x = 0 and going arc by arc.
func (b *bow) at(x float64) (y, p float64) {
	y, p = b.height, b.slope
	for curvature, dx := range b.arcs(0, x) {
		q := min(0.999, max(-0.999, p+curvature*dx)) // steeper than 87 degrees is no rocker
		if math.Abs(q-p) < 1e-9 {
			y += dx * p / math.Sqrt(1-p*p)
		} else { // (√(1−p²) − √(1−q²))/κ without the difference of two near numbers
			y += dx * (p + q) / (math.Sqrt(1-p*p) + math.Sqrt(1-q*q))
		}
		p = q
	}
	return y, p
}

// straightBow is the curvature below which an arc of a fit is straight, 1/m: less than a
// tenth of a millimetre of rise in a metre.
const straightBow = 1e-3

// Spans returns the spans of a [rocker.Chain] from tip to tip, and the nose for it. Nose and tail are lengths along
// the edge from the low point, m, to which the end arcs are drawn out or cut off; zero means as far as the stations
// reach. A fit without arcs, as the zero Fit, has no spans.
func (f Fit) Spans(nose, tail float64) (spans []rocker.Span, toNose float64) {
	if len(f.Arcs) == 0 {
		return nil, 0
	}
	first, last := f.Arcs[0].From, f.Arcs[len(f.Arcs)-1].To
	if nose == 0 {
		nose = f.length(first)
	}
	if tail == 0 {
		tail = -f.length(last)
	}
	begin := nose
	for i, arc := range f.Arcs {
		end := -tail
		if i < len(f.Arcs)-1 {
			end = max(-tail, min(nose, f.length(arc.To)))
		}
		if length := begin - end; length > 0 {
			if math.Abs(f.bow.curvature[i]) < straightBow {
				spans = append(spans, rocker.Flat(length))
			} else {
				spans = append(spans, rocker.Arc(1/f.bow.curvature[i], length))
			}
		}
		begin = end
	}
	return spans, nose
}

// length returns the length along the edge from the low point to a place x ahead of it, below zero behind.
func (f Fit) length(x float64) float64 {
	sum, p := 0.0, 0.0
	for k, dx := range f.bow.arcs(f.low, f.low+x) {
		q := p + k*dx
		if math.Abs(q-p) < 1e-9 {
			sum += dx / math.Sqrt(1-p*p)
		} else {
			sum += (math.Asin(q) - math.Asin(p)) / k
		}
		p = q
	}
	return sum
}
