package words

import (
	"fmt"
	"math"
	"slices"

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

// ranked returns the limits with those that fail first, then those that are nearest to
// it. Of a load that does not rest only that is listed, of one that does all else.
func (v voice) ranked(limits []check.Limit) []check.Limit {
	var list []check.Limit
	for _, l := range limits {
		if l.Name == "rest" && l.Holds || l.Name != "rest" && math.IsNaN(l.Got) {
			continue
		}
		list = append(list, l)
	}
	slices.SortStableFunc(list, func(a, b check.Limit) int {
		switch x, y := reserve(a), reserve(b); {
		case x < y:
			return -1
		case x > y:
			return 1
		}
		return 0
	})
	return list
}

// foremost returns the limits for a first page: of each that fails the load on which it fails
// most, for the verdict names all loads; then the nearest of those that hold, as there is room.
func (v voice) foremost(limits []check.Limit, remarks remarks) []check.Limit {
	var list []check.Limit
	told := map[string]bool{}
	for _, l := range v.ranked(limits) {
		switch {
		case !l.Holds && !told[l.Name], l.Holds && (len(list) == 0 || remarks > oneLimit && len(list) < 3):
			list = append(list, l)
			told[l.Name] = true
		}
	}
	return list
}

// reserve returns by how much a limit holds, as a part of it; below zero it does not.
func reserve(l check.Limit) float64 {
	switch {
	case l.Name == "rest":
		return math.Inf(-1)
	case !math.IsNaN(l.AtMost):
		return 1 - l.Got/l.AtMost
	}
	return l.Got/l.AtLeast - 1
}

// limitTable returns limits as a table: want, got, whose.
func (v voice) limitTable(limits []check.Limit) *Table {
	t := &Table{Caption: "What we ask of it", Head: []string{"What we ask", "want", "got", "whose"}}
	for _, l := range limits {
		t.Rows = append(t.Rows, v.limitRow(l))
	}
	if len(limits) == 0 {
		t.Rows = append(t.Rows, Row{Cells: []string{"that it stands", "yes", "yes", check.Physics}})
	}
	return t
}

func (v voice) limitRow(l check.Limit) Row {
	verdict := "ok"
	if !l.Holds {
		verdict = "NO"
	}
	name := cutTo(plain(l.Load), 30) + ", " + v.limitName(l.Name)
	if l.Name == "rest" {
		name = cutTo(plain(l.Load), 30) + " stands"
		return Row{Cells: []string{name, "a rest", "none", l.Basis + "  " + verdict}, Bad: true}
	}
	return Row{Cells: []string{name, v.wanted(l), v.got(l), l.Basis + "  " + verdict}, Bad: !l.Holds}
}

// got returns what a limit has. Where rounding to the shop's step would make a failing
// value look like the one asked, it is given finer.
func (v voice) got(l check.Limit) string {
	want := l.AtLeast
	if math.IsNaN(want) {
		want = l.AtMost
	}
	text := v.shop(l.Got, l.Kind)
	if l.Holds || text != v.shop(want, l.Kind) {
		return text
	}
	return quantity.Fine(l.Got, l.Kind, v.units)
}
