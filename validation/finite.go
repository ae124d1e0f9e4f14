package validation

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
)

// completePi is the complete elliptic integral of the third kind,
//
//	Π(n | m) = ∫₀^{π/2} dφ / ((1 − n sin²φ) √(1 − m sin²φ)),
//
// by a Gauss-Legendre rule of 400 points: the integrand is smooth for n, m below 1.
func completePi(n, m float64) float64 {
	return quad.Fixed(func(phi float64) float64 {
		square := math.Sin(phi) * math.Sin(phi)
		return 1 / ((1 - n*square) * math.Sqrt(1-m*square))
	}, 0, math.Pi/2, 400, quad.Legendre{}, 0)
}

// arcPeriod is the exact time of a rock of one arc from the tilt A either way: radius R,
// height h of the centre of mass at rest, radius of gyration k,
//
//	T = 4 √(I₀/(g e (1+a))) Π(n = a/(1+a) | m = (a+q)/(1+a)),
//	I₀ = k² + h², e = R − h, q = sin²(A/2), a = 4 R e q/I₀.
//
// Derived here. H = R − e cos θ and H′ = e sin θ, so J/m = k² + H² + H′² = I₀ + 2Re(1 − cos θ),
// and ½(J/m)θ̇² = g e (cos θ − cos A). With sin(θ/2) = √q sin φ, 1 − cos θ = 2q sin²φ and
// cos θ − cos A = 2q cos²φ, so T = 4 √(I₀/(g e)) ∫ √((1 + a sin²φ)/(1 − q sin²φ)) dφ over a
// quarter turn. With tan ψ = √(1+a) tan φ, sin²φ = sin²ψ/(1 + a − a sin²ψ) and the integral
// becomes that of 1/((1 − n sin²ψ) √(1 − m sin²ψ))/√(1+a) over a quarter turn.
func arcPeriod(radius, height, gyration, amplitude float64) float64 {
	first := gyration*gyration + height*height
	e := radius - height
	q := math.Sin(amplitude/2) * math.Sin(amplitude/2)
	a := 4 * radius * e * q / first
	return 4 * math.Sqrt(first/(sim.Gravity*e*(1+a))) * completePi(a/(1+a), (a+q)/(1+a))
}

// finite are rocks of any size of round bodies, R = 1 m.
func finite(f Fault) []Case {
	const loaded = 3.0 // a hoop of 1 kg with a particle of so many kg on its rim
	off := loaded / (1 + loaded)
	bodies := []struct {
		name           string
		depth, inertia float64 // of the centroid under the centre, and about it for 1 kg
		small          bool    // also the small rock
	}{
		{"solid half cylinder", 4 / (3 * math.Pi), 0.5 - math.Pow(4/(3*math.Pi), 2), false},
		{"half shell", 2 / math.Pi, 1 - math.Pow(2/math.Pi, 2), false},
		{"solid hemisphere", 3.0 / 8, 0.4 - 9.0/64, false},
		{"hemispherical shell", 0.5, 2.0/3 - 0.25, false},
		{"hoop with a particle on its rim", off, 1 - off*off, true},
		{"point mass half way down a massless wheel", 0.5, 0, true},
	}
	var cases []Case
	for _, b := range bodies {
		rig := f.on(sim.Rig{Profile: f.single(1, 1.55, 1.55), Body: body.Body{Mass: 1, Centre: r2.Vec{Y: 1 - b.depth}, Inertia: b.inertia}})
		if b.small {
			h := 1 - b.depth
			cases = append(cases, Case{
				Group: "rolling, large", Name: b.name + ", small", Checks: "The small rock of a wheel that is heavy on one side.",
				Source: "derived here: 2π√((k² + h²)/(g(R − h)))", Unit: "s", Want: 2 * math.Pi * math.Sqrt((b.inertia+h*h)/(sim.Gravity*b.depth)),
				Accuracy: twelveDigits, Why: whyClosed,
				Compute: func() (float64, error) { return small(rig) },
			})
		}
		for _, degrees := range []float64{5, 20, 40, 60, 80} {
			amplitude := degrees * math.Pi / 180
			cases = append(cases, Case{
				Group: "rolling, large", Name: fmt.Sprintf("%s, from %g degrees", b.name, degrees), Checks: "The exact time of a large rock of one arc.",
				Source: "derived here, beside the case: complete elliptic integral of the third kind", Unit: "s",
				Want: arcPeriod(1, 1-b.depth, math.Sqrt(b.inertia), amplitude), Accuracy: tenDigits, Why: whyQuadrature,
				Compute: func() (float64, error) { return large(rig, amplitude) },
			})
		}
	}
	return cases
}
