package pattern

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// A layout is a drawing that is being laid out: what stands on it already. It tells whether a box is clear of that.
type layout struct {
	face     face
	list     []shape
	edges    [][2]r2.Vec // of all that stands there, in short straight lines
	outlines [][]r2.Vec  // the closed ones of the part
}

// A rect is a box at any angle.
type rect struct {
	middle, half r2.Vec
	angle        float64
}

func (l *layout) add(shapes ...shape) {
	for _, s := range shapes {
		l.list = append(l.list, s)
		points := s.spots(4e-3)
		if s.text != "" { // its box and its diagonals, so that nothing small hides inside
			c := s.corners()
			points = []r2.Vec{c[0], c[1], c[2], c[3], c[0], c[2], c[3], c[1]}
		}
		for i := 1; i < len(points); i++ {
			l.edges = append(l.edges, [2]r2.Vec{points[i-1], points[i]})
		}
		if s.layer == Outline && s.path.Closed {
			l.outlines = append(l.outlines, points)
		}
	}
}

// inside reports whether a point is inside the outlines: a ray from it crosses them an odd number of times.
func (l *layout) inside(p r2.Vec) bool {
	odd := false
	for _, outline := range l.outlines {
		for i, a := range outline {
			b := outline[(i+1)%len(outline)]
			if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)/(b.Y-a.Y)*(b.X-a.X) {
				odd = !odd
			}
		}
	}
	return odd
}

// clear reports whether nothing stands in a box, or nearer to it than gap.
func (l *layout) clear(b rect, gap float64) bool {
	turn := r2.NewRotation(-b.angle, r2.Vec{})
	half := r2.Vec{X: b.half.X + gap, Y: b.half.Y + gap}
	reach := r2.Norm(half)
	for i, w := range l.edges {
		p, q := r2.Sub(w[0], b.middle), r2.Sub(w[1], b.middle)
		if min(p.X, q.X) > reach || max(p.X, q.X) < -reach || min(p.Y, q.Y) > reach || max(p.Y, q.Y) < -reach {
			continue
		}
		if crosses(turn.Rotate(p), turn.Rotate(q), half) {
			l.edges[0], l.edges[i] = l.edges[i], l.edges[0] // the next box is near by, and the same edge is in its way, mostly
			return false
		}
	}
	return true
}

// crosses reports whether a line from p to q meets the box of these halves about the origin, by clipping it.
func crosses(p, q, half r2.Vec) bool {
	from, to := 0.0, 1.0
	for _, axis := range [2][3]float64{{p.X, q.X - p.X, half.X}, {p.Y, q.Y - p.Y, half.Y}} {
		at, run, side := axis[0], axis[1], axis[2]
		if run == 0 {
			if math.Abs(at) > side {
				return false
			}
			continue
		}
		a, b := (-side-at)/run, (side-at)/run
		from, to = max(from, min(a, b)), min(to, max(a, b))
	}
	return from <= to
}

// A label is a text that may stand where it is clear, the better places first.
type label struct {
	text   string
	places func(half r2.Vec) []rect
	of     *r2.Vec // where what it names stands, in or out of the outlines; nil where on their edge
}

// around returns level places for a box about points: above, below, right and left, and further out.
func around(half r2.Vec, points ...r2.Vec) []rect {
	var list []rect
	for _, at := range points {
		for gap := 6e-3; gap < 40e-3; gap += 4e-3 {
			for _, side := range [][2]float64{{0, 1}, {0, -1}, {1, 1}, {1, -1}, {1, 0}, {-1, 1}, {-1, -1}, {-1, 0}} {
				off := r2.Vec{X: side[0] * (half.X + gap), Y: side[1] * (half.Y + gap)}
				list = append(list, rect{middle: r2.Add(at, off), half: half})
			}
		}
	}
	return list
}

// beside returns places for a box along a line on both its sides, then across its ends.
func beside(half, from, to r2.Vec) []rect {
	run := r2.Sub(to, from)
	angle, _ := upright(math.Atan2(run.Y, run.X))
	up := along(angle + math.Pi/2)
	var list []rect
	for gap := 2.5e-3; gap < 12e-3; gap += 3e-3 {
		for _, share := range []float64{0.5, 0.3, 0.7, 0.15, 0.85} {
			for _, side := range []float64{1, -1} {
				middle := r2.Add(from, r2.Scale(share, run))
				list = append(list, rect{r2.Add(middle, r2.Scale(side*(half.Y+gap), up)), half, angle})
			}
		}
	}
	return list
}

// lay puts items on the drawing, then what is written beside them. The error is an [*Error] or a [*ReachError].
func (l *layout) lay(items []Item) error {
	labels := make([]label, len(items))
	for i, item := range items {
		var list []shape
		list, labels[i] = item.shapes(l.face)
		for _, s := range list {
			if err := s.check(); err != nil {
				return err
			}
		}
		l.add(list...)
	}
	for _, what := range labels {
		if err := l.put(what); err != nil {
			return err
		}
	}
	return nil
}

// put writes a label at the first of its places that is clear, inside the outline rather than outside, for what is cut
// off is lost; but what stands outside is named outside. Where none is clear it takes the first.
func (l *layout) put(what label) error {
	text := l.face.fit(what.text, lettering, widest/2)
	if text == "" {
		return nil
	}
	width := l.face.width(text, lettering)
	places := what.places(r2.Vec{X: width / 2, Y: lettering * 1.35 / 2})
	within := what.of == nil || l.inside(*what.of)
	best, found := places[0], false
	for _, p := range places {
		if !l.clear(rect{p.middle, r2.Vec{X: width / 2, Y: lettering * 0.7}, p.angle}, 1e-3) {
			continue
		}
		right := l.inside(p.middle) == within
		if right || !found {
			best, found = p, true
		}
		if right {
			break
		}
	}
	base := r2.Sub(best.middle, r2.Scale(0.4*lettering, along(best.angle+math.Pi/2)))
	written := shape{layer: Texts, text: text, at: base, height: lettering, width: width, angle: best.angle, flips: true}
	l.add(written)
	return written.check()
}
