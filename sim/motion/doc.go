// Package motion follows a rig of package sim through time: let go, started, pushed,
// with losses, until it settles, goes over, or the floor lets go.
//
// On one arc the motion is J·φ̈ + m·H′ρ·φ̇² + m·g·Z = Q (package sim names the letters;
// Q are pushes and losses). Each step is a Taylor series in time, of order 20: with
// s = sin δ and v = 1 − cos δ for the turn δ since the step began,
//
//	s˙ = (1 − v)·φ̇,  v˙ = s·φ̇
//	H = H₁ + (R − H₁)v + H′₁s,  H′ = H′₁(1 − v) + (R − H₁)s,  J = J₁ + 2mR(H − H₁)
//
// so all coefficients follow from those before by products of series (derived here: the addition theorems of sine and
// cosine, and H² + H′² = const + 2RH on an arc). The step is as long as the last coefficients allow, and ends at
// every joint, tip and flat, at every turning point, and where a push ends; these are roots of its polynomial, found
// to rounding. A corner is an arc of radius zero.
//
// SI units and radians; tilt, rate and moments are + back.
package motion
