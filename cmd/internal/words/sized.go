package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// Sized returns the sheet of the rockers that were found for a target, and of others that a maker
// may like. take is the line to type to save one.
func Sized(d piece.Design, found size.Solution, others []size.Proposal, source string, changes []string, take string) sheet.Sheet {
	w := wordingOf(d)
	lines := append(changed(changes, true), outcome(w, found.Take())...)
	whole := sizedTable(w, d, found.Proposals, others)
	own, theirs := rejected(w.phrases, found.Proposals),
		append(rejected(w.phrases, others), curves(w.units, found.Proposals[0], others)...)
	last := []sheet.Line{{Text: "To save one under a new name:", Type: take}, {Text: w.disclaimer}}
	wanted := wishes(w, d)
	spare := slices.DeleteFunc( // what a first page can do without, as far as nothing is wanted of it
		[]string{"one rock from 8 deg", "tip to tip", "push for one degree", "back leans, " + w.seated, "  weight must lift"},
		func(label string) bool { return wanted[label] != "" })
	assemble := func(table *sheet.Table, notes []sheet.Line) sheet.Sheet {
		return sheet.Sheet{Title: shortName(d) + " · for what it aims for", Source: source,
			Blocks: []sheet.Block{{Lines: lines}, {Table: table}, {Lines: slices.Concat(notes, last)}}}.Fitted(1, spare, whole)
	}
	first := assemble(whole, slices.Concat(own, theirs))
	if !first.Fits() { // the other curves stand under --all
		first = assemble(sizedTable(w, d, found.Proposals, nil), own)
		first.Blocks = append(first.Blocks, sheet.Block{Title: "Two other curves", Lines: theirs, All: true})
	}
	even := &sheet.Table{Head: []string{"time of one rock, s", "from 1", "4", "8", "12 degrees", "limits", ""}}
	for _, p := range append([]size.Proposal{found.Proposals[0]}, others...) {
		name := p.Shape.String()
		if p.Shape == size.EvenTime {
			name = "even time, " + counted(p.Fitted, "arc")
		}
		even.Add(name, evenAt(p.Even, 0), evenAt(p.Even, 1), evenAt(p.Even, 2), evenAt(p.Even, 3), pick(p.Report.Holds(), "hold", "NO"), "")
	}
	first.Blocks = append(first.Blocks, sheet.Block{Title: "Large rocks and small ones", Table: even, All: true, Lines: sheet.Says(
		"On one arc a larger rock takes longer or shorter than a small one. " +
			"On the even-time edge it takes the same, for " + w.rider +
			" and for nobody else; with the arcs that a maker can swing, nearly. " +
			"It is read for " + w.rider + ", tilted and let go.")},
		sheet.Block{Title: "How it was found", All: true, Lines: sheet.Says(
			"The limits of the file, what the shop has and the margins aimed for come first; the time and the leans "+
				"come as near as these allow. One arc is solved: the radius makes the time, the place of the low "+
				"point the lean, its ends grow only where a limit asks for it. Two and three arcs are searched from "+
				"several starts, the same each time; another --seed looks elsewhere.",
			"The piece and its people stay as they are drawn; the low point moves under them. "+
				"All is rounded to what is set at the bench, and the table shows what the rounded rocker does.")})
	return first
}

// SizedBlocks returns the rockers that were found for a target as blocks of a larger sheet.
func SizedBlocks(d piece.Design, found size.Solution) []sheet.Block {
	w := wordingOf(d)
	return []sheet.Block{{Title: "The rocker for what it aims for", All: true,
		Lines: outcome(w, found.Take()), Table: sizedTable(w, d, found.Proposals, nil)}}
}

// shownArcs is of how many arcs the even-time rocker of the first page is.
const shownArcs = 3

// Shown reports whether a rocker stands on the first page of [Sized].
func Shown(p size.Proposal) bool { return p.Shape != size.EvenTime || p.Fitted == shownArcs }

