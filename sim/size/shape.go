package size

import (
	"math"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// A shape is what sizing may change: radii from nose to tail, where they join, and the ends,
// as lengths along the floor edge from the low point, and how far the low point moves forward
// under the seat.
type shape struct {
	radii      []float64
	joints     []float64 // from the low point towards the tail, below zero towards the nose
	nose, tail float64
	low        float64
}

// shapeOf returns the shape a design is drawn with as one arc: the radius at the rest for a
// compound one.
func shapeOf(r check.Balanced, radius float64) shape {
	nose, tail := r.Edge.Reach()
	return shape{radii: []float64{radius}, nose: nose, tail: tail}
}

// with returns the design with the shape.
func (s shape) with(d piece.Design) piece.Design {
	d = lowPoint(d, s.low)
	rocker := &d.Rocker
	rocker.Radius, rocker.Tail, rocker.Arcs, rocker.Nose = 0, 0, nil, s.nose
	if len(s.radii) == 1 {
		rocker.Radius, rocker.Tail = s.radii[0], s.tail
		return d
	}
	from := -s.nose
	for i, radius := range s.radii {
		to := s.tail
		if i < len(s.joints) {
			to = s.joints[i]
		}
		rocker.Arcs = append(rocker.Arcs, piece.Arc{Radius: radius, Length: to - from})
		from = to
	}
	return d
}

// lowPoint returns the design with the low point moved forward under all that is drawn over
// it. Where the piece is given as plain numbers its balance point goes along.
func lowPoint(d piece.Design, by float64) piece.Design {
	if by == 0 {
		return d.Clone()
	}
	return shifted(d, -by, 0)
}

// shifted returns the design with all that stands on the rockers moved forward and up.
func shifted(d piece.Design, forward, up float64) piece.Design {
	d = d.Clone()
	if d.Seat.Rear > 0 {
		d.Seat.Behind -= forward
		d.Seat.Rear += up
		if d.Seat.Front > 0 {
			d.Seat.Front += up
		}
	}
	if d.Bed.Height > 0 {
		d.Bed.Height += up
	}
	for i := range d.Parts {
		d.Parts[i].At.X += forward
		d.Parts[i].At.Y += up
	}
	if d.Body.Mass > 0 {
		d.Body.Centre.X += forward
		d.Body.Centre.Y += up
	}
	for i := range d.Sitters {
		if c := &d.Sitters[i].Centre; c.X != 0 || c.Y != 0 {
			c.X += forward
			c.Y += up
		}
	}
	return d
}

// A room is how long the ends and how large the radii of a rocker may be, m.
type room struct {
	nose, tail, radius [2]float64
}

// roomOf returns the ranges of package piece's table, or as far as the piece is drawn.
func roomOf(start shape) room {
	var d piece.Design
	ranged := func(key string, drawn float64) [2]float64 {
		m, _, err := d.Measure(key)
		if err != nil {
			panic("size: " + err.Error())
		}
		return [2]float64{min(m.Low, drawn), max(m.High, drawn)}
	}
	return room{ranged("rocker.nose", start.nose), ranged("rocker.tail", start.tail), ranged("rocker.radius", start.radii[0])}
}

// cramped returns by how many steps the shape is none that a rocker has; below zero, how many it
// is from that.
func (r room) cramped(s shape) float64 {
	worst := math.Inf(-1)
	within := func(got float64, in [2]float64, step float64) {
		worst = max(worst, (in[0]-got)/step, (got-in[1])/step)
	}
	for _, radius := range s.radii {
		if !(radius > 0) || math.IsInf(radius, 0) {
			return noAnswer
		}
		within(radius, r.radius, tapeStep)
	}
	within(s.nose, r.nose, tapeStep)
	within(s.tail, r.tail, tapeStep)
	from := -s.nose
	for i := range len(s.joints) + 1 {
		to := s.tail
		if i < len(s.joints) {
			to = s.joints[i]
		}
		worst = max(worst, (leastArc-(to-from))/tapeStep)
		from = to
	}
	return worst
}
