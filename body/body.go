package body

import "gonum.org/v1/gonum/spatial/r2"

// Body is a rigid body in the plane of rocking. The zero Body weighs nothing
// and is the identity of [Join].
type Body struct {
	Mass    float64 // kg
	Centre  r2.Vec  // centre of mass, m
	Inertia float64 // about Centre and the axis of rocking, kg·m²
}

// About returns the moment of inertia about p (m) and the axis of rocking, kg·m²,
// by the parallel-axis theorem I + m·|p − Centre|².
func (b Body) About(p r2.Vec) float64 {
	return b.Inertia + b.Mass*r2.Norm2(r2.Sub(p, b.Centre))
}

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
