package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"
	"unicode/utf8"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A grid is a table of designs side by side, a row for each thing that is read of them.
type grid struct {
	voice
	columns []Column
	table   *sheet.Table
}

// newGrid returns a grid with the heads of its columns, in two lines where they are longer than
// room.
func newGrid(v voice, caption string, columns []Column, room int) *grid {
	first, second := headsOf(columns, room)
	t := headed(first, second, "")
	t.Caption = caption
	return &grid{v, columns, t}
}

// headed returns a table with heads over its columns, in two lines where a second has anything, none over its labels.
func headed(first, second []string, last ...string) *sheet.Table {
	t := &sheet.Table{Head: slices.Concat([]string{""}, first, last)}
	if strings.Join(second, "") != "" {
		t.Over, t.Head = t.Head, slices.Concat([]string{""}, second, last)
	}
	return t
}

// row adds what a cell says of each design; where there is none, a dash. A row of dashes alone is
// left out.
func (g *grid) row(label, unit string, cell func(r *check.Balanced) string) {
	there := false
	cells := sheet.Across(label, g.columns, func(c Column) string {
		text := "–"
		if len(c.Report.Loads) > 0 {
			text = cell(&c.Report)
		}
		there = there || text != "–"
		return text
	}, unit)
	if there {
		g.table.Add(cells...)
	}
}

// long adds a length of each design; of one that has none, none is written.
func (g *grid) long(label string, of func(r *check.Balanced) float64) {
	g.row(label, g.unit(), func(r *check.Balanced) string { return pick(of(r) != 0, g.bare(of(r)), "") })
}

// A chosen is one of the loads of a design.
type chosen func(r *check.Balanced) *check.Load

// of adds what a cell says of one load of each design; where that does not rock, what becomes of it.
func (g *grid) of(choose chosen, label, unit string, cell func(l *check.Load) string) {
	g.row(label, unit, func(r *check.Balanced) string {
		if l := choose(r); l != nil {
			return atRest(l, cell)
		}
		return "–"
	})
}

// atRest returns what a cell says of a load that rocks, of another what becomes of it.
func atRest(l *check.Load, cell func(l *check.Load) string) string {
	if l.Balance.Outcome != sim.Rocks {
		return l.Balance.Outcome.String()
	}
	return cell(l)
}

// margin adds how near one load of each design is to going over on a side.
func (g *grid) margin(choose chosen, label, lift string, side func(b sim.Balance) sim.Margin) {
	g.of(choose, label, "deg", func(l *check.Load) string { return g.angle(side(l.Balance).Angle) })
	g.of(choose, lift, g.unit(), func(l *check.Load) string { return g.bare(side(l.Balance).Lift) })
}

func back(b sim.Balance) sim.Margin    { return b.Back }
func forward(b sim.Balance) sim.Margin { return b.Forward }

func tipToTip(r *check.Balanced) float64 { return r.Tape.TipToTip }

// rocker adds the rocker itself, its arcs from nose to tail, its ends and its low point, and how it rests and rocks.
func (g *grid) rocker() {
	most := 1
	for _, c := range g.columns {
		most = max(most, len(arcsOf(c.Report.Design.Rocker)))
	}
	for n := range most {
		arc := func(r *check.Balanced) (arc piece.Arc) {
			if arcs := arcsOf(r.Design.Rocker); n < len(arcs) {
				arc = arcs[n]
			}
			return arc
		}
		g.long("radius"+when(most > 1, " %d, from nose", n+1), func(r *check.Balanced) float64 { return arc(r).Radius })
		if most > 1 {
			g.long("  along the curve", func(r *check.Balanced) float64 { return arc(r).Length })
		}
	}
	g.row(g.nose+" along the curve", g.unit(), func(r *check.Balanced) string { n, _ := r.Edge.Reach(); return g.bare(n) })
	g.row(g.tail+" along the curve", g.unit(), func(r *check.Balanced) string { _, t := r.Edge.Reach(); return g.bare(t) })
	if g.columns[0].Report.Design.Seat.SlopeKnown() {
		g.row("behind the low point", g.unit(), func(r *check.Balanced) string { return g.bare(r.Design.Seat.Behind) })
	}
	g.long("tip to tip", tipToTip)
	g.rests()
	g.of((*check.Balanced).Seated, "back leans, seated", "deg", func(l *check.Load) string { return g.angle(l.BackRecline) })
	g.rocks()
}

