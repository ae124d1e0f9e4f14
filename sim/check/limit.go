package check

import (
	"math"
	"slices"

	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Limit is one thing that is asked of one load.
type Limit struct {
	Name    string // "rest", "back_margin", "back_lift", …
	Load    string
	Kind    quantity.Kind // of the numbers; Count for "rest"
	AtLeast float64       // NaN where it is an upper limit
	AtMost  float64       // NaN where it is a lower limit
	Got     float64       // NaN where there is nothing to measure
	Holds   bool
	Basis   string
}

// Where a limit comes from.
const (
	OurJudgement = "our judgement"
	YourFile     = "your file"
	Physics      = "a piece must stand"
)

// lookForward is the margin in front below which a person perched to rise is worth a
// look, rad; our judgement. Feet on the floor carry part of the weight then, which the
// load leaves out, so nothing is asked of it.
const lookForward = 10 * quantity.Deg

// limitsOf asks each load of what is checked: a rest, and of a person what Limits says;
// of a hazard nothing.
func limitsOf(d piece.Design, loads []Load) (limits, look []Limit) {
	limits = make([]Limit, 0, 2*len(loads)+2)
	for i := range loads {
		l := &loads[i]
		if l.Empty || l.Asked() {
			limits = append(limits, restLimit(l))
		}
		if l.Asked() {
			limits = keeps(d, limits, l, loads)
		}
		if l.Posture == person.Perched && l.Asked() && d.Limits.ForwardMargin == 0 {
			got := l.Balance.Forward.Angle
			look = append(look, Limit{Name: "forward_margin", Load: l.Name, Kind: quantity.Angle, AtLeast: lookForward, AtMost: math.NaN(), Got: got, Holds: got >= lookForward, Basis: OurJudgement})
		}
	}
	return limits, look
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

// keeps appends the margins, lifts and tilts that Limits asks of a load with a person.
func keeps(d piece.Design, list []Limit, l *Load, loads []Load) []Limit {
	b := l.Balance
	usual := piece.DefaultLimits(d.Kind)
	atLeast := func(name string, kind quantity.Kind, want, usual, got float64) {
		if want > 0 {
			limit := Limit{Name: name, Load: l.Name, Kind: kind, AtLeast: want, AtMost: math.NaN(), Got: got, Holds: got >= want, Basis: YourFile}
			if want == usual {
				limit.Basis = OurJudgement
			}
			list = append(list, limit)
		}
	}
	if leaning(l, loads, person.LyingBack, person.RidingBack) {
		atLeast("back_margin", quantity.Angle, d.Limits.BackMargin, usual.BackMargin, b.Back.Angle)
		atLeast("back_lift", quantity.Length, d.Limits.BackLift, usual.BackLift, b.Back.Lift)
	}
	if leaning(l, loads, person.Perched, person.RidingForward) {
		atLeast("forward_margin", quantity.Angle, d.Limits.ForwardMargin, usual.ForwardMargin, b.Forward.Angle)
		atLeast("forward_lift", quantity.Length, d.Limits.ForwardLift, usual.ForwardLift, b.Forward.Lift)
	}
	if want := d.Limits.RestTilt; want > 0 {
		got := math.NaN()
		if b.Outcome == sim.Rocks {
			got = math.Abs(b.Rest.Tilt)
		}
		limit := Limit{Name: "rest_tilt", Load: l.Name, Kind: quantity.Angle, AtLeast: math.NaN(), AtMost: want, Got: got, Holds: got <= want, Basis: YourFile}
		if want == usual.RestTilt {
			limit.Basis = OurJudgement
		}
		list = append(list, limit)
	}
	return list
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
