package motion

import (
	"math"

	"rockerwright/rocker/root"
)

// order is that of the Taylor series of a step.
const order = 20

// A series holds the coefficients of a polynomial in the time since its step began.
type series [order + 1]float64

// at returns the polynomial at t, by Horner's rule.
func (c *series) at(t float64) float64 {
	sum := c[order]
	for k := order - 1; k >= 0; k-- {
		sum = sum*t + c[k]
	}
	return sum
}

// times returns the k-th coefficient of the product of two series.
func (c *series) times(other *series, k int) float64 {
	sum := 0.0
	for j := 0; j <= k; j++ {
		sum += c[j] * other[k-j]
	}
	return sum
}

// An arc is the equation of motion on one bearing from one instant on.
type arc struct {
	mass, weight     float64 // kg; m·g, N
	sin, cos         float64 // of the slope
	radius           float64 // m
	height, ahead    float64 // H and H′ at the instant, m
	inertia          float64 // J at the instant, kg·m²
	couple           float64 // constant, N·m
	viscous          float64 // N·m·s
	force            float64 // push, N, + back
	pushUp, pushFore float64 // height of the pushed point over the floor, and how far it lies ahead of the contact, m
	foot             float64 // of the feet on the floor, N
	footFore         float64 // how far they stand ahead of the contact, m
}

// A flight is the solution on an arc: turn since the instant, rate and acceleration.
type flight struct{ turn, rate, speeding series }

// solve fills f with the series of the motion from a rate at the instant.
func (a *arc) solve(rate float64, f *flight) {
	var sin, versed, fall, fore, lever, inertia, square series
	w, acc := &f.rate, &f.speeding
	f.turn[0], w[0] = 0, rate
	fore[0], lever[0], inertia[0] = a.ahead, a.pushUp, a.inertia
	c := a.radius - a.height
	for k := 0; k < order; k++ {
		if k > 0 {
			fall[k] = c*versed[k] + a.ahead*sin[k] // H − H₁
			fore[k] = c*sin[k] - a.ahead*versed[k]
			lever[k] = (a.radius-a.pushUp)*versed[k] + a.pushFore*sin[k]
			inertia[k] = 2 * a.mass * a.radius * fall[k]
		}
		square[k] = w.times(w, k)
		n := -a.mass*a.radius*fore.times(&square, k) - a.weight*(a.cos*fore[k]-a.sin*fall[k]) - a.viscous*w[k] + a.force*lever[k]
		if k == 0 {
			n += a.couple + a.weight*a.sin*a.height + a.foot*a.footFore
		} else {
			n += a.foot * a.radius * f.turn[k] // by so much the contact has rolled away from the feet
		}
		for j := 1; j <= k; j++ {
			n -= inertia[j] * acc[k-j]
		}
		acc[k] = n / a.inertia
		next := 1 / float64(k+1)
		w[k+1] = acc[k] * next
		f.turn[k+1] = w[k] * next
		sin[k+1] = (w[k] - versed.times(w, k)) * next
		versed[k+1] = sin.times(w, k) * next
	}
	acc[order] = 0
}

// negligible is the size of a last coefficient's share of the turn at which a step ends, rad: the rounding of a tilt.
const negligible = 1e-16

// span returns how long the series may be followed, s: the last two terms of the turn stay negligible.
func (f *flight) span() float64 {
	least := math.Inf(1) // logarithm of the span
	for k := order - 1; k <= order; k++ {
		least = min(least, math.Log(negligible/math.Abs(f.turn[k]))/float64(k))
	}
	return math.Exp(least)
}

// reaches returns when a polynomial passes through a value between two times at which it lies on
// either side of it. Newton's rule held in the bracket takes 3 % off a minute over nine arcs, 1 %
// over three and nothing over one (BenchmarkCost): not worth a second finder.
func (c *series) reaches(value, low, high float64) float64 {
	return root.Between(func(t float64) float64 { return c.at(t) - value }, low, high, 0)
}
