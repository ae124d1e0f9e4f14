package rocker

import (
	"errors"
	"math"
	"testing"
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
	if _, err := EvenTime(0.3, 0.6, 0.2, 3); !errors.As(err, &wrong) {
		t.Error(err)
	}
}
