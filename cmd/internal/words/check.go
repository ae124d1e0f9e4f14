package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/body/person"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/size"
	"rockerwright/sim/trial"
)

// Check returns the sheet of one answer. source is the file as its maker calls it, command what to type for a
// change to it, changes what was changed for this answer. Where its first page would be longer than a page, what
// --all says too gives way, one thing after the other; never a hazard, a misfit, a limit that fails or a caution,
// for which the page grows.
func Check(a trial.Answer, source string, command Command, changes []string) sheet.Sheet {
	r := &a.Report
	w := wordingOf(r.Design)
	all := slices.Concat(everyLoad(w, *r), fits(w, &a),
		[]sheet.Block{{Title: "Every limit", All: true, Table: limitTable(w, &r.Balanced, ranked(r.Limits))}, pulls(w, *r)},
		survives(w, a), everySwing(w, *r),
		[]sheet.Block{{Title: "What this rests on", All: true, Lines: assumptions(w, *r)},
			{Title: "Cautions", All: true, Lines: cautions(w.phrases, *r)}})
	assemble := func(remarks remarks) sheet.Sheet {
		return sheet.Sheet{Title: title(&r.Balanced), Source: source, Blocks: slices.Concat(
			[]sheet.Block{{Lines: answer(w, &a, changes, remarks)}}, under(w, &a, command, remarks), all)}
	}
	s := assemble(everyRemark)
	for less := everyRemark - 1; !s.Fits() && less >= onlyFails; less-- {
		s = assemble(less)
	}
	return s
}

// answer returns the verdict, and over it what was changed for it.
func answer(w wording, a *trial.Answer, changes []string, remarks remarks) []sheet.Line {
	return append(changed(changes, remarks <= terse), verdict(w, a, remarks)...)
}

// under returns what stands under the verdict: tape, readings, the limits that fail and advice.
func under(w wording, a *trial.Answer, command Command, remarks remarks) []sheet.Block {
	blocks := []sheet.Block{{Lines: []sheet.Line{tape(w, a, remarks)}}, readingsBlock(w, a.Report, remarks)}
	failing := slices.DeleteFunc(ranked(a.Limits), func(l check.Limit) bool { return !l.Fails() || l.Name == "rest" })
	if len(failing) > 0 && remarks > noRows {
		blocks = append(blocks, sheet.Block{Table: limitTable(w, &a.Balanced, failing)})
	}
	return append(blocks, sheet.Block{Lines: advice(w, a, command, remarks)})
}

// changed says what was changed for an answer; where that must be short, of more than two how many.
func changed(changes []string, counted bool) []sheet.Line {
	said := strings.Join(changes, "; ")
	switch n := len(changes); {
	case n == 0:
		return nil
	case counted && n > 2:
		said = fmt.Sprintf("%d entries", n)
	}
	return []sheet.Line{{Label: "CHANGED:", Text: said + ". The file is as it was."}}
}

// title returns the heading: what it is, on what it rocks, how it was drawn.
func title(r *check.Balanced) string {
	d, w := r.Design, wordingOf(r.Design)
	curve := w.length(d.Rocker.Radius) + " rocker"
	switch {
	case r.Curve != nil && r.Curve.Drawn == nil:
		curve = "measured rocker"
	case len(d.Rocker.Rises) > 0:
		curve = "rocker by rises"
	case len(d.Rocker.Points) > 0:
		curve = "rocker by points"
	case len(d.Rocker.Arcs) > 0:
		curve = "rocker of " + counted(len(r.Arcs()), "arc")
	}
	return name(d) + " · " + curve + " · drawn in " + inUnits(w.units, "inches", "millimetres")
}

// name returns what a heading calls a design.
func name(d piece.Design) string { return brief(cmp.Or(d.Title, "Untitled "+phrasesOf(d).piece)) }

// tape says what can be tested with a tape on the drawing, and the two numbers of the trade.
func tape(w wording, a *trial.Answer, remarks remarks) sheet.Line {
	at := a.Seated()
	touches, tail, drawn := a.Trade(at)
	return sheet.Line{Label: "Rocker", Text: fmt.Sprintf(
		"tips %s (%s) and %s (%s) off the floor, %s tip to tip. If your drawing says otherwise, stop here.",
		w.bare(a.Tape.TailTip), w.tail, w.length(a.Tape.NoseTip), w.nose, w.length(a.Tape.TipToTip)) +
		when(!math.IsNaN(touches) && remarks > noPush, " Touches %s %s the rear legs%s%s; %s %s %s.", w.length(unsigned(touches)),
			pick(touches < 0, "behind", "ahead of"), when(!drawn, " (taken under the back)"),
			when(at.Posture != person.Unsaid, ", %v", at.Posture), w.tail, w.length(unsigned(tail)), pick(tail < 0, "ahead", "behind"))}
}

