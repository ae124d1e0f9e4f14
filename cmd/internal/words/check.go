package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
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
	all := slices.Concat(v.everyLoad(*r), v.fits(&a),
		[]sheet.Block{{Title: "Every limit", All: true, Table: v.limitTable(ranked(r.Limits))}, v.pulls(*r)}, v.survives(a), v.everySwing(*r),
		[]sheet.Block{{Title: "What this rests on", All: true, Lines: v.assumptions(*r)}, {Title: "Cautions", All: true, Lines: v.cautions(*r)}})
	assemble := func(remarks remarks) sheet.Sheet {
		return sheet.Sheet{Title: v.title(r.Design), Source: source, Blocks: slices.Concat(
			[]sheet.Block{{Lines: v.answer(&a, changes, remarks)}}, v.under(&a, command, remarks), all)}
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

// under returns what stands under the verdict: tape, readings, limits and advice. Of the limits it has, of each that
// fails, the load on which it fails most, for the verdict names all loads; then the nearest of those that hold, as
// there is room.
func (v voice) under(a *trial.Answer, command Command, remarks remarks) []sheet.Block {
	var foremost []check.Limit
	told := map[string]bool{}
	for _, l := range ranked(a.Limits) {
		if !l.Holds && !told[l.Name] || l.Holds && (len(foremost) == 0 || remarks > oneLimit && len(foremost) < 3) {
			foremost = append(foremost, l)
			told[l.Name] = true
		}
	}
	return []sheet.Block{
		{Lines: []sheet.Line{v.tape(a.Report)}},
		v.readings(a.Report, remarks),
		{Table: v.limitTable(foremost)},
		{Lines: v.advice(a, command, remarks)},
	}
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
	asked, broken := len(ranked(a.Limits)), of(&a, trial.Falls, trial.Fails)
	if len(broken) > 0 {
		cells := voiceOf(a.Design).limit(*broken[0].Limit)
		return sheet.Wrong(fmt.Sprintf("%d of %s: NO. First: %s; want %s, got %s.",
			len(broken), counted(asked, "limit"), cells[0], cells[1], cells[2]))
	}
	all := []string{"It stands; nothing more is asked of it.", "The one limit holds.", fmt.Sprintf("All %d limits hold.", asked)}
	return sheet.Line{Text: all[min(asked, 2)]}
}

// Became says in what a motion ended.
func Became(r trial.Rocking) string {
	return upperFirst(brief(r.Load.Name)) + ": " + voiceOf(r.Report.Design).became(r).Text
}

// DoesNotStand says why a load cannot be rocked.
func DoesNotStand(r check.Report, l *check.Load) string {
	return "It cannot be rocked: " + voiceOf(r.Design).whyNot(l) + "."
}

// Feels says which radius keeps a feel, or that none does.
func Feels(k size.Kept) string {
	way := upperFirst(k.Keep.String())
	if !k.Found {
		return way + ": no radius does that here."
	}
	return fmt.Sprintf("%s: radius %s at the rest, all radii times %.2f.",
		way, voiceOf(k.Design).length(k.Feel.Radius), k.Scale)
}

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
func (v voice) advice(a *trial.Answer, command Command, remarks remarks) []sheet.Line {
	r, all := &a.Report, remarks == everyRemark
	lines := sheet.Says(pick(remarks > noCause, v.cause(r.Cause), ""))
	if remarks > noOthers || r.Try != nil && remarks > terse {
		lines = append(lines, v.try(r, command))
	}
	for _, f := range of(a, trial.WorthALook) {
		lines = append(lines, sheet.Says(when(all, "Worth a look: %s keeps %s before going %s.",
			brief(f.Load.Name), v.degrees(f.Got), v.Forward))...)
	}
	return slices.Concat(lines, v.wrongs(a), sheet.Says(
		when(all && r.Spread.Estimated, "Estimated, not given: how the %s's %s is spread (moves rests %s).",
			v.piece, v.mass(r.Design.Piece.Mass), v.degrees(max(r.Spread.EmptyRest, r.Spread.Rest))), v.disclaimer))
}

// wrongs says what is wrong with the piece itself, what of it is only estimated, whether it fits its owner, sitting at
// ease, and whom it does not fit.
func (v voice) wrongs(a *trial.Answer) []sheet.Line {
	var lines []sheet.Line
	for _, f := range of(a, trial.Warns) {
		lines = append(lines, v.warning(a, f))
	}
	var wrong []string
	for _, f := range of(a, trial.Unfit) {
		if f.Fit != nil {
			wrong = append(wrong, v.unfit(f.Fit))
		}
	}
	text := "every measure is within custom, sitting."
	if len(wrong) > 0 {
		text = strings.Join(wrong, "; ") + " (sitting); the rest within custom."
	}
	return append(lines, sheet.Says(untimed(&a.Report), when(len(a.Fit) > 0, "Fits the owner? %s", upperFirst(text)), v.misfits(a))...)
}

// cause says what limits the worst of the limits.
func (v voice) cause(c check.Cause) string {
	text := map[check.Cause]string{
		check.TailLength: v.tailLength, check.NoseLength: v.noseLength,
		check.CurveItself: "the curve itself (its radius, against the height of the weight)",
		check.RestsTilted: "how far it tilts at rest (a larger radius, or the weight nearer the middle)",
	}[c]
	return when(text != "", "What limits it: %s.", text)
}

// A Command returns the line to type for a design with one more change to it, or with
// an option where value is empty.
type Command func(key, value string) string

// try gives one change as a line to type, or what to look at next.
func (v voice) try(r *check.Report, command Command) sheet.Line {
	t := r.Try
	switch radius := r.Design.Rocker.Radius; {
	case t == nil && !r.Holds():
		return sheet.Line{Text: "No one measure alone mends this. Look at every load:", Type: command("--all", "")}
	case t == nil && radius > 0:
		return sheet.Line{Text: "Try next, other curves:", Type: command("rocker.radius", v.radii(radius))}
	case t == nil:
		return sheet.Line{Text: "Try next, every load:", Type: command("--all", "")}
	}
	return sheet.Line{Text: fmt.Sprintf("Try next: %s %s%s.", t.Label, v.with(t.Value, t.Kind), v.gained(t)),
		Type: command(t.Key, v.typed(t.Value, t.Kind))}
}

// gained says what the tried change does to the worst limit and to the tape.
func (v voice) gained(t *check.Try) string {
	limit := when(t.Limit.Name != "rest", "%s: %s becomes %s; ",
		brief(t.Limit.Load), v.shop(t.Limit.Got, t.Limit.Kind), v.with(t.Got, t.Limit.Kind))
	return fmt.Sprintf(" (%s%s tip %s off the floor)", limit, v.tail, v.length(t.Tape.TailTip))
}

// ranked returns the limits with those that fail first, then those that are nearest to
// it. Of a load that does not rest only that is listed, of one that does all else.
func ranked(limits []check.Limit) []check.Limit {
	list := slices.DeleteFunc(slices.Clone(limits), func(l check.Limit) bool {
		return l.Name == "rest" && l.Holds || l.Name != "rest" && math.IsNaN(l.Got)
	})
	share := func(l check.Limit) float64 {
		if l.Name == "rest" {
			return math.Inf(-1)
		}
		return l.Share()
	}
	slices.SortStableFunc(list, func(a, b check.Limit) int { return cmp.Compare(share(a), share(b)) })
	return list
}

// limitTable returns limits as a table: want, got, whose.
func (v voice) limitTable(limits []check.Limit) *sheet.Table {
	t := &sheet.Table{Caption: "What we ask of it", Head: []string{"What we ask", "want", "got", "whose"}}
	for _, l := range limits {
		t.Mark(!l.Holds, v.limit(l)...)
	}
	if len(limits) == 0 {
		t.Add("that it stands", "yes", "yes", check.Physics)
	}
	return t
}

// limit returns the cells of a limit: what is asked, what is wanted, what there is, and by whom it is asked. Where
// rounding to the shop's step would make a failing value look like the one asked, it is given finer.
func (v voice) limit(l check.Limit) []string {
	name, basis := sheet.Cut(sheet.Plain(l.Load), 30), l.Basis+"  "+pick(l.Holds, "ok", "NO")
	if l.Name == "rest" {
		return []string{name + " stands", "a rest", "none", basis}
	}
	got := v.shop(l.Got, l.Kind)
	if !l.Holds && got == v.shop(l.Want, l.Kind) {
		got = quantity.Fine(l.Got, l.Kind, v.units)
	}
	return []string{name + ", " + v.limitName(l.Name), pick(l.AtMost, "at most ", "") + v.with(l.Want, l.Kind), got, basis}
}
