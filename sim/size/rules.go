package size

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/check"
)

// A RuleName names a rule of the trade for the radius; all are common practice.
type RuleName int

const (
	PiSeat       RuleName = iota // π times the height of the seat's front edge, as drawn
	PiLeg                        // π times the length of a leg, from the rocker to the seat
	PiNavel                      // π times the height of the navel, sitting
	CentreAtChin                 // the arc's centre at the chin, sitting
	Start36                      // 36 in, the small end of where to start
	Start40                      // 40 in, the large end
	Commonest                    // 42 in
)

// A Rule is what a rule of the trade gives for a piece, and what it does there.
type Rule struct {
	Name   RuleName
	Height float64 // on which it is built, m; zero where it is built on none
	Radius float64 // m
	More   float64 // by how much that is more than the same time wants, m; NaN where no radius gives that
	Period float64 // of the piece with that radius at its rest, s; NaN where it has no rest
}

// rules returns the rules of the trade for the new piece, as far as their heights are known.
func rules(l Likeness) []Rule {
	d, load := l.Wanted.Design, l.New.Load
	want := math.NaN()
	if same := l.Kept[SameTime]; same.Found {
		want = same.Exact
	}
	var list []Rule
	add := func(name RuleName, height, radius float64) {
		list = append(list, Rule{name, height, radius, radius - want, periodAt(l, radius)})
	}
	if d.Seat.SlopeKnown() {
		add(PiSeat, d.Seat.Front, math.Pi*d.Seat.Front)
		leg := d.LegLength(l.Wanted.Edge)
		add(PiLeg, leg, math.Pi*leg)
	}
	if len(load.Figures) > 0 {
		over := func(p r2.Vec) float64 {
			_, height := load.Rig.Place(p, load.Balance.Rest.Tilt)
			return height
		}
		navel, chin := over(load.Figures[0].Navel()), over(load.Figures[0].Chin)
		add(PiNavel, navel, math.Pi*navel)
		add(CentreAtChin, chin, chin)
	}
	child := len(d.Sitters) > 0 && d.Sitters[0].Person.Age > 0
	if d.Traits().Seating && !child {
		add(Start36, 0, 36*inch)
		add(Start40, 0, 40*inch)
		add(Commonest, 0, 42*inch)
	}
	return list
}

// periodAt returns the time of a small rock of the new piece with another radius at its rest.
func periodAt(l Likeness, radius float64) float64 {
	from := l.New.Radius
	if !(from > 0) {
		return math.NaN()
	}
	report, err := check.Balance(withRadii(l.Wanted.Design, radius/from))
	if err != nil {
		return math.NaN()
	}
	if now, ok := FeelOf(report); ok {
		return now.Period
	}
	return math.NaN()
}
