package words

import (
	"fmt"
	"strings"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
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

// Held says in one line whether it stands and all limits hold, and if not which is the worst.
func Held(a trial.Answer) Line {
	v := voiceOf(a.Design)
	asked, broken := len(v.ranked(a.Limits)), of(&a, trial.Falls, trial.Fails)
	switch {
	case len(broken) > 0:
		cells := v.limitRow(*broken[0].Limit).Cells
		return Line{Text: fmt.Sprintf("%d of %s: NO. First: %s; want %s, got %s.", len(broken), counted(asked, "limit"), cells[0], cells[1], cells[2]), Bad: true}
	case asked == 0:
		return Line{Text: "It stands; nothing more is asked of it."}
	case asked == 1:
		return Line{Text: "The one limit holds."}
	}
	return Line{Text: fmt.Sprintf("All %d limits hold.", asked)}
}

// Became says in what a motion ended.
func Became(r trial.Rocking) string {
	v := voiceOf(r.Report.Design)
	return upperFirst(plain(short(r.Load.Name))) + ": " + v.became(r).Text
}

// DoesNotStand says why a load cannot be rocked.
func DoesNotStand(r check.Report, l *check.Load) string {
	return "It cannot be rocked: " + voiceOf(r.Design).whyNot(l) + "."
}

// Found says which radius keeps a feel.
func Found(k size.Kept) string {
	v := voiceOf(k.Design)
	return fmt.Sprintf("%s: radius %s at the rest, all radii times %.2f.", upperFirst(k.Way.String()), v.with(k.Feel.Radius, quantity.Length), k.Scale)
}

// NoRadius says that no radius keeps a feel.
func NoRadius(k size.Kept) string {
	return upperFirst(k.Way.String()) + ": no radius does that here."
}

// Sides returns what the sides to which a piece rocks are called, that of + first.
func Sides(d piece.Design) [2]string {
	v := voiceOf(d)
	return [2]string{v.Back, v.Forward}
}
