package size

import "math"

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
