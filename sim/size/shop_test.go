package size

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestNormalLaw: 95 of 100 normal errors are within the tolerance, by the error function.
func TestNormalLaw(t *testing.T) {
	v := Varied{Tolerance: 0.003}
	if got := math.Erf(v.Tolerance / v.deviation() / math.Sqrt2); math.Abs(got-0.95) > 1e-12 {
		t.Errorf("a part of %v is within the tolerance, want 0.95", got)
	}
}

// TestRespondsExactly: the parabola of each limit goes through what it is as drawn and at both errors, and what chairs
// have to spare on the floor of the shop is what every measure adds to the chair as drawn.
func TestRespondsExactly(t *testing.T) {
	d := tight()
	d.Limits.BackLift = 0.05
	sitters, err := check.SittersOf(d)
	if err != nil {
		t.Fatal(err)
	}
	drawn, err := sitters.Balance(d)
	if err != nil {
		t.Fatal(err)
	}
	floor := newShopFloor(d, sitters, drawn)
	for k, v := range floor.varied {
		wide := 2 * v.Tolerance
		r := respond(d, sitters, v, floor.now, wide)
		for _, off := range []float64{wide, -wide} {
			other := d.Clone()
			*v.of(&other) += off
			made, err := sitters.Balance(other)
			if err != nil {
				t.Fatal(err)
			}
			for i, want := range slackOf(made) {
				if got := floor.now[i] + r.at(i, off); math.Abs(got-want) > 1e-9 {
					t.Errorf("%s off by %v: slack %v, want %v", v.Key, off, got, want)
				}
			}
		}
		if usual := floor.fails(k, v.Tolerance); usual != floor.fails(0, floor.varied[0].Tolerance) {
			t.Errorf("%s at the shop's usual: %v fail", v.Key, usual)
		}
	}
	for c, slack := range floor.slacks[:20] {
		for i := range slack {
			want := floor.now[i]
			for k, v := range floor.varied {
				want += floor.responses[k].at(i, v.Tolerance/(math.Sqrt2*math.Erfinv(0.95))*floor.errors.At(c, k))
			}
			if math.Abs(slack[i]-want) > 1e-9 {
				t.Errorf("chair %d has %v to spare, want %v", c, slack[i], want)
			}
		}
	}
}

// TestEffectInSteps: a change of one reading by one of its steps is an effect of one, and the largest of all counts.
func TestEffectInSteps(t *testing.T) {
	for q, step := range quantitySteps {
		r := Row{Before: noReadings, After: noReadings}
		r.Before[q], r.After[q] = 3, 3-2*step
		other := (q + 1) % quantities
		r.Before[other], r.After[other] = 1, 1+quantitySteps[other]
		if r.effect(); math.Abs(r.Effect-2) > 1e-9 {
			t.Errorf("quantity %d moved by two steps is an effect of %v", q, r.Effect)
		}
	}
}

// TestTalliesJoin: chairs counted in two tallies that are joined are those counted in one, and a twentieth of them lies
// below the low end of the spread and above its high one.
func TestTalliesJoin(t *testing.T) {
	m := &making{varied: make([]Varied, 1), now: noReadings}
	m.now[Time], m.scale[Time] = 2, 0.5
	m.nominal.Limits = make([]check.Limit, 2)
	rng := rand.New(rand.NewPCG(15, 4))
	one, parts := m.newTally(), [2]*tally{m.newTally(), m.newTally()}
	const chairs = 20000
	times := make([]float64, chairs)
	for c := range times {
		x := rng.NormFloat64()
		times[c] = 2.3 + 0.5*x
		readings := noReadings
		readings[Time] = times[c]
		if c%100 == 7 {
			readings[Time] = math.NaN()
			times[c] = math.Inf(1)
		}
		for _, t := range []*tally{one, parts[c%2]} {
			t.add([]float64{x}, readings, []bool{c%3 == 0, c%5 == 0})
		}
	}
	parts[0].join(parts[1])
	a, b := one.study(chairs), parts[0].study(chairs)
	if a.Unusable != chairs/100 || a.Limits[0].Fails != 6667 || b.Limits[1].Fails != 4000 || a.Fails != 9333 || same(a, b) != "" &&
		math.Abs(a.Spreads[0].LeftOver-b.Spreads[0].LeftOver) > 1e-9 {
		t.Errorf("in one %+v, joined %+v", a, b)
	}
	slices.Sort(times)
	there := float64(chairs - chairs/100)
	for share, got := range map[float64]float64{0.05: b.Spreads[0].Low, 0.5: b.Spreads[0].Middle, 0.95: b.Spreads[0].High} {
		if want := times[int(share*there)]; math.Abs(got-want) > 0.002 { // a cell is 0.005, straight inside
			t.Errorf("%v of all lie below %v, sorted below %v", share, got, want)
		}
	}
}

