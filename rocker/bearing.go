package rocker

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// Down returns u(θ) = (−sin θ, −cos θ), the direction to the floor seen from the
// chair frame at tilt θ, and its derivative u′(θ), along the floor to the tail.
func Down(tilt float64) (u, du r2.Vec) {
	sin, cos := math.Sincos(tilt)
	return r2.Vec{X: -sin, Y: -cos}, r2.Vec{X: -cos, Y: sin}
}

// A Bearing is an arc of the edge that can touch the floor, with the tilts
// between which it does. A corner or a tip is a Bearing of radius zero.
//
// It is held by one of its own points rather than by its centre, so that a radius of 100 km loses no digits.
type Bearing struct {
	From, To float64 // the tilts between which the floor touches this arc, rad
	Radius   float64 // m, ≥ 0
	At       r2.Vec  // the contact point at tilt Angle, chair frame, m
	Angle    float64 // rad
	Rolled   float64 // length rolled over at tilt Angle, m, + towards the tail
	Flat     float64 // length of the flat between this Bearing and the next, m

	// The floor at From and at To, so that a search over the joints needs no trigonometry.
	First, Last Joint

	down, along r2.Vec // u and u′ at Angle
}

// A Joint is the contact at one end of a Bearing.
type Joint struct {
	Point       r2.Vec // contact point, chair frame, m
	Down, Along r2.Vec // u and u′ at this tilt
}

// Support returns h, h′ and h″ at the given tilt, which must lie in the range of b:
//
//	h = p·u + R(1 − cos δ),  h′ = p·u′ + R sin δ,  h″ = R − h,  δ = tilt − Angle,
//
// p being At; 1 − cos δ is taken as 2 sin²(δ/2).
func (b *Bearing) Support(tilt float64) (h, dh, ddh float64) {
	return b.Above(r2.Vec{}, tilt)
}

// Above returns the height H of the point g over the floor at the given tilt, and its first two derivatives:
// H = h − g·u, H′ is the distance of g ahead of the contact, H″ = R − H.
func (b *Bearing) Above(g r2.Vec, tilt float64) (height, ahead, curve float64) {
	half, cosHalf := math.Sincos((tilt - b.Angle) / 2)
	sin, versed := 2*half*cosHalf, 2*half*half
	p := r2.Sub(b.At, g)
	down, along := r2.Dot(p, b.down), r2.Dot(p, b.along) // p·u and p·u′ at Angle, then turned by δ
	height = down + along*sin + (b.Radius-down)*versed
	ahead = along*(1-versed) + (b.Radius-down)*sin
	return height, ahead, b.Radius - height
}

// Contact returns the point that touches the floor at the given tilt, in the range of b.
func (b *Bearing) Contact(tilt float64) r2.Vec {
	return along(b.At, b.Angle, b.Radius, b.Radius*(tilt-b.Angle))
}

// RolledAt returns the length of edge that has passed over the floor at the given tilt, m, + towards the tail.
func (b *Bearing) RolledAt(tilt float64) float64 { return b.Rolled + b.Radius*(tilt-b.Angle) }

// Centre returns the centre of the arc, chair frame, m.
func (b *Bearing) Centre() r2.Vec { return r2.Sub(b.At, r2.Scale(b.Radius, b.down)) }

// joint returns the contact at the given tilt.
func (b *Bearing) joint(tilt float64) Joint {
	u, du := Down(tilt)
	return Joint{Point: b.Contact(tilt), Down: u, Along: du}
}
