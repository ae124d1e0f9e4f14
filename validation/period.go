package validation

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/mathext"

	"rockerwright/sim"
)

// hung returns a pendulum: a body on one point, so far above its centre of mass (m), with its radius of gyration (m).
func hung(f Fault, depth, gyration float64) sim.Rig {
	return f.over(chain(0), 3, -depth, 3*gyration*gyration)
}

// pendulums are bodies that swing on a corner.
func pendulums(f Fault) []Case {
	const length, depth, gyration = 0.8, 0.45, 0.3
	var rows []row
	for _, p := range []struct {
		name, of, source      string
		depth, gyration, want float64
	}{
		{"simple", "a point mass below a corner", "2π√(l/g), any textbook of mechanics", length, 0,
			2 * math.Pi * math.Sqrt(length/sim.Gravity)},
		{"uniform rod", "a rod hung by its end", "2π√(2l/3g), any textbook of mechanics: inertia ml²/3 about the end",
			length / 2, length / math.Sqrt(12), 2 * math.Pi * math.Sqrt(2*length/3/sim.Gravity)},
		{"physical", "any body below a corner", "2π√((k² + d²)/(gd)), any textbook of mechanics",
			depth, gyration, 2 * math.Pi * math.Sqrt((gyration*gyration+depth*depth)/(sim.Gravity*depth))},
	} {
		rows = append(rows, row{p.name + ", small", "The small swing of " + p.of + ".", p.source, "s", p.want, closed,
			func() (float64, error) { return small(hung(f, p.depth, p.gyration)) }})
	}
	sin50 := math.Sin(50 * math.Pi / 180)
	rows = append(rows, row{"physical, from 100 degrees", "The exact period of any body below a corner.",
		"4√((k² + d²)/(gd))·K(m), m = sin²(A/2), any textbook of mechanics; K by gonum/mathext", "s",
		4 * math.Sqrt((gyration*gyration+depth*depth)/(sim.Gravity*depth)) * mathext.CompleteK(sin50*sin50), quadrature,
		func() (float64, error) { return large(hung(f, depth, gyration), 100*math.Pi/180) }})
	for _, amplitude := range []float64{5, 30, 60, 90, 120, 150} {
		release := amplitude * math.Pi / 180
		half := math.Sin(release / 2)
		rows = append(rows, row{fmt.Sprintf("simple, from %g degrees", amplitude), "The exact period of a swing of any size.",
			"4√(l/g)·K(m), m = sin²(A/2): complete elliptic integral of the first kind, as in any textbook of " +
				"mechanics; K by gonum/mathext",
			"s", 4 * math.Sqrt(length/sim.Gravity) * mathext.CompleteK(half*half), quadrature,
			func() (float64, error) { return large(hung(f, length, 0), release) }})
	}
	return group("pendulum", rows...)
}

// upright returns the balance about the tilt 0, by its tilt: a half cylinder stands lower on its flat side.
func upright(rig sim.Rig) (sim.Balance, error) {
	for _, e := range rig.Equilibria(nil) {
		if e.Stable && math.Abs(e.Tilt) < 1e-9 {
			return rig.BalanceAt(e), nil
		}
	}
	return sim.Balance{}, fmt.Errorf("validation: a body of %g kg does not stand upright", rig.Body.Mass)
}

// small returns the small rock about the tilt 0, s.
func small(rig sim.Rig) (float64, error) {
	b, err := upright(rig)
	return b.Period, err
}

// large returns the rock from an angle either way of the tilt 0, s.
func large(rig sim.Rig, release float64) (float64, error) {
	b, err := upright(rig)
	if err != nil {
		return 0, err
	}
	period, _ := rig.Period(b, release)
	return period, nil
}

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
// Derived here. H = R − e cos θ and H′ = e sin θ, so J/m = k² + H² + H′² = I₀ + 2Re(1 − cos θ), and ½(J/m)θ̇² = g e
// (cos θ − cos A). With sin(θ/2) = √q sin φ, 1 − cos θ = 2q sin²φ and cos θ − cos A = 2q cos²φ, so T = 4 √(I₀/(g e))
// ∫ √((1 + a sin²φ)/(1 − q sin²φ)) dφ over a quarter turn. With tan ψ = √(1+a) tan φ, sin²φ = sin²ψ/(1 + a − a sin²ψ)
// and the integral becomes that of 1/((1 − n sin²ψ) √(1 − m sin²ψ))/√(1+a) over a quarter turn.
func arcPeriod(radius, height, gyration, amplitude float64) float64 {
	first := gyration*gyration + height*height
	e := radius - height
	q := math.Sin(amplitude/2) * math.Sin(amplitude/2)
	a := 4 * radius * e * q / first
	return 4 * math.Sqrt(first/(sim.Gravity*e*(1+a))) * completePi(a/(1+a), (a+q)/(1+a))
}

