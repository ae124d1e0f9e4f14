package size

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"

	"rockerwright/rocker/root"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// How far a tolerance is looked for, in usual ones: what may be off by so much need not be exact.
const looseBy = 8

// A slack says by how much each limit holds, SI, below zero where it fails; not a number counts as failing.
type slack []float64

func slackOf(r check.Balanced) slack {
	s := make(slack, len(r.Limits))
	for i, l := range r.Limits {
		s[i] = l.Room()
		if l.Name == "rest" {
			s[i] = l.Got - 0.5
		}
	}
	return s
}

// A response says how the slack of every limit goes with one measure: by a parabola through it as drawn and at two
// errors of the measure, worked out exactly. Several measures add up.
type response struct {
	slope, bend slack
}

// at returns the change of the i-th slack by an error.
func (r *response) at(i int, x float64) float64 { return x * (r.slope[i] + x*r.bend[i]) }

// respond works out the response to an error of one measure about as large as wide, SI.
func respond(d piece.Design, sitters check.Sitters, v Varied, now slack, wide float64) response {
	n := len(now)
	r := response{make(slack, n), make(slack, n)}
	if v.Measure.Sign == piece.AboveZero {
		wide = min(wide, 0.4*v.Value)
	}
	ask := func(off float64) slack {
		d := d.Clone()
		*v.of(&d) += off
		report, err := sitters.Balance(d)
		if err != nil || len(report.Limits) != n {
			return nil
		}
		return slackOf(report)
	}
	more, less := ask(wide), ask(-wide)
	for i := range now {
		if more == nil || less == nil || math.IsNaN(more[i]) || math.IsNaN(less[i]) || math.IsNaN(now[i]) {
			continue // it falls over within the error: the limit named rest counts that
		}
		up, down := more[i]-now[i], less[i]-now[i]
		r.slope[i] = (up - down) / (2 * wide)
		r.bend[i] = (up + down) / (2 * wide * wide)
	}
	return r
}

// A shopFloor is many chairs as a shop makes them, by the responses to its errors.
type shopFloor struct {
	now       slack
	varied    []Varied
	responses []response
	errors    *mat.Dense // of each chair, each measure, in standard deviations
	slacks    []slack    // of each chair, with every measure at the shop's usual
}

// chairsOnFloor is how many chairs find a tolerance: 5 % that fail is known to √(0.05·0.95/4096) = 0.35 %.
const chairsOnFloor = Block

func newShopFloor(d piece.Design, sitters check.Sitters, now check.Balanced) shopFloor {
	f := shopFloor{now: slackOf(now), varied: made(d)}
	if len(f.varied) == 0 {
		return f
	}
	f.errors = hypercube(chairsOnFloor, len(f.varied), 0, 0)
	f.slacks = make([]slack, chairsOnFloor)
	for c := range f.slacks {
		f.slacks[c] = slices.Clone(f.now)
	}
	for k, v := range f.varied {
		f.responses = append(f.responses, response{make(slack, len(f.now)), make(slack, len(f.now))})
		f.replace(k, respond(d, sitters, v, f.now, v.Tolerance))
	}
	return f
}

// fails returns the share of chairs in which a limit fails, the k-th measure held to another tolerance.
func (f *shopFloor) fails(k int, tolerance float64) float64 {
	v, r := f.varied[k], &f.responses[k]
	failing := 0
	for c, s := range f.slacks {
		usual, other := v.deviation()*f.errors.At(c, k), tolerance/twoSided95*f.errors.At(c, k)
		for i := range s {
			if !(s[i]-r.at(i, usual)+r.at(i, other) >= 0) {
				failing++
				break
			}
		}
	}
	return float64(failing) / float64(len(f.slacks))
}

// tolerance returns the largest error of the k-th measure with which every limit holds 95 times in 100, the others
// at the shop's usual: +Inf where looseBy usual ones will do, NaN where not even exactness helps.
func (f *shopFloor) tolerance(k int) float64 {
	const often = 0.05
	most := looseBy * f.varied[k].Tolerance
	switch {
	case f.fails(k, most) <= often:
		return math.Inf(1)
	case f.fails(k, 0) > often:
		return math.NaN()
	}
	held, _ := root.Edge(func(tolerance float64) bool { return f.fails(k, tolerance) <= often }, 0, most, most/4000, 0)
	return held
}

// holdTo fills in how exactly each measure that is made must be held, and returns the share of chairs in which a
// limit fails with all at the shop's usual. A tolerance is found again by its response at such errors.
func (t *Table) holdTo(d piece.Design, sitters check.Sitters) float64 {
	f := newShopFloor(d, sitters, t.Report)
	if len(f.varied) == 0 {
		return 0
	}
	for k, v := range f.varied {
		held := f.tolerance(k)
		if !math.IsNaN(held) {
			usual := f.responses[k]
			wide := min(max(held, v.Tolerance), looseBy*v.Tolerance)
			f.replace(k, respond(d, sitters, v, f.now, wide))
			held = f.tolerance(k)
			f.replace(k, usual)
		}
		for i := range t.Rows {
			if t.Rows[i].Key == v.Key {
				t.Rows[i].HoldTo = held
			}
		}
	}
	return f.fails(0, f.varied[0].Tolerance)
}

// replace puts another response in the place of the k-th.
func (f *shopFloor) replace(k int, r response) {
	old := f.responses[k]
	for c, s := range f.slacks {
		x := f.varied[k].deviation() * f.errors.At(c, k)
		for i := range s {
			s[i] += r.at(i, x) - old.at(i, x)
		}
	}
	f.responses[k] = r
}
