package check

import (
	"math"
	"slices"

	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// LeastBack returns the load that is nearest to going over backwards by its angle, as it is said, of those
// at ease or leaning back where there are any; nil of none.
func LeastBack(loads []*Load) *Load {
	back := func(l *Load) bool { return l.Posture == person.AtEase || l.Posture == person.RidingBack }
	var least *Load
	for _, l := range loads {
		switch {
		case least == nil, back(l) && !back(least):
			least = l
		case back(l) == back(least) && l.Back.Angle < least.Back.Angle:
			least = l
		}
	}
	return least
}

// Nearest returns which of some loads of which something is asked is nearest to going over by its angle, and on which
// side, that of people at ease forward with their feet off; nil where none of them can.
func Nearest(loads []*Load) (least *Load, side Side) {
	angle := math.Inf(1)
	for _, l := range loads {
		if !l.Asked() || !l.Upright() {
			continue
		}
		if l.Back.Angle < angle {
			least, side, angle = l, Back, l.Back.Angle
		}
		if off := Forward.Of(l).Angle; off < angle {
			least, side, angle = l, Forward, off
		}
	}
	return least, side
}

// Of returns how near a load itself is to going over on a side: of people at ease forward with their feet off.
func (s Side) Of(l *Load) sim.Margin {
	switch {
	case s == Back:
		return l.Back
	case len(l.Legs) > 0:
		return l.OffBalance.Forward
	}
	return l.Forward
}

// Trade returns the two numbers of the trade at the rest of a load, m, along the floor as it stands as drawn: how far
// ahead of the rear legs the rocker touches, and how far behind them the tail tip lies; and whether these legs are
// drawn. They are NaN where no rear legs are known, or where it does not rest.
func (b *Balanced) Trade(l *Load) (touches, tail float64, drawn bool) {
	legs := b.Design.LegsOr()
	i := slices.IndexFunc(legs, func(leg piece.Leg) bool { return leg.Which == piece.Rear })
	if i < 0 || !l.Upright() {
		return math.NaN(), math.NaN(), false
	}
	at := b.carry.Point(b.Design.Foot(piece.Rear, b.Edge)).X
	return b.Edge.Contact(l.Balance.Rest.Tilt-b.Design.Floor.Slope).X - at, at - b.Edge.Tail().X, i < len(b.Design.Legs)
}

// ComesBack returns from how far back a load may be let go, rad from its rest, and whether that is told beside what it
// keeps before going back: where by half a degree and more less, for from further it is thrown over forwards.
func (l *Load) ComesBack() (from float64, told bool) {
	from, _ = l.Rig.LargestRelease(l.Balance)
	return from, from < l.Balance.Back.Angle-quantity.Deg/2
}

// Sitting returns the index of the load of who sits in it at rest: the owner at ease, or the first; else of the piece alone.
func (b *Balanced) Sitting() int {
	first := 0
	for i := range b.Loads {
		load := &b.Loads[i]
		switch {
		case !load.Asked() || !load.Upright():
		case load.Posture == person.AtEase:
			return i
		case first == 0:
			first = i
		}
	}
	return first
}
