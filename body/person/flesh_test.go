package person

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// TestFleshAsPublished: of men of one height, of 77 and of 140 kg in upright sitting, the balance points are as far apart
// ahead as UMTRI's (seated posture, abstract: 220 and 273 mm), to what the slope of the thighs leaves.
func TestFleshAsPublished(t *testing.T) {
	at := func(mass float64) float64 {
		p := person(t, Given{Sex: Man, Sizes: Measures{Mass: mass}})
		return p.Whole(p.Pose(stool(p), Upright).Joints).Centre.X
	}
	if apart := at(140) - at(77); math.Abs(apart-(0.273-0.220)) > 0.002 {
		t.Errorf("77 and 140 kg balance %v m apart, published 0.053", apart)
	}
	for _, mass := range []float64{77, 140} { // people of one size differ by 25 mm
		if got, want := at(mass), map[float64]float64{77: 0.220, 140: 0.273}[mass]; math.Abs(got-want) > 0.025 {
			t.Errorf("%v kg balance %v m ahead, published %v", mass, got, want)
		}
	}
}

// TestFleshOfTheMean: who weighs the survey's mean for the height, or less, and children balance as the chain has them;
// further up from there each kilogram brings the balance point ahead; nobody's segments change mass, nor stand otherwise.
func TestFleshOfTheMean(t *testing.T) {
	rng := rand.New(rand.NewPCG(19, 6))
	for range 200 {
		g := Given{Sex: Sex(rng.IntN(3)), Sizes: Measures{Stature: 1.5 + 0.45*rng.Float64()}}
		mean := person(t, g)
		s := stool(mean)
		ahead := func(mass float64) float64 {
			g := g
			g.Sizes[Mass] = mass
			p := person(t, g)
			whole, bare := p.Whole(p.Pose(s, AtEase).Joints), p
			bare.ahead = 0
			chain := bare.Whole(bare.Pose(s, AtEase).Joints)
			if math.Abs(whole.Mass-mass) > 1e-9 || math.Abs(chain.Mass-mass) > 1e-9 {
				t.Errorf("%v kg weigh %v", mass, whole.Mass)
			}
			stands, _ := p.Standing(r2.Vec{})
			if other, _ := bare.Standing(r2.Vec{}); other != stands {
				t.Errorf("%v kg stand at %v, the chain at %v", mass, stands, other)
			}
			return whole.Centre.X - chain.Centre.X
		}
		m := mean.Sizes[Mass]
		if a := ahead(m); a != 0 || ahead(0.8*m) != 0 {
			t.Errorf("%+v of the mean weight are carried ahead by %v, lighter by %v", g, a, ahead(0.8*m))
		}
		if a, b := ahead(1.2*m), ahead(1.5*m); !(a > 0.005 && b > a && b < 0.08) {
			t.Errorf("%+v: a fifth more weight is %v m ahead, half as much again %v", g, a, b)
		}
	}
	owner := person(t, Given{Sex: Man, Sizes: Measures{Stature: 1.778, Mass: 81.65}}) // 5 ft 10, 180 lb: 6 kg under the mean
	if owner.ahead != 0 {
		t.Errorf("the owner's flesh is carried %v m ahead", owner.ahead)
	}
	child := person(t, Given{Age: 8, Sizes: Measures{Mass: 40}})
	if child.ahead != 0 {
		t.Errorf("a child's flesh is carried %v m ahead", child.ahead)
	}
}

// TestFleshIsOne: what the seat carries, what turns on the back and the whole know of the same flesh.
func TestFleshIsOne(t *testing.T) {
	p := person(t, Given{Sex: Woman, Sizes: Measures{Stature: 1.65, Mass: 120}})
	bare := p
	bare.ahead = 0
	s := stool(p)
	pose, chain := p.Pose(s, AtEase), bare.Pose(s, AtEase)
	if got := pose.Body.Mass + pose.Legs.Shank + pose.Legs.Foot; math.Abs(got-120) > 1e-9 {
		t.Errorf("seat and legs weigh %v kg, want 120", got)
	}
	moment := func(b body.Body) float64 { return b.Mass * b.Centre.X }
	whole := moment(p.Whole(pose.Joints)) - moment(bare.Whole(chain.Joints))
	if got := moment(pose.Body) - moment(chain.Body); !(whole > 0) || math.Abs(got-whole) > 1e-9 {
		t.Errorf("flesh is %v kg m on the seat, %v of the whole", got, whole)
	}
	share := p.segments[Trunk].share / (p.segments[Trunk].share + p.segments[Thigh].share)
	got := moment(p.OnTheBack(pose.Joints)) - moment(bare.OnTheBack(chain.Joints))
	if math.Abs(got-share*whole) > 1e-9 {
		t.Errorf("flesh is %v kg m on the back, want the trunk's part, %v", got, share*whole)
	}
}
