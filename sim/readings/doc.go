// Package readings works out what shop readings say of a piece's mass, balance point and inertia, and how surely.
//
// Scales under two marks on the rockers give a line through the balance point: level, its place fore and aft; with
// one mark raised too, its height. A dowel on which the piece balances gives such a line at once, and so does a level
// on the piece at rest, or balanced on its tail or nose ends: G lies upright over the contact p there,
//
//	(G − p(θ))·u′(θ) = 0.
//
// Ten timed rocks give the inertia. [Readings.Read] solves them, carries the reading errors through, by the derivatives
// of the result with each reading, and names the reading that limits each value.
//
// Places are in the chair frame of package rocker; SI units and radians.
package readings
