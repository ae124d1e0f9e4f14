package words

import (
	"fmt"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
	"rockerwright/sim/trial"
)

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
