package pattern

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// TestArc holds points on arcs against the circle they were taken from, of small and great
// turns to both sides, and their lengths and radii.
func TestArc(t *testing.T) {
	for _, radius := range []float64{0.01, 1.0668, 100} {
		for _, turn := range []float64{1e-6, 0.3, math.Pi, 5.5, -0.3, -math.Pi, -6} {
			on := func(share float64) r2.Vec { // from (0, 0), setting out along x
				s, c := math.Sincos(turn * share)
				return r2.Scale(radius*math.Copysign(1, turn), r2.Vec{X: s, Y: 1 - c})
			}
			a := arc{to: on(1), turn: turn}
			tolerance := 1e-12 * radius / min(math.Abs(turn), math.Abs(math.Sin(turn/2))) // rounding of the chord against its angle
			if math.Abs(a.radius()-radius) > tolerance || math.Abs(a.length()-radius*math.Abs(turn)) > tolerance {
				t.Errorf("%v m by %v rad: radius %v, length %v", radius, turn, a.radius(), a.length())
			}
			for i := range 11 {
				share := float64(i) / 10
				want := r2.Rotate(on(share), 0, r2.Vec{})
				if got := a.at(share); r2.Norm(r2.Sub(got, want)) > tolerance {
					t.Errorf("%v m by %v rad at %v: %v, want %v", radius, turn, share, got, want)
				}
			}
		}
	}
	straight := arc{to: r2.Vec{X: 2}}
	if !math.IsInf(straight.radius(), 1) || straight.length() != 2 || straight.at(0.25) != (r2.Vec{X: 0.5}) {
		t.Errorf("straight: %v, %v, %v", straight.radius(), straight.length(), straight.at(0.25))
	}
}

// TestCubics holds that the curves of a PDF stay within 0.001 mm of their circle, and that
// none turns by more than 15°.
func TestCubics(t *testing.T) {
	for _, radius := range []float64{0.005, 1.0668, 50, 500} {
		for _, turn := range []float64{0.5, 3, -1.2} {
			s, c := math.Sincos(turn)
			to := r2.Scale(radius*math.Copysign(1, turn), r2.Vec{X: s, Y: 1 - c})
			centre := r2.Vec{Y: math.Copysign(radius, turn)}
			list := arc{to: to, turn: turn}.cubics()
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
	open, home := polyline(true, corners...), polyline(true, append(corners, r2.Vec{})...)
	if a, b := arcs(open), arcs(home); len(a) != 3 || len(b) != 3 || a[2] != b[2] {
		t.Errorf("%v and %v", a, b)
	}
	if a := arcs(bench.Path{Strokes: []bench.Stroke{{To: r2.Vec{X: 1}}}}); len(a) != 1 {
		t.Errorf("%v", a)
	}
}
