package bench

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// Outline returns the outline of the wood, chair frame, m: counter-clockwise from the tail
// tip along the floor edge to the nose and back along the top edge. The floor edge and a
// concentric top are true arcs; a tapered top is followed by arcs to within 0.05 mm.
//
// At a corner of the floor edge the lines set inwards meet at their crossing, round a notch they go on an arc. The
// error is an [*OutlineError]: a depth of more than the radius, lines that do not meet over a corner, a straight
// top that comes to the floor edge short of a tip, an eased corner without room, an outline that crosses itself.
func (r Rocker) Outline() (Path, error) {
	edges, err := r.edges()
	if err != nil {
		return Path{}, err
	}
	wood, noseEnd, top, err := r.Nose.between(edges.wood, edges.top)
	if err != nil {
		return Path{}, err
	}
	top, tailEnd, wood, err := r.Tail.between(top, wood)
	if err != nil {
		return Path{}, err
	}
	outline := pathOf(slices.Concat(wood, noseEnd, top, tailEnd), true)
	if !outline.Simple() || outline.Area() <= 0 {
		return Path{}, &OutlineError{-1, "the outline crosses itself"}
	}
	return outline, nil
}

// Edges returns the drawn floor edge and the lower edge of the wood, which differ by the
// sole, from the tail to the nose, and the top edge from the nose to the tail, none of them
// with the ends, the top as far as a round one touches it; chair frame, m. The error is an [*OutlineError].
func (r Rocker) Edges() (floor, wood, top Path, err error) {
	e, err := r.edges()
	return pathOf(e.floor, false), pathOf(e.wood, false), pathOf(e.top, false), err
}

// sides are the edges as pieces: floor and wood from the tail, top from the nose.
type sides struct{ floor, wood, top []Piece }

func (r Rocker) edges() (sides, error) {
	if err := r.check(); err != nil {
		return sides{}, err
	}
	spans := r.spans()
	var e sides
	for _, s := range spans {
		if s.Length > 0 {
			e.floor = append(e.floor, s.set(0))
		}
	}
	e.wood = e.floor
	var err error
	if r.Sole > 0 {
		if e.wood, err = setIn(spans, r.Sole); err != nil {
			return sides{}, err
		}
	}
	switch {
	case r.Top == rocker.Straight:
		e.top, err = r.straightTop(spans)
	case !r.concentric():
		e.top, err = r.taperedTop(spans)
	default:
		e.top, err = setIn(spans, r.Depth)
	}
	if err != nil {
		return sides{}, err
	}
	first, last := e.wood[0], e.wood[len(e.wood)-1]
	if r.Tail.Finish == Round {
		if e.top, err = rounded(first.From, left(first.heading(0)), e.top, -1); err != nil {
			return sides{}, err
		}
	}
	e.top = backwards(e.top)
	if r.Nose.Finish == Round {
		e.top, err = rounded(last.To, left(last.heading(1)), e.top, 1)
	}
	return e, err
}

// straightTop returns the level line at Depth between the lines square to the floor edge at its tips.
func (r Rocker) straightTop(spans []floorSpan) ([]Piece, error) {
	end := func(tip r2.Vec, tilt float64) (at r2.Vec, over bool) {
		over = r.Depth-tip.Y > r.Sole*math.Cos(tilt) && math.Cos(tilt) > 0
		return r2.Vec{X: tip.X + math.Tan(tilt)*(r.Depth-tip.Y), Y: r.Depth}, over
	}
	first, last := spans[0], spans[len(spans)-1]
	tail, overTail := end(first.End, first.To)
	nose, overNose := end(last.Start, last.From)
	switch {
	case !overTail || !overNose:
		return nil, &OutlineError{-1, "the straight top comes to the floor edge short of a tip"}
	case nose.X-tail.X < samePoint:
		return nil, &OutlineError{-1, "the two square ends meet below the straight top"}
	}
	return []Piece{{tail, Stroke{To: nose}}}, nil
}

// backwards returns the chain walked the other way.
func backwards(list []Piece) []Piece {
	back := make([]Piece, len(list))
	for i, s := range list {
		back[len(list)-1-i] = Piece{s.To, Stroke{s.From, -s.Turn}}
	}
	return back
}

