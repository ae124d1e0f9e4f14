package person

import (
	"errors"
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// Sizes go with each other: the mass of the same stoutness with the square of the stature, what lies over the seat with
// the sitting height, the legs with the rest, the hips with the breadth of a body of that mass and stature.
func TestSizesInProportion(t *testing.T) {
	for _, sex := range []Sex{Either, Woman, Man} {
		parts := func(tall, heavy, sitting float64) [6]float64 {
			s := person(t, Given{Sex: sex, Sizes: Measures{Stature: tall, Mass: heavy, SittingHeight: sitting}}).Sizes
			legs := s[Stature] - s[SittingHeight]
			return [6]float64{
				s[Elbow] / s[SittingHeight], s[Shoulder] / s[SittingHeight], s[Lumbar] / s[SittingHeight],
				(s[KneeCrease] - Shoe) / legs, s[ThighLength] / legs, s[Hips] * s[Hips] * s[Stature] / s[Mass],
			}
		}
		want := parts(0, 0, 0)
		for _, other := range [][6]float64{parts(1.55, 0, 0), parts(1.9, 95, 0.97), parts(1.75, 70, 0.90)} {
			for i := range want {
				if math.Abs(other[i]/want[i]-1) > 1e-12 {
					t.Errorf("%v: part %d is %v, of the mean %v", sex, i, other[i], want[i])
				}
			}
		}
		a, b := person(t, Given{Sex: sex, Sizes: Measures{Stature: 1.6}}), person(t, Given{Sex: sex, Sizes: Measures{Stature: 1.8}})
		if got := b.Sizes[Mass] / a.Sizes[Mass]; math.Abs(got-1.8*1.8/1.6/1.6) > 1e-12 {
			t.Errorf("%v: an eighth taller weighs %v times as much", sex, got)
		}
	}
}

// Upright on a hard, level stool the top of the head is the sitting height over the seat, and the shoulder joints are
// 0.104/0.853 of the upper arm (de Leva 1996b) under the top of the shoulder, to the last digit of that.
func TestUprightAsMeasured(t *testing.T) {
	long := Measures{Stature: 1.8, SittingHeight: 0.95, Shoulder: 0.62}
	for _, g := range []Given{{Sex: Man}, {Sex: Woman, Percentile: 5}, {Age: 7}, {Sizes: long}} {
		p := person(t, g)
		j := p.Pose(stool(p), Upright).Joints
		arm := r2.Norm(r2.Sub(j.Shoulder, j.Elbow))
		if got := (p.Sizes[Shoulder] - j.Shoulder.Y) / arm; math.Abs(j.Vertex.Y-p.Sizes[SittingHeight]) > 1e-12 ||
			math.Abs(got-0.104/0.853) > 0.0005 {
			t.Errorf("%+v: %v m over the seat, want %v; joints %v of the arm down", g, j.Vertex.Y, p.Sizes[SittingHeight], got)
		}
	}
}

// Standing, the segments are as long as the person's but for the legs, the soles stand about the feet, and the chin is
// 0.870 of the stature up (Drillis and Contini 1966, in Winter 2009, Fig. 4.1); sitting it is as far under the top.
func TestStandingChain(t *testing.T) {
	feet := r2.Vec{X: 0.3, Y: 0.1}
	for _, g := range []Given{{Sex: Man}, {Sex: Woman, Percentile: 90}, {Age: 9}} {
		p := person(t, g)
		_, j := p.Standing(feet)
		for part, ends := range j.segments() {
			if got := r2.Norm(r2.Sub(ends[0], ends[1])); Segment(part) != Thigh && Segment(part) != Shank && math.Abs(got-p.lengths[part]) > 1e-12 {
				t.Errorf("%+v: part %d is %v long, want %v", g, part, got, p.lengths[part])
			}
		}
		tall := p.Sizes[Stature]
		legs := (j.Hip.Y - j.Knee.Y) / (j.Knee.Y - j.Ankle.Y)
		if math.Abs(j.Chin.Y-feet.Y-0.870*tall) > 1e-12 || j.Heel.Y != feet.Y || math.Abs(legs-p.lengths[Thigh]/p.lengths[Shank]) > 1e-12 ||
			math.Abs(j.Shoulder.Y-j.Hip.Y-p.shoulder) > 1e-12 || j.Vertex.Y-feet.Y != tall && math.Abs(j.Vertex.Y-feet.Y-tall) > 1e-12 {
			t.Errorf("%+v: chin %v m up of %v, %+v", g, j.Chin.Y-feet.Y, tall, j)
		}
		seated := p.Pose(stool(p), AtEase).Joints
		under := r2.Sub(seated.Vertex, seated.Chin)
		if got := r2.Dot(under, r2.Unit(r2.Sub(seated.Vertex, seated.Neck))); math.Abs(got-0.130*tall) > 1e-12 {
			t.Errorf("%+v: sitting, chin %v under the top", g, got)
		}
	}
}

// The navel is 145.7 of 603.3 mm up the trunk in men and 181.5 of 614.8 in women (de Leva 1996, Table 4), in the middle
// 0.2684, here in two digits.
func TestNavelAsPublished(t *testing.T) {
	p := person(t, Given{})
	j := p.Pose(stool(p), AtEase).Joints
	want := (145.7/603.3 + 181.5/614.8) / 2
	if got := r2.Norm(r2.Sub(j.Navel(), j.Hip)) / r2.Norm(r2.Sub(j.Neck, j.Hip)); math.Abs(got-want) > 0.003 {
		t.Errorf("navel %v up the trunk, published %v", got, want)
	}
}

// A weight that does not go with the height is told with one near which it would: of a body mass index from 18.5 to 25,
// which the World Health Organization calls normal (TRS 894, 2000).
func TestNearWeight(t *testing.T) {
	for _, tall := range []float64{1.5, 1.8, 2} {
		var wrong *SizeError
		if _, err := New(Given{Sizes: Measures{Stature: tall, Mass: 8 * tall * tall}}); !errors.As(err, &wrong) {
			t.Fatal(err)
		}
		if index := wrong.Near / (tall * tall); !(index > 18.5 && index < 25) {
			t.Errorf("%v m tall: about %v kg was expected, an index of %v", tall, wrong.Near, index)
		}
	}
}

// The lap of a posed person is a seat along the thighs whose back is along the trunk: on a person of the survey's mean
// it lies as high over the seat as a thigh is thick, as far ahead of the back of the buttocks as the belly is deep.
func TestLap(t *testing.T) {
	for _, sex := range []Sex{Woman, Man} {
		p := person(t, Given{Sex: sex})
		for _, times := range []float64{1, 1.05} {
			other := p
			if times != 1 {
				other = person(t, Given{Sex: sex, Sizes: Measures{Stature: times * p.Sizes[Stature]}})
			}
			j := other.Pose(stool(other), AtEase).Joints
			lap := other.Lap(j)
			from := r2.Sub(lap.Meet, j.Hip)
			thigh, trunk := r2.Unit(r2.Sub(j.Knee, j.Hip)), r2.Unit(r2.Sub(j.Neck, j.Hip))
			deep, thick := r2.Dot(from, thigh)+other.hipAhead, r2.Cross(thigh, from)+other.hipUp
			if want := times * ansur().mean(sex, "abdominal_extension_depth_sitting"); math.Abs(deep-want) > 1e-12 {
				t.Errorf("%v: belly %v deep, want %v", sex, deep, want)
			}
			if want := times * ansur().mean(sex, "thigh_clearance"); math.Abs(thick-want) > 1e-12 {
				t.Errorf("%v: thigh %v thick, want %v", sex, thick, want)
			}
			if r2.Norm(r2.Sub(ahead(lap.Fall), thigh)) > 1e-12 || r2.Norm(r2.Sub(up(lap.Recline), trunk)) > 1e-12 {
				t.Errorf("%v: lap %+v on a thigh along %v and a trunk along %v", sex, lap, thigh, trunk)
			}
		}
	}
}

// A child as tall as the median of an age has that age, and measures 0.8 cm longer lying (CDC growth charts).
func TestAgeThereAndBack(t *testing.T) {
	for _, sex := range []Sex{Either, Woman, Man} {
		for age := 2.0; age <= 10; age += 0.5 {
			child := person(t, Given{Sex: sex, Age: age})
			if child.Sizes[Stature] >= leastGrownUp {
				continue
			}
			if got := person(t, Given{Sex: sex, Sizes: Measures{Stature: child.Sizes[Stature]}}); got.Age != age {
				t.Errorf("%v: %v m tall at %v years, read as %v", sex, child.Sizes[Stature], age, got.Age)
			}
		}
		for _, age := range []float64{0.5, 1, 2} {
			standing, mass := child(sex, age, 50, false)
			if lying := NewInfant(sex, age, 0); math.Abs(lying.Length-standing-0.008) > 1e-12 || lying.Mass != mass {
				t.Errorf("%v: %v m lying at %v years, %v standing", sex, lying.Length, age, standing)
			}
		}
	}
}

// A child's head has as many kilograms for the cube of its length as a grown-up's of de Leva's sample: 61.9 kg and
// 1.735 m the women, 73.0 kg and 1.741 m the men.
func TestHeadsAreAlike(t *testing.T) {
	for sex, sample := range map[Sex][2]float64{Woman: {61.9, 1.735}, Man: {73.0, 1.741}} {
		grown := segments()[sex][Head]
		want := grown.share * sample[0] / math.Pow(grown.length*sample[1], 3)
		for _, age := range []float64{3, 7, 12} {
			p := person(t, Given{Sex: sex, Age: age})
			if got := p.segments[Head].share * p.Sizes[Mass] / math.Pow(p.lengths[Head], 3); math.Abs(got/want-1) > 1e-12 {
				t.Errorf("%v of %v years: %v kg/m³, want %v", sex, age, got, want)
			}
		}
	}
}

// A capsule across its axis has the inertia of the discs it is cut into, each πr²·dx of the density, r²/4 about its own
// diameter; between two ages a value goes straight, and beyond the last it stays.
func TestCapsuleOfDiscs(t *testing.T) {
	c := Capsule(6, 0.6)
	mass, across, along := 0.0, 0.0, 0.0
	const n = 20000
	for i := range n {
		x := (float64(i)+0.5)/n*c.Length - c.Length/2
		cap := max(0, math.Abs(x)-(c.Length/2-c.Radius))
		square := c.Radius*c.Radius - cap*cap
		mass, across, along = mass+square, across+square*(square/4+x*x), along+square*square/2
	}
	if !(math.Abs(c.Across/c.Mass/(across/mass)-1) < 1e-6 && math.Abs(c.Along/c.Mass/(along/mass)-1) < 1e-6) { // NaN too
		t.Errorf("%+v, of discs %v and %v a kilogram", c, across/mass, along/mass)
	}
	knots := []knot{{1, 10}, {3, 20}}
	for age, want := range map[float64]float64{0: 10, 1: 10, 1.5: 12.5, 3: 20, 4: 20} {
		if got := between(knots, age); got != want {
			t.Errorf("at %v: %v, want %v", age, got, want)
		}
	}
}

// Who is of either sex has segments midway between a woman's and a man's; feet that are off the floor are ahead of the knees and
// not over them.
func TestEitherIsMidway(t *testing.T) {
	all := segments()
	for i, s := range all[Either] {
		w, m := all[Woman][i], all[Man][i]
		for _, off := range []float64{
			2*s.centre - w.centre - m.centre, 2*s.gyration - w.gyration - m.gyration, 2*s.length - w.length - m.length,
		} {
			if math.Abs(off) > 1e-12 {
				t.Errorf("segment %d: %+v between %+v and %+v", i, s, w, m)
			}
		}
	}
	p := person(t, Given{})
	if j := p.Pose(stool(p), FeetOff).Joints; !(j.Ankle.X > j.Knee.X && j.Ankle.Y < j.Knee.Y) {
		t.Errorf("feet off: knee %v, ankle %v", j.Knee, j.Ankle)
	}
}
