package motion

import (
	"cmp"
	"math"

	"rockerwright/rocker/root"
	"rockerwright/sim"
)

// looks is into how many parts a step is cut, at whose ends the floor is looked at.
const looks = 4

// slips returns when in the span the floor first lets go, and whether it does: |F|/N
// above its friction, or N not above zero. It keeps the largest |F|/N.
func (m *run) slips(a *arc, span float64) (float64, bool) {
	limit := cmp.Or(m.rig.Floor.Friction, math.MaxFloat64) // without one it must not pull
	before := 0.0
	for i := range looks + 1 {
		t := span * float64(i) / looks
		needs := m.needs(a, t)
		if needs <= limit {
			m.trace.Friction = max(m.trace.Friction, needs)
			before = t
			continue
		}
		if i > 0 { // found between two looks
			_, t = root.Edge(func(t float64) bool { return m.needs(a, t) <= limit }, before, t, 0, 0)
			needs = m.needs(a, t)
		}
		m.trace.Needs = needs
		m.trace.Friction = max(m.trace.Friction, needs)
		return t, true
	}
	return 0, false
}

// slipped ends the run: the floor lets go.
func (m *run) slipped() bool {
	m.event(LetsGo)
	m.trace.End, m.trace.Outcome = Slipped, sim.FloorLetsGo
	return false
}

// needs returns |F|/N at a time of the flight; infinite where the floor would have to pull. With the acceleration of
// G along the floor and square to it from package sim, less the push,
//
//	F = −m(H·φ̈ + H′φ̇²) + m·g·sin α + push (to the rear),  N = m(g·cos α + H′φ̈ + H″φ̇²) − what the feet carry
//
// Feet that push back along the floor too, as they do, take from F what they push.
func (m *run) needs(a *arc, t float64) float64 {
	f := &m.flight
	turn, rate, speeding := f.turn.at(t), f.rate.at(t), f.speeding.at(t)
	half, cosHalf := math.Sincos(turn / 2)
	sin, versed := 2*half*cosHalf, 2*half*half
	c := a.radius - a.height
	height, ahead := a.height+c*versed+a.ahead*sin, a.ahead*(1-versed)+c*sin
	along := -a.mass*(height*speeding+ahead*rate*rate) + a.weight*a.sin + a.force
	normal := a.weight*a.cos + a.mass*(ahead*speeding+(a.radius-height)*rate*rate) - a.foot
	if normal <= 0 {
		return math.Inf(1)
	}
	return math.Abs(along) / normal
}

// watch keeps the least margin and the largest share of the lift at a turning point.
func (m *run) watch() {
	away := m.roll - m.rest
	for _, side := range [...]float64{1, -1} {
		margin := m.margin(side)
		if margin.Exists() {
			m.trace.Margin = min(m.trace.Margin, max(0, margin.Angle-side*away))
		}
	}
	margin := m.margin(away)
	switch {
	case !margin.Exists():
	case math.Abs(away) >= margin.Angle:
		m.trace.Lift = max(m.trace.Lift, 1)
	default:
		m.trace.Lift = max(m.trace.Lift, (m.rig.Rise(m.roll+m.rig.Floor.Slope)-m.rig.Rise(m.balance.Rest.Tilt))/margin.Lift)
	}
}

// margin returns the margin on one side, + back.
func (m *run) margin(side float64) sim.Margin {
	if side < 0 {
		return m.balance.Forward
	}
	return m.balance.Back
}

// hilltop returns the roll of the last hilltop on one side, +1 back or −1 forward; infinitely far
// where there is none.
func (m *run) hilltop(side float64) float64 {
	margin := m.margin(side)
	if !margin.Exists() {
		return side * math.Inf(1)
	}
	over := margin.Over - m.rig.Floor.Slope
	for side*(over-m.rest) < margin.Angle-sim.AtHilltop { // it is no nearer than the next hilltop
		over += side * 2 * math.Pi
	}
	return over
}

// over reports whether the rig, which moves to one side, has passed the last hilltop there, and ends the
// run if so. Let go on the hilltop itself it has not.
func (m *run) over(side float64) bool {
	beyond := side * (m.roll - m.hilltop(side))
	if !(beyond > 0 || beyond == 0 && m.rate != 0) {
		return false
	}
	m.event(Over)
	m.trace.End, m.trace.Outcome = WentOver, sim.GoesOverBackwards
	if side < 0 {
		m.trace.Outcome = sim.GoesOverForwards
	}
	m.trace.Margin, m.trace.Lift = 0, max(1, m.trace.Lift)
	return true
}

// settledIn returns Rocks where the rig settled in the well of its rest.
func (m *run) settledIn() sim.Outcome {
	away := m.roll - m.rest
	if margin := m.margin(away); margin.Exists() && math.Abs(away) > margin.Angle {
		return sim.SettlesInAnotherRest
	}
	return sim.Rocks
}
