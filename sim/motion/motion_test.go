package motion

import (
	"fmt"
	"math"
	"math/rand/v2"
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

// TestDampedSmallRock holds the closed form of a small damped rock: J·φ̈ + c·φ̇ + m·g·Z′φ = 0.
func TestDampedSmallRock(t *testing.T) {
	r := chair()
	b := r.Balance()
	_, height := r.Righting(b.Rest.Tilt)
	j := r.Body.Inertia + r.Body.Mass*height*height
	stiff := r.Body.Mass * sim.Gravity * b.Steadiness
	const c, from, at = 12.0, 1e-6, 3.0
	trace := Run(r, b, Start{Tilt: b.Rest.Tilt + from}, Options{Duration: at, Losses: Losses{Viscous: c}})
	decay, turning := c/(2*j), math.Sqrt(stiff/j-c*c/(4*j*j))
	want := from * math.Exp(-decay*at) * (math.Cos(turning*at) + decay/turning*math.Sin(turning*at))
	if got := trace.Last.Tilt - b.Rest.Tilt; math.Abs(got-want) > 1e-12 { // the next term is from² of it
		t.Errorf("after %v s at %v, want %v", at, got, want)
	}
	halves := HalvesIn(r, b, 7)
	trace = Run(r, b, Start{Tilt: b.Rest.Tilt + 1e-5}, Options{Duration: 7 * b.Period, Losses: Losses{Viscous: halves}})
	last := 0.0
	for _, e := range trace.Events {
		if e.Kind == Turns {
			last = e.Tilt - b.Rest.Tilt
		}
	}
	if math.Abs(math.Abs(last)/0.5e-5-1) > 0.06 { // the last turn lies up to half a rock before
		t.Errorf("after 7 rocks the tilt is %v of 1e-5, want half", last)
	}
}

// TestRollingResistance holds that from turn to turn the balance point falls by the lever
// times the angle swung: m·g·(H₁ − H₂) = b·m·g·(angle), on a level floor.
func TestRollingResistance(t *testing.T) {
	r := three(t)
	b := r.Balance()
	const lever = 0.003
	trace := Run(r, b, Start{Tilt: b.Rest.Tilt + 15*degree}, Options{Losses: Losses{Rolling: lever}})
	last := b.Rest.Tilt + 15*degree
	turns := 0
	for _, e := range trace.Events {
		if e.Kind != Turns {
			continue
		}
		_, h1 := r.Righting(last)
		_, h2 := r.Righting(e.Tilt)
		if got, want := h1-h2, lever*math.Abs(e.Tilt-last); math.Abs(got-want) > 1e-13 {
			t.Errorf("from %v to %v it fell %v m, want %v", last, e.Tilt, got, want)
		}
		last = e.Tilt
		turns++
	}
	arm, _ := r.Righting(trace.Last.Tilt)
	if trace.End != AtRest || math.Abs(arm) > lever || turns < 3 {
		t.Errorf("it ended by %v with an arm of %v m, after %d turns", trace.End, arm, turns)
	}
}

// block is a rectangular block on a flat floor: half width and half height, m.
func block(t *testing.T, half, up float64) sim.Rig {
	t.Helper()
	p, err := rocker.Chain(half, rocker.Flat(2*half))
	if err != nil {
		t.Fatal(err)
	}
	m := 50.0
	return sim.Rig{Profile: p, Body: body.Body{Mass: m, Centre: r2.Vec{Y: up}, Inertia: m * (half*half + up*up) / 3}}
}

// TestHousner holds the rocking block of G. W. Housner (1963), The behavior of inverted
// pendulum structures during earthquakes, Bull. Seism. Soc. Am. 53:403-417: a quarter
// period (1/p)·acosh(1/(1 − θ₀/α)) with p² = m·g·R/I₀ for small angles, and a rate after
// the knock of 1 − (m·R²/I₀)(1 − cos 2α) of that before.
func TestHousner(t *testing.T) {
	const half, up = 0.05, 0.6 // slender: α = 4.8 degrees
	r := block(t, half, up)
	b := r.Balance()
	alpha, size := math.Atan2(half, up), math.Hypot(half, up)
	pivot := 4.0 / 3 * r.Body.Mass * size * size
	rate := math.Sqrt(r.Body.Mass * sim.Gravity * size / pivot)
	from := 0.4 * alpha
	trace := Run(r, b, Start{Tilt: from}, Options{Duration: 3})
	knock := trace.Events[0]
	if knock.Kind != Knock {
		t.Fatalf("first comes %v", knock.Kind)
	}
	if want := math.Acosh(1/(1-from/alpha)) / rate; math.Abs(knock.Time/want-1) > 2e-3 { // α² is 7e-3, and half of it is linearised away
		t.Errorf("quarter period %v, Housner %v", knock.Time, want)
	}
	before := math.Sqrt(2 * r.Body.Mass * sim.Gravity * size * (math.Cos(alpha-from) - math.Cos(alpha)) / pivot)
	want := before * (1 - r.Body.Mass*size*size/pivot*(1-math.Cos(2*alpha)))
	if math.Abs(math.Abs(knock.Rate)/want-1) > 1e-12 {
		t.Errorf("rate after the knock %v, Housner %v", knock.Rate, want)
	}
	if end := Run(r, b, Start{Tilt: from}, Options{}); end.End != AtRest || math.Abs(end.Last.Tilt) > 1e-12 {
		t.Errorf("the block ends by %v at %v", end.End, end.Last.Tilt)
	}
}

// TestRodFallsOverItsFoot holds the time in which an upright rod turns about its foot, from
// a small rate: ½·I·ω² = ½·I·ω₀² + m·g·(L/2)(1 − cos θ), by quadrature over θ.
func TestRodFallsOverItsFoot(t *testing.T) {
	p, err := rocker.Chain(0)
	if err != nil {
		t.Fatal(err)
	}
	const length, m, start = 1.2, 5.0, 0.4
	r := sim.Rig{Profile: p, Body: body.Body{Mass: m, Centre: r2.Vec{Y: length / 2}, Inertia: m * length * length / 12}}
	b := sim.Balance{Outcome: sim.Rocks, Back: none(), Forward: none()}
	trace := Run(r, b, Start{Rate: start}, Options{Duration: 0.8, Keep: true})
	foot := m * length * length / 3
	time, steps := 0.0, 20000
	last := trace.At(0.8).Tilt
	for i := range steps { // the midpoint rule
		at := last * (float64(i) + 0.5) / float64(steps)
		time += last / float64(steps) / math.Sqrt(start*start+m*sim.Gravity*length*(1-math.Cos(at))/foot)
	}
	if math.Abs(time-0.8) > 1e-8 {
		t.Errorf("to %v rad by quadrature in %v s, want 0.8", last, time)
	}
}

func none() sim.Margin { return sim.Margin{Angle: math.NaN()} }

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

// TestAgainstTheLift holds that a release just under the lift comes back, and one just
// over goes over.
func TestAgainstTheLift(t *testing.T) {
	r := chair()
	b := r.Balance()
	for _, way := range []float64{1, -1} {
		side := b.Back
		if way < 0 {
			side = b.Forward
		}
		for _, tt := range []struct {
			part float64
			goes bool
		}{{0.999, false}, {1.001, true}} {
			trace := Run(r, b, Start{Tilt: b.Rest.Tilt + way*side.Angle*tt.part}, Options{Duration: 20})
			goes := trace.End == WentOver
			if tt.goes && !goes {
				t.Errorf("from %v of the margin: %v", tt.part, trace.Outcome)
			}
			if !tt.goes && goes && trace.Outcome == map[float64]sim.Outcome{1: sim.GoesOverBackwards, -1: sim.GoesOverForwards}[way] {
				t.Errorf("from %v of the margin it goes over on that side", tt.part)
			}
		}
	}
}

func FuzzRun(f *testing.F) {
	f.Add(uint64(1), 0.3, 0.5, 50.0)
	f.Add(uint64(7), -0.4, -2.0, 0.0)
	f.Fuzz(func(t *testing.T, seed uint64, tilt, rate, force float64) {
		if !(math.Abs(tilt) < 1.5 && math.Abs(rate) < 20 && math.Abs(force) < 1e4) {
			t.Skip("beyond any chair")
		}
		rng := rand.New(rand.NewPCG(seed, 1))
		var spans []rocker.Span
		for range 1 + rng.IntN(4) {
			switch rng.IntN(4) {
			case 0:
				spans = append(spans, rocker.Flat(0.02+0.1*rng.Float64()))
			case 1:
				spans = append(spans, rocker.Turn(0.2*rng.Float64()))
			default:
				spans = append(spans, rocker.Arc(0.4+2*rng.Float64(), 0.1+0.4*rng.Float64()))
			}
		}
		p, err := rocker.Chain(0.05, spans...)
		if err != nil {
			t.Skip("no rocker")
		}
		r := sim.Rig{Profile: p, Body: body.Body{Mass: 1 + 100*rng.Float64(),
			Centre: r2.Vec{X: 0.1 * rng.NormFloat64(), Y: rng.Float64()}, Inertia: 10 * rng.Float64()},
			Floor: sim.Floor{Slope: 0.1 * rng.NormFloat64(), Friction: rng.Float64()}}
		b := r.Balance()
		if b.Outcome != sim.Rocks {
			t.Skip("no rest")
		}
		trace := Run(r, b, Start{Tilt: tilt, Rate: rate, Push: Push{r2.Vec{Y: 1}, force, 0.3}},
			Options{Duration: 5, Losses: Losses{Rolling: 0.01 * rng.Float64(), Viscous: rng.Float64()}})
		for _, x := range []float64{trace.Duration, trace.Last.Tilt, trace.Last.Rate, trace.Lift} {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Fatalf("%+v", trace)
			}
		}
		if trace.End == TooManySteps {
			t.Fatalf("%d steps in %v s", trace.Steps, trace.Duration)
		}
	})
}