// cylinders are halves of round bodies that rock on their round side, R = 1 m. Inertia
// about the centre of mass follows by the parallel axis from that about the centre.
func cylinders(f Fault) []Case {
	const g = sim.Gravity
	solid, shell := 4/(3*math.Pi), 2/math.Pi // depth of the centroid under the centre
	round := func(name, source string, depth, aboutCentre, want float64) row {
		return row{name, "The small rock of a half on a level floor without slipping.", source, "s", want, closed,
			func() (float64, error) { return small(f.oneArc(1, math.Pi/2, 1, 1-depth, aboutCentre-depth*depth)) }}
	}
	return group("rolling halves",
		round("solid half cylinder", "derived here: centroid 4R/3π under the centre, inertia mR²/2 about it, so 2π√((9π − 16)R/8g)",
			solid, 0.5, 2*math.Pi*math.Sqrt((9*math.Pi-16)/8/g)),
		round("half shell", "derived here: centroid 2R/π, inertia mR² about the centre, 2mR²(1 − 2/π) about the "+
			"floor, so 2π√((π − 2)R/g)", shell, 1, 2*math.Pi*math.Sqrt((math.Pi-2)/g)),
		round("solid hemisphere", "derived here: centroid 3R/8, inertia 2mR²/5 about the centre, so 2π√(26R/15g)", 3.0/8, 2.0/5,
			2*math.Pi*math.Sqrt(26.0/15/g)),
		round("hemispherical shell", "derived here: centroid R/2, inertia 2mR²/3 about the centre, so 2π√(4R/3g)", 1.0/2, 2.0/3,
			2*math.Pi*math.Sqrt(4.0/3/g)))
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
	var rows []row
	for _, b := range bodies {
		rig := f.oneArc(1, 1.55, 1, 1-b.depth, b.inertia)
		if b.small {
			h := 1 - b.depth
			rows = append(rows, row{b.name + ", small", "The small rock of a wheel that is heavy on one side.",
				"derived here: 2π√((k² + h²)/(g(R − h)))", "s", 2 * math.Pi * math.Sqrt((b.inertia+h*h)/(sim.Gravity*b.depth)), closed,
				func() (float64, error) { return small(rig) }})
		}
		for _, degrees := range []float64{5, 20, 40, 60, 80} {
			amplitude := degrees * math.Pi / 180
			rows = append(rows, row{fmt.Sprintf("%s, from %g degrees", b.name, degrees), "The exact time of a large rock of one arc.",
				"derived here, beside the case: complete elliptic integral of the third kind", "s",
				arcPeriod(1, 1-b.depth, math.Sqrt(b.inertia), amplitude), quadrature,
				func() (float64, error) { return large(rig, amplitude) }})
		}
	}
	return group("rolling, large", rows...)
}

// swings are finite rocks on one arc, R = 1, h = 0.6, k = 0.35 m.
func swings(f Fault) []Case {
	rig := f.oneArc(1, 1, 80, 0.6, 80*0.35*0.35)
	var rows []row
	for _, known := range []struct{ degrees, want float64 }{{10, 2.22168}, {20, 2.27524}, {30, 2.36276}} {
		rows = append(rows, row{fmt.Sprintf("from %g degrees", known.degrees), "The time of a large rock.",
			"derived here: quadrature of the energy and a Runge-Kutta run of the motion, which agree to 1e-8, " +
				"printed to six digits", "s", known.want, relative(3e-6, whyPrinted),
			func() (float64, error) { return large(rig, known.degrees*math.Pi/180) }})
	}
	// A particle of mass m on the rim of a massless wheel: I = 0, the mass at distance R below the centre, so H = R(1
	// − cos θ), H′ = R sin θ, J = 2mR²(1 − cos θ). With E the same H, ½Jθ̇² = mg(H(A) − H) gives θ̇² = (g/R)(cos θ −
	// cos A)/(1 − cos θ), and T = 4√(R/g) ∫₀ᴬ √((1 − cos θ)/(cos θ − cos A)) dθ = 8√(R/g)·acosh(sec(A/2)).
	for _, degrees := range []float64{20, 60, 80} {
		release := degrees * math.Pi / 180
		rows = append(rows, row{fmt.Sprintf("particle on a rim, from %g degrees", degrees),
			"A wheel whose inertia vanishes where it rests.", "derived here: 8√(R/g)·acosh(sec(A/2)), beside the case",
			"s", 8 * math.Sqrt(1/sim.Gravity) * math.Acosh(1/math.Cos(release/2)), quadrature,
			func() (float64, error) { return large(f.oneArc(1, 1.5, 1, 0, 0), release) }})
	}
	return group("finite rock", rows...)
}
