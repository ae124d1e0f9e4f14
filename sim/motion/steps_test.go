package motion

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/sim"
)

// TestNeedsAlongAStep: |F|/N at any time of a step, by the addition theorems, is that of the forces
// which [Trace.Look] works out from the rig at the tilt it has then.
func TestNeedsAlongAStep(t *testing.T) {
	rng := rand.New(rand.NewPCG(12, 1))
	for range 200 {
		r, _ := several(t, rng)
		b := r.Balance()
		push := Push{At: r2.Vec{X: -0.4, Y: 1}, Force: 200 * (rng.Float64() - 0.5), Time: 5}
		m := begin(r, b, Start{Tilt: b.Rest.Tilt + 0.4*(rng.Float64()-0.5), Rate: 3 * (rng.Float64() - 0.5), Push: push}, Options{})
		side, _ := m.direction()
		a := m.arc(side)
		a.solve(m.rate, &m.flight)
		span := m.flight.span()
		trace := Trace{slope: r.Floor.Slope, push: push, steps: []step{{0, span, m.roll, m.flight}}}
		for _, part := range []float64{0, 0.3, 0.7, 1} {
			time := part * span
			if i, _ := r.Profile.Find(m.roll + m.flight.turn.at(time)); i != m.index {
				break // on the next arc
			}
			look := trace.Look(r, 0, time)
			want := math.Abs(look.Forward) / look.Up
			if look.Up <= 0 {
				want = math.Inf(1)
			}
			if got := m.needs(&a, time); !alike(got, want) {
				t.Errorf("%v of a step: needs %v, by the forces %v", part, got, want)
			}
		}
	}
}

// TestOtherWell: on a corner under the middle a piece that is let go just over it settles behind it, in another rest,
// and one that is let go just before it settles in its own, also where the wells change places.
func TestOtherWell(t *testing.T) {
	r := chair()
	r.Body.Centre.X = 0
	var err error
	if r.Profile, err = rocker.Chain(0.4, rocker.Arc(1, 0.4), rocker.Turn(0.2), rocker.Arc(1, 0.4)); err != nil {
		t.Fatal(err)
	}
	losses := Losses{Viscous: 60, Rolling: 1e-4}
	for _, e := range r.Equilibria(nil) {
		if !e.Stable || math.Abs(e.Tilt) > 1 {
			continue
		}
		b := r.BalanceAt(e)
		for _, past := range []float64{-0.01, 0.01} { // the middle, seen from this rest
			want, at := sim.Rocks, e.Tilt
			if past > 0 {
				want, at = sim.SettlesInAnotherRest, -e.Tilt
			}
			trace := Run(r, b, Start{Tilt: -past * math.Copysign(1, e.Tilt)}, Options{Losses: losses, Duration: 600})
			// the rolling resistance holds it there
			if trace.End != AtRest || trace.Outcome != want || math.Abs(trace.Last.Tilt-at) > 1e-3 {
				t.Errorf("from %v past the middle: %v, %v at %v; want %v at %v", past, trace.End, trace.Outcome, trace.Last.Tilt, want, at)
			}
		}
	}
}
