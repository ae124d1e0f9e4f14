package motion

import (
	"math"
	"math/cmplx"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// A link is one of two bodies that roll on one arc. Its balance point is at fixed + e^{iλ}·turning from the centre of the
// arc where the trunk leans by λ, in the piece, as complex numbers: forward + i·up.
type link struct {
	mass, inertia  float64 // kg, kg·m²
	fixed, turning complex128
}

// A linked is a piece and a trunk on it, by Lagrange's equation in the coordinates of a level floor, from scratch.
type linked struct {
	radius, gravity float64 // m, m/s²
	piece, trunk    link
}

// horse returns a child of 25 kg, of which trunk, head and arms weigh 14 kg, on a horse of 15 kg on one arc, for package
// motion and from scratch. The numbers are of the order of such, and of nobody's horse.
func horse(radius float64) (Rider, linked) {
	const hips, up, saddle, ahead = 0.55, 0.25, 0.42, 0.01 // m
	w := Rider{
		Rig: sim.Rig{Profile: rocker.Single(radius, 1.5, 1.5),
			Body: body.Body{Mass: 26, Centre: r2.Vec{X: ahead, Y: saddle}, Inertia: 2.2}},
		Trunks: []Trunk{{body.Body{Mass: 14, Centre: r2.Vec{Y: hips + up}, Inertia: 0.5}, r2.Vec{Y: hips}}},
	}
	return w, linked{radius, sim.Gravity, link{26, 2.2, complex(ahead, saddle-radius), 0},
		link{14, 0.5, complex(0, hips-radius), complex(0, up)}}
}

// An inclination is how far a trunk leans at an instant, rad, with its two derivatives by time.
type inclination struct{ now, rate, speeding float64 }

// leaning returns the lean at a time on the way from one to another, by a polynomial of the fifth degree, which begins and
// ends without a jolt.
func leaning(from, to, time, duration float64) inclination {
	x := min(1, max(0, time/duration))
	way := to - from
	return inclination{from + way*x*x*x*(10-15*x+6*x*x), way / duration * 30 * x * x * (1 - x) * (1 - x),
		way / (duration * duration) * 60 * x * (1 - x) * (1 - 2*x)}
}

// at returns the derivatives of where a balance point is on the floor, z = −Rθ + iR + e^{iθ}(fixed + e^{iλ}·turning), by
// tilt and lean, z_θ and z_λ, and by two of them: z_θθ, and z_θλ, which is z_λλ.
func (w *linked) at(b *link, tilt, lean float64) (byTilt, byLean, tilts, leans complex128) {
	fixed, turning := cmplx.Rect(1, tilt)*b.fixed, cmplx.Rect(1, tilt+lean)*b.turning
	return complex(-w.radius, 0) + 1i*(fixed+turning), 1i * turning, -fixed - turning, -turning
}

// dot is the scalar product of two plane vectors.
func dot(a, b complex128) float64 { return real(a)*real(b) + imag(a)*imag(b) }

// A gait is a tilt and a rate.
type gait struct{ tilt, rate float64 }

// speeding returns θ̈. Of T = Σ ½m|ż|² + ½I(angular rate)² and V = Σ m·g·Im z Lagrange's equation for θ is
//
//	Σ m (z̈ + i·g)·z_θ + I·(angular acceleration) = 0,  z̈ = z_θ θ̈ + z_λ λ̈ + z_θθ θ̇² + 2 z_θλ θ̇λ̇ + z_λλ λ̇²
func (w *linked) speeding(s gait, l inclination) float64 {
	all, rest := w.piece.inertia+w.trunk.inertia, w.trunk.inertia*l.speeding
	for _, b := range []*link{&w.piece, &w.trunk} {
		byTilt, byLean, tilts, leans := w.at(b, s.tilt, l.now)
		all += b.mass * dot(byTilt, byTilt)
		rest += b.mass * dot(byTilt, complex(l.speeding, 0)*byLean+complex(s.rate*s.rate, 0)*tilts+
			complex(2*s.rate*l.rate+l.rate*l.rate, 0)*leans+complex(0, w.gravity))
	}
	return -rest / all
}

// step returns the gait a step later, by the classical rule of Runge and Kutta.
func (w *linked) step(s gait, step float64, at func(part float64) inclination) gait {
	a := w.speeding(s, at(0))
	b := gait{s.tilt + s.rate*step/2, s.rate + a*step/2}
	bb := w.speeding(b, at(0.5))
	c := gait{s.tilt + b.rate*step/2, s.rate + bb*step/2}
	cc := w.speeding(c, at(0.5))
	d := gait{s.tilt + c.rate*step, s.rate + cc*step}
	dd := w.speeding(d, at(1))
	return gait{s.tilt + step/6*(s.rate+2*b.rate+2*c.rate+d.rate), s.rate + step/6*(a+2*bb+2*cc+dd)}
}

// tick is the step, s. A turn is taken a tick too soon at most, which at 5 rad/s² is a thousandth of a degree, and all else is
// far less.
const tick = 1e-3

// toTurn returns the gaits from one on, tick by tick, until the piece turns on the side of the lean, + back, to which it
// falls.
func (w *linked) toTurn(s gait, now float64) []gait {
	way := []gait{s}
	for range 5000 {
		next := w.step(s, tick, func(float64) inclination { return inclination{now: now} })
		if side := math.Copysign(1, now); side*s.rate > 0 && side*next.rate <= 0 {
			return way
		}
		s = next
		way = append(way, s)
	}
	return []gait{{math.NaN(), 0}} // it goes over
}

// lean returns the way from a lean of some duration on whose middle is the end of another way, or which begins as soon as
// that does.
func (w *linked) lean(way []gait, from, to, duration float64) []gait {
	ticks := math.Round(duration / tick)
	s := way[max(0, len(way)-1-int(ticks/2))]
	for i := range int(ticks) {
		s = w.step(s, tick, func(part float64) inclination { return leaning(from, to, (float64(i)+part)*tick, ticks*tick) })
	}
	return w.toTurn(s, to)
}

func last(way []gait) float64 { return way[len(way)-1].tilt }

// turns returns to where the piece turns after each of some leans to and fro from a rest.
func (w *linked) turns(rest, to, duration float64, n int) []float64 {
	way, from := []gait{{rest, 0}}, 0.0
	var at []float64
	for range n {
		way = w.lean(way, from, to, duration)
		at = append(at, last(way))
		from, to = to, -to
	}
	return at
}

// once returns to where the piece turns after one lean, at the turn that follows from a stand still at a tilt and a lean.
func (w *linked) once(tilt, from, to, duration float64) float64 {
	return last(w.lean(w.toTurn(gait{tilt, 0}, from), from, to, duration))
}

const heaves = 4 // leans are compared, as far as 40 to 60 degrees with those of 25

// TestQuickLean: two bodies that roll on an arc, from scratch, turn at the tilts of [Rider.Heave] after a lean that is quick
// against the rock but no blow: 5 and 10 degrees each way in 0.05 s, 25 in 0.2 s.
func TestQuickLean(t *testing.T) {
	for _, radius := range []float64{1, 1.3, 1.6} {
		w, two := horse(radius)
		for _, tt := range []struct{ lean, duration, tolerance float64 }{
			{5, 0.05, 0.02}, // meanwhile it rocks on, of which (4/s · 0.05 s)²/24 of a growth of 4° is 0.007°
			{10, 0.05, 0.1}, // the contact runs: see TestLeanIsNoBlow
			{25, 0.2, 0.1},  // both, and one gives what the other takes
		} {
			to := tt.lean * degree
			h := w.Heave(to, -to, heaves, Losses{})
			if h.Survived() != heaves {
				t.Fatalf("radius %v m, leans of %v°: %+v", radius, tt.lean, h)
			}
			worst := 0.0
			for k := 1; k < heaves; k++ {
				before, now := h.Leans[k-1], h.Leans[k]
				worst = max(worst, math.Abs(two.once(before.From, before.Lean, now.Lean, tt.duration)-now.To)/degree)
			}
			t.Logf("radius %v m, leans of %v° in %v s: to %.4f°", radius, tt.lean, tt.duration, worst)
			if !(worst < tt.tolerance) {
				t.Errorf("radius %v m, leans of %v° in %v s: off by %v°", radius, tt.lean, tt.duration, worst)
			}
		}
	}
}

// TestSlowLean: people who take 0.4, 0.7 or 1 s for a lean, centred on the turn, rock less far with each lean from the rest
// than by [Rider.Heave], and the less the longer they take. From the same turn one lean takes the piece less far, and the
// less the longer, as far as 20 degrees; beyond it errs by less than a degree to the other side.
func TestSlowLean(t *testing.T) {
	for _, radius := range []float64{1, 1.3, 1.6} {
		w, two := horse(radius)
		rest := w.Leaning(0).Balance().Rest.Tilt
		for _, lean := range []float64{25, 10, 5} {
			to := lean * degree
			h := w.Heave(to, -to, heaves, Losses{})
			all, one := make([]float64, heaves), make([]float64, heaves) // how far, to the side of the lean, rad
			for k, l := range h.Leans {
				all[k] = math.Copysign(1, l.Lean) * l.To
			}
			copy(one, all)
			for _, duration := range []float64{0.4, 0.7, 1} {
				far := two.turns(rest, to, duration, heaves)
				grown, ours, most := 0.0, 0.0, math.Inf(-1)
				for k, l := range h.Leans {
					side := math.Copysign(1, l.Lean)
					if far[k] *= side; !(far[k] < all[k]) {
						t.Errorf("radius %v m, leans of %v° in %v s: lean %d to %v°, no less than %v°", radius, lean, duration, k,
							far[k]/degree, all[k]/degree)
					}
					if k == 0 {
						continue
					}
					before := h.Leans[k-1]
					got := side * two.once(before.From, before.Lean, l.Lean, duration)
					if more := got - side*l.To; side*l.To < 20*degree && !(got < one[k]) || !(more < degree) {
						t.Errorf("radius %v m, a lean of %v° in %v s: %v° further than %v°", radius, lean, duration, more/degree, l.To/degree)
					}
					most = max(most, (got-side*l.To)/degree)
					grown, ours = grown+got+side*before.To, ours+side*(l.To+before.To)
					one[k] = got
				}
				t.Logf("radius %v m, leans of %v° in %v s: grows by %.1f %% less a turn, one at most by %+.2f°; after %v leans %.1f %% less",
					radius, lean, duration, 100*(1-grown/ours), most, heaves, 100*(1-far[heaves-1]/math.Abs(h.Leans[heaves-1].To)))
				all = far
			}
		}
	}
}

// TestLeanIsNoBlow: [Rider.Lean] is no limit of leans that are ever quicker. In those gravity does nothing, but the contact
// runs along the floor while the balance points rise and fall, so that the angular momentum about it does not stay,
//
//	dL/dt = Rθ̇ · Σ m ẏ
//
// and leaves the piece turning: from the same tilt, twice as fast after half the time.
func TestLeanIsNoBlow(t *testing.T) {
	w, two := horse(1.3)
	two.gravity = 0
	const steps, from, to = 1000, 25 * degree, -25 * degree
	start := 14 * degree                          // about the first turn
	runs := func(s gait, l inclination) float64 { // Rθ̇ · Σ m ẏ, N·m
		up := 0.0
		for _, b := range []*link{&two.piece, &two.trunk} {
			byTilt, byLean, _, _ := two.at(b, s.tilt, l.now)
			up += b.mass * imag(complex(s.rate, 0)*byTilt+complex(l.rate, 0)*byLean)
		}
		return two.radius * s.rate * up
	}
	blow := func(duration float64) gait {
		s, momentum := gait{start, 0}, 0.0
		for i := range steps {
			at := func(part float64) inclination { return leaning(from, to, (float64(i)+part)*duration/steps, duration) }
			before := s
			s = two.step(s, duration/steps, at)
			momentum += duration / steps * (runs(before, at(0)) + runs(s, at(1))) / 2
		}
		// by the rule of trapezia, which errs by 1/1000² and a factor
		if got := w.Leaning(to).Inertia(s.tilt) * s.rate; math.Abs(got-momentum) > 1e-5*math.Abs(momentum) {
			t.Errorf("in %v s it is left with %v N·m·s, want %v", duration, got, momentum)
		}
		return s
	}
	slow, quick := blow(0.2), blow(0.1)
	t.Logf("left turning with %.3f rad/s after 0.2 s, %.3f after 0.1 s, at %.3f°; by Lean at %.3f°", slow.rate, quick.rate,
		slow.tilt/degree, w.Lean(start, from, to)/degree)
	if math.Abs(quick.tilt-slow.tilt) > 1e-9 || math.Abs(quick.rate-2*slow.rate) > 1e-9 || quick.rate < 0.05 { // the steps are the same
		t.Errorf("%+v after 0.2 s, %+v after 0.1 s", slow, quick)
	}
}
