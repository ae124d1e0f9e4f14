package person

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// Three standing men, arms at the sides: Table A.2.1, position 1, of a text on body
// dynamics, believed Tözeren after Santschi, DuBois and Omoto (1963); one source. The
// tolerances are those of people who differ from the mean of their size.
func TestStandingMen(t *testing.T) {
	for _, s := range []struct {
		id                          string
		stature, mass, below, about float64 // m, kg, of the centre below the top of the head m, kg·m²
	}{
		{"S4", 1.834, 78.7, 0.818, 13.45},
		{"S5", 1.712, 66.8, 0.757, 9.25},
		{"S6", 1.862, 92.1, 0.808, 14.58},
	} {
		p := person(t, Given{Sex: Man, Sizes: Measures{Stature: s.stature, Mass: s.mass}})
		b, j := p.Standing(r2.Vec{})
		below := j.Vertex.Y - b.Centre.Y
		t.Logf("%s: centre %.0f mm below the top (published %.0f), inertia %.2f kg m2 (%.2f)", s.id, below*1e3,
			s.below*1e3, b.Inertia, s.about)
		if math.Abs(below-s.below) > 0.020 {
			t.Errorf("%s: centre %.3f m below the top of the head, published %.3f", s.id, below, s.below)
		}
		if math.Abs(b.Inertia/s.about-1) > 0.20 {
			t.Errorf("%s: inertia %.2f, published %.2f", s.id, b.Inertia, s.about)
		}
	}
}

// stool is a level seat at the height of a person's knee crease.
func stool(p Person) Seat {
	return Seat{Depth: 0.45, Backed: true, Floor: -p.Sizes[KneeCrease]}
}

// A man of 77 kg in relaxed sitting has his centre 220 mm ahead of the back of the
// buttocks: UMTRI, Whole-body center of mass location in seated posture (abstract; 447
// women and 315 men scanned); one source.
func TestSeatedCentreAhead(t *testing.T) {
	p := person(t, Given{Sex: Man, Sizes: Measures{Mass: 77}})
	got := p.Whole(p.Pose(stool(p), Upright).Joints).Centre.X
	t.Logf("centre %.0f mm ahead, published 220", got*1e3)
	if math.Abs(got-0.220) > 0.025 {
		t.Errorf("centre %.3f m ahead of the back of the buttocks, published 0.220", got)
	}
}

// What is only recalled is printed, never asserted.
func TestFromMemory(t *testing.T) {
	p := person(t, Given{Sex: Man, Sizes: Measures{Mass: 75.6, Stature: 1.768}})
	pose := p.Pose(stool(p), Upright)
	whole := p.Whole(pose.Joints)
	t.Logf("from memory, Santschi, DuBois and Omoto (1963), mean of 66 men sitting: "+
		"201 mm ahead, 673 below the top, 7.52 kg m2; here %.0f, %.0f, %.2f",
		whole.Centre.X*1e3, (pose.Joints.Vertex.Y-whole.Centre.Y)*1e3, whole.Inertia)
}

// ANSUR II (2012), computed from the public records: 5th, 50th, 95th percentile, mm or
// kg; knee creases are barefoot there.
func TestSurveyPercentiles(t *testing.T) {
	for _, s := range []struct {
		sex  Sex
		size Size
		want [3]float64
	}{
		{Man, Stature, [3]float64{1.648, 1.755, 1.870}},
		{Woman, Stature, [3]float64{1.525, 1.626, 1.740}},
		{Man, Mass, [3]float64{64.4, 84.6, 110.7}},
		{Woman, Mass, [3]float64{51.3, 66.8, 87.1}},
		{Man, KneeCrease, [3]float64{0.390 + Shoe, 0.430 + Shoe, 0.471 + Shoe}},
		{Woman, ThighLength, [3]float64{0.441, 0.483, 0.535}},
		{Woman, Hips, [3]float64{0.348, 0.397, 0.456}},
		{Man, Elbow, [3]float64{0.197, 0.246, 0.291}},
		{Man, Shoulder, [3]float64{0.558, 0.608, 0.662}},
		{Woman, SittingHeight, [3]float64{0.803, 0.857, 0.912}},
	} {
		for i, percentile := range []float64{5, 50, 95} {
			p := person(t, Given{Sex: s.sex, Percentile: percentile})
			if got := p.Sizes[s.size]; math.Abs(got-s.want[i]) > 1e-9 { // erfinv
				t.Errorf("%v, %v, percentile %g: %v, want %v", s.sex, s.size, percentile, got, s.want[i])
			}
			if p.Sources[s.size] != Survey {
				t.Errorf("%v is said to be %v", s.size, p.Sources[s.size])
			}
		}
	}
}

// CDC growth charts (2000): medians of girls and boys, standing from 3 years.
func TestGrowthMedians(t *testing.T) {
	for _, c := range []struct {
		sex           Sex
		age           float64
		mass, stature float64
	}{
		{Man, 3, 14.33, 0.950}, {Woman, 3, 13.87, 0.939},
		{Man, 6, 20.68, 1.154}, {Woman, 6, 20.24, 1.147},
		{Man, 8, 25.64, 1.279}, {Woman, 8, 25.63, 1.276},
		{Man, 12, 40.47, 1.491}, {Woman, 12, 41.65, 1.512},
	} {
		p := person(t, Given{Sex: c.sex, Age: c.age})
		if math.Abs(p.Sizes[Mass]-c.mass) > 1e-9 || math.Abs(p.Sizes[Stature]-c.stature) > 1e-9 {
			t.Errorf("%v, %g years: %v kg, %v m; want %v, %v", c.sex, c.age, p.Sizes[Mass], p.Sizes[Stature], c.mass, c.stature)
		}
	}
	// Hybrid III 6-year-old dummy: sitting height 0.556 of the stature (NHTSA; one source).
	p := person(t, Given{Age: 6})
	if got := p.Sizes[SittingHeight] / p.Sizes[Stature]; math.Abs(got-0.556) > 1e-12 {
		t.Errorf("sitting height over stature at 6 years: %v, want 0.556", got)
	}
	// Newborn: 3.53 kg and 50.0 cm (boys), lying.
	if i := NewInfant(Man, 0, 50); math.Abs(i.Mass-3.53) > 1e-12 || math.Abs(i.Length-0.500) > 1e-12 {
		t.Errorf("newborn boy: %+v", i)
	}
}

// A capsule as long as it is wide is a ball, 2/5·m·r²; a thin one a rod, m·L²/12.
func TestCapsuleEnds(t *testing.T) {
	r := 0.1
	ball := Capsule(infantDensity*4/3*math.Pi*r*r*r, 2*r)
	for _, got := range []float64{ball.Along, ball.Across} {
		if want := 0.4 * ball.Mass * r * r; math.Abs(got/want-1) > 1e-9 { // the radius by halving
			t.Errorf("ball: inertia %v, want %v", got, want)
		}
	}
	rod := Capsule(1e-6, 1)
	if want := rod.Mass / 12; math.Abs(rod.Across/want-1) > 1e-4 { // r = 0.56 mm against 1 m
		t.Errorf("rod: inertia %v, want %v", rod.Across, want)
	}
}
