package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// WhatIf returns the sheet of what each measure does and how exactly it must be held.
func WhatIf(t size.Table, source string, changes []string) sheet.Sheet {
	w := wordingOf(t.Report.Design)
	lines := append(changed(changes, true), whatIfNow(w, t)...)
	all := len(t.Rows)
	assemble := func(rows int) sheet.Sheet {
		more := when(rows < all, "%d more that do less: --all.", all-rows)
		return sheet.Sheet{Title: shortName(t.Report.Design) + " · what each measure does", Source: source,
			Blocks: []sheet.Block{
				{Lines: lines}, {Table: whatIfTable(w, t, rows)}, {Lines: sheet.Says(more, w.disclaimer)}}}
	}
	rows := all
	short := assemble(rows)
	for !short.Fits() && rows > 4 {
		rows--
		short = assemble(rows)
	}
	if rows < all {
		short.Blocks = append(short.Blocks, sheet.Block{Title: "Every measure", Table: whatIfTable(w, t, all), All: true})
	}
	short.Blocks = append(short.Blocks, whatIfAssumptions(w, t))
	return short
}

// WhatIfBlocks returns the whole table as blocks of a larger sheet.
func WhatIfBlocks(t size.Table) []sheet.Block {
	w := wordingOf(t.Report.Design)
	return []sheet.Block{
		{Title: "What each measure does", Lines: whatIfNow(w, t)[1:], Table: whatIfTable(w, t, len(t.Rows)), All: true},
		whatIfAssumptions(w, t),
	}
}

// whatIfNow says how it is now, and how often a limit fails as the shop makes it.
func whatIfNow(w wording, t size.Table) []sheet.Line {
	falls, rock := pick(t.Report.Design.Seat.SlopeKnown(), "seat falls", "tilts"), timed(t.Now[size.Time])
	if math.IsNaN(t.Now[size.Time]) {
		rock = "none"
	}
	made := pick(t.Fails > 0, "a limit fails in "+inHundred(t.Fails)+" of 100 "+w.piece+"s",
		"no limit fails in any of "+many(w.phrases, size.Block))
	now := fmt.Sprintf("%s %s %s, %s empty, in degrees; one rock %s; %s before going %s, leaning furthest.",
		falls, towards(w, t.Now[size.FallAtEase]), w.seated, towards(w, t.Now[size.FallEmpty]), rock,
		w.degrees(t.Now[size.BackMargin]), w.Back)
	first := t.Report.Seated()
	spread := t.Report.RestSpread(first)
	return []sheet.Line{{Label: "NOW:", Text: now},
		{Label: "MADE:", Text: "with every measure held as a shop usually does, " + made +
			when(!math.IsNaN(spread), " with these very people") + "." +
			when(t.PersonMatters(), " What matters most is the person: people of one size rest within ±%s of this. "+
				"Sit %s in a mock-up.", w.degrees(spread), whomToSit(t.Report.Design, first)), Bad: t.Fails > 0.05}}
}

// whomToSit says whom a load is of, by the name that the design gives, if any.
func whomToSit(d piece.Design, l *check.Load) string {
	named := func(s piece.Sitter) bool { return s.Name == l.Sitter && s.Name != "owner" }
	return pick(slices.ContainsFunc(d.Sitters, named), brief(l.Sitter), "your owner")
}

// inHundred returns a share in hundredths, in words that fit small ones.
func inHundred(share float64) string {
	switch {
	case share > 0 && share < 0.001:
		return "fewer than 0.1"
	case share < 0.1:
		return hundredths(share, 1)
	}
	return hundredths(share, 0)
}

// whatIfTable sets the rows with the largest effects, at most so many, over each other: those that must be held or are
// no measures of a shop, then those that need not be exact.
func whatIfTable(w wording, t size.Table, most int) *sheet.Table {
	table := &sheet.Table{
		Caption: "What each change does, and to what it must be held",
		Over:    []string{"", "", w.falls, w.falls, "one", "push", "going", "hold", ""},
		Head:    []string{"", "change", w.seated, "empty", "rock", "1 deg", w.shortBack, "to", ""},
		Rows:    []sheet.Row{{Cells: []string{"", "", "deg", "deg", "s", "%", "deg", "+ or -", ""}}},
		Wrap:    true,
	}
	must := slices.DeleteFunc(slices.Clone(t.Rows), func(r size.Row) bool { return r.Made && math.IsInf(r.HoldTo, 1) })
	loose := t.Rows[len(must):] // they stand behind
	if most < len(t.Rows) {
		loose = loose[:min(len(loose), max(most/3, most-len(must)))]
		must = must[:min(len(must), most-len(loose))]
	}
	called := whatIfNames(t)
	for _, r := range must {
		table.Mark(r.Made && !(r.HoldTo >= r.Shop), whatIf(w, called(r), r)...)
	}
	if len(loose) > 0 {
		table.Add("for the limits these need not be exact:")
	}
	for _, r := range loose {
		table.Add(whatIf(w, called(r), r)...)
	}
	return table
}

