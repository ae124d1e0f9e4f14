package rocker

import (
	"fmt"
	"math"

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

// Strip returns the shape of a rocker that is depth (m, above zero) deep at the
// origin. It is swept by lines square to the floor edge, so its ends are square;
// the wood that two such lines share at a corner is counted twice and the gap of a
// notch not at all. With a straight top that meets the floor edge short of a tip,
// the rest is left out. The error says where the depth is too much for a curve.
//
// With κ = 1/R and lines of length t, the area of a piece ds of edge is
// (t − κt²/2) ds; the moments follow in the same way. Along the edge the
// integrals are taken by Gauss's rule of 24 points a span.
func (p Profile) Strip(depth float64, top Top) (Strip, error) {
	var area, second float64
	var first r2.Vec
	for i := range p.edge {
		e := &p.edge[i]
		if e.Length == 0 {
			continue
		}
		curvature := 0.0
		if e.Radius != 0 {
			curvature = 1 / e.Radius
		}
		if curvature*depth >= 1 {
			return Strip{}, fmt.Errorf("rocker: a depth of %g m is more than the radius of span %d, %g m", depth, i, e.Radius)
		}
		// moments of the line of wood standing on the edge at a distance
		line := func(distance float64) (m0 float64, m1 r2.Vec, m2 float64) {
			q := e.point(distance)
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
		along := func(pick func(distance float64) float64) float64 {
			return quad.Fixed(pick, 0, e.Length, 24, quad.Legendre{}, 0)
		}
		area += along(func(d float64) float64 { m, _, _ := line(d); return m })
		first.X += along(func(d float64) float64 { _, m, _ := line(d); return m.X })
		first.Y += along(func(d float64) float64 { _, m, _ := line(d); return m.Y })
		second += along(func(d float64) float64 { _, _, m := line(d); return m })
	}
	if area <= 0 {
		return Strip{}, fmt.Errorf("rocker: a strip of depth %g m has no area", depth)
	}
	centroid := r2.Scale(1/area, first)
	return Strip{Area: area, Centroid: centroid, Second: second - area*r2.Norm2(centroid)}, nil
}
