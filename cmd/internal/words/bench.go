package words

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"rockerwright/rocker/bench"
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
	nose, tail := v.tips()
	t := &Table{Head: []string{"As drawn, on a level floor", "should be", "left", "right", ""}}
	for _, row := range []struct {
		label string
		x     float64
	}{{nose + " tip off the floor", l.Report.Tape.NoseTip}, {tail + " tip off the floor", l.Report.Tape.TailTip}, {"tip to tip", l.Report.Tape.TipToTip}} {
		t.Rows = append(t.Rows, Row{Cells: []string{row.label, v.shop(row.x, quantity.Length), blankLine, blankLine, v.unit()}})
	}
	return Block{Table: t}
}

// risesBlock returns the five stations for both rockers.
func (v voice) risesBlock(l layout.Layout) Block {
	t := &Table{Head: []string{"Rise over the floor line", "should be", fmt.Sprintf("(%d) left", blankOf("measured.left.N")), fmt.Sprintf("(%d) right", blankOf("measured.right.N")), "may differ by"}}
	for k, row := range l.Rises.Rows {
		label := fmt.Sprintf("%d: %s ahead", k+1, v.with(row.At, quantity.Length))
		switch {
		case k+1 == l.Rises.Low:
			label = fmt.Sprintf("%d: the low point", k+1)
		case row.At < 0:
			label = fmt.Sprintf("%d: %s behind", k+1, v.with(-row.At, quantity.Length))
		}
		t.Rows = append(t.Rows, Row{Cells: []string{label, v.fine32(row.Rise), blankLine, blankLine, v.fine32(row.Allowed) + " " + v.unit()}})
	}
	text := fmt.Sprintf("Stations %s apart (%d), from the nose; the low point is station %d.", v.with(l.Rises.Spacing, quantity.Length), blankOf("measured.spacing"), l.Rises.Low)
	if allowed := l.Rises.Allowed; math.IsNaN(allowed) {
		text += " 1/32 in (0.8 mm) between the two is common practice."
	} else {
		text += fmt.Sprintf(" Tail tips that differ by %s drag each rocker 1/32 in (0.8 mm) in a rock, which is our judgement of what nobody notices.", v.fine32(allowed)+" "+v.unit())
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
		t.Rows = append(t.Rows, Row{Cells: []string{fmt.Sprintf("(%d) %s", m.Blank, m.Label), blankLine, unit}})
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

// LegSheet returns the numbers of the legs with their blocks and their joint in the seat.
func LegSheet(l layout.Layout, source string) Sheet {
	v := voiceOf(l.Design)
	s := Sheet{Title: v.benchTitle(l, "legs"), Source: source}
	s.Blocks = append(s.Blocks, Block{Table: v.legTable(l, true)}, v.legWords(), v.jointBlock(l), v.takenBlock(l))
	return s
}

// legWords says how the angles are meant.
func (v voice) legWords() Block {
	return Block{Lines: []Line{
		{Text: "The leg's length is from the underside of the seat to the top edge, on its centre line; scribe the last of it. A cut is + where the leg leans to the nose as it goes up, across where it leans inwards. With a block the leg is sawn square, and the block carries rake and splay."},
		{Text: "Bevel gauge: the resultant, along the sightline: turned out from straight ahead where the foot is ahead, from straight back where it is behind. The left leg is the mirror image."},
	}}
}

// jointBlock returns the notched and rabbeted joint in the seat, two rabbets side by side.
func (v voice) jointBlock(l layout.Layout) Block {
	for _, leg := range l.Legs {
		if leg.Joint == nil {
			continue
		}
		t := &Table{Head: []string{"Notched and rabbeted into the seat", "", "", ""}}
		a, b := leg.Joint[0], leg.Joint[1]
		t.Rows = append(t.Rows,
			v.row("rabbet", a.Rabbet, b.Rabbet),
			Row{Cells: []string{"glue area of one joint", v.area(a.GlueArea), v.area(b.GlueArea), v.areaUnit()}},
			v.row("largest radius into the seat", a.Transition, b.Transition))
		return Block{Table: t, Lines: []Line{{Text: fmt.Sprintf("A leg of %s square, let into a seat of %s by half of its side (taken, not drawn).", v.with(leg.Side, quantity.Length), v.with(l.Design.Seat.ThickOr(), quantity.Length))}}}
	}
	return Block{Lines: []Line{{Text: "For a joint notched and rabbeted into the seat by 1/4 or 1/2 in these legs are too thin."}}}
}

func (v voice) area(x float64) string {
	if v.units == quantity.Metric {
		return strconv.FormatFloat(x*1e4, 'f', 0, 64)
	}
	return strconv.FormatFloat(x/(0.0254*0.0254), 'f', 1, 64)
}

func (v voice) areaUnit() string {
	if v.units == quantity.Metric {
		return "cm²"
	}
	return "sq in"
}

// StationSheet returns the heights of the edges at every station, over the floor line and
// over the chord, side by side.
func StationSheet(l layout.Layout, source string) Sheet {
	v := voiceOf(l.Design)
	sole := l.Rocker.Sole > 0
	heads := []string{"floor edge", "top edge"}
	if sole {
		heads = []string{"floor edge", "wood", "top edge"}
	}
	t := &Table{Head: append([]string{"Over the floor line"}, heads...)}
	t.Head = append(append(append(t.Head, "over tip to tip"), heads...), "")
	for i := range max(len(l.Stations), len(l.Chord)) {
		left, right := v.station(l.Stations, i, sole), v.station(l.Chord, i, sole)
		t.Rows = append(t.Rows, Row{Cells: append(append(left, right...), "")})
	}
	text := "All in " + map[quantity.System]string{quantity.Inch: "inches", quantity.Metric: "millimetres"}[v.units] +
		": how far ahead of the low point (behind it, below zero), and the heights there. Over the straight line from tip to tip the low point stands square to it; below zero is under it. An edge that ends before a station is given at its end."
	return Sheet{Title: v.benchTitle(l, "stations"), Source: source, Blocks: []Block{{Table: t}, {Lines: []Line{{Text: text}}}, v.routerBlock(l), v.takenBlock(l)}}
}

// routerBlock returns the arms of a trammel with a router: from the pin to either side of the
// bit, which runs outside the wood.
func (v voice) routerBlock(l layout.Layout) Block {
	cutter := l.Shop.Cutter
	t := &Table{Head: []string{"Pin to a " + v.with(cutter, quantity.Length) + " bit", "its near side", "its middle", "its far side", ""}}
	add := func(label string, arm bench.Arm) {
		if arm != (bench.Arm{}) {
			t.Rows = append(t.Rows, v.row(label, arm.Inside, arm.Middle, arm.Outside))
		}
	}
	for i, s := range l.Sweeps {
		of := ""
		if len(l.Sweeps) > 1 {
			of = fmt.Sprintf(", arc %d", i+1)
		}
		add("lower edge"+of, s.WoodArm(cutter))
		add("top edge"+of, s.TopArm(cutter))
	}
	if len(t.Rows) == 0 {
		return Block{}
	}
	return Block{Table: t}
}

// station returns the cells of one station: where, and the heights of the edges; blanks where
// there is no such station.
func (v voice) station(stations []bench.Station, i int, sole bool) []string {
	if i >= len(stations) {
		return make([]string, 3+map[bool]int{true: 1}[sole])
	}
	s := stations[i]
	nose, tail := v.tips()
	label := v.shop(s.At, quantity.Length)
	switch i {
	case len(stations) - 2:
		label = nose + " tip, " + label
	case len(stations) - 1:
		label = tail + " tip, " + label
	}
	cells := []string{label, v.shop(s.Floor.Y, quantity.Length)}
	if sole {
		cells = append(cells, v.shop(s.Wood.Y, quantity.Length))
	}
	return append(cells, v.shop(s.Top.Y, quantity.Length))
}

// Places returns what is written at each station of a pattern: its distance from the low
// point, nothing at it and at the tips.
func Places(l layout.Layout) []string {
	v := voiceOf(l.Design)
	places := make([]string, len(l.Stations))
	for i, s := range l.Stations {
		if s.At != 0 && i < len(l.Stations)-2 {
			places[i] = v.shop(math.Abs(s.At), quantity.Length)
		}
	}
	return places
}

// CutSheet returns the cut list: parts as finished, and the rough wood for them.
func CutSheet(l layout.Layout, source string) Sheet {
	v := voiceOf(l.Design)
	wood := "board feet"
	if v.units == quantity.Metric {
		wood = "litres"
	}
	finished := &Table{Head: []string{"Finished", "", "", quantity.Unit(quantity.Mass, v.units)}}
	rough := &Table{Head: []string{"Rough", "", "", wood}}
	var feet, cubic, mass float64
	for _, c := range l.Cuts {
		m3, bf := c.Volume()
		cubic, feet = cubic+m3, feet+bf
		shown := strconv.FormatFloat(bf, 'f', 2, 64)
		if v.units == quantity.Metric {
			shown = strconv.FormatFloat(m3*1e3, 'f', 2, 64)
		}
		part, weight := plain(short(c.Part)), c.Mass()
		if !math.IsNaN(weight) {
			mass += weight
		}
		finished.Rows = append(finished.Rows, Row{Cells: []string{part, strconv.Itoa(c.Count) + " of", v.size(c.Finished), v.shop(weight, quantity.Mass)}})
		rough.Rows = append(rough.Rows, Row{Cells: []string{part, strconv.Itoa(c.Count) + " of", v.size(c.Rough), shown}})
	}
	text := fmt.Sprintf("Rough wood in all: %.2f board feet, %.4f m³.", feet, cubic)
	if mass > 0 {
		text += fmt.Sprintf(" The parts of a named wood weigh %s as finished squares.", v.with(mass, quantity.Mass))
	} else {
		text += " Name a wood for the mass of a part."
	}
	unit := map[quantity.System]string{quantity.Inch: "inches", quantity.Metric: "millimetres"}[v.units]
	lines := []Line{{Text: text}, {Text: "Length, width and thickness in " + unit + ", the grain along the length; round, shaped and tapered parts as the square they come out of, legs to the top of the seat. Only what is drawn is listed."}}
	return Sheet{Title: v.benchTitle(l, "cut list"), Source: source, Blocks: []Block{{Table: finished}, {Table: rough}, {Lines: lines}, v.takenBlock(l)}}
}

// size writes three sizes: "41 × 1 1/4 × 1/4".
func (v voice) size(s layout.Size) string {
	thick := v.shop(s.Thick, quantity.Length)
	if x := quantity.Round(s.Thick, quantity.Length, v.units); math.Abs(x-s.Thick) > 1e-4 && s.Thick < 0.0127 { // a strip
		thick = strings.TrimSuffix(v.thin(s.Thick), " "+v.unit())
	}
	return v.shop(s.Length, quantity.Length) + " × " + v.shop(s.Width, quantity.Length) + " × " + thick
}

// BoardSheet returns the words to the picture of a pair of rockers in one board.
func BoardSheet(l layout.Layout, source string) Sheet {
	v := voiceOf(l.Design)
	return Sheet{Title: v.benchTitle(l, "board"), Source: source, Blocks: []Block{v.boardBlock(l), v.takenBlock(l)}}
}
