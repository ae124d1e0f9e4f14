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
	Name   string // "rest", "back_margin", "back_lift", …
	Load   string
	Side   Side
	Kind   quantity.Kind // of the numbers; Count for "rest"
	Want   float64
	AtMost bool    // Want is the most that there may be; else the least
	Got    float64 // NaN where there is nothing to measure
	Holds  bool
	Basis  string
}

// Share returns how much of what is wanted there is, 1 or more where the limit holds; NaN where nothing was measured.
func (l Limit) Share() float64 {
	if l.AtMost {
		return 2 - l.Got/l.Want
	}
	return l.Got / l.Want
}

// Where a limit comes from.
const (
	OurJudgement = "our judgement"
	YourFile     = "your file"
	Physics      = "a piece must stand"
)

// An ask is one row of what is asked of who rides: a limit, of which the table of measures has the rest.
type ask struct {
	piece.Measure // under "limits.": what it is called, of which kind, and where a design has it
	side          Side
	atMost        bool
	of            []person.Posture // in which a person is asked, where one of them is given; nil means in all
	got           func(b *Balanced, l *Load) float64
	cause         Cause   // of a limit that is of no side
	look          float64 // of who rises where nothing is wanted: below it, it is worth a look
}

var (
	leaningBack    = []person.Posture{person.AtEase, person.RidingBack}
	leaningForward = []person.Posture{person.Rising, person.RidingForward}
)

// asks are the rows, in the order in which a load is asked. The look forward is our judgement: feet on the floor
// carry part of the weight of who rises, which the load leaves out, so nothing is asked of it.
var asks = []ask{
	{Measure: piece.LimitOf("back_margin"), side: Back, of: leaningBack,
		got: func(_ *Balanced, l *Load) float64 { return l.Back.Angle }},
	{Measure: piece.LimitOf("back_lift"), side: Back, of: leaningBack,
		got: func(_ *Balanced, l *Load) float64 { return l.Back.Lift }},
	{Measure: piece.LimitOf("forward_margin"), side: Forward, of: leaningForward, look: 10 * quantity.Deg,
		got: func(_ *Balanced, l *Load) float64 { return l.Forward.Angle }},
	{Measure: piece.LimitOf("forward_lift"), side: Forward, of: leaningForward,
		got: func(_ *Balanced, l *Load) float64 { return l.Forward.Lift }},
	{Measure: piece.LimitOf("rest_tilt"), atMost: true, cause: RestsTilted,
		got: func(_ *Balanced, l *Load) float64 { return math.Abs(l.Balance.Rest.Tilt) }},
}

// limitsOf asks each of some loads of the design, which have settled, what is checked: a rest, and of a person
// what Limits says; of a hazard nothing.
func (b *Balanced) limitsOf(loads []Load) (limits, look []Limit) {
	limits = make([]Limit, 0, 2*len(loads)+2)
	usual := &b.Design.Traits().Unsaid
	for i := range loads {
		l := &loads[i]
		if l.Empty || l.Asked() {
			rest := Limit{Name: "rest", Load: l.Name, Kind: quantity.Count, Want: 1, Basis: Physics}
			if l.Upright() {
				rest.Got, rest.Holds = 1, true
			}
			limits = append(limits, rest)
		}
		if !l.Asked() {
			continue
		}
		for i := range asks {
			a := &asks[i]
			if l.Standing > 0 && math.IsNaN(a.got(b, l)) { // nothing is known of it of who rises, so nothing is asked
				continue
			}
			switch want := a.In(&b.Design); {
			case want > 0 && a.asks(l, loads) && want == a.In(usual):
				limits = append(limits, a.limit(b, l, want, OurJudgement))
			case want > 0 && a.asks(l, loads):
				limits = append(limits, a.limit(b, l, want, YourFile))
			case want == 0 && a.look > 0 && l.Posture == person.Rising:
				look = append(look, a.limit(b, l, a.look, OurJudgement))
			}
		}
	}
	return limits, look
}

// asks reports whether a load is asked: the person is in one of the postures, or is in none of them on any load.
func (a *ask) asks(l *Load, loads []Load) bool {
	if a.of == nil || slices.Contains(a.of, l.Posture) {
		return true
	}
	for i := range loads {
		if o := &loads[i]; o.Sitter == l.Sitter && o.Asked() && slices.Contains(a.of, o.Posture) {
			return false
		}
	}
	return true
}

// limit asks one load. Of one that has no rest there is nothing to measure.
func (a *ask) limit(b *Balanced, l *Load, want float64, basis string) Limit {
	limit := Limit{Name: a.Name(), Load: l.Name, Side: a.side, Kind: a.Kind, Basis: basis,
		Want: want, AtMost: a.atMost, Got: math.NaN()}
	if l.Balance.Outcome == sim.Rocks {
		limit.Got = a.got(b, l)
	}
	limit.Holds = !a.atMost && limit.Got >= want || a.atMost && limit.Got <= want
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
