package size

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
)

// owners are of many statures and weights; the heels of all of them lift somewhere, and there the rest stands nearly
// still.
var owners = [...]struct{ stature, mass float64 }{
	{60 * inch, 110 * pound}, {64 * inch, 230 * pound}, {68 * inch, 300 * pound}, {70 * inch, 180 * pound}, {76 * inch, 210 * pound},
}

// ownedBy is the reading chair of another owner, without limits.
func ownedBy(stature, mass float64) piece.Design {
	d := readingChair()
	d.Limits = piece.Limits{}
	d.Sitters[0].Mass, d.Sitters[0].Person.Sizes[person.Stature] = mass, stature
	return d
}

// A place is how far the low point is moved forward, and how the owner at ease then rests.
type place struct {
	low, fall float64
	stage     body.Stage
}

// moved returns a design with its low point so much further forward under the seat.
func moved(d piece.Design, low float64) piece.Design {
	d = d.Clone()
	d.Seat.Behind += low
	return d
}

// places returns how the owner at ease rests with the low point on a grid of 4 mm.
func places(t *testing.T, d piece.Design) (list []place) {
	t.Helper()
	for n := -35; n <= 35; n++ {
		low := 0.004 * float64(n)
		if l := balanced(t, moved(d, low)).Loads[1]; l.Balance.Outcome == sim.Rocks {
			list = append(list, place{low, l.SeatFall, l.Feet[0].Stage})
		}
	}
	return list
}

// stepOf returns those of the places at which the heels just lift.
func stepOf(list []place) (step []place) {
	for _, p := range list {
		if p.stage == body.HeelLifting {
			step = append(step, p)
		}
	}
	return step
}

// wishing returns a question of a design with a target.
func wishing(t *testing.T, d piece.Design, target piece.Target) question {
	t.Helper()
	d.Target = target
	q, err := ask(d)
	if err != nil {
		t.Fatal(err)
	}
	return q
}

func falls(by float64) piece.Target {
	return piece.Target{SeatFalls: piece.Wish{Asked: true, Value: by}}
}

// TestLeansOfOwners: of every owner, from as drawn and from the middle of the step, each fall that two neighbours of a
// grid of low points enclose is met with one arc, of the seat and of the back: whole degrees, and one on the step.
func TestLeansOfOwners(t *testing.T) {
	met, steps := 0, 0
	for _, o := range owners {
		drawn := ownedBy(o.stature, o.mass)
		grid := places(t, drawn)
		starts, wanted := []piece.Design{drawn}, []float64{}
		for fall := 4.0; fall <= 16; fall++ {
			wanted = append(wanted, fall*degree)
		}
		if step := stepOf(grid); len(step) > 3 {
			steps++
			middle := len(step) / 2
			starts = append(starts, moved(drawn, step[middle].low))
			wanted = append(wanted, (step[middle-1].fall+step[middle].fall)/2)
		}
		for _, fall := range wanted {
			if !slices.ContainsFunc(grid[1:], func(p place) bool { return (p.fall < fall) != (grid[0].fall < fall) }) {
				continue
			}
			met++
			for _, d := range starts {
				back := piece.Target{BackLeans: piece.Wish{Asked: true, Value: fall - d.Seat.Fall() + d.Back.Recline}}
				for _, target := range []piece.Target{falls(fall), back} {
					q := wishing(t, d, target)
					s, ok := q.oneArc()
					if got := balanced(t, s.with(d)).Loads[1].SeatFall; !ok || math.Abs(got-fall) > 2*sim.AtJoint { // to either side
						t.Errorf("%v from %v m: a fall of %v degrees is missed, %v: %v", o, d.Seat.Behind, fall/degree, ok, got/degree)
					}
				}
			}
		}
	}
	if met < 60 || steps < 4 {
		t.Errorf("only %d falls, and %d steps", met, steps)
	}
}

// TestProposedFromAStep: a proposal for a chair that is drawn on the step meets a fall off it as near as a maker reads, and
// one that is drawn so meets the fall on the step.
func TestProposedFromAStep(t *testing.T) {
	d := ownedBy(70*inch, 180*pound)
	step := stepOf(places(t, d))
	d = moved(d, step[len(step)/2].low)
	for _, fall := range []float64{12 * degree, step[len(step)/2].fall, 3 * degree} {
		d.Target = falls(fall)
		found, err := Solve(d, 0)
		if err != nil {
			t.Fatal(err)
		}
		take := found.Take()
		if got := take.Report.Loads[1].SeatFall; take.Shape != OneArc || !take.Met() || math.Abs(got-fall) > tiltStep/2 {
			t.Errorf("%v, met %v: the seat falls %v degrees, want %v", take.Shape, take.Met(), got/degree, fall/degree)
		}
		d = take.Design
	}
}

