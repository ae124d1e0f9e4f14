package pattern

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// A shape is what every writer can write: a path, a line of text, or a point.
type shape struct {
	layer Layer
	path  bench.Path // without strokes there is none

	text          string
	at            r2.Vec // middle of a text's base line, or the point
	height, width float64
	angle         float64

	flips bool // a label by itself, which may be read from the other side

	point bool
}

// stroke returns a line through points on a layer.
func stroke(layer Layer, points ...r2.Vec) shape {
	return shape{layer: layer, path: polyline(false, points...)}
}

// left returns the left end of a text's base line.
func (s shape) left() r2.Vec { return r2.Sub(s.at, r2.Scale(s.width/2, along(s.angle))) }

// corners returns the box of a text, from below the base line to above the capitals.
func (s shape) corners() [4]r2.Vec {
	x, y := r2.Scale(s.width/2, along(s.angle)), r2.Rotate(r2.Scale(s.height, along(s.angle)), math.Pi/2, r2.Vec{})
	below, above := r2.Add(s.at, r2.Scale(-0.3, y)), r2.Add(s.at, r2.Scale(1.05, y)) // letters with tails; accents are let be
	return [4]r2.Vec{r2.Sub(below, x), r2.Add(below, x), r2.Add(above, x), r2.Sub(above, x)}
}

// spots returns points on all that a shape covers, no further apart than step.
func (s shape) spots(step float64) []r2.Vec {
	switch {
	case s.text != "":
		c := s.corners()
		left, right := r2.Scale(0.5, r2.Add(c[0], c[3])), r2.Scale(0.5, r2.Add(c[1], c[2]))
		return append(sampled(polyline(true, c[:]...), step), sampled(polyline(false, left, right), step)...)
	case s.point:
		return []r2.Vec{s.at}
	}
	return sampled(s.path, step)
}

// turnedBy returns shapes turned about the origin.
func turnedBy(shapes []shape, angle float64) []shape {
	if angle == 0 {
		return shapes
	}
	list := make([]shape, len(shapes))
	for i, s := range shapes {
		s.path = s.path.Turned(angle, r2.Vec{})
		s.at = r2.Rotate(s.at, angle, r2.Vec{})
		s.angle += angle
		if s.flips && math.Cos(s.angle) < -0.1 { // beyond upright, and a little leaning over is let be
			s.at = r2.Add(s.at, r2.Scale(0.8*s.height, along(s.angle+math.Pi/2)))
			s.angle += math.Pi
		}
		list[i] = s
	}
	return list
}

// bounds returns the box around shapes.
func bounds(shapes []shape) r2.Box {
	var points []r2.Vec
	for _, s := range shapes {
		points = append(points, s.spots(2e-3)...)
	}
	return boxOf(points)
}

// boxOf returns the box around points, of none the origin.
func boxOf(points []r2.Vec) r2.Box {
	var box r2.Box
	for i, p := range points {
		if i == 0 {
			box = r2.Box{Min: p, Max: p}
		}
		box.Min = r2.Vec{X: min(box.Min.X, p.X), Y: min(box.Min.Y, p.Y)}
		box.Max = r2.Vec{X: max(box.Max.X, p.X), Y: max(box.Max.Y, p.Y)}
	}
	return box
}
