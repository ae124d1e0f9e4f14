package sim

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// TestUpsideDownIsAPlank: a low piece that lies upside down on its two tips is a plank as long as
// their chord: it rocks, is pulled over and goes over as that plank does, also from side to
// side over the turn at which the tilts begin anew.
func TestUpsideDownIsAPlank(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 1))
	for range 40 {
		nose, tail := 0.3+0.2*rng.Float64(), 0.3+0.2*rng.Float64()
		r := Rig{
			Profile: rocker.Single(1, nose, tail),
			Body: body.Body{Mass: 20, Centre: r2.Vec{X: 0.1 * (rng.Float64() - 0.5), Y: 0.02 * rng.Float64()},
				Inertia: 1 + rng.Float64()},
			Floor: Floor{Slope: 0.1 * (rng.Float64() - 0.5)},
		}
		chord := r2.Sub(r.Profile.Tail(), r.Profile.Nose()) // forward, once it is upside down
		long, forward := r2.Norm(chord), r2.Unit(chord)
		up := r2.Vec{X: -forward.Y, Y: forward.X}
		laid := func(p r2.Vec) r2.Vec {
			from := r2.Sub(p, r2.Scale(0.5, r2.Add(r.Profile.Nose(), r.Profile.Tail())))
			return r2.Vec{X: r2.Dot(from, forward), Y: r2.Dot(from, up)}
		}
		plank := chain(t, long/2, rocker.Flat(long))
		plank.Floor, plank.Body = r.Floor, r.Body
		plank.Body.Centre = laid(r.Body.Centre)
		want, got := plank.Balance(), Balance{}
		for _, e := range r.Equilibria(nil) {
			if e.Stable && math.Abs(e.Tilt) > 2 {
				got = r.BalanceAt(e)
			}
		}
		const like = 1e-9
		top := r2.Vec{X: 0.1, Y: -0.4}
		numbers := func(r Rig, b Balance, top r2.Vec) []float64 {
			pull := r.Pull(b, top)
			back, forward := r.Effort(b, top)
			rateBack, rateForward := r.LargestRate(b)
			backMost, forwardMost := r.LargestRelease(b)
			list := []float64{
				b.Rest.Height, b.Back.Angle, b.Forward.Angle, b.Back.Lift, b.Forward.Lift, pull.Slow, pull.Sudden,
				back, forward, rateBack, rateForward, backMost, forwardMost,
			}
			for _, part := range []float64{0.1, 0.6, 0.95} {
				for _, release := range []float64{part * backMost, -part * forwardMost} {
					s := r.Swing(b, release)
					list = append(list, s.Period, s.Reach, s.Friction)
				}
			}
			return list
		}
		of, on := numbers(r, got, top), numbers(plank, want, laid(top))
		for i := range on {
			if !sameTo(of[i], on[i], like) || i < 13 && math.IsNaN(on[i]) { // else the floor lets go of both
				t.Errorf("tips %v and %v: number %d is %v, of the plank %v", nose, tail, i, of[i], on[i])
			}
		}
	}
}

// TestNeverUpsideDown: a piece that could also lie upside down, and lower, rests on its rocker.
func TestNeverUpsideDown(t *testing.T) {
	r := arc(0.06, 0)
	r.Profile = rocker.Single(1, 0.4, 0.4)
	lower := false
	for _, e := range r.Equilibria(nil) {
		lower = lower || e.Stable && math.Abs(e.Tilt) == math.Pi && e.Height > 0 && e.Height < 0.06
	}
	if b := r.Balance(); !lower || b.Outcome != Rocks || b.Rest.Tilt != 0 {
		t.Errorf("it rests at %v rad, %v; lower upside down: %v", b.Rest.Tilt, b.Outcome, lower)
	}
}
