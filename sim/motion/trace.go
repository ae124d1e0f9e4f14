package motion

import (
	"math"

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
)

var kinds = [...]string{"turns", "joint", "knock", "push ends", "settles", "goes over", "floor lets go"}

// String returns the kind in a word or two.
func (k Kind) String() string { return kinds[k] }

// An Event is one instant of a motion.
type Event struct {
	Kind Kind
	Time float64 // s
	Tilt float64 // rad, against the vertical
	Rate float64 // rad/s; after a knock
}

// An End is why a run ended.
type End int

const (
	TimeUp       End = iota // the duration is over
	AtRest                  // it settled
	WentOver                // it passed the last hilltop
	Slipped                 // the floor let go
	TooManySteps            // more steps than allowed
)

var ends = [...]string{"time is up", "it settled", "it went over", "the floor let go", "too many steps"}

func (e End) String() string { return ends[e] }

// A step is one stretch of a motion on one arc.
type step struct {
	start, span float64 // s
	roll        float64 // at the start, rad
	turn, rate  series
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
	steps []step
}

// A State is the rig at one instant.
type State struct {
	Time, Tilt, Rate float64
}

// At returns the tilt (rad) and the rate (rad/s) at a time within the run, the last ones
// beyond it. Without Keep only the last are known.
func (t *Trace) At(time float64) State {
	low, high := 0, len(t.steps)
	for low < high { // the first step that ends at or after time
		middle := (low + high) / 2
		if s := &t.steps[middle]; s.start+s.span < time {
			low = middle + 1
		} else {
			high = middle
		}
	}
	if low == len(t.steps) {
		return State{time, t.Last.Tilt, t.Last.Rate}
	}
	s := &t.steps[low]
	within := math.Max(0, time-s.start)
	return State{time, s.roll + s.turn.at(within) + t.slope, s.rate.at(within)}
}
