package pattern

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// An arc is a stroke with its beginning: from one point to another while the way turns to
// the left by an angle.
type arc struct {
	from, to r2.Vec
	turn     float64
}

// arcs returns the strokes of a path, of a closed one with the straight way home where the
// last stroke does not end at the start.
func arcs(p bench.Path) []arc {
	list := make([]arc, 0, len(p.Strokes)+1)
	from := p.Start
	for _, s := range p.Strokes {
		list = append(list, arc{from, s.To, s.Turn})
		from = s.To
	}
	const same = 1e-9 // m: far below any reading, far above the rounding of metres
	if p.Closed && r2.Norm(r2.Sub(p.Start, from)) > same {
		list = append(list, arc{from, p.Start, 0})
	}
	return list
}

// drawn returns the arcs of a path without the straight way home, which the file's word for
// "closed" draws.
func drawn(p bench.Path) []arc {
	list := arcs(p)
	if n := len(list); p.Closed && n > 1 && list[n-1].turn == 0 {
		return list[:n-1]
	}
	return list
}

// at returns the point at a share t of the arc's length. A chord from the start sees the
// share of the turn under half its angle, so it is
//
//	L·sin(turn·t/2)/sin(turn/2) long and lies turn/2·(1 − t) to the right of the whole chord,
//
// which holds for a straight line as well and needs no centre.
func (a arc) at(t float64) r2.Vec {
	chord := r2.Sub(a.to, a.from)
	share := t
	if s := math.Sin(a.turn / 2); math.Abs(s) > 1e-9 { // below it the sines' ratio is t to 1e-18
		share = math.Sin(a.turn*t/2) / s
	}
	return r2.Add(a.from, r2.Scale(share, r2.Rotate(chord, -a.turn/2*(1-t), r2.Vec{})))
}

// radius returns the radius, +Inf of a straight line.
func (a arc) radius() float64 {
	return r2.Norm(r2.Sub(a.to, a.from)) / math.Abs(2*math.Sin(a.turn/2))
}

// length returns the length along the arc.
func (a arc) length() float64 {
	chord := r2.Norm(r2.Sub(a.to, a.from))
	if s := math.Sin(a.turn / 2); math.Abs(s) > 1e-9 {
		return chord * a.turn / 2 / s
	}
	return chord
}

// parts cuts an arc into n of the same length.
func (a arc) parts(n int) []arc {
	list := make([]arc, n)
	from := a.from
	for i := range list {
		to := a.to
		if i < n-1 {
			to = a.at(float64(i+1) / float64(n))
		}
		list[i] = arc{from, to, a.turn / float64(n)}
		from = to
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
func (a arc) cubics() []cubic {
	const off = 1e-6 // m
	step := math.Pi / 12
	if r := a.radius(); !math.IsInf(r, 0) {
		step = min(step, math.Pi/2*math.Pow(off/(2.73e-4*r), 1.0/6))
	}
	n := max(1, int(math.Ceil(math.Abs(a.turn)/step)))
	var list []cubic
	for _, p := range a.parts(n) {
		chord, c := r2.Sub(p.to, p.from), math.Cos(p.turn/4)
		handle := r2.Scale(1/(3*c*c), chord)
		list = append(list, cubic{
			r2.Add(p.from, r2.Rotate(handle, -p.turn/2, r2.Vec{})),
			r2.Sub(p.to, r2.Rotate(handle, p.turn/2, r2.Vec{})),
			p.to,
		})
	}
	return list
}

// sampled returns points along a path, ends included, no further apart than step, and
// never further than a fifteenth of a radian of turn.
func sampled(p bench.Path, step float64) []r2.Vec {
	list := []r2.Vec{p.Start}
	for _, a := range arcs(p) {
		n := max(1, int(math.Ceil(max(a.length()/step, math.Abs(a.turn)*15))))
		for i := 1; i < n; i++ {
			list = append(list, a.at(float64(i)/float64(n)))
		}
		list = append(list, a.to)
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

// along returns the unit vector at an angle.
func along(angle float64) r2.Vec {
	s, c := math.Sincos(angle)
	return r2.Vec{X: c, Y: s}
}
