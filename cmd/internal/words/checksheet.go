package words

import (
	"fmt"
	"math"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// blank is a line to write on, numbered one with the number that a measure has on the measuring sheet.
const blank = "________"

func numbered(key, text string) string {
	for _, m := range piece.Measures() {
		if m.Key == key {
			return fmt.Sprintf("(%d) %s", m.Blank, text)
		}
	}
	return text
}

// CheckSheet returns the sheet on which the finished piece is measured against its design,
// with the numbers of the blanks that [measured] takes.
func CheckSheet(l layout.Layout, source string) sheet.Sheet {
	v := voiceOf(l.Design)
	tape := &sheet.Table{Head: []string{"As drawn, on a level floor", "should be", v.leftRocker, v.rightRocker, ""}}
	tape.Add(v.nose+" tip off the floor", v.bare(l.Report.Tape.NoseTip), blank, blank, v.unit())
	tape.Add(v.tail+" tip off the floor", v.bare(l.Report.Tape.TailTip), blank, blank, v.unit())
	tape.Add("tip to tip", v.bare(l.Report.Tape.TipToTip), blank, blank, v.unit())
	return v.bench(l, "check sheet", source, sheet.Block{Table: tape}, v.risesBlock(l), v.restBlock(l), v.readBlock())
}

// risesBlock returns the five stations for both rockers.
func (v voice) risesBlock(l layout.Layout) sheet.Block {
	t := &sheet.Table{Head: []string{"Rise over the floor line", "should be",
		numbered("measured.left.N", v.leftRocker), numbered("measured.right.N", v.rightRocker), "may differ by"}}
	for k, row := range l.Rises.Rows {
		label := v.length(math.Abs(row.At)) + " " + pick(row.At < 0, v.behind, v.ahead)
		if k+1 == l.Rises.Low {
			label = "the low point"
		}
		t.Add(fmt.Sprintf("%d: %s", k+1, label), quantity.Compared(row.Rise, v.units), blank, blank, quantity.Compared(row.Allowed, v.units)+" "+v.unit())
	}
	text := fmt.Sprintf("Stations %s apart %s, from the %s; the low point is station %d.",
		v.length(l.Rises.Spacing), strings.TrimSpace(numbered("measured.spacing", "")), v.noseEnd, l.Rises.Low)
	if allowed := l.Rises.Allowed; math.IsNaN(allowed) {
		text += " 1/32 in (0.8 mm) between the two is common practice."
	} else {
		text += fmt.Sprintf(" %s tips that differ by %s %s drag each rocker 1/32 in (0.8 mm) in a rock, "+
			"which is our judgement of what nobody notices.",
			upperFirst(v.tail), quantity.Compared(allowed, v.units), v.unit())
	}
	return sheet.Block{Table: t, Lines: sheet.Says(text)}
}

// restBlock returns what level and watch should show.
func (v voice) restBlock(l layout.Layout) sheet.Block {
	t := &sheet.Table{Head: []string{"At rest"}}
	for _, r := range l.Rests {
		t.Head = append(t.Head, brief(r.Load), "measured")
	}
	t.Head = append(t.Head, "")
	add := func(label, unit, key string, get func(r layout.Rest) string) {
		cells, known := []string{label}, false
		for _, r := range l.Rests {
			known = known || get(r) != "–"
			cells = append(cells, get(r), numbered(key+pick(r.Empty, "", "_ridden"), blank))
		}
		if known { // of a piece with a seat and a back
			t.Add(append(cells, unit)...)
		}
	}
	add("seat falls back", "degrees", "", func(r layout.Rest) string { return v.towards(r.SeatFalls) })
	add("back leans from plumb", "degrees", "", func(r layout.Rest) string { return v.angle(r.BackLeans) })
	add("ten rocks, there and back", "seconds", "measured.ten_rocks", func(r layout.Rest) string { return v.seconds(r.TenRocks) })
	add("  let go from this tilt", "degrees", "measured.let_go", func(layout.Rest) string { return v.angle(layout.LetGo) })
	return sheet.Block{Table: t, Lines: sheet.Says("Ten rocks are worked out without losses; " +
		"a real floor and the air make them a little longer or fewer.")}
}

// readBlock returns the other blanks of a finished piece.
func (v voice) readBlock() sheet.Block {
	t := &sheet.Table{Head: []string{"For [measured]", "", ""}}
	seen := map[int]bool{}
	for _, m := range piece.Measures() {
		if strings.HasPrefix(m.Key, "measured.") && m.Blank > 0 && m.Blank < 30 && !seen[m.Blank] {
			seen[m.Blank] = true
			t.Add(numbered(m.Key, v.renamed.Replace(m.Label)), blank, quantity.Unit(m.Kind, v.units))
		}
	}
	return sheet.Block{Table: t}
}
