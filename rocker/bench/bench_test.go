package bench

import (
	"math"
	"testing"
)

// TestSpringback: strips of 5, 7 and 9 lose 4, 2 and 1 % (common practice, rounded), and a
// form so much tighter leaves what is wanted.
func TestSpringback(t *testing.T) {
	for n, want := range map[int]float64{5: 0.04, 7: 0.02, 9: 0.01} {
		if got := Springback(n); math.Abs(got-want) > 0.003 {
			t.Errorf("%d strips: %v, want about %v", n, got, want)
		}
	}
	if Springback(0) != 1 || Springback(1) != 1 {
		t.Error("one strip keeps a bend")
	}
}

// TestResultant holds a leg as a vector: plumb down turned by its rake and splay.
func TestResultant(t *testing.T) {
	for _, a := range [][2]float64{{0.2, 0.1}, {0.3, 0}, {0, 0.25}, {-0.2, 0.1}} {
		x, y := math.Tan(a[0]), math.Tan(a[1])
		if got, want := math.Cos(Resultant(a[0], a[1])), 1/math.Sqrt(1+x*x+y*y); math.Abs(got-want) > 1e-15 {
			t.Errorf("%v: cosine %v, want %v", a, got, want)
		}
		s := Sightline(a[0], a[1])
		if cross := math.Cos(s)*y - math.Sin(s)*x; math.Abs(cross) > 1e-15 {
			t.Errorf("%v: sightline %v is off the foot", a, s)
		}
	}
}
