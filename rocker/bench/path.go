package bench

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// A Stroke is one straight or circular piece of a [Path], from where the last one ended.
// The bulge of a drawing exchange file is tan(Turn/4).
type Stroke struct {
	To   r2.Vec  // where it ends, m
	Turn float64 // by how much it turns to the left on the way, rad, |Turn| < 2π; zero is straight
}

// A Path is a chain of strokes. The zero Path is the one point at the origin.
type Path struct {
	Start   r2.Vec // m
	Strokes []Stroke
	Closed  bool // comes back to Start, by a straight stroke where the last one does not end there
}

// Pieces returns the strokes with where each begins, those without length left out.
func (p Path) Pieces() []Piece {
	list := make([]Piece, 0, len(p.Strokes)+1)
	from := p.Start
	add := func(s Stroke) {
		if s.To != from {
			list = append(list, Piece{from, s})
		}
		from = s.To
	}
	for _, s := range p.Strokes {
		add(s)
	}
	if p.Closed {
		add(Stroke{To: p.Start})
	}
	return list
}

// pathOf returns the chain of the given pieces, each of which begins where the last ended.
func pathOf(list []Piece, closed bool) Path {
	p := Path{Closed: closed}
	if len(list) > 0 {
		p.Start = list[0].From
	}
	for _, s := range list {
		p.Strokes = append(p.Strokes, s.Stroke)
	}
	return p
}

// Polyline returns a path of straight strokes through points, of which there is at least one.
func Polyline(closed bool, points ...r2.Vec) Path {
	p := Path{Start: points[0], Closed: closed}
	for _, q := range points[1:] {
		p.Strokes = append(p.Strokes, Stroke{To: q})
	}
	return p
}

// End returns where the path ends, m: Start where it is closed.
func (p Path) End() r2.Vec {
	if p.Closed || len(p.Strokes) == 0 {
		return p.Start
	}
	return p.Strokes[len(p.Strokes)-1].To
}

// Length returns the length along the path, m.
func (p Path) Length() float64 {
	var sum float64
	for _, s := range p.Pieces() {
		sum += s.Length()
	}
	return sum
}

// At returns the point a distance (m) along the path, before or beyond it that end, and the heading there (rad,
// counter-clockwise from x), of two strokes that meet there of the first; without length zero.
func (p Path) At(distance float64) (point r2.Vec, heading float64) {
	list := p.Pieces()
	if len(list) == 0 {
		return p.Start, 0
	}
	for _, s := range list {
		length := s.Length()
		if distance <= length {
			part := max(0, distance/length)
			return s.At(part), s.heading(part)
		}
		distance -= length
	}
	last := list[len(list)-1]
	return last.To, last.heading(1)
}

// Area returns the area inside the path, m², above zero where it runs counter-clockwise.
// An open path is closed by its chord. Each arc adds to its chord's triangle the segment
// c²(τ − sin τ)/(8 sin²(τ/2)) between arc and chord c (circle formulas of any handbook).
func (p Path) Area() float64 {
	var sum float64
	for _, s := range p.Pieces() {
		sum += r2.Cross(r2.Sub(s.From, p.Start), r2.Sub(s.To, p.Start))/2 + s.segment()
	}
	return sum
}

// Bounds returns the upright rectangle round the path, m, exactly: arcs reach to where they are level or plumb.
func (p Path) Bounds() r2.Box {
	box := r2.Box{Min: p.Start, Max: p.Start}
	reach := func(q r2.Vec) {
		box.Min = r2.Vec{X: min(box.Min.X, q.X), Y: min(box.Min.Y, q.Y)}
		box.Max = r2.Vec{X: max(box.Max.X, q.X), Y: max(box.Max.Y, q.Y)}
	}
	for _, s := range p.Pieces() {
		reach(s.To)
		if s.Turn == 0 {
			continue
		}
		first, last := s.heading(0), s.heading(1)
		low, high := min(first, last), max(first, last)
		for k := math.Ceil(low / (math.Pi / 2)); k*math.Pi/2 < high; k++ {
			reach(s.At((k*math.Pi/2 - first) / s.Turn))
		}
	}
	return box
}

// Flattened returns points along the path from Start so close that no chord leaves the curve by more than within,
// m. A closed path ends at Start again. It panics where within is not above zero.
func (p Path) Flattened(within float64) []r2.Vec {
	if !(within > 0) {
		panic(fmt.Sprintf("bench: chords leave a curve by more than 0 m; %g is not", within))
	}
	points := []r2.Vec{p.Start}
	for _, s := range p.Pieces() {
		steps := 1.0
		if s.Turn != 0 { // of a chord turning by δ the rise is R(1 − cos δ/2) = 2R sin²(δ/4)
			step := 4 * math.Asin(math.Sqrt(min(0.5, within/math.Abs(2*s.Radius()))))
			steps = math.Ceil(math.Abs(s.Turn) / step)
		}
		for k := 1.0; k < steps; k++ {
			points = append(points, s.At(k/steps))
		}
		points = append(points, s.To)
	}
	return points
}

// each returns the path with every point put elsewhere and every turn multiplied by turn.
func (p Path) each(turn float64, put func(r2.Vec) r2.Vec) Path {
	moved := Path{Start: put(p.Start), Closed: p.Closed}
	for _, s := range p.Strokes {
		moved.Strokes = append(moved.Strokes, Stroke{put(s.To), turn * s.Turn})
	}
	return moved
}

// Placed returns the path with every point put elsewhere by turning, moving and scaling alike.
func (p Path) Placed(put func(r2.Vec) r2.Vec) Path { return p.each(1, put) }

// Moved returns the path moved by a vector, m.
func (p Path) Moved(by r2.Vec) Path {
	return p.Placed(func(q r2.Vec) r2.Vec { return r2.Add(q, by) })
}

// Turned returns the path turned counter-clockwise by an angle (rad) about a point (m).
func (p Path) Turned(angle float64, about r2.Vec) Path {
	return p.Placed(func(q r2.Vec) r2.Vec { return r2.Rotate(q, angle, about) })
}

// Mirrored returns the path mirrored at the upright line through x (m). It runs the other way round.
func (p Path) Mirrored(x float64) Path {
	return p.each(-1, func(q r2.Vec) r2.Vec { return r2.Vec{X: 2*x - q.X, Y: q.Y} })
}

// Reversed returns the path walked from its end to its start.
func (p Path) Reversed() Path {
	back := pathOf(backwards(p.Pieces()), p.Closed)
	back.Start = p.End()
	return back
}
