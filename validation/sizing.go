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
		edge := piece.Rocker{Radius: radius * inch * (1 + f.Radius), Nose: 17 * inch, Tail: 20 * inch}
		return piece.Design{Rocker: edge, Body: b}
	}
	kept := func(way size.Keep) func() (float64, error) {
		return func() (float64, error) {
			l, err := size.Like(drawn(low), drawn(high))
			return l.Kept[way].Exact / inch, err
		}
	}
	solved := relative(1e-10, "the radius is solved to its last digits")
	return group("sizing", []row{
		{"same time", "The radius that keeps the time when the balance point rises.",
			"derived here: (k² + H²)/(R − H) stays, R = H₂ + (k² + H₂²)(R₁ − H₁)/(k² + H₁²)",
			"in", high + (k*k+high*high)*(radius-low)/(k*k+low*low), solved, kept(size.SameTime)},
		{"same steadiness", "The radius that keeps the arc's centre as far above the balance point.",
			"derived here: R = R₁ + H₂ − H₁", "in", radius + high - low, solved, kept(size.SameSteadiness)},
		{"same proportion", "The radius that grows with the height of the balance point.",
			"derived here: R = R₁H₂/H₁", "in", radius * high / low, solved, kept(size.SameProportion)},
		{"time to radius", "The radius of a small rock that takes two seconds.",
			"derived here: 2π√((k² + H²)/(g(R − H))) solved for R",
			"in", low + (k*k+low*low)*math.Pi*math.Pi*inch/sim.Gravity, closed,
			func() (float64, error) {
				r, err := check.Balance(drawn(low))
				if err != nil {
					return 0, err
				}
				feel, _ := size.FeelOf(r)
				return feel.RadiusForPeriod(2) / inch, nil
			}},
	}...)
}