// rocks adds time and push with the owner at ease, and how near it is to going back.
func (g *grid) rocks() {
	g.of((*check.Balanced).Seated, "one rock", "s", func(l *check.Load) string { return fmt.Sprintf("%.2f", l.Balance.Period) })
	g.of((*check.Balanced).Seated, "push for one degree", quantity.Unit(quantity.Force, g.units), g.effort)
	g.margin((*check.Balanced).Leaning, "before going "+g.Back, "  weight must lift", back)
}

// holds adds whether all limits hold.
func (g *grid) holds() {
	g.row("all limits hold", "", func(r *check.Balanced) string { return pick(r.Holds(), "yes", "NO") })
}

// rests adds how the seat falls, empty and with somebody in it.
func (g *grid) rests() {
	tilt := func(l *check.Load) string {
		if l.SeatFall == l.SeatFall { // drawn
			return g.towards(l.SeatFall)
		}
		return g.towards(l.Balance.Rest.Tilt)
	}
	rests := pick(g.columns[0].Report.Design.Seat.SlopeKnown(), "seat falls, ", "tilts at rest, ")
	g.of(func(r *check.Balanced) *check.Load { return &r.Loads[0] }, rests+"empty", "deg", tilt)
	g.of((*check.Balanced).Seated, rests+g.seated, "deg", tilt)
}

// wanted puts a column in front that says what is wanted of each row.
func (g *grid) wanted(of map[string]string) {
	put := func(cells []string, text string) []string { return slices.Insert(cells, 1, text) }
	g.table.Head = put(g.table.Head, "wanted")
	if len(g.table.Over) > 0 {
		g.table.Over = put(g.table.Over, "")
	}
	for i := range g.table.Rows {
		g.table.Rows[i].Cells = put(g.table.Rows[i].Cells, of[g.table.Rows[i].Cells[0]])
	}
}

// A Column is one of several designs side by side.
type Column struct {
	Head   string   // what sets it apart in a sentence: "radius 40 in", or its file
	Values []string // the same over its column, where By says of what: "40 in"; nil: Head
	By     []string // the labels of the measures that differ, in the order of their values
	Report check.Balanced
}

// Columns returns the sheet of several designs side by side, in the units of the first.
func Columns(title, source string, columns []Column) sheet.Sheet {
	r := columns[0].Report
	g := newGrid(voiceOf(r.Design), "Side by side", columns, 9) // so that five stand side by side
	g.row(g.tail+" tip up", g.unit(), func(r *check.Balanced) string { return g.bare(r.Tape.TailTip) })
	g.row(g.nose+" tip up", g.unit(), func(r *check.Balanced) string { return g.bare(r.Tape.NoseTip) })
	g.long("tip to tip", tipToTip)
	g.rests()
	g.rocks()
	g.margin((*check.Balanced).Seated, "before going "+g.Forward, "  weight must lift", forward)
	g.holds()
	s := sheet.Sheet{Title: title, Source: source}
	if by := columns[0].By; len(by) > 0 {
		s.Blocks = []sheet.Block{{Lines: sheet.Says(upperFirst(strings.Join(by, "; ")) + ":")}}
	}
	whose := "Read for the piece alone."
	if seated, leaning := r.Seated(), r.Leaning(); seated != nil && !seated.Empty {
		whose = fmt.Sprintf("%s is %s; going %s is read for %s. For the rest of each, check it alone.",
			upperFirst(g.seated), brief(seated.Name), g.Back, brief(leaning.Name))
	}
	s.Blocks = append(s.Blocks, sheet.Block{Table: g.table}, sheet.Block{Lines: sheet.Says(whose, g.disclaimer)})
	return s
}

// headsOf returns the heads of columns in two lines of at most so many letters. Those that would be
// cut alike are cut in front, where names of files differ least, and else numbered.
func headsOf(columns []Column, room int) (first, second []string) {
	cut := func(write func(i int, name string) string) bool {
		first, second = nil, nil
		seen := map[[2]string]bool{}
		for i, c := range columns {
			a, b := parted(write(i, sheet.Plain(cmp.Or(strings.Join(c.Values, ", "), c.Head))), room)
			if len(c.Values) == 2 {
				a, b = sheet.Cut(write(i, sheet.Plain(c.Values[0])), room), sheet.Cut(sheet.Plain(c.Values[1]), room)
			}
			first, second = append(first, a), append(second, b)
			seen[[2]string{a, b}] = true
		}
		return len(seen) == len(columns)
	}
	end := func(_ int, name string) string {
		if letters := []rune(name); len(letters) > room {
			return "…" + string(letters[len(letters)-room+1:])
		}
		return name
	}
	if !cut(func(_ int, name string) string { return name }) && !cut(end) {
		cut(func(i int, name string) string { return fmt.Sprintf("%d %s", i+1, end(i, name)) })
	}
	return first, second
}

