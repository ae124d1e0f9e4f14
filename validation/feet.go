package validation

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
)

// What rides on the chair of the cases of feet without shanks and feet, and where the knees are, m and kg.
const (
	ridesMass, ridesHigh   = 80.0, 0.62
	flatBehind, stepBehind = 0.06, 0.09 // its centre behind the low point, where the soles lie flat and where the heels lift
	pressBehind            = 0.04       // and where flat soles press it back, but not as far as the heels lift
	kneeAhead, kneeHigh    = 0.40, 0.45
)

// feetLegs are legs with shanks of a length; the foot hangs 45 degrees down, where the toe leaves.
func feetLegs(length float64) body.Legs {
	return body.Legs{Knee: r2.Vec{X: kneeAhead, Y: kneeHigh}, Shank: 6.5, Foot: 2.2, Length: length, Centre: 0.433,
		Ankle: 0.08, Toe: 0.18, Ahead: 0.05, Below: 0.05, Bend: 50 * math.Pi / 180}
}

// feet are people at ease, whose feet stand on a smooth floor. On an arc of radius R a point (x, y) stands
// R + x sin θ + (y − R) cos θ high and x cos θ − (y − R) sin θ ahead of the contact.
func feet(f Fault) []Case {
	long, short := feetLegs(0.42), feetLegs(0.25)
	seated := func(behind float64, l body.Legs) sim.SeatedBalance {
		rides := body.Body{Mass: ridesMass, Centre: r2.Vec{X: -behind, Y: ridesHigh}, Inertia: 11}
		rig := f.on(sim.Rig{Profile: f.single(chairRadius, chairNose, chairTail), Body: rides})
		return sim.Seated{Rig: rig, Legs: []body.Legs{l}}.Balance()
	}
	// the rest of a rigid body: what rides, and so much of the legs as a point at the knees
	rest := func(behind, atKnees float64) float64 {
		return math.Atan2(ridesMass*behind-atKnees*kneeAhead,
			ridesMass*(chairRadius-ridesHigh)+atKnees*(chairRadius-kneeHigh))
	}
	legs := long.Shank + long.Foot
	full := long.Foot + long.Centre*long.Shank
	// R + kx sin θ − (R − ky) cos θ = y, so cos(θ + δ) = (R − y)/|w|
	at := func(y float64) float64 {
		return math.Acos((chairRadius-y)/math.Hypot(kneeAhead, chairRadius-kneeHigh)) - math.Atan2(kneeAhead, chairRadius-kneeHigh)
	}
	lifts := at(long.Length + long.Ankle)
	toes, toesBehind := feetOnToes(&long, at)
	lightly := long
	lightly.Thigh = 1
	leaves := at(long.Length + (long.Toe+long.Ankle)*math.Sqrt2/2)
	sin, cos := math.Sincos(lifts)
	carried := legs + ridesMass*(-stepBehind*cos+(chairRadius-ridesHigh)*sin)/(kneeAhead*cos+(chairRadius-kneeHigh)*sin)
	pick := func(name, checks, source, unit string, want, behind float64, l body.Legs, pick func(b sim.SeatedBalance) float64) row {
		return row{name, checks, source, unit, want, absolute(1e-9, "the rest is solved to a rounding of the tilt"),
			func() (float64, error) { return pick(seated(behind, l)), nil }}
	}
	tilt := func(b sim.SeatedBalance) float64 { return b.Rest.Tilt }
	return group("feet on the floor",
		pick("soles flat", "The rest with the soles flat, which carry the feet and the ankles' share of the shanks.",
			"derived here: a rigid body with the rest of the legs at the knees, atan(Σmx/Σm(R − y))", "rad",
			rest(flatBehind, legs-full), flatBehind, long, tilt),
		pick("legs hanging", "The rest with the feet off the floor.",
			"derived here: a rigid body with the legs at the knees", "rad",
			rest(stepBehind, legs), stepBehind, short, tilt),
		pick("heels lifting", "The rest where the heels just lift: the knees stand as high as shank and ankle.",
			"derived here: R + x sin θ + (y − R) cos θ = l + a solved for θ", "rad", lifts, stepBehind, long, tilt),
		pick("carried there", "What the floor carries of the legs at that rest.",
			"derived here: the moments about the contact, m₁x₁ + (m_s + m_f − N)x_K = 0", "kg", carried, stepBehind, long,
			func(b sim.SeatedBalance) float64 { return b.Feet[0].Carried }),
		pick("on the toes", "The rest with the feet turned by 20 degrees on their toes, which carry what is plumb over them.",
			"derived here: N = m_f(f cos ψ − b sin ψ)/(t cos ψ − a sin ψ): the moments of the foot about the ankle",
			"rad", toes, toesBehind, long, tilt),
		pick("toes leave", "The tilt at which the toes leave, the foot hanging from an ankle at ease.",
			"derived here: the knees stand at l + t sin 45° + a cos 45°", "rad", leaves, stepBehind, long,
			func(b sim.SeatedBalance) float64 { return b.Feet[0].ToeLeaves }),
		pick("pressed", "The rest with the ankles held stiff, which carry as much as flat soles.",
			"derived here: a rigid body with the rest of the legs at the knees", "rad",
			rest(stepBehind, legs-full), stepBehind, long, func(b sim.SeatedBalance) float64 { return b.Pressed }),
		pick("pressed, soles flat", "The rest with the soles flat, whose legs carry the front ends of the thighs as well.",
			"derived here: a rigid body without the thighs' 1 kg at the knees", "rad",
			rest(pressBehind, -lightly.Thigh), pressBehind, lightly, func(b sim.SeatedBalance) float64 { return b.Pressed }),
		pick("work, soles flat", "The work from soles flat to the hilltop over the tail.",
			"derived here: the potential energy of what rides, shank and foot, each at its own height", "J",
			feetWork(rest(flatBehind, legs-full), flatBehind, &long), flatBehind, long,
			func(b sim.SeatedBalance) float64 { return b.Back.Work }),
		pick("work", "The work from heels lifting to the hilltop over the tail, where the legs hang.",
			"derived here: the potential energy of what rides, shank and foot, each at its own height", "J",
			feetWork(lifts, stepBehind, &long), stepBehind, long, func(b sim.SeatedBalance) float64 { return b.Back.Work }))
}

