package validation

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
)

// The chair that the static cases share: R = 1.05 m, nose 0.4, tail 0.5 m, 90 kg with
// its centre of mass 30 mm behind and 0.62 m over the low point.
const (
	chairRadius, chairNose, chairTail = 1.05, 0.40, 0.50
	chairMass, chairBehind, chairHigh = 90.0, 0.03, 0.62
)

func chair(f Fault, slope float64) sim.Rig {
	return f.on(sim.Rig{
		Profile: f.single(chairRadius, chairNose, chairTail),
		Body:    body.Body{Mass: chairMass, Centre: r2.Vec{X: -chairBehind, Y: chairHigh}, Inertia: 11},
		Floor:   sim.Floor{Slope: slope},
	})
}

// rests are where a piece comes to rest.
func rests(f Fault) []Case {
	apart := math.Hypot(chairBehind, chairRadius-chairHigh)
	return []Case{
		{
			Group: "rest", Name: "off-centre", Checks: "The tilt at which the centre of mass hangs plumb under the arc's centre.",
			Source: "derived here: the vector from the arc's centre to the centre of mass turns plumb, atan(x/(R − h))", Unit: "rad",
			Want: math.Atan2(chairBehind, chairRadius-chairHigh), Accuracy: twelveDigits, Why: whyClosed,
			Compute: func() (float64, error) { return chair(f, 0).Balance().Rest.Tilt, nil },
		},
		{
			Group: "rest", Name: "steadiness", Checks: "How far the arc's centre lies over the centre of mass.",
			Source: "derived here: |G − C|, as for a ship's metacentre", Unit: "m",
			Want: apart, Accuracy: twelveDigits, Why: whyClosed,
			Compute: func() (float64, error) { return chair(f, 0).Balance().Steadiness, nil },
		},
		{
			Group: "rest", Name: "height", Checks: "How high the centre of mass is at rest.",
			Source: "derived here: R − |G − C|", Unit: "m", Want: chairRadius - apart, Accuracy: twelveDigits, Why: whyClosed,
			Compute: func() (float64, error) { return chair(f, 0).Balance().Rest.Height, nil },
		},
	}
}

// tips are how near a piece is to going over its tail, about which it then turns like
// a rod about its foot.
func tips(f Fault) []Case {
	end := chairTail / chairRadius
	tip := r2.Vec{X: -chairRadius * math.Sin(end), Y: chairRadius * (1 - math.Cos(end))}
	ahead, over := -chairBehind-tip.X, chairHigh-tip.Y
	rest := chairRadius - math.Hypot(chairBehind, chairRadius-chairHigh)
	lift := math.Hypot(ahead, over) - rest
	back := func(pick func(m sim.Margin) float64) func() (float64, error) {
		return func() (float64, error) { return pick(chair(f, 0).Balance().Back), nil }
	}
	return []Case{
		{
			Group: "going over", Name: "tilt", Checks: "The tilt at which the centre of mass stands plumb over the tail tip.",
			Source: "derived here: atan2(Gx − Px, Gy − Py)", Unit: "rad", Want: math.Atan2(ahead, over), Accuracy: twelveDigits, Why: whyClosed,
			Compute: back(func(m sim.Margin) float64 { return m.Tip }),
		},
		{
			Group: "going over", Name: "lift", Checks: "How far the weight must be lifted to get there.",
			Source: "derived here: |G − P| less the height at rest", Unit: "m", Want: lift, Accuracy: twelveDigits, Why: whyClosed,
			Compute: back(func(m sim.Margin) float64 { return m.Lift }),
		},
		{
			Group: "going over", Name: "work", Checks: "The work that takes.",
			Source: "m·g·lift", Unit: "J", Want: chairMass * sim.Gravity * lift, Accuracy: twelveDigits, Why: whyClosed,
			Compute: back(func(m sim.Margin) float64 { return m.Work }),
		},
	}
}