// TestScoreRunsDown: with the low point moved by tenths of a millimetre the score of a fall runs down to where the piece
// rests so and up from there, on the step too, and by no more than half a step of what a maker reads at a time, where the
// arm jumps by several. Over the step, where the rest gains little, it runs down as steeply as behind it.
func TestScoreRunsDown(t *testing.T) {
	d := ownedBy(70*inch, 180*pound)
	step := stepOf(places(t, d))
	first, last := step[0], step[len(step)-1]
	for _, fall := range []float64{2 * degree, step[len(step)/2].fall, 12 * degree} {
		q := wishing(t, d, falls(fall))
		missed := func(low float64) float64 { // in steps
			s := q.start
			s.low = low
			return math.Sqrt(max(0, q.score(s)-strays*(low/inch)*(low/inch)))
		}
		var list []float64
		for n := -1100; n <= 300; n++ {
			list = append(list, missed(0.0001*float64(n)))
		}
		least := slices.Index(list, slices.Min(list))
		for i := range list[1:] {
			if by := list[i+1] - list[i]; !(math.Abs(by) < 0.5) || i < least && !(by < 0) || i > least && !(by > 0) {
				t.Errorf("to %v degrees: missed by %v steps, a tenth of a millimetre on by %v", fall/degree, list[i], list[i+1])
			}
		}
		if got := balanced(t, moved(d, 0.0001*float64(least-1100))).Loads[1].SeatFall; math.Abs(got-fall) > tiltStep/2 {
			t.Errorf("to %v degrees: missed the least at %v", fall/degree, got/degree)
		}
		wide := last.low - first.low
		over, behind := missed(first.low)-missed(last.low), missed(last.low+0.004)-missed(last.low+0.004+wide)
		if fall > last.fall && !(over > 0.8*behind) {
			t.Errorf("over the step %v steps are gained, behind it %v", over, behind)
		}
	}
}

// TestSoughtWithoutFeet: where no feet stand on the floor a search goes by the rest alone.
func TestSoughtWithoutFeet(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 1))
	for range 20 {
		d := plainChair(rng)
		wishFor(rng, &d)
		d.Target.Empty = piece.Wish{Asked: true, Value: 2 * degree}
		q := wishing(t, d, d.Target)
		for _, m := range q.misses(q.start) {
			if m.sought() != m.Steps {
				t.Errorf("%+v: sought by %v steps", m, m.sought())
			}
		}
	}
}

// TestCompoundFromAStep: a search for two and three arcs that starts on the step comes to time, fall at ease and fall of
// the empty chair of rockers of so many arcs that are known, on which the owner rests off the step and on it.
func TestCompoundFromAStep(t *testing.T) {
	d := ownedBy(70*inch, 180*pound)
	step := stepOf(places(t, d))
	d = moved(d, step[len(step)/2].low)
	for _, known := range []shape{
		{radii: []float64{1.3, 1}, joints: []float64{0.06}, low: 0.06},
		{radii: []float64{1.3, 1}, joints: []float64{0.02}, low: 0.02},
		{radii: []float64{0.9, 1.15}, joints: []float64{0.05}, low: 0.05},
		{radii: []float64{0.9, 1.15}, joints: []float64{0.02}, low: 0},
		{radii: []float64{1.3, 1, 1.2}, joints: []float64{0.03, 0.3}, low: 0.04},
		{radii: []float64{0.9, 1.1, 1.3}, joints: []float64{0.01, 0.25}, low: 0.01},
	} {
		known.nose, known.tail = d.Rocker.Nose, d.Rocker.Tail
		was := balanced(t, known.with(d))
		target := falls(was.Loads[1].SeatFall)
		target.OneRock, target.Empty = was.Loads[1].Balance.Period, piece.Wish{Asked: true, Value: was.Loads[0].SeatFall}
		q := wishing(t, d, target)
		s := q.compound(q.start, len(known.radii), 0)
		l := balanced(t, s.with(d)).Loads
		if !metAll(q.misses(s)) {
			t.Errorf("%v: want %+v; the seat falls %v and %v degrees, %v s", known.radii, target,
				l[1].SeatFall/degree, l[0].SeatFall/degree, l[1].Balance.Period)
		}
	}
}
