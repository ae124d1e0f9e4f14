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
	Size Size   // of one, as finished; its length is that of the outline
	Pair bench.Pair
}

// pairs lays out the legs, as the side view shows their longer side with the foot cut to the rocker, and
// the arms, which run straight from their width at the back to that in front.
func (l *Layout) pairs() error {
	add := func(name string, size Size, corners ...r2.Vec) error {
		outline := bench.Path{Start: corners[0], Closed: true}
		for _, c := range append(corners[1:len(corners):len(corners)], corners[0]) {
			outline.Strokes = append(outline.Strokes, bench.Stroke{To: c})
		}
		pair, err := l.paired(outline, 0)
		if err != nil {
			return err
		}
		l.Pairs = append(l.Pairs, Paired{name, size, pair})
		return nil
	}
	for _, leg := range l.Legs {
		size, cut := leg.finished(l.Design)
		half, nose, tail := leg.Side/2, max(0, cut), max(0, -cut)
		top := r2.Vec{X: size.Length, Y: half}
		if err := add(leg.Name, size, r2.Vec{X: nose, Y: -half}, r2.Vec{X: top.X, Y: -half}, top, r2.Vec{X: tail, Y: half}); err != nil {
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

// finished returns the size of a leg from its foot to the top of the seat, its length that of its longest edge:
// the centre line, and half of what the foot is out of square along the rocker and across it. cut
// is by how much the foot's nose side is shorter than its tail side, m. On a block that is
// drawn it is sawn square, and the block taken off.
func (leg Leg) finished(d piece.Design) (size Size, cut float64) {
	length := leg.Standing.Length + d.Seat.ThickOr()
	if leg.Leg.Block > 0 {
		return Size{length - leg.Block.Shorter, leg.Side, leg.Side}, 0
	}
	cut = leg.Side * math.Tan(leg.Standing.Cut)
	across := leg.Side * math.Tan(leg.Standing.Across)
	return Size{length + (math.Abs(cut)+math.Abs(across))/2, leg.Side, leg.Side}, cut
}
