package body

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// Body is a rigid body in the plane of rocking. The zero Body weighs nothing and is the identity of [Join].
type Body struct {
	Mass    float64 // kg
	Centre  r2.Vec  // centre of mass, m
	Inertia float64 // about Centre and the axis of rocking, kg·m²
}

// About returns the moment of inertia about p (m) and the axis of rocking, kg·m²,
// by the parallel-axis theorem I + m·|p − Centre|².
func (b Body) About(p r2.Vec) float64 { return b.Inertia + b.Mass*r2.Norm2(r2.Sub(p, b.Centre)) }

// Moved returns b carried along by the given vector (m), without a turn.
func (b Body) Moved(by r2.Vec) Body {
	b.Centre = r2.Add(b.Centre, by)
	return b
}

// Turned returns b turned by an angle (rad, above zero leans back) about a point
// (m). Its inertia stays, for it turns in the plane.
func (b Body) Turned(angle float64, about r2.Vec) Body {
	b.Centre = r2.Rotate(b.Centre, angle, about)
	return b
}

// Scaled returns b with mass and inertia times factor: the same shape in another
// density. A factor below zero makes it a hole, to be joined to what it is cut from.
func (b Body) Scaled(factor float64) Body {
	b.Mass *= factor
	b.Inertia *= factor
	return b
}

// Join returns the bodies held together as one. Its centre is the mean of their
// centres weighted by mass, its inertia the sum of theirs about that centre:
//
//	m = Σ mᵢ   C = Σ mᵢCᵢ / m   I = Σ (Iᵢ + mᵢ·|Cᵢ − C|²)
//
// A body without mass adds its inertia, wherever it is. A hole is a body of mass and inertia below zero (see
// [Body.Scaled]). Where the masses come to zero there is no such mean: Centre is then that of the heaviest body, or
// the origin if none has mass, and Inertia is about it. Join of nothing is the zero Body.
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
