package size

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// balanced returns a design as it stands.
func balanced(t *testing.T, d piece.Design) check.Balanced {
	t.Helper()
	r, err := check.Balance(d)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// TestFeelOnASlope: on a floor that slopes the radius that is felt, and the one that its own time wants, is the one drawn.
func TestFeelOnASlope(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 1))
	for range 50 {
		d := plainChair(rng)
		d.Floor.Slope = 0.2 * (rng.Float64() - 0.5)
		f, ok := FeelOf(balanced(t, d))
		if !ok {
			continue
		}
		for _, got := range []float64{f.Radius, f.RadiusForPeriod(f.Period)} {
			if math.Abs(got/d.Rocker.Radius-1) > 1e-12 {
				t.Errorf("on a slope of %v: radius %v, drawn %v", d.Floor.Slope, got, d.Rocker.Radius)
			}
		}
	}
}

// TestSolvedBackwards: from the time and the lean that a chair of one arc has, oneArc finds back its radius and low point.
func TestSolvedBackwards(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 2))
	for range 20 {
		d := plainChair(rng)
		want := shape{radii: []float64{d.Rocker.Radius * (0.95 + 0.2*rng.Float64())}, nose: d.Rocker.Nose, tail: d.Rocker.Tail,
			low: 0.04 * (rng.Float64() - 0.5)}
		d.Limits = piece.Limits{}
		l := balanced(t, want.with(d)).Loads[1]
		d.Target = piece.Target{OneRock: l.Balance.Period, SeatFalls: piece.Wish{Asked: true, Value: l.SeatFall}}
		q, err := ask(d)
		if err != nil {
			t.Fatal(err)
		}
		got, met := q.oneArc()
		if !met || math.Abs(got.radii[0]-want.radii[0]) > 1e-7 || math.Abs(got.low-want.low) > 1e-7 {
			t.Errorf("%+v, met %v; want %+v", got, met, want)
		}
	}
}

// TestLengthenedJustHolds: a tail that is lengthened for a limit is as long as that asks and no longer.
func TestLengthenedJustHolds(t *testing.T) {
	d := readingChair()
	drawn := balanced(t, d)
	d.Target.BackMargin = drawn.Leaning().Balance.Back.Angle + 2*degree
	q, err := ask(d)
	if err != nil {
		t.Fatal(err)
	}
	worst := func(tail float64) (steps float64) {
		s := q.start
		s.tail, steps = tail, math.Inf(-1)
		for _, m := range q.misses(s) {
			if m.Aim == KeepsLimit {
				steps = max(steps, m.Steps)
			}
		}
		return steps
	}
	tail := q.lengthened(q.start).tail
	if !(tail > q.start.tail && worst(tail) <= 0 && worst(tail-1e-6) > 0) {
		t.Errorf("%v m of %v: missed by %v steps, shorter by %v", tail, q.start.tail, worst(tail), worst(tail-1e-6))
	}
}

// TestScoreIsOfSquares: misses twice as large score four times as much, and two lists what both score.
func TestScoreIsOfSquares(t *testing.T) {
	a, b := []Miss{{Aim: OneRock, Steps: -3}}, []Miss{{Aim: StockWidth, Steps: 2}, {Aim: StockWidth, Steps: -5}}
	twice := func(list []Miss) (more []Miss) {
		for _, m := range list {
			m.Steps *= 2
			more = append(more, m)
		}
		return more
	}
	for _, list := range [][]Miss{a, b} {
		if one, two := score(list), score(twice(list)); !(one > 0) || two != 4*one {
			t.Errorf("%+v scores %v, twice as far off %v", list, one, two)
		}
	}
	if both := score(append(twice(a), twice(b)...)); both != score(twice(a))+score(twice(b)) || !(score(b) > 1000*score(a)) {
		t.Errorf("%v and %v score %v", score(a), score(b), both)
	}
}

// TestLimitMissed: a limit that fails is missed by more than no step and one that holds by less, each step of it counts
// one, at least and at most; the slack has the same sign.
func TestLimitMissed(t *testing.T) {
	for kind, step := range map[quantity.Kind]float64{quantity.Angle: tiltStep, quantity.Length: tapeStep} {
		for _, l := range []check.Limit{
			{Kind: kind, Want: 0.3, Edge: 0.3, Got: 0.3 - 4*step},
			{Kind: kind, Want: 0.3, Edge: 0.3, Got: 0.3 + 4*step, AtMost: true, Name: "longest"},
			{Kind: kind, Want: 0.3, Edge: 0.3, Got: 0.3 + 4*step, Holds: true},
			{Kind: kind, Want: 0.3, Edge: 0.3, Got: 0.3 - 4*step, AtMost: true, Holds: true},
		} {
			want := 4.0
			if l.Holds {
				want = -4
			}
			if got := missOf(l).Steps; math.Abs(got-want) > 1e-9 {
				t.Errorf("%+v: missed by %v steps, want %v", l, got, want)
			}
			if off := slackOf(check.Balanced{Limits: []check.Limit{l}})[0]; math.Abs(off+want*step) > 1e-12 {
				t.Errorf("%+v: slack %v, want %v", l, off, -want*step)
			}
		}
	}
}

