package check

import (
	"rockerwright/rocker"
	"rockerwright/sim/piece"
	"rockerwright/sim/readings"
)

// Findings are what readings say of a finished piece.
type Findings struct {
	Result       *readings.Result // nil where it was not weighed
	UsualInertia bool             // no rocks were timed, or they do not tell it (Result.Untold); Result.Body has that of the drawn piece
	Curve        *piece.Curve     // nil where no rises were read
	Edge         rocker.Profile
}

// Examine works out what the readings of a design say, and how surely. The error is a
// [*piece.KeyError].
func Examine(d piece.Design) (Findings, error) {
	var f Findings
	var err error
	if f.Edge, f.Curve, err = d.Profile(); err != nil {
		return f, err
	}
	if !d.Measured.Weighed() {
		if f.Curve == nil {
			return f, &piece.KeyError{Key: "measured", Reason: "nothing was read of this piece: write the readings of the measuring sheet", Give: "measured"}
		}
		return f, nil
	}
	b := Balanced{Design: d, Edge: f.Edge}
	if b.people, err = everybody(d); err != nil {
		return f, err
	}
	err = b.weigh()
	f.Result, f.UsualInertia = b.read, b.UsualInertia
	return f, err
}
