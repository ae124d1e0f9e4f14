package pattern

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// TestCubics holds that the curves of a PDF stay within 0.001 mm of their circle, and that
// none turns by more than 15°.
func TestCubics(t *testing.T) {
	for _, radius := range []float64{0.005, 1.0668, 50, 500} {
		for _, turn := range []float64{0.5, 3, -1.2} {
			s, c := math.Sincos(turn)
			to := r2.Scale(radius*math.Copysign(1, turn), r2.Vec{X: s, Y: 1 - c})
			centre := r2.Vec{Y: math.Copysign(radius, turn)}
			list := cubics(bench.Piece{Stroke: bench.Stroke{To: to, Turn: turn}})
			if len(list) < int(math.Ceil(math.Abs(turn)/(15*degree))) {
				t.Errorf("%v rad in %d curves", turn, len(list))
			}
			from := r2.Vec{}
			for _, k := range list {
				for i := range 101 {
					u := float64(i) / 100
					v := 1 - u
					p := r2.Add(r2.Add(r2.Scale(v*v*v, from), r2.Scale(3*v*v*u, k[0])), r2.Add(r2.Scale(3*v*u*u, k[1]), r2.Scale(u*u*u, k[2])))
					if off := math.Abs(r2.Norm(r2.Sub(p, centre)) - radius); off > 1e-6 {
						t.Fatalf("%v m by %v rad: %v m off", radius, turn, off)
					}
				}
				from = k[2]
			}
		}
	}
}

// TestArcsOfAPath: a closed path goes home, whether its last stroke does so or not.
func TestArcsOfAPath(t *testing.T) {
	corners := []r2.Vec{{}, {X: 1}, {X: 1, Y: 1}}
	open, home := bench.Polyline(true, corners...), bench.Polyline(true, append(corners, r2.Vec{})...)
	if a, b := arcs(open), arcs(home); len(a) != 3 || len(b) != 3 || a[2] != b[2] {
		t.Errorf("%v and %v", a, b)
	}
	if a := arcs(bench.Path{Strokes: []bench.Stroke{{To: r2.Vec{X: 1}}}}); len(a) != 1 {
		t.Errorf("%v", a)
	}
}
