package trial

import (
	"cmp"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
)

// A Survival is what one load comes back from. Angles are from its rest.
type Survival struct {
	Load          string
	Back, Forward float64 // largest releases without losses, rad
	Shove         float64 // least force to the rear at the top of the back for ShoveTime after which it goes over, either way, or the floor lets go, N; NaN without a back
	ShoveNone     bool    // none does, up to Shove
	EndedBy       string  // what ends that shove: goes over backwards, floor lets go, lifts off; "" where none does
	Speed         float64 // least speed of the top of the back, to the rear, that takes it over backwards, without losses, m/s
	Fates         []Fate  // what becomes of it in other trials
}

// ShoveTime is how long a shove lasts, s; our judgement.
const ShoveTime = 0.3

// A Fate is what becomes of a piece in one trial.
type Fate struct {
	Name     string
	Outcome  sim.Outcome
	Margin   float64 // least angle left to a hilltop, rad
	Lift     float64 // largest share of the lift that was used
	Friction float64 // the largest |F|/N
	Needs    float64 // |F|/N where the floor let go
	Tilt     float64 // at the end, rad
}

// watched is how long a trial is followed, s: a few rocks, after which nothing grows.
const watched = 12.0

// fate follows a trial.
func fate(d piece.Design, name string, l *check.Load, start motion.Start) Fate {
	t := motion.Run(l.Rig, l.Balance, start, motion.Options{Duration: watched, Losses: losses(d, l)})
	return Fate{name, t.Outcome, t.Margin, t.Lift, t.Friction, t.Needs, t.Last.Tilt}
}

// survival tries a load that has a rest. empty is the piece alone.
func survival(d piece.Design, l, empty *check.Load, edge rocker.Profile, loads []check.Load) Survival {
	s := Survival{Load: l.Name, Shove: math.NaN(), Speed: math.NaN()}
	s.Back, s.Forward = l.Rig.LargestRelease(l.Balance)
	rest := l.Balance.Rest.Tilt
	if top, known := d.TopOfBack(); known && l.Balance.Back.Exists() {
		at := d.Carry(edge).Point(top)
		s.Shove, s.ShoveNone, s.EndedBy = shove(d, l, at)
		rate, _ := l.Rig.LargestRate(l.Balance)
		s.Speed = rate * r2.Norm(r2.Sub(at, edge.Contact(rest-d.Floor.Slope)))
	}
	nose, tail := edge.Bearing(0).To+d.Floor.Slope, edge.Bearing(edge.Bearings()-1).From+d.Floor.Slope
	s.Fates = append(s.Fates,
		fate(d, "from the nose tip", l, motion.Start{Tilt: nose}),
		fate(d, "from the tail tip", l, motion.Start{Tilt: tail}))
	if l.Empty {
		for i := range loads {
			if child := &loads[i]; child.Sitter == piece.ChildOnTheTail.String() && child.Upright() {
				s.Fates = append(s.Fates, changed(d, "a child arrives on the tail", l, child))
			}
		}
		return s
	}
	if !empty.Upright() {
		return s
	}
	s.Fates = append(s.Fates, dropped(d, l, empty))
	if l.Posture == person.LyingBack || l.Posture == person.Sitting {
		for i := range loads {
			p := &loads[i]
			switch {
			case p.Sitter != l.Sitter || !p.Upright():
			case p.Posture == person.Perched:
				s.Fates = append(s.Fates,
					changed(d, "sits up to rise", l, p),
					changed(d, "rises, empty then", p, empty))
			case p.Posture == person.LyingBack && l.Posture == person.Sitting:
				s.Fates = append(s.Fates, changed(d, "lies back at once", l, p))
			}
		}
	}
	return s
}

// shove finds the least force at a point, for ShoveTime, after which a load goes over,
// either way, or the floor lets go, and what ends it. It looks up to three times the force whose impulse
// alone would, by the rate at the rest.
func shove(d piece.Design, l *check.Load, at r2.Vec) (force float64, none bool, endedBy string) {
	rate, _ := l.Rig.LargestRate(l.Balance)
	_, height := l.Rig.Place(at, l.Balance.Rest.Tilt)
	if height <= 0 || math.IsInf(rate, 1) {
		return math.NaN(), true, ""
	}
	work := l.Balance.Back.Work
	inertia := 2 * work / (rate * rate)
	most := 3 * inertia * rate / (ShoveTime * height)
	options := motion.Options{Duration: ShoveTime + 2*cmp.Or(l.Balance.Period, 2), Losses: losses(d, l)}
	if math.IsNaN(options.Duration) {
		options.Duration = watched
	}
	pushed := func(force float64) motion.Trace {
		start := motion.Start{Tilt: l.Balance.Rest.Tilt, Push: motion.Push{At: at, Force: force, Time: ShoveTime}}
		return motion.Run(l.Rig, l.Balance, start, options)
	}
	force, none = motion.Hardest(func(force float64) bool {
		trace := pushed(force)
		return trace.EndedBy() != ""
	}, most)
	if !none {
		trace := pushed(force)
		endedBy = trace.EndedBy()
	}
	return force, none, endedBy
}

// DropHeight is from how far over the seat somebody drops in, m; our judgement: 4 in.
const DropHeight = 0.10

// dropped lets the person of a load drop into the resting empty piece: the body changes at
// once, with the angular momentum that the fall brings about the contact.
func dropped(d piece.Design, l, empty *check.Load) Fate {
	tilt := empty.Balance.Rest.Tilt
	along, over := l.Rig.Place(l.Person.Centre, tilt)
	touch, _ := l.Rig.Place(l.Rig.Profile.Contact(tilt-d.Floor.Slope), tilt)
	speed := math.Sqrt(2 * d.StaticFloor().FreeFall() * DropHeight)
	who := body.Body{Mass: l.Person.Mass, Centre: r2.Vec{X: along, Y: over}}
	rate := motion.Dropped(who, r2.Vec{X: touch}, speed, l.Rig.Inertia(tilt))
	return fate(d, "drops in", l, motion.Start{Tilt: tilt, Rate: rate})
}

// changed lets a load at rest become another at once.
func changed(d piece.Design, name string, from, to *check.Load) Fate {
	tilt := from.Balance.Rest.Tilt
	return fate(d, name, to, motion.Start{Tilt: tilt, Rate: motion.Handed(0, from.Rig.Inertia(tilt), to.Rig.Inertia(tilt))})
}
