package validation

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/rocker/root"
	"rockerwright/sim"
	"rockerwright/sim/motion"
)

const whyMotion = "the motion is promised to 1e-9"

// joints are rests where two arcs meet.
func joints(f Fault) []Case {
	const nose, tail, h, k = 0.9, 1.4, 0.6, 0.33
	half := func(radius float64) float64 { return math.Pi * math.Sqrt((k*k+h*h)/(sim.Gravity*(radius-h))) }
	return []Case{{
		Group: "joint", Name: "two arcs meeting at the rest", Checks: "Half of each small rock is on either arc.",
		Source: "derived here: half of 2π√((k² + h²)/(g(R − h))) for each radius",
		Unit:   "s", Want: half(nose) + half(tail), Accuracy: twelveDigits, Why: whyClosed,
		Compute: func() (float64, error) {
			edge := chain(0.4, rocker.Arc(nose*(1+f.Radius), 0.4), rocker.Arc(tail*(1+f.Radius), 0.5))
			return f.on(sim.Rig{Profile: edge, Body: body.Body{Mass: 70, Centre: r2.Vec{Y: h}, Inertia: 70 * k * k}}).Balance().Period, nil
		},
	}}
}

// A block of 50 kg, 0.1 m wide and 1.2 m high.
const blockHalf, blockUp, blockMass = 0.05, 0.6, 50.0

// block is a rectangular block on its flat foot.
func block(f Fault) sim.Rig {
	const inertia = blockMass * (blockHalf*blockHalf + blockUp*blockUp) / 3
	foot := chain(blockHalf, rocker.Flat(2*blockHalf))
	return f.on(sim.Rig{Profile: foot, Body: body.Body{Mass: blockMass, Centre: r2.Vec{Y: blockUp}, Inertia: inertia}})
}

// motions are followed through time.
func motions(f Fault) []Case {
	alpha, size := math.Atan2(blockHalf, blockUp), math.Hypot(blockHalf, blockUp)
	const from = 0.04
	// About its edge the block turns as ½·I₀·ω² = m·g·r·(cos(α − θ) − cos(α − θ₀)), I₀ = 4mr²/3.
	before := math.Sqrt(2 * sim.Gravity * (math.Cos(alpha-from) - math.Cos(alpha)) / (4.0 / 3 * size))
	fall := quad.Fixed(func(psi float64) float64 { // θ = θ₀ cos ψ takes the root at θ₀ out
		theta := from * math.Cos(psi)
		return from * math.Sin(psi) / // cos(α − θ₀) − cos(α − θ) by half angles
			math.Sqrt(4*sim.Gravity*math.Sin(alpha-(from+theta)/2)*math.Sin(from*math.Sin(psi/2)*math.Sin(psi/2))/(4.0/3*size))
	}, 0, math.Pi/2, 400, quad.Legendre{}, 0)
	knock := func(pick func(motion.Event) float64) func() (float64, error) {
		return func() (float64, error) {
			rig := block(f)
			t := motion.Run(rig, rig.Balance(), motion.Start{Tilt: from}, motion.Options{Duration: 2})
			for _, e := range t.Events {
				if e.Kind == motion.Knock {
					return pick(e), nil
				}
			}
			return 0, fmt.Errorf("validation: the block does not knock")
		}
	}
	cases := []Case{
		{
			Group: "block", Name: "quarter period", Checks: "The fall of a rocking block on to its foot.",
			Source: "G. W. Housner (1963), Bull. Seism. Soc. Am. 53:403-417, without his small angles: quadrature of " +
				"the energy about the edge",
			Unit: "s",
			Want: fall, Accuracy: 1e-9, Why: whyMotion, Compute: knock(func(e motion.Event) float64 { return e.Time }),
		},
		{
			Group: "block", Name: "rate after the knock", Checks: "What a block keeps of its rate.",
			Source: "G. W. Housner (1963), as above: 1 − (m·r²/I₀)(1 − cos 2α) of the rate before, I₀ = 4mr²/3", Unit: "rad/s",
			Want: before * (1 - 3.0/4*(1-math.Cos(2*alpha))), Accuracy: 1e-9, Why: whyMotion,
			Compute: knock(func(e motion.Event) float64 { return math.Abs(e.Rate) }),
		},
	}
	const viscous, lever, small, at = 12.0, 0.003, 1e-6, 3.0
	h, e := chairHigh, chairRadius-chairHigh
	inertia := 11 + chairMass*h*h
	decay := viscous / (2 * inertia)
	turning := math.Sqrt(chairMass*sim.Gravity*e/inertia - decay*decay)
	return append(cases,
		Case{
			Group: "losses", Name: "damped small rock", Checks: "A loss that grows with the rate.",
			Source: "the textbook's damped oscillator, J·φ̈ + c·φ̇ + m·g·e·φ = 0 after 3 s", Unit: "rad",
			Want:     small * math.Exp(-decay*at) * (math.Cos(turning*at) + decay/turning*math.Sin(turning*at)),
			Accuracy: 1e-6, Why: "the rock of 1e-6 rad is small to first order",
			Compute: func() (float64, error) {
				rig := centred(f)
				b := rig.Balance()
				t := motion.Run(rig, b, motion.Start{Tilt: b.Rest.Tilt + small},
					motion.Options{Duration: at, Losses: motion.Losses{Viscous: viscous}})
				return t.Last.Tilt - b.Rest.Tilt, nil
			},
		},
		Case{
			Group: "losses", Name: "rolling resistance", Checks: "From turn to turn the weight falls by the lever times the angle swung.",
			Source: "derived here: the work of a constant couple b·m·g is b·m·g times the angle, and that of the weight m·g(H₁ − H₂)",
			Unit:   "m/rad", Want: lever, Accuracy: 1e-9, Why: whyMotion,
			Compute: func() (float64, error) {
				rig := centred(f)
				b := rig.Balance()
				t := motion.Run(rig, b, motion.Start{Tilt: b.Rest.Tilt + 0.25},
					motion.Options{Duration: 3, Losses: motion.Losses{Rolling: lever}})
				for _, e := range t.Events {
					if e.Kind == motion.Turns {
						return (rig.Rise(b.Rest.Tilt+0.25) - rig.Rise(e.Tilt)) / (b.Rest.Tilt + 0.25 - e.Tilt), nil
					}
				}
				return 0, fmt.Errorf("validation: the chair does not turn")
			},
		})
}

