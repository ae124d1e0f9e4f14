package bench

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// between returns the end from the last piece of one edge to the first of the other.
func (e End) between(last, next piece) ([]piece, error) {
	line := piece{last.To, Stroke{To: next.from}}
	if r2.Norm(line.chord()) < samePoint {
		return nil, &OutlineError{-1, "an end has no depth"}
	}
	if e.Finish == Round {
		line.Turn = math.Pi
	}
	return []piece{line}, nil
}

// eased rounds off the two corners of an eased end, which lies between the edges before and
// behind it; other ends stay as they are.
func (e End) eased(before, end, behind []piece) (edge, other, eased []piece, err error) {
	if e.Finish != Eased {
		return before, behind, end, nil
	}
	a, r, b, err := ease(before[len(before)-1], end[0], e.Radius)
	if err != nil {
		return nil, nil, nil, err
	}
	b, s, c, err := ease(b, behind[0], e.Radius)
	if err != nil {
		return nil, nil, nil, err
	}
	edge = append(append([]piece{}, before[:len(before)-1]...), a)
	other = append([]piece{c}, behind[1:]...)
	return edge, other, []piece{r, b, s}, nil
}

// ease rounds off the corner to the left from a to b: the centre of the new arc lies where
// both, set inwards by its radius (m), cross, and the arc touches each at the same part of
// its length.
func ease(a, b piece, radius float64) (before, arc, behind piece, err error) {
	none := &OutlineError{-1, fmt.Sprintf("there is no room for a corner eased to %g m", radius)}
	setA, okA := a.setLeft(radius)
	setB, okB := b.setLeft(radius)
	if !okA || !okB || corner(a, b) <= 0 {
		return piece{}, piece{}, piece{}, none
	}
	_, _, m, found := nearest([]piece{setA}, []piece{setB})
	if !found || m.first*a.length() < samePoint || (1-m.second)*b.length() < samePoint {
		return piece{}, piece{}, piece{}, none
	}
	before, behind = a.cut(0, m.first), b.cut(m.second, 1)
	turn := math.Remainder(b.heading(m.second)-a.heading(m.first), 2*math.Pi)
	if turn <= 0 {
		return piece{}, piece{}, piece{}, none
	}
	return before, piece{before.To, Stroke{behind.from, turn}}, behind, nil
}

// setLeft returns the piece set to its left by a distance, m, and whether it is less than
// the radius there.
func (s piece) setLeft(distance float64) (piece, bool) {
	if !s.straight() && s.Turn > 0 && s.radius() <= distance {
		return piece{}, false
	}
	from := r2.Add(s.from, r2.Scale(distance, left(s.heading(0))))
	to := r2.Add(s.To, r2.Scale(distance, left(s.heading(1))))
	return piece{from, Stroke{to, s.Turn}}, true
}
