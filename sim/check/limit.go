package check

import (
	"math"
	"slices"

	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Side is that on which a piece goes over.
type Side int

const (
	NoSide Side = iota
	Back
	Forward
)

var sides = [...]string{"", "back", "forward"}

func (s Side) String() string { return sides[s] }

// A Limit is one thing that is asked of one load.
type Limit struct {
	Name    string // "rest", "back_margin", "back_lift", …
	Load    string
	Side    Side
	Kind    quantity.Kind // of the numbers; Count for "rest"
	AtLeast float64       // NaN where it is an upper limit
	AtMost  float64       // NaN where it is a lower limit
	Got     float64       // NaN where there is nothing to measure
	Holds   bool
	Basis   string
}

// Share returns how much there is of what is asked, 1 where the limit just holds; below everything where there is
// no rest, or nothing to measure.
func (l Limit) Share() float64 {
	switch {
	case math.IsNaN(l.Got), l.Name == "rest" && !l.Holds:
		return math.Inf(-1)
	case !math.IsNaN(l.AtMost):
		return 2 - l.Got/l.AtMost
	}
	return l.Got / l.AtLeast
}

// Where a limit comes from.
const (
	OurJudgement = "our judgement"
	YourFile     = "your file"
	Physics      = "a piece must stand"
)

// An ask is one row of what is asked of who rides: a limit of piece.Limits, whose label and step stand
// in the table of measures under "limits." and its name.
type ask struct {
	name   string
	side   Side
	kind   quantity.Kind
	atMost bool
	want   func(l piece.Limits) float64
	of     func(l *Load, loads []Load) bool
	got    func(l *Load) float64 // NaN where there is nothing to measure
	cause  func(l *Load) Cause   // what limits it
	look   float64               // of who is perched where nothing is wanted: below it, it is worth a look
}

// asks are the rows, in the order in which a load is asked. The look forward is our judgement: feet on
// the floor carry part of the weight of who is perched, which the load leaves out, so nothing is
// asked of it.
var asks = [...]ask{
	{name: "back_margin", side: Back, kind: quantity.Angle, of: furthestBack, cause: ofTail,
		want: func(l piece.Limits) float64 { return l.BackMargin }, got: func(l *Load) float64 { return l.Balance.Back.Angle }},
	{name: "back_lift", side: Back, kind: quantity.Length, of: furthestBack, cause: ofTail,
		want: func(l piece.Limits) float64 { return l.BackLift }, got: func(l *Load) float64 { return l.Balance.Back.Lift }},
	{name: "forward_margin", side: Forward, kind: quantity.Angle, of: furthestForward, cause: ofNose, look: 10 * quantity.Deg,
		want: func(l piece.Limits) float64 { return l.ForwardMargin }, got: func(l *Load) float64 { return l.Balance.Forward.Angle }},
	{name: "forward_lift", side: Forward, kind: quantity.Length, of: furthestForward, cause: ofNose,
		want: func(l piece.Limits) float64 { return l.ForwardLift }, got: func(l *Load) float64 { return l.Balance.Forward.Lift }},
	{name: "rest_tilt", kind: quantity.Angle, atMost: true, of: func(*Load, []Load) bool { return true }, cause: func(*Load) Cause { return RestsTilted },
		want: func(l piece.Limits) float64 { return l.RestTilt }, got: func(l *Load) float64 {
			if l.Balance.Outcome != sim.Rocks {
				return math.NaN()
			}
			return math.Abs(l.Balance.Rest.Tilt)
		}},
}

// furthestBack and furthestForward report whether the margin of that side is asked of a load.
func furthestBack(l *Load, loads []Load) bool {
	return leaning(l, loads, person.LyingBack, person.RidingBack)
}

func furthestForward(l *Load, loads []Load) bool {
	return leaning(l, loads, person.Perched, person.RidingForward)
}

// ofTail and ofNose are the causes of the margins: the rocker's length where the hilltop stands on its tip.
func ofTail(l *Load) Cause {
	if l.Rig.OverTip(l.Balance.Back) {
		return TailLength
	}
	return CurveItself
}

func ofNose(l *Load) Cause {
	if l.Rig.OverTip(l.Balance.Forward) {
		return NoseLength
	}
	return CurveItself
}

// limitsOf asks each load of what is checked: a rest, and of a person what Limits says;
// of a hazard nothing.
func limitsOf(d piece.Design, loads []Load) (limits, look []Limit) {
	limits = make([]Limit, 0, 2*len(loads)+2)
	usual := piece.DefaultLimits(d.Kind)
	for i := range loads {
		l := &loads[i]
		if l.Empty || l.Asked() {
			limits = append(limits, restLimit(l))
		}
		if !l.Asked() {
			continue
		}
		for _, a := range asks {
			switch want := a.want(d.Limits); {
			case want > 0 && a.of(l, loads) && want == a.want(usual):
				limits = append(limits, a.limit(l, want, OurJudgement))
			case want > 0 && a.of(l, loads):
				limits = append(limits, a.limit(l, want, YourFile))
			case want == 0 && a.look > 0 && l.Posture == person.Perched:
				look = append(look, a.limit(l, a.look, OurJudgement))
			}
		}
	}
	return limits, look
}

// limit asks one load.
func (a ask) limit(l *Load, want float64, basis string) Limit {
	limit := Limit{Name: a.name, Load: l.Name, Side: a.side, Kind: a.kind, AtLeast: want, AtMost: math.NaN(), Got: a.got(l), Basis: basis}
	limit.Holds = limit.Got >= want
	if a.atMost {
		limit.AtLeast, limit.AtMost, limit.Holds = math.NaN(), want, limit.Got <= want
	}
	return limit
}

// Asked reports whether limits are asked of the load: somebody rides on it who is no
// hazard, and has not lifted off the seat to rise, with both feet on the floor.
func (l *Load) Asked() bool {
	return !l.Empty && asked(l.Role, l.Posture)
}

// asked is what [Load.Asked] reports of a load to be.
func asked(role piece.Role, posture person.Posture) bool {
	return role != piece.Hazard && posture != person.PushingUp
}

// restLimit asks that a load has a rest, upright.
func restLimit(l *Load) Limit {
	limit := Limit{Name: "rest", Load: l.Name, Kind: quantity.Count, AtLeast: 1, AtMost: math.NaN(), Basis: Physics}
	if l.Upright() {
		limit.Got, limit.Holds = 1, true
	}
	return limit
}

// leaning reports whether l is the load on which one side is asked of its person: the
// one in one of these postures, or every one where that posture is not given.
func leaning(l *Load, loads []Load, postures ...person.Posture) bool {
	for i := range loads {
		if o := &loads[i]; o.Sitter == l.Sitter && o.Asked() && slices.Contains(postures, o.Posture) {
			return slices.Contains(postures, l.Posture)
		}
	}
	return true
}
