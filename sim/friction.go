package sim

import "math"

// force returns what the floor gives the chair per kg of its mass at an instant of a
// swing: forward along the floor and square to it, m/s².
func (s *stretch) force(m moment) (forward, normal float64) {
	g := s.rig.Floor.gravity()
	sin, cos := math.Sincos(s.rig.Floor.Slope)
	mass := s.rig.Body.Mass
	inertia := s.rig.inertia(m.stance)
	square := 2 * mass * g * m.fallen / inertia // rate squared
	arm := m.ahead*cos - m.height*sin
	speeding := -mass * (m.ahead*m.radius*square + g*arm) / inertia
	forward = -(m.height*speeding + m.ahead*square) + g*sin
	normal = g*cos + m.ahead*speeding + (m.radius-m.height)*square
	return forward, normal
}

// friction returns the largest |F|/N on the way from a turning point to the rest,
// both ends of every arc included; infinite where the floor would have to pull.
func (r *Rig) friction(turning float64, rest Equilibrium) float64 {
	most := 0.0
	f := r.fallFrom(turning, rest)
	for s, more := f.next(); more; s, more = f.next() {
		most = max(most, largest(s.length, func(turn float64) float64 {
			forward, normal := s.force(s.at(turn))
			if normal <= 0 {
				return math.Inf(1)
			}
			return math.Abs(forward) / normal
		}))
	}
	return most
}

// largest returns the largest value of f on [0, end]: the best of a grid of nine,
// made finer about it by the golden section to 1e-6 of the length, where a smooth
// top is right to 1e-12.
func largest(end float64, f func(float64) float64) float64 {
	const grid = 8
	step := end / grid
	best, most := 0, f(0)
	for i := 1; i <= grid; i++ {
		if v := f(step * float64(i)); v > most {
			best, most = i, v
		}
	}
	low, high := step*float64(max(best-1, 0)), step*float64(min(best+1, grid))
	const golden = 0.6180339887498949 // (√5 − 1)/2
	x1, x2 := high-golden*(high-low), low+golden*(high-low)
	f1, f2 := f(x1), f(x2)
	for high-low > 1e-6*end {
		if f1 > f2 {
			high, x2, f2 = x2, x1, f1
			x1 = high - golden*(high-low)
			f1 = f(x1)
		} else {
			low, x1, f1 = x1, x2, f2
			x2 = low + golden*(high-low)
			f2 = f(x2)
		}
	}
	return max(most, f1, f2)
}
