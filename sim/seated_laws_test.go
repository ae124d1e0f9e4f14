package sim

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// byHand returns the moment about the contact over g at a tilt, kg·m, with so much of each leg on the floor, where
// that is given, else what the law of the legs says.
func (s *Seated) byHand(tilt float64, carried ...float64) float64 {
	sum := s.Body.Mass * s.ahead(s.Body.Centre, tilt)
	for i := range s.Legs {
		l := &s.Legs[i]
		y := s.Profile.Height(l.Knee, tilt-s.Floor.Slope)
		n := l.Carried(l.StageAt(y), y)
		if carried != nil {
			n = carried[i]
		}
		sum += (l.Mass() - n) * s.ahead(l.Knee, tilt)
	}
	return sum
}

// TestSeatedRests: with dN/dy ≤ 0 and y″ = ρ − y, on a level floor
//
//	M′ = m₁ (ρ − H₁) + Σ (mₛ + m_f − N)(ρ − y) − Σ (dN/dy) y′²
//
// so that M only grows wherever the radius is larger than the heights of G₁ and of the knees: there is one rest on
// such a rocker where M points home at both tips, else none, however many arcs it has. On any rocker rests and
// hilltops alternate, the first and the last of an upright half turn being hilltops.
func TestSeatedRests(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 20))
	round := 0
	for i := range 600 {
		s := atEase(t, rng, 1+i%4, i%2 == 0)
		s.Legs = append(s.Legs, atEase(t, rng, 1, false).Legs...)
		all := s.Equilibria()
		nose, tail := s.Profile.Bearing(0).To, s.Profile.Bearing(s.Profile.Bearings()-1).From
		between := 0
		for k, e := range all {
			if e.Stable != (k%2 == 1) || len(all)%2 == 0 || k > 0 && e.Tilt <= all[k-1].Tilt {
				t.Fatalf("%d: rests and hilltops do not alternate: %+v", i, all)
			}
			if e.Stable && nose < e.Tilt && e.Tilt < tail {
				between++
			}
		}
		largest := 0.0
		for k := range 101 {
			tilt := nose + (tail-nose)*float64(k)/100
			for _, q := range []r2.Vec{s.Body.Centre, s.Legs[0].Knee, s.Legs[1].Knee} {
				largest = max(largest, s.Profile.Height(q, tilt))
			}
		}
		least := math.Inf(1)
		for k := 1; k < s.Profile.Bearings()-1; k++ {
			least = min(least, s.Profile.Bearing(k).Radius)
		}
		if least < largest*1.001 {
			continue
		}
		round++
		want := 0
		if s.byHand(nose+1e-9) < 0 && s.byHand(tail-1e-9) > 0 {
			want = 1
		}
		if between != want {
			t.Errorf("%d: %d rests between the tips of radii that are all larger than the heights, want %d: %+v", i, between, want, all)
		}
	}
	if round < 100 {
		t.Errorf("%d round rockers are too few", round)
	}
}

// TestSeatedWithinAQuarterTurn: on a wheel the whole would rest with the knees down, far past a quarter of a turn, and
// knees lower than its axle pass the height of the heels out there as well.
func TestSeatedWithinAQuarterTurn(t *testing.T) {
	s := atEase(t, rand.New(rand.NewPCG(17, 21)), 1, false)
	s.Profile, s.Body.Centre = rocker.Single(0.5, 1.2, 1.2), r2.Vec{X: 0.3, Y: 0.6}
	s.Legs[0].Knee, s.Legs[0].Length = r2.Vec{X: 0.4, Y: 0.1}, 0.3
	for _, e := range s.Equilibria() {
		if math.Abs(e.Tilt) > math.Pi/2 {
			t.Errorf("an equilibrium at %v rad: %+v", e.Tilt, e)
		}
	}
}

// TestSeatedHilltopOnAJoint moves the weight by the smallest steps there are, so that a hilltop passes a joint of two
// tight arcs: it is lost or doubled nowhere.
func TestSeatedHilltopOnAJoint(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 22))
	for range 60 {
		s := atEase(t, rng, 1, false)
		tight := rocker.Arc(0.25+0.1*rng.Float64(), 0.1)
		s.Profile = chain(t, 0.42, rocker.Arc(1.4, 0.3), rocker.Arc(0.3, 0.1), tight, rocker.Arc(1.4, 0.4)).Profile
		joint := s.Profile.Bearing(2).To
		x := s.Body.Centre.X - s.byHand(joint)/(s.Body.Mass*math.Cos(joint))
		for step := 0x1p-40; step > 0x1p-58; step /= 2 { // towards where it lies on it; further ahead it comes later
			s.Body.Centre.X = x
			if slices.ContainsFunc(s.Equilibria(), func(e Equilibrium) bool { return !e.Stable && joint < e.Tilt && e.Tilt < joint+1e-6 }) {
				x -= step
			} else {
				x += step
			}
		}
		for k := range 41 {
			s.Body.Centre.X = x + float64(k-20)*0x1p-57
			all := s.Equilibria()
			for i, e := range all {
				if e.Stable != (i%2 == 1) || len(all)%2 == 0 || i > 0 && e.Tilt-all[i-1].Tilt < AtHilltop {
					t.Fatalf("a hilltop at the joint %v: %+v", joint, all)
				}
			}
		}
	}
}

