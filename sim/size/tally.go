package size

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/mat"
)

// A tally counts chairs, in a Study that has no Spreads yet.
type tally struct {
	*making
	Study
	counts [quantities]histogram

	// over the chairs that are not astray, for the regression: the sums of the errors and then of the
	// readings, in deviations from the nominal, and of all products of two of these
	sums     []float64
	products *mat.SymDense
	there    []Quantity
}

func (m *making) newTally() *tally {
	all := len(m.varied) + quantities
	t := &tally{making: m, sums: make([]float64, all), products: mat.NewSymDense(all, nil)}
	t.Varied, t.Nominal = m.varied, m.now
	for _, l := range m.nominal.Limits {
		t.Limits = append(t.Limits, Failing{Limit: l})
	}
	for q := range Quantity(quantities) {
		if !math.IsNaN(m.now[q]) {
			t.there = append(t.there, q)
			t.counts[q] = newHistogram(m.now[q], m.scale[q])
		}
	}
	return t
}

// add counts a chair, by the errors it was made with, in standard deviations, and what its maker says of it.
func (t *tally) add(errors []float64, readings Readings, fails []bool) {
	t.Chairs++
	for i, failed := range fails {
		if failed {
			t.Limits[i].Fails++
		}
	}
	if fails == nil || slices.Contains(fails, true) {
		t.Fails++
	}
	whole := true
	both := append(slices.Clip(errors), make([]float64, quantities)...)
	for _, q := range t.there {
		t.counts[q].add(readings[q])
		whole = whole && !math.IsNaN(readings[q])
		both[len(errors)+int(q)] = readings[q] - t.now[q]
	}
	if !whole {
		t.Unusable++
		return
	}
	floats.Add(t.sums, both)
	t.products.SymRankOne(t.products, 1, mat.NewVecDense(len(both), both))
}

// join adds what another tally counted.
func (t *tally) join(other *tally) {
	t.Chairs, t.Fails, t.Unusable = t.Chairs+other.Chairs, t.Fails+other.Fails, t.Unusable+other.Unusable
	for i := range t.Limits {
		t.Limits[i].Fails += other.Limits[i].Fails
	}
	for _, q := range t.there {
		floats.Add(t.counts[q].counts, other.counts[q].counts)
	}
	floats.Add(t.sums, other.sums)
	t.products.AddSym(t.products, other.products)
}

// study returns what was counted of so many chairs that were asked for.
func (t *tally) study(asked int) Study {
	s := t.Study
	s.Asked = asked
	for _, q := range t.there {
		h := &t.counts[q]
		spread := Spread{Quantity: q, Low: h.quantile(0.05), Middle: h.quantile(0.5), High: h.quantile(0.95)}
		spread.Shares, spread.LeftOver = t.shares(q)
		s.Spreads = append(s.Spreads, spread)
	}
	return s
}

// shares returns which share of the variance of a quantity goes with each measure: b²·var(x)/var(y) with the
// coefficients b of the linear regression on all of them, and what is left over, 1 less what they explain.
func (t *tally) shares(q Quantity) (shares []float64, leftOver float64) {
	k, n := len(t.varied), float64(t.Chairs-t.Unusable)
	shares = make([]float64, k)
	covary := func(i, j int) float64 { return t.products.At(i, j)/n - t.sums[i]*t.sums[j]/(n*n) }
	reading := k + int(q)
	variance := covary(reading, reading)
	if n <= float64(k) || !(variance > 0) {
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

// A histogram counts values in fixed cells of 1/100 deviation, so that percentiles cost the same memory.
type histogram struct {
	start, width float64
	counts       []float64 // the first and the last are of all beyond
}

// How far a histogram reaches to either side, in deviations, and its cells for each.
const reaches, cellsIn = 12, 100

// newHistogram returns one about a value, deviation being about that of what will be counted.
func newHistogram(about, deviation float64) histogram {
	if !(deviation > 0) {
		deviation = 1e-12
	}
	return histogram{start: about - reaches*deviation, width: deviation / cellsIn, counts: make([]float64, 2*reaches*cellsIn+2)}
}

// add counts a value; not a number is not counted.
func (h *histogram) add(x float64) {
	if math.IsNaN(x) {
		return
	}
	cell := math.Floor((x - h.start) / h.width)
	h.counts[int(max(0, min(float64(len(h.counts)-1), cell+1)))]++
}

// quantile returns the value below which a share of all lie, NaN where nothing was counted.
func (h *histogram) quantile(share float64) float64 {
	below, want := 0.0, share*floats.Sum(h.counts)
	for i, n := range h.counts {
		if below+n >= want && n > 0 {
			return h.start + (float64(i-1)+(want-below)/n)*h.width
		}
		below += n
	}
	return math.NaN()
}
