package motion

import (
	"math"
	"sort"

	"rockerwright/sim"
)

// A Kind is what happens at an event.
type Kind int

const (
	Turns   Kind = iota // the rate is zero
	Joint               // the contact passes to the next arc or tip
	Knock               // the contact jumps over a flat
	PushEnd             // the push ends
	Settles             // it stays where it is
	Over                // it passes the last hilltop
	LetsGo              // the floor cannot hold the contact
	FeetEnd             // the feet stop pushing
)

// String returns the kind in a word or two.
func (k Kind) String() string {
	return [...]string{"turns", "joint", "knock", "push ends", "settles", "goes over", "floor lets go", "feet stop"}[k]
}

// An Event is one instant of a motion.
type Event struct {
	Kind  Kind
	State // after a knock
}

// An End is why a run ended.
type End int

const (
	TimeUp       End = iota // the duration is over
	AtRest                  // it settled
	WentOver                // it passed the last hilltop
	Slipped                 // the floor let go
	TooManySteps            // more steps than allowed
	Turned                  // it turned, and was followed to there
)

func (e End) String() string {
	return [...]string{"time is up", "it settled", "it went over", "the floor let go", "too many steps", "it turned"}[e]
}

// LiftsOff reports whether the floor let go because it would have had to pull the rocker down.
func (t *Trace) LiftsOff() bool { return t.End == Slipped && math.IsInf(t.Needs, 1) }

// EndedBy says in a word or two what ended a motion that did not last: it goes over, the floor lets go, the
// rocker lifts off; "" where it lasted or came to rest.
func (t *Trace) EndedBy() string {
	switch {
	case t.LiftsOff():
		return "lifts off"
	case t.End == Slipped, t.End == WentOver:
		return t.Outcome.String()
	}
	return ""
}

// A step is one stretch of a motion on one arc.
type step struct {
	start, span float64 // s
	roll        float64 // at the start, rad
	flight
}

// A Trace is a motion.
type Trace struct {
	Outcome  sim.Outcome // Rocks where it is still rocking, or has settled in its rest
	End      End
	Duration float64 // how long it was followed, s
	Events   []Event
	Steps    int     // taken
	Friction float64 // the largest |F|/N, knocks included
	Needs    float64 // |F|/N where the floor let go; infinite where it would have to pull
	Margin   float64 // least angle that was left to a hilltop, rad; 0 where it went over
	Lift     float64 // largest share of the lift that was used; 1 or more where it went over
	Last     State   // at the end

	slope float64
	push  Push
	feet  float64 // force of feet that push until FeetEnd, N
	steps []step
}

// A State is the rig at one instant.
type State struct {
	Time float64 // s
	Tilt float64 // rad, against the vertical
	Rate float64 // rad/s
}

// find returns the step of a time, the first that ends at or after it; nil beyond the run.
func (t *Trace) find(time float64) *step {
	i := sort.Search(len(t.steps), func(i int) bool { return !(t.steps[i].start+t.steps[i].span < time) })
	if i == len(t.steps) {
		return nil
	}
	return &t.steps[i]
}

// At returns the tilt (rad) and the rate (rad/s) at a time within the run, the last ones
// beyond it. Without Keep only the last are known.
func (t *Trace) At(time float64) State {
	s := t.find(time)
	if s == nil {
		return State{time, t.Last.Tilt, t.Last.Rate}
	}
	within := math.Max(0, time-s.start)
	return State{time, s.roll + s.turn.at(within) + t.slope, s.rate.at(within)}
}

// A Look is the rig at one instant, with its energy and what the floor gives it.
type Look struct {
	State
	Energy  float64 // ½·J·φ̇² + m·g·(rise over the rest), J
	Forward float64 // of the floor on the piece, along it, N
	Up      float64 // square to it, N
}

// Look returns the rig at a time. ground is the rise of the rest, by [sim.Rig.Rise].
func (t *Trace) Look(r sim.Rig, ground, time float64) Look {
	look := Look{State: t.At(time)}
	speeding := 0.0
	if s := t.find(time); s != nil {
		speeding = s.speeding.at(math.Max(0, time-s.start))
	}
	g := r.Floor.FreeFall()
	sin, cos := math.Sincos(r.Floor.Slope)
	roll := look.Tilt - r.Floor.Slope
	i, within := r.Profile.Find(roll)
	height, ahead, curve := r.Profile.Bearing(i).Above(r.Body.Centre, within)
	square := look.Rate * look.Rate
	m := r.Body.Mass
	look.Energy = 0.5*r.Inertia(look.Tilt)*square + m*g*(r.Rise(look.Tilt)-ground)
	look.Forward = m * (g*sin - height*speeding - ahead*square)
	look.Up = m * (g*cos + ahead*speeding + curve*square)
	if time < t.push.Time {
		look.Forward += t.push.Force
	}
	if t.feet != 0 && time < t.trodden() {
		look.Up -= t.feet
	}
	return look
}

// trodden returns until when feet pushed, s.
func (t *Trace) trodden() float64 {
	for _, e := range t.Events {
		if e.Kind == FeetEnd {
			return e.Time
		}
	}
	return t.Duration
}
