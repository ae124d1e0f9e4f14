package sim

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// closed is the accuracy of closed forms on both sides: a dozen roundings.
const closed = 1e-13

// TestScale: a piece s times as large rocks √s times as long, and all lengths grow by s.
func TestScale(t *testing.T) {
	const s = 3.7
	small := arc(0.6, 0.03)
	large := Rig{Profile: rocker.Single(s, 0.4*s, 0.5*s),
		Body: body.Body{Mass: 80, Centre: r2.Scale(s, small.Body.Centre), Inertia: small.Body.Inertia * s * s}}
	a, b := small.Balance(), large.Balance()
	if !sameTo(b.Period, a.Period*math.Sqrt(s), closed) || !sameTo(b.Back.Lift, a.Back.Lift*s, 1e-12) ||
		!sameTo(b.Back.Angle, a.Back.Angle, closed) {
		t.Errorf("small %+v, large %+v", a, b)
	}
}

// apart reports whether two numbers of the size of one differ by more than roundings of
// an edge that is built up from the other end.
func apart(a, b float64) bool {
	return math.Abs(a-b) > 1e-13 || math.IsNaN(a) != math.IsNaN(b)
}

// TestMirror: front and back change places.
func TestMirror(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 4))
	for range 100 {
		r := random(t, rng)
		m := Rig{Profile: mirrored(t, r.Profile), Body: r.Body, Floor: r.Floor}
		m.Body.Centre.X, m.Floor.Slope = -r.Body.Centre.X, -r.Floor.Slope
		a, b := r.Balance(), m.Balance()
		if a.Outcome != b.Outcome || apart(a.Back.Angle, b.Forward.Angle) || apart(a.Forward.Lift, b.Back.Lift) ||
			apart(a.Period, b.Period) {
			t.Errorf("%+v\nmirrored %+v", a, b)
		}
	}
}

// mirrored returns the profile with nose and tail exchanged, rebuilt from its bearings.
func mirrored(t *testing.T, p rocker.Profile) rocker.Profile {
	t.Helper()
	var spans []rocker.Span
	nose := 0.0 // of the mirror image: the old tail
	n := p.Bearings()
	for i := n - 1; i >= 0; i-- {
		b := p.Bearing(i)
		inside := i > 0 && i < n-1
		if inside && b.Radius > 0 {
			spans = append(spans, rocker.Arc(b.Radius, b.Radius*(b.To-b.From)))
		} else if inside && b.To > b.From {
			spans = append(spans, rocker.Turn(b.To-b.From))
		}
		if i > 0 {
			if flat := p.Bearing(i - 1).Flat; flat > 0 {
				spans = append(spans, rocker.Flat(flat))
			}
		}
	}
	tail := p.Bearing(n - 1)
	nose = tail.RolledAt(tail.From) - rolledToOrigin(p)
	m, err := rocker.Chain(nose, spans...)
	if err != nil {
		t.Fatal(errors.Join(err, errors.New("the mirror image is no rocker")))
	}
	return m
}

// rolledToOrigin returns the length rolled at which the origin itself is the contact.
func rolledToOrigin(p rocker.Profile) float64 {
	i, _ := p.Find(0)
	b := p.Bearing(i)
	contact := b.Contact(0)
	return b.RolledAt(0) + contact.X // the origin lies on the floor line of tilt 0
}

// TestSplitArcsChangeNothing, to the rounding of the split lengths.
func TestSplitArcsChangeNothing(t *testing.T) {
	whole := chain(t, 0.4, rocker.Arc(1, 0.5), rocker.Arc(1.4, 0.4)).Balance()
	parts := chain(t, 0.4, rocker.Arc(1, 0.2), rocker.Arc(1, 0.3), rocker.Arc(1.4, 0.15), rocker.Arc(1.4, 0.25)).Balance()
	if !sameTo(whole.Period, parts.Period, 1e-15) || !sameTo(whole.Back.Lift, parts.Back.Lift, 1e-13) {
		t.Errorf("whole %+v\nsplit %+v", whole, parts)
	}
}

// TestOnAJoint: resting where two arcs meet, each half of a small rock is on its own arc,
// so the period is the mean of the two.
func TestOnAJoint(t *testing.T) {
	r := chain(t, 0.4, rocker.Arc(0.9, 0.4), rocker.Arc(1.6, 0.5))
	b := r.Balance()
	one := func(radius float64) float64 {
		return 2 * math.Pi * math.Sqrt((0.35*0.35+0.36)/(Gravity*(radius-0.6)))
	}
	if want := (one(0.9) + one(1.6)) / 2; b.Rest.Tilt != 0 || !sameTo(b.Period, want, closed) || !sameTo(b.Steadiness, 0.3, 1e-12) {
		t.Errorf("at %v rad %v s, steadiness %v m; want %v s and the smaller, 0.3 m", b.Rest.Tilt, b.Period, b.Steadiness, want)
	}
	for _, release := range []float64{1e-4, 1e-6, 1e-8} { // in the limit the whole rock agrees
		if period, _ := r.Period(b, release); !sameTo(period, b.Period, 1e-8) {
			t.Errorf("from %v rad %v s, small rock %v s", release, period, b.Period)
		}
	}
	near := r
	near.Body.Centre.X = -1e-12 // nearer than AtJoint
	if b := near.Balance(); !sameTo(b.Period, (one(0.9)+one(1.6))/2, 1e-9) {
		t.Errorf("a picoradian from the joint: %v s", b.Period)
	}
	far := r
	far.Body.Centre.X = -1e-6
	if b := far.Balance(); !sameTo(b.Period, one(1.6), 1e-5) {
		t.Errorf("a microradian off the joint: %v s, want the tail arc's %v s", b.Period, one(1.6))
	}
}

