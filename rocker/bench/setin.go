package bench

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
)

// A floorSpan is a span of the floor edge with its number, from the nose. Here the edge is
// walked from the tail to the nose, the wood being on the left.
type floorSpan struct {
	rocker.DrawnSpan
	index int
}

// spans returns the floor edge from the tail to the nose, without corners before the first
// length and behind the last, which no end could follow.
func (r Rocker) spans() []floorSpan {
	var list []floorSpan
	last := 0
	for i, s := range slices.Backward(r.Edge.Drawn()) {
		if s.Length > 0 || len(list) > 0 {
			list = append(list, floorSpan{s, i})
		}
		if s.Length > 0 {
			last = len(list)
		}
	}
	return list[:last]
}

// inside returns the point a depth above p, square to the floor at the given tilt.
func inside(p r2.Vec, tilt, depth float64) r2.Vec {
	down, _ := rocker.Down(tilt)
	return r2.Sub(p, r2.Scale(depth, down))
}

// set returns the span set inwards by a depth, from its tail end to its nose end.
func (s floorSpan) set(depth float64) Piece {
	return Piece{inside(s.End, s.To, depth), Stroke{inside(s.Start, s.From, depth), s.To - s.From}}
}

// tooDeep is the error of a depth (m) that reaches the centre of the span's arc.
func (s floorSpan) tooDeep(depth float64) error {
	return &OutlineError{s.index, fmt.Sprintf("a depth of %g m is not less than the radius, %g m", depth, s.Radius)}
}

// setIn returns the floor edge set inwards by a depth, m.
func setIn(spans []floorSpan, depth float64) ([]Piece, error) {
	return joined(spans, func(s floorSpan) ([]Piece, error) {
		if s.Curvature()*depth >= 1 {
			return nil, s.tooDeep(depth)
		}
		return []Piece{s.set(depth)}, nil
	})
}

// joined lays the pieces that stand over each span one after another: those over a corner
// are cut where they cross, those over a notch are joined by an arc round it.
func joined(spans []floorSpan, over func(floorSpan) ([]Piece, error)) ([]Piece, error) {
	var done, run []Piece // run is what follows on the last corner or notch
	var pending floorSpan
	for _, s := range spans {
		if s.Length == 0 {
			done, run, pending = append(done, run...), nil, s
			continue
		}
		next, err := over(s)
		if err != nil {
			return nil, err
		}
		if len(run) > 0 || len(done) == 0 {
			run = append(run, next...)
			continue
		}
		if done, run, err = turned(done, next, pending); err != nil {
			return nil, err
		}
	}
	return append(done, run...), nil
}

// turned joins what stands before a turn of the floor edge to what stands behind it.
func turned(before, behind []Piece, corner floorSpan) (done, run []Piece, err error) {
	end, start := before[len(before)-1].To, behind[0].From
	switch {
	case r2.Norm(r2.Sub(end, start)) < samePoint:
		behind[0].From = end
		return before, behind, nil
	case corner.Turn < 0:
		around := Piece{end, Stroke{start, corner.Turn}}
		return append(before, around), behind, nil
	}
	i, j, m, found := nearest(before, behind)
	if !found {
		return nil, nil, &OutlineError{corner.index, "over the corner the lines set inwards do not cross"}
	}
	done = append([]Piece{}, before[:i+1]...)
	run = append([]Piece{}, behind[j:]...)
	done[i] = done[i].Cut(0, m.first)
	run[0] = run[0].Cut(m.second, 1)
	run[0].From = done[i].To
	return done, run, nil
}

// nearest returns the crossing of two chains that cuts off the least of both, the one ending
// and the other beginning at a corner.
func nearest(before, behind []Piece) (first, second int, at meeting, found bool) {
	least, lostBefore := math.Inf(1), 0.0
	for i := len(before) - 1; i >= 0; i-- {
		lostBehind := 0.0
		for j := range behind {
			for _, m := range meet(before[i], behind[j]) {
				lost := lostBefore + (1-m.first)*before[i].Length() + lostBehind + m.second*behind[j].Length()
				if lost < least && m.first > 0 && m.second < 1 {
					least, first, second, at, found = lost, i, j, m, true
				}
			}
			lostBehind += behind[j].Length()
		}
		lostBefore += before[i].Length()
	}
	return first, second, at, found
}
