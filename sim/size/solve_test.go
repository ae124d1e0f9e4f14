package size

import (
	"flag"
	"math"
	"math/rand/v2"
	"testing"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// everything asks for all the grids and questions below, which take a minute or two.
var everything = flag.Bool("everything", false, "ask every grid and every question")

// wishFor returns a target at random for a chair: times and leans from what can surely be had
// to what surely cannot.
func wishFor(rng *rand.Rand, d *piece.Design) {
	between := func(low, high float64) float64 { return low + (high-low)*rng.Float64() }
	d.Target.OneRock = between(1.5, 2.9)
	d.Target.SeatFalls = piece.Wish{Asked: true, Value: between(-2*degree, 12*degree)}
	switch rng.IntN(4) {
	case 0:
		d.Target.BackMargin = between(15*degree, 32*degree)
	case 1:
		d.Target.Longest = between(0.7, 1.1)
		d.Target.BackMargin = between(15*degree, 40*degree)
	case 2:
		d.Target.StockWidth = between(0.12, 0.2)
	}
}

// TestOneArcTargets asks random questions of one arc, 500 of them with -everything. Each is met, or no point of a grid
// of 50 radii, places of the low point and tails, over the whole range of each, is nearer.
func TestOneArcTargets(t *testing.T) {
	questions, most := 150, 2 // of grids, each of which asks 125,000 chairs
	if *everything {
		questions, most = 500, 500
	} else if testing.Short() {
		questions, most = 50, 0
	}
	oneArcTargets(t, questions, most, 3, func(d piece.Design) piece.Limits { return d.Limits })
}

// TestOneArcTargetsKeepEveryLimit asks the same where every usual limit must be kept: most cannot be had then, of which
// so many are set against a grid as there is time for.
func TestOneArcTargetsKeepEveryLimit(t *testing.T) {
	questions, most := 45, 1
	if *everything {
		questions, most = 150, 10
	} else if testing.Short() {
		questions, most = 20, 0
	}
	oneArcTargets(t, questions, most, 6, piece.Design.UsualLimits)
}

// oneArcTargets asks so many questions, of which one in so many can be had, and sets the first that cannot against a grid.
func oneArcTargets(t *testing.T, questions, most, oneIn int, limits func(d piece.Design) piece.Limits) {
	rng := rand.New(rand.NewPCG(7, 8))
	met, unmet := 0, 0
	for range questions {
		d := plainChair(rng)
		wishFor(rng, &d)
		d.Target.Arcs = 1
		d.Limits = limits(d)
		q, err := ask(d)
		if err != nil {
			t.Fatal(err)
		}
		s, ok := q.oneArc()
		if !ok {
			s = q.compound(s, 1, 0)
		}
		if all := q.misses(s); metAll(all) {
			met++
			fresh, err := check.Check(s.with(d))
			if err != nil {
				t.Fatal(err)
			}
			l := fresh.Loads[1]
			// by half a step of what a maker reads
			if math.Abs(l.Balance.Period-d.Target.OneRock) > timeStep/2 ||
				math.Abs(l.SeatFall-d.Target.SeatFalls.Value) > tiltStep/2 ||
				fresh.Tape.TipToTip > d.Target.Longest+1e-8 && d.Target.Longest > 0 {
				t.Errorf("said to be met: %v s, %v rad, %v m for %+v", l.Balance.Period, l.SeatFall, fresh.Tape.TipToTip, d.Target)
			}
			margin, _ := quantity.Reads(d.Target.BackMargin, quantity.Angle, d.Units)
			for _, limit := range fresh.Limits { // 1e-6 rad or m is a hundredth of what a level or tape shows
				if limit.Name == "back_margin" && limit.Got < margin-1e-6 ||
					limit.Kind != 0 && !limit.Holds && !limit.AtMost && limit.Got < limit.Edge-1e-6 {
					t.Errorf("said to be met: %+v for %+v", limit, d.Target)
				}
			}
			continue
		}
		unmet++
		if unmet > most {
			continue
		}
		ours := q.score(s)
		if better, found := onGrid(&q, ours); found {
			t.Errorf("a grid has %+v, we %v (%+v): %+v", better, ours, s, d.Target)
		}
	}
	t.Logf("%d met, %d not to be had", met, unmet)
	if met < questions/oneIn || unmet < questions/40 {
		t.Errorf("the questions are too easy or too hard: %d met, %d not", met, unmet)
	}
}

func metAll(list []Miss) bool {
	for _, m := range list {
		if !m.Met() {
			return false
		}
	}
	return true
}

// onGrid returns a shape with a better score on a grid of 50 by 50 by 50, with the nose as drawn.
// What its board measures is asked only where all else is better already.
func onGrid(q *question, ours float64) (better shape, found bool) {
	const n = 50
	rough := *q
	rough.target.StockWidth, rough.target.StockLength = 0, 0
	shapes := make([]*shape, n)
	each(n, func(i int) {
		for j := range n {
			for k := range n {
				s := q.start
				s.radii = []float64{0.7 + 1.3*float64(i)/(n-1)}
				s.low = -0.15 + 0.3*float64(j)/(n-1)
				s.tail = 0.3 + 0.6*float64(k)/(n-1)
				if rough.score(s) < ours && q.score(s) < ours {
					shapes[i] = &s
				}
			}
		}
	})
	for _, s := range shapes {
		if s != nil {
			return *s, true
		}
	}
	return shape{}, false
}

// TestCompoundBeatsChance holds that on random questions for two and three arcs, 50 with
// -everything, no one of 10,000 random shapes is better than the one that is found.
func TestCompoundBeatsChance(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 10))
	questions := 8
	if *everything {
		questions = 50
	} else if testing.Short() {
		questions = 2
	}
	for n := range questions {
		d := plainChair(rng)
		wishFor(rng, &d)
		d.Target.Empty = piece.Wish{Asked: true, Value: (rng.Float64()*8 - 2) * degree}
		arcs := 2 + n%2
		q, err := ask(d)
		if err != nil {
			t.Fatal(err)
		}
		one, met := q.oneArc()
		if !met {
			one = q.compound(one, 1, 0)
		}
		s := q.compound(one, arcs, 0)
		ours := q.score(s)
		shapes := make([]shape, 10000)
		for i := range shapes {
			shapes[i] = randomShape(&q, arcs, rng)
		}
		scores := make([]float64, len(shapes))
		each(len(shapes), func(i int) { scores[i] = q.score(shapes[i]) })
		for i, sc := range scores {
			if sc < ours {
				t.Errorf("question %d: chance finds %v (%+v), we %v (%+v)", n, sc, shapes[i], ours, s)
				break
			}
		}
		if n > 2 {
			continue
		}
		if again := q.score(q.compound(one, arcs, 0)); again != ours {
			t.Errorf("question %d: asked again %v, then %v", n, ours, again)
		}
	}
}

// randomShape is one anywhere a maker might look.
func randomShape(q *question, arcs int, rng *rand.Rand) shape {
	between := func(low, high float64) float64 { return low + (high-low)*rng.Float64() }
	s := shape{nose: between(0.3, 0.55), tail: between(0.35, 0.85), low: between(-0.1, 0.1)}
	for i := range arcs {
		s.radii = append(s.radii, between(0.7, 2))
		if i > 0 {
			s.joints = append(s.joints, between(-s.nose, s.tail))
		}
	}
	if len(s.joints) == 2 && s.joints[0] > s.joints[1] {
		s.joints[0], s.joints[1] = s.joints[1], s.joints[0]
	}
	return s
}

func BenchmarkThreeArcs(b *testing.B) {
	d := readingChair()
	d.Target = piece.Target{OneRock: 2.2, SeatFalls: piece.Wish{Asked: true, Value: 6 * degree},
		Empty: piece.Wish{Asked: true, Value: 2 * degree}, Arcs: 3}
	for b.Loop() {
		if _, err := Solve(d, 0); err != nil {
			b.Fatal(err)
		}
	}
}
