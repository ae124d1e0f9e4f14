package readings

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// A Doubt is a reading that does not agree with the others.
type Doubt struct {
	Reading  string  // its key, or those of a pair
	Read     float64 // SI
	Expected float64 // by the others
	Apart    float64 // how many of its standard deviations it is off
}

// doubtful is how many standard deviations a reading may be off the others.
const doubtful = 3

// Read returns the body of the piece in the chair frame, its Inertia NaN where no rocks
// were timed, and what readings disagree. The error is a [*ReadingError]: a reading that
// cannot be, or what to read next.
func (r Readings) Read() (body.Body, []Doubt, error) {
	mass, doubts, err := r.mass()
	if err != nil {
		return body.Body{}, nil, err
	}
	centre, more, err := r.centre(mass)
	if err != nil {
		return body.Body{}, nil, err
	}
	b := body.Body{Mass: mass, Centre: centre}
	b.Inertia, err = r.inertia(b)
	return b, append(doubts, more...), err
}

// mass returns the mass, as weighed, or the sum of both scales.
func (r Readings) mass() (float64, []Doubt, error) {
	for _, s := range []struct {
		name  string
		value float64
	}{{"weight", r.Weight}, {"front", r.Front}, {"rear", r.Rear}, {"front_raised", r.FrontRaised}, {"rear_raised", r.RearRaised}} {
		if s.value < 0 || math.IsNaN(s.value) {
			return 0, nil, wrong(s.name, "a scale shows 0 or more")
		}
	}
	sum := r.Front + r.Rear
	mass := r.Weight
	if mass == 0 {
		mass = sum
	}
	if mass == 0 {
		return 0, nil, wrong("weight", "weigh the piece, or stand it on two scales")
	}
	var doubts []Doubt
	scale := or(r.Errors.Scale, usualScale)
	for _, pair := range []struct {
		name string
		a, b float64
	}{{"front and rear", r.Front, r.Rear}, {"front_raised and rear_raised", r.FrontRaised, r.RearRaised}} {
		if pair.a == 0 || pair.b == 0 || r.Weight == 0 && pair.name == "front and rear" { // nothing to hold it against
			continue
		}
		if off := math.Abs(pair.a+pair.b-mass) / (scale * math.Sqrt(3)); off > doubtful {
			doubts = append(doubts, Doubt{pair.name, pair.a + pair.b, mass, off})
		}
	}
	if len(doubts) == 2 && math.Abs(doubts[0].Read-doubts[1].Read) <= doubtful*2*scale { // both pairs agree against it
		sum := (doubts[0].Read + doubts[1].Read) / 2
		doubts = []Doubt{{"weight", r.Weight, sum, math.Abs(r.Weight-sum) / scale}}
	}
	return mass, doubts, nil
}

// A line is where the balance point lies by one reading: normal·G = place.
type line struct {
	name      string
	normal    r2.Vec // of length one
	place     float64
	deviation float64
}

// centre returns the balance point: where the lines cross, or by least squares nearest to
// all of them.
func (r Readings) centre(mass float64) (r2.Vec, []Doubt, error) {
	lines, err := r.lines(mass)
	if err != nil {
		return r2.Vec{}, nil, err
	}
	var xx, xy, yy, x, y float64
	for _, l := range lines {
		w := 1 / (l.deviation * l.deviation)
		xx, xy, yy = xx+w*l.normal.X*l.normal.X, xy+w*l.normal.X*l.normal.Y, yy+w*l.normal.Y*l.normal.Y
		x, y = x+w*l.normal.X*l.place, y+w*l.normal.Y*l.place
	}
	determinant := xx*yy - xy*xy
	if determinant <= 1e-6*(xx+yy)*(xx+yy) {
		return r2.Vec{}, nil, r.missing(lines)
	}
	g := r2.Vec{X: (yy*x - xy*y) / determinant, Y: (xx*y - xy*x) / determinant}
	var doubts []Doubt
	for _, l := range lines {
		if off := math.Abs(r2.Dot(l.normal, g)-l.place) / l.deviation; off > doubtful {
			doubts = append(doubts, Doubt{l.name, l.place, r2.Dot(l.normal, g), off})
		}
	}
	switch nose, tail := r.Edge.Nose(), r.Edge.Tail(); {
	case g.X > nose.X || g.X < tail.X:
		return g, nil, wrong(lines[0].name, "by these readings the balance point lies beyond a tip of the rockers, where nothing stands; are front and rear the right way round?")
	case g.Y <= 0:
		return g, nil, wrong(lines[len(lines)-1].name, "by these readings the balance point lies under the floor; is the front mark the raised one?")
	}
	return g, doubts, nil
}