// TestOnAFlat: the contact jumps, and a small rock has no period of its own.
func TestOnAFlat(t *testing.T) {
	b := chain(t, 0.5, rocker.Arc(1, 0.4), rocker.Flat(0.2), rocker.Arc(1, 0.4)).Balance()
	if b.Outcome != Rocks || b.Rest.Tilt != 0 || !math.IsNaN(b.Period) || !math.IsNaN(b.Steadiness) || !b.Back.Exists() {
		t.Errorf("on a flat: %+v", b)
	}
}

// TestTwoRests: a corner under the middle leaves a rest on either side; of two as low the
// one further forward is the piece's, and both have margins that end at the middle.
func TestTwoRests(t *testing.T) {
	r := chain(t, 0.4, rocker.Arc(1, 0.4), rocker.Turn(0.2), rocker.Arc(1, 0.4))
	b := r.Balance()
	if b.Outcome != Rocks || !(b.Rest.Tilt < 0) || !sameTo(b.Back.Tip, 0, 1e-15) && math.Abs(b.Back.Tip) > 1e-15 {
		t.Fatalf("balance %+v", b)
	}
	if !(b.Back.Over > 0.3) || b.Forward.Over != b.Forward.Tip {
		t.Errorf("the last hilltop at the back is %v, in front %v", b.Back.Over, b.Forward.Over)
	}
	// let go a little beyond the middle it is held in the other rest
	if s := r.Swing(b, b.Back.Angle+0.02); s.Outcome != SettlesInAnotherRest {
		t.Errorf("from just over the middle: %v", s.Outcome)
	}
	r.Body.Centre.X = -0.001 // now the back one is lower
	if b := r.Balance(); !(b.Rest.Tilt > 0) {
		t.Errorf("with the weight behind: %+v", b.Rest)
	}
}

// TestHugeAndNearlyNeutral loses no digits: R = 100 km, and R − H = 0.1 µm.
func TestHugeAndNearlyNeutral(t *testing.T) {
	k2 := 0.35 * 0.35
	huge := arc(0.6, 0)
	huge.Profile = rocker.Single(1e5, 0.4, 0.5)
	if got, want := huge.Balance().Period, 2*math.Pi*math.Sqrt((k2+0.36)/(Gravity*(1e5-0.6))); !sameTo(got, want, closed) {
		t.Errorf("R = 100 km: %v s, want %v", got, want)
	}
	const d = 1.0 / (1 << 23) // exact in a float64
	still := arc(1-d, 0)
	if got, want := still.Balance().Period, 2*math.Pi*math.Sqrt((k2+(1-d)*(1-d))/(Gravity*d)); !sameTo(got, want, closed) {
		t.Errorf("R − H = 0.1 µm: %v s, want %v", got, want)
	}
}

// TestNoRest: above the arc's centre and beyond a tip the answer is an outcome.
func TestNoRest(t *testing.T) {
	for name, r := range map[string]Rig{"above the centre": arc(1.1, 0), "beyond the tail": arc(0.5, 0.55)} {
		if b := r.Balance(); b.Outcome != NoRest || !math.IsNaN(b.Period) || b.Back.Exists() || b.Forward.Exists() {
			t.Errorf("%s: %+v", name, b)
		}
	}
}

// TestGravityAndFloor: on the moon everything takes √6 times as long.
func TestGravityAndFloor(t *testing.T) {
	r := arc(0.6, 0.02)
	here := r.Balance().Period
	r.Floor.Gravity = Gravity / 6
	if there := r.Balance().Period; !sameTo(there, here*math.Sqrt(6), closed) {
		t.Errorf("%v s here, %v s there", here, there)
	}
}

// TestOverTip tells a longer rocker's hilltop from the curve's own.
func TestOverTip(t *testing.T) {
	r := arc(0.6, 0)
	b := r.Balance()
	if !r.OverTip(b.Back) || !r.OverTip(b.Forward) {
		t.Error("a chair goes over its tips")
	}
	cornered := chain(t, 0.4, rocker.Arc(1, 0.4), rocker.Turn(0.2), rocker.Arc(1, 0.4))
	if b := cornered.Balance(); cornered.OverTip(b.Back) {
		t.Error("the corner in the middle is no tip")
	}
}

func TestBalanceAllocatesNothing(t *testing.T) {
	r := chain(t, 0.4, rocker.Arc(0.9, 0.3), rocker.Arc(1, 0.3), rocker.Arc(1.3, 0.3))
	b := r.Balance()
	if n := testing.AllocsPerRun(100, func() { r.Balance(); r.Swing(b, 0.2) }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

func BenchmarkBalance(b *testing.B) {
	for name, r := range map[string]Rig{
		"one arc":    arc(0.6, 0.02),
		"three arcs": chain(b, 0.4, rocker.Arc(0.9, 0.3), rocker.Arc(1, 0.3), rocker.Arc(1.3, 0.3)),
	} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if r.Balance().Outcome != Rocks {
					b.Fatal("it does not rock")
				}
			}
		})
	}
}
