package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/rocker/bench"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// BoardSheet returns the words to the picture of a pair of rockers in one board.
func BoardSheet(l layout.Layout, source string) sheet.Sheet {
	w := wordingOf(l.Design)
	return benchPage(w, l, "board", source, boardBlock(w, l))
}

// StationSheet returns the heights of the edges at every station, over the floor line and
// over the chord, side by side.
func StationSheet(l layout.Layout, source string) sheet.Sheet {
	w := wordingOf(l.Design)
	heads := []string{"floor edge", "wood", "top edge"}
	if l.Rocker.Sole == 0 { // the wood's edge is the floor's
		heads = []string{"floor edge", "top edge"}
	}
	t := &sheet.Table{Head: slices.Concat([]string{"Over the floor line"}, heads, []string{"over tip to tip"}, heads, []string{""})}
	for i := range max(len(l.Stations), len(l.Chord)) {
		t.Add(slices.Concat(station(w, l.Stations, i, len(heads)), station(w, l.Chord, i, len(heads)), []string{""})...)
	}
	text := "All in " + inUnits(w.units, "inches", "millimetres") + ": how far " + w.fromLow +
		", and the heights there. " +
		"Over the straight line from tip to tip the low point stands square to it; below zero is under it. " +
		"A corner is where the wood of an end stops, in a row of its own; a dash, where an edge has ended before."
	return benchPage(w, l, "stations", source, sheet.Block{Table: t}, sheet.Block{Lines: sheet.Says(text)},
		routerBlock(w.units, l))
}

// routerBlock returns the arms of a trammel with a router: from the pin to either side of the
// bit, which runs outside the wood.
func routerBlock(u units, l layout.Layout) sheet.Block {
	cutter := l.Shop.Cutter
	t := &sheet.Table{Head: []string{"Pin to a " + u.length(cutter) + " bit", "its near side", "its middle",
		"its far side", ""}}
	add := func(label string, arm bench.Arm) {
		if arm != (bench.Arm{}) {
			t.Add(row(u, label, arm.Inside, arm.Middle, arm.Outside)...)
		}
	}
	for i, s := range l.Sweeps {
		of := when(len(l.Sweeps) > 1, ", arc %d", i+1)
		add("lower edge"+of, s.WoodArm(cutter))
		add("top edge"+of, s.TopArm(cutter))
	}
	if len(t.Rows) == 0 {
		return sheet.Block{}
	}
	return sheet.Block{Table: t}
}

// station returns the cells of one station: where, and the heights of so many edges; blanks where
// there is no such station.
func station(w wording, stations []bench.Station, i, edges int) []string {
	if i >= len(stations) {
		return make([]string, 1+edges)
	}
	s := stations[i]
	label := w.bare(s.At)
	if s.Ends != bench.Passing {
		names := map[bench.Ending]string{bench.Tip: " tip, ", bench.WoodCorner: " lower corner, ", bench.TopCorner: " top corner, "}
		label = pick(s.Nose, w.nose, w.tail) + names[s.Ends] + label
	}
	height := func(ended bool, y float64) string { return pick(ended, "–", w.bare(y)) }
	cells := []string{label, height(s.Ended(s.Floor), s.Floor.Y)}
	if edges > 2 {
		cells = append(cells, height(s.Ended(s.Wood), s.Wood.Y))
	}
	return append(cells, height(s.Ended(s.Top), s.Top.Y))
}

// Places returns what is written at each station of a pattern: its distance from the low
// point, nothing at it and where an edge ends.
func Places(l layout.Layout) []string {
	w := wordingOf(l.Design)
	places := make([]string, len(l.Stations))
	for i, s := range l.Stations {
		if s.At != 0 && s.Ends == bench.Passing {
			places[i] = w.bare(unsigned(s.At))
		}
	}
	return places
}

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
	w, tape := wordingOf(l.Design), l.Report.Tape
	drawn := &sheet.Table{Head: []string{"As drawn, on a level floor", "should be", w.leftRocker, w.rightRocker, ""}}
	drawn.Add(w.nose+" tip off the floor", w.bare(tape.NoseTip), blank, blank, w.unit())
	drawn.Add(w.tail+" tip off the floor", w.bare(tape.TailTip), blank, blank, w.unit())
	drawn.Add("tip to tip", w.bare(tape.TipToTip), blank, blank, w.unit())
	others := &sheet.Table{Head: []string{"For [measured]", "", ""}}
	seen := map[int]bool{}
	for _, m := range piece.Measures() {
		if strings.HasPrefix(m.Key, "measured.") && m.Blank > 0 && m.Blank < 30 && !seen[m.Blank] {
			seen[m.Blank] = true
			others.Add(numbered(m.Key, w.renamed.Replace(m.Label)), blank, quantity.Unit(m.Kind, w.System))
		}
	}
	return benchPage(w, l, "check sheet", source, sheet.Block{Table: drawn}, risesBlock(w, l), restBlock(w, l),
		sheet.Block{Table: others})
}

// risesBlock returns the five stations for both rockers.
func risesBlock(w wording, l layout.Layout) sheet.Block {
	t := &sheet.Table{Head: []string{"Rise over the floor line", "should be",
		numbered("measured.left.N", w.leftRocker), numbered("measured.right.N", w.rightRocker), "may differ by"}}
	for k, row := range l.Rises.Rows {
		label := w.length(unsigned(row.At)) + " " + pick(row.At < 0, w.behind, w.ahead)
		if k+1 == l.Rises.Low {
			label = "the low point"
		}
		t.Add(fmt.Sprintf("%d: %s", k+1, label), quantity.Compared(row.Rise, w.System), blank, blank,
			quantity.Compared(row.Allowed, w.System)+" "+w.unit())
	}
	allowed := " 1/32 in (0.8 mm) between the two is common practice."
	if x := l.Rises.Allowed; !math.IsNaN(x) {
		allowed = fmt.Sprintf(" %s tips that differ by %s %s drag each rocker 1/32 in (0.8 mm) in a rock, "+
			"which is our judgement of what nobody notices.", upperFirst(w.tail), quantity.Compared(x, w.System), w.unit())
	}
	return sheet.Block{Table: t, Lines: sheet.Says(fmt.Sprintf("Stations %s apart %s, from the %s; "+
		"the low point is station %d.%s",
		w.length(l.Rises.Spacing), strings.TrimSpace(numbered("measured.spacing", "")), w.noseEnd, l.Rises.Low, allowed))}
}

// restBlock returns what level and watch should show.
func restBlock(w wording, l layout.Layout) sheet.Block {
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
	add("seat falls back", "degrees", "measured.seat_falls_empty", func(r layout.Rest) string {
		return towards(w, r.SeatFalls) + when(!math.IsNaN(r.Pressed), " to %s", towards(w, r.Pressed))
	})
	add("back leans from plumb", "degrees", "", func(r layout.Rest) string { return w.angle(r.BackLeans) })
	add("ten rocks, there and back", "seconds", "measured.ten_rocks",
		func(r layout.Rest) string { return seconds(w.units, r.TenRocks) })
	add("  let go from this tilt", "degrees", "measured.let_go", func(layout.Rest) string { return w.angle(layout.LetGo) })
	return sheet.Block{Table: t, Lines: sheet.Says("Ten rocks are worked out without losses; " +
		"a real floor and the air make them a little longer or fewer.")}
}
