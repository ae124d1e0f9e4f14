// Package validation holds cases with known answers, each with the source of the answer, computed through the same
// public API that the product uses. [Cases] is the one table; go test asserts every row, and the command rockerwright
// proof prints them on anyone's machine.
//
// # Checks that can fail
//
// A test makes each ingredient wrong in turn, by a thousandth or by leaving it out, and
// holds that a case named here turns red:
//
//	radius too large by 0.1 %          rolling halves/solid half cylinder
//	centre too high by 0.1 %           rolling halves/half shell
//	inertia too large by 0.1 %         rolling halves/solid hemisphere
//	gravity too large by 0.1 %         pendulum/simple, small
//	m·H′·ρ·θ̇² left out                 finite rock/from 30 degrees
//	inertia frozen at the rest         finite rock/from 20 degrees
//	front and back swapped             going over/tilt
//	slope left out                     slope/off-centre, 8 degrees
//
// Lengths are metres, angles radians, g is the standard 9.80665 m/s².
package validation