// between returns the end from the last piece of one edge to the first of another, and what easing leaves of both.
func (e End) between(before, behind []Piece) (edge, end, other []Piece, err error) {
	last, next := before[len(before)-1], behind[0]
	line := Piece{last.To, Stroke{To: next.From}}
	switch {
	case r2.Norm(line.chord()) < samePoint:
		return nil, nil, nil, &OutlineError{-1, "an end has no depth"}
	case e.Finish == Round:
		line.Turn = math.Pi + math.Remainder(corner(last, next)-math.Pi, 2*math.Pi)
	case e.Finish == Eased:
		last, first, line, err := ease(last, line, e.Radius)
		if err != nil {
			return nil, nil, nil, err
		}
		line, second, next, err := ease(line, next, e.Radius)
		edge = append(slices.Clone(before[:len(before)-1]), last)
		return edge, []Piece{first, line, second}, append([]Piece{next}, behind[1:]...), err
	}
	return before, []Piece{line}, behind, nil
}

// rounded returns a top edge, walked from a tip, that begins where a round end touches it: it is cut there, or made
// longer. in is the unit vector into the wood at the tip, square to its lower edge, and side is +1 where
// the wood lies on the left of the top edge, −1 on the right.
//
// The end is the circle that touches the lower edge at the tip P and the top edge. Of a top with
// the curvature κ = 1/R towards the wood, the unit vector m into it and a point Q, |P + ρ·in − (Q + R·m)| = R − ρ gives
//
//	ρ = (m·(P − Q) − κ|P − Q|²/2)/(1 − m·in + κ in·(P − Q))
func rounded(tip, in r2.Vec, top []Piece, side float64) ([]Piece, error) {
	for i, s := range top {
		m, curvature := r2.Scale(side, left(s.heading(0))), 0.0
		if !s.straight() {
			curvature = side / s.Radius()
		}
		away := r2.Sub(tip, s.From)
		radius := (r2.Dot(m, away) - curvature*r2.Norm2(away)/2) / (1 - r2.Dot(m, in) + curvature*r2.Dot(in, away))
		centre := r2.Add(tip, r2.Scale(radius, in))
		square := r2.Unit(r2.Add(m, r2.Scale(curvature, r2.Sub(s.From, centre)))) // into the wood where they touch
		touch := r2.Sub(centre, r2.Scale(radius, square))
		part := r2.Dot(r2.Sub(touch, s.From), s.chord()) / r2.Norm2(s.chord())
		if curvature != 0 {
			part = math.Atan2(r2.Cross(m, square), r2.Dot(m, square)) / s.Turn
		}
		switch {
		case !(radius > samePoint):
			return nil, &OutlineError{-1, "a round end does not touch both edges"}
		case math.Abs(part)*s.Length() < samePoint:
			return top[i:], nil
		case part < 1 && (part > 0 || i == 0):
			return append([]Piece{{touch, Stroke{s.To, s.Turn * (1 - part)}}}, top[i+1:]...), nil
		}
	}
	return nil, &OutlineError{-1, "a round end does not touch both edges"}
}

// ease rounds off the corner to the left from a to b: the centre of the new arc lies where both, set inwards by its
// radius (m), cross, and it touches each at the same part of its length.
func ease(a, b Piece, radius float64) (before, arc, behind Piece, err error) {
	setA, okA := a.setLeft(radius)
	setB, okB := b.setLeft(radius)
	_, _, m, found := nearest([]Piece{setA}, []Piece{setB})
	turn := math.Remainder(b.heading(m.second)-a.heading(m.first), 2*math.Pi)
	if !okA || !okB || corner(a, b) <= 0 || !found || turn <= 0 ||
		m.first*a.Length() < samePoint || (1-m.second)*b.Length() < samePoint {
		err = &OutlineError{-1, fmt.Sprintf("there is no room for a corner eased to %g m", radius)}
		return Piece{}, Piece{}, Piece{}, err
	}
	before, behind = a.Cut(0, m.first), b.Cut(m.second, 1)
	return before, Piece{before.To, Stroke{behind.From, turn}}, behind, nil
}

// setLeft returns the piece set to its left by a distance, m, and whether that is less than the radius there.
func (s Piece) setLeft(distance float64) (Piece, bool) {
	from := r2.Add(s.From, r2.Scale(distance, left(s.heading(0))))
	to := r2.Add(s.To, r2.Scale(distance, left(s.heading(1))))
	return Piece{from, Stroke{to, s.Turn}}, s.straight() || s.Turn <= 0 || s.Radius() > distance
}
