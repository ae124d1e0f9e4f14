package size

import (
	"math"
	"math/rand/v2"
	"testing"

	"rockerwright/sim/piece"
)

// TestEvenTime holds that the even-time edge of many arcs gives the owner the time aimed for
// from every release, whatever the chair; and that 5 arcs are more even than 1.
func TestEvenTime(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	for range 20 {
		d := plainChair(rng)
		d.Target.OneRock = 2 + 0.3*rng.Float64()
		q, err := ask(d)
		if err != nil {
			t.Fatal(err)
		}
		spread := map[int]float64{}
		for _, arcs := range []int{1, 5, 301} {
			even, ok := q.evenTime(arcs)
			if !ok {
				t.Fatalf("no even-time edge of %d arcs for %+v", arcs, d)
			}
			r, err := piece.Balance(even)
			if err != nil {
				t.Fatal(err)
			}
			e := evenness(&r.Loads[1], evenReleases())
			spread[arcs] = e.Spread
			if arcs != 301 {
				continue
			}
			for i, period := range e.Periods {
				// 301 arcs follow the curve to some 1e-5 of the radius of each
				if math.Abs(period-d.Target.OneRock) > 1e-4*d.Target.OneRock {
					t.Errorf("from %v rad: %v s, want %v", e.Releases[i], period, d.Target.OneRock)
				}
			}
		}
		if !(spread[5] < spread[1]) {
			t.Errorf("spread %v", spread)
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
