package body

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// Join returns the bodies held together as one. Its centre is the mean of their
// centres weighted by mass, its inertia the sum of theirs about that centre:
//
//	m = Σ mᵢ   C = Σ mᵢCᵢ / m   I = Σ (Iᵢ + mᵢ·|Cᵢ − C|²)
//
// A body without mass adds its inertia, wherever it is. A hole is a body of mass
// and inertia below zero (see [Body.Scaled]). Where the masses come to zero there
// is no such mean: Centre is then that of the heaviest body, or the origin if none
// has mass, and Inertia is about it. Join of nothing is the zero Body.
//
// Centres are taken from that of the heaviest body, so that bodies far from the
// origin lose nothing to rounding beyond what their own centres have lost.
func Join(bodies ...Body) Body {
	var whole, heaviest Body
	for _, b := range bodies {
		whole.Mass += b.Mass
		whole.Inertia += b.Inertia
		if math.Abs(b.Mass) > math.Abs(heaviest.Mass) {
			heaviest = b
		}
	}
	var offset r2.Vec // of the whole's centre from that of the heaviest
	if whole.Mass != 0 {
		for _, b := range bodies {
			share := b.Mass / whole.Mass
			offset = r2.Add(offset, r2.Scale(share, r2.Sub(b.Centre, heaviest.Centre)))
		}
	}
	for _, b := range bodies {
		arm := r2.Sub(r2.Sub(b.Centre, heaviest.Centre), offset)
		whole.Inertia += b.Mass * r2.Norm2(arm)
	}
	whole.Centre = r2.Add(heaviest.Centre, offset)
	return whole
}
