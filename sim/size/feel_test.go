package size

import (
	"math"
	"slices"
	"testing"
)

// TestFeelOverAStep: with the low point moved over the step by a tenth of a millimetre at a time, time, height and radius
// of gyration with the owner at ease go steadily, though the floor's share falls to less than half.
func TestFeelOverAStep(t *testing.T) {
	d := ownedBy(70*inch, 180*pound)
	step := stepOf(places(t, d))
	first, last := step[0].low-0.01, step[len(step)-1].low+0.01
	var was Feel
	var carried []float64
	for low := first; low < last; low += 0.0001 {
		r := balanced(t, moved(d, low))
		now, ok := FeelOf(r)
		if !ok || math.Abs(now.Radius-d.Rocker.Radius) > 1e-9 {
			t.Fatalf("%v m on: %v, %+v", low, ok, now)
		}
		for i, by := range []float64{now.Period - was.Period, now.Height - was.Height, now.Gyration - was.Gyration} {
			if low > first && !(math.Abs(by) < timeStep/100) { // s, and of lengths m
				t.Errorf("%v m on: %d changes by %v", low, i, by)
			}
		}
		was = now
		carried = append(carried, r.Loads[1].Feet[0].Carried)
	}
	if most, least := slices.Max(carried), slices.Min(carried); !(least < most/2) {
		t.Errorf("the floor carries between %v and %v kg", least, most)
	}
}

// TestLikeOnAStep: what is kept of a chair whose owner rests on the step gives back its radius, whatever radius the new one
// is drawn with.
func TestLikeOnAStep(t *testing.T) {
	for _, o := range owners {
		drawn := ownedBy(o.stature, o.mass)
		step := stepOf(places(t, drawn))
		if len(step) < 4 {
			continue
		}
		old := moved(drawn, step[len(step)/2].low)
		for _, radius := range []float64{36, 39, 46, 52} {
			wanted := old.Clone()
			wanted.Rocker.Radius = radius * inch
			l, err := Like(old, wanted)
			if err != nil {
				t.Fatal(err)
			}
			for _, k := range l.Kept {
				if !k.Found || math.Abs(k.Exact-old.Rocker.Radius) > 1e-7 {
					t.Errorf("%v from %v in: %v, found %v, a radius of %v m", o, radius, k.Keep, k.Found, k.Exact)
				}
			}
		}
	}
}
