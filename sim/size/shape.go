package size

import (
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/piece"
)

// A shape is what sizing may change: radii from nose to tail, their joints and the ends, as lengths along the floor
// edge from the low point, and how far the low point moves forward under the seat.
type shape struct {
	radii      []float64
	joints     []float64 // from the low point towards the tail, below zero towards the nose
	nose, tail float64
	low        float64
}

func (s shape) with(d piece.Design) piece.Design {
	d = shifted(d, -s.low, 0)
	d.Rocker = s.on(d.Rocker)
	return d
}

func (s shape) on(r piece.Rocker) piece.Rocker {
	r.Radius, r.Tail, r.Arcs, r.Nose = 0, 0, nil, s.nose
	if len(s.radii) == 1 {
		r.Radius, r.Tail = s.radii[0], s.tail
		return r
	}
	for i, length := range s.lengths() {
		r.Arcs = append(r.Arcs, piece.Arc{Radius: s.radii[i], Length: length})
	}
	return r
}

// lengths returns the length of each arc from nose to tail, m; below zero where joints are not in order.
func (s shape) lengths() []float64 {
	lengths := slices.Concat(s.joints, []float64{s.tail})
	for i := len(lengths) - 1; i > 0; i-- {
		lengths[i] -= lengths[i-1]
	}
	lengths[0] += s.nose
	return lengths
}

// shifted returns the design with all that stands on the rockers moved forward and up. Where the
// piece is given as plain numbers its balance point goes along.
func shifted(d piece.Design, forward, up float64) piece.Design {
	d = d.Clone()
	if d.Seat.Drawn() {
		d.Seat.Behind -= forward
		d.Seat.Rear += up
		if d.Seat.SlopeKnown() {
			d.Seat.Front += up
		}
	}
	if d.Bed.Drawn() {
		d.Bed.Height += up
	}
	by := r2.Vec{X: forward, Y: up}
	for i := range d.Parts {
		d.Parts[i].At = r2.Add(d.Parts[i].At, by)
	}
	if d.Body.Mass > 0 {
		d.Body.Centre = r2.Add(d.Body.Centre, by)
	}
	for i := range d.Sitters {
		if s := &d.Sitters[i]; s.HasCentre() {
			s.Centre = r2.Add(s.Centre, by)
		}
	}
	return d
}

// A room is how long the ends and how large the radii of a rocker may be, m: the ranges of package
// piece's table, or as far as the piece is drawn.
type room struct {
	nose, tail, radius [2]float64
}

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

// cramped returns by how many steps the worst of the shape's radii and lengths lies outside its
// range; below zero, how far inside all of them are.
func (r room) cramped(s shape) float64 {
	worst := (leastArc - slices.Min(s.lengths())) / tapeStep
	within := func(got float64, in [2]float64) {
		worst = max(worst, (in[0]-got)/tapeStep, (got-in[1])/tapeStep)
	}
	for _, radius := range s.radii {
		within(radius, r.radius)
	}
	within(s.nose, r.nose)
	within(s.tail, r.tail)
	return worst
}
