package body

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// The inertias below are derived here from two integrals about the middle: a length l of uniform matter has a mean
// square distance of l²/12 along itself, and a disc of diameter d one of d²/16 along each of two square diameters.
// About z, the squares along x and y add.

// Point returns a mass (kg) at the origin without size.
func Point(mass float64) Body { return Body{Mass: mass} }

// Box returns a block of a mass (kg) and sizes (m): length along x, height along y.
// Zero for one of them makes it a panel, for both a point. Its width across the chair
// does not change its inertia about the axis of rocking, m·(length² + height²)/12.
func Box(mass, length, height float64) Body {
	return Body{Mass: mass, Inertia: mass * (length*length + height*height) / 12}
}

// Cylinder returns a round bar of a mass (kg) and sizes (m) that stands upright, its
// axis along y; a leg or a spindle once it is turned to its rake. Diameter 0 makes it
// a thin rod, length 0 a disc. Its inertia is m·(diameter²/16 + length²/12).
func Cylinder(mass, diameter, length float64) Body {
	return Body{Mass: mass, Inertia: mass * (diameter*diameter/16 + length*length/12)}
}

// CrossCylinder returns a round bar of a mass (kg) and a diameter (m) that lies across the chair, its axis along z: a
// stretcher or a crest rail. Its length does not change its inertia, m·diameter²/8.
func CrossCylinder(mass, diameter float64) Body {
	return Body{Mass: mass, Inertia: mass * diameter * diameter / 8}
}

// Cone returns a round bar of a mass (kg) that stands upright and tapers straight from the diameter foot (m) at its
// lower end to the diameter top (m) at its upper end. Top 0 is a full cone, foot = top is the [Cylinder]. The origin
// is the middle of its axis, not its centre of mass: Centre lies towards the thicker end.
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

// BoxVolume returns the volume (m³) of a block of the given sizes (m).
func BoxVolume(length, height, width float64) float64 { return length * height * width }

// CylinderVolume returns the volume (m³) of a round bar of the given sizes (m).
func CylinderVolume(diameter, length float64) float64 {
	return math.Pi / 4 * diameter * diameter * length
}

// ConeVolume returns the volume (m³) of the round, tapered bar that [Cone]
// describes, sizes in m: (π/12)·length·(foot² + foot·top + top²).
func ConeVolume(foot, top, length float64) float64 {
	return math.Pi / 12 * length * (foot*foot + foot*top + top*top)
}
