package rocker

import (
	"fmt"
	"math"
	"sync"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"
)

// A Top says how the upper edge of a rocker runs.
type Top int

const (
	Concentric Top = iota // everywhere as deep as at the origin, square to the floor edge
	Straight              // a straight line, level as drawn
)

// A Strip is the flat shape between the floor edge and the top edge of a rocker.
type Strip struct {
	Area     float64 // m²
	Centroid r2.Vec  // chair frame, m
	Second   float64 // polar second moment of area about Centroid, m⁴
}

// Strip returns the shape of a rocker that is depth (m, above zero) deep at the origin. It is swept by lines square
// to the floor edge, so its ends are square; the wood that two such lines share at a corner is counted twice and the
// gap of a notch not at all. With a straight top that meets the floor edge short of a tip, the rest is left out. The
// error says where the depth is too much for a curve.
//
// With κ = 1/R and lines of length t, the area of a piece ds of edge is (t − κt²/2) ds; the moments follow in the
// same way. Along the edge the integrals are taken by Gauss's rule of 24 points a span.
func (p Profile) Strip(depth float64, top Top) (Strip, error) {
	return p.strip(depth, top, depth, depth)
}

// Tapered returns the same for a top that is depth deep at the origin and nose and tail (m, above zero) at the tips,
// changing by the square of the length along the edge. The rule's 24 points a span do not know of the jump of the
// top's bend over the origin, and err there by less than a ten-thousandth of the area.
func (p Profile) Tapered(depth, nose, tail float64) (Strip, error) {
	return p.strip(depth, Concentric, nose, tail)
}

// strip returns the shape of a rocker of these depths at the origin and, but for a straight top, at the tips.
func (p Profile) strip(depth float64, top Top, nose, tail float64) (Strip, error) {
	toNose, toTail := p.Reach()
	begin := toNose // of a span, along the edge from the origin, + to the nose
	deep := func(along float64) float64 {
		tip, reach := nose, toNose
		if along < 0 {
			tip, reach = tail, toTail
		}
		if tip == depth || reach == 0 {
			return depth
		}
		return depth + (tip-depth)*(along/reach)*(along/reach)
	}
	var area, second float64
	var first r2.Vec
	for i := range p.edge {
		e := &p.edge[i]
		if e.Length == 0 {
			continue
		}
		from, to := begin, begin-e.Length
		begin = to
		if most := max(deep(from), deep(to)); e.Curvature()*most >= 1 || from > 0 && to < 0 && e.Curvature()*depth >= 1 {
			return Strip{}, fmt.Errorf("rocker: a depth of %g m is more than the radius of span %d, %g m", max(most, depth), i, e.Radius)
		}
		rule := stripRule()
		for k, at := range rule.at {
			m0, m1, m2 := e.standing(at*e.Length, deep(from-at*e.Length), top)
			ds := rule.weight[k] * e.Length
			area, second = area+ds*m0, second+ds*m2
			first = r2.Add(first, r2.Scale(ds, m1))
		}
	}
	if !(area > 0) {
		return Strip{}, fmt.Errorf("rocker: a strip of depth %g m has no area", depth)
	}
	centroid := r2.Scale(1/area, first)
	return Strip{Area: area, Centroid: centroid, Second: second - area*r2.Norm2(centroid)}, nil
}

// standing returns the moments, for each metre of edge, of the line of wood that stands on the edge at a distance (m)
// along the span: its area, first and polar second moment about the origin.
func (e *edgeSpan) standing(distance, depth float64, top Top) (m0 float64, m1 r2.Vec, m2 float64) {
	q, curvature := e.point(distance), e.Curvature()
	tilt := e.from + distance*curvature
	down, _ := Down(tilt)
	up := r2.Scale(-1, down)
	t := depth
	if top == Straight {
		t = max(0, (depth-q.Y)/math.Cos(tilt))
	}
	m0 = t - curvature*t*t/2
	lean := t*t/2 - curvature*t*t*t/3
	m1 = r2.Add(r2.Scale(m0, q), r2.Scale(lean, up))
	m2 = m0*r2.Norm2(q) + 2*lean*r2.Dot(q, up) + t*t*t/3 - curvature*t*t*t*t/4
	return m0, m1, m2
}

// stripRule is Gauss's rule of 24 points on [0, 1].
var stripRule = sync.OnceValue(func() (rule struct{ at, weight [24]float64 }) {
	quad.Legendre{}.FixedLocations(rule.at[:], rule.weight[:], 0, 1)
	return rule
})
