package size

import (
	"context"
	"math"
	"runtime"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// Block is how many chairs of a study are made together.
const Block = 4096

// A Study is many chairs made with a shop's errors, all measures at once, and what became of them.
type Study struct {
	Asked, Chairs int // how many were to be made, and how many were
	Varied        []Varied
	Nominal       Readings // without errors
	Spreads       []Spread // of each quantity there is, in the order of Quantities
	Limits        []Failing
	Fails         int // chairs in which any limit fails
	Unusable      int // chairs that are no piece, or lack a quantity that the nominal one has
}

// Stopped reports whether the study was stopped before all chairs were made.
func (s Study) Stopped() bool { return s.Chairs < s.Asked }

// Part returns which part of the chairs so many of them are.
func (s Study) Part(n int) float64 { return float64(n) / float64(s.Chairs) }

// A Spread says how one quantity lies over the chairs, SI.
type Spread struct {
	Quantity          Quantity
	Low, Middle, High float64 // 5, 50 and 95 % lie below
	// Shares of the variance that go with each of Varied, by regression: the squared coefficients
	// times the variance of the measure. LeftOver goes with no measure in a straight line.
	Shares   []float64
	LeftOver float64
}

// Most returns the measure on which a quantity hangs most, and its share of the variance; none where none has any.
func (s Study) Most(spread Spread) (most Varied, share float64) {
	for k, one := range spread.Shares {
		if one > share {
			most, share = s.Varied[k], one
		}
	}
	return most, share
}

// A Failing says how often a limit fails.
type Failing struct {
	Limit check.Limit // of the chair without errors
	Fails int
}

// StudyOptions tune [Chairs]. The zero value is what a maker is shown.
type StudyOptions struct {
	Seed     uint64
	Progress func(done int) // called after each block, in order; nil: nobody asks
}

// Chairs makes so many chairs, every measure of each off by a normal error that is within the shop's tolerance 95
// times in 100, and with somebody else of the same sizes in each ([People]), in Latin hypercubes of [Block] chairs
// with a seed each, and balances them exactly. Blocks are counted in order, so that the result is the same on any
// number of processors; memory does not grow with their number. When the context ends, what was counted by then is
// the result. Errors are of package piece, or an [*UnsuitedError] where nothing of the piece is made in a shop.
func Chairs(ctx context.Context, d piece.Design, chairs int, options StudyOptions) (Study, error) {
	if err := countable(d); err != nil {
		return Study{}, err
	}
	m, err := newMaking(d)
	if err != nil {
		return Study{}, err
	}
	all := m.newTally()
	for all.Chairs < chairs && ctx.Err() == nil {
		first := all.Chairs / Block
		blocks := make([]*tally, min(runtime.GOMAXPROCS(0), (chairs-all.Chairs+Block-1)/Block))
		each(len(blocks), func(i int) {
			blocks[i] = m.block(ctx, options.Seed, first+i, min(Block, chairs-(first+i)*Block))
		})
		for i := 0; i < len(blocks) && ctx.Err() == nil; i++ {
			all.join(blocks[i])
			if options.Progress != nil {
				options.Progress(all.Chairs)
			}
		}
	}
	return all.study(chairs), nil
}

// A making is a design that is made many times.
type making struct {
	design  piece.Design
	sitters check.Sitters
	varied  []Varied
	nominal check.Balanced
	now     Readings
	scale   Readings // about one standard deviation of each quantity
}

func newMaking(d piece.Design) (*making, error) {
	m := &making{design: d, varied: made(d)}
	if len(m.varied) == 0 {
		return nil, &UnsuitedError{"nothing of it is given by measures that a shop makes"}
	}
	var err error
	if m.sitters, err = check.SittersOf(d); err != nil {
		return nil, err
	}
	if m.nominal, err = m.sitters.Balance(d); err != nil {
		return nil, err
	}
	m.varied = append(m.varied, people(m.sitters)...)
	m.now = readingsOf(m.nominal)
	chair := m.maker()
	for k := range m.varied { // each alone, off by one deviation
		alone := make([]float64, len(m.varied))
		alone[k] = 1
		readings, _ := chair(alone)
		for i := range m.scale {
			if off := readings[i] - m.now[i]; !math.IsNaN(off) {
				m.scale[i] = math.Hypot(m.scale[i], off)
			}
		}
	}
	return m, nil
}

// maker returns what makes chairs one after another: each with errors, in standard deviations, of which it returns
// the readings and which limits fail; fails is nil where it is no piece.
func (m *making) maker() func(errors []float64) (readings Readings, fails []bool) {
	design := m.design.Clone()
	fields := make([]*float64, len(m.varied)) // nil of people
	for k, v := range m.varied {
		if v.Key != People {
			fields[k] = v.of(&design)
		}
	}
	return func(errors []float64) (Readings, []bool) {
		sitters := m.sitters
		for k, v := range m.varied {
			if off := v.deviation() * errors[k]; fields[k] != nil {
				*fields[k] = v.Value + off
			} else {
				sitters = sitters.Ahead(off)
			}
		}
		r, err := sitters.Balance(design)
		if err != nil || len(r.Limits) != len(m.nominal.Limits) {
			return noReadings, nil
		}
		fails := make([]bool, len(r.Limits))
		for i := range r.Limits {
			fails[i] = !r.Limits[i].Holds
		}
		return readingsOf(r), fails
	}
}

// block makes and counts the first chairs of a block, until the context ends.
func (m *making) block(ctx context.Context, seed uint64, block, chairs int) *tally {
	t, chair := m.newTally(), m.maker()
	points := hypercube(Block, len(m.varied), seed, uint64(block))
	for c := 0; c < chairs && ctx.Err() == nil; c++ {
		errors := points.RawRowView(c)
		readings, fails := chair(errors)
		t.add(errors, readings, fails)
	}
	return t
}
