package size

import (
	"math"

	"rockerwright/sim"
	"rockerwright/sim/check"
)

// A Quantity is one thing that is read of a piece: what a maker feels and what keeps it up.
type Quantity int

const (
	FallSitting   Quantity = iota // of the seat, the owner at ease, rad
	FallEmpty                     // of the seat, nobody in it, rad
	Time                          // of one rock, the owner at ease, s
	Effort                        // push for one degree, the owner at ease, N
	BackMargin                    // before going back, the owner leaning furthest, rad
	BackLift                      // the same, of the weight, m
	ForwardMargin                 // before going forward, the owner at ease, rad
	quantities    int      = iota
)

// quantitySteps are what a maker can just tell of each, SI; our judgement.
var quantitySteps = [quantities]float64{tiltStep, tiltStep, timeStep, 1, 2 * tiltStep, tapeStep, 2 * tiltStep}

// Readings are the quantities of one piece, SI. What there is not is NaN.
type Readings [quantities]float64

var noReadings = Readings{math.NaN(), math.NaN(), math.NaN(), math.NaN(), math.NaN(), math.NaN(), math.NaN()}

// readingsOf reads a balanced piece. Where no seat is drawn, its fall is the tilt at rest.
func readingsOf(r check.Balanced) Readings {
	list := noReadings
	fall := func(l *check.Load) float64 {
		switch {
		case l.Balance.Outcome != sim.Rocks:
			return math.NaN()
		case !r.Design.Seat.SlopeKnown():
			return l.Balance.Rest.Tilt
		}
		return l.SeatFall
	}
	seated := r.Seated()
	list[FallEmpty] = fall(&r.Loads[0])
	list[FallSitting] = fall(seated)
	if seated.Balance.Outcome == sim.Rocks {
		list[Time], list[Effort], list[ForwardMargin] = seated.Balance.Period, seated.EffortBack, seated.Balance.Forward.Angle
	}
	if l := r.Leaning(); l.Balance.Outcome == sim.Rocks {
		list[BackMargin], list[BackLift] = l.Balance.Back.Angle, l.Balance.Back.Lift
	}
	return list
}
