package rises

import (
	"errors"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat/distuv"
)

// TestBowIsEvenAndFinite: from a slope to the like one on the other side an arc comes back to its height, as
// mirrored it does, and no curvature makes a height that is no number.
func TestBowIsEvenAndFinite(t *testing.T) {
	onward := func(y, p, curvature, dx float64) (float64, float64) {
		return (&bow{height: y, slope: p, curvature: []float64{curvature}}).at(dx)
	}
	for _, p := range []float64{0.01, 0.3, 0.7} {
		if y, q := onward(0.2, -p, 2*p/0.5, 0.5); math.Abs(y-0.2) > 1e-15 || math.Abs(q-p) > 1e-15 {
			t.Errorf("from %v: height %v, slope %v", -p, y, q)
		}
	}
	for _, curvature := range []float64{5, 1e3, 1e9} {
		up, p := onward(0, 0, curvature, 1)
		down, q := onward(0, 0, -curvature, 1)
		if !(up >= 0 && up < 100) || up != -down || p != -q || !(p < 1) {
			t.Errorf("curvature %v: %v and %v, slopes %v and %v", curvature, up, down, p, q)
		}
	}
}

// TestUncertaintyOfAParabola: of an arc so large that its rises are a parabola the radius is as unsure as
// the normal equations of offset, slope and square say, nineteen times in twenty.
func TestUncertaintyOfAParabola(t *testing.T) {
	const radius, n = 40.0, 9
	r := arcRises(radius, 0.05, n/2, n/2)
	r.Error = 1e-6
	f, err := r.Fit()
	if err != nil || len(f.Arcs) != 1 {
		t.Fatal(f, err)
	}
	design := mat.NewDense(n, 3, nil)
	for i := range n {
		x := r.at(i)
		design.SetRow(i, []float64{1, x, x * x / 2})
	}
	var normal, covariance mat.Dense
	normal.Mul(design.T(), design)
	if err := covariance.Inverse(&normal); err != nil {
		t.Fatal(err)
	}
	want := distuv.UnitNormal.Quantile(0.975) * r.Error * math.Sqrt(covariance.At(2, 2)) * radius * radius
	if got := f.Arcs[0].Uncertain; math.Abs(got/want-1) > 1e-3 { // three digits of the quantile, slopes of 5e-3 squared
		t.Errorf("%v m unsure, want %v", got, want)
	}
}

// TestLevelTail: an edge that does not rise behind the low point, or ahead of it, is no rocker.
func TestLevelTail(t *testing.T) {
	for _, level := range []float64{1, -1} {
		r := arcRises(1, 0.05, 7, 7)
		for i := range r.Rise {
			if r.at(i)*level > 0 {
				r.Rise[i] = 0
			}
		}
		r.Error = 1e-5
		if f, err := r.Fit(); err == nil {
			t.Errorf("level on one side: %+v", f)
		}
	}
}

// TestWrongStations: a station that is wrong is named as a maker counts, a rise below as one above.
func TestWrongStations(t *testing.T) {
	for _, wrong := range []float64{math.NaN(), 5, -5} {
		r := arcRises(1, 0.05, 6, 6)
		r.Rise[3] = wrong
		_, err := r.Fit()
		var station *Error
		if !errors.As(err, &station) || station.Station != 3 || !strings.Contains(err.Error(), "station 4:") {
			t.Errorf("%v: %v", wrong, err)
		}
	}
	for low := -1; low < 14; low++ {
		r := arcRises(1, 0.05, 6, 6)
		r.Low = low
		if err := r.check(); (err == nil) != (low >= 1 && low <= 11) {
			t.Errorf("the low point at station %d of 13: %v", low, err)
		}
	}
}

// TestShortArc: an arc over no more than three spacings at an end is found.
func TestShortArc(t *testing.T) {
	for _, side := range []float64{1, -1} {
		r := Row{Spacing: 0.05, Low: 7, Rise: make([]float64, 15), Error: 1e-6}
		joint := side * 4 * r.Spacing
		b := bow{curvature: []float64{1, 0.4}, joint: []float64{joint}}
		if side > 0 {
			b.curvature = []float64{0.4, 1}
		}
		b.height, b.slope = 0, 0
		for i := range r.Rise {
			r.Rise[i], _ = b.at(r.at(i))
		}
		if f, err := r.Fit(); err != nil || len(f.Arcs) != 2 || math.Abs(f.Arcs[0].To+f.low-joint) > 1e-3 {
			t.Errorf("a joint at %v: %+v, %v", joint, f, err)
		}
	}
}