// TestSeatedIsRigidAtTheEnds: with soles flat at every tilt and with feet off at every tilt it is the rigid rig with
// what the floor does not carry as a point at the knee, margins and work too.
func TestSeatedIsRigidAtTheEnds(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 23))
	for i := range 200 {
		s := atEase(t, rng, 1+i%2, false)
		l := &s.Legs[0]
		hangs, want := l.Mass(), body.FeetOff
		if i%4 < 2 {
			l.Length, hangs, want = 3, l.Shank*(1-l.Centre), body.SoleFlat
		} else {
			l.Length, l.Ankle, l.Toe, l.Ahead, l.Below = 0.02, 0.01, 0.02, 0.01, 0.01
			s.Floor.Slope = 0.1 * (rng.Float64() - 0.5)
		}
		rigid := s.Rig
		rigid.Body = body.Join(s.Body, body.Body{Mass: hangs, Centre: l.Knee})
		a, b := s.Balance(), rigid.Balance()
		if a.Outcome != b.Outcome || b.Outcome == Rocks && a.Feet[0].Stage != want {
			t.Fatalf("%d: %v, %v; rigid %v", i, a.Outcome, a.Feet, b.Outcome)
		}
		whole := s.Body.Mass + l.Mass()
		for name, pair := range map[string][2]float64{
			"rest": {a.Rest.Tilt, b.Rest.Tilt}, "height": {a.Rest.Height, b.Rest.Height},
			"steadiness": {a.Steadiness, b.Steadiness}, "period": {a.Period, b.Period},
			"tip back": {a.Back.Tip, b.Back.Tip}, "angle back": {a.Back.Angle, b.Back.Angle}, "over back": {a.Back.Over, b.Back.Over},
			"tip forward": {a.Forward.Tip, b.Forward.Tip}, "angle forward": {a.Forward.Angle, b.Forward.Angle},
			"work back": {a.Back.Work, b.Back.Work}, "work forward": {a.Forward.Work, b.Forward.Work},
			"lift back": {a.Back.Lift * whole, b.Back.Lift * rigid.Body.Mass},
		} {
			if math.Abs(pair[0]-pair[1]) > 1e-12*max(1, math.Abs(pair[1])) || math.IsNaN(pair[0]) != math.IsNaN(pair[1]) {
				t.Errorf("%d: %s %v, of the rigid rig %v", i, name, pair[0], pair[1])
			}
		}
	}
}

// TestSeatedWork: the work to the hilltop is the integral of the moment on the way, taken by quadrature between the
// joints and the tilts at which the knees pass a height at which the feet change, and the lift is that over the weight.
func TestSeatedWork(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 24))
	for i := range 60 {
		s := atEase(t, rng, 1+i%2, i%2 == 0)
		b := s.Balance()
		if b.Outcome != Rocks {
			continue
		}
		for _, m := range []Margin{b.Back, b.Forward} {
			var sum float64
			from, to := min(b.Rest.Tilt, m.Tip), max(b.Rest.Tilt, m.Tip)
			cuts := s.corners(from, to)
			for k := 1; k < len(cuts); k++ {
				sum += quad.Fixed(func(tilt float64) float64 { return s.byHand(tilt) }, cuts[k-1], cuts[k], 24, nil, 0)
			}
			want := math.Copysign(1, m.Tip-b.Rest.Tilt) * sum * Gravity
			if math.Abs(m.Work-want) > 1e-9 || !sameTo(m.Lift, m.Work/(s.Body.Mass+s.Legs[0].Mass())/Gravity, 1e-13) {
				t.Errorf("%d: work %v J to %v, by quadrature %v; lift %v (%v)", i, m.Work, m.Tip, want, m.Lift, b.Feet)
			}
		}
	}
}

// corners returns two tilts and those between at which the moment has a corner or a step, by bisection of a fine scan.
func (s *Seated) corners(from, to float64) []float64 {
	kind := func(tilt float64) (k [3]int) {
		i, _ := s.Profile.Find(tilt)
		k[0] = i
		for i := range s.Legs {
			k[1+i] = int(s.Legs[i].StageAt(s.Profile.Height(s.Legs[i].Knee, tilt)))
		}
		return k
	}
	list := []float64{from}
	const parts = 400
	for k := range parts {
		a, b := from+(to-from)*float64(k)/parts, from+(to-from)*float64(k+1)/parts
		for kind(a) != kind(b) {
			low, high := a, b
			for range 50 {
				if middle := (low + high) / 2; kind(middle) == kind(a) {
					low = middle
				} else {
					high = middle
				}
			}
			list = append(list, min(high, to))
			a = high
		}
	}
	return slices.Compact(append(list, to))
}

// TestSeatedRighting: the arm of the whole passes through zero at every rest and hilltop, or jumps up over it, and it
// is the arm of the rig with the feet's share held wherever that is what the floor carries.
func TestSeatedRighting(t *testing.T) {
	rng := rand.New(rand.NewPCG(19, 7))
	for range 100 {
		s := atEase(t, rng, 1, false)
		for _, e := range s.Equilibria() {
			before, _ := s.Righting(e.Tilt - 1e-7)
			after, _ := s.Righting(e.Tilt + 1e-7)
			if e.Stable && !(before < 0 && after > 0) || !e.Stable && !(before > 0 && after < 0) {
				t.Errorf("at %v rad (rest %v) the arm goes from %v to %v", e.Tilt, e.Stable, before, after)
			}
		}
		b := s.Balance()
		if b.Outcome != Rocks || b.Feet[0].Stage == body.HeelLifting {
			continue
		}
		arm, _ := s.Righting(b.Rest.Tilt)
		held, _ := b.Held.Righting(b.Rest.Tilt)
		if math.Abs(arm) > 1e-9 || math.Abs(held) > 1e-9 {
			t.Errorf("at the rest the arms are %v and %v", arm, held)
		}
	}
}
