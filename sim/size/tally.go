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

// A histogram counts values in cells that are fixed beforehand, so that percentiles of any
// number of values cost the same memory. Cells are a hundredth of a deviation wide.
type histogram struct {
	start, width float64
	counts       []int // the first and the last are of all beyond
	all          int
}

// How far a histogram reaches to either side, in deviations, and its cells for each.
const (
	reaches = 12
	cellsIn = 100
)

// newHistogram returns one about a value, deviation being about that of what will be counted.
func newHistogram(about, deviation float64) histogram {
	if !(deviation > 0) {
		deviation = 1e-12
	}
	return histogram{start: about - reaches*deviation, width: deviation / cellsIn, counts: make([]int, 2*reaches*cellsIn+2)}
}

// add counts a value; not a number is not counted.
func (h *histogram) add(x float64) {
	if math.IsNaN(x) {
		return
	}
	cell := math.Floor((x - h.start) / h.width)
	h.counts[int(max(0, min(float64(len(h.counts)-1), cell+1)))]++
	h.all++
}

// join adds what another one of the same cells counted.
func (h *histogram) join(other histogram) {
	for i, n := range other.counts {
		h.counts[i] += n
	}
	h.all += other.all
}

// quantile returns the value below which a share of all lie, NaN where nothing was counted.
func (h *histogram) quantile(share float64) float64 {
	if h.all == 0 {
		return math.NaN()
	}
	below, want := 0.0, share*float64(h.all)
	for i, n := range h.counts {
		if n := float64(n); below+n >= want && n > 0 {
			return h.start + (float64(i-1)+(want-below)/n)*h.width
		} else {
			below += n
		}
	}
	return h.start + float64(len(h.counts)-1)*h.width
}
