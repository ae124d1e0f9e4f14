package motion

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// chair is a chair with its sitter on one arc.
func chair() sim.Rig {
	return sim.Rig{
		Profile: rocker.Single(1.067, 0.43, 0.61),
		Body:    body.Body{Mass: 93, Centre: r2.Vec{X: -0.01, Y: 0.61}, Inertia: 9},
	}
}

// three is a chair on three arcs.
func three(t testing.TB) sim.Rig {
	t.Helper()
	p, err := rocker.Chain(0.43, rocker.Arc(1.4, 0.3), rocker.Arc(0.95, 0.4), rocker.Arc(1.5, 0.34))
	if err != nil {
		t.Fatal(err)
	}
	r := chair()
	r.Profile = p
	return r
}

// energy is ½·J·φ̇² + m·g·E of a rig at a state, by its definition.
func energy(r sim.Rig, s State) float64 {
	roll := s.Tilt - r.Floor.Slope
	i, within := r.Profile.Find(roll)
	b := r.Profile.Bearing(i)
	h, ahead, _ := b.Above(r.Body.Centre, within)
	sin, cos := math.Sincos(r.Floor.Slope)
	rise := h*cos + (ahead-b.RolledAt(within))*sin
	return 0.5*(r.Body.Inertia+r.Body.Mass*(h*h+ahead*ahead))*s.Rate*s.Rate + r.Body.Mass*sim.Gravity*rise
}

const degree = math.Pi / 180

// TestMinuteKeepsEnergyAndPeriod follows rigs for a minute from 15 degrees: the energy
// over that of the rest is kept to 1e-9, and each cycle takes the period that package sim
// finds by quadrature, to 1e-9.
func TestMinuteKeepsEnergyAndPeriod(t *testing.T) {
	sloped := chair()
	sloped.Floor.Slope = 2 * degree
	for name, r := range map[string]sim.Rig{"one arc": chair(), "three arcs": three(t), "slope": sloped} {
		b := r.Balance()
		period, reach := r.Period(b, 15*degree)
		trace := Run(r, b, Start{Tilt: b.Rest.Tilt + 15*degree}, Options{Keep: true})
		if trace.Outcome != sim.Rocks || trace.End != TimeUp || trace.Duration != 60 {
			t.Fatalf("%s: %v, %v after %v s", name, trace.Outcome, trace.End, trace.Duration)
		}
		ground := energy(r, State{Tilt: b.Rest.Tilt})
		start := energy(r, State{Tilt: b.Rest.Tilt + 15*degree}) - ground
		worst := 0.0
		for i := range 600 {
			worst = max(worst, math.Abs(energy(r, trace.At(float64(i)/10))-ground-start)/start)
		}
		if worst > 1e-9 {
			t.Errorf("%s: energy off by %v", name, worst)
		}
		turns := 0
		for _, e := range trace.Events {
			if e.Kind != Turns {
				continue
			}
			turns++
			if turns%2 == 0 {
				if want := float64(turns/2) * period; math.Abs(e.Time-want) > 1e-9*want {
					t.Fatalf("%s: rock %d ends at %v s, want %v", name, turns/2, e.Time, want)
				}
			} else if want := b.Rest.Tilt + reach; math.Abs(e.Tilt-want) > 1e-9 {
				t.Fatalf("%s: carries to %v, want %v", name, e.Tilt, want)
			}
		}
		t.Logf("%s: energy to %.1e, %d steps, %d turns", name, worst, trace.Steps, turns)
		if turns < 40 {
			t.Errorf("%s: %d turns in a minute", name, turns)
		}
	}
}

// TestOrder holds that the series is one of its order: on half the time its last
// neglected term, and so its error, is 2²¹ times smaller.
func TestOrder(t *testing.T) {
	r := chair()
	b := r.Balance()
	m := run{rig: r, balance: b, roll: b.Rest.Tilt + 0.3, rate: 0.2, gravity: sim.Gravity, cos: 1}
	m.index, _ = r.Profile.Find(m.roll)
	a := m.arc(1)
	var whole flight
	a.solve(m.rate, &whole)
	exact := Run(r, b, Start{Tilt: m.roll, Rate: m.rate}, Options{Duration: 1, Keep: true})
	off := func(t float64) float64 { return math.Abs(m.roll + whole.turn.at(t) - exact.At(t).Tilt) }
	span := 0.30
	long, short := off(span), off(span*0.8)
	if long < 1e-13 || short < 1e-15 {
		t.Fatalf("errors %v and %v are too small to compare", long, short)
	}
	if got := math.Log(long/short) / math.Log(1/0.8); got < order-3 { // 21 in the limit; the terms after it are felt
		t.Errorf("the error goes as the power %v of the time (%v, %v)", got, long, short)
	}
}