// whatIfNames returns what the rows are called in a narrow column: a measure by its label up to the comma, behind
// which it says from where it is measured, unless another begins like it.
func whatIfNames(t size.Table) func(size.Row) string {
	first := func(r size.Row) string {
		name, _, _ := strings.Cut(labelOf(t.Report.Design, r.Key, r.Label), ",")
		return name
	}
	alike := map[string]int{}
	for _, r := range t.Rows {
		alike[first(r)]++
	}
	return func(r size.Row) string {
		if r.Alteration == size.ChangeMeasure && alike[first(r)] == 1 {
			return first(r)
		}
		return labelOf(t.Report.Design, r.Key, r.Label)
	}
}

// whatIf returns the cells of one row: what is changed, as it is called, by how much, what that does, and to what it must be held.
func whatIf(w wording, name string, r size.Row) []string {
	if r.Alteration == size.Worn {
		name += " over " + w.length(size.WornOver)
	}
	hold := ""
	switch {
	case !r.Made || math.IsInf(r.HoldTo, 1):
	case math.IsNaN(r.HoldTo):
		hold = "no use"
	default:
		hold = quantity.Down(r.HoldTo, r.Kind, w.System)
	}
	change := strings.NewReplacer("degrees", "deg", "degree", "deg").Replace(w.with(r.Change, r.Kind))
	degrees := func(q size.Quantity) string { return withSign(inDegrees(r.Moved(q), 1)) }
	push := withSign(hundredths(r.Moved(size.Effort), 0))
	time := pick(r.Outcome == sim.Rocks, withSign(decimal(r.Moved(size.Time), 2)), "no rest")
	return []string{name, change, degrees(size.FallAtEase), degrees(size.FallEmpty), time, push, degrees(size.BackMargin), hold, ""}
}

// withSign returns a change with its sign, "0" where that shows nothing.
func withSign(text string) string {
	switch {
	case text == "NaN":
		return "–"
	case strings.Trim(text, "-0.") == "":
		return "0"
	}
	return signed(text)
}

// whatIfAssumptions says how the table came about, and what the shop holds: a length, a radius, an angle, a weight, each
// as the table of measures or the design has it.
func whatIfAssumptions(w wording, t size.Table) sheet.Block {
	var held []string
	d := t.Report.Design
	for _, m := range [][2]string{
		{"lengths", "seat.rear"}, {"radii", "rocker.radius"}, {"angles", "back.recline"}, {"the weight", "piece.weight"}} {
		if measure, _, err := d.Measure(m[1]); err == nil {
			held = append(held, m[0]+" to "+w.with(d.Tolerance(measure), measure.Kind))
		}
	}
	return sheet.Block{Title: "How to read it", All: true, Lines: sheet.Says(fmt.Sprintf(
		"One thing is changed at a time, by four times what a shop usually holds, and the piece worked out anew. "+
			"+ is %s, more, longer. %s is %s; "+
			"before going over is read for the load nearest to it.", w.Back, upperFirst(w.seated), w.rider),
		"Hold to: the largest error, 95 times in 100, with which every limit still holds in 95 of 100 chairs, "+
			"all else being held as the shop usually does: "+list(held)+" (common practice; your own under [shop]). "+
			"\"no use\": the others break a limit more often than that whatever is done here; widen the margin first. "+
			"What may be eight times as far off as usual need not be exact.",
		when(!math.IsNaN(t.Report.RestSpread(t.Report.Seated())), "\"Sitter leans back\" is also what a person of the same "+
			"height and weight does whose weight sits so much further back."),
		string(w.slides))}
}

// many says how many pieces, "4,096 chairs".
func many(say *phrases, n int) string { return thousands(n) + " " + say.piece + "s" }