// Held says in one line whether it stands and all limits hold, if not which is the worst, else which is the nearest.
func Held(a trial.Answer) sheet.Line {
	w, limits, broken := wordingOf(a.Design), ranked(a.Limits), of(&a, trial.Falls, trial.Fails)
	switch {
	case len(broken) > 0:
		return sheet.Wrong(fmt.Sprintf("%d of %s: NO. First: %s", len(broken), counted(len(limits), "limit"), finding(w, &a, broken[0])))
	case len(limits) == 0:
		return sheet.Line{Text: "It stands; nothing more is asked of it."}
	}
	nearest := a.Worst()
	all := pick(len(limits) == 1, "The one limit holds", fmt.Sprintf("All %d limits hold", len(limits)))
	if near := len(of(&a, trial.TooNear)); near > 0 {
		all = fmt.Sprintf("Of %s none fails, but %d %s too near to tell", counted(len(limits), "limit"), near, pick(near > 1, "are", "is"))
	}
	return sheet.Line{Text: fmt.Sprintf("%s; nearest: %s, %s, %s of %s.", all, brief(nearest.Load),
		limitName(w.phrases, nearest.Name), gets(w, nearest), when(nearest.AtMost, "at most ")+w.with(nearest.Want, nearest.Kind))}
}

// Became says in what a motion ended.
func Became(r trial.Rocking) string {
	return upperFirst(brief(r.Load.Name)) + ": " + became(wordingOf(r.Report.Design), r).Text
}

// DoesNotRock says why a load cannot be rocked.
func DoesNotRock(r check.Report, l *check.Load) string {
	if l.Upright() {
		return "It cannot be rocked: the floor has part of the weight of who rises, so nothing is known of its motion."
	}
	return "It cannot be rocked: " + whyNot(wordingOf(r.Design).phrases, l) + "."
}

// Feels says which radius keeps a feel, or that none does.
func Feels(k size.Kept) string {
	way := upperFirst(k.Keep.String())
	if !k.Found {
		return way + ": no radius does that here."
	}
	return fmt.Sprintf("%s: radius %s at the rest, all radii times %.2f.",
		way, wordingOf(k.Design).length(k.Feel.Radius), k.Scale)
}

// remarks are how much of what --all says too is said on a first page: each leaves out one thing more than the next.
type remarks int

const (
	onlyFails remarks = iota // nor what is too near to tell, where something fails
	terse                    // nor the cure of a limit that fails; many changes are counted
	noPush                   // nor what it takes to push it
	noLift                   // nor by how much its weight must lift
	noRows                   // nor the limits that fail in rows, for they are told above
	noCause                  // nor what limits it
	noOthers                 // nor what else to try
	noGuess                  // nor what was estimated, nor what is worth a look
	everyRemark
)

// advice says whether the limits hold, what limits the piece, what to try next, what was estimated, and how far to trust it.
func advice(w wording, a *trial.Answer, command Command, remarks remarks) []sheet.Line {
	r, all := &a.Report, remarks == everyRemark
	lines := []sheet.Line{}
	if a.Holds() {
		lines = append(lines, Held(*a))
	}
	lines = append(lines, sheet.Says(pick(remarks > noCause, cause(w.phrases, r.Cause), ""))...)
	if remarks > noOthers || r.Try != nil && remarks > terse {
		if next := try(w, r, command); next.Text != "" {
			lines = append(lines, next)
		}
	}
	for _, f := range of(a, trial.WorthALook) {
		lines = append(lines, sheet.Says(when(all, "Worth a look: %s keeps %s before going %s.",
			brief(f.Load.Name), w.degrees(f.Got), w.Forward))...)
	}
	lines = append(lines, sheet.Says(when(r.Design.DrawnAndRead() && command != nil,
		"Checked as drawn; [measured] is set beside it by rockerwright as-built."))...)
	fits := len(a.Fit) > 0 && !slices.ContainsFunc(a.Fit, func(f check.Fit) bool { return !f.Holds() })
	return slices.Concat(lines, sheet.Says(when(all && fits, "Fits the owner: every measure is within common practice, upright."),
		"Degrees are counted from that load's own rest. Balance only, not strength."+comesBack(w, a),
		when(all && r.Spread.Estimated, "Estimated, not given: how the %s's %s is spread (moves rests %s).",
			w.piece, mass(w.units, r.Design.Piece.Mass), w.degrees(r.Spread.Rests())), w.disclaimer))
}

