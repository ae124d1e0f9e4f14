package motion

import (
	"math"

	"rockerwright/sim"
)

// Losses take energy from a rock. The zero Losses take none but at flats.
type Losses struct {
	Rolling float64 // lever of the rolling resistance, m: a couple b·m·g·cos α against the motion
	Viscous float64 // couple for each rad/s, N·m·s
}

// HalvesIn returns the viscous loss with which small rocks of a balance halve in n whole
// rocks, N·m·s: amplitudes fall as exp(−c·t/2J), so c = 2·J·ln 2/(n·T₀), J at the rest.
// It is NaN without a period, and for n not above zero.
func HalvesIn(r sim.Rig, b sim.Balance, n float64) float64 {
	if !(n > 0) {
		return math.NaN()
	}
	return 2 * r.Inertia(b.Rest.Tilt) * math.Ln2 / (n * b.Period)
}
