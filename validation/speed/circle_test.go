package speed

import "math"

const gravity = 9.80665 // m/s²

// A circle is the floor for everything that rolls: one arc of radius R about (0, R), a body of
// mass m and inertia I about its centre, and the closed forms that follow.
type circle struct {
	radius, nose, tail float64 // m; nose and tail along the edge
	mass, x, y         float64 // kg; centre of mass, m
	inertia            float64 // kg·m²
}

// A side is how far it is to going over on one side.
type side struct{ tip, margin, lift float64 } // rad, rad, m

// balance returns the tilt at rest (rad), the small period (s) and both sides:
// θ₀ = atan2(−wx, −wy) with w = G − C, T = 2π √((I + m (R − |w|)²)/(m g |w|)); over a tip P the
// hilltop lies at atan2(Gx − Px, Gy − Py), |G − P| over the floor.
func (c circle) balance() (rest, period float64, back, forward side) {
	below := math.Hypot(c.x, c.y-c.radius)
	rest = math.Atan2(-c.x, c.radius-c.y)
	height := c.radius - below
	period = 2 * math.Pi * math.Sqrt((c.inertia+c.mass*height*height)/(c.mass*gravity*below))
	over := func(turn float64) side {
		px, py := -c.radius*math.Sin(turn), c.radius*(1-math.Cos(turn))
		tip := math.Atan2(c.x-px, c.y-py)
		return side{tip, math.Abs(tip - rest), math.Hypot(c.x-px, c.y-py) - height}
	}
	return rest, period, over(c.tail / c.radius), over(-c.nose / c.radius)
}

// period returns the time of one rock there and back that is let go at the angle a from the
// rest (rad), within the arc, s. With sin(δ/2) = sin(a/2) sin φ it is
//
//	T = 4 ∫ √(J/(m g |w|)) / cos(δ/2) dφ  over a quarter turn, J = I + m (R² + w² − 2 R |w| cos δ),
//
// smooth and periodic, so that few points of the trapezoidal rule give all digits.
func (c circle) period(a float64) float64 {
	const n = 8
	below, k := math.Hypot(c.x, c.y-c.radius), math.Sin(a/2)
	var sum float64
	for i := range n {
		half := k * math.Sin((float64(i)+0.5)*math.Pi/(2*n))
		cos := 1 - 2*half*half
		j := c.inertia + c.mass*(c.radius*c.radius+below*below-2*c.radius*below*cos)
		sum += math.Sqrt(j / (1 - half*half))
	}
	return 2 * math.Pi / n * sum / math.Sqrt(c.mass*gravity*below)
}
