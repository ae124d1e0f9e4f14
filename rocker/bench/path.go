package bench

import "gonum.org/v1/gonum/spatial/r2"

// A Stroke goes on from the end of the one before, m.
type Stroke struct {
	To   r2.Vec
	Turn float64 // by which it turns to the left, rad; 0 is straight; its bulge is tan(Turn/4)
}

// A Path is an edge made of straight lines and arcs, m.
type Path struct {
	Start   r2.Vec
	Strokes []Stroke
	Closed  bool
}
