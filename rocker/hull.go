package rocker

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"
)

// A candidate is an arc, a corner or a tip of the drawn edge that may be part of its convex hull.
type candidate struct {
	Bearing
	index int
	after bool // nothing hollow lies between it and the candidate before
}

// hull returns the arcs on which the edge can stand, in order of tilt. The first is the nose tip and the last the
// tail tip; the flat behind the last is the chord from tip to tip, so that together they cover every tilt once. ok is
// false where the edge curls in on itself.
func hull(edge []edgeSpan) (bearings []Bearing, ok bool) {
	all := candidates(edge)
	stack := make([]candidate, 0, len(all))
	for _, c := range all {
		stack = push(stack, c)
	}
	bearings = make([]Bearing, len(stack))
	for i := range stack {
		bearings[i] = stack[i].Bearing
	}
	if !closeAtChord(bearings) {
		return nil, false
	}
	measure(bearings)
	return bearings, true
}

// candidates lists, from nose to tail, all that a floor may touch: the tips, the arcs that bulge and the corners that
// stand out. The origin's own arc and corner, which walk laid as two halves, become one again.
func candidates(edge []edgeSpan) []candidate {
	list := make([]candidate, 0, len(edge)+2)
	follows := true
	add := func(b Bearing) {
		b.down, b.along = Down(b.Angle)
		list = append(list, candidate{Bearing: b, index: len(list), after: follows})
		follows = true
	}
	tip := func(p r2.Vec, tilt float64) { add(Bearing{From: tilt, To: tilt, At: p, Angle: tilt}) }
	if len(edge) == 0 {
		tip(r2.Vec{}, 0)
		tip(r2.Vec{}, 0)
	} else {
		tip(edge[0].start, edge[0].from)
	}
	for _, e := range edge {
		last := &list[len(list)-1]
		switch {
		case e.Radius < 0 || e.Turn < 0:
			follows = false
		case e.turn() == 0:
			last.Flat += e.Length
		case follows && last.Radius == e.Radius && last.At == e.at && last.Angle == e.atTilt && last.From < last.To:
			last.To = e.to
		default:
			add(Bearing{From: e.from, To: e.to, Radius: e.Radius, At: e.at, Angle: e.atTilt})
		}
	}
	if n := len(edge); n > 0 {
		e := &edge[n-1]
		tip(e.point(e.Length), e.to)
	}
	list[0].From = math.Inf(-1)
	list[len(list)-1].To = math.Inf(1)
	return list
}

// push adds the next candidate to those found so far, taking away what the floor can no longer reach.
func push(stack []candidate, next candidate) []candidate {
	for len(stack) > 0 {
		top := &stack[len(stack)-1]
		tilt, flat := next.From, top.Flat
		if !next.after || top.index != next.index-1 {
			tilt, flat = tangent(&top.Bearing, &next.Bearing)
		}
		if tilt <= top.From && len(stack) > 1 {
			stack = stack[:len(stack)-1]
			continue
		}
		if tilt >= next.To {
			return stack // next lies above the floor that top and its successor stand on
		}
		top.To, top.Flat, next.From = tilt, flat, tilt
		break
	}
	return append(stack, next)
}

// tangent returns the tilt at which a floor touches both arcs, a before b, and the
// length of floor between the two contacts:
//
//	(cb − ca)·u = Ra − Rb, and u′ points from a to b.
func tangent(a, b *Bearing) (tilt, flat float64) {
	d := r2.Sub(b.Centre(), a.Centre())
	apart := r2.Norm(d)
	if apart == 0 {
		return b.From, 0
	}
	near := b.From
	if math.IsInf(near, 0) {
		near = b.Angle
	}
	tilt = math.Atan2(d.X, d.Y) + math.Acos(max(-1, min(1, (b.Radius-a.Radius)/apart)))
	tilt = near + math.Remainder(tilt-near, 2*math.Pi)
	_, du := Down(tilt)
	return tilt, max(0, r2.Dot(r2.Sub(b.Contact(tilt), a.Contact(tilt)), du))
}

// closeAtChord gives the two tips their outer ranges, which end at the tilt where the piece lies on both, upside
// down. It reports false where that tilt is not beyond both tips.
func closeAtChord(bearings []Bearing) bool {
	nose, tail := &bearings[0], &bearings[len(bearings)-1]
	middle := (tail.From + nose.To + 2*math.Pi) / 2
	chord := r2.Sub(nose.At, tail.At)
	tilt := middle
	if chord != (r2.Vec{}) {
		tilt = middle + math.Remainder(math.Atan2(chord.Y, -chord.X)-middle, 2*math.Pi)
	}
	tail.To, tail.Flat = tilt, r2.Norm(chord)
	nose.From = tilt - 2*math.Pi
	return tail.From <= tail.To && nose.From <= nose.To
}

// measure fills in what follows from the ranges: the joints at the ends, and the
// length rolled over, counted from where the origin touches, which may be on a flat.
func measure(bearings []Bearing) {
	for i := range bearings {
		b := &bearings[i]
		b.First, b.Last = b.joint(b.From), b.joint(b.To)
	}
	zero, _ := slices.BinarySearchFunc(bearings, 0, func(b Bearing, tilt float64) int {
		if b.To <= tilt {
			return -1
		}
		return 1
	})
	zero = min(zero, len(bearings)-1)
	bearings[zero].Rolled = bearings[zero].Radius*bearings[zero].Angle - bearings[zero].Contact(0).X
	for i := zero + 1; i < len(bearings); i++ {
		b, last := &bearings[i], &bearings[i-1]
		b.Rolled = last.RolledAt(last.To) + last.Flat + b.Radius*(b.Angle-b.From)
	}
	for i := zero - 1; i >= 0; i-- {
		b, next := &bearings[i], &bearings[i+1]
		b.Rolled = next.RolledAt(next.From) - b.Flat + b.Radius*(b.Angle-b.To)
	}
}