// fourAbreast is how many loads stand side by side in a table of 80 columns.
const fourAbreast = 4

// readings returns the table of what a level, a watch and a spring scale show at each
// rest: the piece empty, then the owner's loads.
func (v voice) readings(r check.Report, remarks remarks) sheet.Block {
	shown := []*check.Load{&r.Loads[0]}
	owner := ofRole(r.Loads, piece.Owner)
	if len(owner) < 2 {
		owner = append(owner, ofRole(r.Loads, piece.Other)...)
	}
	room := fourAbreast
	if len(owner) > 0 && owner[len(owner)-1].Sitter != owner[0].Sitter {
		room-- // names are longer than postures
	}
	shown = append(shown, owner[:min(len(owner), room-1)]...)
	t := v.readingsOf(r.Design, shown, remarks)
	t.Caption = "At each rest, and before going over"
	return sheet.Block{Table: t}
}

// readingsOf returns the readings of some loads, one a column, as many as the remarks have room for.
func (v voice) readingsOf(d piece.Design, loads []*check.Load, remarks remarks) *sheet.Table {
	t := headed(heads(loads))
	row := func(label, unit string, cell func(l *check.Load) string) {
		t.Add(sheet.Across(label, loads, func(l *check.Load) string { return atRest(l, cell) }, unit)...)
	}
	margin := func(way string, side func(b sim.Balance) sim.Margin) {
		row("before going "+way, "degrees", func(l *check.Load) string { return v.angle(side(l.Balance).Angle) })
		if remarks > noLift {
			row("  its weight must lift", v.unit(), func(l *check.Load) string { return v.bare(side(l.Balance).Lift) })
		}
	}
	if d.Seat.SlopeKnown() {
		row("seat falls back", "degrees", func(l *check.Load) string { return v.towards(l.SeatFall) })
	}
	if d.Back.Drawn() {
		row("back leans from plumb", "degrees", func(l *check.Load) string { return v.towards(l.BackRecline) })
	}
	if !d.Seat.SlopeKnown() {
		row("tilts at rest", "degrees", func(l *check.Load) string { return v.towards(l.Balance.Rest.Tilt) })
	}
	row("one rock, there+back", "seconds", func(l *check.Load) string { return v.seconds(l.Balance.Period) })
	if _, known := d.TopOfBack(); known && remarks > noPush {
		row("push for one degree", quantity.Unit(quantity.Force, v.units)+", at top", v.effort)
	}
	margin(v.shortBack, back)
	margin(v.shortForward, forward)
	return t
}

// effort writes the push for one degree, or that the hilltop is nearer than that.
func (v voice) effort(l *check.Load) string {
	if l.Balance.Back.Angle <= math.Pi/180 {
		return "goes over"
	}
	return v.shop(l.EffortBack, quantity.Force)
}

// heads returns the names of loads in two lines, as the heads of columns: of one
// person what follows the name, of several the names.
func heads(loads []*check.Load) (first, second []string) {
	last := loads[len(loads)-1].Sitter
	several := slices.ContainsFunc(loads, func(l *check.Load) bool { return !l.Empty && l.Sitter != last })
	for _, l := range loads {
		name := strings.TrimPrefix(l.Name, l.Sitter+", ")
		if several {
			name = l.Name
		}
		a, b := parted(sheet.Plain(name), 13)
		first, second = append(first, a), append(second, b)
	}
	return first, second
}

// parted breaks a name into two lines of at most so many columns.
func parted(name string, room int) (first, second string) {
	if utf8.RuneCountInString(name) <= room {
		return name, ""
	}
	words := strings.Fields(name)
	for len(words) > 0 && utf8.RuneCountInString(first+" "+words[0]) <= room {
		first = strings.TrimSpace(first + " " + words[0])
		words = words[1:]
	}
	second = strings.Join(words, " ")
	if first == "" {
		first, second = second, ""
	}
	return sheet.Cut(first, room), sheet.Cut(second, room)
}
