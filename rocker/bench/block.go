package bench

import (
	"cmp"
	"math"
)

// A Block is the adder block between a leg and its rocker: a wedge that carries the angle, so
// that the leg is sawn square and the joint stays at 90 degrees. Its underside lies along the
// top edge, its upper face square to the leg.
type Block struct {
	Side, Across float64 // the wedge in the side view and seen along the top edge: Cut and Across of the Standing, rad

	// Heights over the tangent of the top edge at the leg, square to it, m: under the centre
	// line and at the four corners. Inner is towards the middle of the chair.
	Middle, NoseInner, NoseOuter, TailInner, TailOuter float64

	Shorter float64 // by how much the centre line of the leg is shorter than to the top edge, m
	Bow     float64 // how far the top edge stands off its tangent at nose and tail end of the block, m: its underside is that much rounder
}

// Block returns the block for a leg that takes up long (m, along the rocker) by wide (across)
// on it, with no corner lower than least, all measured square to the top edge there. The error is a [*SizeError].
//
// With the leg's direction (a, s, z) along the top edge, square to it and outwards, the upper
// face is the plane a·t + s·h + z·w = s·Middle, so a way t along lowers it by t·a/s.
func (s Standing) Block(long, wide, least float64) (Block, error) {
	if err := cmp.Or(above("the length of a block", long), above("the width of a block", wide), notBelow("the least height of a block", least)); err != nil {
		return Block{}, err
	}
	if bad := max(math.Abs(s.Cut), math.Abs(s.Across)); !(bad < math.Pi/2) {
		return Block{}, &SizeError{"the angle of a leg to its rocker", bad, "less than 90 degrees from square"}
	}
	along, inward := math.Tan(s.Cut)*long/2, math.Tan(s.Across)*wide/2
	middle := least + math.Abs(along) + math.Abs(inward)
	b := Block{Side: s.Cut, Across: s.Across, Middle: middle,
		NoseInner: middle - along - inward, NoseOuter: middle - along + inward,
		TailInner: middle + along - inward, TailOuter: middle + along + inward,
		Shorter: middle * math.Cos(s.Tilt)}
	if radius := math.Abs(s.Radius); !math.IsInf(radius, 0) {
		if long/2 >= radius {
			return Block{}, &SizeError{"the length of a block", long, "less than two radii of the top edge"}
		}
		b.Bow = radius - math.Sqrt((radius-long/2)*(radius+long/2))
	}
	return b, nil
}
