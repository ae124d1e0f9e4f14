package words

import (
	"fmt"
	"strings"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

// A grid is a table of designs side by side, a row for each thing that is read of them.
type grid struct {
	v       voice
	columns []Column
	table   *Table
}

// newGrid returns a grid with the heads of its columns, in two lines where they are longer than
// room.
func newGrid(v voice, columns []Column, room int) *grid {
	g := &grid{v, columns, &Table{}}
	first, second := headsOf(columns, room)
	first, second = append([]string{""}, first...), append([]string{""}, second...)
	g.table.Head = append(first, "")
	if some(second) {
		g.table.Over, g.table.Head = g.table.Head, append(second, "")
	}
	return g
}

// row adds what a cell says of each design; where there is none, a dash. A row of dashes alone is
// left out.
func (g *grid) row(label, unit string, cell func(r *check.Balanced) string) {
	cells, there := []string{label}, false
	for _, c := range g.columns {
		text := "–"
		if len(c.Report.Loads) > 0 {
			text = cell(&c.Report)
		}
		cells, there = append(cells, text), there || text != "–"
	}
	if !there {
		return
	}
	g.table.Rows = append(g.table.Rows, Row{Cells: append(cells, unit)})
}

// of reads a design by one of its loads; of one that does not rock, what becomes of it.
func (g *grid) of(choose func(r *check.Balanced) *check.Load, cell func(l *check.Load) string) func(r *check.Balanced) string {
	return func(r *check.Balanced) string {
		l := choose(r)
		switch {
		case l == nil:
			return "–"
		case l.Balance.Outcome != sim.Rocks:
			return l.Balance.Outcome.String()
		}
		return cell(l)
	}
}

// length is the unit of lengths.
func (g *grid) length() string { return quantity.Unit(quantity.Length, g.v.units) }

// tips adds what can be tested with a tape.
func (g *grid) tips() {
	g.row(g.v.tail+" tip up", g.length(), func(r *check.Balanced) string { return g.v.shop(r.Tape.TailTip, quantity.Length) })
	g.row(g.v.nose+" tip up", g.length(), func(r *check.Balanced) string { return g.v.shop(r.Tape.NoseTip, quantity.Length) })
	g.row("tip to tip", g.length(), func(r *check.Balanced) string { return g.v.shop(r.Tape.TipToTip, quantity.Length) })
}

// feel adds how it rests and rocks, and how near it is to going over on either side.
func (g *grid) feel() {
	v := g.v
	g.rests()
	g.rocks()
	g.row("before going "+v.Forward, "deg", g.of((*check.Balanced).Seated, func(l *check.Load) string { return v.shop(l.Balance.Forward.Angle, quantity.Angle) }))
	g.row("  weight must lift", g.length(), g.of((*check.Balanced).Seated, func(l *check.Load) string { return v.shop(l.Balance.Forward.Lift, quantity.Length) }))
	g.holds()
}

// rocks adds time and push with the owner at ease, and how near it is to going back.
func (g *grid) rocks() {
	v := g.v
	g.row("one rock", "s", g.of((*check.Balanced).Seated, func(l *check.Load) string { return fmt.Sprintf("%.2f", l.Balance.Period) }))
	g.row("push for one degree", quantity.Unit(quantity.Force, v.units), g.of((*check.Balanced).Seated, v.effort))
	g.row("before going "+v.Back, "deg", g.of((*check.Balanced).Leaning, func(l *check.Load) string { return v.shop(l.Balance.Back.Angle, quantity.Angle) }))
	g.row("  weight must lift", g.length(), g.of((*check.Balanced).Leaning, func(l *check.Load) string { return v.shop(l.Balance.Back.Lift, quantity.Length) }))
}

// holds adds whether all limits hold.
func (g *grid) holds() {
	g.row("all limits hold", "", func(r *check.Balanced) string {
		if r.Holds() {
			return "yes"
		}
		return "NO"
	})
}

// rests adds how the seat falls, empty and with somebody in it.
func (g *grid) rests() {
	v := g.v
	tilt := func(l *check.Load) string {
		if l.SeatFall == l.SeatFall { // drawn
			return v.towards(l.SeatFall)
		}
		return v.towards(l.Balance.Rest.Tilt)
	}
	rests := "seat falls"
	if g.columns[0].Report.Design.Seat.Front == 0 {
		rests = "tilts at rest"
	}
	empty := func(r *check.Balanced) *check.Load { return &r.Loads[0] }
	g.row(rests+", empty", "deg", g.of(empty, tilt))
	g.row(rests+", "+v.seated, "deg", g.of((*check.Balanced).Seated, tilt))
}

// wanted puts a column in front that says what is wanted of each row.
func (g *grid) wanted(of map[string]string) {
	put := func(cells []string, text string) []string {
		return append([]string{cells[0], text}, cells[1:]...)
	}
	g.table.Head = put(g.table.Head, "wanted")
	if len(g.table.Over) > 0 {
		g.table.Over = put(g.table.Over, "")
	}
	for i := range g.table.Rows {
		g.table.Rows[i].Cells = put(g.table.Rows[i].Cells, of[g.table.Rows[i].Cells[0]])
	}
}

// narrow is how wide the head of a column may be, so that five stand side by side.
const narrow = 9

// A Column is one of several designs side by side.
type Column struct {
	Head   string   // what sets it apart in a sentence: "radius 40 in", or its file
	Values []string // the same over its column, where By says of what: "40 in"; nil: Head
	By     []string // the labels of the measures that differ, in the order of their values
	Report check.Balanced
}

// Columns returns the sheet of several designs side by side, in the units of the first.
func Columns(title, source string, columns []Column) Sheet {
	v := voiceOf(columns[0].Report.Design)
	g := newGrid(v, columns, narrow)
	g.table.Caption = "Side by side"
	g.tips()
	g.feel()
	s := Sheet{Title: title, Source: source}
	if by := columns[0].By; len(by) > 0 {
		s.Blocks = []Block{{Lines: []Line{{Text: upperFirst(strings.Join(by, "; ")) + ":"}}}}
	}
	s.Blocks = append(s.Blocks, Block{Table: g.table}, Block{Lines: v.columnNotes(columns[0].Report)})
	return s
}

// headsOf returns the heads of columns in two lines of at most so many letters. Those that would be
// cut alike are cut in front, where names of files differ least, and else numbered.
func headsOf(columns []Column, room int) (first, second []string) {
	cut := func(write func(i int, name string) string) bool {
		first, second = nil, nil
		seen := map[[2]string]bool{}
		for i, c := range columns {
			name := strings.Join(c.Values, ", ")
			if name == "" {
				name = c.Head
			}
			a, b := parted(write(i, plain(name)), room)
			if len(c.Values) == 2 {
				a, b = cutTo(write(i, plain(c.Values[0])), room), cutTo(plain(c.Values[1]), room)
			}
			first, second = append(first, a), append(second, b)
			seen[[2]string{a, b}] = true
		}
		return len(seen) == len(columns)
	}
	whole := func(_ int, name string) string { return name }
	end := func(_ int, name string) string {
		if letters := []rune(name); len(letters) > room {
			return "…" + string(letters[len(letters)-room+1:])
		}
		return name
	}
	if !cut(whole) && !cut(end) {
		cut(func(i int, name string) string { return fmt.Sprintf("%d %s", i+1, end(i, name)) })
	}
	return first, second
}

// columnNotes says for whom the columns were read.
func (v voice) columnNotes(r check.Balanced) []Line {
	text := "Read for the piece alone."
	if seated, leaning := r.Seated(), r.Leaning(); seated != nil && !seated.Empty {
		text = fmt.Sprintf("%s is %s; going %s is read for %s. For the rest of each, check it alone.", upperFirst(v.seated), plain(short(seated.Name)), v.Back, plain(short(leaning.Name)))
	}
	return []Line{{Text: text}, v.foot()}
}

func some(texts []string) bool {
	for _, t := range texts {
		if t != "" {
			return true
		}
	}
	return false
}
