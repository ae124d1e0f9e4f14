package rocker

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"
)

// TestCurvesByTheirEquations: the points of an ellipse and of a cycloid satisfy the equation of it, and fall
// to it as 1/n² with the arcs.
func TestCurvesByTheirEquations(t *testing.T) {
	const a, b, wheel = 1.3, 0.7, 0.25
	for _, tt := range []struct {
		name  string
		curve Curve
		off   func(q r2.Vec) float64
	}{
		{"ellipse", Ellipse(a, b, -0.7, 0.5), func(q r2.Vec) float64 { return b - q.Y - b*math.Sqrt(1-q.X*q.X/a/a) }},
		// y = a(1 − cos φ) gives the turn φ of the wheel, and x = a(φ + sin φ)
		{"cycloid", Cycloid(wheel, -0.7, 0.5), func(q r2.Vec) float64 {
			phi := math.Acos(1 - max(0, q.Y)/wheel)
			return math.Abs(q.X) - wheel*(phi+math.Sin(phi))
		}},
	} {
		last := math.Inf(1)
		for _, n := range []int{20, 40, 80} {
			spans, nose, err := tt.curve.Arcs(n)
			if err != nil {
				t.Fatal(err)
			}
			off := 0.0
			for _, q := range mustChain(t, nose, spans...).Outline(1e-7) {
				if math.Abs(q.X) > 0.05 { // near the low point y says nothing of φ
					off = max(off, math.Abs(tt.off(q)))
				}
			}
			if off > last/3.5 || off > 1/float64(n*n) {
				t.Errorf("%s: %d arcs lie %v off, half as many %v", tt.name, n, off, last)
			}
			last = off
		}
	}
}

// TestArcsOfACurve: the arcs turn by like angles but at the tips, one lies evenly astride the origin, they
// are as long as the curve between their ends, and the mirrored curve has them the other way round.
func TestArcsOfACurve(t *testing.T) {
	radius := func(tilt float64) float64 { return 1 + 0.5*math.Sin(tilt) + tilt*tilt }
	long := func(from, to float64) float64 { return quad.Fixed(radius, from, to, 30, quad.Legendre{}, 0) }
	for _, n := range []int{1, 2, 3, 4, 7, 11, 500} {
		// of 500 arcs of 1 mrad the last is short at the nose, and of the mirrored curve at the tail
		for _, ends := range [][2]float64{{-0.3, 0.5}, {-0.61, 0.2}, {-0.4, 0.4}, {-0.05, 0.9}, {-0.2005 - 1e-8, 0.2995 - 1e-8}} {
			c := Curve{radius, ends[0], ends[1]}
			spans, nose, err := c.Arcs(n)
			if err != nil || len(spans) < n || len(spans) > n+1 {
				t.Fatalf("%v: %d arcs, want %d, parted at the tips: %v", ends, len(spans), n, err)
			}
			width, tilt := (c.Tail-c.Nose)/float64(n), c.Nose
			for i, s := range spans {
				next := tilt + s.turn()
				if math.Abs(s.Length-long(tilt, next)) > 1e-12 {
					t.Errorf("%v: arc %d of %d is %v m long, the curve %v", ends, i, n, s.Length, long(tilt, next))
				}
				if inner := i > 0 && i < len(spans)-1; inner && math.Abs(s.turn()-width) > 1e-12 || s.turn() > width+1e-12 {
					t.Errorf("%v: arc %d of %d turns by %v, want %v", ends, i, n, s.turn(), width)
				}
				if astride := tilt < 0 && next > 0; astride && i > 0 && math.Abs(tilt+next) > 1e-12 && i < len(spans)-1 {
					t.Errorf("%v: arc %d of %d lies from %v to %v", ends, i, n, tilt, next)
				}
				tilt = next
			}
			p := mustChain(t, nose, spans...)
			if d := p.Drawn(); math.Abs(d[0].From-c.Nose) > 1e-12 || math.Abs(d[len(d)-1].To-c.Tail) > 1e-12 {
				t.Errorf("%v: %d arcs lie from %v to %v", ends, n, d[0].From, d[len(d)-1].To)
			}
			back, other, err := Curve{func(tilt float64) float64 { return radius(-tilt) }, -c.Tail, -c.Nose}.Arcs(n)
			slices.Reverse(back)
			if err != nil || len(back) != len(spans) || math.Abs(other+nose-p.Length()) > 1e-12 {
				t.Fatalf("%v: mirrored %v, %v m to the nose; was %v, %v", ends, back, other, spans, nose)
			}
			for i := range back {
				if math.Abs(back[i].Radius-spans[i].Radius) > 1e-12 {
					t.Errorf("%v: mirrored arc %d of %d: %v, was %v", ends, i, n, back[i], spans[i])
				}
			}
		}
	}
}

// TestEvenTimeReaches: what an edge that cannot reach so far is said to reach it reaches, and no hundredth
// further; λ, k and H₀ times a length make radii times it.
func TestEvenTimeReaches(t *testing.T) {
	const k, low, lambda = 0.31, 0.62, 0.21
	_, err := EvenTime(k, low, lambda, 3)
	var size, reach, wanted float64
	const says = "rocker: curve: an even-time edge of λ = %g m reaches to %g rad, not to %g"
	if _, bad := fmt.Sscanf(err.Error(), says, &size, &reach, &wanted); bad != nil {
		t.Fatal(err, bad)
	}
	// it stands still where u is √λ, at the quadrature of du/rate
	end := math.Sqrt(lambda)
	whole := quad.Fixed(func(a float64) float64 { // u = √λ·sin a, so that the root is no edge
		h := low + math.Pow(end*math.Sin(a), 2)
		return 2 * lambda * math.Pow(math.Cos(a), 2) / math.Sqrt(k*k+h*h)
	}, 0, math.Pi/2, 60, quad.Legendre{}, 0)
	if step := 3.0 / 2000; size != lambda || wanted != 3 || reach > whole || reach < whole-2*step { // by so many steps
		t.Errorf("%v; it ends at %v", err, whole)
	}
	one, err := EvenTime(k, low, lambda, 0.4)
	if err != nil {
		t.Fatal(err)
	}
	two, err := EvenTime(2*k, 2*low, 2*lambda, 0.4)
	for _, tilt := range []float64{-0.4, -0.1234, 0, 0.05, 0.4} {
		if got, want := two.Radius(tilt), 2*one.Radius(tilt); err != nil || math.Abs(got-want) > 1e-12*want {
			t.Errorf("at %v the radius of twice the size is %v, want %v (%v)", tilt, got, want, err)
		}
	}
}
