package motion

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker/root"
)

// A Push is a force along the floor at one point of the piece, for a time from the start.
type Push struct {
	At    r2.Vec  // chair frame, m
	Force float64 // N, + back
	Time  float64 // s
}

// A Start is the rig at time zero.
type Start struct {
	Tilt float64 // against the vertical, rad
	Rate float64 // rad/s
	Push Push
}

// Dropped returns the rate with which a rig at rest begins to roll when somebody drops
// into it: the person's momentum, falling at a speed (m/s, down), about the contact, over
// the inertia of both. who is the person's body, contact the place where the piece
// touches the floor, both in axes along and square to the floor, forward and up, m.
func Dropped(who body.Body, contact r2.Vec, speed, after float64) float64 {
	return who.Mass * speed * (contact.X - who.Centre.X) / after
}

// cells is how fine the grid is on which the hardest push is sought.
const cells = 32

// LeastThat returns the least x, from above zero to most, at which goes is true: found in
// the first cell of a grid of 32 whose end goes, and halved there to a thousandth, for
// what survives x need not survive less, and no further than to a millionth of most, which is nothing. none
// reports that nothing on the grid goes.
func LeastThat(goes func(x float64) bool, most float64) (least float64, none bool) {
	low := 0.0
	for i := 1; i <= cells; i++ {
		high := most * float64(i) / cells
		if !goes(high) {
			low = high
			continue
		}
		least, _ = root.Edge(goes, high, low, 1e-6*most, 1e-3)
		return least, false
	}
	return most, true
}
