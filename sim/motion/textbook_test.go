package motion

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

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
