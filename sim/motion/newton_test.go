package motion

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// TestLookIsNewton: what the floor gives is the mass times the acceleration of the balance point, by second
// differences of its path, less weight and push, on a slope and from arc to arc; the energy gained is the work of
// the push.
func TestLookIsNewton(t *testing.T) {
	const h = 1e-4 // s; of accelerations of some m/s² the differences keep 1e-6
	r := three(t)
	r.Floor.Slope = 3 * degree
	b := r.Balance()
	sin, cos := math.Sincos(r.Floor.Slope)
	push := Push{r2.Vec{X: -0.4, Y: 1.08}, 60, 0.5}
	trace := Run(r, b, Start{Tilt: b.Rest.Tilt + 9*degree, Push: push}, Options{Duration: 3, Keep: true})
	looked := 0
	for i := 1; i < 300; i++ {
		time := float64(i)*0.01 + 0.003
		joint := false
		for _, e := range trace.Events {
			joint = joint || math.Abs(e.Time-time) < 3*h
		}
		if joint {
			continue
		}
		looked++
		var x, y [3]float64
		for k := range 3 {
			x[k], y[k] = r.Place(r.Body.Centre, trace.At(time+float64(k-1)*h).Tilt)
		}
		forward := r.Body.Mass * ((x[2]-2*x[1]+x[0])/(h*h) + sim.Gravity*sin)
		if time < push.Time {
			forward += push.Force // which is to the rear, and taken by the floor
		}
		up := r.Body.Mass * ((y[2]-2*y[1]+y[0])/(h*h) + sim.Gravity*cos)
		look := trace.Look(r, r.Rise(b.Rest.Tilt), time)
		if math.Abs(look.Forward-forward) > 1e-3 || math.Abs(look.Up-up) > 1e-3 {
			t.Errorf("at %v s the floor gives %v forward and %v up, by differences %v and %v", time, look.Forward, look.Up, forward, up)
		}
	}
	if looked < 250 {
		t.Errorf("looked at %d instants", looked)
	}
	lifted := r.Body.Mass * sim.Gravity * (r.Rise(b.Rest.Tilt+9*degree) - r.Rise(b.Rest.Tilt))
	if first := trace.Look(r, r.Rise(b.Rest.Tilt), 0); math.Abs(first.Energy-lifted) > 1e-9 {
		t.Errorf("let go with %v J", first.Energy)
	}
}

// TestFrictionIsLooked: the largest |F|/N is that of the looks into each step, by the forces that
// [Trace.Look] gives.
func TestFrictionIsLooked(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 9))
	for range 50 {
		r, _ := several(t, rng)
		b := r.Balance()
		trace := Run(r, b, Start{Tilt: b.Rest.Tilt + 0.4*(rng.Float64()-0.5), Rate: rng.Float64(),
			Push: Push{r2.Vec{X: -0.4, Y: 1}, 70, 0.3}}, Options{Duration: 3, Keep: true})
		most := 0.0
		for _, s := range trace.steps {
			for i := range looks + 1 {
				// a little inside, where no other arc and no end of the push is meant
				time := s.start + s.span*(0.001+0.998*float64(i)/looks)
				l := trace.Look(r, 0, time)
				most = max(most, math.Abs(l.Forward)/l.Up)
			}
		}
		for _, e := range trace.Events {
			if e.Kind == Knock {
				most = math.NaN()
			}
		}
		if math.Abs(trace.Friction-most) > 2e-3*most { // a little inside
			t.Errorf("friction %v, looked at %v", trace.Friction, most)
		}
	}
}

// TestKnockIsNewton: in a knock the floor gives the change of the balance point's velocity, along the floor
// and square to it, read off its path; a floor that holds a little less lets go there.
func TestKnockIsNewton(t *testing.T) {
	p, err := rocker.Chain(0.43, rocker.Arc(1.2, 0.4), rocker.Flat(0.12), rocker.Arc(1.0, 0.6))
	if err != nil {
		t.Fatal(err)
	}
	r := chair()
	r.Profile = p
	r.Floor.Slope = 1 * degree
	b := r.Balance()
	start := Start{Tilt: -1 * degree, Rate: 0.8}
	trace := Run(r, b, start, Options{Duration: 3, Keep: true})
	for _, e := range trace.Events {
		if e.Kind != Knock {
			continue
		}
		const h = 1e-5                                             // s
		velocity := func(time, side float64) (along, up float64) { // one-sided, of the second order
			var x, y [3]float64
			for k := range 3 {
				x[k], y[k] = r.Place(r.Body.Centre, trace.At(time+side*h*float64(k)+side*1e-12).Tilt)
			}
			return side * (4*x[1] - 3*x[0] - x[2]) / (2 * h), side * (4*y[1] - 3*y[0] - y[2]) / (2 * h)
		}
		x0, y0 := velocity(e.Time, -1)
		x1, y1 := velocity(e.Time, 1)
		needs := math.Abs((x1 - x0) / (y1 - y0))
		if y1 <= y0 || needs < 0.05 {
			t.Errorf("the floor changes the velocity by %v along and %v up", x1-x0, y1-y0)
		}
		r.Floor.Friction = 0.999 * needs
		if let := Run(r, b, start, Options{Duration: 3}); let.End != Slipped ||
			math.Abs(let.Duration-e.Time) > 1e-9 || math.Abs(let.Needs-needs) > 1e-4 {
			t.Errorf("needs %v at %v s: on a little less %v after %v s, needs %v", needs, e.Time, let.End, let.Duration, let.Needs)
		}
		return
	}
	t.Error("no knock")
}

// TestDropped: somebody who drops 0.2 m ahead of the contact at 1.5 m/s, 60 kg, brings 18 kg·m²/s, which turns
// 36 kg·m² forward at half a radian a second.
func TestDropped(t *testing.T) {
	who := body.Body{Mass: 60, Centre: r2.Vec{X: 0.25, Y: 0.5}, Inertia: 3}
	if got := Dropped(who, r2.Vec{X: 0.05}, 1.5, 36); math.Abs(got+0.5) > 1e-15 {
		t.Errorf("%v rad/s, want -0.5", got)
	}
}

// TestRollingHolds: on a slope the rolling resistance holds a piece at rest where the moment is less than its own,
// μ m g cos α, and lets it go where it is more.
func TestRollingHolds(t *testing.T) {
	r := chair()
	r.Floor.Slope = 9 * degree
	b := r.Balance()
	const rolling = 0.004 // m
	weight := r.Body.Mass * sim.Gravity
	for _, tt := range []struct {
		part  float64
		stays bool
	}{{0.98, true}, {1.02, false}} {
		// the moment is weight times the righting arm, the steadiness its slope
		tilt := b.Rest.Tilt + tt.part*rolling*math.Cos(r.Floor.Slope)/b.Steadiness
		arm, _ := r.Righting(tilt)
		if share := weight * arm / (rolling * weight * math.Cos(r.Floor.Slope)); math.Abs(share-tt.part) > 0.01 {
			t.Fatalf("the moment is %v of the resistance, want %v", share, tt.part)
		}
		trace := Run(r, b, Start{Tilt: tilt}, Options{Duration: 1, Losses: Losses{Rolling: rolling}})
		if (trace.End == AtRest && trace.Duration == 0) != tt.stays {
			t.Errorf("with %v of the moment that the resistance holds: %v after %v s", tt.part, trace.End, trace.Duration)
		}
	}
}
