package bench

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// Outline returns the outline of the wood, chair frame, m: counter-clockwise from the tail
// tip along the floor edge to the nose and back along the top edge. The floor edge and a
// concentric top are true arcs; a tapered top is followed by arcs to within 0.05 mm.
//
// At a corner of the floor edge the lines set inwards meet at their crossing, at a notch they
// go round it on an arc. The error is an [*OutlineError]: a depth that is more than the
// radius of an arc, lines that do not meet over a corner, a straight top that comes to the
// floor edge short of a tip, an eased corner without room, an outline that crosses itself.
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

// straightTop returns the level line at Depth over the origin between the two lines square to
// the floor edge at its tips.
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
