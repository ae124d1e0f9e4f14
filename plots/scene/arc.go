package scene

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// stroke returns the stretch of a line that ends at its i-th point, mm.
func (s Shape) stroke(i int) bench.Piece {
	p := bench.Piece{From: s.Points[max(0, i-1)], Stroke: bench.Stroke{To: s.Points[i]}}
	if s.Turns != nil {
		p.Turn = s.Turns[i]
	}
	return p
}

// cubics returns an arc as Bézier curves from its start, each by its two handles and its end, of at most 15° and
// less than 0.001 mm off. The handles of a turn τ are chord/(3 cos²(τ/4)) long along the tangents;
// the radius is then off by at most 2.73e-4 R at 90° and falls with the sixth power of τ
// (Goldapp, Approximation of circular arcs by cubic polynomials, Computer Aided Geometric
// Design 8, 1991, from memory; the tests measure it): 5.9e-9 R at 15°.
func cubics(a bench.Piece) [][3]r2.Vec {
	const off = 1e-3 // mm
	step := min(math.Pi/12, math.Pi/2*math.Pow(off/(2.73e-4*math.Abs(a.Radius())), 1.0/6))
	list := make([][3]r2.Vec, max(1, int(math.Ceil(math.Abs(a.Turn)/step))))
	for i := range list {
		n := float64(len(list))
		p := a.Cut(float64(i)/n, float64(i+1)/n)
		c := math.Cos(p.Turn / 4)
		handle := r2.Scale(1/(3*c*c), r2.Sub(p.To, p.From))
		list[i] = [3]r2.Vec{
			r2.Add(p.From, r2.Rotate(handle, -p.Turn/2, r2.Vec{})),
			r2.Sub(p.To, r2.Rotate(handle, p.Turn/2, r2.Vec{})),
			p.To,
		}
	}
	return list
}
