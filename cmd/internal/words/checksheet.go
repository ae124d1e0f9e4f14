package words

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// blank is a line to write on.
const blankLine = "________"

// CheckSheet returns the sheet on which the finished piece is measured against its design,
// with the numbers of the blanks that [measured] takes.
func CheckSheet(l layout.Layout, source string) Sheet {
	v := voiceOf(l.Design)
	s := Sheet{Title: v.benchTitle(l, "check sheet"), Source: source}
	s.Blocks = append(s.Blocks, v.tapeBlock(l), v.risesBlock(l), v.restBlock(l), v.readBlock(l), v.takenBlock(l))
	return s
}

// tapeBlock returns what a tape says of each rocker.
func (v voice) tapeBlock(l layout.Layout) Block {
	t := &Table{Head: []string{"As drawn, on a level floor", "should be", v.leftRocker, v.rightRocker, ""}}
	for _, row := range []struct {
		label string
		x     float64
	}{{v.nose + " tip off the floor", l.Report.Tape.NoseTip}, {v.tail + " tip off the floor", l.Report.Tape.TailTip}, {"tip to tip", l.Report.Tape.TipToTip}} {
		t.Rows = append(t.Rows, Row{Cells: []string{row.label, v.shop(row.x, quantity.Length), blankLine, blankLine, v.unit()}})
	}
	return Block{Table: t}
}

// risesBlock returns the five stations for both rockers.
func (v voice) risesBlock(l layout.Layout) Block {
	t := &Table{Head: []string{"Rise over the floor line", "should be", fmt.Sprintf("(%d) %s", blankOf("measured.left.N"), v.leftRocker), fmt.Sprintf("(%d) %s", blankOf("measured.right.N"), v.rightRocker), "may differ by"}}
	for k, row := range l.Rises.Rows {
		label := fmt.Sprintf("%d: %s %s", k+1, v.with(row.At, quantity.Length), v.ahead)
		switch {
		case k+1 == l.Rises.Low:
			label = fmt.Sprintf("%d: the low point", k+1)
		case row.At < 0:
			label = fmt.Sprintf("%d: %s %s", k+1, v.with(-row.At, quantity.Length), v.behind)
		}
		t.Rows = append(t.Rows, Row{Cells: []string{label, v.fine32(row.Rise), blankLine, blankLine, v.fine32(row.Allowed) + " " + v.unit()}})
	}
	text := fmt.Sprintf("Stations %s apart (%d), from the %s; the low point is station %d.", v.with(l.Rises.Spacing, quantity.Length), blankOf("measured.spacing"), v.noseEnd, l.Rises.Low)
	if allowed := l.Rises.Allowed; math.IsNaN(allowed) {
		text += " 1/32 in (0.8 mm) between the two is common practice."
	} else {
		text += fmt.Sprintf(" %s tips that differ by %s drag each rocker 1/32 in (0.8 mm) in a rock, which is our judgement of what nobody notices.", upperFirst(v.tail), v.fine32(allowed)+" "+v.unit())
	}
	return Block{Table: t, Lines: []Line{{Text: text}}}
}

// fine32 writes a length to a 32nd of an inch, or a tenth of a millimetre: as two rockers are compared.
func (v voice) fine32(x float64) string {
	if v.units == quantity.Metric {
		return strings.TrimSuffix(strconv.FormatFloat(x*1e3, 'f', 1, 64), ".0")
	}
	const part = 0.0254 / 32
	n := int(math.Round(x / part))
	whole, above, below := n/32, n%32, 32
	for above > 0 && above%2 == 0 {
		above, below = above/2, below/2
	}
	switch {
	case above == 0:
		return strconv.Itoa(whole)
	case whole == 0:
		return fmt.Sprintf("%d/%d", above, below)
	}
	return fmt.Sprintf("%d %d/%d", whole, above, below)
}

// restBlock returns what level and watch should show.
func (v voice) restBlock(l layout.Layout) Block {
	t := &Table{Head: []string{"At rest"}}
	for _, r := range l.Rests {
		t.Head = append(t.Head, plain(short(r.Load)), "measured")
	}
	t.Head = append(t.Head, "")
	add := func(label, unit string, get func(r layout.Rest) string, blank func(r layout.Rest) string) {
		cells := []string{label}
		known := false
		for _, r := range l.Rests {
			cells = append(cells, get(r), blank(r))
			known = known || get(r) != "–"
		}
		if !known {
			return // a piece without a seat or a back
		}
		t.Rows = append(t.Rows, Row{Cells: append(cells, unit)})
	}
	line := func(layout.Rest) string { return blankLine }
	numbered := func(empty, ridden string) func(layout.Rest) string {
		return func(r layout.Rest) string {
			key := ridden
			if r.Empty {
				key = empty
			}
			return fmt.Sprintf("(%d) %s", blankOf(key), blankLine)
		}
	}
	add("seat falls back", "degrees", func(r layout.Rest) string { return v.towards(r.SeatFalls) }, line)
	add("back leans from plumb", "degrees", func(r layout.Rest) string { return v.shop(r.BackLeans, quantity.Angle) }, line)
	add("ten rocks, there and back", "seconds", func(r layout.Rest) string { return v.seconds(r.TenRocks) }, numbered("measured.ten_rocks", "measured.ten_rocks_ridden"))
	add("  let go from this tilt", "degrees", func(layout.Rest) string { return v.shop(layout.LetGo, quantity.Angle) }, numbered("measured.let_go", "measured.let_go_ridden"))
	return Block{Table: t, Lines: []Line{{Text: "Ten rocks are worked out without losses; a real floor and the air make them a little longer or fewer."}}}
}

// readBlock returns the other blanks of a finished piece.
func (v voice) readBlock(l layout.Layout) Block {
	t := &Table{Head: []string{"For [measured]", "", ""}}
	seen := map[int]bool{}
	for _, m := range piece.Measures() {
		if !strings.HasPrefix(m.Key, "measured.") || m.Blank == 0 || m.Blank >= 30 || seen[m.Blank] {
			continue
		}
		seen[m.Blank] = true
		unit := quantity.Unit(m.Kind, v.units)
		t.Rows = append(t.Rows, Row{Cells: []string{fmt.Sprintf("(%d) %s", m.Blank, v.renamed.Replace(m.Label)), blankLine, unit}})
	}
	return Block{Table: t}
}

// blankOf returns the number of a measure's blank.
func blankOf(key string) int {
	for _, m := range piece.Measures() {
		if m.Key == key {
			return m.Blank
		}
	}
	return 0
}
