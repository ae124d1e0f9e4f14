package words

import (
	"fmt"
	"strings"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// page is how many lines a first answer may have.
const page = 30

// Check returns the sheet of one answer. source is the file as its maker calls it,
// command what to type for a change to it, changes what was changed for this answer.
// Where its first page would be longer than a page, what --all says too gives way, one
// thing after the other; never a hazard, a misfit, a limit that fails or a caution, for which
// the page grows.
func Check(a trial.Answer, source string, command Command, changes []string) Sheet {
	r := &a.Report
	v := voiceOf(r.Design)
	assemble := func(remarks remarks) Sheet {
		s := Sheet{Title: v.title(r.Design), Source: source, Blocks: []Block{
			{Lines: v.answer(&a, changes, remarks)},
			{Lines: []Line{v.tape(*r)}},
			v.readings(*r, remarks),
			{Table: v.limitTable(v.foremost(r.Limits, remarks))},
			{Lines: v.advice(&a, command, remarks)},
		}}
		s.Blocks = append(s.Blocks, v.everything(a)...)
		return s
	}
	s := assemble(everyRemark)
	for less := everyRemark - 1; s.lines() > page && less >= terse; less-- {
		s = assemble(less)
	}
	return s
}

// answer returns the verdict, and over it what was changed for it.
func (v voice) answer(a *trial.Answer, changes []string, remarks remarks) []Line {
	answer := v.verdict(a)
	if len(changes) == 0 {
		return answer
	}
	said := strings.Join(changes, "; ")
	if remarks == terse && len(changes) > 2 {
		said = fmt.Sprintf("%d entries", len(changes))
	}
	return append([]Line{{Label: "CHANGED:", Text: said + ". The file is as it was."}}, answer...)
}

// title returns the heading: what it is, on what it rocks, how it was drawn.
func (v voice) title(d piece.Design) string {
	curve := v.with(d.Rocker.Radius, quantity.Length) + " rocker"
	if len(d.Measured.Left)+len(d.Measured.Right) > 0 {
		curve = "measured rocker"
	} else if len(d.Rocker.Rises) > 0 {
		curve = "rocker by rises"
	} else if len(d.Rocker.Points) > 0 {
		curve = "rocker by points"
	} else if len(d.Rocker.Arcs) > 0 {
		curve = "rocker of " + counted(arcs(d.Rocker), "arc")
	}
	drawn := "drawn in inches"
	if v.units == quantity.Metric {
		drawn = "drawn in millimetres"
	}
	return v.name(d) + " · " + curve + " · " + drawn
}

// name returns what a heading calls a design.
func (v voice) name(d piece.Design) string {
	if d.Title == "" {
		return "Untitled " + v.piece
	}
	return short(d.Title)
}

// arcs counts the arcs of a rocker, flats and corners not counted.
func arcs(r piece.Rocker) int {
	n := 0
	for _, a := range r.Arcs {
		if a.Radius != 0 {
			n++
		}
	}
	return n
}

// short returns a name cut to what a heading holds.
func short(name string) string {
	if runes := []rune(name); len(runes) > 40 {
		return string(runes[:39]) + "…"
	}
	return name
}

// tape says what can be tested with a tape on the drawing.
func (v voice) tape(r check.Report) Line {
	return Line{Label: "Rocker", Text: fmt.Sprintf(
		"tips %s (%s) and %s (%s) off the floor, %s tip to tip. If your drawing says otherwise, stop here.",
		v.shop(r.Tape.TailTip, quantity.Length), v.tail, v.with(r.Tape.NoseTip, quantity.Length), v.nose, v.with(r.Tape.TipToTip, quantity.Length))}
}
