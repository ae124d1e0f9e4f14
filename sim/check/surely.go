package check

import (
	"math"
	"slices"

	"rockerwright/body"
	"rockerwright/sim"
	"rockerwright/sim/quantity"
)

// A Spread says how much it matters how an estimated weight is spread: the largest change when any one of seat, back,
// arms, legs and rockers weighs 20 % more or less and the others make up for it.
type Spread struct {
	Estimated bool
	EmptyRest float64 // of the empty piece's rest, rad
	Rest      float64 // of any other load's rest, rad
	Margin    float64 // of any load's margin at the back, rad
}

// Rests returns the largest of the changes of any rest, rad.
func (s Spread) Rests() float64 { return max(s.EmptyRest, s.Rest) }

// surely returns how much an estimated weight matters, and fills in how surely each limit is known: by that, and by how
// people of one size differ, who sit on seating.
func (b *Balanced) surely() Spread {
	s := Spread{Estimated: b.masses.Estimated}
	byWeight, byPeople := make([]float64, len(b.Limits)), make([]float64, len(b.Limits))
	empty := b.Loads[0].Rig.Body
	b.otherSpreads(func(loads []Load) {
		s.join(b.Loads, loads)
		b.astray(loads, byWeight)
	})
	if b.Design.Traits().Seating {
		b.astray(b.rebalanced(empty, -PersonSpread, bySizes), byPeople)
		b.astray(b.rebalanced(empty, PersonSpread, bySizes), byPeople)
	}
	for i := range b.Limits {
		l := &b.Limits[i]
		l.Spread = math.Hypot(byWeight[i], byPeople[i]) // independent of one another
		_, nothing := quantity.Reads(0, l.Kind, b.Design.Units)
		l.Near = l.Spread >= nothing && math.Abs(l.Room()) < l.Spread
		if l.Name == leans { // with so few leans it goes over, whatever the guess
			l.Near = l.Near && l.Holds
		}
	}
	return s
}

// otherSpreads tries the loads on each piece whose estimated weight is spread otherwise, as [Spread] says; on none where it
// is not estimated.
func (b *Balanced) otherSpreads(try func(loads []Load)) {
	if !b.masses.Estimated {
		return
	}
	for part := range len(b.masses.Seat) + 1 {
		for _, factor := range []float64{0.8, 1.2} {
			try(b.rebalanced(b.masses.Weighted(part, factor, b.Design.Piece.Mass).Joined(b.carry), 0, bySizes))
		}
	}
}

// bySizes and anybody report whether somebody given by sizes is on a load, and whether anybody is.
func bySizes(l *Load) bool { return len(l.people) > 0 }
func anybody(l *Load) bool { return !l.Empty }

// rebalanced returns the loads on an empty piece, the balance points of some who ride so far ahead, m.
func (b *Balanced) rebalanced(empty body.Body, ahead float64, who func(l *Load) bool) []Load {
	loads := slices.Clone(b.Loads)
	for i := range loads {
		l := &loads[i]
		if who(l) {
			l.moveAhead(ahead)
		}
		l.settle(b, empty)
	}
	lessForward(loads)
	return loads
}

// astray raises how far each limit may be off to what it is off on other loads; that of a rest without end where what
// stands does not stand there.
func (b *Balanced) astray(loads []Load, most []float64) {
	others, _ := b.limitsOf(loads)
	if len(others) != len(b.Limits) {
		return
	}
	for i, other := range others {
		l := &b.Limits[i]
		off := math.Abs(other.Got - l.Got)
		switch {
		case l.Name == "rest" && l.Holds && !other.Holds:
			off = math.Inf(1)
		case l.Name == "rest":
			off = 0
		}
		if off > most[i] {
			most[i] = off
		}
	}
}

// join raises the changes to those between two balances of the same loads.
func (s *Spread) join(loads, others []Load) {
	for i := range loads {
		was, l := &loads[i], &others[i]
		if was.Balance.Outcome != sim.Rocks || l.Balance.Outcome != sim.Rocks {
			continue
		}
		moved := math.Abs(l.Balance.Rest.Tilt - was.Balance.Rest.Tilt)
		if l.Empty {
			s.EmptyRest = max(s.EmptyRest, moved)
		} else {
			s.Rest = max(s.Rest, moved)
		}
		if by := math.Abs(l.Back.Angle - was.Back.Angle); l.Moves() {
			s.Margin = max(s.Margin, by)
		}
	}
}
