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

// nearest returns the crossing of a chain that ends at a corner with one that begins there which cuts off least.
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

// taperWithin is how far the arcs of a tapered top may leave it at the places tried, m. The
// 0.05 mm promised leaves room for the places between.
const taperWithin = 0.00004

// taperTried is how many places of each pair of arcs are tried.
const taperTried = 16

// Thickness returns the depth of a rocker whose top is not straight (m) at a length along the floor edge
// from the origin, above zero towards the nose, and its slope.
func (r Rocker) Thickness(along float64) (depth, slope float64) {
	reach, behind := r.Edge.Reach()
	tip, tail := r.depths()
	if along < 0 {
		reach, tip = behind, tail
	}
	if reach == 0 {
		return r.Depth, 0
	}
	part := along / reach
	return r.Depth + (tip-r.Depth)*part*part, 2 * (tip - r.Depth) * part / reach
}

// taperedTop returns the top edge of a tapered rocker from the tail to the nose.
func (r Rocker) taperedTop(spans []floorSpan) ([]Piece, error) {
	_, tail := r.Edge.Reach()
	end := -tail // of the span before
	return joined(spans, func(s floorSpan) ([]Piece, error) {
		from, to := end, end+s.Length
		end = to
		for k := range taperTried + 1 {
			depth, _ := r.Thickness(from + s.Length*float64(k)/taperTried)
			if s.Curvature()*depth >= 1 {
				return nil, s.tooDeep(depth)
			}
		}
		over := taperOver{r, s, from}
		if from < 0 && to > 0 { // over the origin the rule changes
			return append(fit(over, from, 0, 0), fit(over, 0, to, 0)...), nil
		}
		return fit(over, from, to, 0), nil
	})
}

// A taperOver is the tapered top over a span whose tail end lies tail (m) along the floor edge from the origin.
type taperOver struct {
	Rocker
	floorSpan
	tail float64
}

// at returns the point of the top over a place of the floor edge, and its heading. Walked
// from the tail the floor edge heads −tilt; the top climbs against it by t′/(1 − κt).
func (c taperOver) at(along float64) (r2.Vec, float64) {
	on := along - c.tail
	tilt := c.To - on*c.Curvature()
	floor := c.floorSpan.set(0).At(max(0, min(1, on/c.Length)))
	depth, slope := c.Thickness(along)
	return inside(floor, tilt, depth), math.Atan2(slope, 1-c.Curvature()*depth) - tilt
}

// fit returns arcs that follow the curve between two places and share its heading at both,
// halving what lies between until they do: a dozen times is more than any edge below 100 m takes.
func fit(c taperOver, from, to float64, halved int) []Piece {
	p, hp := c.at(from)
	q, hq := c.at(to)
	pair := biarc(p, hp, q, hq)
	worst := 0.0
	for k := 1; k < taperTried; k++ {
		on, _ := c.at(from + (to-from)*float64(k)/taperTried)
		worst = max(worst, min(pair[0].off(on), pair[1].off(on)))
	}
	if worst <= taperWithin || halved > 12 {
		return pair
	}
	middle := (from + to) / 2
	return append(fit(c, from, middle, halved+1), fit(c, middle, to, halved+1)...)
}

// biarc returns two arcs from p to q with the given headings at these ends, fair where they
// join: with unit headings s and t and v = q − p, the two tangents of each arc are d long,
//
//	2(1 − s·t)·d² + 2v·(s + t)·d − v·v = 0,
//
// and the arcs join midway between p + d·s and q − d·t (derived here: these are 2d apart, the join d from each).
func biarc(p r2.Vec, hp float64, q r2.Vec, hq float64) []Piece {
	s, t, v := ahead(hp), ahead(hq), r2.Sub(q, p)
	along := r2.Dot(v, r2.Add(s, t))
	bend := 2 * (1 - r2.Dot(s, t))
	d := r2.Norm2(v) / (along + math.Sqrt(along*along+bend*r2.Norm2(v)))
	join := r2.Scale(0.5, r2.Add(r2.Add(p, r2.Scale(d, s)), r2.Sub(q, r2.Scale(d, t))))
	toward := func(from, to r2.Vec) float64 { w := r2.Sub(to, from); return math.Atan2(w.Y, w.X) }
	return []Piece{
		{p, Stroke{join, 2 * math.Remainder(toward(p, join)-hp, 2*math.Pi)}},
		{join, Stroke{q, 2 * math.Remainder(hq-toward(join, q), 2*math.Pi)}},
	}
}

// off returns how far q lies from the line or circle of the piece, m.
func (s Piece) off(q r2.Vec) float64 {
	if s.straight() {
		return math.Abs(r2.Cross(r2.Unit(s.chord()), r2.Sub(q, s.From)))
	}
	return math.Abs(r2.Norm(r2.Sub(q, s.centre())) - math.Abs(s.Radius()))
}
