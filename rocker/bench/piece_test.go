package bench

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// TestPieceOfACircle holds points on arcs against the circle they were taken from, of small and great
// turns to both sides, and their lengths and radii.
func TestPieceOfACircle(t *testing.T) {
	for _, radius := range []float64{0.01, 1.0668, 100} {
		for _, turn := range []float64{1e-6, 0.3, math.Pi, 5.5, -0.3, -math.Pi, -6} {
			on := func(share float64) r2.Vec { // from (0, 0), setting out along x
				s, c := math.Sincos(turn * share)
				return r2.Scale(radius*math.Copysign(1, turn), r2.Vec{X: s, Y: 1 - c})
			}
			a := Piece{Stroke: Stroke{on(1), turn}}
			tolerance := 1e-12 * radius / min(math.Abs(turn), math.Abs(math.Sin(turn/2))) // rounding of the chord against its angle
			if math.Abs(math.Abs(a.Radius())-radius) > tolerance || math.Abs(a.Length()-radius*math.Abs(turn)) > tolerance {
				t.Errorf("%v m by %v rad: radius %v, length %v", radius, turn, a.Radius(), a.Length())
			}
			for i := range 11 {
				share := float64(i) / 10
				want := r2.Rotate(on(share), 0, r2.Vec{})
				if got := a.At(share); r2.Norm(r2.Sub(got, want)) > tolerance {
					t.Errorf("%v m by %v rad at %v: %v, want %v", radius, turn, share, got, want)
				}
			}
		}
	}
	straight := Piece{Stroke: Stroke{To: r2.Vec{X: 2}}}
	if !math.IsInf(straight.Radius(), 1) || straight.Length() != 2 || straight.At(0.25) != (r2.Vec{X: 0.5}) {
		t.Errorf("straight: %v, %v, %v", straight.Radius(), straight.Length(), straight.At(0.25))
	}
}
