package size

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// TestEvenTime holds that 5 arcs are more even than 3, 3 than 1, and that 5 keep the time that is
// aimed for within a hundredth of it from every release, whatever the chair.
func TestEvenTime(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	for range 20 {
		d := plainChair(rng)
		d.Target.OneRock = 2 + 0.3*rng.Float64()
		q, err := ask(d)
		if err != nil {
			t.Fatal(err)
		}
		var spreads []float64
		for _, arcs := range []int{1, 3, 5} {
			even, ok := q.evenTime(arcs)
			if !ok {
				t.Fatalf("no even-time edge of %d arcs for %+v", arcs, d)
			}
			r, err := check.Balance(even)
			if err != nil {
				t.Fatal(err)
			}
			nose, tail := r.Edge.Reach()
			if math.Abs(nose-d.Rocker.Nose) > 1e-12 || math.Abs(tail-d.Rocker.Tail) > 1e-12 ||
				max(1, len(even.Rocker.Arcs)) > arcs || arcs > 1 && len(even.Rocker.Arcs) < 3 {
				t.Errorf("%d arcs: %+v of %+v", arcs, even.Rocker, d.Rocker)
			}
			e := evenness(r.Loads[1].Rig, r.Loads[1].Balance)
			spreads = append(spreads, (slices.Max(e)-slices.Min(e))/r.Loads[1].Balance.Period)
			for i, period := range e {
				if arcs == 5 && math.Abs(period-d.Target.OneRock) > 0.01*d.Target.OneRock {
					t.Errorf("5 arcs from %v rad: %v s, want %v", EvenReleases[i], period, d.Target.OneRock)
				}
			}
		}
		if spreads[1] > spreads[0] || spreads[2] > spreads[0] {
			t.Errorf("spread of 1, 3 and 5 arcs: %v", spreads)
		}
	}
}

// TestEvenStart holds that the start of the search follows the exact edge, as finely as one likes:
// with 201 arcs the time is the same from every release.
func TestEvenStart(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 14))
	for range 10 {
		d := plainChair(rng)
		r, err := check.Balance(d)
		if err != nil {
			t.Fatal(err)
		}
		rig := r.Loads[1].Rig
		const period = 2.1
		e, ok := startEven(rig, period, 0.5, 201)
		if !ok {
			t.Fatal("no edge")
		}
		s, ok := e.shape(rig.Body, 0.4, 0.6)
		if !ok {
			t.Fatal("no edge")
		}
		if rig.Profile, err = s.on(piece.Rocker{}).Profile(); err != nil {
			t.Fatal(err)
		}
		b := rig.Balance()
		for _, release := range EvenReleases {
			// the arcs follow the edge to 1e-5 of the radius; the origin is laid by the middle arc
			// alone, which leaves the rest off its middle by some 1e-3 of a radian
			if got := rig.Swing(b, release).Period; math.Abs(got-period) > 5e-3*period {
				t.Errorf("from %v rad: %v s, want %v", release, got, period)
			}
		}
	}
}

// TestFlatterTail holds that a brake changes nothing at the rests, and that the weight of each
// load must lift further before it goes back: the tip lies further away from it. (In degrees
// it is less, for the tip also lies lower.)
func TestFlatterTail(t *testing.T) {
	d := readingChair()
	d.Limits.BackMargin = 0
	q, err := ask(d)
	if err != nil {
		t.Fatal(err)
	}
	s, ok := q.flatterTail(q.start)
	if !ok {
		t.Fatal("no flatter tail")
	}
	was, _ := q.answer(q.start)
	now, _ := q.answer(s)
	for i := range was.Loads {
		a, b := was.Loads[i].Balance, now.Loads[i].Balance
		// the wood of the flatter tail moves the balance point by less than a millimetre
		if math.Abs(a.Rest.Tilt-b.Rest.Tilt) > 0.3*degree || !(b.Back.Lift > a.Back.Lift) {
			t.Errorf("%s: rest %v, then %v; lift %v, then %v", was.Loads[i].Name, a.Rest.Tilt, b.Rest.Tilt, a.Back.Lift, b.Back.Lift)
		}
	}
}

// TestEvenOffTheMiddle: of a body that hangs ahead of the low point or behind it the even-time edge of many arcs rests
// as far from there, and is as even.
func TestEvenOffTheMiddle(t *testing.T) {
	const period = 2.1
	for _, x := range []float64{-0.12, -0.06, 0.06, 0.12} {
		rig := sim.Rig{Body: body.Body{Mass: 80, Centre: r2.Vec{X: x, Y: 0.6}, Inertia: 80 * 0.3 * 0.3}}
		e, ok := startEven(rig, period, 0.6, 301)
		if !ok {
			t.Fatal("no edge")
		}
		for i, joint := range e.joints { // the arcs turn alike, together as far as both ends reach on the radius at rest
			if want := float64(2*i+1) * 0.6 / 301 / e.radii[0]; math.Abs(joint-want) > 1e-9 {
				t.Errorf("joint %d at %v rad, want %v", i, joint, want)
			}
		}
		s, _ := e.shape(rig.Body, 0.6, 0.6)
		profile, err := s.on(piece.Rocker{}).Profile()
		if err != nil {
			t.Fatal(err)
		}
		rig.Profile = profile
		b := rig.Balance()
		for _, release := range EvenReleases {
			// the middle arc alone, of two hundredths of a radian, lays the origin, which leaves the height off a little
			if got := rig.Swing(b, release).Period; math.Abs(got/period-1) > 3e-4 {
				t.Errorf("%v m ahead, from %v rad: %v s, want %v", x, release, got, period)
			}
		}
	}
}