// feetOnToes returns the tilt at which the feet are turned by 20 degrees on their toes, and how far behind the low
// point what rides must be to rest there.
func feetOnToes(l *body.Legs, at func(y float64) float64) (tilt, behind float64) {
	toeSin, toeCos := math.Sincos(20 * math.Pi / 180)
	tilt = at(l.Length + l.Toe*toeSin + l.Ankle*toeCos)
	carried := l.Foot * (l.Ahead*toeCos - l.Below*toeSin) / (l.Toe*toeCos - l.Ankle*toeSin)
	sin, cos := math.Sincos(tilt)
	ahead := kneeAhead*cos + (chairRadius-kneeHigh)*sin // of the knees, from the contact
	return tilt, ((chairRadius-ridesHigh)*sin + (l.Shank+l.Foot-carried)*ahead/ridesMass) / cos
}

// feetWork is the work from a rest with the soles on the floor to the hilltop: there the centre of all, with the legs
// as points at the knees, is over the tail tip, and a point (x, y) ahead and over it stands x sin θ + y cos θ high.
func feetWork(rest, behind float64, l *body.Legs) float64 {
	endSin, endCos := math.Sincos(chairTail / chairRadius)
	tipX, tipY := -chairRadius*endSin, chairRadius*(1-endCos)
	legs := l.Shank + l.Foot
	over := math.Atan2(-ridesMass*behind+legs*kneeAhead-(ridesMass+legs)*tipX,
		ridesMass*ridesHigh+legs*kneeHigh-(ridesMass+legs)*tipY)
	restSin, restCos := math.Sincos(rest)
	hillSin, hillCos := math.Sincos(over)
	here := func(x, y float64) float64 { return chairRadius + x*restSin + (y-chairRadius)*restCos }
	there := func(x, y float64) float64 { return (x-tipX)*hillSin + (y-tipY)*hillCos }
	kneeHere, kneeThere := here(kneeAhead, kneeHigh), there(kneeAhead, kneeHigh)
	// from a shank between its knee and the ankle over a flat sole to one that hangs plumb
	shank := kneeThere - l.Centre*l.Length - (kneeHere + l.Centre*(l.Ankle-kneeHere))
	foot := kneeThere - l.Length - math.Hypot(l.Ahead, l.Below) - (l.Ankle - l.Below)
	return sim.Gravity * (ridesMass*(there(-behind, ridesHigh)-here(-behind, ridesHigh)) + l.Shank*shank + l.Foot*foot)
}
