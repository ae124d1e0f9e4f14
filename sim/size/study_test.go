package size

import (
	"context"
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"runtime"
	"slices"
	"testing"

	"rockerwright/sim/check"
)

// TestLinearShares holds the shares against a case that is linear and exact, y = Σ aᵢxᵢ with
// unequal spreads: a²σ²/Σ a²σ², nothing left over.
func TestLinearShares(t *testing.T) {
	a, sigma := []float64{3, -1, 0.5, 0}, []float64{1, 2, 0.2, 5}
	m := &making{varied: make([]Varied, len(a)), now: Readings{}, scale: Readings{1, 1, 1, 1, 1, 1, 1}}
	tally := m.newTally()
	points := hypercube(Block, len(a), 5, 0)
	for c := range Block {
		y := 0.0
		for k := range a {
			y += a[k] * sigma[k] * points.At(c, k)
		}
		tally.add(points.RawRowView(c), Readings{Time: y}, []bool{})
	}
	shares, left := tally.shares(Time)
	total := 9.0 + 4 + 0.01
	for k, want := range []float64{9 / total, 4 / total, 0.01 / total, 0} {
		// the sampled variables are correlated by 1/√4096 at most
		if math.Abs(shares[k]-want) > 0.03 {
			t.Errorf("share of x%d: %v, want %v", k, shares[k], want)
		}
	}
	if left > 1e-12 {
		t.Errorf("left over %v of a linear case", left)
	}
}

// TestStudyIsTheSame holds that a study does not hang on how many work at it, and does on the
// seed.
func TestStudyIsTheSame(t *testing.T) {
	d := tight()
	study := func(workers int, seed uint64) Study {
		defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(workers))
		s, err := Chairs(context.Background(), d, 3*Block-100, StudyOptions{Seed: seed})
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
	one := study(1, 1)
	if two, five := study(2, 1), study(5, 1); same(one, two) != "" || same(one, five) != "" {
		t.Errorf("one worker and more find other things: %s", same(one, two)+same(one, five))
	}
	if same(one, study(2, 2)) == "" {
		t.Error("two seeds find the same")
	}
	if one.Chairs != 3*Block-100 || one.Stopped() || one.Fails == 0 || one.Fails == one.Chairs {
		t.Errorf("%d chairs, %d fail", one.Chairs, one.Fails)
	}
}

// same returns what differs in two studies, to the last digit.
func same(a, b Study) string {
	x, y := fmt.Sprintf("%v", a.Spreads)+fmt.Sprint(a.Chairs, a.Fails, a.Unusable),
		fmt.Sprintf("%v", b.Spreads)+fmt.Sprint(b.Chairs, b.Fails, b.Unusable)
	for i := range a.Limits {
		x, y = x+fmt.Sprint(" ", a.Limits[i].Fails), y+fmt.Sprint(" ", b.Limits[i].Fails)
	}
	if x == y {
		return ""
	}
	return x + "\n" + y
}

// TestStudyByHand holds the spread of a study against chairs made one by one, each measure by
// a generator of its own, and the percentiles sorted.
func TestStudyByHand(t *testing.T) {
	d := readingChair()
	s, err := Chairs(context.Background(), d, 4*Block, StudyOptions{})
	if err != nil {
		t.Fatal(err)
	}
	rng := rand.New(rand.NewPCG(21, 22))
	var times []float64
	for range 4000 {
		other, ahead := d.Clone(), 0.0
		for _, v := range s.Varied {
			if v.Key == People {
				ahead = v.Tolerance / 1.96 * rng.NormFloat64()
				continue
			}
			_, field, err := other.Measure(v.Key)
			if err != nil {
				t.Fatal(err)
			}
			*field += v.Tolerance / 1.96 * rng.NormFloat64()
		}
		sitters, err := check.SittersOf(other)
		if err != nil {
			t.Fatal(err)
		}
		r, err := sitters.Ahead(ahead).Balance(other)
		if err != nil {
			t.Fatal(err)
		}
		times = append(times, r.Loads[1].Balance.Period)
	}
	slices.Sort(times)
	spread := s.Spreads[Time]
	deviation := (times[3800] - times[200]) / (2 * 1.645)
	for _, tt := range []struct {
		got  float64
		at   int
		name string
	}{{spread.Low, 200, "5 %"}, {spread.Middle, 2000, "50 %"}, {spread.High, 3800, "95 %"}} {
		// of 4,000 values the 5 % one is known to √(0.05·0.95/4000)/0.103 = 0.033 deviations; four of them
		if math.Abs(tt.got-times[tt.at]) > 0.14*deviation {
			t.Errorf("%s: %v, by hand %v (deviation %v)", tt.name, tt.got, times[tt.at], deviation)
		}
	}
	for _, spread := range s.Spreads {
		sum := spread.LeftOver
		for _, share := range spread.Shares {
			sum += share
		}
		if spread.LeftOver > 0.05 || math.Abs(sum-1) > 0.03 {
			t.Errorf("%v: left over %v, all %v", spread.Quantity, spread.LeftOver, sum)
		}
	}
}

// TestStudyStops holds that what was counted when the context ends is the result.
func TestStudyStops(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	s, err := Chairs(ctx, tight(), 1_000_000, StudyOptions{Progress: func(done int) {
		if done >= 2*Block {
			stop()
		}
	}})
	if err != nil || !s.Stopped() || s.Chairs != 2*Block {
		t.Errorf("%d of %d chairs, %v", s.Chairs, s.Asked, err)
	}
	whole, err := Chairs(context.Background(), tight(), 2*Block, StudyOptions{})
	if err != nil || whole.Fails != s.Fails || !reflect.DeepEqual(whole.Spreads, s.Spreads) {
		t.Errorf("stopped after %d chairs: %d fail; %d made so: %d", s.Chairs, s.Fails, whole.Chairs, whole.Fails)
	}
}

// TestHistogram holds percentiles against the sorted values.
func TestHistogram(t *testing.T) {
	rng := rand.New(rand.NewPCG(31, 32))
	h := newHistogram(10, 2)
	var all []float64
	for range 20000 {
		x := 10 + 2*rng.NormFloat64()
		h.add(x)
		all = append(all, x)
	}
	h.add(math.NaN())
	slices.Sort(all)
	for _, share := range []float64{0.05, 0.5, 0.95} {
		if got, want := h.quantile(share), all[int(share*20000)]; math.Abs(got-want) > 0.02 { // a cell
			t.Errorf("%v: %v, want %v", share, got, want)
		}
	}
	empty := newHistogram(0, 1)
	if !math.IsNaN(empty.quantile(0.5)) {
		t.Error("of nothing there is no middle")
	}
}

func BenchmarkChairs(b *testing.B) {
	d := readingChair()
	for _, n := range []int{5 * Block, 10 * Block} {
		for _, workers := range []int{1, 2} {
			b.Run(fmt.Sprintf("%d chairs, %d workers", n, workers), func(b *testing.B) {
				defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(workers))
				for b.Loop() {
					if _, err := Chairs(context.Background(), d, n, StudyOptions{}); err != nil {
						b.Fatal(err)
					}
				}
			})
		}
	}
}
