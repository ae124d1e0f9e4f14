// Package bench turns a rocker and its legs into what the bench needs: one rocker as stations,
// trammel, strips, form and board; the angles of legs; coopered panels.
//
// A [Rocker] is a floor edge with its depth and ends. Its outline is a [Path] of straight and circular strokes,
// from which all else is read. Lengths are metres and angles radians, in the chair frame of package rocker,
// with z outwards from its middle plane for a leg; headings are counter-clockwise from x. Rounding to what a
// tape and a bevel gauge show is left to the caller.
//
// What cannot be made has an error that says what: an [*OutlineError] of the rocker's drawing, a
// [*SizeError] of one measure, a [*MissError] of a leg.
package bench
