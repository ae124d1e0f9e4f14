package size

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// A tally counts chairs.
type tally struct {
	*making
	counts  [quantities]histogram
	fails   []int
	anyFail int
	astray  int

	// sums over the chairs that lack nothing, for the regression: of products of the errors, of
	// errors and readings, of readings squared, and of each alone; readings are counted in
	// deviations from the nominal
	n             float64
	errors, cross *mat.Dense
	first         []float64
	read, squared [quantities]float64
	there         []Quantity
}

func (m *making) newTally() *tally {
	k := len(m.varied)
	t := &tally{making: m, fails: make([]int, len(m.nominal.Limits)),
		errors: mat.NewDense(k, k, nil), cross: mat.NewDense(k, quantities, nil), first: make([]float64, k)}
	for _, q := range Quantities() {
		if !math.IsNaN(m.now[q]) {
			t.there = append(t.there, q)
			t.counts[q] = newHistogram(m.now[q], m.scale[q])
		}
	}
	return t
}

// add counts a batch.
func (t *tally) add(part batch) {
	for i := range part {
		t.count(&part[i])
	}
}

// count counts one chair.
func (t *tally) count(c *chair) {
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
	for _, q := range t.there {
		t.counts[q].add(c.readings[q])
		whole = whole && !math.IsNaN(c.readings[q])
	}
	if !whole {
		t.astray++
		return
	}
	t.n++
	for k, e := range c.errors {
		t.first[k] += e
		row, cross := t.errors.RawRowView(k), t.cross.RawRowView(k)
		for j, other := range c.errors[:k+1] {
			row[j] += e * other
		}
		for _, q := range t.there {
			cross[q] += e * (c.readings[q] - t.now[q])
		}
	}
	for _, q := range t.there {
		y := c.readings[q] - t.now[q]
		t.read[q] += y
		t.squared[q] += y * y
	}
}

// study returns what was counted.
func (t *tally) study(asked, chairs int) Study {
	s := Study{Asked: asked, Chairs: chairs, Varied: t.varied, Nominal: t.now, Fails: t.anyFail, Astray: t.astray}
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
	variance := t.squared[q]/t.n - t.read[q]*t.read[q]/(t.n*t.n)
	if t.n <= float64(k) || !(variance > 0) {
		return shares, 0
	}
	covariance, right := mat.NewSymDense(k, nil), mat.NewVecDense(k, nil)
	for i := range k {
		for j := range i + 1 {
			covariance.SetSym(i, j, t.errors.At(i, j)/t.n-t.first[i]*t.first[j]/(t.n*t.n))
		}
		right.SetVec(i, t.cross.At(i, int(q))/t.n-t.first[i]*t.read[q]/(t.n*t.n))
	}
	var factors mat.Cholesky
	var b mat.VecDense
	if !factors.Factorize(covariance) || factors.SolveVecTo(&b, right) != nil {
		return shares, 1
	}
	explained := mat.Dot(&b, right)
	for i := range k {
		shares[i] = b.AtVec(i) * b.AtVec(i) * covariance.At(i, i) / variance
	}
	return shares, max(0, 1-explained/variance)
}