// comesBack says from how far back the first person may be let go, where further back than that the piece goes over
// forwards before it could go over backwards.
func comesBack(w wording, a *trial.Answer) string {
	l := a.Seated()
	if !l.Moves() {
		return ""
	}
	from, thrown := l.ComesBack()
	return when(thrown, " %s comes back if let go from up to %s; from further back it goes over %s.",
		upperFirst(brief(l.Sitter)), w.degrees(from), w.overForward)
}

// wrongs says what is wrong with the piece itself, what of it is only estimated, and where it does not fit its owner,
// upright.
func wrongs(w wording, a *trial.Answer) []sheet.Line {
	var lines []sheet.Line
	for _, f := range of(a, trial.Warns) {
		lines = append(lines, warning(w, a, f))
	}
	var wrong []string
	last := ""
	for _, f := range of(a, trial.Unfit) {
		if f.Fit != nil {
			wrong = append(wrong, when(f.Who != last, "for %s, upright, ", brief(f.Who))+unfit(w.units, f.Fit))
			last = f.Who
		}
	}
	text := strings.TrimSpace(when(len(wrong) > 0, "%s. ", strings.Join(wrong, "; ")) + misfits(w.units, a, owns(a)))
	if text != "" {
		lines = append(lines, sheet.Line{Label: "FIT:", Text: text})
	}
	return append(lines, sheet.Says(untimed(&a.Report))...)
}

// cause says what limits the worst of the limits.
func cause(say *phrases, c check.Cause) string {
	text := map[check.Cause]string{
		check.TailLength: say.tailLength, check.NoseLength: say.noseLength,
		check.CurveItself:  "the curve itself (its radius, against the height of the weight)",
		check.RestsTilted:  "how far it tilts at rest (the weight nearer the middle, or a larger radius)",
		check.RestsForward: "how far the seat falls forward (the low point, or the legs)",
		check.RestsBack:    "how far the seat falls back (the low point, or the legs)",
		check.TooFlat:      "a radius too large for the height of the weight",
		check.TooRound:     "a radius too small for the height of the weight",
		check.LegsBeyond:   "where the legs stand",
		check.RockedOver:   "whoever rocks it hard (longer or flatter ends, a lower seat)",
	}[c]
	return when(text != "", "What limits it: %s.", text)
}

// A Command returns the line to type for a design with one more change to it, or with an option where value is empty.
type Command func(key, value string) string

// try gives one change as a line to type, or what to look at next.
func try(w wording, r *check.Report, command Command) sheet.Line {
	t := r.Try
	switch radius := r.Design.Rocker.Radius; {
	case t == nil && command == nil: // of a piece that is finished
		return sheet.Line{}
	case command == nil:
		return sheet.Line{Text: fmt.Sprintf("What would mend it: %s %s%s.", t.Label, w.with(t.Value, t.Kind), gained(w, t))}
	case t == nil && !r.Holds():
		return sheet.Line{Text: "No one measure alone mends this. Look at every load:", Type: command("--all", "")}
	case t == nil && radius > 0:
		return sheet.Line{Text: "Try next, other curves:", Type: command("rocker.radius", typedLengths(w.units, r.Radii()))}
	case t == nil:
		return sheet.Line{Text: "Try next, every load:", Type: command("--all", "")}
	}
	return sheet.Line{Text: fmt.Sprintf("Try next: %s %s%s.", t.Label, w.with(t.Value, t.Kind), gained(w, t)),
		Type: command(t.Key, typed(w.units, t.Value, t.Kind))}
}

// gained says what the tried change does to the worst limit and to the tape.
func gained(w wording, t *check.Try) string {
	limit := when(t.Limit.Name != "rest", "%s: %s becomes %s; ",
		brief(t.Limit.Load), w.shop(t.Limit.Got, t.Limit.Kind), w.with(t.Got, t.Limit.Kind))
	return fmt.Sprintf(" (%s%s tip %s off the floor)", limit, w.tail, w.length(t.Tape.TailTip))
}
