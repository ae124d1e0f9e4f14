package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/rocker/bench"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// CutSheet returns the cut list: parts as finished, and the rough wood for them.
func CutSheet(l layout.Layout, source string) sheet.Sheet {
	w := wordingOf(l.Design)
	finished := &sheet.Table{Head: []string{"Finished", "", "", quantity.Unit(quantity.Mass, w.System)}}
	rough := &sheet.Table{Head: []string{"Rough", "", "", inUnits(w.units, "board feet", "litres")}}
	var remarks []sheet.Line
	for _, c := range l.Cuts {
		part, of := brief(c.Part), strconv.Itoa(c.Count)+" of"
		finished.Add(part, of, dimensions(w.units, c.Finished), w.shop(c.Mass(), quantity.Mass))
		rough.Add(part, of, dimensions(w.units, c.Rough), bulk(w.units, c))
		if remark := CutRemark(l, c); remark != "" {
			remarks = append(remarks, sheet.Line{Text: upperFirst(part) + ": " + remark + ".", Bad: c.Wider || c.Thicker})
		}
	}
	strips := ""
	if s := l.Strips; s != nil { // how thick one may be
		strips = fmt.Sprintf("%s bears strips up to %s at %s, the smallest radius (strain of %s %%, half of what breaks it)",
			cmp.Or(s.Wood, "A usual hardwood"), thin(w.units, s.Thickest), w.length(s.Tightest), hundredths(s.Strain, 2)) +
			when(s.Common > 0, "; makers use up to %s (common practice)", w.length(s.Common)) + "."
	}
	cubic, feet, weighs := l.Sum()
	notes := sheet.Says(strips, fmt.Sprintf("Rough wood in all: %.2f board feet, %.4f m³. ", feet, cubic)+
		pick(weighs > 0, "The parts of a named wood weigh "+mass(w.units, weighs)+" as shaped.", "Name a wood for the mass of a part."),
		"Length, width and thickness in "+inUnits(w.units, "inches", "millimetres")+
			", the grain along the length, which is that of the longest edge; "+
			"round, shaped and tapered parts as the square they come out of"+string(w.legs)+". Only what is drawn is listed.")
	return benchPage(w, l, "cut list", source,
		sheet.Block{Table: finished}, sheet.Block{Table: rough}, sheet.Block{Lines: append(notes, remarks...)})
}

// bulk writes the rough wood of a row: board feet or litres.
func bulk(u units, c layout.Cut) string {
	cubic, feet := c.Volume()
	return fixed(u, feet, 2, cubic*1e3, 2)
}

// CutRemark says how the grain of a seat runs, and what does not come out of the boards there are;
// "" where there is nothing to say.
func CutRemark(l layout.Layout, c layout.Cut) string {
	w := wordingOf(l.Design)
	grain := pick(c.Seat, "the grain runs front to back", "")
	var over []string
	if c.Wider {
		over = append(over, "wider than your boards ("+w.length(l.Shop.StockWidth)+")")
	}
	if c.Thicker {
		over = append(over, "thicker than your boards ("+w.length(l.Shop.StockThick)+")")
	}
	if len(over) == 0 {
		return grain
	}
	return grain + pick(c.Seat, "; ", "") + "rough, it is " + list(over) + ": glue it up"
}

// CutSize writes a size for a spreadsheet: with its unit, "3/4 in", for a bare fraction is taken for a
// day of a month, and so is "6.4" where a comma is the decimal point; whole millimetres plain.
func CutSize(x float64, system quantity.System) string {
	text := sized(units{system}, x)
	if whole := strings.TrimSuffix(text, " mm"); !strings.Contains(whole, ".") {
		return whole
	}
	return text
}

// sized writes a size with its unit, one that no rule reads, as of a strip, finer.
func sized(u units, x float64) string {
	if rounded := quantity.Round(x, quantity.Length, u.System); unsigned(rounded-x) > 1e-4 && x < 0.0127 {
		return thin(u, x)
	}
	return u.length(x)
}