// TestStrayingWeighsAlike: an inch at either end or of the low point strays as far as a tenth of the radius, in its
// logarithm, twice as far costs four times as much, and all of it less than an aim that is just missed.
func TestStrayingWeighsAlike(t *testing.T) {
	d := readingChair()
	d.Target.OneRock = 2
	q, err := ask(d)
	if err != nil {
		t.Fatal(err)
	}
	costs := func(times float64, change func(s *shape, by float64)) float64 {
		s := q.start
		s.radii = slices.Clone(s.radii)
		change(&s, times)
		return q.score(s) - score(q.misses(s))
	}
	changes := []func(s *shape, by float64){
		func(s *shape, by float64) { s.nose += by * inch }, func(s *shape, by float64) { s.tail -= by * inch },
		func(s *shape, by float64) { s.low += by * inch }, func(s *shape, by float64) { s.radii[0] *= math.Exp(by / 10) },
	}
	unit := costs(1, changes[0])
	for i, change := range changes {
		if one, two := costs(1, change), costs(-2, change); math.Abs(one/unit-1) > 1e-6 || math.Abs(two/unit-4) > 1e-5 ||
			!(unit > 0 && unit < 0.01) {
			t.Errorf("change %d costs %v, twice %v; an inch of the nose %v", i, one, two, unit)
		}
	}
}

// TestSplitBetweenTheRests: one arc that is split is the same edge; the first joint lies halfway between where it rests
// empty and with somebody in it, the second halfway from the hindmost of these to the tail.
func TestSplitBetweenTheRests(t *testing.T) {
	d := readingChair()
	d.Target.OneRock = 2
	q, err := ask(d)
	if err != nil {
		t.Fatal(err)
	}
	empty, seated := q.drawn.Loads[0].Balance.Rest.Tilt*42*inch, q.drawn.Loads[1].Balance.Rest.Tilt*42*inch
	s := q.split(q.start, 3)
	first, second := (empty+seated)/2, (max(empty, seated, (empty+seated)/2)+q.start.tail)/2
	if math.Abs(s.joints[0]-first) > 1e-6 || math.Abs(s.joints[1]-second) > 1e-6 {
		t.Errorf("joints at %v, want %v and %v", s.joints, first, second)
	}
	now, ok := q.answer(s)
	if !ok || math.Abs(now.Loads[1].Balance.Period-q.drawn.Loads[1].Balance.Period) > 1e-9 {
		t.Errorf("split it rocks in %v s, whole in %v", now.Loads[1].Balance.Period, q.drawn.Loads[1].Balance.Period)
	}
}

// TestRulesByHand: the rules of π give circles whose half turn over their height is π, those in inches so many; each
// with the time of a piece that is drawn so.
func TestRulesByHand(t *testing.T) {
	d := readingChair()
	l, err := Like(d, d)
	if err != nil {
		t.Fatal(err)
	}
	inches := map[RuleName]string{Start36: "36 in", Start40: "40 in", Commonest: "42 in"}
	for _, r := range l.Rules {
		want := r.Height
		switch r.Name {
		case PiSeat, PiLeg, PiNavel:
			want *= math.Pi
		case Start36, Start40, Commonest:
			if want, err = quantity.Parse(inches[r.Name], quantity.Length, quantity.Inch); err != nil {
				t.Fatal(err)
			}
		}
		other := d.Clone()
		other.Rocker.Radius = r.Radius
		f, _ := FeelOf(balanced(t, other))
		if math.Abs(r.Radius-want) > 1e-12 || math.Abs(r.Period-f.Period) > 1e-9 || math.Abs(42*inch+r.More-want) > 1e-9 {
			t.Errorf("rule %d: radius %v, want %v; %v s, drawn so %v", r.Name, r.Radius, want, r.Period, f.Period)
		}
	}
	if len(l.Rules) != 7 {
		t.Errorf("%d rules", len(l.Rules))
	}
}

// TestProportionOfArcs: a chair of arcs and a flat is like itself in the same proportion, each length of it; as much
// longer on an old chair that was as much larger.
func TestProportionOfArcs(t *testing.T) {
	d := plainChair(rand.New(rand.NewPCG(15, 5)))
	d.Limits = piece.Limits{}
	d.Rocker = piece.Rocker{Nose: 0.5, Arcs: []piece.Arc{{Flat: 0.08}, {Radius: 1.05, Length: 0.62}, {Radius: 1.2, Length: 0.5}}}
	l := Likeness{OldPiece: balanced(t, d), Wanted: balanced(t, d)}
	l.Old, _ = FeelOf(l.OldPiece)
	l.New = l.Old
	for _, scale := range []float64{1, 1.25} {
		got := l.scaled(scale, SameProportion).Rocker
		if math.Abs(got.Nose-scale*0.5) > 1e-12 {
			t.Errorf("%v times: nose %v", scale, got.Nose)
		}
		for i, arc := range got.Arcs {
			was := d.Rocker.Arcs[i]
			if math.Abs(arc.Length-scale*was.Length)+math.Abs(arc.Flat-scale*was.Flat)+math.Abs(arc.Radius-scale*was.Radius) > 1e-12 {
				t.Errorf("%v times %+v is %+v", scale, was, arc)
			}
		}
	}
}
