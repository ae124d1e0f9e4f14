package rocker

import "math"

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

// at returns height and slope at x, starting from x = 0 and going arc by arc.
func (b *bow) at(x float64) (y, p float64) {
	y, p = b.height, b.slope
	from := 0.0
	for i := b.arcAt(0); ; {
		to := x
		next := i
		switch {
		case x > from && i > 0 && x > b.joint[i-1]:
			to, next = b.joint[i-1], i-1
		case x < from && i < len(b.joint) && x < b.joint[i]:
			to, next = b.joint[i], i+1
		}
		y, p = onward(y, p, b.curvature[i], to-from)
		if next == i {
			return y, p
		}
		from, i = to, next
	}
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
