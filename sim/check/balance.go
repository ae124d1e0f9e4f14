package check

import (
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim/piece"
	"rockerwright/sim/readings"
)

// Sitters are who sits in a design: made once, for many designs that differ in wood alone.
// The people are then posed in each of them anew, which is quick; their sizes are not.
type Sitters []Somebody

// decide are the postures in which people keep least of what is asked.
var decide = []person.Posture{person.AtEase, person.Rising, person.RidingBack, person.RidingForward}

// ForLimits returns the company in those postures alone that decide most limits of the design: the first person as
// given and leaning furthest, others leaning furthest. Of who does not lean back, and where something is asked in
// every posture, nobody is left out. Loads that are left out must still be asked once, in the end.
func (c Sitters) ForLimits(d piece.Design) Sitters {
	for i := range asks {
		if _, asked := asks[i].Wanted(&d); asked && asks[i].of == nil && !asks[i].empty {
			return c
		}
	}
	narrow := slices.Clone(c)
	for i := range narrow {
		one := &narrow[i]
		if !slices.Contains(one.postures, person.AtEase) {
			continue
		}
		first := one.postures[0]
		one.postures = slices.DeleteFunc(slices.Clone(one.postures), func(p person.Posture) bool {
			return !slices.Contains(decide, p) && (i > 0 || p != first)
		})
	}
	return narrow
}

// First returns the company with the first person alone to be posed, as given first; the others
// are there, but not asked.
func (c Sitters) First() Sitters {
	first := slices.Clone(c)
	for i := range first {
		one := &first[i]
		one.postures = one.postures[:min(len(one.postures), max(0, 1-i))]
	}
	return first
}

// Ahead returns the same people with the balance point of each so far ahead, m, of who else has their sizes.
func (c Sitters) Ahead(by float64) Sitters {
	others := slices.Clone(c)
	for i := range others {
		others[i].ahead = by
	}
	return others
}

// A Balanced is a design that was balanced: what a search asks again and again.
type Balanced struct {
	Design   piece.Design
	Edge     rocker.Profile
	Curve    *piece.Traced    // of rockers that were read, else nil
	Read     *readings.Result // of a piece that was weighed, else nil
	Tape     Tape
	Loads    []Load  // the first is the piece alone
	Somebody Sitters // who is posed by sizes, and what of them was given
	Limits   []Limit // what must hold
	Look     []Limit // what is worth a look where it does not hold
	Spread   Spread  // how much an estimated weight matters; filled in by [Balance]

	// UsualInertia says that the piece was weighed, but no rocks were timed, or they do not tell the inertia
	// (Read.Untold): Read.Body has that of the drawn piece.
	UsualInertia bool

	Lacked []string // readings of a piece as built in whose place the drawing stands: "dowel_above"

	carry  piece.Carry
	masses piece.Masses
}

// Balance returns how a design stands with these people in it: the piece alone and each load of
// which something is asked, where it rests, how far seat and back lean there, the push for one
// degree, and the limits. The error is a [*piece.KeyError].
func (c Sitters) Balance(d piece.Design) (Balanced, error) { return balance(d, c, false) }

// Balance is [Sitters.Balance] with everybody, hazards too, made anew, and with how surely each limit is known.
func Balance(d piece.Design) (Balanced, error) {
	b, err := balance(d, nil, true)
	if err == nil {
		b.Spread = b.surely()
	}
	return b, err
}

// balance balances a design with all that is ever in it, or with these people and the loads alone of which something
// is asked.
func balance(d piece.Design, people Sitters, all bool) (Balanced, error) {
	b := Balanced{Design: d, Somebody: people}
	var err error
	if b.Edge, b.Curve, err = d.Profile(); err != nil {
		return b, err
	}
	b.Tape = tape(b.Edge)
	if err := d.Validate(); err != nil {
		return b, err
	}
	b.carry = d.Carry(b.Edge)
	if all {
		if b.Somebody, err = SittersOf(d); err != nil {
			return b, err
		}
	}
	if err := b.weigh(); err != nil {
		return b, err
	}
	if b.Loads, err = b.loads(all); err != nil {
		return b, err
	}
	empty := b.Loads[0].Rig.Body
	for i := range b.Loads {
		if l := &b.Loads[i]; len(l.people) > 0 && l.people[0].ahead != 0 {
			l.moveAhead(l.people[0].ahead)
		}
		b.Loads[i].settle(&b, empty)
	}
	lessForward(b.Loads)
	b.Limits, b.Look = b.limitsOf(b.Loads)
	return b, b.unasked()
}

// Holds reports whether no limit fails.
func (b *Balanced) Holds() bool { return holds(b.Limits) }

// Placed returns where a point of the seat frame lies as drawn, slid and cut, chair frame.
func (b *Balanced) Placed(p r2.Vec) r2.Vec { return b.carry.Point(p) }
