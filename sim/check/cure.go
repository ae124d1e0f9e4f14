package check

import (
	"cmp"
	"math"
	"slices"

	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Cause is what limits the limit that is nearest to failing, or furthest from
// holding.
type Cause int

const (
	NoCause     Cause = iota // nothing is asked
	TailLength               // the hilltop at the back stands on the tail tip
	NoseLength               // the hilltop in front stands on the nose tip
	CurveItself              // the hilltop lies on the curve, or there is no rest
	RestsTilted              // the piece rests further over than it should
)

// A Try is one change of one measure after which all limits hold.
type Try struct {
	Key   string
	Label string
	Kind  quantity.Kind
	Value float64
	Limit Limit   // the worst limit, as it was
	Got   float64 // what that limit gets after the change
	Tape  Tape    // what the tape says after the change
}

// A move is a measure worth trying, by steps of Step, at most Most of them.
type move struct {
	key  string
	step float64
	most int
}

// moves returns the changes worth trying for a cause, the simplest at the bench first.
func moves(d piece.Design, cause Cause) []move {
	half, whole := quantity.In/2, quantity.In
	if d.Units == quantity.Metric {
		half, whole = 0.010, 0.020
	}
	tail, nose, radius := move{"rocker.tail", half, 16}, move{"rocker.nose", half, 16}, move{"rocker.radius", whole, 24}
	if n := len(d.Rocker.Arcs); n > 0 {
		tail.key, nose.key, radius.key = lastArc(d), "", ""
	}
	flatter, forward, back := radius, move{"seat.behind_low_point", -half, 8}, move{"seat.behind_low_point", half, 8}
	switch cause {
	case TailLength:
		return []move{tail, flatter, forward}
	case NoseLength:
		return []move{nose, flatter, back}
	}
	return []move{flatter, forward, back}
}

// lastArc returns the key of the length of the last arc or flat before the tail tip.
func lastArc(d piece.Design) string {
	n := len(d.Rocker.Arcs)
	for i := n; i > 0; i-- {
		switch a := d.Rocker.Arcs[i-1]; {
		case a.Length > 0:
			return piece.ArcKey(i, "length")
		case a.Flat > 0:
			return piece.ArcKey(i, "flat")
		}
	}
	return ""
}

// cure returns what limits the worst limit, and the first change of one measure after
// which all hold.
func (b *Balanced) cure() (Cause, *Try) {
	worst := worstOf(b.Limits)
	if worst < 0 {
		return NoCause, nil
	}
	d, limit := b.Design, b.Limits[worst]
	cause := causeOf(limit, b.Loads)
	if limit.Holds {
		return cause, nil
	}
	for _, m := range moves(d, cause) {
		if m.key == "" {
			continue
		}
		for n := 1; n <= m.most; n++ {
			changed := d.Clone()
			measure, field, err := changed.Measure(m.key)
			if err != nil || *field == 0 {
				break
			}
			*field = quantity.Round(*field+m.step*float64(n), measure.Kind, d.Units) // as it will be typed
			after, err := Sitters{b.people}.Balance(changed)
			if err != nil {
				break
			}
			if after.Holds() {
				return cause, &Try{m.key, measure.Label, measure.Kind, *field, limit, after.Limits[worst].Got, after.Tape}
			}
		}
	}
	return cause, nil
}

// worstOf returns the index of the limit that is nearest to failing or furthest from
// holding, as a part of what is asked, −1 where nothing is.
func worstOf(limits []Limit) int {
	worst, least := -1, math.Inf(1)
	for i, l := range limits {
		share := l.Got / l.AtLeast
		if !math.IsNaN(l.AtMost) {
			share = 2 - l.Got/l.AtMost
		}
		if l.Name == "rest" && l.Holds {
			continue
		}
		if math.IsNaN(share) || l.Name == "rest" {
			share = -1 // nothing is worse than no answer
		}
		if share < least {
			worst, least = i, share
		}
	}
	return worst
}

// causeOf returns what limits one limit of one of the loads.
func causeOf(limit Limit, loads []Load) Cause {
	for i := range loads {
		l := &loads[i]
		if l.Name != limit.Load || l.Balance.Outcome != sim.Rocks {
			continue
		}
		switch i := slices.IndexFunc(asks, func(a ask) bool { return a.Name() == limit.Name }); {
		case limit.Side == Back && l.Rig.OverTip(l.Balance.Back):
			return TailLength
		case limit.Side == Forward && l.Rig.OverTip(l.Balance.Forward):
			return NoseLength
		case i >= 0 && limit.Side == NoSide:
			return cmp.Or(asks[i].cause, CurveItself)
		}
	}
	return CurveItself
}

// LookAt returns the measure that is the first to look at for a limit that does not hold.
func (b *Balanced) LookAt(l Limit) string {
	moves := moves(b.Design, causeOf(l, b.Loads))
	if i := slices.IndexFunc(moves, func(m move) bool { return m.key != "" }); i >= 0 {
		return moves[i].key
	}
	return ""
}

// WorstLimited returns the load of the limit that is nearest to failing and has a rest;
// nil where nothing is asked of anybody who rests.
func (b *Balanced) WorstLimited() *Load {
	var limits []Limit
	for _, l := range b.Limits {
		if l.Name != "rest" && !math.IsNaN(l.Got) {
			limits = append(limits, l)
		}
	}
	worst := worstOf(limits)
	for i := range b.Loads {
		if l := &b.Loads[i]; worst >= 0 && l.Name == limits[worst].Load && l.Upright() {
			return l
		}
	}
	return nil
}
