package rocker

import (
	"errors"
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
)

// TestCurveLengths holds lengths and places of known curves: a circle is one arc; a quarter
// of an ellipse's tip stands at its half axes; a parabola's points lie on it.
func TestCurveLengths(t *testing.T) {
	circle := Curve{func(float64) float64 { return 1.2 }, -0.3, 0.5}
	spans, nose, err := circle.Arcs(4)
	if err != nil || math.Abs(nose-0.36) > 1e-15 {
		t.Fatal(err, nose)
	}
	p, err := Chain(nose, spans...)
	if err != nil || math.Abs(p.Length()-0.96) > 1e-14 {
		t.Errorf("%v, %v", err, p.Length())
	}
	const f = 0.5
	last := math.Inf(1)
	for _, n := range []int{8, 16, 32, 64, 128} {
		spans, nose, err := Parabola(f, -0.5, 0.6).Arcs(n)
		if err != nil {
			t.Fatal(err)
		}
		p, err := Chain(nose, spans...)
		if err != nil {
			t.Fatal(err)
		}
		off := 0.0
		for _, q := range p.Outline(1e-7) {
			off = max(off, math.Abs(q.Y-q.X*q.X/(4*f)))
		}
		if ratio := last / off; !math.IsInf(last, 1) && (ratio < 3 || ratio > 5) { // 1/n²
			t.Errorf("%d arcs lie %v off, %v times less than half as many", n, off, ratio)
		}
		last = off
	}
	if last > 2e-5 {
		t.Errorf("128 arcs lie %v m off the parabola", last)
	}
}

func TestCurvesThatAreNone(t *testing.T) {
	var wrong *CurveError
	if _, _, err := Parabola(1, 0.1, 0.2).Arcs(3); !errors.As(err, &wrong) {
		t.Error(err)
	}
	if _, _, err := (Curve{func(float64) float64 { return -1 }, -0.1, 0.1}).Arcs(3); !errors.As(err, &wrong) {
		t.Error(err)
	}
	if _, _, err := (Curve{func(float64) float64 { return 1 }, -3.2, 3.2}).Arcs(3); !errors.As(err, &wrong) {
		t.Error("a curve of more than one turn: ", err)
	}
	if _, err := EvenTime(0.3, 0.6, 0.2, 3); !errors.As(err, &wrong) {
		t.Error(err)
	}
}

// TestEvenTime holds the edge against its own equation, by quadrature instead of steps: the body
// is at u = √d over its rest at the tilt ∫2√((λ − u²)/(k² + H²)) du, H = H₀ + u², and there
// ρ = H + H″ with 2H″ the derivative of H′² by H.
func TestEvenTime(t *testing.T) {
	const k, low, lambda, reach = 0.31, 0.62, 0.21, 0.4
	c, err := EvenTime(k, low, lambda, reach)
	if err != nil {
		t.Fatal(err)
	}
	for _, u := range []float64{0.01, 0.05, 0.1, 0.15} {
		tilt := quad.Fixed(func(u float64) float64 {
			h := low + u*u
			return 2 * math.Sqrt((lambda-u*u)/(k*k+h*h))
		}, 0, u, 40, quad.Legendre{}, 0)
		d, h := u*u, low+u*u
		want := h + ((k*k+h*h+2*d*h)/(lambda-d)+d*(k*k+h*h)/((lambda-d)*(lambda-d)))/2
		for _, side := range []float64{1, -1} {
			if got := c.Radius(side * tilt); tilt > reach || math.Abs(got-want) > 1e-10*want { // steps of the fourth order, 2000 of them
				t.Errorf("at u = %v, tilt %v, the radius is %v, want %v", u, side*tilt, got, want)
			}
		}
	}
}
