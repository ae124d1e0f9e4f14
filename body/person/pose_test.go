package person

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// anySeat returns a seat such as people make, and some that they should not.
func anySeat(r *rand.Rand) Seat {
	between := func(low, high float64) float64 { return low + (high-low)*r.Float64() }
	return Seat{
		Meet: r2.Vec{X: -0.2, Y: between(0.15, 0.6)}, Fall: between(-0.2, 0.3), Depth: between(0.2, 0.6),
		Backed: r.IntN(4) > 0, Recline: between(0, 0.6), Arms: between(0, 0.35) * float64(r.IntN(2)), Reach: 0.35,
		Cushion: between(0, 0.08),
	}
}

func anyone(t *testing.T, r *rand.Rand) Person {
	switch r.IntN(3) {
	case 0:
		return person(t, Given{Sex: Sex(r.IntN(3)), Percentile: 1 + 98*r.Float64()})
	case 1:
		return person(t, Given{Age: 2 + 10*r.Float64()})
	}
	tall := 1.5 + 0.5*r.Float64()
	return person(t, Given{Sex: Sex(r.IntN(3)), Sizes: Measures{Stature: tall, Mass: tall * tall * (18 + 20*r.Float64())}})
}

// In every posture on every seat each segment is as long as the person's, the masses
// sum, and the balance point lies within the joints.
func TestPoseKeepsTheChain(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 1))
	for range 2000 {
		p, s := anyone(t, r), anySeat(r)
		for _, posture := range Postures() {
			pose := p.Pose(s, posture)
			if got := pose.Body.Mass + pose.Standing + pose.Legs.Shank + pose.Legs.Foot; math.Abs(got-p.Sizes[Mass]) > 1e-12*got {
				t.Fatalf("%v: %v kg on the seat and %v on the floor of %v", posture, pose.Body.Mass, pose.Standing, p.Sizes[Mass])
			}
			low, high := pose.Joints.Hip, pose.Joints.Hip
			for part, ends := range pose.Joints.segments() {
				want := p.lengths[part]
				switch {
				case Segment(part) == Trunk || Segment(part) == Head || Segment(part) >= Thigh:
				case posture == ArmsBehindHead:
					want *= elbowsAside
				}
				if got := r2.Norm(r2.Sub(ends[0], ends[1])); math.Abs(got-want) > 1e-9 {
					t.Fatalf("%v on %+v: part %d is %v long, want %v", posture, s, part, got, want)
				}
				for _, q := range ends {
					low, high = r2.Vec{X: min(low.X, q.X), Y: min(low.Y, q.Y)}, r2.Vec{X: max(high.X, q.X), Y: max(high.Y, q.Y)}
				}
			}
			if posture == Rising || posture == PushingUp {
				continue // on the seat as one point
			}
			if c := pose.Body.Centre; c.X < low.X || c.X > high.X || c.Y < low.Y || c.Y > high.Y {
				t.Fatalf("%v on %+v: balance point %v outside the person", posture, s, c)
			}
		}
	}
}

// The hip joints stand at their height over the seat and their distance from the back,
// square to both; the cushion lifts them.
func TestHipSquareToSeatAndBack(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 2))
	for range 500 {
		p, s := anyone(t, r), anySeat(r)
		s.Backed = true
		from := r2.Sub(p.hip(s), s.Meet)
		if got, want := r2.Dot(from, up(s.Fall)), p.hipUp+s.Cushion; math.Abs(got-want) > 1e-12 {
			t.Errorf("hip %v over the seat, want %v", got, want)
		}
		if got := r2.Dot(from, ahead(s.Recline)); math.Abs(got-p.hipAhead) > 1e-12 {
			t.Errorf("hip %v from the back, want %v", got, p.hipAhead)
		}
	}
}

// On a stool as high as the knee crease the shanks stand plumb and the soles on the
// floor.
func TestShanksPlumbOnAFittingStool(t *testing.T) {
	for _, sex := range []Sex{Either, Woman, Man} {
		p := person(t, Given{Sex: sex})
		s := stool(p)
		j := p.Pose(s, Upright).Joints
		if math.Abs(j.Knee.X-j.Ankle.X) > 1e-6 || math.Abs(j.Heel.Y-s.Floor) > 1e-9 { // at the end of an arc cosine
			t.Errorf("%v: knee %v, ankle %v, heel %v over a floor at %v", sex, j.Knee, j.Ankle, j.Heel, s.Floor)
		}
	}
}

// The floor's share of feet that stand flat, by hand: the shank as a bar from the knee
// to the ankle leaves its centre's share at the ankle.
func TestFeetFlatShare(t *testing.T) {
	p := person(t, Given{Sex: Man})
	legs := p.Pose(stool(p), AtEase).Legs
	got := legs.Full() / p.Sizes[Mass]
	want := 2 * (0.0137 + 0.0433*0.4395) // de Leva (1996), Table 4: foot 1.37 %, shank 4.33 %, 43.95 % from the knee
	if math.Abs(got-want) > 1e-6 {
		t.Errorf("the floor carries %v of the weight, want %v", got, want)
	}
}

// The forces of the seat and of the floor on who rises hold the weight: their
// moments about the balance point cancel, and neither pulls.
func TestRisingInBalance(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 500 {
		p, s := anyone(t, r), anySeat(r)
		pose := p.Pose(s, Rising)
		whole := p.Whole(pose.Joints)
		feet := (pose.Joints.Heel.X + pose.Joints.Toe.X) / 2
		if pose.Standing < 0 || pose.Body.Mass < 0 {
			t.Fatalf("the floor carries %v kg, the seat %v", pose.Standing, pose.Body.Mass)
		}
		moment := pose.Body.Mass*(pose.Body.Centre.X-whole.Centre.X) + pose.Standing*(feet-whole.Centre.X)
		if share := pose.Standing / whole.Mass; share > 0 && share < 1 && math.Abs(moment) > 1e-12*whole.Mass {
			t.Fatalf("moment %v kg m about the balance point", moment)
		}
	}
}

