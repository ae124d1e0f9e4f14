package pattern

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// arcs returns the strokes of a path, of a closed one with the straight way home where the
// last stroke does not end at the start.
func arcs(p bench.Path) []bench.Piece {
	const same = 1e-9 // m: far below any reading, far above the rounding of metres
	list := p.Pieces()
	if n := len(list); p.Closed && n > 0 && list[n-1].Turn == 0 && list[n-1].Length() <= same {
		return list[:n-1]
	}
	return list
}

// drawn returns the arcs of a path without the straight way home, which the file's word for
// "closed" draws.
func drawn(p bench.Path) []bench.Piece {
	list := arcs(p)
	if n := len(list); p.Closed && n > 1 && list[n-1].Turn == 0 {
		return list[:n-1]
	}
	return list
}

// A cubic is a Bézier curve's two handles and its end.
type cubic [3]r2.Vec

// cubics returns an arc as Bézier curves from its start, each of at most 15° and less than
// 0.001 mm off. The handles of a turn τ are chord/(3 cos²(τ/4)) long along the tangents;
// the radius is then off by at most 2.73e-4 R at 90° and falls with the sixth power of τ
// (Goldapp, Approximation of circular arcs by cubic polynomials, Computer Aided Geometric
// Design 8, 1991, from memory; the tests measure it): 5.9e-9 R at 15°.
func cubics(a bench.Piece) []cubic {
	const off = 1e-6 // m
	step := math.Pi / 12
	if r := math.Abs(a.Radius()); !math.IsInf(r, 0) {
		step = min(step, math.Pi/2*math.Pow(off/(2.73e-4*r), 1.0/6))
	}
	list := make([]cubic, max(1, int(math.Ceil(math.Abs(a.Turn)/step))))
	for i := range list {
		n := float64(len(list))
		p := a.Cut(float64(i)/n, float64(i+1)/n)
		c := math.Cos(p.Turn / 4)
		handle := r2.Scale(1/(3*c*c), r2.Sub(p.To, p.From))
		list[i] = cubic{
			r2.Add(p.From, r2.Rotate(handle, -p.Turn/2, r2.Vec{})),
			r2.Sub(p.To, r2.Rotate(handle, p.Turn/2, r2.Vec{})),
			p.To,
		}
	}
	return list
}

// sampled returns points along a path, ends included, no further apart than step, and
// never further than a fifteenth of a radian of turn.
func sampled(p bench.Path, step float64) []r2.Vec {
	list := []r2.Vec{p.Start}
	for _, a := range arcs(p) {
		n := max(1, int(math.Ceil(max(a.Length()/step, math.Abs(a.Turn)*15))))
		for i := 1; i < n; i++ {
			list = append(list, a.At(float64(i)/float64(n)))
		}
		list = append(list, a.To)
	}
	return list
}

// polyline returns a path of straight strokes.
func polyline(closed bool, points ...r2.Vec) bench.Path {
	p := bench.Path{Start: points[0], Closed: closed}
	for _, q := range points[1:] {
		p.Strokes = append(p.Strokes, bench.Stroke{To: q})
	}
	return p
}

// rectangle returns the outline of one from its lower left corner.
func rectangle(at, size r2.Vec) bench.Path {
	return polyline(true, r2.Box{Min: at, Max: r2.Add(at, size)}.Vertices()...)
}

// along returns the unit vector at an angle.
func along(angle float64) r2.Vec {
	s, c := math.Sincos(angle)
	return r2.Vec{X: c, Y: s}
}
