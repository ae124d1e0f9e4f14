package layout

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/piece"
)

// A Paired is a part that is made as a left and a right one, mirror images of each other, and how
// the two are cut from one board.
type Paired struct {
	Name string // "front leg", "arm"
	Size Size   // of one, as finished
	Pair bench.Pair
}

// pairs lays out the legs, as the side view shows them with their feet cut to the rocker, and the
// arms, which run straight from their width at the back to that in front.
func (l *Layout) pairs() error {
	add := func(name string, size Size, corners ...r2.Vec) error {
		outline := bench.Path{Start: corners[0], Closed: true}
		for _, c := range append(corners[1:len(corners):len(corners)], corners[0]) {
			outline.Strokes = append(outline.Strokes, bench.Stroke{To: c})
		}
		pair, err := bench.Nested(outline, 0, l.Shop.Kerf)
		if err != nil {
			return l.explain(err)
		}
		l.Pairs = append(l.Pairs, Paired{name, size, pair})
		return nil
	}
	for _, leg := range l.Legs {
		size, half := leg.finished(l.Design), leg.Side/2
		cut := half * math.Tan(leg.Standing.Cut) // the nose side of the foot is higher by it
		if err := add(leg.Name, size, r2.Vec{X: cut, Y: -half}, r2.Vec{X: size.Length, Y: -half}, r2.Vec{X: size.Length, Y: half}, r2.Vec{X: -cut, Y: half}); err != nil {
			return err
		}
	}
	arms, taken := l.Design.ArmsOr()
	if arms.Height == 0 || !(arms.Length > 0) {
		return nil
	}
	l.ArmsTaken = taken
	wide := max(arms.Width, arms.RearWidth)
	return add("arm", Size{arms.Length, wide, piece.ArmThickness},
		r2.Vec{Y: -arms.RearWidth / 2}, r2.Vec{X: arms.Length, Y: -arms.Width / 2}, r2.Vec{X: arms.Length, Y: arms.Width / 2}, r2.Vec{Y: arms.RearWidth / 2})
}

// finished returns the size of a leg from its foot to the top of the seat, the added block that is
// drawn taken off.
func (leg Leg) finished(d piece.Design) Size {
	length := leg.Standing.Length + d.Seat.ThickOr()
	if leg.Leg.Block > 0 {
		length -= leg.Block.Shorter
	}
	return Size{length, leg.Side, leg.Side}
}
