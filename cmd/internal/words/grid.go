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
	"rockerwright/sim/quantity"
)

// A Column is one of several designs side by side.
type Column struct {
	Head   string   // what sets it apart in a sentence: "radius 40 in", or its file
	Values []string // the same over its column, where By says of what: "40 in"; nil: Head
	By     []string // the labels of the measures that differ, in the order of their values
	Report check.Balanced

	even []float64 // how long a rock of one that was found takes, by its releases
}

// Columns returns the sheet of several designs side by side, in the units of the first.
func Columns(title, source string, columns []Column) sheet.Sheet {
	r := columns[0].Report
	w := wordingOf(r.Design)
	table := sideBySide("Side by side", columns, 9, slices.Concat([]reading{ // so that five stand side by side
		ofPiece(w.tail+" tip up", w.unit(), func(r *check.Balanced) string { return w.bare(r.Tape.TailTip) }),
		ofPiece(w.nose+" tip up", w.unit(), func(r *check.Balanced) string { return w.bare(r.Tape.NoseTip) }),
		tipToTip(w.units),
	}, restsOf(w, r.Design), rocksOf(w), marginOf(w.units, (*check.Balanced).Seated, "before going "+w.Forward,
		"  weight must lift", forward),
		[]reading{holds}))
	s := sheet.Sheet{Title: title, Source: source}
	if by := columns[0].By; len(by) > 0 {
		s.Blocks = []sheet.Block{{Lines: sheet.Says(upperFirst(strings.Join(by, "; ")) + ":")}}
	}
	whose := "Read for the piece alone."
	if seated, leaning := r.Seated(), r.Leaning(); seated != nil && !seated.Empty {
		whose = fmt.Sprintf("%s is %s; going %s is read for %s. For the rest of each, check it alone.",
			upperFirst(w.seated), brief(seated.Name), w.Back, brief(leaning.Name))
	}
	s.Blocks = append(s.Blocks, sheet.Block{Table: table}, sheet.Block{Lines: sheet.Says(whose, w.disclaimer)})
	return s
}

// A reading is a row of a table of designs side by side: what is read of each of them.
type reading struct {
	label, unit string
	cell        func(c *Column) string
}

// sideBySide returns a table of designs, with the heads of its columns in two lines where they are longer than room. Of
// a design that cannot be balanced a reading is a dash; one of dashes alone is left out.
func sideBySide(caption string, columns []Column, room int, readings []reading) *sheet.Table {
	first, second := headsOf(columns, room)
	t := headed(first, second, "")
	t.Caption = caption
	for _, r := range readings {
		if r.cell == nil { // a label across
			t.Add(r.label)
			continue
		}
		cells := sheet.Across(r.label, columns, func(c Column) string {
			if len(c.Report.Loads) == 0 {
				return "–"
			}
			return r.cell(&c)
		}, r.unit)
		if slices.ContainsFunc(cells[1:len(columns)+1], func(cell string) bool { return cell != "–" }) {
			t.Add(cells...)
		}
	}
	return t
}

// headed returns a table with heads over its columns, in two lines where a second has anything, none over its labels.
func headed(first, second []string, last ...string) *sheet.Table {
	t := &sheet.Table{Head: slices.Concat([]string{""}, first, last)}
	if strings.Join(second, "") != "" {
		t.Over, t.Head = t.Head, slices.Concat([]string{""}, second, last)
	}
	return t
}