// TestForcesBySecondDifferences holds |F|/N at a let-go limit against the second
// differences of the balance point's path.
func TestForcesBySecondDifferences(t *testing.T) {
	r := three(t)
	r.Floor.Slope = 3 * degree
	b := r.Balance()
	start := Start{Tilt: b.Rest.Tilt + 14*degree}
	trace := Run(r, b, start, Options{Duration: 4, Keep: true})
	sin, cos := math.Sincos(r.Floor.Slope)
	at := func(time float64) (along, up float64) { // of G, from where the low point first touched
		s := trace.At(time)
		i, roll := r.Profile.Find(s.Tilt - r.Floor.Slope)
		bearing := r.Profile.Bearing(i)
		h, ahead, _ := bearing.Above(r.Body.Centre, roll)
		return ahead - bearing.RolledAt(roll), h
	}
	most := 0.0
	const h = 1e-3
	for i := 10; i < 3990; i++ {
		time := float64(i) * h
		x0, y0 := at(time - h)
		x1, y1 := at(time)
		x2, y2 := at(time + h)
		forward := (x2-2*x1+x0)/(h*h) + sim.Gravity*sin
		normal := (y2-2*y1+y0)/(h*h) + sim.Gravity*cos
		most = max(most, math.Abs(forward)/normal)
	}
	if math.Abs(trace.Friction-most) > 2e-3 { // looked at five times a step
		t.Errorf("friction %v, by differences %v", trace.Friction, most)
	}
	r = chair() // on one arc it grows without a jump
	b = r.Balance()
	start = Start{Tilt: b.Rest.Tilt, Rate: 1}
	r.Floor.Friction = 0.9 * Run(r, b, start, Options{Duration: 4}).Friction
	slipped := Run(r, b, start, Options{})
	if slipped.Outcome != sim.FloorLetsGo || math.Abs(slipped.Needs-r.Floor.Friction) > 1e-9 {
		t.Errorf("on a floor of %v: %v, needs %v", r.Floor.Friction, slipped.Outcome, slipped.Needs)
	}
}

// TestReversal holds that with the rate turned round a motion runs back where it came from.
func TestReversal(t *testing.T) {
	r := three(t)
	b := r.Balance()
	there := Run(r, b, Start{Tilt: b.Rest.Tilt + 0.2, Rate: 0.3}, Options{Duration: 5})
	back := Run(r, b, Start{Tilt: there.Last.Tilt, Rate: -there.Last.Rate}, Options{Duration: 5})
	if math.Abs(back.Last.Tilt-b.Rest.Tilt-0.2) > 1e-11 || math.Abs(back.Last.Rate+0.3) > 1e-11 {
		t.Errorf("back at %v, %v", back.Last.Tilt-b.Rest.Tilt, back.Last.Rate)
	}
}

// TestPushWork holds that a push gives the work of its force over the way of its point:
// energy after less energy before.
func TestPushWork(t *testing.T) {
	r := chair()
	b := r.Balance()
	top := r2.Vec{X: -0.4, Y: 1.08}
	const force, time = 60.0, 0.3
	trace := Run(r, b, Start{Tilt: b.Rest.Tilt, Push: Push{top, force, time}}, Options{Duration: time, Keep: true})
	way := func(s State) float64 { // of the point along the floor, to the rear
		i, roll := r.Profile.Find(s.Tilt)
		bearing := r.Profile.Bearing(i)
		_, ahead, _ := bearing.Above(top, roll)
		return bearing.RolledAt(roll) - ahead
	}
	want := force * (way(trace.At(time)) - way(trace.At(0)))
	got := energy(r, trace.At(time)) - energy(r, State{Tilt: b.Rest.Tilt})
	if math.Abs(got-want) > 1e-10*want {
		t.Errorf("energy gained %v J, work of the push %v J", got, want)
	}
}

// TestEnergyNeverRises holds that with losses and knocks no look finds more energy than
// the one before.
func TestEnergyNeverRises(t *testing.T) {
	p, err := rocker.Chain(0.43, rocker.Arc(1.2, 0.3), rocker.Flat(0.05), rocker.Arc(1.0, 0.3), rocker.Turn(0.1), rocker.Arc(1.3, 0.4))
	if err != nil {
		t.Fatal(err)
	}
	r := chair()
	r.Profile = p
	b := r.Balance()
	for _, losses := range []Losses{{}, {Rolling: 0.002}, {Viscous: 3}, {Rolling: 0.001, Viscous: 1}} {
		trace := Run(r, b, Start{Tilt: b.Rest.Tilt + 0.25}, Options{Duration: 20, Losses: losses, Keep: true})
		before := math.Inf(1)
		for i := range 4000 {
			now := energy(r, trace.At(float64(i)*0.005))
			if now > before+1e-9*before {
				t.Fatalf("%+v: energy rises from %v to %v at %v s", losses, before, now, float64(i)*0.005)
			}
			before = now
		}
	}
}
