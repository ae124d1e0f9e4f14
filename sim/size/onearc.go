package size

import (
	"math"
	"slices"

	"rockerwright/rocker/root"
	"rockerwright/sim"
	"rockerwright/sim/piece"
)

// oneArc returns the shape of one arc that meets the aims, changing as little as it can: the
// radius makes the time, the place of the low point the rest with somebody in it, and nose
// and tail grow only where a limit asks for it. met is false where that is not all.
func (q *question) oneArc() (s shape, met bool) {
	s = q.start
	for range 4 { // longer ends weigh a little, and move the rest a little
		s = q.leaned(q.timed(s))
		longer := q.lengthened(s)
		if longer.nose == s.nose && longer.tail == s.tail {
			break
		}
		s = longer
	}
	s = q.leaned(q.timed(s))
	if q.alike {
		s.nose = max(s.nose, s.tail)
		s.tail = s.nose
	}
	return s, !slices.ContainsFunc(q.misses(s), func(m Miss) bool {
		return m.must() && m.Steps > 0 || !m.must() && math.Abs(m.Steps) > 1e-3
	})
}

// timed returns the shape on whose radius a rock takes the time, the rest with somebody in it staying put.
func (q *question) timed(s shape) shape {
	if q.target.OneRock <= 0 {
		return s
	}
	short := func(radius float64) float64 {
		t := s
		t.radii = []float64{radius}
		r, ok := q.answer(q.leaned(t))
		if !ok {
			return math.NaN()
		}
		now, rests := FeelOf(r)
		if !rests {
			return math.NaN()
		}
		return now.RadiusForPeriod(q.target.OneRock) - now.Radius
	}
	if radius, found := zero(short, s.radii[0], q.room.radius[0], q.room.radius[1]); found {
		s.radii = []float64{radius}
	}
	return s
}

// leaned returns the shape with the low point where seat or back lean as is wished: with somebody in it, or empty
// where only that is wished. The weight moves against the contact by about what the low point does, so the secant finds
// two places around it in a few steps; where it jumps between them a heel just lifts there, and it rests at the jump.
func (q *question) leaned(s shape) shape {
	behind, asked := q.leanOf()
	if !asked || !q.movable {
		return s
	}
	at := func(low float64) float64 {
		t := s
		t.low = low
		return behind(t)
	}
	a, fa := s.low, at(s.low)
	if math.IsNaN(fa) || fa == 0 {
		return s
	}
	start, b := a, a+fa
	for range 12 {
		fb := at(b)
		switch {
		case math.Abs(fb) < 1e-13: // as far as it is known
			s.low = b
			return s
		case fa*fb < 0:
			s.low = root.Between(at, min(a, b), max(a, b), 0)
			return s
		}
		next := b - fb*(b-a)/(fb-fa)
		if math.IsNaN(next) || math.Abs(next-start) > furthestLow {
			break
		}
		a, fa, b = b, fb, next
	}
	return s
}

// furthestLow is how far a low point is moved at most, m; our judgement: nobody sits so far from where it was drawn.
const furthestLow = 0.5

// leanOf returns how far the weight of a shape stands behind the contact at the first lean that is wished, m: the rest
// itself stands still while it lies on a step of the feet.
func (q *question) leanOf() (behind func(s shape) float64, asked bool) {
	t := piece.Target{SeatFalls: q.target.SeatFalls, BackLeans: q.target.BackLeans, Empty: q.target.Empty}
	return func(s shape) float64 {
		r, ok := q.answer(s)
		switch {
		case !ok:
			return math.NaN()
		case t.SeatFalls.Asked:
			return r.SeatBehind(r.Seated(), t.SeatFalls.Value)
		case t.BackLeans.Asked:
			return r.BackBehind(r.Seated(), t.BackLeans.Value)
		}
		return r.SeatBehind(&r.Loads[0], t.Empty.Value)
	}, t.Asks()
}

// lengthened returns the shape with tail, then nose, where too short, just as long as the limits ask.
func (q *question) lengthened(s shape) shape {
	for _, end := range []func(s *shape) *float64{func(s *shape) *float64 { return &s.tail }, func(s *shape) *float64 { return &s.nose }} {
		failing := func(length float64) (steps float64) { // by which limits fail
			t := s
			*end(&t) = length
			for _, m := range q.misses(t) {
				if m.Aim == KeepsLimit {
					steps += max(0, m.Steps)
				}
			}
			return steps
		}
		from := *end(&s)
		now := failing(from)
		if now <= 0 || !(failing(from*2) < now) {
			continue // it holds, or no length helps
		}
		holds := from
		for holds < 2*from && failing(holds) > 0 {
			holds += 0.02
		}
		if failing(holds) > 0 {
			continue
		}
		*end(&s), _ = root.Edge(func(length float64) bool { return !(failing(length) > 0) }, holds, holds-0.02, 2e-14, 0)
	}
	return s
}

// How a brake is laid: so far behind the hindmost rest, and so much flatter. Our judgement: near enough to be felt
// on a deep rock, far enough that nobody rests on the joint.
const brakeBehind, brakeFlatter = 3 * math.Pi / 180, 1.6

// flatterTail returns the shape of one arc with a flatter one behind, as a brake: the joint lies a little behind
// the rest of who leans furthest back, the ends stay. ok is false where the tail does not reach so far.
func (q *question) flatterTail(one shape) (s shape, ok bool) {
	r, ok := q.answer(one)
	if !ok {
		return one, false
	}
	furthest := math.Inf(-1)
	for i := range r.Loads {
		if b := &r.Loads[i].Balance; b.Outcome == sim.Rocks {
			furthest = max(furthest, b.Rest.Tilt-q.design.Floor.Slope)
		}
	}
	joint := one.radii[0] * (max(furthest, 0) + brakeBehind)
	if joint > one.tail-2*leastArc {
		return one, false
	}
	s = one
	s.radii = []float64{one.radii[0], brakeFlatter * one.radii[0]}
	s.joints = []float64{joint}
	return s, true
}

// zero returns where a function passes from above zero to below between low and high, both more than zero, nearest
// to start, looking outwards by steps of 4 %. NaN counts as above zero. found is false where it never passes.
func zero(f func(x float64) float64, start, low, high float64) (x float64, found bool) {
	const step = 1.04
	above := func(x float64) bool { return !(f(x) <= 0) }
	larger := above(start)
	for last := start; larger && last < high || !larger && last > low; {
		next := last / step
		if larger {
			next = last * step
		}
		if above(next) != larger {
			return root.Between(f, min(last, next), max(last, next), 0), true
		}
		last = next
	}
	return 0, false
}
