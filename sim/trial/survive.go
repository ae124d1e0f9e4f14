package trial

import (
	"cmp"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
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

// A Result is what becomes of a piece in one trial.
type Result struct {
	Name    string
	Outcome sim.Outcome
	Margin  float64 // least angle left to a hilltop, rad
	Lift    float64 // largest share of the lift that was used
	Needs   float64 // |F|/N where the floor let go
	Tilt    float64 // at the end, rad
}

// watched is how long a trial is followed, s: a few rocks, after which nothing grows.
const watched = 12.0

// survival tries a load that has a rest.
func survival(r *check.Report, l *check.Load) Survival {
	d, empty := r.Design, &r.Loads[0]
	s := Survival{Load: l.Name, Shove: math.NaN(), Speed: math.NaN()}
	s.Back, s.Forward = l.Rig.LargestRelease(l.Balance)
	rest := l.Balance.Rest.Tilt
	if top, known := d.TopOfBack(); known && l.Balance.Back.Exists() {
		at := r.Placed(top)
		s.Shove, s.ShoveNone, s.EndedBy = shove(d, l, at)
		rate, _ := l.Rig.LargestRate(l.Balance)
		s.Speed = rate * r2.Norm(r2.Sub(at, r.Edge.Contact(rest-d.Floor.Slope)))
	}
	try := func(name string, l *check.Load, start motion.Start) {
		t := motion.Run(l.Rig, l.Balance, start, motion.Options{Duration: watched, Losses: losses(d, l)})
		s.Trials = append(s.Trials, Result{name, t.Outcome, t.Margin, t.Lift, t.Needs, t.Last.Tilt})
	}
	become := func(name string, from, to *check.Load) { // at once, from rest: there is no rate to keep
		try(name, to, motion.Start{Tilt: from.Balance.Rest.Tilt})
	}
	try("from the nose tip", l, motion.Start{Tilt: r.Edge.Bearing(0).To + d.Floor.Slope})
	try("from the tail tip", l, motion.Start{Tilt: r.Edge.Bearing(r.Edge.Bearings()-1).From + d.Floor.Slope})
	if !l.Empty && empty.Upright() {
		try("drops in", l, dropped(d, l, empty))
	}
	reclined := l.Posture == person.AtEase
	for i := range r.Loads {
		switch p := &r.Loads[i]; {
		case !p.Upright():
		case l.Empty && arrives(p):
			become("a child arrives on the tail", l, p)
		case l.Empty || !empty.Upright() || !reclined || p.Sitter != l.Sitter:
		case p.Posture == person.Rising:
			become("rises, empty then", p, empty)
		case p.Posture == person.AtEase && l.Posture == person.Upright:
			become("lies back at once", l, p)
		}
	}
	return s
}

// arrives reports whether somebody comes on a load while the piece stands empty: a child on the tail.
func arrives(l *check.Load) bool { return l.Sitter == piece.ChildOnTheTail.String() }

// arrival returns what becomes of an empty piece at rest when all of a load is on it at once.
func arrival(d piece.Design, empty, l *check.Load) sim.Outcome {
	return motion.Run(l.Rig, l.Balance, motion.Start{Tilt: empty.Balance.Rest.Tilt},
		motion.Options{Duration: watched, Losses: losses(d, l)}).Outcome
}

// shove finds the least force at a point, for ShoveTime, after which a load goes over, either way, or the floor
// lets go, and what ends it. It looks up to three times the force of that impulse, by the rate at the rest.
func shove(d piece.Design, l *check.Load, at r2.Vec) (force float64, none bool, endedBy string) {
	rate, _ := l.Rig.LargestRate(l.Balance)
	_, height := l.Rig.Place(at, l.Balance.Rest.Tilt)
	if height <= 0 || math.IsInf(rate, 1) {
		return math.NaN(), true, ""
	}
	inertia := 2 * l.Balance.Back.Work / (rate * rate)
	most := 3 * inertia * rate / (ShoveTime * height)
	options := motion.Options{Duration: ShoveTime + 2*cmp.Or(l.Balance.Period, 2), Losses: losses(d, l)}
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

// DropHeight is from how far over the seat somebody drops in, m; our judgement: 4 in.
const DropHeight = 0.10

// dropped lets the person of a load drop into the resting empty piece: the body changes at
// once, with the angular momentum that the fall brings about the contact.
func dropped(d piece.Design, l, empty *check.Load) motion.Start {
	tilt := empty.Balance.Rest.Tilt
	rider := l.Rider()
	along, over := l.Rig.Place(rider.Centre, tilt)
	touch, _ := l.Rig.Place(l.Rig.Profile.Contact(tilt-d.Floor.Slope), tilt)
	speed := math.Sqrt(2 * d.StaticFloor().FreeFall() * DropHeight)
	who := body.Body{Mass: rider.Mass, Centre: r2.Vec{X: along, Y: over}}
	return motion.Start{Tilt: tilt, Rate: motion.Dropped(who, r2.Vec{X: touch}, speed, l.Rig.Inertia(tilt))}
}

// losses returns what a rock of a load loses on the design's floor.
func losses(d piece.Design, l *check.Load) motion.Losses {
	losses := motion.Losses{Rolling: cmp.Or(d.Floor.Rolling, piece.GroundOf(d.Floor.Surface).Rolling), Viscous: d.Floor.Viscous}
	if d.Floor.Halves > 0 && d.Floor.Viscous == 0 && !math.IsNaN(l.Balance.Period) { // on a flat no small rock halves
		losses.Viscous = motion.HalvesIn(l.Rig, l.Balance, d.Floor.Halves)
	}
	return losses
}
