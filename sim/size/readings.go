package size

import (
	"math"

	"rockerwright/sim"
	"rockerwright/sim/check"
)

// A Quantity is one thing that is read of a piece: what a maker feels and what keeps it up.
type Quantity int

const (
	FallAtEase    Quantity = iota // of the seat, the owner at ease, rad
	FallEmpty                     // of the seat, nobody in it, rad
	Time                          // of one rock, the owner at ease, s
	Effort                        // push for one degree, the owner at ease, N
	BackMargin                    // before going back, the owner at ease, rad
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
	list[FallAtEase] = fall(seated)
	if seated.Balance.Outcome == sim.Rocks {
		list[Time], list[Effort], list[ForwardMargin] = seated.Balance.Period, seated.EffortBack, seated.Forward.Angle
	}
	if l := r.Leaning(); l.Balance.Outcome == sim.Rocks {
		list[BackMargin], list[BackLift] = l.Back.Angle, l.Back.Lift
	}
	return list
}

// A Feel is how a piece rocks with its owner at ease: what makers want to keep.
type Feel struct {
	Load       *check.Load
	Radius     float64 // of the floor edge at the rest, m
	Height     float64 // H, of the balance point over the floor at the rest, m
	Gyration   float64 // k, m
	Steadiness float64 // arc centre above the balance point, R − H on a level floor, m
	Period     float64 // of a small rock there and back, s

	across float64 // H′, m
	floor  sim.Floor
}

// FeelOf returns the feel of the first load with a person, or of the piece alone where nobody
// sits in it; ok is false where that does not rock, or rests on a flat.
func FeelOf(r check.Balanced) (f Feel, ok bool) {
	l := r.Seated()
	b := l.Balance
	if b.Outcome != sim.Rocks || math.IsNaN(b.Period) {
		return Feel{Load: l}, false
	}
	f = Feel{
		Load: l, Height: b.Rest.Height, Gyration: math.Sqrt(l.Rig.Body.Inertia / l.Rig.Body.Mass),
		Steadiness: b.Steadiness, Period: b.Period, floor: l.Rig.Floor,
	}
	f.across = f.Height * math.Tan(f.floor.Slope) // at rest the righting arm is zero
	f.Radius = f.radiusFor(f.Steadiness)
	return f, true
}

// radiusFor returns the radius at the rest that gives a steadiness Z′ = (ρ − H)cos α − H′ sin α, m.
func (f Feel) radiusFor(steadiness float64) float64 {
	return f.Height + (steadiness+f.across*math.Sin(f.floor.Slope))/math.Cos(f.floor.Slope)
}

// RadiusForPeriod returns the radius at the rest on which a small rock takes the time T
// (s), with the height and gyration there; on a level floor R = H + (k² + H²)(2π/T)²/g, m.
func (f Feel) RadiusForPeriod(period float64) float64 {
	w := 2 * math.Pi / period
	square := f.Gyration*f.Gyration + f.Height*f.Height + f.across*f.across
	return f.radiusFor(square * w * w / f.floor.FreeFall())
}
