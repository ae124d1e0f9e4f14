// Package layout is the bench's side of a design: what to draw, bend, saw and check so that the piece that was checked
// is the piece that stands there.
//
// [Of] turns a [piece.Design] into a [Layout]: the rocker of package bench with its stations and trammel, the strips and
// the form or the board, the legs on it, coopered panels, the cut list; and, by asking [check.Balance] again with a leg
// cut or the seat slid, what to do when the level shows something else than the design says.
//
// It is apart from package piece, for which no strip, saw cut or board matters, and because it needs bench as well. SI
// units and radians in the chair frame of package rocker; rounding is left to who prints.
package layout
