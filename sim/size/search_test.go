package size

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/floats"
)

// TestUnknownsThereAndBack: a shape that is made to unknowns and back is the same, with one, two and three arcs.
func TestUnknownsThereAndBack(t *testing.T) {
	q, err := ask(readingChair())
	if err != nil {
		t.Fatal(err)
	}
	q.movable = true
	rng := rand.New(rand.NewPCG(13, 1))
	for i := range 60 {
		arcs := 1 + i%3
		s := chanced(q.start, arcs, rng)
		back := q.shapeAt(q.unknowns(s), arcs)
		flat := func(s shape) []float64 { return slices.Concat(s.radii, s.joints, []float64{s.nose, s.tail, s.low}) }
		was, is := flat(s), flat(back)
		if len(was) != len(is) {
			t.Fatalf("%+v came back as %+v", s, back)
		}
		for k := range was {
			if math.Abs(is[k]-was[k]) > 1e-12 {
				t.Errorf("%+v came back as %+v", s, back)
			}
		}
	}
}

// TestChancedShapes: a shape by chance has as many arcs as were asked for, whose joints lie in order between its ends.
func TestChancedShapes(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 2))
	around := shape{radii: []float64{1.05}, nose: 0.43, tail: 0.6}
	for i := range 3000 {
		arcs := 1 + i%3
		s := chanced(around, arcs, rng)
		if lengths := s.lengths(); len(s.radii) != arcs || len(lengths) != arcs || slices.Min(lengths) < 0 || slices.Min(s.radii) <= 0 {
			t.Errorf("%d arcs: %+v, %v long", arcs, s, lengths)
		}
		if length := s.nose + s.tail; math.Abs(floats.Sum(s.lengths())-length) > 1e-12 {
			t.Errorf("%+v: arcs of %v on an edge of %v", s, s.lengths(), length)
		}
	}
}

// TestStrayingCosts: what was drawn costs nothing but what it misses, each thing that is changed costs something more,
// and two changes what both cost.
func TestStrayingCosts(t *testing.T) {
	d := readingChair()
	d.Target.OneRock = 2
	q, err := ask(d)
	if err != nil {
		t.Fatal(err)
	}
	costs := func(s shape) float64 { return q.score(s) - score(q.misses(s)) }
	radius, nose, tail := q.start, q.start, q.start
	radius.radii = []float64{q.start.radii[0] * 1.1}
	nose.nose *= 1.05
	tail.tail *= 0.95
	all := radius
	all.nose, all.tail = nose.nose, tail.tail
	one := []float64{costs(radius), costs(nose), costs(tail)}
	if costs(q.start) != 0 || !(slices.Min(one) > 1e-6) || math.Abs(costs(all)-floats.Sum(one)) > 1e-9 {
		t.Errorf("as drawn %v, each %v, all %v", costs(q.start), one, costs(all))
	}
}

// TestBrakeBehindEveryRest: on a floor that slopes either way the flatter arc begins behind every place on which the
// piece rests with those who are asked, and within a few degrees of the hindmost.
func TestBrakeBehindEveryRest(t *testing.T) {
	for _, slope := range []float64{-3 * degree, 0, 3 * degree} {
		d := readingChair()
		d.Floor.Slope, d.Rocker.Tail = slope, d.Rocker.Tail+0.2
		q, err := ask(d)
		if err != nil {
			t.Fatal(err)
		}
		s, laid := q.flatterTail(q.start)
		drawn, answered := q.answer(q.start)
		if !laid || !answered {
			t.Fatalf("no brake on %v rad", slope)
		}
		least := math.Inf(1) // rolled from a rest to the joint, rad
		for _, l := range drawn.Loads {
			if l.Upright() {
				least = min(least, s.joints[0]/s.radii[0]-max(0, l.Balance.Rest.Tilt-slope))
			}
		}
		if !(least > 1*degree && least < 5*degree) {
			t.Errorf("on %v rad the brake begins %v degrees behind the hindmost rest", slope, least/degree)
		}
	}
}

// TestSharesOfALine: of a reading 3x + 4y of two errors alike, 9/25 of the variance goes with one and 16/25 with the
// other, wherever their means lie.
func TestSharesOfALine(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 3))
	m := &making{varied: make([]Varied, 2), now: noReadings}
	m.now[Time], m.scale[Time] = 2, 5
	tally := m.newTally()
	const chairs = 20000
	for range chairs {
		x, y := 1+rng.NormFloat64(), rng.NormFloat64()-2
		readings := noReadings
		readings[Time] = 10 + 3*x + 4*y
		tally.add([]float64{x, y}, readings, []bool{})
	}
	s := tally.study(chairs).Spreads[0]
	// the variances of so many are known to √(2/20000) = 1 %
	if math.Abs(s.Shares[0]-0.36) > 0.02 || math.Abs(s.Shares[1]-0.64) > 0.03 || s.LeftOver > 1e-6 {
		t.Errorf("shares %v, left over %v", s.Shares, s.LeftOver)
	}
}
