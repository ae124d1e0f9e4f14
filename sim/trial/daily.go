package trial

import (
	"math"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"

	"gonum.org/v1/gonum/spatial/r2"
)

// A Use is how likely it is that a piece is treated as in a trial; our judgement.
type Use int

const (
	Daily Use = iota // as everybody does
	Play             // as children do
	Stunt            // as nobody does but on purpose
)

func (u Use) String() string { return [...]string{"every day", "in play", "a stunt"}[u] }

// What is done every day.
const (
	DropsIn  = "drops in"
	Rises    = "rises, empty then"
	LiesBack = "lies back at once"
)

// A Result is what becomes of a piece in one trial.
type Result struct {
	Name    string
	Use     Use
	Outcome sim.Outcome
	Margin  float64 // least angle left to a hilltop, rad
	Lift    float64 // largest share of the lift that was used
	Needs   float64 // |F|/N where the floor let go
	Tilt    float64 // at the end, rad
	Share   float64 // of what was tried with which it ended so: 1, or the least that takes it over where all of it does not
}

// watched is how long a trial is followed at most, s. Nothing grows after it has turned on both sides.
const (
	watched   = 12.0
	bothSides = 2
)

// try follows a load from a start, all of it or the least share of it that takes the piece over: over a flat, which takes
// more of a quick rock than of a slow one, it may go over with less where it comes back from more.
func try(r *check.Report, l *check.Load, name string, use Use, start func(share float64) (sim.Rig, motion.Start)) Result {
	run := func(share float64) motion.Trace {
		rig, from := start(share)
		b := rig.Balance()
		if b.Outcome != sim.Rocks {
			return motion.Trace{Outcome: b.Outcome}
		}
		return motion.Run(rig, b, from, motion.Options{Duration: watched, Turns: bothSides, Losses: r.Losses(l)})
	}
	t, share := run(1), 1.0
	if t.Outcome == sim.Rocks && knocks(r) {
		least, none := motion.Threshold(func(share float64) bool { return run(share).Outcome != sim.Rocks }, 1)
		if !none {
			t, share = run(least), least
		}
	}
	return Result{name, use, t.Outcome, t.Margin, t.Lift, t.Needs, t.Last.Tilt, share}
}

// knocks reports whether a flat lies between the tips.
func knocks(r *check.Report) bool {
	for i := range r.Edge.Bearings() - 1 {
		if r.Edge.Bearing(i).Flat > 0 {
			return true
		}
	}
	return false
}

// from starts a load at a tilt.
func from(l *check.Load, tilt float64) func(float64) (sim.Rig, motion.Start) {
	return func(float64) (sim.Rig, motion.Start) { return l.Rig, motion.Start{Tilt: tilt} }
}

// A deed is what somebody does, on which load it is tried, and how that starts, all of it or a share.
type deed struct {
	name  string
	on    *check.Load
	start func(share float64) (sim.Rig, motion.Start)
}

// daily lists what everybody does with a load that rests with somebody in it, at ease, riding or as plain numbers have it,
// the empty piece having a rest. Into a bed nobody drops.
func daily(r *check.Report, l *check.Load) []deed {
	empty := &r.Loads[0]
	asSat := l.Posture == person.AtEase || l.Posture == person.Riding || l.Posture == person.Unsaid
	if l.Empty || !asSat || !l.Moves() || !empty.Upright() || r.Design.Traits().Bed {
		return nil
	}
	list := []deed{{DropsIn, l, func(share float64) (sim.Rig, motion.Start) {
		return l.Rig, dropped(r.Design, l, empty, share)
	}}}
	if l.Posture != person.AtEase {
		return list
	}
	for i := range r.Loads {
		switch p := &r.Loads[i]; {
		case !p.Upright() || p.Sitter != l.Sitter:
		case p.Posture == person.Rising:
			list = append(list, deed{Rises, empty, from(empty, p.Balance.Rest.Tilt)})
		case p.Posture == person.Upright:
			list = append(list, deed{LiesBack, l, from(l, p.Balance.Rest.Tilt)})
		}
	}
	return list
}

// harmless reports whether a deed cannot take its load over whatever comes: it starts between the hilltops with less energy
// than it takes to reach either, and losses and knocks only take.
func (d deed) harmless() bool {
	rig, s := d.start(1)
	b := rig.Balance()
	if b.Outcome != sim.Rocks {
		return false
	}
	energy := rig.Inertia(s.Tilt)*s.Rate*s.Rate/2 + rig.Body.Mass*rig.Floor.FreeFall()*(rig.Rise(s.Tilt)-rig.Rise(b.Rest.Tilt))
	within := func(m sim.Margin, side float64) bool {
		return !m.Exists() || energy < m.Work && side*(s.Tilt-b.Rest.Tilt) < m.Angle
	}
	return within(b.Back, 1) && within(b.Forward, -1)
}

// wild is how likely it is that somebody rocks a piece as hard as can be: a child does.
func wild(r *check.Report) Use {
	if t := r.Design.Traits(); r.ForAChild() || t.Ridden || t.Bed {
		return Play
	}
	return Stunt
}

// odd tries what children and the reckless do with a load.
func odd(r *check.Report, l *check.Load) []Result {
	use := wild(r)
	if l.Empty {
		use = Play
	}
	slope, last := r.Design.Floor.Slope, r.Edge.Bearings()-1
	list := []Result{
		try(r, l, "from the nose tip", use, from(l, r.Edge.Bearing(0).To+slope)),
		try(r, l, "from the tail tip", use, from(l, r.Edge.Bearing(last).From+slope)),
	}
	for i := range r.Loads {
		if p := &r.Loads[i]; l.Empty && l.Upright() && arrives(p) && p.Upright() {
			list = append(list, arrival(r, p))
		}
	}
	return list
}

// arrives reports whether somebody comes on a load while the piece stands empty: a child on the tail.
func arrives(l *check.Load) bool { return l.Sitter == piece.ChildOnTheTail.String() }

// arrival tries an empty piece at rest when all of a load is on it at once, on a floor that holds whatever comes: on one
// that lets go it may go over too.
func arrival(r *check.Report, l *check.Load) Result {
	empty := &r.Loads[0]
	return try(r, l, "a child arrives on the tail", Play, func(share float64) (sim.Rig, motion.Start) {
		rig := l.Rig
		rig.Floor.Friction = 0
		rig.Body = body.Join(empty.Rig.Body, l.Person.Scaled(share))
		return rig, motion.Start{Tilt: empty.Balance.Rest.Tilt}
	})
}

// DropHeight is from how far over the seat somebody drops in, m; our judgement: 4 in.
const DropHeight = 0.10

// dropped lets the person of a load drop into the resting empty piece from a share of the height: the body changes at
// once, with the angular momentum that the fall brings about the contact.
func dropped(d piece.Design, l, empty *check.Load, share float64) motion.Start {
	tilt := empty.Balance.Rest.Tilt
	rider := l.Rider()
	along, over := l.Rig.Place(rider.Centre, tilt)
	touch, _ := l.Rig.Place(l.Rig.Profile.Contact(tilt-d.Floor.Slope), tilt)
	speed := math.Sqrt(2 * d.StaticFloor().FreeFall() * DropHeight * share)
	who := body.Body{Mass: rider.Mass, Centre: r2.Vec{X: along, Y: over}}
	return motion.Start{Tilt: tilt, Rate: motion.Dropped(who, r2.Vec{X: touch}, speed, l.Rig.Inertia(tilt))}
}
