package body

import (
	"math"
	"testing"
)

// TestBeam holds the textbook's formulas in their best-known places: a beam on two ends
// loaded in the middle, F·L³/(48·E·I) and F·L/4; a cantilever loaded at its end,
// F·L³/(3·E·I) and F·L. Sources: any textbook of strength of materials.
func TestBeam(t *testing.T) {
	const force, length, modulus, wide, thick = 200.0, 0.6, 12e9, 0.03, 0.01
	second := wide * thick * thick * thick / 12
	section := wide * thick * thick / 6 // of stress: σ = M/section
	if got := SecondMoment(1, wide, thick); math.Abs(got/second-1) > 1e-15 {
		t.Errorf("second moment %v, want %v", got, second)
	}
	for _, tt := range []struct {
		name         string
		held         Held
		at           float64
		down, moment float64
	}{
		{"both ends, middle", BothEnds, length / 2, force * length * length * length / (48 * modulus * second), force * length / 4},
		{"cantilever, end", OneEnd, length, force * length * length * length / (3 * modulus * second), force * length},
		{"both ends, at an end", BothEnds, length, 0, 0},
		{"cantilever, beyond its end", OneEnd, 2 * length, force * length * length * length / (3 * modulus * second), force * length},
	} {
		b := Beam{Length: length, Modulus: modulus, Second: second, Half: thick / 2, Held: tt.held}
		down, stress := b.Bend(force, tt.at)
		if math.Abs(down-tt.down) > 1e-15 || math.Abs(stress-tt.moment/section) > 1e-6 {
			t.Errorf("%s: %v m, %v Pa; want %v, %v", tt.name, down, stress, tt.down, tt.moment/section)
		}
	}
}