// corners are bodies that turn about a corner.
func corners(f Fault) []Case {
	const length, start, to = 1.2, 0.4, 0.5
	// ½·(mL²/3)·ω² = ½·(mL²/3)·ω₀² + m·g·(L/2)(1 − cos θ)
	want := quad.Fixed(func(t float64) float64 {
		return 1 / math.Sqrt(start*start+3*sim.Gravity/length*(1-math.Cos(t)))
	}, 0, to, 200, quad.Legendre{}, 0)
	return []Case{{
		Group: "corner", Name: "a rod falls over its foot", Checks: "A body turns over a corner as over an arc of radius zero.",
		Source: "derived here: quadrature of the energy of a rod about its foot", Unit: "s", Want: want, Accuracy: 1e-9, Why: whyMotion,
		Compute: func() (float64, error) {
			const m = 5.0
			rod := body.Body{Mass: m, Centre: r2.Vec{Y: length / 2}, Inertia: m * length * length / 12}
			rig := f.on(sim.Rig{Profile: chain(0), Body: rod})
			nowhere := sim.Margin{Angle: math.NaN()}
			t := motion.Run(rig, sim.Balance{Outcome: sim.Rocks, Back: nowhere, Forward: nowhere}, motion.Start{Rate: start},
				motion.Options{Duration: 1, Keep: true})
			return root.Between(func(time float64) float64 { return t.At(time).Tilt - to }, 0, 1, 0), nil
		},
	}}
}

// floors are what the floor must hold.
func floors(f Fault) []Case {
	const from = 0.2
	k2 := 11 / chairMass
	e := chairRadius - chairHigh
	height, ahead := chairRadius-e*math.Cos(from), e*math.Sin(from)
	return []Case{{
		Group: "friction", Name: "at the turn", Checks: "The sideways force over the weight where the rock turns.",
		Source: "derived here: with no rate, F/N = H|H′|/(k² + H²)",
		Unit:   "", Want: height * ahead / (k2 + height*height), Accuracy: 1e-9, Why: whyMotion,
		Compute: func() (float64, error) {
			rig := centred(f)
			b := rig.Balance()
			t := motion.Run(rig, b, motion.Start{Tilt: b.Rest.Tilt + from}, motion.Options{Duration: 0.1, Keep: true})
			look := t.Look(rig, 0, 0)
			return math.Abs(look.Forward) / look.Up, nil
		},
	}}
}

// pulls are what a hand must do.
func pulls(f Fault) []Case {
	pull := func(pick func(sim.Pull) float64) func() (float64, error) {
		return func() (float64, error) {
			rig := block(f)
			return pick(rig.Pull(rig.Balance(), r2.Vec{Y: 2 * blockUp})), nil
		}
	}
	source := "derived here: moments about the edge, m·g·b/2h; from there on the arm shrinks and the top does not come lower by as much"
	return []Case{
		{Group: "pull", Name: "slow, at the top of a block", Checks: "The force that tips a block.",
			Source: source, Unit: "N", Want: blockMass * sim.Gravity * blockHalf / (2 * blockUp), Accuracy: tenDigits,
			Why:     "found as a largest value",
			Compute: pull(func(p sim.Pull) float64 { return p.Slow })},
		{Group: "pull", Name: "at once and held", Checks: "The same, put on at once.",
			Source: source + "; the work begins with that force", Unit: "N", Want: blockMass * sim.Gravity * blockHalf / (2 * blockUp),
			Accuracy: tenDigits, Why: "found as a largest value",
			Compute: pull(func(p sim.Pull) float64 { return p.Sudden })},
	}
}
