// Package piece is a piece of rocking furniture as its maker draws it, and what is
// asked of it.
//
// A [Design] holds plain values. [Check] turns it into loads, the piece alone and
// with each person in each posture, asks package sim about every one, and returns a
// [Report] of plain values. [Measures] is the one table of what a maker can change.
//
// # Two frames
//
// Seat, back, arms, parts and people are drawn in the seat frame, the rockers in the
// rocker frame; as drawn the two are one, the chair frame of package rocker. Sliding
// the chair along its rockers moves one against the other, rigidly: people are placed
// once and then carried.
//
// SI units and radians throughout.
package piece
