package motion

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker/root"
)

// Dropped returns the rate (rad/s) with which a rig at rest begins to roll when somebody drops into it: the person's
// momentum, falling at a speed (m/s, down), about the contact, over after, the moment of inertia of both about the
// contact, kg·m². who is the person's body, contact the place where the piece touches the floor, both in axes along
// and square to the floor, forward and up, m. Where all mass lies at the contact, after being 0, it is 0.
func Dropped(who body.Body, contact r2.Vec, speed, after float64) float64 {
	if after == 0 {
		return 0
	}
	return who.Mass * speed * (contact.X - who.Centre.X) / after
}

// cells is how fine the grid is on which a threshold is sought.
const cells = 32

// Threshold returns the least x, from above zero to most, that takes a piece over: at which goes is true. A piece
// that survives x need not survive less, so a grid of 32 is asked from below, and the first cell whose end goes is
// halved to a thousandth of x, or to a millionth of most, which is nothing. none reports that nothing on the grid
// goes, or that most is not above zero and finite, and least is then most.
func Threshold(goes func(x float64) bool, most float64) (least float64, none bool) {
	if !(most > 0 && most < math.Inf(1)) {
		return most, true
	}
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
