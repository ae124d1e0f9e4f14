package validation

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
)

// swings are finite rocks on one arc, R = 1, h = 0.6, k = 0.35 m.
func swings(f Fault) []Case {
	rig := f.on(sim.Rig{Profile: f.single(1, 1, 1), Body: body.Body{Mass: 80, Centre: r2.Vec{Y: 0.6}, Inertia: 80 * 0.35 * 0.35}})
	var cases []Case
	for _, row := range []struct{ degrees, want float64 }{{10, 2.22168}, {20, 2.27524}, {30, 2.36276}} {
		cases = append(cases, Case{
			Group: "finite rock", Name: fmt.Sprintf("from %g degrees", row.degrees), Checks: "The time of a large rock.",
			Source: "derived here: quadrature of the energy and a Runge-Kutta run of the motion, which agree to 1e-8, printed to six digits", Unit: "s",
			Want: row.want, Accuracy: 3e-6, Why: whyPrinted,
			Compute: func() (float64, error) { return large(rig, row.degrees*math.Pi/180) },
		})
	}
	// A particle of mass m on the rim of a massless wheel: I = 0, the mass at distance R
	// below the centre, so H = R(1 − cos θ), H′ = R sin θ, J = 2mR²(1 − cos θ). With E the
	// same H, ½Jθ̇² = mg(H(A) − H) gives θ̇² = (g/R)(cos θ − cos A)/(1 − cos θ), and
	// T = 4√(R/g) ∫₀ᴬ √((1 − cos θ)/(cos θ − cos A)) dθ = 8√(R/g)·acosh(sec(A/2)).
	for _, degrees := range []float64{20, 60, 80} {
		release := degrees * math.Pi / 180
		cases = append(cases, Case{
			Group: "finite rock", Name: fmt.Sprintf("particle on a rim, from %g degrees", degrees), Checks: "A wheel whose inertia vanishes where it rests.",
			Source: "derived here: 8√(R/g)·acosh(sec(A/2)), beside the case", Unit: "s",
			Want: 8 * math.Sqrt(1/sim.Gravity) * math.Acosh(1/math.Cos(release/2)), Accuracy: tenDigits, Why: whyQuadrature,
			Compute: func() (float64, error) {
				return large(f.on(sim.Rig{Profile: f.single(1, 1.5, 1.5), Body: body.Body{Mass: 1}}), release)
			},
		})
	}
	return cases
}
