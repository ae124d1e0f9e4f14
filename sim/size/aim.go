package size

import (
	"math"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// An Aim is one thing that a design is sized for.
type Aim int

const (
	OneRock Aim = iota
	SeatFalls
	BackLeans
	SeatFallsEmpty
	LargestTilt // at which it stands on its tips, on either side

	KeepsLimit // from here on what must hold, before anything is aimed for
	Longest
	StockWidth
	StockLength
	SmallestRadius
	OffJoints // the owner at ease rests on one arc, with room to rock on it
	Sensible  // radii and lengths that a rocker can have at all
)

// A Miss is how an aim came out.
type Miss struct {
	Aim       Aim
	Want, Got float64     // SI; Got is NaN where there is none
	Limit     check.Limit // of KeepsLimit
	Steps     float64     // how far it is missed, in steps that a maker reads; below zero what is to spare
}

// Met reports whether the aim is met as far as a maker can read it.
func (m Miss) Met() bool {
	if m.must() {
		return m.Steps <= 1e-6
	}
	return math.Abs(m.Steps) <= 0.5
}

// must reports whether the aim comes before all that are only aimed for.
func (m Miss) must() bool { return m.Aim >= KeepsLimit }

// A step of each kind is what a maker can just tell: our judgement.
const (
	timeStep = 0.05
	tiltStep = 0.5 * math.Pi / 180
	tapeStep = inch / 8
	noAnswer = 100               // steps missed where there is nothing to measure
	leastArc = 0.02              // m, of the length of one of several arcs
	offJoint = 2 * math.Pi / 180 // from a rest to the next arc; nearer small rocks and large ones differ
)

// misses returns how each aim comes out, those of the target first and then what must hold.
func misses(target piece.Target, r check.Balanced) []Miss {
	list := make([]Miss, 0, len(r.Limits)+4)
	list = append(append(list, wished(target, r)...), tipped(target, r)...)
	for _, l := range r.Limits {
		list = append(list, missOf(l))
	}
	list = append(list, fits(target, r)...)
	if len(r.Design.Rocker.Arcs) > 1 {
		list = append(list, offJoints(r))
	}
	return list
}

// offJoints returns how near the owner at ease rests to a joint of two arcs. Half of each rock is
// on either arc there, and its time hangs on how far it goes.
func offJoints(r check.Balanced) Miss {
	m := Miss{Aim: OffJoints, Want: offJoint, Got: math.NaN(), Steps: noAnswer}
	b := r.Seated().Balance
	if b.Outcome != sim.Rocks {
		return m
	}
	roll := b.Rest.Tilt - r.Design.Floor.Slope
	m.Got = math.Inf(1)
	for i := 1; i < r.Edge.Bearings()-2; i++ { // joints between arcs; tips are no joints
		m.Got = min(m.Got, math.Abs(r.Edge.Bearing(i).To-roll))
	}
	m.Steps = (offJoint - m.Got) / tiltStep
	return m
}

// wished returns the aims for the rest and the rock.
func wished(target piece.Target, r check.Balanced) []Miss {
	var list []Miss
	aim := func(aim Aim, step, want, got float64) {
		m := Miss{Aim: aim, Want: want, Got: got, Steps: (got - want) / step}
		if math.IsNaN(got) {
			m.Steps = noAnswer
		}
		list = append(list, m)
	}
	seated, empty := r.Seated(), &r.Loads[0]
	if target.OneRock > 0 {
		aim(OneRock, timeStep, target.OneRock, seated.Balance.Period)
	}
	if target.SeatFalls.Asked {
		aim(SeatFalls, tiltStep, target.SeatFalls.Value, seated.SeatFall)
	}
	if target.BackLeans.Asked {
		aim(BackLeans, tiltStep, target.BackLeans.Value, seated.BackRecline)
	}
	if target.Empty.Asked {
		aim(SeatFallsEmpty, tiltStep, target.Empty.Value, empty.SeatFall)
	}
	return list
}

// tipped returns the aims for the tilts at which the piece stands on its tips.
func tipped(target piece.Target, r check.Balanced) []Miss {
	if target.LargestTilt <= 0 {
		return nil
	}
	nose, tail := -r.Edge.Bearing(0).To, r.Edge.Bearing(r.Edge.Bearings()-1).From
	var list []Miss
	for _, tilt := range []float64{nose, tail} {
		list = append(list, Miss{Aim: LargestTilt, Want: target.LargestTilt, Got: tilt, Steps: (tilt - target.LargestTilt) / tiltStep})
	}
	return list
}

// missOf returns how one limit comes out.
func missOf(l check.Limit) Miss {
	m := Miss{Aim: KeepsLimit, Limit: l, Want: l.AtLeast, Got: l.Got}
	step := tiltStep
	if l.Kind == quantity.Length {
		step = tapeStep
	}
	switch {
	case math.IsNaN(l.Got), l.Name == "rest" && !l.Holds:
		m.Steps = noAnswer
	case !math.IsNaN(l.AtMost):
		m.Want, m.Steps = l.AtMost, (l.Got-l.AtMost)/step
	default:
		m.Steps = (l.AtLeast - l.Got) / step
	}
	return m
}

// fits returns whether the rocker can be made of what the maker has.
func fits(target piece.Target, r check.Balanced) []Miss {
	var list []Miss
	most := func(aim Aim, want, got float64) {
		if want <= 0 {
			return
		}
		m := Miss{Aim: aim, Want: want, Got: got, Steps: (got - want) / tapeStep}
		if math.IsNaN(got) {
			m.Steps = noAnswer
		}
		list = append(list, m)
	}
	most(Longest, target.Longest, r.Tape.TipToTip)
	if target.StockWidth > 0 || target.StockLength > 0 {
		length, width := blank(r)
		most(StockWidth, target.StockWidth, width)
		most(StockLength, target.StockLength, length)
	}
	if want := target.SmallestRadius; want > 0 {
		got := smallest(r) - r.Design.Rocker.DepthOr() // the strip at the top edge bends most
		list = append(list, Miss{Aim: SmallestRadius, Want: want, Got: got, Steps: (want - got) / tapeStep})
	}
	return list
}

// smallest returns the smallest radius of the drawn rocker, m.
func smallest(r check.Balanced) float64 {
	if len(r.Design.Rocker.Arcs) == 0 {
		return r.Design.Rocker.Radius
	}
	least := math.Inf(1)
	for _, a := range r.Design.Rocker.Arcs {
		if a.Radius > 0 {
			least = min(least, a.Radius)
		}
	}
	return least
}

// score adds up the misses: what must hold weighs so much that nothing is traded for it. A
// piece without a rest is worse than any that has one.
func score(list []Miss) float64 {
	sum := 0.0
	for _, m := range list {
		switch {
		case m.must() && m.Steps > 0:
			sum += 1e4 * m.Steps * m.Steps
		case !m.must():
			sum += m.Steps * m.Steps
		}
	}
	return sum
}
