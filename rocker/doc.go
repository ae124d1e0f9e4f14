// Package rocker describes the curve a chair rocks on.
//
// A [Profile] is the floor edge of a rocker, drawn as a chain of arcs from nose to tail. A tip and a corner are arcs
// of radius zero, a flat is a jump of the contact at one tilt, a hollow is bridged. It is read through its support
// function h(θ), the distance from the origin to the floor when the chair is tilted by θ. The floor then lies towards
// u(θ) = (−sin θ, −cos θ), and
//
//	contact point        p(θ) = h·u + h′·u′
//	radius of curvature  ρ(θ) = h + h″ ≥ 0
//
// # Chair frame
//
// Lengths are metres and angles radians. x points forward, the way the sitter faces, y points up, and the origin is
// where the floor edge touches a level floor when the piece stands as drawn, at tilt 0. Tilt θ > 0 leans back:
// counter-clockwise with the front to the right, so the contact moves to the tail, towards −x.
package rocker