// outcome says whether the target is met, where not how near it comes, and what sets the answer.
func outcome(w wording, p size.Proposal) []sheet.Line {
	line := sheet.Line{Label: "NEAREST:", Bad: true}
	switch short := short(w.units, p); {
	case p.Met():
		line = sheet.Line{Label: "FOUND:", Text: p.Shape.String() + " does all that you aim for."}
	case len(short) == 0:
		line.Text = p.Shape.String() + " does what you aim for, but what must hold does not."
	default:
		line.Text = fmt.Sprintf("%s: %s. All of it cannot be had together.", p.Shape, list(short))
	}
	return append([]sheet.Line{line}, binds(w.phrases, p)...)
}

// aims are what aims are called, of what kind their values are, and what is said of one that sets the answer.
var aims = map[size.Aim]struct {
	name string
	kind quantity.Kind
	sets string
}{
	size.OneRock:        {name: "one rock", kind: quantity.Time},
	size.SeatFalls:      {name: "the seat falls, seated,", kind: quantity.Angle},
	size.BackLeans:      {name: "the back leans", kind: quantity.Angle},
	size.SeatFallsEmpty: {name: "the seat falls, empty,", kind: quantity.Angle},
	size.LargestTilt:    {name: "its tips touch at", kind: quantity.Angle},
	size.Longest:        {"tip to tip", quantity.Length, "the longest rocker you allow is used up"},
	size.StockWidth:     {"a board as wide as", quantity.Length, "the board is no wider"},
	size.StockLength:    {"a board as long as", quantity.Length, "the board is no longer"},
	size.SmallestRadius: {"the tightest strip bends to", quantity.Length, "the strips bend no tighter"},
	size.OffJoints:      {sets: "the owner must not rest on a joint"},
	size.Sensible:       {sets: "an end or a radius is as far as was looked"},
}

// short says of each aim that is missed what it comes to.
func short(u units, p size.Proposal) []string {
	var short []string
	for _, m := range p.Misses {
		aim := aims[m.Aim]
		if m.Met() || aim.name == "" {
			continue
		}
		got, want := u.with(m.Got, aim.kind), u.with(m.Want, aim.kind)
		if aim.kind == quantity.Time {
			got, want = timed(m.Got), timed(m.Want)
		}
		short = append(short, fmt.Sprintf("%s %s instead of %s", aim.name, got, want))
	}
	return short
}

// binds names what sets the answer: of several limits that set one part the tightest.
func binds(say *phrases, p size.Proposal) []sheet.Line {
	var what []string
	tightest := map[string]size.Miss{}
	for _, m := range p.Binds() {
		if m.Aim == size.KeepsLimit {
			part := part(say, p, m.Limit)
			if was, there := tightest[part]; !there || m.Steps > was.Steps {
				tightest[part] = m
			}
			continue
		}
		what = append(what, aims[m.Aim].sets)
	}
	for _, part := range []string{"the " + say.tail, "the " + say.nose, "the curve"} {
		if m, there := tightest[part]; there {
			what = append(what, fmt.Sprintf("%s (%s) sets %s", brief(m.Limit.Load), limitName(say, m.Limit.Name), part))
		}
	}
	if len(what) == 0 {
		return nil
	}
	return []sheet.Line{{Label: "What sets it:", Text: list(what) + "."}}
}

// part returns the part of a rocker that sets a limit.
func part(say *phrases, p size.Proposal, l check.Limit) string {
	load, _ := p.Report.LoadNamed(l.Load)
	switch {
	case load == nil:
	case strings.HasPrefix(l.Name, "back") && load.Rig.OverTip(load.Back):
		return "the " + say.tail
	case strings.HasPrefix(l.Name, "forward") && load.Rig.OverTip(load.Forward):
		return "the " + say.nose
	}
	return "the curve"
}

// rejected says what check would say no to of those rockers that a first page shows.
func rejected(say *phrases, proposals []size.Proposal) []sheet.Line {
	var lines []sheet.Line
	for _, p := range proposals {
		var failing []string
		for _, l := range p.Report.Limits {
			if !l.Holds && Shown(p) {
				failing = append(failing, brief(l.Load)+", "+limitName(say, l.Name))
			}
		}
		if len(failing) > 0 {
			lines = append(lines, sheet.Line{Label: upperFirst(p.Shape.String()) + ":", Bad: true,
				Text: "check would say NO: " + list(failing[:min(2, len(failing))]) + "."})
		}
	}
	return lines
}

