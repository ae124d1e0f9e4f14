package validation

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/integrate/quad"

	"rockerwright/rocker"
	"rockerwright/sim"
)

// onCurve returns a rig on a curve of n arcs.
func (f Fault) onCurve(c rocker.Curve, n int, height, gyration float64) (sim.Rig, error) {
	spans, nose, err := c.Arcs(n)
	if err != nil {
		return sim.Rig{}, err
	}
	edge, err := rocker.Chain(nose, spans...)
	return f.over(edge, 1, height, gyration*gyration), err
}

// curves are rocks on curves that are not arcs, through the chain of arcs that the product makes of them. Its error
// falls as 1/n² of the n arcs: each case says how many digits so many give.
func curves(f Fault) []Case {
	const along, up, h, k, focal = 1.1, 0.8, 0.55, 0.3, 0.5
	var rows []row
	small := func(name, source string, c rocker.Curve, height, radius float64) {
		for _, n := range []int{16, 64, 256, 1024} {
			why := fmt.Sprintf("the error of the fit falls as 1/n²: %d arcs give %.1f digits", n, 2*math.Log10(float64(n)))
			rows = append(rows, row{fmt.Sprintf("%s by %d arcs", name, n), "The small rock on a curve fitted by arcs.",
				source, "s", 2 * math.Pi * math.Sqrt((k*k+height*height)/(sim.Gravity*(radius-height))), relative(1/float64(n*n), why),
				func() (float64, error) {
					rig, err := f.onCurve(c, n, height, k)
					return rig.Balance().Period, err
				}})
		}
	}
	small("ellipse", "derived here: ρ = a²/b at the end of the short axis, 2π√((k² + h²)/(g(ρ − h)))",
		rocker.Ellipse(along, up, -0.5, 0.5), h, along*along/up)
	small("parabola, mass at its focus", "derived here: ρ = 2f at the vertex and h = f, so 2π√((k² + f²)/(gf))",
		rocker.Parabola(focal, -0.5, 0.5), focal, 2*focal)

	const lambda, arcs = 0.5, 1500
	near := relative(2e-6, "1,500 arcs")
	even, evenErr := rocker.EvenTime(k, h, lambda, 0.45)
	for _, degrees := range []float64{2, 8, 15, 22} {
		rows = append(rows, row{fmt.Sprintf("even-time rocker, from %g degrees", degrees), "The same time from every tilt.",
			"derived here: H′² = d(k² + H²)/(λ − d) has the period 2π√(2λ/g); the derivation stands with rocker.EvenTime",
			"s", 2 * math.Pi * math.Sqrt(2*lambda/sim.Gravity), near,
			func() (float64, error) {
				if evenErr != nil {
					return 0, evenErr
				}
				rig, err := f.onCurve(even, arcs, h, k)
				period, _ := rig.Period(rig.Balance(), degrees*math.Pi/180)
				return period, err
			}})
	}
	// A cycloid, ρ = 4a cos θ, has the support function 2aθ sin θ, so H = 2aθ sin θ + h cos θ with the mass h over its
	// lowest point. Its time is not even: by the quarter swing with θ = A sin ψ, here from 20 degrees.
	const wheel = 0.3
	from := 20 * math.Pi / 180
	height := func(t float64) float64 { return 2*wheel*t*math.Sin(t) + h*math.Cos(t) }
	ahead := func(t float64) float64 { return 2*wheel*(math.Sin(t)+t*math.Cos(t)) - h*math.Sin(t) }
	want := 4 * quad.Fixed(func(psi float64) float64 {
		t := from * math.Sin(psi)
		j := k*k + height(t)*height(t) + ahead(t)*ahead(t)
		return math.Sqrt(j/(2*sim.Gravity*(height(from)-height(t)))) * from * math.Cos(psi)
	}, 0, math.Pi/2, 400, quad.Legendre{}, 0)
	return group("curves", append(rows, row{"cycloid, from 20 degrees", "A plain cycloid rocks in no even time: a body has inertia.",
		"derived here: quadrature of its energy with the support function 2aθ sin θ", "s", want, near,
		func() (float64, error) {
			rig, err := f.onCurve(rocker.Cycloid(wheel, -0.45, 0.45), arcs, h, k)
			period, _ := rig.Period(rig.Balance(), from)
			return period, err
		}})...)
}
