package rocker

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// straightBow is the curvature below which an arc of a fit is straight, 1/m: less than a
// tenth of a millimetre of rise in a metre.
const straightBow = 1e-3

// Spans returns the spans of a [Chain] from the nose tip to the tail tip, nose and tail
// being lengths along the edge from the low point, m; zero means as far as the stations
// reach. The end arcs are drawn out, or cut off, to that length. nose is returned for the
// chain.
func (f RisesFit) Spans(nose, tail float64) (spans []Span, toNose float64) {
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
				spans = append(spans, Flat(length))
			} else {
				spans = append(spans, Arc(1/f.bow.curvature[i], length))
			}
		}
		begin = end
	}
	return spans, nose
}

// length returns the length along the edge from the low point to a place x ahead of it,
// below zero behind it.
func (f RisesFit) length(x float64) float64 {
	sum, from, p := 0.0, 0.0, 0.0
	i := f.bow.arcAt(f.low)
	for {
		to, next := x, i
		switch {
		case x > from && i > 0 && x > f.bow.joint[i-1]-f.low:
			to, next = f.bow.joint[i-1]-f.low, i-1
		case x < from && i < len(f.bow.joint) && x < f.bow.joint[i]-f.low:
			to, next = f.bow.joint[i]-f.low, i+1
		}
		k := f.bow.curvature[i]
		q := p + k*(to-from)
		if math.Abs(q-p) < 1e-9 {
			sum += (to - from) / math.Sqrt(1-p*p)
		} else {
			sum += (math.Asin(q) - math.Asin(p)) / k
		}
		if next == i {
			return sum
		}
		from, i, p = to, next, q
	}
}

// Agree compares the rises of two rockers, station by station, once the difference that
// a straightedge off or aslant makes is taken out. largest (m, above zero where left is
// higher) is the largest difference left, at its station; one reports that reading error
// explains them, 95 times in 100: neither their squares nor the largest alone says
// otherwise. The error is a [*RisesError].
func Agree(left, right Rises) (largest float64, station int, one bool, err error) {
	if err := left.check(); err != nil {
		return 0, 0, false, err
	}
	if len(left.Rise) != len(right.Rise) || left.Spacing != right.Spacing || left.Low != right.Low {
		return 0, 0, false, &RisesError{-1, "left and right have the same stations"}
	}
	apart := left
	apart.Rise = make([]float64, len(left.Rise))
	for i := range apart.Rise {
		apart.Rise[i] = left.Rise[i] - right.Rise[i]
	}
	n := float64(len(apart.Rise))
	var sumX, sumY, sumXX, sumXY float64
	for i, y := range apart.Rise {
		x := apart.at(i)
		sumX, sumY, sumXX, sumXY = sumX+x, sumY+y, sumXX+x*x, sumXY+x*y
	}
	slope := (n*sumXY - sumX*sumY) / (n*sumXX - sumX*sumX)
	offset := (sumY - slope*sumX) / n
	squares := 0.0
	for i, y := range apart.Rise {
		d := y - offset - slope*apart.at(i)
		squares += d * d
		if math.Abs(d) > math.Abs(largest) {
			largest, station = d, i
		}
	}
	variance := left.deviation()*left.deviation() + right.deviation()*right.deviation()
	each := 1 - 0.025/(2*n) // all stations, both signs
	one = squares/variance <= chiSquared(len(apart.Rise)-2, 0.975) &&
		math.Abs(largest) <= math.Sqrt(variance)*distuv.UnitNormal.Quantile(each)
	return largest, station, one, nil
}
