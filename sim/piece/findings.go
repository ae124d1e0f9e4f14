package piece

import (
	"rockerwright/rocker"
	"rockerwright/sim/readings"
)

// Findings are what readings say of a finished piece.
type Findings struct {
	Result       *readings.Result // nil where it was not weighed
	UsualInertia bool             // no rocks were timed, or they do not tell it (Result.Untold); Result.Body has that of the drawn piece
	Curve        *Curve           // nil where no rises were read
	Edge         rocker.Profile
}

// Examine works out what the readings of a design say, and how surely. The error is a
// [*KeyError].
func Examine(d Design) (Findings, error) {
	var f Findings
	var err error
	if f.Edge, f.Curve, err = d.profile(); err != nil {
		return f, err
	}
	if !d.Measured.weighed() {
		if f.Curve == nil {
			return f, &KeyError{Key: "measured", Reason: "nothing was read of this piece: write the readings of the measuring sheet under [measured]", Example: "[measured] weight = 26"}
		}
		return f, nil
	}
	people, err := d.everybody()
	if err != nil {
		return f, err
	}
	h, err := d.measured(f.Edge, people)
	if err != nil {
		return f, err
	}
	f.Result, f.UsualInertia = h.result, h.usualInertia
	return f, nil
}
