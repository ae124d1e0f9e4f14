package trial

import (
	"cmp"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/check"
	"rockerwright/sim/motion"
)

// A Survival is what one load comes back from. Angles are from its rest.
type Survival struct {
	Load          string
	Back, Forward float64  // largest releases without losses, rad
	Shove         float64  // least force to the rear at the top of the back for ShoveTime that ends its rocking, N; NaN without a back
	ShoveNone     bool     // none does, up to Shove
	EndedBy       string   // how that shove ends it: it goes over, either way, the floor lets go, it lifts off; "" where none does
	Speed         float64  // least speed of the top of the back, to the rear, that takes it over backwards, without losses, m/s
	Trials        []Result // what becomes of it in other trials
}

// ShoveTime is how long a shove lasts, s; our judgement.
const ShoveTime = 0.3

// survival tries a load that has a rest.
func survival(r *check.Report, l *check.Load) Survival {
	s := Survival{Load: l.Name, Shove: math.NaN(), Speed: math.NaN()}
	s.Back, s.Forward = l.Rig.LargestRelease(l.Balance)
	rest := l.Balance.Rest.Tilt
	if top, known := r.Design.TopOfBack(); known && l.Balance.Back.Exists() {
		at := r.Placed(top)
		s.Shove, s.ShoveNone, s.EndedBy = shove(r, l, at)
		rate, _ := l.Rig.LargestRate(l.Balance)
		s.Speed = rate * r2.Norm(r2.Sub(at, r.Edge.Contact(rest-r.Design.Floor.Slope)))
	}
	for _, d := range daily(r, l) {
		s.Trials = append(s.Trials, try(r, d.on, d.name, Daily, d.start))
	}
	s.Trials = append(s.Trials, odd(r, l)...)
	return s
}

// shove finds the least force at a point, for ShoveTime, after which a load goes over, either way, or the floor
// lets go, and what ends it. It looks up to three times the force of that impulse, by the rate at the rest.
func shove(r *check.Report, l *check.Load, at r2.Vec) (force float64, none bool, endedBy string) {
	rate, _ := l.Rig.LargestRate(l.Balance)
	_, height := l.Rig.Place(at, l.Balance.Rest.Tilt)
	if height <= 0 || math.IsInf(rate, 1) {
		return math.NaN(), true, ""
	}
	inertia := 2 * l.Balance.Back.Work / (rate * rate)
	most := 3 * inertia * rate / (ShoveTime * height)
	options := motion.Options{Duration: ShoveTime + 2*cmp.Or(l.Balance.Period, 2), Losses: r.Losses(l)}
	if math.IsNaN(options.Duration) {
		options.Duration = watched
	}
	pushed := func(force float64) (endedBy string) {
		start := motion.Start{Tilt: l.Balance.Rest.Tilt, Push: motion.Push{At: at, Force: force, Time: ShoveTime}}
		trace := motion.Run(l.Rig, l.Balance, start, options)
		return trace.EndedBy()
	}
	if force, none = motion.Threshold(func(force float64) bool { return pushed(force) != "" }, most); none {
		return force, true, ""
	}
	return force, false, pushed(force)
}
