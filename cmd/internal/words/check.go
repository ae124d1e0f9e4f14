package words

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/size"
	"rockerwright/sim/trial"
)

// Check returns the sheet of one answer. source is the file as its maker calls it,
// command what to type for a change to it, changes what was changed for this answer.
// Where its first page would be longer than a page, what --all says too gives way, one
// thing after the other; never a hazard, a misfit, a limit that fails or a caution, for which
// the page grows.
func Check(a trial.Answer, source string, command Command, changes []string) sheet.Sheet {
	r := &a.Report
	v := voiceOf(r.Design)
	assemble := func(remarks remarks) sheet.Sheet {
		first := []sheet.Block{{Lines: v.answer(&a, changes, remarks)}}
		return sheet.Sheet{Title: v.title(r.Design), Source: source, Blocks: slices.Concat(first, v.under(&a, command, remarks), v.everything(a))}
	}
	s := assemble(everyRemark)
	for less := everyRemark - 1; !s.Fits() && less >= terse; less-- {
		s = assemble(less)
	}
	return s
}

// answer returns the verdict, and over it what was changed for it.
func (v voice) answer(a *trial.Answer, changes []string, remarks remarks) []sheet.Line {
	return append(changed(changes, remarks == terse), v.verdict(a)...)
}

// under returns what stands under the verdict: tape, readings, limits and advice.
func (v voice) under(a *trial.Answer, command Command, remarks remarks) []sheet.Block {
	return []sheet.Block{
		{Lines: []sheet.Line{v.tape(a.Report)}},
		v.readings(a.Report, remarks),
		{Table: v.limitTable(foremost(a.Limits, remarks))},
		{Lines: v.advice(a, command, remarks)},
	}
}

// changed says what was changed for an answer; where that must be short, of more than two how many.
func changed(changes []string, counted bool) []sheet.Line {
	if len(changes) == 0 {
		return nil
	}
	said := strings.Join(changes, "; ")
	if counted && len(changes) > 2 {
		said = fmt.Sprintf("%d entries", len(changes))
	}
	return []sheet.Line{{Label: "CHANGED:", Text: said + ". The file is as it was."}}
}

// title returns the heading: what it is, on what it rocks, how it was drawn.
func (v voice) title(d piece.Design) string {
	curve := v.length(d.Rocker.Radius) + " rocker"
	switch {
	case len(d.Measured.Left)+len(d.Measured.Right) > 0:
		curve = "measured rocker"
	case len(d.Rocker.Rises) > 0:
		curve = "rocker by rises"
	case len(d.Rocker.Points) > 0:
		curve = "rocker by points"
	case len(d.Rocker.Arcs) > 0:
		curve = "rocker of " + counted(len(arcsOf(d.Rocker)), "arc")
	}
	return v.name(d) + " · " + curve + " · drawn in " + v.inUnits("inches", "millimetres")
}

// name returns what a heading calls a design.
func (v voice) name(d piece.Design) string { return brief(cmp.Or(d.Title, "Untitled "+v.piece)) }

// arcsOf returns the arcs of a rocker from nose to tail, without flats and corners.
func arcsOf(r piece.Rocker) []piece.Arc {
	if len(r.Arcs) == 0 {
		return []piece.Arc{{Radius: r.Radius, Length: r.Nose + r.Tail}}
	}
	return slices.DeleteFunc(slices.Clone(r.Arcs), func(a piece.Arc) bool { return a.Radius == 0 })
}

// tape says what can be tested with a tape on the drawing.
func (v voice) tape(r check.Report) sheet.Line {
	return sheet.Line{Label: "Rocker", Text: fmt.Sprintf(
		"tips %s (%s) and %s (%s) off the floor, %s tip to tip. If your drawing says otherwise, stop here.",
		v.bare(r.Tape.TailTip), v.tail, v.length(r.Tape.NoseTip), v.nose, v.length(r.Tape.TipToTip))}
}

// Held says in one line whether it stands and all limits hold, and if not which is the worst.
func Held(a trial.Answer) sheet.Line {
	v := voiceOf(a.Design)
	asked, broken := len(ranked(a.Limits)), of(&a, trial.Falls, trial.Fails)
	switch {
	case len(broken) > 0:
		cells := v.limit(*broken[0].Limit)
		return sheet.Wrong(fmt.Sprintf("%d of %s: NO. First: %s; want %s, got %s.", len(broken), counted(asked, "limit"), cells[0], cells[1], cells[2]))
	case asked == 0:
		return sheet.Line{Text: "It stands; nothing more is asked of it."}
	case asked == 1:
		return sheet.Line{Text: "The one limit holds."}
	}
	return sheet.Line{Text: fmt.Sprintf("All %d limits hold.", asked)}
}

// Became says in what a motion ended.
func Became(r trial.Rocking) string {
	return upperFirst(brief(r.Load.Name)) + ": " + voiceOf(r.Report.Design).became(r).Text
}

// DoesNotStand says why a load cannot be rocked.
func DoesNotStand(r check.Report, l *check.Load) string {
	return "It cannot be rocked: " + voiceOf(r.Design).whyNot(l) + "."
}

// Found says which radius keeps a feel.
func Found(k size.Kept) string {
	return fmt.Sprintf("%s: radius %s at the rest, all radii times %.2f.",
		upperFirst(k.Way.String()), voiceOf(k.Design).length(k.Feel.Radius), k.Scale)
}

// NoRadius says that no radius keeps a feel.
func NoRadius(k size.Kept) string { return upperFirst(k.Way.String()) + ": no radius does that here." }

// Sides returns what the sides to which a piece rocks are called, that of + first.
func Sides(d piece.Design) [2]string { return [2]string{d.Ways().Back, d.Ways().Forward} }
