package readings

import (
	"errors"
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker/root"
	"rockerwright/sim"
)

// TestNearestToAllLines: of more lines than two the balance point lies where the squares of what it is off each, in the
// line's own deviations, add up to the least: moved any way it is further.
func TestNearestToAllLines(t *testing.T) {
	r := readingsOf(t, known)
	r.DowelAhead, r.DowelAbove = known.Centre.X+0.004, known.Centre.Y-0.005
	lines, err := r.lines(known.Mass)
	if err != nil || len(lines) != 4 {
		t.Fatal(lines, err)
	}
	found, err := r.place(known.Mass)
	g := found.at.centre()
	if err != nil {
		t.Fatal(err)
	}
	squares := func(g r2.Vec) (sum float64) {
		for _, l := range lines {
			off := (r2.Dot(l.normal, g) - l.place) / l.deviation
			sum += off * off
		}
		return sum
	}
	for _, by := range []r2.Vec{{X: 1e-5}, {Y: 1e-5}, {X: 1e-5, Y: 1e-5}} { // m
		there, back, here := squares(r2.Add(g, by)), squares(r2.Sub(g, by)), squares(g)
		if !(there > here) || math.Abs(there-back) > 1e-6*(there-here) { // a parabola about its lowest point
			t.Errorf("squares %v, moved by %v %v and %v", here, by, there, back)
		}
	}
}

// TestTooFlatToCross: two lines that cross at a tenth of a milliradian tell no height: a millimetre would be ten metres.
func TestTooFlatToCross(t *testing.T) {
	r := Readings{Edge: edge, Front: 6, Rear: 6, Apart: 0.5, DowelAhead: 0.001}
	r.FrontMark = 1.067 * (math.Asin(r.Apart/2/1.067) + 1e-4)
	var missing *ReadingError
	if _, err := r.Read(); !errors.As(err, &missing) || missing.Reading != "raised" {
		t.Errorf("%v, want that the raised scales are missing", err)
	}
}

// TestPairDoubtedFromThreeDeviations: the sum of two scales less a third is off by √3 times what one is, and doubted
// from three of these on.
func TestPairDoubtedFromThreeDeviations(t *testing.T) {
	for _, scale := range []float64{0.02, 0.1, 0.3} {
		r := Readings{Front: 5, Rear: 7, ScaleError: scale}
		for _, sign := range []float64{1, -1} {
			off, _ := root.Edge(func(off float64) bool {
				r.Weight = 12 + sign*off
				_, doubts, err := r.mass()
				return err == nil && len(doubts) == 0
			}, 0, 5, 1e-9, 0)
			if want := 3 * math.Sqrt(3) * scale; math.Abs(off-want) > 1e-6 {
				t.Errorf("scales to %v kg: doubted from %v kg, want %v", scale, off, want)
			}
		}
	}
}

// TestExpectedByTheOthers: what is doubted is told with what it would be by the others: the weight with the mean of two
// pairs of scales, rocks with a rider with the time of the chair and the rider as they are.
func TestExpectedByTheOthers(t *testing.T) {
	for _, more := range []float64{0, 0.4} { // kg, on the raised pair
		r := readingsOf(t, known)
		r.Weight = known.Mass - 2
		r.FrontRaised += more
		if _, doubts, err := r.mass(); err != nil || len(doubts) != 1 || math.Abs(doubts[0].Expected-(known.Mass+more/2)) > 1e-9 {
			t.Errorf("%+v, %v, want %v kg", doubts, err, known.Mass+more/2)
		}
	}
	r := rodeBy(t, rider)
	right, empty := r.RiddenTenRocks, readingsOf(t, known)
	r.LetGo, r.TenRocks, r.RiddenTenRocks = empty.LetGo, empty.TenRocks, right+5
	result, err := r.Read()
	if err != nil || len(result.Doubts) != 1 || math.Abs(result.Doubts[0].Expected-right) > 1e-6 {
		t.Errorf("%+v, %v, want %v s", result.Doubts, err, right)
	}
}

// TestRefusedFromThreeDeviations: rocks are refused where the inertia would have to be three standard deviations off:
// below zero, or beyond the one longest radius of gyration, whatever the mass.
func TestRefusedFromThreeDeviations(t *testing.T) {
	var longest []float64 // m², by the mass
	for _, mass := range []float64{6, 24} {
		b := body.Body{Mass: mass, Centre: known.Centre, Inertia: known.Inertia * mass / known.Mass}
		r := readingsOf(t, b)
		limit := func(to float64) (inertia, deviation float64) {
			at := r
			at.TenRocks, _ = root.Edge(func(seconds float64) bool {
				tried := r
				tried.TenRocks = seconds
				_, err := tried.result()
				return err == nil
			}, r.TenRocks, to, 1e-4, 0)
			return deviationOf(t, at)
		}
		if inertia, deviation := limit(r.TenRocks / 2); math.Abs(inertia/deviation+3) > 0.01 {
			t.Errorf("%v kg: too quick from %v kg·m² on, of a deviation of %v", mass, inertia, deviation)
		}
		inertia, deviation := limit(4 * r.TenRocks)
		longest = append(longest, (inertia-3*deviation)/mass)
	}
	// its own derivatives change a little with the step they are taken by
	if math.Abs(longest[1]/longest[0]-1) > 0.01 {
		t.Errorf("too slow from gyrations of %v m² on, want one whatever the mass", longest)
	}
}

// deviationOf returns the inertia that readings give, and its standard deviation by moving each by a tenth of its own.
func deviationOf(t *testing.T, r Readings) (inertia, deviation float64) {
	t.Helper()
	s, err := r.solve()
	if err != nil {
		t.Fatal(err)
	}
	moved := r
	for _, one := range moved.read() {
		kept, values := *one.value, [2]float64{}
		for i, sign := range []float64{1, -1} {
			*one.value = kept + sign*one.deviation/10
			up, err := moved.solve()
			if err != nil {
				t.Fatal(err)
			}
			values[i] = up.body.Inertia
		}
		*one.value = kept
		deviation = math.Hypot(deviation, (values[0]-values[1])*5)
	}
	return s.body.Inertia, deviation
}

// TestRoundTripOfMasses: on a slope too the inertia comes back, of light pieces and heavy ones.
func TestRoundTripOfMasses(t *testing.T) {
	for _, mass := range []float64{0.5, 5, 60} {
		for _, slope := range []float64{-0.02, 0, 0.02} {
			b := body.Body{Mass: mass, Centre: r2.Vec{X: -0.02, Y: 0.42}, Inertia: mass * 0.35 * 0.35}
			rig := sim.Rig{Profile: edge, Body: b, Floor: sim.Floor{Slope: slope}}
			rocks := timed{tenRocks: 10 * rig.Swing(rig.Balance(), 0.05).Period, letGo: 0.05}
			got, least, err := Readings{Edge: edge, Floor: rig.Floor}.inertia(b, rocks)
			rig.Body.Inertia = 0
			bare := 10 * rig.Swing(rig.Balance(), 0.05).Period
			if err != nil || math.Abs(got/b.Inertia-1) > 1e-9 || math.Abs(least/bare-1) > 1e-12 {
				t.Errorf("%v kg on %v: inertia %v, %v, was %v; bare %v s, want %v", mass, slope, got, err, b.Inertia, least, bare)
			}
		}
	}
}
