package motion

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim"
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
	Feet Feet
}

// mustFollow panics for what no motion begins with.
func mustFollow(r sim.Rig, b sim.Balance, start Start, o Options) {
	p, f := start.Push, start.Feet
	numbers := 0.0
	for _, x := range [...]float64{start.Tilt, start.Rate, p.Force, p.At.X, p.At.Y, f.Force, f.At, f.Hips.X, f.Hips.Y, f.Ankle, f.Reach} {
		numbers += math.Abs(x)
	}
	switch err := r.Validate(); {
	case err != nil:
		panic(err)
	case b.Outcome != sim.Rocks:
		panic("motion: this balance has no rest to move about, its Outcome is: " + b.Outcome.String())
	case !(numbers < math.Inf(1) && p.Time >= 0):
		panic(fmt.Sprintf("motion: nothing starts with %+v: a tilt, a rate and pushes are finite", start))
	case !(o.Duration >= 0 && o.Losses.Rolling >= 0 && o.Losses.Viscous >= 0 && o.Turns >= 0):
		panic(fmt.Sprintf("motion: nothing is followed with %+v: a time and losses are not below 0", o))
	}
}
