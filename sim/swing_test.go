package sim

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// A run is a swing integrated step by step in the test, sharing nothing with the product
// but the support function: roll, rate and time.
type run struct{ roll, rate, time float64 }

// accelerate returns the angular acceleration, from J φ̈ + m H′ρ φ̇² + m g Z = 0.
func (r *Rig) accelerate(roll, rate float64) float64 {
	h, dh, ddh := r.Profile.Support(roll)
	u, du := rocker.Down(roll)
	g := r.Body.Centre
	H, dH, rho := h-r2.Dot(g, u), dh-r2.Dot(g, du), h+ddh
	m := r.Body.Mass
	z := dH*math.Cos(r.Floor.Slope) - H*math.Sin(r.Floor.Slope)
	return -(m*dH*rho*rate*rate + m*r.Floor.FreeFall()*z) / (r.Body.Inertia + m*(H*H+dH*dH))
}

// step goes on by dt, by the classical Runge-Kutta rule of fourth order.
func (r *Rig) step(s run, dt float64) run {
	at := func(d, rate float64) (float64, float64) { return rate, r.accelerate(s.roll+d, rate) }
	a1, b1 := at(0, s.rate)
	a2, b2 := at(dt/2*a1, s.rate+dt/2*b1)
	a3, b3 := at(dt/2*a2, s.rate+dt/2*b2)
	a4, b4 := at(dt*a3, s.rate+dt*b3)
	return run{s.roll + dt/6*(a1+2*a2+2*a3+a4), s.rate + dt/6*(b1+2*b2+2*b3+b4), s.time + dt}
}

// halfCycle integrates from a release to the turn on the other side, and returns the time
// and the place of the turn; ok is false where it does not turn.
func (r *Rig) halfCycle(start, dt float64) (time, turn float64, ok bool) {
	s := run{roll: start}
	s = r.step(s, dt)
	sign := s.rate
	for s.time < 30 {
		next := r.step(s, dt)
		if next.rate*sign <= 0 { // the turn lies between, where the rate's line crosses zero
			share := s.rate / (s.rate - next.rate)
			return s.time + share*dt, s.roll + share*dt*s.rate/2, true
		}
		if math.Abs(next.roll) > 1.5 {
			return 0, 0, false
		}
		s = next
	}
	return 0, 0, false
}

// TestPeriodAgainstRungeKutta: the quadrature against the motion, on random rigs off
// flats (which the fixed steps cannot follow): the whole rock to 1e-5, since a step of
// 0.2 ms that straddles a joint errs by its square, and the turn is found on a line.
func TestPeriodAgainstRungeKutta(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 5))
	compared := 0
	for compared < 60 {
		r := random(t, rng)
		b := r.Balance()
		if b.Outcome != Rocks || hasFlat(r.Profile) || math.Abs(b.Rest.Tilt) > 0.5 {
			continue
		}
		release := (rng.Float64() - 0.5) * 0.7
		period, reach := r.Period(b, release)
		there, turn, ok := r.halfCycle(b.Rest.roll+release, 2e-4)
		if math.IsNaN(period) {
			if near := r.nearOver(b, release); ok && !near {
				t.Errorf("from %v rad the motion comes back at %v; the product says it does not: %+v", release, turn, b)
			}
			continue
		}
		if !ok || !sameTo(2*there, period, 1e-5) || math.Abs(turn-b.Rest.roll-reach) > 1e-4 {
			t.Errorf("from %v rad: period %v s, reach %v rad; by steps %v s, %v rad (%v)", release, period, reach,
				2*there, turn-b.Rest.roll, ok)
		}
		compared++
	}
}

// nearOver reports whether a release is within a thousandth of what takes it over.
func (r *Rig) nearOver(b Balance, release float64) bool {
	m, other := b.Back, b.Forward
	if release < 0 {
		m, other = other, m
	}
	_, height := r.fallTime(b.Rest.roll+release, b.Rest)
	return math.Abs(release) > 0.999*m.Angle || height > 0.999*other.Lift
}

func hasFlat(p rocker.Profile) bool {
	for i := range p.Bearings() - 1 {
		if p.Bearing(i).Flat > 0 {
			return true
		}
	}
	return false
}

// TestRulesAgree: the pair of rules that checks itself against one of 24 and 48 points,
// on random rigs and up to a thousandth of the lift.
func TestRulesAgree(t *testing.T) {
	rng := rand.New(rand.NewPCG(6, 6))
	fine := [2]rule{legendre(24), legendre(48)}
	worst := 0.0
	for range 2000 {
		r := random(t, rng)
		b := r.Balance()
		if b.Outcome != Rocks {
			continue
		}
		release := b.Back.Angle * (1 - math.Pow(10, -3*rng.Float64()))
		if !b.Back.Exists() || release == 0 {
			continue
		}
		got, want := 0.0, 0.0
		f := r.fallFrom(b.Rest.roll+release, b.Rest)
		for s, more := f.next(); more; s, more = f.next() {
			got += s.time()
			end := math.Sqrt(s.end) // with t = y², good for both ends of this test's stretches
			const parts = 64
			for i := range parts {
				want += s.timeBy(fine[1], 0, end*float64(i)/parts, end*float64(i+1)/parts)
			}
		}
		worst = max(worst, math.Abs(got/want-1))
	}
	t.Logf("worst %.1g", worst)
	if worst > 1e-11 {
		t.Errorf("the rules differ by %v from finer ones", worst)
	}
}

