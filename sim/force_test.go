package sim

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// TestFrictionAtTheTurn: at a turn the rate is zero, and |F|/N = H|H′|/(k² + H²).
func TestFrictionAtTheTurn(t *testing.T) {
	r := arc(0.6, 0)
	b := r.Balance()
	for _, release := range []float64{0.02, 0.1, 0.2} {
		H, dH := 1-0.4*math.Cos(release), 0.4*math.Sin(release)
		want := H * dH / (0.35*0.35 + H*H)
		if s := r.Swing(b, release); !sameTo(s.Friction, want, 1e-12) {
			t.Errorf("from %v rad: friction %v, want %v", release, s.Friction, want)
		}
	}
}

// TestForceAgainstPath: F and N by second differences of the path of the centre of mass
// along a motion integrated step by step; the largest ratio of the whole rock.
func TestForceAgainstPath(t *testing.T) {
	for _, slope := range []float64{0, 0.05} {
		r := arc(0.6, 0.03)
		r.Floor.Slope = slope
		b := r.Balance()
		const release, dt = 0.3, 1e-4
		place := func(roll float64) (along, over float64) {
			i, within := r.Profile.Find(roll)
			s := r.stand(r.Profile.Bearing(i), within)
			return s.ahead - s.rolled, s.height
		}
		s := run{roll: b.Rest.roll + release}
		most := 0.0
		for s.time < b.Period*0.6 {
			next := r.step(s, dt)
			after := r.step(next, dt)
			i, _ := r.Profile.Find(s.roll)
			if j, _ := r.Profile.Find(after.roll); i == j {
				x0, y0 := place(s.roll)
				x1, y1 := place(next.roll)
				x2, y2 := place(after.roll)
				forward := (x2-2*x1+x0)/(dt*dt) + r.Floor.FreeFall()*math.Sin(slope)
				normal := (y2-2*y1+y0)/(dt*dt) + r.Floor.FreeFall()*math.Cos(slope)
				most = max(most, math.Abs(forward)/normal)
			}
			s = next
		}
		// rounding of 1 m over (0.1 ms)² is 1e-8 m/s²; the step from a joint loses the rest
		if got := r.Swing(b, release).Friction; !sameTo(got, most, 1e-3) {
			t.Errorf("slope %v: friction %v, by the path %v", slope, got, most)
		}
	}
}

// TestFrictionAgainstDenseSampling: the largest |F|/N of a whole rock, on random rigs, by
// the energy and the formulas of the package comment at 20,000 places. A peak at a joint
// is met to a place, so the sampling may be lower by what changes over one: 1e-3.
func TestFrictionAgainstDenseSampling(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 8))
	for compared := 0; compared < 60; {
		r := random(t, rng)
		b := r.Balance()
		if b.Outcome != Rocks || math.Abs(b.Rest.Tilt) > 0.5 {
			continue
		}
		release := (rng.Float64() - 0.5) * 0.6
		s := r.Swing(b, release)
		if s.Outcome != Rocks {
			continue
		}
		compared++
		m, g := r.Body.Mass, r.Floor.FreeFall()
		sin, cos := math.Sincos(r.Floor.Slope)
		from, to := b.Rest.roll+release, b.Rest.roll+s.Reach
		plumb := func(roll float64) (e, h, dh, rho float64) {
			i, within := r.Profile.Find(roll)
			bearing := r.Profile.Bearing(i)
			h0, dh0, ddh := r.Profile.Support(within)
			u, du := rocker.Down(within)
			h, dh = h0-r2.Dot(r.Body.Centre, u), dh0-r2.Dot(r.Body.Centre, du)
			return h*cos + (dh-bearing.RolledAt(within))*sin, h, dh, h0 + ddh
		}
		top, _, _, _ := plumb(from)
		most := 0.0
		const places = 20000
		for k := range places {
			e, H, dH, rho := plumb(from + (to-from)*(float64(k)+0.5)/places)
			inertia := r.Body.Inertia + m*(H*H+dH*dH)
			square := 2 * m * g * max(0, top-e) / inertia
			speeding := -(m*dH*rho*square + m*g*(dH*cos-H*sin)) / inertia
			forward := -(H*speeding + dH*square) + g*sin
			normal := g*cos + dH*speeding + (rho-H)*square
			most = max(most, math.Abs(forward)/normal)
		}
		if !(s.Friction >= most*(1-1e-9)) || !sameTo(s.Friction, most, 1e-3) {
			t.Errorf("from %v rad: friction %v, sampled %v", release, s.Friction, most)
		}
	}
}

// TestClimbTurns: the turn that gains a height gains it, level and on a slope; and on a slope that is nearly level it is
// that of the level floor, which is the closed form.
func TestClimbTurns(t *testing.T) {
	for _, c := range []climb{{0, 0.4, 0}, {0.1, 0.4, 0}, {0.1, -0.5, 0}, {0.02, 0.4, 0.02}, {0.2, 0.4, 0.02},
		{-0.02, 0.4, -0.02}, {0.1, -0.5, 0.05}} {
		const most = 0.15 // all of these climb so far
		for n := 1; n <= 10; n++ {
			height := c.gained(most) * float64(n) / 10
			turn := c.turn(height, most)
			if math.Abs(c.gained(turn)/height-1) > 1e-14 || turn > most+1e-15 { // some roundings
				t.Errorf("%+v: %v rad gains %v m, want %v", c, turn, c.gained(turn), height)
			}
			if sloping := (climb{c.pull, c.slope, 1e-300}).turn(height, most); c.slide == 0 && math.Abs(sloping/turn-1) > 1e-14 {
				t.Errorf("%+v: %v rad gain %v m; sought %v", c, turn, height, sloping)
			}
		}
	}
}

// TestEvenRock: on one arc the turning point on the other side lies as far from the rest, from every release.
func TestEvenRock(t *testing.T) {
	r := arc(0.6, 0.02)
	b := r.Balance()
	for release := 0.001; release < min(b.Back.Angle, b.Forward.Angle, 0.35); release += 0.001 {
		_, height := r.fallTime(b.Rest.roll+release, b.Rest)
		if turn := b.Rest.roll - r.rising(b.Rest, -1, height, b.Rest.roll-release-0.1); math.Abs(turn-release) > 1e-13 {
			t.Errorf("let go from %v rad it comes to %v", release, turn)
		}
	}
}
