package words

import (
	"fmt"
	"math"
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
	must, loose := v.parted(t.Rows)
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
	must, loose := v.parted(t.Rows)
	return []Block{
		{Title: "What each measure does", Lines: v.whatIfNow(t)[1:], Table: v.whatIfTable(t, must, loose, len(t.Rows)), All: true},
		v.whatIfAssumptions(t.Report.Design),
	}
}

// whatIfNow says how it is now, and how often a limit fails as the shop makes it.
func (v voice) whatIfNow(t size.Table) []Line {
	falls := "seat falls"
	if t.Report.Design.Seat.Front == 0 {
		falls = "tilts"
	}
	now := Line{Label: "NOW:", Text: fmt.Sprintf("%s %s %s, %s empty, in degrees; one rock %s; %s before going %s, leaning furthest.", falls,
		v.towards(t.Now[size.FallSitting]), v.seated, v.towards(t.Now[size.FallEmpty]), v.hundredths(t.Now[size.Time]), v.degrees(t.Now[size.BackMargin]), v.Back)}
	text := fmt.Sprintf("with every measure held as a shop usually does, no limit fails in any of %s.", v.many(size.Block))
	if share := t.Fails; share > 0 {
		text = fmt.Sprintf("with every measure held as a shop usually does, a limit fails in %s of 100 %ss.", inHundred(share), v.piece)
	}
	return []Line{now, {Label: "MADE:", Text: text, Bad: t.Fails > 0.05}}
}

// hundredths returns a time to a hundredth of a second.
func (v voice) hundredths(x float64) string {
	if math.IsNaN(x) {
		return "none"
	}
	return fmt.Sprintf("%.2f s", x)
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

// parted parts rows into those that must be held or are no measures of a shop, and those that
// need not be exact.
func (v voice) parted(rows []size.Row) (must, loose []size.Row) {
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
	shownMust, shownLoose := most, 0
	if most < len(must)+len(loose) {
		shownLoose = min(len(loose), max(most/3, most-len(must)))
		shownMust = most - shownLoose
	} else {
		shownLoose = len(loose)
	}
	for _, r := range must[:min(shownMust, len(must))] {
		table.Rows = append(table.Rows, v.whatIfRow(r))
	}
	if shownLoose > 0 {
		table.Rows = append(table.Rows, Row{Cells: []string{"for the limits these need not be exact:"}})
	}
	for _, r := range loose[:shownLoose] {
		table.Rows = append(table.Rows, v.whatIfRow(r))
	}
	return table
}

// whatIfRow returns one row: what is changed, by how much, and what that does.
func (v voice) whatIfRow(r size.Row) Row {
	name := r.Key
	if r.Deed != size.ChangeMeasure {
		name = v.renamed.Replace(r.Label)
		if r.Deed == size.Worn {
			name += " over " + v.length(size.WornOver)
		}
	}
	degrees := func(q size.Quantity) string { return withSign((r.After[q]-r.Before[q])*180/math.Pi, 1) }
	push := withSign(100*(r.After[size.Effort]/r.Before[size.Effort]-1), 0)
	time := withSign(r.After[size.Time]-r.Before[size.Time], 2)
	if r.Outcome != sim.Rocks {
		time = "no rest"
	}
	return Row{
		Cells: []string{name, v.changeOf(r), degrees(size.FallSitting), degrees(size.FallEmpty), time, push, degrees(size.BackMargin), v.heldTo(r), ""},
		Bad:   r.Made && !r.Enough && !math.IsInf(r.HoldTo, 1),
	}
}

// changeOf returns by how much a row changes its measure.
func (v voice) changeOf(r size.Row) string {
	text := v.with(r.Change, r.Kind)
	return strings.Replace(strings.Replace(text, "degrees", "deg", 1), "degree", "deg", 1)
}

// heldTo returns to what a measure must be held.
func (v voice) heldTo(r size.Row) string {
	switch {
	case !r.Made || math.IsInf(r.HoldTo, 1):
		return ""
	case math.IsNaN(r.HoldTo):
		return "no use"
	}
	return quantity.Down(r.HoldTo, r.Kind, v.units)
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

// whatIfAssumptions says how the table came about.
func (v voice) whatIfAssumptions(d piece.Design) Block {
	lines := []Line{
		{Text: fmt.Sprintf("One thing is changed at a time, by four times what a shop usually holds, and the piece worked out anew. + is %s, more, longer. %s is %s; before going over is read for the load nearest to it.", v.Back, upperFirst(v.seated), v.rider)},
		{Text: "Hold to: the largest error, 95 times in 100, with which every limit still holds in 95 of 100 chairs, all else being held as the shop usually does: " + v.shopUsually(d) + " (common practice; your own under [shop]). \"no use\": the others break a limit more often than that whatever is done here; widen the margin first. What may be eight times as far off as usual need not be exact."},
	}
	return Block{Title: "How to read it", All: true, Lines: append(lines, says(v.slides)...)}
}

// shopUsually says what the shop holds: a length, a radius, an angle, a weight, each as the table of
// measures or the design has it.
func (v voice) shopUsually(d piece.Design) string {
	var held []string
	for _, m := range []struct{ what, key string }{{"lengths", "seat.rear"}, {"radii", "rocker.radius"}, {"angles", "back.recline"}, {"the weight", "piece.weight"}} {
		if measure, _, err := d.Measure(m.key); err == nil {
			held = append(held, m.what+" to "+v.with(d.Tolerance(measure), measure.Kind))
		}
	}
	return list(held)
}
