package bench

import "math"

// Resultant returns by how much a leg leans from plumb altogether, and Sightline the
// direction in which it does, from the direction of rake (rad): of a leg raked and splayed
// by these angles (rad) its foot lies tan(rake) along and tan(splay) aside for each length
// of height, so
//
//	tan resultant = √(tan²rake + tan²splay),  tan sightline = tan splay/tan rake
func Resultant(rake, splay float64) float64 {
	return math.Atan(math.Hypot(math.Tan(rake), math.Tan(splay)))
}

// Sightline returns the angle of [Resultant]'s plane from the direction of rake, rad.
func Sightline(rake, splay float64) float64 {
	return math.Atan2(math.Tan(splay), math.Tan(rake))
}
