package sim

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// A Room is the floor that a point of the piece sweeps over, from where the low point
// touches as drawn: how far it comes forward and back, and how low it comes, m.
type Room struct {
	Forward, Back float64 // forward of that place, and behind it (both may be below zero)
	Lowest        float64 // over the floor
}

// Place returns where a point of the piece is at a tilt: along the floor, forward from
// where the low point touched as drawn, and over the floor, m.
func (r Rig) Place(q r2.Vec, tilt float64) (along, over float64) {
	b, roll := touching(r.Profile, tilt-r.Floor.Slope)
	height, ahead, _ := b.Above(q, roll)
	return ahead - b.RolledAt(roll), height
}

// Sweep returns the room that points of the piece need while it rocks between two tilts (rad),
// infinitely little for no points. Each is looked at each quarter of a degree and at both ends,
// which misses a thousandth of a millimetre of the most. It panics for a tilt that is not finite.
func (r Rig) Sweep(from, to float64, points ...r2.Vec) Room {
	if !(math.Abs(to-from) < math.Inf(1)) {
		panic(fmt.Sprintf("sim: nothing rocks between tilts of %g and %g rad", from, to))
	}
	room := Room{math.Inf(-1), math.Inf(-1), math.Inf(1)}
	steps := 1 + int(math.Ceil(math.Abs(to-from)/(0.25*math.Pi/180)))
	for i := 0; i <= steps; i++ {
		tilt := from + (to-from)*float64(i)/float64(steps)
		for _, q := range points {
			along, over := r.Place(q, tilt)
			room.Forward, room.Back, room.Lowest = max(room.Forward, along), max(room.Back, -along), min(room.Lowest, over)
		}
	}
	return room
}
