package body

// The inertias below are derived here from two integrals about the middle: a length l
// of uniform matter has a mean square distance of l²/12 along itself, and a disc of
// diameter d one of d²/16 along each of two square diameters. About z, the squares
// along x and y add.

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

// CrossCylinder returns a round bar of a mass (kg) and a diameter (m) that lies across
// the chair, its axis along z: a stretcher or a crest rail. Its length does not change
// its inertia, m·diameter²/8.
func CrossCylinder(mass, diameter float64) Body {
	return Body{Mass: mass, Inertia: mass * diameter * diameter / 8}
}