func BenchmarkMinute(b *testing.B) {
	for _, tt := range []struct {
		name   string
		rig    sim.Rig
		losses Losses
	}{{"one arc", chair(), Losses{}}, {"three arcs with losses", three(b), Losses{Rolling: 0.0002, Viscous: 0.3}}} {
		b.Run(tt.name, func(b *testing.B) {
			rest := tt.rig.Balance()
			b.ReportAllocs()
			var trace Trace
			for b.Loop() {
				trace = Run(tt.rig, rest, Start{Tilt: rest.Rest.Tilt + 15*degree}, Options{Losses: tt.losses})
			}
			if trace.End != TimeUp {
				b.Fatal(trace.End)
			}
			b.ReportMetric(float64(trace.Steps), "steps")
		})
	}
}

// BenchmarkCost shows that the cost is linear in the time simulated and in the joints
// crossed: ns over both should hold.
func BenchmarkCost(b *testing.B) {
	for _, arcs := range []int{1, 3, 5, 9} {
		spans := make([]rocker.Span, arcs)
		for i := range spans {
			spans[i] = rocker.Arc(1.067+0.05*float64((i*7)%5), 1.04/float64(arcs))
		}
		p, err := rocker.Chain(0.43, spans...)
		if err != nil {
			b.Fatal(err)
		}
		r := chair()
		r.Profile = p
		rest := r.Balance()
		for _, seconds := range []float64{15, 30, 60, 120} {
			b.Run(fmt.Sprintf("%d arcs/%g s", arcs, seconds), func(b *testing.B) {
				var trace Trace
				for b.Loop() {
					trace = Run(r, rest, Start{Tilt: rest.Rest.Tilt + 15*degree}, Options{Duration: seconds})
				}
				b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(trace.Steps), "ns/step")
			})
		}
	}
}

