package bench

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// taperWithin is how far the arcs of a tapered top may leave it at the places tried, m. The
// 0.05 mm promised leaves room for the places between.
const taperWithin = 0.00004

// taperTried is how many places of each pair of arcs are tried.
const taperTried = 16

// thickness returns the depth of a tapered rocker (m) at a length along the floor edge from
// the origin, above zero towards the nose, and its slope.
func (r Rocker) thickness(along float64) (depth, slope float64) {
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
			depth, _ := r.thickness(from + s.Length*float64(k)/taperTried)
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

// A taperOver is the tapered top over one span, whose tail end lies tail (m) along the floor
// edge from the origin.
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
	depth, slope := c.thickness(along)
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
// and the arcs join in the middle between p + d·s and q − d·t (derived here: these two points
// are 2d apart, and the join lies d from each).
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
