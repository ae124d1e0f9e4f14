package bench

import (
	"cmp"
	"math"
)

// A NotchJoint is a square leg let into a notch in the edge of the seat, with a rabbet in each
// of two faces of the leg. This is our own definition of it:
//
// The notch goes through the seat from top to bottom and runs Depth into it from the edge. A
// rabbet is cut across two opposite faces of the leg, Rabbet deep and as high as the seat is
// thick, so that a neck of Leg − 2·Rabbet fills the width of the notch, and the wood above and
// below the rabbets stands on the seat and under it.
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
	if err := cmp.Or(above("a leg", n.Leg), above("a seat's thickness", n.Seat), above("a notch's depth", n.Depth), notBelow("a rabbet", n.Rabbet)); err != nil {
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

// TransitionRadius returns the largest radius of the cove by which a leg may flow into the
// seat without cutting below the bottom of its rabbet: a cove that is tangent to the neck and
// turns by an angle (rad, above 0 to π/2) moves R·(1 − cos) sideways, which is all the rabbet
// has. A full quarter, also tangent to the seat, has the radius of the rabbet. Our own
// definition, as that of [NotchJoint]. The error is a [*SizeError].
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
		area, err := n.GlueArea()
		if err != nil {
			return choices, err
		}
		radius, err := TransitionRadius(rabbet, turn)
		if err != nil {
			return choices, err
		}
		choices[i] = RabbetChoice{rabbet, area, radius}
	}
	return choices, nil
}
