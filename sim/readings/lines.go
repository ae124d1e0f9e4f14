package readings

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/root"
)

// A line is where the balance point lies by one reading: normal·G = place.
type line struct {
	name      string
	normal    r2.Vec // of length one
	place     float64
	deviation float64
}

// off returns how far a point lies off the line, in deviations.
func (l line) off(g r2.Vec) float64 { return (r2.Dot(l.normal, g) - l.place) / l.deviation }

// crossing returns where lines cross, or by least squares nearest to all of them; ok is false where they do not.
func crossing(lines []line) (g r2.Vec, ok bool) {
	var xx, xy, yy, x, y float64
	for _, l := range lines {
		w := 1 / (l.deviation * l.deviation)
		xx, xy, yy = xx+w*l.normal.X*l.normal.X, xy+w*l.normal.X*l.normal.Y, yy+w*l.normal.Y*l.normal.Y
		x, y = x+w*l.normal.X*l.place, y+w*l.normal.Y*l.place
	}
	determinant := xx*yy - xy*xy
	if determinant <= 1e-6*(xx+yy)*(xx+yy) {
		return r2.Vec{}, false
	}
	return r2.Vec{X: (yy*x - xy*y) / determinant, Y: (xx*y - xy*x) / determinant}, true
}

// lines returns what each reading says of the balance point.
//
// The marks stand L apart, e is the direction from the rear mark P to the front one, n square to it, up. Moments
// about the rear mark: with the front one raised by β the balance point lies a·cos β − b·sin β ahead of it, level,
// where G = P + a·e + b·n, and the front mark L·cos β. So the front scale's share f of the weight gives
//
//	a − b·tan β = f·L
//
// level with β = 0 (the textbook's two-scale formula).
func (r Readings) lines(mass float64) ([]line, error) {
	var lines []line
	if r.has("dowel_ahead", r.DowelAhead) {
		lines = append(lines, line{"dowel_ahead", r2.Vec{X: 1}, r.DowelAhead, usualDowel})
	}
	for i, pair := range r.pairs() {
		switch {
		case pair.raised == 0 && !r.stood(pair):
			continue
		case pair.raised == 0 && i > 0:
			return nil, wrong("raised", "the scales were read with the front mark raised: say how far it stood above the rear one")
		}
		l, err := r.moments(mass, pair)
		if err != nil {
			return nil, err
		}
		lines = append(lines, l)
	}
	if r.DowelAbove != 0 {
		lines = append(lines, line{"dowel_above", r2.Vec{Y: 1}, r.DowelAbove, usualDowel})
	}
	return lines, nil
}

// moments returns the line that two scales give.
func (r Readings) moments(mass float64, s scales) (line, error) {
	rear, along, err := r.marks()
	if err != nil {
		return line{}, err
	}
	sin := s.raised / r.Apart
	if s.raised != 0 && !(sin > 0.02 && sin < 0.95) {
		return line{}, wrong("raised", "raise the front mark by something between a fiftieth of the distance of the marks "+
			"and nearly all of it")
	}
	share, err := r.share(s, mass)
	if err != nil {
		return line{}, err
	}
	normal := r2.Vec{X: -along.Y, Y: along.X}
	of := r2.Sub(along, r2.Scale(sin/math.Sqrt(1-sin*sin), normal))
	size := r2.Norm(of)
	spread := math.Hypot(r.Apart*r.scale()/mass, usualTape) / size
	return line{s.front, r2.Scale(1/size, of), (share*r.Apart + r2.Dot(of, rear)) / size, spread}, nil
}

// scales are a pair of readings under the two marks, with their names.
type scales struct {
	front, rear           string
	underFront, underRear float64 // kg
	raised                float64 // the front mark against the rear one, m
}

// pairs returns the two scales level, and with the front mark raised.
func (r Readings) pairs() [2]scales {
	return [2]scales{
		{"front", "rear", r.Front, r.Rear, 0},
		{"front_raised", "rear_raised", r.FrontRaised, r.RearRaised, r.Raised},
	}
}

// stood reports whether one of a pair was read.
func (r Readings) stood(s scales) bool {
	return r.has(s.front, s.underFront) || r.has(s.rear, s.underRear)
}

// share returns the front scale's share of the weight, from both scales where both were read.
func (r Readings) share(s scales, mass float64) (float64, error) {
	front, whole := s.underFront, s.underFront+s.underRear
	switch {
	case !r.stood(s):
		return 0, wrong(s.front, "neither scale was read with the front mark raised")
	case !r.has(s.rear, s.underRear):
		whole = mass
	case !r.has(s.front, s.underFront):
		front, whole = mass-s.underRear, mass
	}
	if front <= 0 || front >= whole {
		return 0, wrong(s.front, "one scale shows all of the weight or more, so the balance point would lie outside the two "+
			"marks and the piece would tip: read again, with the marks further apart")
	}
	return front / whole, nil
}

// marks returns the rear mark, and the direction to the front one.
func (r Readings) marks() (rear, along r2.Vec, err error) {
	if !(r.Apart > 0) {
		return rear, along, wrong("apart", "the distance between the two marks is needed")
	}
	if !r.has("front_mark", r.FrontMark) {
		return rear, along, wrong("front_mark", "the way along the floor edge from the low point forward to the front mark "+
			"is needed, 0 where the mark is at the low point")
	}
	front, ok := r.Edge.At(r.FrontMark)
	if !ok {
		return rear, along, wrong("front_mark", "this mark lies beyond the tip of the rocker")
	}
	if r2.Norm(r2.Sub(front, r.Edge.Tail())) < r.Apart {
		return rear, along, wrong("apart", "so far behind the front mark there is no rocker")
	}
	behind := root.Between(func(along float64) float64 {
		p, _ := r.Edge.At(r.FrontMark - along)
		return r2.Norm(r2.Sub(front, p)) - r.Apart
	}, 0, r.Edge.Length(), 0)
	rear, _ = r.Edge.At(r.FrontMark - behind)
	return rear, r2.Unit(r2.Sub(front, rear)), nil
}
