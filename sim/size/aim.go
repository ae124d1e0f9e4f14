package size

import (
	"math"
	"slices"

	"rockerwright/rocker/bench"
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

	load *check.Load // that leans, of a wish for a lean
}

// sought returns how far a search has still to go, in steps: for a lean also as far as the feet hold the rest where it is
// whose heels lift before the tilt that is wished, so that it gets on over a step, where the rest stands nearly still. It
// is zero where Steps are, and never less; without feet on the floor it is Steps.
func (m Miss) sought() float64 {
	if m.load == nil || math.IsNaN(m.Got) {
		return m.Steps
	}
	held := math.Abs(m.load.Eased(m.load.Balance.Rest.Tilt+m.Want-m.Got)) / steadiness / tiltStep
	return m.Steps + math.Copysign(held, m.Steps)*min(1, math.Abs(m.Steps)) // at the rest it would jump
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
	timeStep   = 0.05
	tiltStep   = 0.5 * math.Pi / 180
	tapeStep   = inch / 8
	pushStep   = 1                 // N, some quarter of a pound
	noAnswer   = 100               // steps missed where there is nothing to measure
	leastArc   = 0.02              // m, of the length of one of several arcs
	steadiness = 0.4               // m, about that of a chair with somebody in it: by it an arm is made a tilt
	offJoint   = 2 * math.Pi / 180 // from a rest to the next arc; nearer small rocks and large ones differ
)

// misses returns how each aim comes out, those of the target first and then what must hold.
func misses(target piece.Target, r check.Balanced) []Miss {
	list := make([]Miss, 0, len(r.Limits)+4)
	aim := func(asked bool, aim Aim, want, got, step float64) {
		steps := (got - want) / step
		if math.IsNaN(got) { // there is nothing to measure
			steps = noAnswer
		}
		if asked {
			list = append(list, Miss{Aim: aim, Want: want, Got: got, Steps: steps})
		}
	}
	seated, tips := r.Seated(), target.LargestTilt
	aim(target.OneRock > 0, OneRock, target.OneRock, seated.Balance.Period, timeStep)
	lean := func(wish piece.Wish, which Aim, got float64, of *check.Load) {
		if aim(wish.Asked, which, wish.Value, got, tiltStep); wish.Asked {
			list[len(list)-1].load = of
		}
	}
	lean(target.SeatFalls, SeatFalls, seated.SeatFall, seated)
	lean(target.BackLeans, BackLeans, seated.BackRecline, seated)
	lean(target.Empty, SeatFallsEmpty, r.Loads[0].SeatFall, &r.Loads[0])
	forward, back := r.OnTips()
	aim(tips > 0, LargestTilt, tips, forward, tiltStep)
	aim(tips > 0, LargestTilt, tips, back, tiltStep)
	for _, l := range r.Limits {
		list = append(list, missOf(l))
	}
	aim(target.Longest > 0, Longest, target.Longest, r.Tape.TipToTip, tapeStep)
	if target.StockWidth > 0 || target.StockLength > 0 {
		length, width := blank(r)
		aim(target.StockWidth > 0, StockWidth, target.StockWidth, width, tapeStep)
		aim(target.StockLength > 0, StockLength, target.StockLength, length, tapeStep)
	}
	if target.SmallestRadius > 0 { // the strip at the top edge bends most
		smallest := slices.Min(append(radii(r.Design.Rocker), math.Inf(1)))
		aim(true, SmallestRadius, target.SmallestRadius, smallest-r.Design.Rocker.DepthOr(), -tapeStep)
	}
	if len(r.Design.Rocker.Arcs) > 1 {
		aim(true, OffJoints, offJoint, offJoints(r), -tiltStep)
	}
	return list
}

// offJoints returns how near the owner at ease rests to a joint, where times hang on how far it rocks, rad; or NaN.
func offJoints(r check.Balanced) float64 {
	b := r.Seated().Balance
	if b.Outcome != sim.Rocks {
		return math.NaN()
	}
	off := math.Inf(1)
	for i := 1; i < r.Edge.Bearings()-2; i++ { // joints between arcs; tips are no joints
		off = min(off, math.Abs(r.Edge.Bearing(i).To-(b.Rest.Tilt-r.Design.Floor.Slope)))
	}
	return off
}

func missOf(l check.Limit) Miss {
	step := tiltStep
	switch l.Kind {
	case quantity.Length:
		step = tapeStep
	case quantity.Time:
		step = timeStep
	case quantity.Force:
		step = pushStep
	}
	m := Miss{Aim: KeepsLimit, Limit: l, Want: l.Want, Got: l.Got, Steps: -l.Room() / step}
	if math.IsNaN(l.Got) || l.Name == "rest" && !l.Holds {
		m.Steps = noAnswer
	}
	return m
}

// radii returns the radii of a rocker, hollows apart, m.
func radii(r piece.Rocker) (list []float64) {
	for _, a := range append(slices.Clip(r.Arcs), piece.Arc{Radius: r.Radius}) {
		if a.Radius > 0 {
			list = append(list, a.Radius)
		}
	}
	return list
}

// score adds up the misses: what must hold weighs so much that nothing is traded for it. No rest is worst.
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

// blank returns the length and width of the board a rocker is sawn from, m; NaN where it has no outline.
func blank(r check.Balanced) (length, width float64) {
	outline, err := r.Design.Rocker.OnBench(r.Edge).Outline()
	if err != nil {
		return math.NaN(), math.NaN()
	}
	b := bench.BlankAlong(outline, math.Atan2(r.Edge.Nose().Y-r.Edge.Tail().Y, r.Edge.Nose().X-r.Edge.Tail().X))
	return b.Length, b.Width
}