// Leaning back carries what rides back: upright, then at ease on the back, then with arms behind the head, which also
// lifts it. Stretched legs are further ahead than legs that hang.
func TestPosturesInOrder(t *testing.T) {
	p := person(t, Given{})
	s := stool(p)
	s.Recline = 0.3
	at := func(posture Posture) r2.Vec { return p.Pose(s, posture).Body.Centre }
	if !(at(Upright).X > at(AtEase).X && at(AtEase).X > at(ArmsBehindHead).X) {
		t.Errorf("ahead: upright %v, at ease %v, arms behind the head %v", at(Upright), at(AtEase), at(ArmsBehindHead))
	}
	eased := p.Pose(s, AtEase)
	hanging := body.Join(eased.Body, body.Body{Mass: eased.Legs.Mass(), Centre: eased.Legs.Knee})
	if off := p.Pose(s, FeetOff).Body; math.Abs(off.Mass-p.Sizes[Mass]) > 1e-9 || off.Centre.X <= hanging.Centre.X {
		t.Errorf("feet off: %v, hanging %v", off, hanging)
	}
	if share := p.Pose(s, Rising).Body.Mass / p.Sizes[Mass]; share < 0.5 || share > 0.9 {
		t.Errorf("rising from a fitting stool the seat carries %v of the weight, want well over half", share)
	}
	if at(ArmsBehindHead).Y <= at(AtEase).Y {
		t.Error("raised arms do not lift the balance point")
	}
}

func TestWhoCannotBe(t *testing.T) {
	for _, c := range []struct {
		name  string
		given Given
		size  Size
	}{
		{"a 4 m person", Given{Sizes: Measures{Stature: 4}}, Stature},
		{"nearly no weight", Given{Sizes: Measures{Mass: 0.1}}, Mass},
		{"a feather", Given{Sizes: Measures{Stature: 1.8, Mass: 25}}, Mass},
		{"knee crease as high as the hip", Given{Sizes: Measures{Stature: 1.78, Mass: 80, KneeCrease: 0.80}}, KneeCrease},
		{"taller sitting than standing", Given{Sizes: Measures{Stature: 1.6, SittingHeight: 1.7}}, SittingHeight},
		{"elbow at the shoulder", Given{Sizes: Measures{Stature: 1.7, Elbow: 0.37, Shoulder: 0.5}}, Elbow},
		{"hips of a yard", Given{Sizes: Measures{Stature: 1.7, Mass: 70, Hips: 0.9}}, Hips},
	} {
		_, err := New(c.given)
		var wrong *SizeError
		if !errors.As(err, &wrong) || wrong.Size != c.size {
			t.Errorf("%s: %v, want an error about %v", c.name, err, c.size)
		}
	}
	if _, err := New(Given{Sizes: Measures{Stature: 1.78, Mass: 82, KneeCrease: 0.47, ThighLength: 0.5, Hips: 0.4,
		Elbow: 0.24, Shoulder: 0.61, SittingHeight: 0.93, Lumbar: 0.2}}); err != nil {
		t.Errorf("an ordinary man: %v", err)
	}
}

// Everyone whom the tables describe can be made.
func TestAllOfTheTables(t *testing.T) {
	for _, sex := range []Sex{Either, Woman, Man} {
		for percentile := 1.0; percentile < 100; percentile++ {
			person(t, Given{Sex: sex, Percentile: percentile})
		}
		for age := 0.5; age < 18; age += 0.25 {
			for _, percentile := range []float64{5, 50, 95} {
				person(t, Given{Sex: sex, Age: age, Percentile: percentile})
			}
		}
		for tall := 1.40; tall <= 2.1; tall += 0.01 {
			person(t, Given{Sex: sex, Sizes: Measures{Stature: tall}})
		}
	}
}

func BenchmarkPose(b *testing.B) {
	p, err := New(Given{})
	if err != nil {
		b.Fatal(err)
	}
	s := stool(p)
	b.ReportAllocs()
	var pose Pose
	for b.Loop() {
		pose = p.Pose(s, AtEase)
	}
	if pose.Body.Mass == 0 {
		b.Fatal("nobody")
	}
}

func BenchmarkNew(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := New(Given{Sizes: Measures{Stature: 1.78, Mass: 80}}); err != nil {
			b.Fatal(err)
		}
	}
}

// TestOtherSide holds the closed form, 3-4-5 and 5-12-13, and that a side as long as the hypotenuse
// leaves exactly nothing, whatever its digits.
func TestOtherSide(t *testing.T) {
	for _, tt := range [][3]float64{{5, 3, 4}, {5, -4, 3}, {13, 12, 5}, {1, 2, 0}} {
		if got := otherSide(tt[0], tt[1]); got != tt[2] {
			t.Errorf("otherSide(%v, %v) = %v, want %v", tt[0], tt[1], got, tt[2])
		}
	}
	for i := range 1000 {
		if x := 0.25 + float64(i)*math.Pi/1e4; otherSide(x, x) != 0 || otherSide(x, -x) != 0 {
			t.Fatalf("otherSide(%v, %v) = %v, want 0", x, x, otherSide(x, x))
		}
	}
}
