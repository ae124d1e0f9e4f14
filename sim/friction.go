package sim

import "math"

// force returns what the floor gives the chair per kg of its mass at an instant of a
// swing: forward along the floor and square to it, m/s².
func (s *stretch) force(m moment) (forward, normal float64) {
	g := s.rig.Floor.FreeFall()
	mass := s.rig.Body.Mass
	inertia := s.rig.inertia(m.stance)
	square := 2 * mass * g * m.fallen / inertia // rate squared
	speeding := -mass * (m.ahead*m.radius*square + g*s.arm(m.stance)) / inertia
	forward = -(m.height*speeding + m.ahead*square) + g*s.sin
	normal = g*s.cos + m.ahead*speeding + (m.radius-m.height)*square
	return forward, normal
}

// friction returns the largest |F|/N on the way from a turning point to the rest,
// both ends of every arc included; infinite where the floor would have to pull.
func (r *Rig) friction(turning float64, rest Equilibrium) float64 {
	most := 0.0
	f := r.fallFrom(turning, rest)
	for s, more := f.next(); more; s, more = f.next() {
		most = max(most, largest(s.end, func(t float64) float64 {
			forward, normal := s.force(s.at(t))
			if normal <= 0 {
				return math.Inf(1)
			}
			return math.Abs(forward) / normal
		}))
	}
	return most
}
