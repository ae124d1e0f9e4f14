package size

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/mat"
)

// A tally counts chairs.
type tally struct {
	*making
	chairs  int
	counts  [quantities]histogram
	fails   []int
	anyFail int
	astray  int

	// over the chairs that lack nothing, for the regression: their number, and the sums of the errors
	// and then of the readings, in deviations from the nominal, and of all products of two of these
	n        float64
	sums     []float64
	products *mat.SymDense
	there    []Quantity
}

func (m *making) newTally() *tally {
	all := len(m.varied) + quantities
	t := &tally{making: m, fails: make([]int, len(m.nominal.Limits)), sums: make([]float64, all), products: mat.NewSymDense(all, nil)}
	for q := range Quantity(quantities) {
		if !math.IsNaN(m.now[q]) {
			t.there = append(t.there, q)
			t.counts[q] = newHistogram(m.now[q], m.scale[q])
		}
	}
	return t
}

func (t *tally) add(c chair) {
	t.chairs++
	failed := c.fails == nil
	for i, fails := range c.fails {
		if fails {
			t.fails[i]++
			failed = true
		}
	}
	if failed {
		t.anyFail++
	}
	whole := true
	both := append(slices.Clip(c.errors), make([]float64, quantities)...)
	for _, q := range t.there {
		t.counts[q].add(c.readings[q])
		whole = whole && !math.IsNaN(c.readings[q])
		both[len(c.errors)+int(q)] = c.readings[q] - t.now[q]
	}
	if !whole {
		t.astray++
		return
	}
	t.n++
	floats.Add(t.sums, both)
	t.products.SymRankOne(t.products, 1, mat.NewVecDense(len(both), both))
}

// join adds what another tally counted.
func (t *tally) join(other *tally) {
	t.chairs, t.anyFail, t.astray, t.n = t.chairs+other.chairs, t.anyFail+other.anyFail, t.astray+other.astray, t.n+other.n
	for i, n := range other.fails {
		t.fails[i] += n
	}
	for _, q := range t.there {
		t.counts[q].join(other.counts[q])
	}
	floats.Add(t.sums, other.sums)
	t.products.AddSym(t.products, other.products)
}

func (t *tally) study(asked int) Study {
	s := Study{Asked: asked, Chairs: t.chairs, Varied: t.varied, Nominal: t.now, Fails: t.anyFail, Astray: t.astray}
	for i, l := range t.nominal.Limits {
		s.Limits = append(s.Limits, Failing{l, t.fails[i]})
	}
	for _, q := range t.there {
		h := &t.counts[q]
		spread := Spread{Quantity: q, Low: h.quantile(0.05), Middle: h.quantile(0.5), High: h.quantile(0.95)}
		spread.Shares, spread.LeftOver = t.shares(q)
		s.Spreads = append(s.Spreads, spread)
	}
	return s
}

// shares returns which share of the variance of a quantity goes with each measure: b²·var(x)/var(y)
// with the coefficients b of the linear regression on all measures, and what is left over, 1
// less the share of variance explained.
func (t *tally) shares(q Quantity) (shares []float64, leftOver float64) {
	k := len(t.varied)
	shares = make([]float64, k)
	covary := func(i, j int) float64 { return t.products.At(i, j)/t.n - t.sums[i]*t.sums[j]/(t.n*t.n) }
	reading := k + int(q)
	variance := covary(reading, reading)
	if t.n <= float64(k) || !(variance > 0) {
		return shares, 0
	}
	covariance, right := mat.NewSymDense(k, nil), mat.NewVecDense(k, nil)
	for i := range k {
		for j := range i + 1 {
			covariance.SetSym(i, j, covary(i, j))
		}
		right.SetVec(i, covary(i, reading))
	}
	var factors mat.Cholesky
	var b mat.VecDense
	if !factors.Factorize(covariance) || factors.SolveVecTo(&b, right) != nil {
		return shares, 1
	}
	for i := range k {
		shares[i] = b.AtVec(i) * b.AtVec(i) * covariance.At(i, i) / variance
	}
	return shares, max(0, 1-mat.Dot(&b, right)/variance)
}
