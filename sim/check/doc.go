// Package check is who sits in a design, and what is asked of it.
//
// [Check] turns a [piece.Design] into loads, the piece alone and with each person in each
// posture, asks package sim about every one, and returns a [Report] of plain values: where
// each rests, how near it is to going over, whether the limits hold, whom it fits.
// [Balance] is the first part of it, for who asks of many designs.
//
// People are placed in the seat frame once and then carried with it. SI units and radians throughout.
package check
