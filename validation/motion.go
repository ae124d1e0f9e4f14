package validation

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/rocker/root"
	"rockerwright/sim"
	"rockerwright/sim/motion"
)

// joints are rests where two arcs meet.
func joints(f Fault) []Case {
	const nose, tail, h, k = 0.9, 1.4, 0.6, 0.33
	half := func(radius float64) float64 { return math.Pi * math.Sqrt((k*k+h*h)/(sim.Gravity*(radius-h))) }
	return group("joint", row{"two arcs meeting at the rest", "Half of each small rock is on either arc.",
		"derived here: half of 2π√((k² + h²)/(g(R − h))) for each radius", "s", half(nose) + half(tail), closed,
		func() (float64, error) {
			edge := chain(0.4, rocker.Arc(nose*(1+f.Radius), 0.4), rocker.Arc(tail*(1+f.Radius), 0.5))
			return f.over(edge, 70, h, 70*k*k).Balance().Period, nil
		}})
}

// A block of 50 kg, 0.1 m wide and 1.2 m high.
const blockHalf, blockUp, blockMass = 0.05, 0.6, 50.0

// block is a rectangular block on its flat foot.
func block(f Fault) sim.Rig {
	const inertia = blockMass * (blockHalf*blockHalf + blockUp*blockUp) / 3
	return f.over(chain(blockHalf, rocker.Flat(2*blockHalf)), blockMass, blockUp, inertia)
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
	cases := group("block", []row{
		{"quarter period", "The fall of a rocking block on to its foot.",
			"G. W. Housner (1963), Bull. Seism. Soc. Am. 53:403-417, without his small angles: quadrature of " +
				"the energy about the edge", "s", fall, followed, knock(func(e motion.Event) float64 { return e.Time })},
		{"rate after the knock", "What a block keeps of its rate.",
			"G. W. Housner (1963), as above: 1 − (m·r²/I₀)(1 − cos 2α) of the rate before, I₀ = 4mr²/3",
			"rad/s", before * (1 - 3.0/4*(1-math.Cos(2*alpha))), followed,
			knock(func(e motion.Event) float64 { return math.Abs(e.Rate) })},
	}...)
	const viscous, lever, small, at = 12.0, 0.003, 1e-6, 3.0
	h, e := chairHigh, chairRadius-chairHigh
	inertia := 11 + chairMass*h*h
	decay := viscous / (2 * inertia)
	turning := math.Sqrt(chairMass*sim.Gravity*e/inertia - decay*decay)
	run := func(from, duration float64, losses motion.Losses) (sim.Rig, sim.Balance, motion.Trace) {
		rig := centred(f)
		b := rig.Balance()
		return rig, b, motion.Run(rig, b, motion.Start{Tilt: b.Rest.Tilt + from}, motion.Options{Duration: duration, Losses: losses})
	}
	return append(cases, group("losses", []row{
		{"damped small rock", "A loss that grows with the rate.",
			"the textbook's damped oscillator, J·φ̈ + c·φ̇ + m·g·e·φ = 0 after 3 s", "rad",
			small * math.Exp(-decay*at) * (math.Cos(turning*at) + decay/turning*math.Sin(turning*at)),
			relative(1e-6, "the rock of 1e-6 rad is small to first order"),
			func() (float64, error) {
				_, b, t := run(small, at, motion.Losses{Viscous: viscous})
				return t.Last.Tilt - b.Rest.Tilt, nil
			}},
		{"rolling resistance", "From turn to turn the weight falls by the lever times the angle swung.",
			"derived here: the work of a constant couple b·m·g is b·m·g times the angle, and that of the weight m·g(H₁ − H₂)",
			"m/rad", lever, followed,
			func() (float64, error) {
				rig, b, t := run(0.25, 3, motion.Losses{Rolling: lever})
				for _, e := range t.Events {
					if e.Kind == motion.Turns {
						return (rig.Rise(b.Rest.Tilt+0.25) - rig.Rise(e.Tilt)) / (b.Rest.Tilt + 0.25 - e.Tilt), nil
					}
				}
				return 0, fmt.Errorf("validation: the chair does not turn")
			}},
	}...)...)
}

// corners are bodies that turn about a corner.
func corners(f Fault) []Case {
	const length, start, to = 1.2, 0.4, 0.5
	// ½·(mL²/3)·ω² = ½·(mL²/3)·ω₀² + m·g·(L/2)(1 − cos θ)
	want := quad.Fixed(func(t float64) float64 {
		return 1 / math.Sqrt(start*start+3*sim.Gravity/length*(1-math.Cos(t)))
	}, 0, to, 200, quad.Legendre{}, 0)
	return group("corner", row{"a rod falls over its foot", "A body turns over a corner as over an arc of radius zero.",
		"derived here: quadrature of the energy of a rod about its foot", "s", want, followed,
		func() (float64, error) {
			const m = 5.0
			rig := f.over(chain(0), m, length/2, m*length*length/12)
			nowhere := sim.Margin{Angle: math.NaN()}
			t := motion.Run(rig, sim.Balance{Outcome: sim.Rocks, Back: nowhere, Forward: nowhere}, motion.Start{Rate: start},
				motion.Options{Duration: 1, Keep: true})
			return root.Between(func(time float64) float64 { return t.At(time).Tilt - to }, 0, 1, 0), nil
		}})
}

// floors are what the floor must hold.
func floors(f Fault) []Case {
	const from = 0.2
	k2 := 11 / chairMass
	e := chairRadius - chairHigh
	height, ahead := chairRadius-e*math.Cos(from), e*math.Sin(from)
	return group("friction", row{"at the turn", "The sideways force over the weight where the rock turns.",
		"derived here: with no rate, F/N = H|H′|/(k² + H²)", "", height * ahead / (k2 + height*height), followed,
		func() (float64, error) {
			rig := centred(f)
			b := rig.Balance()
			t := motion.Run(rig, b, motion.Start{Tilt: b.Rest.Tilt + from}, motion.Options{Duration: 0.1, Keep: true})
			look := t.Look(rig, 0, 0)
			return math.Abs(look.Forward) / look.Up, nil
		}})
}

// pulls are what a hand must do.
func pulls(f Fault) []Case {
	pull := func(pick func(sim.Pull) float64) func() (float64, error) {
		return func() (float64, error) {
			rig := block(f)
			return pick(rig.Pull(rig.Balance(), r2.Vec{Y: 2 * blockUp})), nil
		}
	}
	const source = "derived here: moments about the edge, m·g·b/2h; from there on the arm shrinks and the top does not come lower by as much"
	const force = blockMass * sim.Gravity * blockHalf / (2 * blockUp)
	near := relative(1e-10, "found as a largest value")
	return group("pull", []row{
		{"slow, at the top of a block", "The force that tips a block.", source, "N", force, near,
			pull(func(p sim.Pull) float64 { return p.Slow })},
		{"at once and held", "The same, put on at once.", source + "; the work begins with that force", "N", force, near,
			pull(func(p sim.Pull) float64 { return p.Sudden })},
	}...)
}
