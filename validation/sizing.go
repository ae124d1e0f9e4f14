package validation

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/size"
)

// sizings are radii that keep the feel: a piece with its balance point over the low point,
// H = 24 and then 25 1/2 in up, k = 11 in, on a radius of 42 in.
func sizings(f Fault) []Case {
	const inch, k, low, high, radius = 0.0254, 11.0, 24.0, 25.5, 42.0
	drawn := func(height float64) piece.Design {
		b := f.on(sim.Rig{Body: body.Body{Mass: 90, Centre: r2.Vec{Y: height * inch}, Inertia: 90 * k * k * inch * inch}}).Body
		return piece.Design{
			Rocker: piece.Rocker{Radius: radius * inch * (1 + f.Radius), Nose: 17 * inch, Tail: 20 * inch},
			Body:   b,
		}
	}
	solved := func(way size.Keep) func() (float64, error) {
		return func() (float64, error) {
			l, err := size.Like(drawn(low), drawn(high))
			return l.Kept[way].Exact / inch, err
		}
	}
	const why = "the radius is solved to its last digits"
	return []Case{
		{
			Group: "sizing", Name: "same time", Checks: "The radius that keeps the time when the balance point rises.",
			Source: "derived here: (k² + H²)/(R − H) stays, R = H₂ + (k² + H₂²)(R₁ − H₁)/(k² + H₁²)", Unit: "in",
			Want: high + (k*k+high*high)*(radius-low)/(k*k+low*low), Accuracy: tenDigits, Why: why, Compute: solved(size.SameTime),
		},
		{
			Group: "sizing", Name: "same steadiness", Checks: "The radius that keeps the arc's centre as far above the balance point.",
			Source: "derived here: R = R₁ + H₂ − H₁",
			Unit:   "in", Want: radius + high - low, Accuracy: tenDigits, Why: why, Compute: solved(size.SameSteadiness),
		},
		{
			Group: "sizing", Name: "same proportion", Checks: "The radius that grows with the height of the balance point.",
			Source: "derived here: R = R₁H₂/H₁",
			Unit:   "in", Want: radius * high / low, Accuracy: tenDigits, Why: why, Compute: solved(size.SameProportion),
		},
		{
			Group: "sizing", Name: "time to radius", Checks: "The radius of a small rock that takes two seconds.",
			Source: "derived here: 2π√((k² + H²)/(g(R − H))) solved for R", Unit: "in",
			Want:     low + (k*k+low*low)*math.Pi*math.Pi*inch/sim.Gravity,
			Accuracy: twelveDigits, Why: whyClosed,
			Compute: func() (float64, error) {
				r, err := check.Balance(drawn(low))
				if err != nil {
					return 0, err
				}
				feel, _ := size.FeelOf(r)
				return feel.RadiusForPeriod(2) / inch, nil
			},
		},
	}
}
