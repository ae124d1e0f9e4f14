package speed

import "math"

// order is that of the series, as in sim/motion, so that both do the same work for the same digits.
const order = 20

// follow lets the circle go at the angle a from its rest (rad) and returns angle (rad) and rate (rad/s)
// after the given time (s), by the Taylor series of
//
//	J δ̈ = −m |w| sin δ (R δ̇² + g),   J = I + m (R² + w² − 2 R |w| cos δ),
//
// whose coefficients follow from one another by products of series.
func (c circle) follow(a, duration float64) (angle, rate float64) {
	below := math.Hypot(c.x, c.y-c.radius)
	pull, j0 := c.mass*below, c.inertia+c.mass*(c.radius*c.radius+below*below)
	angle = a
	for left := duration; left > 0; {
		var d, w, s, cs, q, force, j, acc [order + 2]float64
		d[0], w[0] = angle, rate
		s[0], cs[0] = math.Sincos(angle)
		for k := range order {
			var square, torque, turn float64
			for i := 0; i <= k; i++ {
				square += w[i] * w[k-i]
			}
			q[k] = c.radius * square
			if k == 0 {
				q[k] += gravity
			}
			for i := 0; i <= k; i++ {
				torque += s[i] * q[k-i]
			}
			force[k] = -pull * torque
			j[k] = -2 * pull * c.radius * cs[k]
			if k == 0 {
				j[k] += j0
			}
			for i := 1; i <= k; i++ {
				turn += j[i] * acc[k-i]
			}
			acc[k] = (force[k] - turn) / j[0]
			n := float64(k + 1)
			d[k+1], w[k+1] = w[k]/n, acc[k]/n
			var sin, cos float64
			for i := 0; i <= k; i++ {
				sin += w[i] * cs[k-i]
				cos -= w[i] * s[k-i]
			}
			s[k+1], cs[k+1] = sin/n, cos/n
		}
		step := min(left, math.Pow(1e-16/max(math.Abs(d[order]), math.Abs(w[order]), 1e-300), 1.0/order))
		angle, rate = 0, 0
		for k := order; k >= 0; k-- {
			angle, rate = angle*step+d[k], rate*step+w[k]
		}
		left -= step
	}
	return angle, rate
}
