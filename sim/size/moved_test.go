package size

import (
	"math"
	"testing"
)

// TestMoved: what a change does is what was after it less what was before, of the push as a part.
func TestMoved(t *testing.T) {
	r := Row{Before: Readings{Time: 2, Effort: 20, BackLift: 0.1}, After: Readings{Time: 2.5, Effort: 15, BackLift: 0.1}}
	for q, want := range map[Quantity]float64{Time: 0.5, Effort: -0.25, BackLift: 0} {
		if got := r.Moved(q); got != want {
			t.Errorf("quantity %d is moved by %v, want %v", q, got, want)
		}
	}
	r.After[Time] = math.NaN()
	if got := r.Moved(Time); !math.IsNaN(got) {
		t.Errorf("a time that there is not is moved by %v", got)
	}
}

// TestPart: of 4,096 chairs 1,024 are a quarter.
func TestPart(t *testing.T) {
	if got := (Study{Asked: 8192, Chairs: 4096}).Part(1024); got != 0.25 {
		t.Errorf("%v, want a quarter of those that were made", got)
	}
}

// TestMost: of three shares the largest, and of none that is a number nothing.
func TestMost(t *testing.T) {
	s := Study{Varied: []Varied{{Key: "a"}, {Key: "b"}, {Key: "c"}}}
	if most, share := s.Most(Spread{Shares: []float64{0.2, 0.5, 0.3}}); most.Key != "b" || share != 0.5 {
		t.Errorf("it hangs most on %q with %v, want b with a half", most.Key, share)
	}
	if most, share := s.Most(Spread{Shares: []float64{math.NaN(), 0, math.NaN()}}); most.Key != "" || share != 0 {
		t.Errorf("it hangs on %q with %v, want nothing", most.Key, share)
	}
}

// TestMore: each way is set against the radius of the old piece, each rule of the trade against what the same time wants.
func TestMore(t *testing.T) {
	old, wanted := readingChair(), readingChair()
	wanted.Seat.Front += 2 * inch
	wanted.Seat.Rear += 2 * inch
	l, err := Like(old, wanted)
	if err != nil {
		t.Fatal(err)
	}
	if same := l.Kept[SameRadius]; math.Abs(same.More) > 1e-9 {
		t.Errorf("the same radius is %v m more", same.More)
	}
	for _, k := range l.Kept {
		if k.Found && math.Abs(42*inch+k.More-k.Exact) > 1e-9 {
			t.Errorf("%v: %v m more than 42 in are not %v m", k.Keep, k.More, k.Exact)
		}
	}
	want := l.Kept[SameTime].Exact
	for _, r := range l.Rules {
		if r.Name == Commonest && math.Abs(r.More-(42*inch-want)) > 1e-9 {
			t.Errorf("42 in are %v m more than the %v m that the same time wants", r.More, want)
		}
	}
	l.Kept[SameTime].Found = false
	for _, r := range rules(l) {
		if !math.IsNaN(r.More) {
			t.Errorf("no radius gives the same time, and %v m are %v m more", r.Radius, r.More)
		}
	}
}
