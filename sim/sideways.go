package sim

import (
	"fmt"
	"math"

	"rockerwright/rocker"
)

// Sideways returns how near a piece is to going over sideways about the floor edge of one rocker: the angle (rad) and
// how far its weight must be lifted (m). height is that of the balance point over the floor, off how far it lies to
// the side, and track the distance between the floor edges (all m). With the balance point over the edge or beyond
// both are zero:
//
//	angle = atan(a/H),  lift = √(a² + H²) − H,  a = track/2 − off
func Sideways(height, off, track float64) (angle, lift float64) {
	arm := track/2 - math.Abs(off)
	if arm <= 0 {
		return 0, 0
	}
	return math.Atan2(arm, height), math.Hypot(arm, height) - height
}

// A Walk is what two rockers that are not one curve, or not parallel, make the piece do as it rocks.
type Walk struct {
	Heading float64 // by how much it turns on the floor from one end of a rock to the other, rad, + to the left
	Lean    float64 // by how much it leans sideways, at most, rad
	Scrub   float64 // how far each rocker is dragged across the floor in one rock there and back, m
}

// WalkOf returns the walk of a piece on a left and a right rocker, a track apart (m), toed
// in by an angle (rad, + closer together in front), that rocks between two rolls.
//
// Assumed: both roll without slipping along their own line as far as they can. Then the side that rolls further turns
// the piece about the other by the difference over the track; the lower side leans it by the difference of the
// heights over the track; and what a toed-in rocker rolls it is dragged across its line by the sine of its angle,
// there and back. (Derived here; friction decides how much of it is sliding and how much walks.)
//
// It panics for a track that is not above zero.
func WalkOf(left, right rocker.Profile, track, toeIn, from, to float64) Walk {
	if !(track > 0) {
		panic(fmt.Sprintf("sim: two rockers stand apart, and %g m is no track", track))
	}
	rolled := func(p rocker.Profile) float64 { return rolledAt(p, to) - rolledAt(p, from) }
	l, r := rolled(left), rolled(right)
	w := Walk{
		Heading: (r - l) / track, // the contact moves to the rear: the side that rolls further falls behind
		Scrub:   2 * max(math.Abs(l), math.Abs(r)) * math.Abs(math.Sin(toeIn)),
	}
	for i := range 41 {
		roll := from + (to-from)*float64(i)/40
		hl, _, _ := left.Support(roll)
		hr, _, _ := right.Support(roll)
		w.Lean = max(w.Lean, math.Abs(hl-hr)/track)
	}
	w.Scrub += math.Abs(w.Heading) * track / 2
	return w
}

func rolledAt(p rocker.Profile, roll float64) float64 {
	b, roll := touching(p, roll)
	return b.RolledAt(roll)
}
