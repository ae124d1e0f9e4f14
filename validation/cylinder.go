package validation

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
)

// rolling returns a body of 1 kg on one arc of radius 1 m that reaches a right angle to
// both sides: its centre of mass at height h (m), its inertia there (kg·m²).
func rolling(f Fault, h, inertia float64) sim.Rig {
	return f.on(sim.Rig{
		Profile: f.single(1, math.Pi/2, math.Pi/2),
		Body:    body.Body{Mass: 1, Centre: r2.Vec{Y: h}, Inertia: inertia},
	})
}

// upright returns the balance about the tilt 0. A half cylinder stands lower on
// its flat side, so the rest is chosen by its tilt.
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

// cylinders are halves of round bodies that rock on their round side, R = 1 m. Inertia
// about the centre of mass follows by the parallel axis from that about the centre.
func cylinders(f Fault) []Case {
	const g = sim.Gravity
	solid, shell := 4/(3*math.Pi), 2/math.Pi // depth of the centroid under the centre
	round := func(name, source string, depth, aboutCentre, want float64) Case {
		return Case{
			Group: "rolling halves", Name: name, Checks: "The small rock of a half on a level floor without slipping.",
			Source: source, Unit: "s", Want: want, Accuracy: twelveDigits, Why: whyClosed,
			Compute: func() (float64, error) { return small(rolling(f, 1-depth, aboutCentre-depth*depth)) },
		}
	}
	return []Case{
		round("solid half cylinder", "derived here: centroid 4R/3π under the centre, inertia mR²/2 about it, so 2π√((9π − 16)R/8g)", solid, 0.5, 2*math.Pi*math.Sqrt((9*math.Pi-16)/8/g)),
		round("half shell", "derived here: centroid 2R/π, inertia mR² about the centre, 2mR²(1 − 2/π) about the floor, so 2π√((π − 2)R/g)", shell, 1, 2*math.Pi*math.Sqrt((math.Pi-2)/g)),
		round("solid hemisphere", "derived here: centroid 3R/8, inertia 2mR²/5 about the centre, so 2π√(26R/15g)", 3.0/8, 2.0/5, 2*math.Pi*math.Sqrt(26.0/15/g)),
		round("hemispherical shell", "derived here: centroid R/2, inertia 2mR²/3 about the centre, so 2π√(4R/3g)", 1.0/2, 2.0/3, 2*math.Pi*math.Sqrt(4.0/3/g)),
	}
}
