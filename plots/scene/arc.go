package scene

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// An arc is a stretch of a line from a point to the next, turning to the left by an angle, rad; straight where
// it is zero.
type arc struct {
	from, to r2.Vec // mm
	turn     float64
}

// arc returns the stretch that ends at the i-th point of a line; of the first no more than that point.
func (s Shape) arc(i int) arc {
	a := arc{from: s.Points[max(0, i-1)], to: s.Points[i]}
	if s.Turns != nil {
		a.turn = s.Turns[i]
	}
	return a
}

// radius returns the radius of the arc, mm; infinite of a straight one.
func (a arc) radius() float64 {
	if a.turn == 0 {
		return math.Inf(1)
	}
	return math.Abs(r2.Norm(r2.Sub(a.to, a.from)) / (2 * math.Sin(a.turn/2)))
}

// at returns the point at a share of the arc: the chord to it is chord·sin(τ·share/2)/sin(τ/2) long and lies
// τ/2·(1 − share) to the right of the whole chord.
func (a arc) at(share float64) r2.Vec {
	if share == 1 {
		return a.to
	}
	chord := r2.Scale(math.Sin(a.turn*share/2)/math.Sin(a.turn/2), r2.Sub(a.to, a.from))
	return r2.Add(a.from, r2.Rotate(chord, -a.turn/2*(1-share), r2.Vec{}))
}

// cubics returns the arc as Bézier curves from its start, each by its two handles and its end, of at most 15° and
// less than 0.001 mm off. The handles of a turn τ are chord/(3 cos²(τ/4)) long along the tangents;
// the radius is then off by at most 2.73e-4 R at 90° and falls with the sixth power of τ
// (Goldapp, Approximation of circular arcs by cubic polynomials, Computer Aided Geometric
// Design 8, 1991, from memory; the tests measure it): 5.9e-9 R at 15°.
func (a arc) cubics() [][3]r2.Vec {
	const off = 1e-3 // mm
	step := min(math.Pi/12, math.Pi/2*math.Pow(off/(2.73e-4*a.radius()), 1.0/6))
	list := make([][3]r2.Vec, max(1, int(math.Ceil(math.Abs(a.turn)/step))))
	n := float64(len(list))
	from, part := a.from, a.turn/n
	c := math.Cos(part / 4)
	for i := range list {
		to := a.at(float64(i+1) / n)
		handle := r2.Scale(1/(3*c*c), r2.Sub(to, from))
		list[i] = [3]r2.Vec{
			r2.Add(from, r2.Rotate(handle, -part/2, r2.Vec{})),
			r2.Sub(to, r2.Rotate(handle, part/2, r2.Vec{})),
			to,
		}
		from = to
	}
	return list
}
