// Package sim computes how one rigid body behaves on one rocker on one floor: where it rests, how near it is to going
// over, how long a rock takes, and what it asks of the floor.
//
// A [Rig] is read at a tilt θ, the angle against the vertical, + back. On a floor that rises by α to the front, φ = θ
// − α is the roll along the edge, the argument of the support function. With G the centre of mass, s the length
// rolled over, and the frame and u of package rocker,
//
//	height of G over the floor   H = h − G·u
//	G ahead of the contact       H′ = h′ − G·u′,   H″ = ρ − H
//	height of G, plumb           E = H cos α + (H′ − s) sin α
//	righting arm                 Z = dE/dφ = H′ cos α − H sin α
//	its slope                    Z′ = H″ cos α − H′ sin α (at a rest the steadiness, a metacentric height)
//	inertia at the contact       J = I + m(H² + H′²)
//	motion                       J φ̈ + m H′ρ φ̇² + m g Z = 0
//	floor on the chair           F/m = −(H φ̈ + H′φ̇²) + g sin α   (+ forward)
//	                             N/m = g cos α + H′φ̈ + H″φ̇²     (+ up)
//
// The last two follow from the path of G: rolling by dφ takes it H dφ to the rear
// and H′dφ up, both against the floor. On a level floor Z = H′ and E = H.
//
// SI units and radians throughout.
package sim
