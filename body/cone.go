package body

import "gonum.org/v1/gonum/spatial/r2"

// Cone returns a round bar of a mass (kg) that stands upright and tapers straight from
// the diameter foot (m) at its lower end to the diameter top (m) at its upper end. Top 0
// is a full cone, foot = top is the [Cylinder]. The origin is the middle of its axis,
// not its centre of mass: Centre lies towards the thicker end.
//
// Derived here from discs. With mean radius a, taper q = (top − foot)/(top + foot)
// and length L, the disc at t·L/2 (t from −1 to 1) has the radius a·(1 + q·t), and
// about its own diameter the mean square a²(1 + q·t)²/4. Integrated over t,
//
//	volume   V = ½πa²L ∫(1 + qt)² dt = πa²L·(3 + q²)/3
//	centre   C = (πa²L²/4V) ∫t(1 + qt)² dt = L·q/(3 + q²)
//	along    S = (πa²L³/8V) ∫t²(1 + qt)² dt − C² = (3L²/20)·(5 − 2q² + q⁴)/(3 + q²)²
//	across   D = (πa⁴L/8V) ∫(1 + qt)⁴ dt = (3a²/20)·(5 + 10q² + q⁴)/(3 + q²)
//	inertia  I = m·(S + D)
func Cone(mass, foot, top, length float64) Body {
	a := (foot + top) / 4
	q := 0.0 // also of a rod that has no thickness
	if foot != top {
		q = (top - foot) / (top + foot)
	}
	q2 := q * q
	w := 3 + q2
	along := length * length * (5 - 2*q2 + q2*q2) / (w * w)
	across := a * a * (5 + 10*q2 + q2*q2) / w
	return Body{
		Mass:    mass,
		Centre:  r2.Vec{Y: length * q / w},
		Inertia: mass * 3 / 20 * (along + across),
	}
}
