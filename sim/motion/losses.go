package motion

import (
	"math"

	"rockerwright/sim"
)

// Losses take energy from a rock. The zero Losses take none but at flats.
type Losses struct {
	Rolling float64 // lever b of the rolling resistance, m: a couple b·m·g·cos α against the motion
	Viscous float64 // viscous damping: a couple for each rad/s, N·m·s
}

// HalvesIn returns the viscous loss with which small rocks of a balance halve in n whole rocks, N·m·s: amplitudes
// fall as exp(−c·t/2J), so c = 2·J·ln 2/(n·T₀), J at the rest. It is NaN without a period, and for n not above zero.
func HalvesIn(r sim.Rig, b sim.Balance, n float64) float64 {
	if !(n > 0) {
		return math.NaN()
	}
	return 2 * r.Inertia(b.Rest.Tilt) * math.Ln2 / (n * b.Period)
}

// cross takes the contact over the end of its arc, with a knock where a flat lies there; false ends the run.
//
// On a flat the contact jumps, and the impulse acts at the new contact: the angular momentum about it is kept (the
// textbook's plastic knock, as for the block of Housner, 1963),
//
//	φ̇₊/φ̇₋ = (I + m(H² + H′₋H′₊))/(I + m(H² + H′₊²))
//
// and where that is not above zero the rig does not roll on: it settles on the flat. The
// impulse along the floor over that square to it is |H(φ̇₊ − φ̇₋)/(H′₊φ̇₊ − H′₋φ̇₋)|.
func (m *run) cross(side float64) bool {
	b, roll := m.bearing()
	g := m.rig.Body
	height, before, _ := b.Above(g.Centre, roll)
	flat := b.Flat
	m.pass(side)
	next, at := m.bearing()
	if side < 0 {
		flat = next.Flat
	}
	if flat == 0 {
		m.event(Joint)
		return true
	}
	_, after, _ := next.Above(g.Centre, at)
	ratio := (g.Inertia + g.Mass*(height*height+before*after)) / (g.Inertia + g.Mass*(height*height+after*after))
	rate := m.rate * max(0, ratio)
	along, square := height*(rate-m.rate), after*rate-before*m.rate
	if needs := math.Abs(along / square); m.rate != 0 {
		m.trace.Friction = max(m.trace.Friction, needs)
		if limit := m.rig.Floor.Friction; limit > 0 && needs > limit {
			m.trace.Needs = needs
			return m.slipped()
		}
	}
	m.rate = rate
	m.event(Knock)
	if ratio <= 0 || math.Abs(rate) < settled && m.held(side) {
		return m.rests()
	}
	return true
}

// settled is the rate below which a piece on a flat or a joint rest stays there, rad/s:
// a top of a back that moves by a thousandth of a millimetre a second.
const settled = 1e-6

// held reports whether the arcs on both sides of the joint just passed bring the rig back to it.
func (m *run) held(side float64) bool {
	there := m.arc(0)
	return side*there.moment() < 0 && side*m.beyond(-side).moment() > 0
}

// beyond returns the equation of motion at rest on the next arc to one side.
func (m *run) beyond(side float64) *arc {
	other := *m
	other.pass(side)
	a := other.arc(0)
	return &a
}

// pass takes the contact to the next arc on one side.
func (m *run) pass(side float64) {
	n := m.rig.Profile.Bearings()
	switch m.index += int(side); {
	case m.index == n:
		m.index, m.shift = 0, m.shift+2*math.Pi
	case m.index < 0:
		m.index, m.shift = n-1, m.shift-2*math.Pi
	}
}