// TestPeriodInTheLimits: it goes to the small rock, and grows without bound at the lift,
// by the same again for each further digit, as on any hilltop.
func TestPeriodInTheLimits(t *testing.T) {
	r := arc(0.6, 0.02)
	b := r.Balance()
	for _, release := range []float64{1e-2, 1e-4, 1e-6, 1e-8} {
		period, reach := r.Period(b, release)
		rounding := 1e-16 / release // of the roll from which it is let go
		if !sameTo(period, b.Period, release*release+10*rounding+1e-12) || !sameTo(reach, -release, 1e-9+10*rounding) {
			t.Errorf("from %v rad: %v s, reach %v; small rock %v s", release, period, reach, b.Period)
		}
	}
	symmetric := arc(0.6, 0)
	symmetric.Profile = rocker.Single(1, 0.4, 0.4)
	b = symmetric.Balance()
	var last, grew float64
	for digits := 2.0; digits <= 7; digits++ {
		period, _ := symmetric.Period(b, b.Back.Angle*(1-math.Pow(10, -digits)))
		if last > 0 && digits > 4 && !sameTo(period-last, grew, 0.01) {
			t.Errorf("with %v digits to the hilltop it grows by %v s, before by %v", digits, period-last, grew)
		}
		last, grew = period, period-last
	}
	if period, _ := symmetric.Period(b, b.Back.Angle); !math.IsNaN(period) {
		t.Errorf("at the hilltop: %v s", period)
	}
}

// TestOutcomes holds what becomes of a release.
func TestOutcomes(t *testing.T) {
	r := arc(0.6, 0.1) // long margin in front of a short tail side
	r.Profile = rocker.Single(1, 0.25, 0.5)
	r.Body.Centre.X = 0.05
	b := r.Balance()
	for _, tt := range []struct {
		name    string
		release float64
		want    Outcome
	}{
		{"near", 0.05, Rocks},
		{"far back it is thrown over forwards", b.Back.Angle * 0.97, GoesOverForwards},
		{"beyond the tail", b.Back.Angle * 1.02, GoesOverBackwards},
		{"beyond the nose", -b.Forward.Angle * 1.02, GoesOverForwards},
		{"on the hilltop at the back", b.Back.Angle, GoesOverBackwards},
	} {
		s := r.Swing(b, tt.release)
		if s.Outcome != tt.want || (tt.want == Rocks) == math.IsNaN(s.Period) ||
			(tt.want == Rocks) == math.IsNaN(s.Reach) || s.Release != tt.release {
			t.Errorf("%s: %+v, want %v", tt.name, s, tt.want)
		}
	}
	r.Floor.Friction = 0.02
	if s := r.Swing(b, 0.05); s.Outcome != FloorLetsGo || !math.IsNaN(s.Friction) {
		t.Errorf("on ice: %+v", s)
	}
	if s := r.Swing(b, 0); s.Outcome != Rocks || s.Period != b.Period || s.Reach != 0 {
		t.Errorf("let go at rest: %+v", s)
	}
}

// FuzzRig holds of any rig that nothing hangs or panics, and that numbers are numbers.
func FuzzRig(f *testing.F) {
	f.Add(1.0, 0.4, 0.5, 1.5, 0.3, 0.0, 0.6, 0.35, 0.0, 0.2)
	f.Add(0.5, 0.4, 0.1, -1.0, 0.3, 0.1, 0.3, 0.0, 0.3, -0.2)
	f.Fuzz(func(t *testing.T, radius, length, flat, other, rest, x, y, k, slope, release float64) {
		p, err := rocker.Chain(rest, rocker.Arc(radius, length), rocker.Flat(math.Abs(flat)), rocker.Turn(flat), rocker.Arc(other, length))
		sane := func(x float64) bool { return math.Abs(x) < 1e3 && (x == 0 || math.Abs(x) > 1e-6) }
		if err != nil || !sane(radius) || !sane(other) || !sane(length) || !sane(x) || !sane(y) || !sane(k) ||
			!sane(flat) || math.Abs(slope) > 1 || math.Abs(release) > 3 {
			t.Skip("not a rig")
		}
		r := Rig{Profile: p, Floor: Floor{Slope: slope}}
		r.Body.Mass, r.Body.Centre, r.Body.Inertia = 1, r2.Vec{X: x, Y: y}, k*k
		b := r.Balance()
		if b.Outcome != Rocks {
			return
		}
		if math.IsNaN(b.Rest.Tilt) || !(b.Rest.Height > 0) || b.Back.Exists() && !(b.Back.Lift >= -1e-9*(1+math.Abs(y))) {
			t.Errorf("balance %+v", b)
		}
		s := r.Swing(b, release)
		if s.Outcome == Rocks && math.Abs(release) > 1e-6 && !(s.Period > 0 && !math.IsNaN(s.Reach) && s.Friction >= 0) {
			t.Errorf("swing %+v of %+v", s, b)
		}
		pull := r.Pull(b, r2.Vec{Y: 1})
		if b.Back.Exists() && pull.Slow < 0 {
			t.Errorf("pull %+v", pull)
		}
	})
}

func BenchmarkPeriod(b *testing.B) {
	for name, r := range map[string]Rig{
		"one arc":    arc(0.6, 0),
		"three arcs": chain(b, 0.4, rocker.Arc(0.9, 0.3), rocker.Arc(1, 0.3), rocker.Arc(1.3, 0.3)),
	} {
		balance := r.Balance()
		release := r.rising(balance.Rest, 1, 0.95*min(balance.Forward.Lift, balance.Back.Lift), 1) - balance.Rest.roll
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if period, _ := r.Period(balance, release); math.IsNaN(period) {
					b.Fatal("it does not come back")
				}
			}
		})
	}
}
