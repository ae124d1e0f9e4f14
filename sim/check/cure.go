package check

import (
	"cmp"
	"math"
	"slices"

	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Cause is what limits the limit that is nearest to failing, or furthest from holding.
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
	tail, nose, flatter := move{"rocker.tail", half, 16}, move{"rocker.nose", half, 16}, move{"rocker.radius", whole, 24}
	forward, back := move{"seat.behind_low_point", -half, 8}, move{"seat.behind_low_point", half, 8}
	if len(d.Rocker.Arcs) > 0 {
		tail.key, nose.key, flatter.key = lastArc(d), "", ""
	}
	list := []move{flatter, forward, back}
	switch cause {
	case TailLength:
		list = []move{tail, flatter, forward}
	case NoseLength:
		list = []move{nose, flatter, back}
	}
	return slices.DeleteFunc(list, func(m move) bool { return m.key == "" })
}

// lastArc returns the key of the length of the last arc or flat before the tail tip.
func lastArc(d piece.Design) string {
	for i, a := range slices.Backward(d.Rocker.Arcs) {
		if a.Length > 0 {
			return piece.ArcKey(i+1, "length")
		} else if a.Flat > 0 {
			return piece.ArcKey(i+1, "flat")
		}
	}
	return ""
}

// cure returns what limits the worst limit, and the first change of one measure after which all hold.
func (b *Balanced) cure() (Cause, *Try) {
	worst := worstOf(b.Limits)
	if worst < 0 {
		return NoCause, nil
	}
	d, limit := b.Design, b.Limits[worst]
	cause := b.causeOf(limit)
	if limit.Holds {
		return cause, nil
	}
	for _, m := range moves(d, cause) {
		for n := 1; n <= m.most; n++ {
			changed := d.Clone()
			measure, field, err := changed.Measure(m.key)
			if err != nil || *field == 0 {
				break
			}
			*field = quantity.Round(*field+m.step*float64(n), measure.Kind, d.Units) // as it will be typed
			after, err := b.Somebody.Balance(changed)
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
		share := l.Share()
		if math.IsNaN(share) || l.Name == "rest" {
			share = math.Inf(-1) // nothing is worse than no answer
		}
		if share < least && !(l.Name == "rest" && l.Holds) {
			worst, least = i, share
		}
	}
	return worst
}

// causeOf returns what limits one limit of one of the loads.
func (b *Balanced) causeOf(limit Limit) Cause {
	l, i := b.Load(limit.Load), slices.IndexFunc(asks, func(a ask) bool { return a.Name() == limit.Name })
	switch {
	case l == nil || i < 0 || l.Balance.Outcome != sim.Rocks:
		return CurveItself
	case limit.Side == Back && l.Rig.OverTip(l.Back):
		return TailLength
	case limit.Side == Forward && l.Rig.OverTip(l.Forward):
		return NoseLength
	}
	return cmp.Or(asks[i].cause, CurveItself)
}

// LookAt returns the measure that is the first to look at for a limit that does not hold.
func (b *Balanced) LookAt(l Limit) string {
	if list := moves(b.Design, b.causeOf(l)); len(list) > 0 {
		return list[0].key
	}
	return ""
}

// WorstLimited returns the load of the limit that is nearest to failing, of those that move;
// nil where nothing is asked of anybody who does.
func (b *Balanced) WorstLimited() *Load {
	unmeasured := func(l Limit) bool { return l.Name == "rest" || math.IsNaN(l.Got) }
	limits := slices.DeleteFunc(slices.Clone(b.Limits), unmeasured)
	if worst := worstOf(limits); worst >= 0 {
		if l := b.Load(limits[worst].Load); l != nil && l.Moves() {
			return l
		}
	}
	return nil
}