// dimensions writes three sizes: "41 × 1 1/4 × 1/4".
func dimensions(u units, s layout.Size) string {
	return u.bare(s.Length) + " × " + u.bare(s.Width) + " × " + strings.TrimSuffix(sized(u, s.Thick), " "+u.unit())
}

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
	text := "All in " + inUnits(w.units, "inches", "millimetres") + ": how far " + w.fromLow + ", and the heights there. " +
		"Over the straight line from tip to tip the low point stands square to it; below zero is under it. " +
		"A corner is where the wood of an end stops, in a row of its own; a dash, where an edge has ended before."
	return benchPage(w, l, "stations", source, sheet.Block{Table: t}, sheet.Block{Lines: sheet.Says(text)}, routerBlock(w.units, l))
}

// routerBlock returns the arms of a trammel with a router: from the pin to either side of the
// bit, which runs outside the wood.
func routerBlock(u units, l layout.Layout) sheet.Block {
	cutter := l.Shop.Cutter
	t := &sheet.Table{Head: []string{"Pin to a " + u.length(cutter) + " bit", "its near side", "its middle", "its far side", ""}}
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
	height := func(p r2.Vec) string { return pick(s.Ended(p), "–", w.bare(p.Y)) }
	cells := []string{label, height(s.Floor)}
	if edges > 2 {
		cells = append(cells, height(s.Wood))
	}
	return append(cells, height(s.Top))
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

// legTable returns the numbers of the legs; with all, those of their section too, else without the rows that say
// nothing: rake and splay of plumb legs.
func legTable(w wording, l layout.Layout, all bool) *sheet.Table {
	t := &sheet.Table{Head: sheet.Across("", l.Legs, func(g layout.Leg) string { return brief(g.Name) }, "")}
	row := func(label string, kind quantity.Kind, cell func(g layout.Leg) string) {
		cells := sheet.Across(label, l.Legs, cell, quantity.Unit(kind, w.System))
		if all || slices.ContainsFunc(cells[1:len(l.Legs)+1], func(cell string) bool { return cell != "0" && cell != "–" }) {
			t.Add(cells...)
		}
	}
	add := func(label string, kind quantity.Kind, get func(g layout.Leg) float64) {
		row(label, kind, func(g layout.Leg) string { return w.shop(get(g), kind) })
	}
	foot := func(label string, get func(s bench.Standing) float64) {
		row(label, quantity.Angle, func(g layout.Leg) string { return pick(g.Block != nil, "square", w.angle(get(g.Standing))) })
	}
	corner := func(label string, get func(b *bench.Block) float64) {
		add("  height of its block, "+label+" corner", quantity.Length, func(g layout.Leg) float64 {
			if g.Block == nil {
				return math.NaN()
			}
			return get(g.Block)
		})
	}
	add("length, foot to top of the seat", quantity.Length, func(g layout.Leg) float64 { return g.Finished.Length })
	if slices.ContainsFunc(l.Legs, func(g layout.Leg) bool { return g.Block != nil }) {
		corner(w.nose+" inner", func(b *bench.Block) float64 { return b.NoseInner })
		corner(w.nose+" outer", func(b *bench.Block) float64 { return b.NoseOuter })
		corner(w.tail+" inner", func(b *bench.Block) float64 { return b.TailInner })
		corner(w.tail+" outer", func(b *bench.Block) float64 { return b.TailOuter })
	}
	add("meets the rocker, ahead of the low point", quantity.Length, func(g layout.Leg) float64 { return g.Standing.Foot.X })
	add("bevel, rocker to leg, towards the nose", quantity.Angle, func(g layout.Leg) float64 { return g.Standing.Angle })
	foot("foot cut off square, side view", func(s bench.Standing) float64 { return s.Cut })
	foot("foot cut off square, across the rocker", func(s bench.Standing) float64 { return s.Across })
	add("rake, foot ahead", quantity.Angle, func(g layout.Leg) float64 { return g.Line.Rake })
	add("splay, foot out", quantity.Angle, func(g layout.Leg) float64 { return g.Line.Splay })
	add("resultant (lean from plumb)", quantity.Angle, func(g layout.Leg) float64 { return g.Standing.Resultant })
	add("sightline, from the fore-and-aft line", quantity.Angle, func(g layout.Leg) float64 { return g.Sightline() })
	if all {
		add("side of the square section", quantity.Length, func(g layout.Leg) float64 { return g.Side })
	} else if !slices.ContainsFunc(l.Legs, func(g layout.Leg) bool { return !math.IsNaN(g.Sightline()) }) {
		t.Add(append([]string{"plumb: no rake, no splay"}, make([]string, len(l.Legs)+1)...)...)
	}
	return t
}

// LegSheet returns the numbers of the legs with their blocks and their joint in the seat, and says how the angles are meant.
func LegSheet(l layout.Layout, source string) sheet.Sheet {
	w := wordingOf(l.Design)
	return benchPage(w, l, "legs", source, sheet.Block{Table: legTable(w, l, true)}, sheet.Block{Lines: sheet.Says(
		"A leg's length is that of its longest edge, from the foot to the top of the seat; "+
			"scribe the last of it. A cut is + where the leg leans to the nose as it goes up, and its nose side is the shorter; "+
			"across where it leans inwards, and its inner side is. On a block a leg is sawn square, "+
			"and the block carries rake and splay; its heights are square to the top edge there.",
		"Bevel gauge: the resultant, along the sightline: turned out from straight ahead where the foot is ahead, "+
			"from straight back where it is behind. The left leg is the mirror image.")}, jointBlock(w.units, l))
}

// jointBlock returns the notched and rabbeted joint in the seat, two rabbets side by side.
func jointBlock(u units, l layout.Layout) sheet.Block {
	for _, leg := range l.Legs {
		if leg.Joint == nil {
			continue
		}
		t := &sheet.Table{Head: []string{"Notched and rabbeted into the seat", "", "", ""}}
		a, b := leg.Joint[0], leg.Joint[1]
		t.Add(row(u, "rabbet", a.Rabbet, b.Rabbet)...)
		t.Add("glue area of one joint", area(u, a.GlueArea), area(u, b.GlueArea), inUnits(u, "sq in", "cm²"))
		t.Add(row(u, "largest radius into the seat", a.Transition, b.Transition)...)
		return sheet.Block{Table: t, Lines: sheet.Says(fmt.Sprintf("A leg of %s square, "+
			"let into a seat of %s by half of its side (taken, not drawn).",
			u.length(leg.Side), u.length(l.Design.Seat.ThickOr())))}
	}
	return sheet.Block{Lines: sheet.Says("For a joint notched and rabbeted into the seat by 1/4 or 1/2 in these legs are too thin.")}
}

// area writes an area (m²) in square inches or cm².
func area(u units, x float64) string { return fixed(u, x/(quantity.In*quantity.In), 1, x*1e4, 0) }

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
	return benchPage(w, l, "check sheet", source, sheet.Block{Table: drawn}, risesBlock(w, l), restBlock(w, l), sheet.Block{Table: others})
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
	add("seat falls back", "degrees", "", func(r layout.Rest) string { return towards(w, r.SeatFalls) })
	add("back leans from plumb", "degrees", "", func(r layout.Rest) string { return w.angle(r.BackLeans) })
	add("ten rocks, there and back", "seconds", "measured.ten_rocks", func(r layout.Rest) string { return seconds(w.units, r.TenRocks) })
	add("  let go from this tilt", "degrees", "measured.let_go", func(layout.Rest) string { return w.angle(layout.LetGo) })
	return sheet.Block{Table: t, Lines: sheet.Says("Ten rocks are worked out without losses; " +
		"a real floor and the air make them a little longer or fewer.")}
}
