package sim

import "math"

// A Swing is what comes of letting go at rest from a tilt, on a rig that loses
// nothing. Where the outcome is not Rocks the numbers are NaN.
type Swing struct {
	Outcome  Outcome
	Release  float64 // tilt from the rest at which it was let go, rad, + back
	Period   float64 // of one whole rock there and back, s
	Reach    float64 // tilt from the rest at the turn on the other side, rad, + back
	Friction float64 // the largest |F|/N the floor must hold over the whole rock
}

// Swing lets the rig go at the given tilt from the rest of b (rad, + back), a balance of this rig. A release too
// small to tell from zero (AtJoint) is the small rock in the limit. It panics for a release that is not a number.
func (r Rig) Swing(b Balance, release float64) Swing {
	lost := Swing{Outcome: Rocks, Release: release, Period: math.NaN(), Reach: math.NaN(), Friction: math.NaN()}
	period, reach := r.Period(b, release)
	if math.IsNaN(reach) {
		lost.Outcome = r.outcomeFrom(b, release)
		return lost
	}
	friction := math.Abs(math.Tan(r.Floor.Slope))
	if math.Abs(release) >= AtJoint {
		friction = max(r.friction(b.Rest.roll+release, b.Rest), r.friction(b.Rest.roll+reach, b.Rest))
	}
	if math.IsInf(friction, 1) || r.Floor.Friction > 0 && friction > r.Floor.Friction {
		lost.Outcome = FloorLetsGo
		return lost
	}
	return Swing{Outcome: Rocks, Release: release, Period: period, Reach: reach, Friction: friction}
}

// Period returns how long one whole rock takes, there and back, when the rig is let go at the given tilt from the
// rest of b, s, and the tilt from the rest to which it carries on the other side; both angles in rad, + back. Both
// are NaN where it does not come back. A floor that only pushes is not asked: a pendulum has a period too. It panics
// for a release that is not a number.
//
// The period is four falls: from each turning point to the rest and back, by
// quadrature to 1e-10. It grows without bound as the release nears the lift.
func (r Rig) Period(b Balance, release float64) (period, reach float64) {
	if b.mustRest(); math.IsNaN(release) {
		panic("sim: a release is a tilt from the rest in rad, and this one is not a number")
	}
	near, far, side := b.Back, b.Forward, 1
	if release < 0 {
		near, far, side = b.Forward, b.Back, -1
	}
	if near.Exists() && math.Abs(release) >= near.Angle || !(math.Abs(release) < 2*math.Pi) {
		return math.NaN(), math.NaN()
	}
	if math.Abs(release) < AtJoint {
		return b.Period, -release
	}
	there, height := r.fallTime(b.Rest.roll+release, b.Rest)
	limit := math.Inf(-side)
	if far.Exists() {
		if height >= far.Lift {
			return math.NaN(), math.NaN()
		}
		limit = b.Rest.roll - float64(side)*far.Angle
	}
	other := r.rising(b.Rest, -side, height, limit)
	if math.IsNaN(other) {
		return math.NaN(), math.NaN()
	}
	beyond, _ := r.fallTime(other, b.Rest)
	if period = 2 * (there + beyond); math.IsNaN(period) || math.IsInf(period, 1) {
		return math.NaN(), math.NaN() // let go on a level place, it never sets off
	}
	return period, other - b.Rest.roll
}

// outcomeFrom tells what becomes of a rig let go at a tilt from the rest of b from which it does not come back to it:
// it stays where the arm is zero and does not change, else it goes over on the side to which it sets off, unless a
// hilltop on that side stands higher than where it was let go and turns it.
func (r *Rig) outcomeFrom(b Balance, release float64) Outcome {
	start := b.Rest.roll + release
	s, g := r.stand(touching(r.Profile, start)), r.Floor.ground()
	if level := rounding * (s.height + s.radius); math.Abs(g.arm(s)) <= level && math.Abs(g.slope(s)) <= level {
		return Neutral
	}
	back := g.arm(s) < 0 || g.arm(s) == 0 && release > 0
	var store [16]Equilibrium
	for _, e := range r.Equilibria(store[:0]) {
		if !e.Stable && e.Height > 0 && e.roll > start == back && e.rise > g.rise(s) {
			return SettlesInAnotherRest
		}
	}
	if back {
		return GoesOverBackwards
	}
	return GoesOverForwards
}

// force returns what the floor gives the chair per kg of its mass at an instant of a
// swing: forward along the floor and square to it, m/s².
func (s *stretch) force(m instant) (forward, normal float64) {
	g := s.rig.Floor.FreeFall()
	mass := s.rig.Body.Mass
	inertia := s.rig.inertia(m.stance)
	square := 2 * mass * g * m.fallen / inertia // rate squared
	speeding := -mass * (m.ahead*m.radius*square + g*s.arm(m.stance)) / inertia
	forward = -(m.height*speeding + m.ahead*square) + g*s.sin
	normal = g*s.cos + m.ahead*speeding + (m.radius-m.height)*square
	return forward, normal
}

// friction returns the largest |F|/N from a turning point to the rest,
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

// LargestRelease returns the largest tilts from the rest of b (rad, both ≥ 0), back and forward, from which a rig
// that loses nothing comes back when it is let go: less than the margin on that side, and not so high that it carries
// over the hilltop on the other. A side without a hilltop is infinite.
func (r Rig) LargestRelease(b Balance) (back, forward float64) {
	b.mustRest()
	return r.largestRelease(b, 1), r.largestRelease(b, -1)
}

func (r *Rig) largestRelease(b Balance, side int) float64 {
	near, far := b.Back, b.Forward
	if side < 0 {
		near, far = far, near
	}
	limit := math.Inf(1)
	if near.Exists() {
		limit = near.Angle
	}
	if !far.Exists() || near.Exists() && far.Lift >= near.Lift {
		return limit
	}
	roll := r.rising(b.Rest, side, far.Lift, b.Rest.roll+float64(side)*limit)
	return math.Abs(roll - b.Rest.roll)
}

// LargestRate returns the largest rate at the rest of b (rad/s), back and forward, from which a rig that loses
// nothing does not go over the hilltop ahead: ½·J·ω² = m·g·lift. It is infinite on a side without one.
func (r Rig) LargestRate(b Balance) (back, forward float64) {
	b.mustRest()
	inertia := r.inertia(r.stand(touching(r.Profile, b.Rest.roll)))
	over := func(m Margin) float64 {
		if !m.Exists() {
			return math.Inf(1)
		}
		return math.Sqrt(2 * m.Work / inertia)
	}
	return over(b.Back), over(b.Forward)
}
