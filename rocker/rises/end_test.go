package rises

import (
	"math/rand/v2"
	"testing"
	"time"
)

// TestAnotherEnd holds that a station at an end, which is suspected because the last
// two spacings are flat, is said to lie at an end, and a misread one in the middle is not.
func TestAnotherEnd(t *testing.T) {
	curve := bow{curvature: []float64{1 / (42 * inch), 0}, joint: []float64{-7 * 2 * inch}}
	r := Row{Spacing: 2 * inch, Low: 7, Rise: make([]float64, 17), Error: ruler}
	for i := range r.Rise {
		r.Rise[i], _ = curve.at(r.at(i))
	}
	f, err := r.Fit()
	if err != nil || f.Suspect != 16 || !f.AtEnd {
		t.Errorf("flat at the tail: %v, suspect %d, at an end %v", err, f.Suspect, f.AtEnd)
	}
	r = arcRises(42*inch, 2*inch, 7, 9)
	r.Rise[8] += inch
	if f, err = r.Fit(); err != nil || f.Suspect != 8 || f.AtEnd {
		t.Errorf("misread in the middle: %v, suspect %d, at an end %v", err, f.Suspect, f.AtEnd)
	}
}

// TestFitOfNothing holds that rises that nothing explains take no long time: the
// best of three, for other work may share the machine.
func TestFitOfNothing(t *testing.T) {
	for _, tt := range []struct {
		stations int
		most     time.Duration // a fifth of it is measured
	}{{41, 500 * time.Millisecond}, {101, 2 * time.Second}} { // wanted
		rng := rand.New(rand.NewPCG(8, uint64(tt.stations)))
		r := arcRises(42*inch, 32*inch/float64(tt.stations-1), tt.stations/2, tt.stations/2)
		for i := range r.Rise {
			r.Rise[i] += 8 * ruler * rng.NormFloat64()
		}
		took := time.Hour
		var f Fit
		var err error
		for range 3 {
			begun := time.Now()
			f, err = r.Fit()
			took = min(took, time.Since(begun))
		}
		if testing.Short() {
			took = 0 // the race detector keeps no time
		}
		if err != nil || f.Explains || took > tt.most {
			t.Errorf("%d stations: %v, explained %v, took %v of at most %v", tt.stations, err, f.Explains, took, tt.most)
		}
	}
}

// TestSpansOfNothing holds that the zero fit has no spans.
func TestSpansOfNothing(t *testing.T) {
	if spans, nose := (Fit{}).Spans(0.4, 0.5); spans != nil || nose != 0 {
		t.Errorf("%v, %v", spans, nose)
	}
}
