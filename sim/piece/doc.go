// Package piece is a piece of rocking furniture as its maker draws it.
//
// A [Design] holds plain values. It gives the floor edge, the mass of the piece and how the
// seat is carried on the rockers. [Measures] is the one table of what a maker can change.
//
// # Two frames
//
// Seat, back, arms, parts and people are drawn in the seat frame, the rockers in the rocker frame; as drawn the two
// are one, the chair frame of package rocker. Sliding moves one against the other ([Carry]).
//
// SI units and radians throughout.
package piece
