package words

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// WhatIf returns the sheet of what each measure does and how exactly it must be held.
func WhatIf(t size.Table, source string, changes []string) Sheet {
	v := voiceOf(t.Report.Design)
	s := Sheet{Title: v.called(t.Report.Design) + " · what each measure does", Source: source}
	lines := append(changed(changes, true), v.whatIfNow(t)...)
	must, loose := exact(t.Rows)
	notes := Block{Lines: []Line{v.foot()}}
	assemble := func(rows int) Sheet {
		s := s
		s.Blocks = []Block{{Lines: lines}, {Table: v.whatIfTable(t, must, loose, rows)}, notes}
		return s
	}
	rows := len(t.Rows)
	short := assemble(rows)
	for short.lines() > page && rows > 4 {
		rows--
		short = assemble(rows)
		more := Line{Text: fmt.Sprintf("%d more that do less: --all.", len(t.Rows)-rows)}
		short.Blocks[2].Lines = append([]Line{more}, notes.Lines...)
	}
	if rows < len(t.Rows) {
		short.Blocks = append(short.Blocks, Block{Title: "Every measure", Table: v.whatIfTable(t, must, loose, len(t.Rows)), All: true})
	}
	short.Blocks = append(short.Blocks, v.whatIfAssumptions(t.Report.Design))
	return short
}

// WhatIfBlocks returns the whole table as blocks of a larger sheet.
func WhatIfBlocks(t size.Table) []Block {
	v := voiceOf(t.Report.Design)
	must, loose := exact(t.Rows)
	return []Block{
		{Title: "What each measure does", Lines: v.whatIfNow(t)[1:], Table: v.whatIfTable(t, must, loose, len(t.Rows)), All: true},
		v.whatIfAssumptions(t.Report.Design),
	}
}

// whatIfNow says how it is now, and how often a limit fails as the shop makes it.
func (v voice) whatIfNow(t size.Table) []Line {
	falls := pick(t.Report.Design.Seat.SlopeKnown(), "seat falls", "tilts")
	rock := "none"
	if time := t.Now[size.Time]; !math.IsNaN(time) {
		rock = timed(time)
	}
	made := "no limit fails in any of " + v.many(size.Block)
	if t.Fails > 0 {
		made = "a limit fails in " + inHundred(t.Fails) + " of 100 " + v.piece + "s"
	}
	now := fmt.Sprintf("%s %s %s, %s empty, in degrees; one rock %s; %s before going %s, leaning furthest.",
		falls, v.towards(t.Now[size.FallSitting]), v.seated, v.towards(t.Now[size.FallEmpty]), rock, v.degrees(t.Now[size.BackMargin]), v.Back)
	return []Line{{Label: "NOW:", Text: now},
		{Label: "MADE:", Text: "with every measure held as a shop usually does, " + made + ".", Bad: t.Fails > 0.05}}
}

// inHundred returns a share in hundredths, in words that fit small ones.
func inHundred(share float64) string {
	switch x := 100 * share; {
	case x > 0 && x < 0.1:
		return "fewer than 0.1"
	case x < 10:
		return fmt.Sprintf("%.1f", x)
	default:
		return fmt.Sprintf("%.0f", x)
	}
}

// exact parts rows into those that must be held or are no measures of a shop, and those that
// need not be exact.
func exact(rows []size.Row) (must, loose []size.Row) {
	for _, r := range rows {
		if r.Made && math.IsInf(r.HoldTo, 1) {
			loose = append(loose, r)
		} else {
			must = append(must, r)
		}
	}
	return must, loose
}

// whatIfTable sets the rows with the largest effects, at most so many, over each other.
func (v voice) whatIfTable(t size.Table, must, loose []size.Row, most int) *Table {
	table := &Table{
		Caption: "What each change does, and to what it must be held",
		Over:    []string{"", "", v.falls, v.falls, "one", "push", "going", "hold", ""},
		Head:    []string{"", "change", v.seated, "empty", "rock", "1 deg", v.shortBack, "to", ""},
		Rows:    []Row{{Cells: []string{"", "", "deg", "deg", "s", "%", "deg", "+ or -", ""}}},
	}
	shownMust, shownLoose := len(must), len(loose)
	if most < len(must)+len(loose) {
		shownLoose = min(len(loose), max(most/3, most-len(must)))
		shownMust = min(len(must), most-shownLoose)
	}
	for i, r := range slices.Concat(must[:shownMust], loose[:shownLoose]) {
		if i == shownMust {
			table.add("for the limits these need not be exact:")
		}
		table.mark(r.Made && !r.Enough && !math.IsInf(r.HoldTo, 1), v.whatIf(r)...)
	}
	return table
}

// whatIf returns the cells of one row: what is changed, by how much, what that does, and to what it must be held.
func (v voice) whatIf(r size.Row) []string {
	name := r.Key
	if r.Alteration != size.ChangeMeasure {
		name = v.renamed.Replace(r.Label)
	}
	if r.Alteration == size.Worn {
		name += " over " + v.length(size.WornOver)
	}
	hold := ""
	switch {
	case !r.Made || math.IsInf(r.HoldTo, 1):
	case math.IsNaN(r.HoldTo):
		hold = "no use"
	default:
		hold = quantity.Down(r.HoldTo, r.Kind, v.units)
	}
	change := strings.Replace(strings.Replace(v.with(r.Change, r.Kind), "degrees", "deg", 1), "degree", "deg", 1)
	degrees := func(q size.Quantity) string { return withSign((r.After[q]-r.Before[q])*180/math.Pi, 1) }
	push := withSign(100*(r.After[size.Effort]/r.Before[size.Effort]-1), 0)
	time := pick(r.Outcome == sim.Rocks, withSign(r.After[size.Time]-r.Before[size.Time], 2), "no rest")
	return []string{name, change, degrees(size.FallSitting), degrees(size.FallEmpty), time, push, degrees(size.BackMargin), hold, ""}
}

// withSign returns a change with its sign to so many decimals, "0" where that shows nothing.
func withSign(x float64, decimals int) string {
	text := strconv.FormatFloat(x, 'f', decimals, 64)
	switch {
	case math.IsNaN(x):
		return "–"
	case strings.Trim(text, "-0.") == "":
		return "0"
	case x > 0:
		return "+" + text
	}
	return text
}

// whatIfAssumptions says how the table came about, and what the shop holds: a length, a radius, an angle, a weight, each
// as the table of measures or the design has it.
func (v voice) whatIfAssumptions(d piece.Design) Block {
	var held []string
	for _, m := range [][2]string{
		{"lengths", "seat.rear"}, {"radii", "rocker.radius"}, {"angles", "back.recline"}, {"the weight", "piece.weight"}} {
		if measure, _, err := d.Measure(m[1]); err == nil {
			held = append(held, m[0]+" to "+v.with(d.Tolerance(measure), measure.Kind))
		}
	}
	return Block{Title: "How to read it", All: true, Lines: says(fmt.Sprintf(
		"One thing is changed at a time, by four times what a shop usually holds, and the piece worked out anew. "+
			"+ is %s, more, longer. %s is %s; before going over is read for the load nearest to it.", v.Back, upperFirst(v.seated), v.rider),
		"Hold to: the largest error, 95 times in 100, with which every limit still holds in 95 of 100 chairs, "+
			"all else being held as the shop usually does: "+list(held)+" (common practice; your own under [shop]). "+
			"\"no use\": the others break a limit more often than that whatever is done here; widen the margin first. "+
			"What may be eight times as far off as usual need not be exact.",
		string(v.slides))}
}
