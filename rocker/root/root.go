// Package root finds where a function of one number passes through zero between two places, and
// where a yes turns into a no.
package root

import "math"

// Between returns the place between a and b at which f, of opposite signs there, passes through zero: to within (≥ 0,
// as x is measured), or to a rounding of x and 2⁻⁶⁰ of b − a where that is more. Where f jumps it is a place beside
// the jump. What is not a number counts as lying on a's side of zero. NaN is returned where the signs at a and b are
// alike or f(b) is not a number, and where a, b or within is not finite.
//
// It is Brent's zeroin: straight through two places or a parabola of x through three where that
// at least halves the step, else halving, so that a smooth f is asked some eight times. Source:
// Brent, Algorithms for Minimization without Derivatives (1973), chapter 4; from memory.
func Between(f func(x float64) float64, a, b, within float64) float64 {
	if !(math.Abs(b-a)+within < math.Inf(1)) {
		return math.NaN()
	}
	fa, fb := f(a), f(b)
	endless := math.Copysign(math.Inf(1), -fb)
	if math.IsNaN(fa) {
		fa = endless
	}
	switch {
	case fa == 0:
		return a
	case math.IsNaN(fb) || fb != 0 && (fa > 0) == (fb > 0):
		return math.NaN()
	}
	within = max(within/2, math.Abs(b-a)*0x1p-60)
	c, fc := a, fa // the other side of zero from b, which is the best so far; a came before b
	for {
		last := b - a
		if math.Abs(fc) < math.Abs(fb) {
			a, b, c, fa, fb, fc = b, c, b, fb, fc, fb
		}
		least, half := 0x1p-52*math.Abs(b)+within, (c-b)/2
		if math.Abs(half) <= least || fb == 0 {
			return b
		}
		step := half
		if math.Abs(last) >= least && math.Abs(fa) > math.Abs(fb) {
			if s := toward(a, b, c, fa, fb, fc); math.Abs(s) < math.Abs(last)/2 && s/half > 0 && s/half < 1.5 {
				step = s
			}
		}
		a, fa = b, fb
		b += math.Copysign(max(math.Abs(step), least), half)
		if fb = f(b); math.IsNaN(fb) {
			fb = endless
		}
		if (fb > 0) == (fc > 0) {
			c, fc = a, fa
		}
	}
}

// toward returns the step from b to where the line through two places, or the parabola of x
// through three, has its zero; not a number where it has none.
func toward(a, b, c, fa, fb, fc float64) float64 {
	s := fb / fa
	if a == c {
		return (c - b) * s / (s - 1)
	}
	q, r := fa/fc, fb/fc
	return s * ((b-a)*(r-1) - (c-b)*q*(q-r)) / ((q - 1) * (r - 1) * (s - 1))
}

// Edge halves what lies between a place where holds is true and one where it is false, both taken as
// said and not asked, until they are no further apart than tolerance (as x is measured) or than
// accuracy, a part of the first; with zero for both, until nothing lies between. It returns the
// two, holds being true at yes and false at no; where one is not a number, as they were given.
func Edge(holds func(x float64) bool, yes, no, tolerance, accuracy float64) (float64, float64) {
	for apart := math.Abs(no - yes); apart > tolerance && apart > accuracy*math.Abs(yes); apart = math.Abs(no - yes) {
		middle := (yes + no) / 2
		switch {
		case middle == yes || middle == no:
			return yes, no
		case holds(middle):
			yes = middle
		default:
			no = middle
		}
	}
	return yes, no
}
