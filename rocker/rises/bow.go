package rises

import (
	"iter"
	"math"
)

// A bow is a curve of arcs with continuous tangents over the straightedge, by its height
// and slope at x = 0, the curvature of each arc and where they join. Along x forward the
// sine of its slope p changes by the curvature κ,
//
//	dp/dx = κ,   y = ∫ p/√(1 − p²) dx
//
// so that on one arc y grows by (√(1 − p₁²) − √(1 − p₂²))/κ (derived here: with slope φ
// and arc length s, dφ/ds = κ and dx = cos φ ds give d sin φ = κ dx).
type bow struct {
	height, slope float64   // y (m) and p at x = 0
	curvature     []float64 // of each arc from the nose, 1/m
	joint         []float64 // x between them, falling, m
}

// parameters returns all numbers of the bow that a fit can change.
func (b *bow) parameters() []*float64 {
	list := []*float64{&b.height, &b.slope}
	for i := range b.curvature {
		list = append(list, &b.curvature[i])
	}
	for i := range b.joint {
		list = append(list, &b.joint[i])
	}
	return list
}

// arcAt returns the index of the arc over x.
func (b *bow) arcAt(x float64) int {
	i := 0
	for i < len(b.joint) && x < b.joint[i] {
		i++
	}
	return i
}

// way yields, from one x to another, the curvature of each arc in turn and how far it
// goes along x.
func (b *bow) way(from, to float64) iter.Seq2[float64, float64] {
	return func(yield func(curvature, dx float64) bool) {
		for i := b.arcAt(from); ; {
			end, next := to, i
			switch {
			case to > from && i > 0 && to > b.joint[i-1]:
				end, next = b.joint[i-1], i-1
			case to < from && i < len(b.joint) && to < b.joint[i]:
				end, next = b.joint[i], i+1
			}
			if !yield(b.curvature[i], end-from) || next == i {
				return
			}
			from, i = end, next
		}
	}
}

// at returns height and slope at x, starting from x = 0 and going arc by arc.
func (b *bow) at(x float64) (y, p float64) {
	y, p = b.height, b.slope
	for curvature, dx := range b.way(0, x) {
		y, p = onward(y, p, curvature, dx)
	}
	return y, p
}

// onward returns height and slope a way dx further on one arc.
func onward(y, p, curvature, dx float64) (float64, float64) {
	q := min(0.999, max(-0.999, p+curvature*dx)) // steeper than 87 degrees is no rocker
	if math.Abs(q-p) < 1e-9 {
		return y + dx*p/math.Sqrt(1-p*p), q
	}
	// (√(1−p²) − √(1−q²))/κ without the difference of two near numbers
	return y + dx*(p+q)/(math.Sqrt(1-p*p)+math.Sqrt(1-q*q)), q
}
