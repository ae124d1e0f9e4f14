package bench

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// Simple reports whether the path neither crosses nor touches itself, but for the two ends
// where it is closed. Strokes that lie on one another along a whole stretch are seen only by
// what crosses beside them.
func (p Path) Simple() bool {
	list := p.Pieces()
	for i, a := range list {
		for j := i + 1; j < len(list); j++ {
			b := list[j]
			after := j == i+1
			before := p.Closed && i == 0 && j == len(list)-1
			if !apartBoxes(a, b) && crossAway(a, b, after, before) {
				return false
			}
		}
	}
	return true
}

// crossAway reports whether a and b meet elsewhere than where b follows on a (after) or a on
// b (before).
func crossAway(a, b Piece, after, before bool) bool {
	if after && turnsBack(a, b) || before && turnsBack(b, a) {
		return true
	}
	for _, m := range meet(a, b) {
		q := a.At(m.first)
		shared := after && closeBy(q, a.To) || before && closeBy(q, a.From)
		if !shared {
			return true
		}
	}
	return false
}

// jointReach is how far from a joint the rounding of a slanting meeting may put it, m.
const jointReach = 1e-7

func closeBy(p, q r2.Vec) bool { return r2.Norm(r2.Sub(p, q)) < jointReach }

// corner returns by how much the heading turns from the end of a to the start of b, rad.
func corner(a, b Piece) float64 {
	return math.Remainder(b.heading(0)-a.heading(1), 2*math.Pi)
}

// turnsBack reports whether b leaves the way a came.
func turnsBack(a, b Piece) bool {
	return math.Abs(corner(a, b)) > math.Pi-1e-9 && a.straight() && b.straight()
}

// apartBoxes reports whether the upright rectangles round the two do not touch.
func apartBoxes(a, b Piece) bool {
	p, q := pathOf([]Piece{a}, false).Bounds(), pathOf([]Piece{b}, false).Bounds()
	return p.Min.X > q.Max.X+samePoint || q.Min.X > p.Max.X+samePoint ||
		p.Min.Y > q.Max.Y+samePoint || q.Min.Y > p.Max.Y+samePoint
}
