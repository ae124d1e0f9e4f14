package rises

import (
	"math"

	"rockerwright/rocker"
)

// straightBow is the curvature below which an arc of a fit is straight, 1/m: less than a
// tenth of a millimetre of rise in a metre.
const straightBow = 1e-3

// Spans returns the spans of a [rocker.Chain] from the nose tip to the tail tip, nose and tail
// being lengths along the edge from the low point, m; zero means as far as the stations
// reach. The end arcs are drawn out, or cut off, to that length. nose is returned for the
// chain. A fit that has no arcs, as the zero Fit, has no spans.
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

// length returns the length along the edge from the low point to a place x ahead of it,
// below zero behind it.
func (f Fit) length(x float64) float64 {
	sum, p := 0.0, 0.0
	for k, dx := range f.bow.way(f.low, f.low+x) {
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
