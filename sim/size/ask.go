package size

import (
	"cmp"
	"math"
	"slices"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// A question is a design, and what it is sized for.
type question struct {
	design   piece.Design // limits raised to what is aimed for
	limits   piece.Limits // as they are in the file
	target   piece.Target
	sitters  check.Sitters
	limiting check.Sitters // of them, those who decide most limits
	drawn    check.Balanced
	start    shape // as drawn, one arc: the radius at the rest for a compound one
	room     room
	movable  bool // the low point may be moved under the seat
	alike    bool // left and right are alike: of a cradle that rocks sideways
}

func ask(d piece.Design) (question, error) {
	if err := possible(d); err != nil {
		return question{}, err
	}
	d, err := d.Fitted()
	if err != nil {
		return question{}, err
	}
	q := question{design: d.Clone(), target: d.Target, limits: d.Limits}
	q.design.Limits.BackMargin = max(d.Limits.BackMargin, d.Target.BackMargin)
	q.design.Limits.BackLift = max(d.Limits.BackLift, d.Target.BackLift)
	if q.drawn, err = check.Balance(d); err != nil {
		return q, err
	}
	if q.drawn.Curve != nil {
		return q, &UnsuitedError{"its rockers are measured, not drawn: draw [rocker] to size them"}
	}
	if q.sitters, err = check.SittersOf(d); err != nil {
		return q, err
	}
	q.limiting = q.sitters.ForLimits(q.design)
	feel, _ := FeelOf(q.drawn)
	radius := cmp.Or(d.Rocker.Radius, feel.Radius, largest(d.Rocker))
	nose, tail := q.drawn.Edge.Reach()
	q.start = shape{radii: []float64{radius}, nose: nose, tail: tail}
	q.room = roomOf(q.start)
	source, err := d.Source()
	q.alike = d.Directions().Across
	_, leans := q.leanOf()
	q.movable = leans && source != piece.ByReadings && !q.alike // for nothing else
	return q, err
}

// possible returns what the drawn seat, legs and braces lack, or the first wish that cannot be answered; else nil.
func possible(d piece.Design) error {
	t, unsound := d.Target, d.Validate()
	switch {
	case unsound != nil:
		return unsound
	case t.Arcs != math.Trunc(t.Arcs) || t.Arcs > 3:
		return &piece.KeyError{Key: "target.arcs", Reason: "a rocker is found with one, two or three arcs", Give: "arcs"}
	case (t.SeatFalls.Asked || t.Empty.Asked) && !d.Seat.SlopeKnown():
		key := "target.seat_falls"
		if !t.SeatFalls.Asked {
			key = "target.seat_falls_empty"
		}
		return &piece.KeyError{Key: key, Reason: "no seat is drawn that could fall: draw one, with front, rear and depth", Give: "seat"}
	case t.BackLeans.Asked && !d.Back.Drawn():
		return &piece.KeyError{Key: "target.back_leans", Reason: "no back is drawn that could lean: draw one", Give: "back"}
	}
	return nil
}

func (q *question) answer(s shape) (check.Balanced, bool) {
	if !(slices.Min(s.lengths()) > 0) {
		return check.Balanced{}, false
	}
	r, err := q.limiting.Balance(s.with(q.design))
	return r, err == nil
}

func (q *question) misses(s shape) []Miss {
	r, ok := q.answer(s)
	if !ok {
		return []Miss{{Aim: Sensible, Steps: noAnswer}}
	}
	list := misses(q.target, r)
	if cramped := q.room.cramped(s); cramped > 0 {
		list = append(list, Miss{Aim: Sensible, Steps: cramped})
	}
	return list
}

// strays is what going away from what was drawn costs in a score: an inch at either end, or a tenth
// of a radius, as much as an aim that is missed by √(1/1000) of a step.
const strays = 1e-3

// score scores a shape: how far a search has to go to the aims, and ever so little how far it goes from the one drawn,
// in inches of its ends and tenths of radii, squared, so that nothing is changed for nothing.
func (q *question) score(s shape) float64 {
	square := func(x float64) float64 { return x * x }
	strayed := square((s.nose-q.start.nose)/inch) + square((s.tail-q.start.tail)/inch) + square(s.low/inch)
	for _, r := range s.radii {
		strayed += square(math.Log(r/q.start.radii[0]) / 0.1)
	}
	list := q.misses(s)
	for i := range list {
		list[i].Steps = list[i].sought()
	}
	return score(list) + strays*strayed
}
