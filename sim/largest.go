package sim

import "math"

// largest returns the largest value on [0, end] of a function that is smooth there: the best of a grid of seven, made
// finer by the tops of parabolas through it and its neighbours until the place is known to 1e-6 of the length, where
// a smooth top is right to 1e-12.
func largest(end float64, f func(float64) float64) float64 {
	const grid = 6
	step := end / grid
	var value [grid + 1]float64
	best := 0
	for i := range value {
		if value[i] = f(step * float64(i)); value[i] > value[best] {
			best = i
		}
	}
	middle := min(max(best, 1), grid-1)
	a, b, c := step*float64(middle-1), step*float64(middle), step*float64(middle+1)
	fa, fb, fc := value[middle-1], value[middle], value[middle+1]
	for range 12 {
		x := top(a, b, c, fa, fb, fc)
		if !(x > a && x < c) || math.Abs(x-b) <= 1e-6*end {
			break // it rises to an end, or is found
		}
		fx := f(x)
		switch {
		case fx >= fb && x < b:
			b, c, fb, fc = x, b, fx, fb
		case fx >= fb:
			a, b, fa, fb = b, x, fb, fx
		case x < b:
			a, fa = x, fx
		default:
			c, fc = x, fx
		}
	}
	return max(value[best], fb)
}

// top returns where the parabola through three points has its top; not a number where they lie on a line.
func top(a, b, c, fa, fb, fc float64) float64 {
	left, right := (fb-fa)/(b-a), (fc-fb)/(c-b)
	return (a + b - left*(c-a)/(right-left)) / 2
}
