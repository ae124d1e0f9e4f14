package quantity

import (
	"math"
	"math/rand/v2"
	"testing"
)

// TestNextLength is above, by no more than a sixteenth or a millimetre, and reads back as itself.
func TestNextLength(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 9))
	for i := range 2000 {
		for system, part := range map[System]float64{Inch: 0.0254 / 16, Metric: 1e-3} {
			x := rng.Float64()
			if i%2 == 0 {
				x = part * float64(rng.IntN(900)) // on the scale already
			}
			next := NextLength(x, system)
			back, err := Parse(Shop(next, Length, system), Length, system)
			if next <= x || next-x > part*(1+1e-9) || err != nil || back != next || math.Abs(math.Remainder(next, part)) > 1e-12 {
				t.Fatalf("%v: %v, read %v, %v", x, next, back, err)
			}
		}
	}
}