// wanted puts a column in front of a table's others that says what is wanted of each row, by its label.
func wanted(t *sheet.Table, of map[string]string) {
	put := func(cells []string, text string) []string { return slices.Insert(cells, 1, text) }
	t.Head = put(t.Head, "wanted")
	if len(t.Over) > 0 {
		t.Over = put(t.Over, "")
	}
	for i, r := range t.Rows {
		t.Rows[i].Cells = put(r.Cells, of[r.Cells[0]])
	}
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

// A ClassSheet is the text of two designs side by side.
type ClassSheet struct {
	Title, Tab string
	Made       string
	Pieces     [2]Section    // each with its side view
	Blocks     []sheet.Block // the differences in words, and the table
	Files      [2]Section    // over each design file
}

// Class returns the text of a class sheet.
func Class(columns [2]Column, m Making) ClassSheet {
	const heading = "Two pieces side by side"
	c := ClassSheet{Title: heading, Tab: heading, Made: m.Date.Format("2 January 2006") + " · rockerwright " + m.Version}
	for i, column := range columns {
		called := called(column)
		c.Pieces[i] = Section{ID: fmt.Sprintf("piece-%d", i+1), Title: called, Caption: title(&column.Report) + ". To scale."}
		c.Files[i] = Section{ID: fmt.Sprintf("file-%d", i+1), Title: "The design file of " + called}
	}
	c.Blocks = append([]sheet.Block{{Title: "How they differ", Lines: Differences(columns)}}, Columns("", "", columns[:]).Blocks...)
	return c
}

// Differences says in words in what two designs differ, as far as it shows in shop measures.
func Differences(columns [2]Column) []sheet.Line {
	a, b := columns[0].Report, columns[1].Report
	w := wordingOf(a.Design)
	if other := wordingOf(b.Design).piece; other != w.piece {
		return sheet.Says("One is a " + w.piece + ", the other a " + other +
			": they are asked different things, so only their numbers stand side by side.")
	}
	names := [2]string{called(columns[0]), called(columns[1])}
	var said []string
	differ := func(kind quantity.Kind, a, b float64, sentence string) { // both given, and not printed alike
		larger, smaller, name := w.with(a, kind), w.with(b, kind), names[0]
		if b > a {
			larger, smaller, name = smaller, larger, names[1]
		}
		if larger != smaller && !math.IsNaN(a) && !math.IsNaN(b) {
			said = append(said, upperFirst(fmt.Sprintf(sentence, name, larger, smaller)))
		}
	}
	stand := func(loads ...*check.Load) bool {
		n := len(said)
		for i, l := range loads {
			if l.Balance.Outcome != sim.Rocks {
				said = append(said, upperFirst(names[i])+" has no rest that could be set "+
					"against the other's: "+l.Balance.Outcome.String()+".")
			}
		}
		return len(said) == n
	}
	differ(quantity.Length, a.Tape.TailTip, b.Tape.TailTip,
		"%s has the higher "+w.tail+" tip: %s against %s off the floor.")
	if one, other := a.Seated(), b.Seated(); stand(one, other) {
		if math.IsNaN(one.SeatFall) || math.IsNaN(other.SeatFall) {
			differ(quantity.Angle, one.Balance.Rest.Tilt, other.Balance.Rest.Tilt, "%s rests further "+w.Back+": %s against %s.")
		} else {
			differ(quantity.Angle, one.SeatFall, other.SeatFall, "%s lets its seat fall further back "+
				"with its owner in it: %s against %s.")
		}
		differ(quantity.Time, one.Balance.Period, other.Balance.Period, "%s takes longer for one rock: %s against %s.")
		differ(quantity.Force, one.EffortBack, other.EffortBack, "%s wants the harder push for one degree: %s against %s.")
		differ(quantity.Angle, one.Forward.Angle, other.Forward.Angle,
			"%s keeps more before going "+w.Forward+": %s against %s.")
	}
	if one, other := a.Leaning(), b.Leaning(); stand(one, other) {
		one, other := one.Back, other.Back
		differ(quantity.Angle, one.Angle, other.Angle, "%s keeps more before going "+w.Back+": %s against %s.")
		differ(quantity.Length, one.Lift, other.Lift, "%s must lift its weight higher to go "+w.Back+": %s against %s.")
	}
	if len(said) == 0 {
		said = []string{"In shop measures they rest, rock and go over alike."}
	}
	limits := pick(a.Holds(), "All limits hold on both.", "On neither do all limits hold.")
	if first := a.Holds(); first != b.Holds() {
		limits = "All limits hold on " + pick(first, names[0], names[1]) + ", not on " + pick(first, names[1], names[0]) + "."
	}
	return sheet.Says(append(said, limits)...)
}

// called returns what a column is called in a sentence.
func called(c Column) string { return cmp.Or(brief(c.Head), "one") }