// TestSettlesOnASlope holds that with losses the motion ends at the static rest on a slope:
// sin t = R·sin α/d over the arc's own rest.
func TestSettlesOnASlope(t *testing.T) {
	r := chair()
	r.Body.Centre.X = 0
	r.Floor.Slope = 2 * degree
	b := r.Balance()
	trace := Run(r, b, Start{Tilt: 0.2}, Options{Duration: 300, Losses: Losses{Viscous: 30}})
	want := math.Asin(1.067 * math.Sin(r.Floor.Slope) / (1.067 - 0.61))
	if math.Abs(trace.Last.Tilt-want) > 1e-9 {
		t.Errorf("at %v after %v s, want %v", trace.Last.Tilt, trace.Duration, want)
	}
}

// TestOverAtTheHilltop: the instant at which it goes over is that at which it passes the hilltop, by the quadrature of
// the energy, t = ∫ √(J/(J₀ω₀² − 2 m g (H − H₀))) dθ; let go beyond it, it goes over at once.
func TestOverAtTheHilltop(t *testing.T) {
	r := chair()
	b := r.Balance()
	least, _ := r.LargestRate(b)
	inertia := func(tilt float64) (j, height float64) {
		arm, height := r.Righting(tilt)
		return r.Body.Inertia + r.Body.Mass*(height*height+arm*arm), height
	}
	start, low := inertia(b.Rest.Tilt)
	for _, rate := range []float64{1.01 * least, 1.3 * least, 2 * least} {
		trace := Run(r, b, Start{Tilt: b.Rest.Tilt, Rate: rate}, Options{Duration: 20})
		var want float64
		joint := 0.0 // the end of the arc, where the integrand has a kink
		for i := range r.Profile.Bearings() {
			joint = max(joint, r.Profile.Bearing(i).From)
		}
		for _, part := range [][2]float64{{b.Rest.Tilt, joint}, {joint, b.Back.Tip}} {
			const n = 20000
			h := (part[1] - part[0]) / n
			for i := range n { // the middle of each: an error of h²
				j, height := inertia(part[0] + h*(float64(i)+0.5))
				want += h * math.Sqrt(j/(start*rate*rate-2*r.Body.Mass*sim.Gravity*(height-low)))
			}
		}
		last := trace.Events[len(trace.Events)-1]
		if trace.End != WentOver || last.Kind != Over || math.Abs(trace.Duration-want) > 1e-6 || math.Abs(last.Tilt-b.Back.Tip) > 1e-12 {
			t.Errorf("at %v rad/s: %v after %v s at %v rad; the hilltop at %v is passed after %v s", rate, trace.End,
				trace.Duration, last.Tilt, b.Back.Tip, want)
		}
	}
	for _, beyond := range []float64{b.Back.Tip + 0.01, b.Forward.Tip - 0.01} {
		if trace := Run(r, b, Start{Tilt: beyond}, Options{}); trace.End != WentOver || trace.Duration != 0 {
			t.Errorf("let go at %v rad, beyond the hilltop: %v after %v s, want at once", beyond, trace.End, trace.Duration)
		}
	}
}

// TestLetGoOnTheHilltop: let go on a hilltop itself the rig goes over there with its next step, or stays in balance, or
// comes back: it never stands still in time.
func TestLetGoOnTheHilltop(t *testing.T) {
	for _, high := range []float64{0.5, 0.6, 0.7, 0.8} {
		for _, ahead := range []float64{-0.05, 0, 0.02} {
			r := chair()
			r.Body.Centre = r2.Vec{X: ahead, Y: high}
			b := r.Balance()
			for _, side := range []float64{b.Back.Over, b.Forward.Over} {
				if trace := Run(r, b, Start{Tilt: side}, Options{}); trace.End == TooManySteps {
					t.Errorf("centre %v m high, %v ahead, let go at %v rad: %d steps to %v s", high, ahead, side,
						trace.Steps, trace.Duration)
				}
			}
		}
	}
}

// TestHardestOfNothing: where the least push goes, the search ends.
func TestHardestOfNothing(t *testing.T) {
	asked := 0
	least, none := Threshold(func(float64) bool { asked++; return true }, 100)
	if none || least > 1e-4 || asked > 40 { // 100 is halved 27 times to a millionth of it
		t.Errorf("least %v, none %v, asked %d times", least, none, asked)
	}
}