// TestOffJointsByHand: a joint s behind the low point on an arc of radius R is touched s/R from the attitude as drawn,
// which is as much less of the rest as the floor slopes.
func TestOffJointsByHand(t *testing.T) {
	for _, slope := range []float64{-0.04, 0, 0.04} {
		d := readingChair()
		d.Floor.Slope = slope
		d.Rocker = piece.Rocker{Nose: 17 * inch, Arcs: []piece.Arc{{Radius: 42 * inch, Length: 23 * inch},
			{Radius: 60 * inch, Length: 18 * inch}}}
		r := balanced(t, d)
		want := math.Abs(6.0/42 + slope - r.Loads[1].Balance.Rest.Tilt)
		if got := offJoints(r); math.Abs(got-want) > 1e-12 {
			t.Errorf("on %v: %v rad from the joint, want %v", slope, got, want)
		}
	}
}

// TestBlankOfAMirroredRocker: a rocker drawn the other way round is sawn from the same board.
func TestBlankOfAMirroredRocker(t *testing.T) {
	d := readingChair()
	d.Rocker.Depth = 2 * inch
	length, width := blank(balanced(t, d))
	d.Rocker.Nose, d.Rocker.Tail = d.Rocker.Tail, d.Rocker.Nose
	if l, w := blank(balanced(t, d)); math.Abs(l-length) > 1e-9 || math.Abs(w-width) > 1e-9 || !(width < 8*inch) {
		t.Errorf("%v by %v, mirrored %v by %v", length, width, l, w)
	}
}

// TestShiftedAlike: all that stands on the rockers goes forward and up by the same: the top of the back, who sits in it,
// and who lies in a cradle, which rocks to the sides.
func TestShiftedAlike(t *testing.T) {
	by := r2.Vec{X: 0.03, Y: 0.02}
	chair := readingChair()
	was, _ := chair.TopOfBack()
	if now, known := shifted(chair, by.X, by.Y).TopOfBack(); !known || r2.Norm(r2.Sub(now, r2.Add(was, by))) > 1e-12 {
		t.Errorf("top of the back at %v, then %v", was, now)
	}
	for _, tt := range []struct {
		design piece.Design
		by     r2.Vec
	}{{chair, r2.Vec{X: by.X}}, {cradle(), r2.Vec{Y: by.Y}}, {plainBody(), by}} {
		was, now := balanced(t, tt.design), balanced(t, shifted(tt.design, tt.by.X, tt.by.Y))
		for i := 1; i < min(3, len(was.Loads)); i++ { // who stands on the rockers does not come along
			a, b := was.Loads[i].Person.Centre, now.Loads[i].Person.Centre
			if r2.Norm(r2.Sub(r2.Add(a, tt.by), b)) > 1e-9 {
				t.Errorf("%s: at %v, then %v, moved by %v", was.Loads[i].Name, a, b, tt.by)
			}
		}
	}
}

// TestCrampedBySteps: a radius, an end or an arc is as many steps out of its range as it is more or less than that.
func TestCrampedBySteps(t *testing.T) {
	s := shape{radii: []float64{1.05}, nose: 0.43, tail: 0.6}
	room := roomOf(s)
	change := func(change func(s *shape)) shape {
		t := s
		change(&t)
		return t
	}
	for want, s := range map[float64]shape{
		2: change(func(s *shape) { s.radii = []float64{room.radius[0] - 2*tapeStep} }),
		3: change(func(s *shape) { s.radii = []float64{room.radius[1] + 3*tapeStep} }),
		4: change(func(s *shape) { s.nose = room.nose[1] + 4*tapeStep }),
		5: change(func(s *shape) { s.tail = room.tail[1] + 5*tapeStep }),
		6: change(func(s *shape) { s.radii, s.joints = []float64{1, 1}, []float64{s.tail - leastArc + 6*tapeStep} }),
	} {
		if got := room.cramped(s); math.Abs(got-want) > 1e-9 {
			t.Errorf("%+v: %v steps out of its range, want %v", s, got, want)
		}
	}
	if got := room.cramped(s); !(got < 0) {
		t.Errorf("in its range by %v steps", got)
	}
}
