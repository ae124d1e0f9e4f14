package words

import (
	"fmt"

	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// remarks are how much of what --all says too is said on a first page: each leaves out one
// thing more than the next.
type remarks int

const (
	terse    remarks = iota // nor the cure of a limit that fails; many changes are counted
	noPush                  // nor what it takes to push it
	noLift                  // nor by how much its weight must lift
	noCause                 // nor what limits it
	noOthers                // nor what else to try
	oneLimit                // of the limits that hold only the nearest
	noGuess                 // nor what was estimated, nor what is worth a look
	everyRemark
)

// advice says what limits the piece, what to try next, what was estimated, and how far
// to trust it.
func (v voice) advice(a *trial.Answer, command Command, remarks remarks) []Line {
	r := &a.Report
	var lines []Line
	if text := v.cause(r.Cause); text != "" && remarks > noCause {
		lines = append(lines, Line{Text: "What limits it: " + text + "."})
	}
	if remarks > noOthers || r.Try != nil && remarks > terse {
		lines = append(lines, v.try(r, command))
	}
	for _, f := range of(a, trial.WorthALook) {
		if remarks == everyRemark {
			lines = append(lines, Line{Text: fmt.Sprintf("Worth a look: %s keeps %s before going %s.", plain(short(f.Load.Name)), v.degrees(f.Got), v.Forward)})
		}
	}
	lines = append(lines, v.warnings(a)...)
	lines = append(lines, v.untimed(r)...)
	lines = append(lines, v.unfits(a)...)
	if s := r.Spread; s.Estimated && remarks == everyRemark {
		lines = append(lines, Line{Text: fmt.Sprintf("Estimated, not given: how the %s's %s is spread (moves rests %s).", v.piece, v.with(r.Design.Piece.Mass, quantity.Mass), v.degrees(max(s.EmptyRest, s.Rest)))})
	}
	return append(lines, v.foot())
}

// cause says what limits the worst of the limits.
func (v voice) cause(c check.Cause) string {
	switch c {
	case check.TailLength:
		return v.tailLength
	case check.NoseLength:
		return v.noseLength
	case check.CurveItself:
		return "the curve itself (its radius, against the height of the weight)"
	case check.RestsTilted:
		return "how far it tilts at rest (a larger radius, or the weight nearer the middle)"
	}
	return ""
}

// A Command returns the line to type for a design with one more change to it, or with
// an option where value is empty.
type Command func(key, value string) string

// try gives one change as a line to type, or what to look at next.
func (v voice) try(r *check.Report, command Command) Line {
	t := r.Try
	switch {
	case t == nil && r.Holds():
		if r.Design.Rocker.Radius > 0 {
			return Line{Text: "Try next, other curves:", Type: command("rocker.radius", v.radii(r.Design.Rocker.Radius))}
		}
		return Line{Text: "Try next, every load:", Type: command("--all", "")}
	case t == nil:
		return Line{Text: "No one measure alone mends this. Look at every load:", Type: command("--all", "")}
	}
	return Line{Text: fmt.Sprintf("Try next: %s %s%s.", t.Label, v.with(t.Value, t.Kind), v.gained(t)), Type: command(t.Key, v.typed(t.Value, t.Kind))}
}

// gained says what the tried change does to the worst limit and to the tape.
func (v voice) gained(t *check.Try) string {
	if t.Limit.Name == "rest" {
		return fmt.Sprintf(" (%s tip %s off the floor)", v.tail, v.with(t.Tape.TailTip, quantity.Length))
	}
	return fmt.Sprintf(" (%s: %s becomes %s; %s tip %s off the floor)", plain(short(t.Limit.Load)),
		v.shop(t.Limit.Got, t.Limit.Kind), v.with(t.Got, t.Limit.Kind), v.tail, v.with(t.Tape.TailTip, quantity.Length))
}
