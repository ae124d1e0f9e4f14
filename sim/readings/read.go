package readings

import (
	"cmp"
	"errors"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// A Doubt is a reading that does not agree with the others.
type Doubt struct {
	Reading  string  // its key, or those of a pair
	Read     float64 // SI
	Expected float64 // by the others
	Swapped  string  // scales that may have been swapped, in words: the other way round all the readings agree; "" where none
}

// doubtful is how many standard deviations a reading may be off the others.
const doubtful = 3

// A solution is what the readings say as they stand, before they are judged.
type solution struct {
	body   body.Body // Inertia is NaN where no rocks were timed, and may come out below zero
	least  float64   // time of ten rocks of the piece without inertia, s
	late   float64   // by how much the rocks with a rider take longer than by all else, s; NaN where that is not known
	at     state
	zero   float64 // what a level shows at tilt 0, rad; NaN where none was read
	doubts []Doubt
	slips  []Slip
}

func (s solution) numbers() [6]float64 {
	return [6]float64{s.body.Mass, s.body.Centre.X, s.body.Centre.Y, s.body.Inertia, s.late, s.zero}
}

func (r Readings) solve() (solution, error) {
	if err := r.check(); err != nil {
		return solution{}, err
	}
	mass, doubts, err := r.mass()
	if err != nil {
		return solution{}, err
	}
	found, err := r.place(mass)
	if err != nil {
		return solution{}, err
	}
	s := solution{body: body.Body{Mass: mass, Centre: found.at.centre(), Inertia: math.NaN()}, late: math.NaN(), at: found.at,
		zero: found.zero, doubts: append(doubts, found.doubts...), slips: found.slips}
	rocks, timed := r.rocks()
	known := r.Rider != body.Body{}
	switch {
	case !timed:
		return s, nil
	case r.TenRocks == 0 && !known:
		return s, wrong("ten_rocks_ridden", "rocks with a rider need the body of the rider")
	}
	if s.body.Inertia, s.least, err = r.inertia(s.body, rocks); err != nil {
		return s, err
	}
	if r.TenRocks != 0 && r.RiddenTenRocks != 0 && known {
		period, err := r.period(s.body, r.ridden())
		if err != nil {
			return s, err
		}
		s.late = r.RiddenTenRocks - 10*period
	}
	return s, nil
}

// A placed is where the balance point lies, and what a level shows at tilt 0, not a number where none was read.
type placed struct {
	at     state
	zero   float64 // rad
	doubts []Doubt
	slips  []Slip
}

// place returns the balance point: where the lines cross, or by least squares nearest to all of them.
func (r Readings) place(mass float64) (p placed, err error) {
	lines, err := r.lines(mass)
	if err != nil {
		return p, err
	}
	if r.tilted() {
		p, err = r.solveTilted(lines)
	} else {
		p, err = r.solveLines(lines)
	}
	if err != nil {
		return p, err
	}
	return p, r.stands(p.at.centre(), lines)
}

// solveLines is place without a level.
func (r Readings) solveLines(lines []line) (placed, error) {
	g, ok := crossing(lines)
	if !ok {
		return placed{}, missed(r.missing(lines))
	}
	p := placed{at: state{ahead: g.X, above: g.Y}, zero: math.NaN()}
	for _, l := range lines {
		if math.Abs(l.off(g)) > doubtful {
			p.doubts = append(p.doubts, Doubt{Reading: l.name, Read: l.place, Expected: r2.Dot(l.normal, g)})
		}
	}
	return p, nil
}

// stands returns the error of a balance point where no piece has its own.
func (r Readings) stands(g r2.Vec, lines []line) error {
	first, last := r.levelNames()
	turned := "are tail and nose the right way round, back +?"
	raised := turned
	if len(lines) > 0 {
		first, last = lines[0].name, lines[len(lines)-1].name
		turned, raised = "are front and rear the right way round?", "is the front mark the raised one?"
	}
	switch nose, tail := r.Edge.Nose(), r.Edge.Tail(); {
	case g.X > nose.X || g.X < tail.X:
		return wrong(first, "by these readings the balance point lies beyond a tip of the rockers, where nothing "+
			"stands; "+turned)
	case g.Y <= 0:
		return wrong(last, "by these readings the balance point lies under the floor; "+raised)
	}
	return nil
}

// missed marks the error of readings of which there are too few.
func missed(err error) error {
	var e *ReadingError
	if errors.As(err, &e) {
		e.Missing = true
	}
	return err
}

// missing says what to read next.
func (r Readings) missing(lines []line) error {
	switch {
	case len(lines) == 0:
		return wrong("front", "nothing says where the balance point lies: read two scales under marks (front, rear, apart, "+
			"front_mark), or balance the piece on a dowel (dowel_ahead, dowel_above), or on its ends with a level on the seat "+
			"(seat_falls_empty, balances_on_tail, balances_on_nose)")
	case lines[0].name == "dowel_above":
		return wrong("dowel_ahead", "the height of the balance point is read, its place fore and aft is not: "+
			"balance the piece on a dowel the other way, or stand it on two scales")
	}
	return wrong("raised", "the place of the balance point fore and aft is read, its height is not: raise the front mark by a "+
		"good hand's breadth and read the scales again (raised, front_raised, rear_raised), or balance the piece on a dowel "+
		"(dowel_above)")
}

// check returns what no reading can be.
func (r Readings) check() error {
	if r.Edge.Length() == 0 {
		return wrong("edge", "the floor edge of the rockers is needed")
	}
	for _, one := range r.read() {
		switch {
		case math.IsNaN(*one.value), math.IsInf(*one.value, 0):
			return wrong(one.name, "this is no number")
		case *one.value >= 0:
		case one.name == "ten_rocks", one.name == "ten_rocks_ridden":
			return wrong(one.name, "ten rocks take more than 0 s")
		case slices.Contains([]string{"weight", "front", "rear", "front_raised", "rear_raised"}, one.name):
			return wrong(one.name, "a scale shows 0 or more")
		}
	}
	return r.checkLevel()
}

// mass returns the mass, as weighed, or the sum of both scales.
func (r Readings) mass() (float64, []Doubt, error) {
	mass := cmp.Or(r.Weight, r.Front+r.Rear)
	if mass == 0 {
		return 0, nil, wrong("weight", "weigh the piece, or stand it on two scales")
	}
	var doubts []Doubt
	scale := r.scale()
	for _, s := range r.pairs() {
		sum := s.underFront + s.underRear
		off := math.Abs(sum-mass) / (scale * math.Sqrt(3)) // nothing where the mass is this sum
		if r.has(s.front, s.underFront) && r.has(s.rear, s.underRear) && off > doubtful {
			doubts = append(doubts, Doubt{Reading: s.front + " and " + s.rear, Read: sum, Expected: mass})
		}
	}
	if len(doubts) == 2 && math.Abs(doubts[0].Read-doubts[1].Read) <= doubtful*2*scale { // both pairs agree against it
		sum := (doubts[0].Read + doubts[1].Read) / 2
		doubts = []Doubt{{Reading: "weight", Read: r.Weight, Expected: sum}}
	}
	return mass, doubts, nil
}
