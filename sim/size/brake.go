package size

import (
	"math"

	"rockerwright/sim"
)

// How a brake is laid: the flatter arc begins so far behind the hindmost rest, and is so much
// flatter. Our judgement: near enough to be felt on a deep rock, far enough that nobody rests
// on the joint.
const (
	brakeBehind  = 3 * math.Pi / 180
	brakeFlatter = 1.6
)

// flatterTail returns the shape of one arc with a flatter one behind, as a brake: the joint
// lies a little behind the rest of who leans furthest back, and the ends stay as long. ok is
// false where the tail does not reach so far.
func (q *question) flatterTail(one shape) (s shape, ok bool) {
	r, ok := q.answer(one)
	if !ok {
		return one, false
	}
	furthest := math.Inf(-1)
	for i := range r.Loads {
		if b := &r.Loads[i].Balance; b.Outcome == sim.Rocks {
			furthest = max(furthest, b.Rest.Tilt-q.design.Floor.Slope)
		}
	}
	joint := one.radii[0] * (max(furthest, 0) + brakeBehind)
	if joint > one.tail-2*leastArc {
		return one, false
	}
	s = one
	s.radii = []float64{one.radii[0], brakeFlatter * one.radii[0]}
	s.joints = []float64{joint}
	return s, true
}
