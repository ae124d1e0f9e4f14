package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
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
	short.Blocks = append(short.Blocks, whatIfAssumptions(w, t.Report.Design))
	return short
}

// WhatIfBlocks returns the whole table as blocks of a larger sheet.
func WhatIfBlocks(t size.Table) []sheet.Block {
	w := wordingOf(t.Report.Design)
	return []sheet.Block{
		{Title: "What each measure does", Lines: whatIfNow(w, t)[1:], Table: whatIfTable(w, t, len(t.Rows)), All: true},
		whatIfAssumptions(w, t.Report.Design),
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
		falls, towards(w, t.Now[size.FallSitting]), w.seated, towards(w, t.Now[size.FallEmpty]), rock,
		w.degrees(t.Now[size.BackMargin]), w.Back)
	return []sheet.Line{{Label: "NOW:", Text: now},
		{Label: "MADE:", Text: "with every measure held as a shop usually does, " + made + ".", Bad: t.Fails > 0.05}}
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
	for _, r := range must {
		table.Mark(r.Made && !(r.HoldTo >= r.Shop), whatIf(w, t.Report.Design, r)...)
	}
	if len(loose) > 0 {
		table.Add("for the limits these need not be exact:")
	}
	for _, r := range loose {
		table.Add(whatIf(w, t.Report.Design, r)...)
	}
	return table
}

// whatIf returns the cells of one row: what is changed, by how much, what that does, and to what it must be held.
func whatIf(w wording, d piece.Design, r size.Row) []string {
	name := w.renamed.Replace(labelOf(d, r.Key, r.Label))
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
	return []string{name, change, degrees(size.FallSitting), degrees(size.FallEmpty), time, push, degrees(size.BackMargin), hold, ""}
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
func whatIfAssumptions(w wording, d piece.Design) sheet.Block {
	var held []string
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
		string(w.slides))}
}

// Study returns the sheet of many chairs as a shop makes them.
func Study(d piece.Design, s size.Study, source string) sheet.Sheet {
	w := wordingOf(d)
	title := fmt.Sprintf("%s · %s made as a shop does", shortName(d), many(w.phrases, s.Chairs))
	var lines []sheet.Line
	if s.Stopped() {
		lines = append(lines, sheet.Line{Label: "STOPPED:", Bad: true,
			Text: "after " + thousands(s.Chairs) + " of " + thousands(s.Asked) + ". What follows is of those."})
	}
	if s.Chairs == 0 {
		return sheet.Sheet{Title: title, Source: source, Blocks: []sheet.Block{{Lines: lines}}}
	}
	limits := sheet.Line{Label: "LIMITS:", Text: "none fails in any of them."}
	if s.Fails > 0 {
		limits.Text, limits.Bad = "one or more fail in "+inHundred(s.Part(s.Fails))+" of 100.", true
	}
	lines = append(lines, limits)
	if s.Unusable > 0 {
		lines = append(lines, sheet.Wrong(thousands(s.Unusable)+" of them do not rest at all."))
	}
	blocks := append([]sheet.Block{{Lines: lines}}, spreads(w, d, s)...)
	failing := &sheet.Table{Caption: "How often each limit fails", Head: []string{"fails", "of 100", ""}}
	for _, l := range s.Limits {
		if l.Fails > 0 {
			failing.Mark(true, brief(l.Limit.Load)+", "+limitName(w.phrases, l.Limit.Name), inHundred(s.Part(l.Fails)), "")
		}
	}
	if len(failing.Rows) > 0 {
		blocks = append(blocks, sheet.Block{Table: failing})
	}
	made := sheet.Block{Title: "How they were made", All: true, Lines: sheet.Says(
		"Every measure of each is off by an error of its own, normal, within what the shop usually holds 95 times in 100 "+
			"(common practice; your own under [shop]); people and floor are as given. Each is worked out exactly. "+
			"The errors are drawn in Latin hypercubes of "+thousands(size.Block)+" by a seed, so that the same call gives the same answer.",
		"The shares are squared regression coefficients times the variance of each measure; "+
			"what no straight line explains is left over.")}
	blocks = append(blocks, sheet.Block{Lines: sheet.Says(w.disclaimer)}, sharesTable(w, d, s), made)
	return sheet.Sheet{Title: title, Source: source, Blocks: blocks}
}

// many says how many pieces, "4,096 chairs".
func many(say *phrases, n int) string { return thousands(n) + " " + say.piece + "s" }

// amount returns a quantity finely, and its unit.
func amount(u units, q size.Quantity, x float64) (text, unit string) {
	switch q {
	case size.Time:
		return fmt.Sprintf("%.2f", x), "s"
	case size.Effort:
		return quantity.Fine(x, quantity.Force, u.System), quantity.Unit(quantity.Force, u.System)
	case size.BackLift:
		return u.bare(x), u.unit()
	}
	return inDegrees(x, 1), "deg"
}

// quantities names what is read of each chair, in full and over a column.
func quantities(w wording, d piece.Design) (names, heads [len(size.Readings{})]string) {
	rests := restsAs(d)
	names = [...]string{size.FallSitting: rests + w.seated, size.FallEmpty: rests + "empty", size.Time: "one rock",
		size.Effort: "push for one degree", size.BackMargin: "before going " + w.Back, size.BackLift: "  weight must lift",
		size.ForwardMargin: "before going " + w.Forward}
	heads = [...]string{size.FallSitting: w.seated, size.FallEmpty: "empty", size.Time: "rock", size.Effort: "push",
		size.BackMargin: w.shortBack, size.BackLift: "lift", size.ForwardMargin: strings.TrimSpace(w.angleForward)}
	return names, heads
}

// spreads returns how each quantity lies, and the measure on which it hangs most, as far as any tells.
func spreads(w wording, d piece.Design, s size.Study) []sheet.Block {
	names, _ := quantities(w, d)
	lie := &sheet.Table{Caption: "How the chairs lie", Head: []string{"", "drawn", "5 %", "50 %", "95 %", ""}}
	hang := &sheet.Table{Head: []string{"hangs most on", "", ""}, Wrap: true}
	for _, spread := range s.Spreads {
		q := spread.Quantity
		cells, unit := []string{names[q]}, ""
		for _, x := range []float64{s.Nominal[q], spread.Low, spread.Middle, spread.High} {
			var text string
			text, unit = amount(w.units, q, x)
			cells = append(cells, text)
		}
		lie.Add(append(cells, unit)...)
		if most, share := s.Most(spread); share >= 0.01 {
			hang.Add(strings.TrimSpace(names[q]), percent(share), labelOf(d, most.Key, most.Measure.Label))
		}
	}
	return []sheet.Block{{Table: lie}, {Table: hang}}
}

// sharesTable returns every share.
func sharesTable(w wording, d piece.Design, s size.Study) sheet.Block {
	_, heads := quantities(w, d)
	head := func(spread size.Spread) string { return heads[spread.Quantity] }
	t := &sheet.Table{Head: sheet.Across("share of the variance, %", s.Spreads, head, "held to"), Wrap: true}
	row := func(label, last string, share func(spread size.Spread) float64) {
		t.Add(sheet.Across(label, s.Spreads, func(spread size.Spread) string { return hundredths(share(spread), 0) }, last)...)
	}
	for k, varied := range s.Varied {
		row(labelOf(d, varied.Key, varied.Measure.Label), w.with(varied.Tolerance, varied.Measure.Kind),
			func(spread size.Spread) float64 { return spread.Shares[k] })
	}
	row("left over", "", func(spread size.Spread) float64 { return spread.LeftOver })
	return sheet.Block{Title: "What each hangs on", Table: t, All: true}
}
