package rocker

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// TestAt holds points along one arc by hand, (R·sin(s/R), R·(1 − cos(s/R))), and the ends.
func TestAt(t *testing.T) {
	const radius = 1.2
	p := Single(radius, 0.4, 0.6)
	for _, along := range []float64{-0.6, -0.3, 0, 0.1, 0.4} {
		want := r2.Vec{X: radius * math.Sin(along/radius), Y: radius * (1 - math.Cos(along/radius))}
		if got, ok := p.At(along); !ok || r2.Norm(r2.Sub(got, want)) > 1e-15 {
			t.Errorf("At(%v) = %v, %v; want %v", along, got, ok, want)
		}
	}
	if got, ok := p.At(0.41); ok || got != p.Nose() {
		t.Errorf("beyond the nose: %v, %v", got, ok)
	}
	if got, ok := p.At(-0.61); ok || got != p.Tail() {
		t.Errorf("beyond the tail: %v, %v", got, ok)
	}
	if nose, tail := p.Reach(); math.Abs(nose-0.4) > 1e-15 || math.Abs(tail-0.6) > 1e-15 {
		t.Errorf("Reach = %v, %v", nose, tail)
	}
	two, err := Chain(0.5, Arc(0.9, 0.3), Flat(0.1), Arc(1.5, 0.6)) // the origin 0.1 behind the flat
	if err != nil {
		t.Fatal(err)
	}
	if nose, tail := two.Reach(); math.Abs(nose-0.5) > 1e-15 || math.Abs(tail-0.5) > 1e-15 {
		t.Errorf("two arcs and a flat: Reach = %v, %v", nose, tail)
	}
}
