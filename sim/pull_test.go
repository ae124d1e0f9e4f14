package sim

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// TestPullAgainstGrid: the slow and the sudden pull by brute force: the hand's way along
// the floor by summing its height, on a fine grid.
func TestPullAgainstGrid(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 7))
	q := r2.Vec{X: -0.4, Y: 1.1}
	for range 30 {
		r := random(t, rng)
		b := r.Balance()
		if b.Outcome != Rocks || !b.Back.Exists() || math.Abs(b.Rest.Tilt) > 0.6 {
			continue
		}
		const steps = 20000
		step := b.Back.Angle / steps
		var slow, sudden, way, risen float64
		low := true
		for i := range steps {
			tilt := b.Rest.Tilt + (float64(i)+0.5)*step
			arm, _ := r.Righting(tilt)
			y := r.Profile.Height(q, tilt-r.Floor.Slope)
			low = low && y > 0
			slow = max(slow, r.weight()*arm/y)
			way, risen = way+y*step, risen+arm*step
			sudden = max(sudden, r.weight()*risen/way)
		}
		p := r.Pull(b, q)
		if !low {
			if !math.IsNaN(p.Slow) {
				t.Errorf("the hand goes under the floor: %+v", p)
			}
			continue
		}
		// the grid's midpoints miss a peak at a joint by half a step: 1e-4 of the turn
		if !sameTo(p.Slow, slow, 1e-3) || !sameTo(p.Sudden, sudden, 1e-3) {
			t.Errorf("pull %+v, by the grid %v and %v N", p, slow, sudden)
		}
		if p.Sudden > p.Slow {
			t.Errorf("a sudden pull of %v N needs more than a slow one of %v N", p.Sudden, p.Slow)
		}
	}
}

// TestEffortOnOneArc: m·g·d sin 1°/y in closed form.
func TestEffortOnOneArc(t *testing.T) {
	r := arc(0.6, 0)
	q := r2.Vec{X: -0.4, Y: 1.1}
	p := r.Pull(r.Balance(), q)
	over := func(tilt float64) float64 { return 1 + q.X*math.Sin(tilt) + (q.Y-1)*math.Cos(tilt) }
	moment := 80 * Gravity * 0.4 * math.Sin(degree)
	if !sameTo(p.EffortBack, moment/over(degree), closed) || !sameTo(p.EffortForward, moment/over(-degree), closed) {
		t.Errorf("effort %+v, want %v and %v N", p, moment/over(degree), moment/over(-degree))
	}
	if p := r.Pull(r.Balance(), r2.Vec{Y: -1}); !math.IsNaN(p.EffortBack) || !math.IsNaN(p.Slow) {
		t.Errorf("a hand under the floor: %+v", p)
	}
}

// TestLargest: tops inside, at both ends, and of a line.
func TestLargest(t *testing.T) {
	for _, tt := range []struct {
		name string
		f    func(float64) float64
		want float64
	}{
		{"inside", func(x float64) float64 { return math.Cos(x - 0.37) }, 1},
		{"near the start", func(x float64) float64 { return math.Cos(x - 0.02) }, 1},
		{"at the start", func(x float64) float64 { return math.Cos(x + 0.3) }, math.Cos(0.3)},
		{"at the end", func(x float64) float64 { return math.Cos(x - 1.4) }, math.Cos(0.4)},
		{"a line", func(x float64) float64 { return 2 * x }, 2},
		{"flat", func(float64) float64 { return 3 }, 3},
	} {
		if got := largest(1, tt.f); !sameTo(got, tt.want, 1e-11) {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
}
