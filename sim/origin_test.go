package sim

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// wheel returns a random rig on smooth arcs that turn by most of a circle, so that it can roll far
// and lie on its tips, and the same rig in the frame of another point of its edge, whose tilts
// are smaller by shift and whose points are those that seen gives.
func wheel(rng *rand.Rand) (r, other Rig, shift float64, seen func(r2.Vec) r2.Vec) {
	var spans []rocker.Span
	length := 0.0
	turn := 1 + 4*rng.Float64()
	for range 1 + rng.IntN(4) {
		radius := 0.3 + rng.Float64()
		spans = append(spans, rocker.Arc(radius, radius*turn/4))
		length += radius * turn / 4
	}
	first, second := length*(0.2+0.6*rng.Float64()), length*(0.2+0.6*rng.Float64())
	one, err := rocker.Chain(first, spans...)
	two, also := rocker.Chain(second, spans...)
	if err != nil || also != nil { // it curls in on itself
		return wheel(rng)
	}
	r = Rig{Profile: one, Floor: Floor{Slope: 0.1 * (rng.Float64() - 0.5)}, Body: body.Body{
		Mass: 1, Centre: r2.Vec{X: rng.Float64() - 0.5, Y: 0.1 + 0.8*rng.Float64()}, Inertia: 0.1 + rng.Float64()}}
	other = r
	other.Profile = two
	// the other origin in the frame of r: so far along the edge, and the floor's tilt there
	p, _ := r.Profile.At(first - second)
	turned := func(length float64) (angle float64) { // from the nose tip
		for _, s := range spans {
			l := min(length, s.Length)
			angle += l / s.Radius
			length -= l
		}
		return angle
	}
	shift = turned(second) - turned(first)
	down, tailward := rocker.Down(shift)
	seen = func(q r2.Vec) r2.Vec {
		g := r2.Sub(q, p)
		return r2.Vec{X: -r2.Dot(g, tailward), Y: -r2.Dot(g, down)}
	}
	other.Body.Centre = seen(r.Body.Centre)
	return r, other, shift, seen
}

// TestAnotherOrigin: which point of the edge the frame is laid in changes nothing but the tilts, all by
// the same angle: rests, hilltops, margins, rocks and what tips over.
func TestAnotherOrigin(t *testing.T) {
	const accuracy = 1e-9 // of lengths of some metres that are built up from the other end, and of where arms pass through zero
	near := func(a, b float64) bool {
		return math.Abs(a-b) <= accuracy*max(1, math.Abs(b)) || math.IsNaN(a) && math.IsNaN(b)
	}
	rng := rand.New(rand.NewPCG(15, 15))
	rested := 0
	for i := range 400 {
		r, o, shift, seen := wheel(rng)
		a, b := r.Equilibria(nil), o.Equilibria(nil)
		if len(a) != len(b) {
			t.Errorf("rig %d: %d places of balance, from another origin %d", i, len(a), len(b))
			continue
		}
		for _, e := range a {
			k := -1
			for j, f := range b {
				if math.Abs(math.Remainder(f.Tilt+shift-e.Tilt, 2*math.Pi)) < accuracy {
					k = j
				}
			}
			if k < 0 || b[k].Stable != e.Stable || !near(b[k].Height, e.Height) {
				t.Errorf("rig %d: %+v is not among %+v, shifted by %v", i, e, b, shift)
				continue
			}
			if f := b[k]; !(f.Tilt > -math.Pi && f.Tilt <= math.Pi) {
				t.Errorf("rig %d: a tilt of %v", i, f.Tilt)
			}
			if !e.Stable || e.Height <= 0 {
				continue
			}
			rested++
			x, y := r.BalanceAt(e), o.BalanceAt(b[k])
			if !near(x.Period, y.Period) || !near(x.Steadiness, y.Steadiness) {
				t.Errorf("rig %d: one rock %v and %v", i, x, y)
			}
			for _, side := range [][2]Margin{{x.Back, y.Back}, {x.Forward, y.Forward}} {
				m, n := side[0], side[1]
				if !near(m.Angle, n.Angle) || !near(m.Lift, n.Lift) || !near(m.Work, n.Work) ||
					!near(math.Remainder(n.Tip+shift-m.Tip, 2*math.Pi), 0) {
					t.Errorf("rig %d: margins %+v and %+v", i, m, n)
				}
			}
			down, tailward := rocker.Down(e.Tilt - r.Floor.Slope)
			q := r2.Add(r.Body.Centre, r2.Add(r2.Scale(-0.4, down), r2.Scale(0.3*rng.Float64(), tailward))) // over the balance point
			if m, n := r.Pull(x, q), o.Pull(y, seen(q)); !near(m.Slow, n.Slow) || !near(m.Sudden, n.Sudden) {
				t.Errorf("rig %d: pulls %+v and %+v", i, m, n)
			}
			for _, part := range []float64{-0.9, -0.3, 0.4, 0.95} {
				release := part * x.Back.Angle
				if part < 0 {
					release = -part * -x.Forward.Angle
				}
				p, reach := r.Period(x, release)
				q, other := o.Period(y, release)
				// a period near a hilltop is that much more in doubt
				if !(math.Abs(p-q) <= 1e-7*p || math.IsNaN(p) && math.IsNaN(q)) || !near(reach, other) {
					t.Errorf("rig %d let go at %v: one rock %v, reach %v; from another origin %v, %v", i, release, p, reach, q, other)
				}
			}
		}
	}
	if rested < 200 {
		t.Errorf("only %d rests were compared", rested)
	}
}