// sizedTable sets the rockers beside what is wanted.
func sizedTable(w wording, d piece.Design, found, others []size.Proposal) *sheet.Table {
	var columns []Column
	for _, p := range slices.Concat(found, others) {
		if Shown(p) && len(columns) < 5 { // so many stand side by side
			columns = append(columns, Column{Head: p.Shape.String(), Report: p.Report, even: p.Even})
		}
	}
	t := sideBySide("The rockers that were found, beside what is wanted", columns, 8, append(rockerOf(w, columns),
		reading{"one rock from 8 deg", "s", func(c *Column) string { return evenAt(c.even, 2) }}, holds))
	wanted(t, wishes(w, d))
	return t
}

// wishes returns what is wanted, by the label of its row.
func wishes(w wording, d piece.Design) map[string]string {
	t, rests := d.Target, restsAs(d)
	return map[string]string{
		"one rock":                when(t.OneRock > 0, "%.2f", t.OneRock),
		rests + w.seated:          pick(t.SeatFalls.Asked, towards(w, t.SeatFalls.Value), ""),
		"back leans, " + w.seated: pick(t.BackLeans.Asked, w.angle(t.BackLeans.Value), ""),
		rests + "empty":           pick(t.Empty.Asked, towards(w, t.Empty.Value), ""),
		"before going " + w.Back:  pick(t.BackMargin > 0, w.angle(t.BackMargin), ""),
		"  weight must lift":      pick(t.BackLift > 0, w.bare(t.BackLift), ""),
		"tip to tip":              pick(t.Longest > 0, w.bare(t.Longest), ""),
	}
}

// curves says what the other two curves are for, and what they do here.
func curves(u units, one size.Proposal, others []size.Proposal) []sheet.Line {
	var lines []sheet.Line
	for _, p := range others {
		misses, even := short(u, p), p.Even
		switch {
		case p.Shape == size.FlatterTail && len(misses) > len(short(u, one)):
			lines = append(lines, sheet.Line{Label: "Flatter tail, a brake:", Text: "it misses: " + list(misses) + "."})
		case p.Shape == size.FlatterTail:
			lines = append(lines, sheet.Line{Label: "Flatter tail, a brake:", Text: fmt.Sprintf("the same rock in the middle; "+
				"leaning furthest the weight must lift %s, not %s.",
				u.length(p.Report.Leaning().Back.Lift), u.bare(one.Report.Leaning().Back.Lift))})
		case p.Fitted == shownArcs && len(even) > 0:
			lines = append(lines, sheet.Line{Label: "Even time:", Text: fmt.Sprintf("a rock takes %s s small and %s s from 12 degrees, "+
				"with the owner alone: see --all.", evenAt(even, 0), evenAt(even, len(even)-1))})
		}
	}
	return lines
}

// evenAt returns the time of a rock from the n-th release.
func evenAt(periods []float64, n int) string {
	if n >= len(periods) || math.IsNaN(periods[n]) {
		return "–"
	}
	return fmt.Sprintf("%.2f", periods[n])
}

// SizedLetter returns the answer of [Sized] as a letter to another maker.
func SizedLetter(d piece.Design, found size.Solution, others []size.Proposal) sheet.Sheet {
	w := wordingOf(d)
	return sheet.Sheet{Title: "To a fellow maker", Blocks: []sheet.Block{
		{Lines: sheet.Says("You asked what rocker " + shortName(d) + " wants for what you aim for. This is what came out.")},
		{Lines: outcome(w, found.Take())}, {Table: sizedTable(w, d, found.Proposals, others)},
		{Lines: append(curves(w.units, found.Proposals[0], others), sheet.Says(radiiAre, w.disclaimer)...)}}}
}
