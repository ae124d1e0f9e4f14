package bench

import (
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// TestEnded: an edge that ends short of a station is given by its own end; a rounding is no end.
func TestEnded(t *testing.T) {
	s := Station{At: 0.3}
	for x, want := range map[float64]bool{0.3: false, 0.3 + 1e-12: false, 0.28: true, 0.32: true} {
		if got := s.Ended(r2.Vec{X: x, Y: 0.1}); got != want {
			t.Errorf("an edge at %v ends short of the station at %v: %v", x, s.At, got)
		}
	}
}