// missing says what to read next.
func (r Readings) missing(lines []line) error {
	switch {
	case len(lines) == 0:
		return wrong("front", "nothing says where the balance point lies: read two scales under marks (front, rear, apart, front_mark), or balance the piece on a dowel (dowel_ahead, dowel_above)")
	case lines[0].name == "dowel_above":
		return wrong("dowel_ahead", "the height of the balance point is read, its place fore and aft is not: balance the piece on a dowel the other way, or stand it on two scales")
	}
	return wrong("raised", "the place of the balance point fore and aft is read, its height is not: raise the front mark by a good hand's breadth and read the scales again (raised, front_raised, rear_raised), or balance the piece on a dowel (dowel_above)")
}

// lines returns what each reading says of the balance point.
//
// The marks stand L apart, e is the direction from the rear mark P to the front one, n
// square to it, up. Moments about the rear mark: with the front one raised by β the
// balance point lies a·cos β − b·sin β ahead of it, level, where G = P + a·e + b·n, and
// the front mark L·cos β. So the front scale's share f of the weight gives
//
//	a − b·tan β = f·L
//
// level with β = 0 (the textbook's two-scale formula).
func (r Readings) lines(mass float64) ([]line, error) {
	var lines []line
	dowel := or(r.Errors.Dowel, usualDowel)
	scale, tape := or(r.Errors.Scale, usualScale), or(r.Errors.Tape, usualTape)
	if r.DowelAhead != 0 {
		lines = append(lines, line{"dowel_ahead", r2.Vec{X: 1}, r.DowelAhead, dowel})
	}
	if r.Front != 0 || r.Rear != 0 {
		rear, along, err := r.marks()
		if err != nil {
			return nil, err
		}
		normal := r2.Vec{X: -along.Y, Y: along.X}
		add := func(name string, front, back, tangent float64) error {
			share, err := shareOf(name, front, back, mass)
			if err != nil {
				return err
			}
			of := r2.Sub(along, r2.Scale(tangent, normal))
			size := r2.Norm(of)
			spread := math.Hypot(r.Apart*scale/mass, tape) / size
			lines = append(lines, line{name, r2.Scale(1/size, of), (share*r.Apart + r2.Dot(of, rear)) / size, spread})
			return nil
		}
		if err := add("front", r.Front, r.Rear, 0); err != nil {
			return nil, err
		}
		if r.Raised != 0 {
			sin := r.Raised / r.Apart
			if !(sin > 0.02 && sin < 0.95) {
				return nil, wrong("raised", "raise the front mark by something between a fiftieth of the distance of the marks and nearly all of it")
			}
			if err := add("front_raised", r.FrontRaised, r.RearRaised, sin/math.Sqrt(1-sin*sin)); err != nil {
				return nil, err
			}
		}
	}
	if r.DowelAbove != 0 {
		lines = append(lines, line{"dowel_above", r2.Vec{Y: 1}, r.DowelAbove, dowel})
	}
	return lines, nil
}

// shareOf returns the front scale's share of the weight, from both scales where both were
// read.
func shareOf(name string, front, rear, mass float64) (float64, error) {
	whole := front + rear
	switch {
	case front == 0 && rear == 0:
		return 0, wrong(name, "neither scale was read with the front mark raised")
	case rear == 0:
		whole = mass
	case front == 0:
		front, whole = mass-rear, mass
	}
	if front <= 0 || front >= whole {
		return 0, wrong(name, "one scale shows all of the weight or more, so the balance point would lie outside the two marks and the piece would tip: read again, with the marks further apart")
	}
	return front / whole, nil
}

// marks returns the rear mark, and the direction to the front one.
func (r Readings) marks() (rear, along r2.Vec, err error) {
	if !(r.Apart > 0) {
		return rear, along, wrong("apart", "the distance between the two marks is needed")
	}
	front, ok := r.Edge.At(r.FrontMark)
	if !ok {
		return rear, along, wrong("front_mark", "this mark lies beyond the tip of the rocker")
	}
	if r2.Norm(r2.Sub(front, r.Edge.Tail())) < r.Apart {
		return rear, along, wrong("apart", "so far behind the front mark there is no rocker")
	}
	near, far := r.Apart, r.Edge.Length() // along the edge; no chord is longer than its arc
	for range 60 {
		middle := (near + far) / 2
		if p, _ := r.Edge.At(r.FrontMark - middle); r2.Norm(r2.Sub(front, p)) < r.Apart {
			near = middle
		} else {
			far = middle
		}
	}
	rear, _ = r.Edge.At(r.FrontMark - near)
	return rear, r2.Unit(r2.Sub(front, rear)), nil
}
