package sim

import "math"

// Sideways returns how near a piece is to going over sideways about the floor edge of one
// rocker: the angle (rad) and how far its weight must be lifted (m). height is that of the
// balance point over the floor, off how far it lies to the side, and track the distance
// between the floor edges (all m). With the balance point over the edge or beyond both are
// zero:
//
//	angle = atan(a/H),  lift = √(a² + H²) − H,  a = track/2 − off
func Sideways(height, off, track float64) (angle, lift float64) {
	arm := track/2 - math.Abs(off)
	if arm <= 0 {
		return 0, 0
	}
	return math.Atan2(arm, height), math.Hypot(arm, height) - height
}
