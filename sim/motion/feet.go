package motion

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/root"
)

// Feet are feet that push on the floor from the start until the legs are stretched, or the piece turns or stays: for all
// that time with the force that a bathroom scale under them would show, which is more than legs do. Where the feet stand
// matters, not which way they push: along the floor they have no lever about where the rocker touches.
type Feet struct {
	Force float64 // square to the floor, N; zero is none
	At    float64 // where they stand along the floor, forward from where the low point touches as drawn, m
	Hips  r2.Vec  // chair frame, m
	Ankle float64 // height of the ankles over the floor, m
	Reach float64 // from the hips to the ankles where the legs are stretched, m
}

// stretches returns when in a span of the flight the legs are stretched, and whether they are at its end.
func (m *run) stretches(span float64) (float64, bool) {
	at := func(t float64) float64 { return m.stretched(m.flight.turn.at(t)) }
	if !m.treading || at(span) < 0 {
		return span, false
	}
	return root.Between(at, 0, span, 0), true
}

// stretched returns by how much the hips are too far from the ankles for the feet to push, a turn on from now on the arc
// in touch, m.
func (m *run) stretched(turn float64) float64 {
	b, roll := m.bearing()
	up, ahead, _ := b.Above(m.feet.Hips, roll+turn)
	return math.Hypot(ahead-b.RolledAt(roll+turn)-m.feet.At, up-m.feet.Ankle) - m.feet.Reach
}

// stopsTreading ends the push of the feet, if they push.
func (m *run) stopsTreading() {
	if m.treading {
		m.event(FeetEnd)
		m.treading = false
	}
}
