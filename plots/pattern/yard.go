package pattern

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// A yard is the ground on which a drawing is laid out: what stands there already, and
// whether a box is clear of it.
type yard struct {
	ruler  *ruler
	list   []shape
	walls  [][2]r2.Vec // all that stands there, in short straight lines
	fences [][]r2.Vec  // the closed outlines
}

// A rect is a box at any angle.
type rect struct {
	middle, half r2.Vec
	angle        float64
}

// add puts shapes on the yard.
func (y *yard) add(shapes ...shape) {
	for _, s := range shapes {
		y.list = append(y.list, s)
		points := s.spots(4e-3)
		if s.text != "" { // its box and its diagonals, so that nothing small hides inside
			c := s.corners()
			points = []r2.Vec{c[0], c[1], c[2], c[3], c[0], c[2], c[3], c[1]}
		}
		for i := 1; i < len(points); i++ {
			y.walls = append(y.walls, [2]r2.Vec{points[i-1], points[i]})
		}
		if s.layer == Outline && s.path.Closed {
			y.fences = append(y.fences, points)
		}
	}
}

// inside reports whether a point is inside the outlines: a ray from it crosses them an odd
// number of times.
func (y *yard) inside(p r2.Vec) bool {
	odd := false
	for _, fence := range y.fences {
		for i, a := range fence {
			b := fence[(i+1)%len(fence)]
			if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)/(b.Y-a.Y)*(b.X-a.X) {
				odd = !odd
			}
		}
	}
	return odd
}

// clear reports whether nothing stands in a box, or nearer to it than gap.
func (y *yard) clear(b rect, gap float64) bool {
	s, c := math.Sincos(-b.angle)
	half := r2.Vec{X: b.half.X + gap, Y: b.half.Y + gap}
	reach := r2.Norm(half)
	for i, w := range y.walls {
		p, q := r2.Sub(w[0], b.middle), r2.Sub(w[1], b.middle)
		if min(p.X, q.X) > reach || max(p.X, q.X) < -reach || min(p.Y, q.Y) > reach || max(p.Y, q.Y) < -reach {
			continue
		}
		p = r2.Vec{X: c*p.X - s*p.Y, Y: s*p.X + c*p.Y}
		q = r2.Vec{X: c*q.X - s*q.Y, Y: s*q.X + c*q.Y}
		if crosses(p, q, half) {
			y.walls[0], y.walls[i] = y.walls[i], y.walls[0] // the next box is near by, and the same wall is in its way, mostly
			return false
		}
	}
	return true
}

// crosses reports whether a line from p to q meets the box of these halves about the
// origin: the shares of the line that lie between each pair of sides overlap.
func crosses(p, q, half r2.Vec) bool {
	from, to := 0.0, 1.0
	for _, axis := range [2][3]float64{{p.X, q.X - p.X, half.X}, {p.Y, q.Y - p.Y, half.Y}} {
		at, way, side := axis[0], axis[1], axis[2]
		if way == 0 {
			if math.Abs(at) > side {
				return false
			}
			continue
		}
		a, b := (-side-at)/way, (side-at)/way
		from, to = max(from, min(a, b)), min(to, max(a, b))
	}
	return from <= to
}
