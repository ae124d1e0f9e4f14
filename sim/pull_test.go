package sim

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
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
	back, forward := r.Effort(r.Balance(), q)
	over := func(tilt float64) float64 { return 1 + q.X*math.Sin(tilt) + (q.Y-1)*math.Cos(tilt) }
	moment := 80 * Gravity * 0.4 * math.Sin(degree)
	if !sameTo(back, moment/over(degree), closed) || !sameTo(forward, moment/over(-degree), closed) {
		t.Errorf("effort %v and %v, want %v and %v N", back, forward, moment/over(degree), moment/over(-degree))
	}
	under := r2.Vec{Y: -1}
	back, _ = r.Effort(r.Balance(), under)
	if p := r.Pull(r.Balance(), under); !math.IsNaN(back) || !math.IsNaN(p.Slow) {
		t.Errorf("a hand under the floor: %v, %+v", back, p)
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

// TestNoEffortBeyondTheHilltop: where the hilltop is less than a degree away the piece goes over, and no push, let alone
// one below zero, holds it at one degree.
func TestNoEffortBeyondTheHilltop(t *testing.T) {
	const degree = math.Pi / 180
	top := r2.Vec{X: -0.3, Y: 1}
	for _, tail := range []float64{0.004, 0.012, 0.03, 0.3} { // on a radius of 1 m with d = 0.4 m
		r := Rig{Profile: rocker.Single(1, 0.3, tail), Body: body.Body{Mass: 80, Centre: r2.Vec{Y: 0.6}, Inertia: 8}}
		b := r.Balance()
		back, forward := r.Effort(b, top)
		if near := b.Back.Angle <= degree; near != math.IsNaN(back) || !near && !(back > 0) {
			t.Errorf("tail %v m: the hilltop is %v degrees away, the push %v N", tail, b.Back.Angle/degree, back)
		}
		if !(forward > 0) {
			t.Errorf("tail %v m: %v N forward", tail, forward)
		}
	}
}
