package bench

import (
	"cmp"
	"math"
)

// A NotchJoint is a square leg let into a notch in the edge of the seat, with a rabbet in each
// of two faces of the leg. This is our own definition of it:
//
// The notch goes through the seat from top to bottom and runs Depth into it. A rabbet is cut across two opposite
// faces of the leg, Rabbet deep and as high as the seat is thick, so that a neck of Leg − 2·Rabbet fills the width
// of the notch, and the wood above and below stands on the seat and under it.
type NotchJoint struct {
	Leg, Seat, Depth, Rabbet float64 // the leg's side, the seat's thickness, how far the leg is let in, a rabbet's depth: m
}

// GlueArea returns the area of the glued faces, m²: the back of the notch, its two sides, and
// the four shoulders above and below the rabbets,
//
//	Seat·(Leg − 2·Rabbet) + 2·Seat·Depth + 4·Rabbet·Depth.
//
// The error is a [*SizeError].
func (n NotchJoint) GlueArea() (float64, error) {
	if err := cmp.Or(above("a leg", n.Leg), above("a seat's thickness", n.Seat), above("a notch's depth", n.Depth),
		notBelow("a rabbet", n.Rabbet)); err != nil {
		return 0, err
	}
	switch {
	case n.Depth > n.Leg:
		return 0, &SizeError{"a notch's depth", n.Depth, "no more than the leg"}
	case 2*n.Rabbet >= n.Leg:
		return 0, &SizeError{"a rabbet", n.Rabbet, "less than half of the leg"}
	}
	return n.Seat*(n.Leg-2*n.Rabbet) + 2*n.Seat*n.Depth + 4*n.Rabbet*n.Depth, nil
}

// TransitionRadius returns the largest radius of the cove by which a leg may flow into the seat without cutting
// below its rabbet: tangent to the neck and turning by an angle (rad, above 0 to π/2) it moves R·(1 − cos)
// sideways, which is all the rabbet has. A full quarter, also tangent to the seat, has the radius of the rabbet.
// Our own definition, as that of [NotchJoint]. The error is a [*SizeError].
func TransitionRadius(rabbet, turn float64) (float64, error) {
	if err := above("a rabbet", rabbet); err != nil {
		return 0, err
	}
	if !(turn > 0 && turn <= math.Pi/2) {
		return 0, &SizeError{"the turn of a cove", turn, "more than 0 and up to 90 degrees"}
	}
	return rabbet / (1 - math.Cos(turn)), nil
}

// A RabbetChoice is what one depth of rabbet gives.
type RabbetChoice struct {
	Rabbet     float64 // m
	GlueArea   float64 // m²
	Transition float64 // the largest radius of a cove, m
}

// RabbetChoices returns the joint with rabbets of 1/4 in and of 1/2 in, for a cove that turns
// by the given angle, rad. The error is a [*SizeError].
func (n NotchJoint) RabbetChoices(turn float64) ([2]RabbetChoice, error) {
	var choices [2]RabbetChoice
	for i, rabbet := range []float64{inch / 4, inch / 2} {
		n.Rabbet = rabbet
		area, badJoint := n.GlueArea()
		radius, badCove := TransitionRadius(rabbet, turn)
		if err := cmp.Or(badJoint, badCove); err != nil {
			return choices, err
		}
		choices[i] = RabbetChoice{rabbet, area, radius}
	}
	return choices, nil
}

// A Block is the adder block between a leg and its rocker: a wedge that carries the angle, so that the leg is sawn
// square. Its underside lies along the top edge, its upper face square to the leg.
type Block struct {
	// Heights of the four corners over the tangent of the top edge at the leg, square to it, m. Inner is
	// towards the middle of the chair.
	NoseInner, NoseOuter, TailInner, TailOuter float64

	Shorter float64 // by how much the centre line of the leg is shorter than to the top edge, m
	Bow     float64 // how far the top edge stands off its tangent at nose and tail end of the block, m: its underside is that much rounder
}

// Block returns the block for a leg that takes up long (m, along the rocker) by wide (across)
// on it, with no corner lower than least, all measured square to the top edge there. The error is a [*SizeError].
//
// With the leg's direction (a, s, z) along the top edge, square to it and outwards, the upper
// face is the plane a·t + s·h + z·w = s·middle, so t further along it is lower by t·a/s.
func (s Standing) Block(long, wide, least float64) (Block, error) {
	if err := cmp.Or(above("the length of a block", long), above("the width of a block", wide),
		notBelow("the least height of a block", least)); err != nil {
		return Block{}, err
	}
	if bad := max(math.Abs(s.Cut), math.Abs(s.Across)); !(bad < math.Pi/2) {
		return Block{}, &SizeError{"the angle of a leg to its rocker", bad, "less than 90 degrees from square"}
	}
	along, inward := math.Tan(s.Cut)*long/2, math.Tan(s.Across)*wide/2
	middle := least + math.Abs(along) + math.Abs(inward)
	b := Block{
		NoseInner: middle - along - inward, NoseOuter: middle - along + inward,
		TailInner: middle + along - inward, TailOuter: middle + along + inward,
		Shorter: middle * math.Cos(s.Tilt),
	}
	if radius := math.Abs(s.Radius); !math.IsInf(radius, 0) {
		if long/2 >= radius {
			return Block{}, &SizeError{"the length of a block", long, "less than two radii of the top edge"}
		}
		b.Bow = radius - math.Sqrt((radius-long/2)*(radius+long/2))
	}
	return b, nil
}
