package check

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Cause is what limits the limit that is nearest to failing, or furthest from holding.
type Cause int

const (
	NoCause      Cause = iota // nothing is asked
	TailLength                // the hilltop at the back stands on the tail tip
	NoseLength                // the hilltop in front stands on the nose tip
	CurveItself               // the hilltop lies on the curve, or there is no rest
	RestsTilted               // the piece rests further over than it should
	RestsForward              // the seat falls too far forward
	RestsBack                 // the seat falls too far back
	TooFlat                   // the curve stands against every rock: quick and hard to push
	TooRound                  // the curve hardly brings it back
	LegsBeyond                // a leg stands beyond its rocker
	RockedOver                // who rocks it hard takes it over before it stands on a tip
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

// moves returns the changes worth trying for a cause, the simplest at the bench first: where it rests is mended by what
// it rests on or by the legs, how it rocks by the radius.
func (b *Balanced) moves(cause Cause) []move {
	d := &b.Design
	half, whole := quantity.In/2, quantity.In
	if d.Units == quantity.Metric {
		half, whole = 0.010, 0.020
	}
	tail, nose, flatter := move{"rocker.tail", half, 40}, move{"rocker.nose", half, 40}, move{"rocker.radius", whole, 24}
	rounder := move{"rocker.radius", -max(whole, math.Floor(d.Rocker.Radius/20/whole)*whole), 19}
	forward, back := move{"seat.behind_low_point", -half, 12}, move{"seat.behind_low_point", half, 12}
	cutFront, cutRear := move{"seat.front_cut", half / 2, 8}, move{"seat.rear_cut", half / 2, 8}
	if len(d.Rocker.Arcs) > 0 {
		tail.key, nose.key, flatter.key, rounder.key = lastArc(*d), "", "", ""
	}
	list := []move{flatter, forward, back}
	switch cause {
	case TailLength:
		list = []move{tail, flatter, forward}
	case NoseLength:
		list = []move{nose, flatter, back}
	case RestsTilted:
		list = []move{forward, back, flatter}
	case RestsForward:
		list = []move{back, cutRear, nose}
	case RestsBack:
		list = []move{forward, cutFront, tail}
	case TooFlat:
		list = []move{rounder}
	case TooRound:
		list = []move{flatter}
	case LegsBeyond:
		list = []move{nose, tail}
		if beyond := d.Beyond(b.Edge); len(beyond) > 0 && beyond[0].Tail {
			list = []move{tail, nose}
		}
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

// cure returns what limits the worst limit, and the first change of one measure after which all hold, that one surely.
func (b *Balanced) cure() (Cause, *Try) {
	worst := worstOf(b.Limits)
	if worst < 0 {
		return NoCause, nil
	}
	d, limit := b.Design, b.Limits[worst]
	cause := b.causeOf(limit)
	if !limit.Fails() {
		return cause, nil
	}
	for _, m := range b.moves(cause) {
		room := limit.Room()
		for n := 1; n <= m.most; n++ {
			changed := d.Clone()
			measure, field, err := changed.Measure(m.key)
			if err != nil || *field == 0 && !strings.HasSuffix(m.key, "_cut") {
				break
			}
			*field = quantity.Round(*field+m.step*float64(n), measure.Kind, d.Units) // as it will be typed
			after, err := b.Somebody.Balance(changed)
			if err != nil {
				break
			}
			same := slices.IndexFunc(after.Limits, func(l Limit) bool { return l.Name == limit.Name && l.Load == limit.Load })
			if same < 0 || limit.Name != "rest" && after.Limits[same].Room() <= room {
				break // it leads nowhere
			}
			if room = after.Limits[same].Room(); !after.Holds() {
				continue
			}
			if after.surely(); !after.Limits[same].Near { // no more is claimed than is known
				return cause, &Try{m.key, measure.Label, measure.Kind, *field, limit, after.Limits[same].Got, after.Tape}
			}
		}
	}
	return cause, nil
}

// worstOf returns the index of the limit that is furthest from holding, as a part of what is asked; where all hold, of
// the one that is nearest to going over, and where nothing of that is asked of the nearest to failing; −1 of none.
func worstOf(limits []Limit) int {
	worst, least, gravest := -1, math.Inf(1), 0
	for i, l := range limits {
		if l.Name == "rest" && l.Holds {
			continue
		}
		grave, share := 0, l.Share()
		switch {
		case l.Fails():
			grave = 2
		case l.Side != NoSide:
			grave = 1
		}
		if math.IsNaN(share) || l.Name == "rest" {
			share = math.Inf(-1) // nothing is worse than no answer
		}
		if worst < 0 || grave > gravest || grave == gravest && share < least {
			worst, least, gravest = i, share, grave
		}
	}
	return worst
}

// Worst returns the limit that fails most, or is the nearest to it; nil where nothing is asked.
func (b *Balanced) Worst() *Limit {
	if worst := worstOf(b.Limits); worst >= 0 {
		return &b.Limits[worst]
	}
	return nil
}

// causeOf returns what limits one limit of one of the loads.
func (b *Balanced) causeOf(limit Limit) Cause {
	l, i := b.Load(limit.Load), slices.IndexFunc(asks, func(a ask) bool { return a.Name() == limit.Name })
	switch {
	case l == nil:
		return CurveItself
	case l.Balance.Outcome == sim.NoRest && l.Rig.Body.Centre.X < b.Edge.Tail().X:
		return TailLength
	case l.Balance.Outcome == sim.NoRest && l.Rig.Body.Centre.X > b.Edge.Nose().X:
		return NoseLength
	case limit.Name == "rest" && l.Upright(): // it stands only just: what is nearest takes it over
		_, limit.Side = Nearest([]*Load{l})
	case i < 0 || l.Balance.Outcome != sim.Rocks:
		return CurveItself
	}
	switch {
	case limit.Side == Back && l.Rig.OverTip(l.Back):
		return TailLength
	case limit.Side == Forward && l.Rig.OverTip(l.Forward):
		return NoseLength
	}
	switch {
	case i < 0:
		return CurveItself
	case limit.Name == leans:
		switch h := b.RockedHard(l, 1); {
		case h.Outcome == sim.GoesOverBackwards && l.Off.OverTip(l.OffBalance.Back):
			return TailLength
		case h.Outcome == sim.GoesOverForwards && l.Off.OverTip(l.OffBalance.Forward):
			return NoseLength
		}
	}
	return cmp.Or(asks[i].cause, CurveItself)
}

// LookAt returns the measure that is the first to look at for a limit that does not hold.
func (b *Balanced) LookAt(l Limit) string {
	cause := b.causeOf(l)
	if cause == NoseLength && len(b.Design.Rocker.Arcs) > 0 {
		return piece.ArcKey(1, "length") // and with it the nose, which no one change does
	}
	if list := b.moves(cause); len(list) > 0 {
		return list[0].key
	}
	return ""
}

// WorstLimited returns the load of the limit on going over, or on how far it tilts, that is nearest to failing, of those
// that move; nil where nothing is asked of anybody who does.
func (b *Balanced) WorstLimited() *Load {
	unmeasured := func(l Limit) bool {
		return l.Name == "rest" || math.IsNaN(l.Got) || l.Side == NoSide && l.Name != "rest_tilt"
	}
	limits := slices.DeleteFunc(slices.Clone(b.Limits), unmeasured)
	if worst := worstOf(limits); worst >= 0 {
		if l := b.Load(limits[worst].Load); l != nil && l.Moves() {
			return l
		}
	}
	return nil
}
