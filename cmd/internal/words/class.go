package words

import (
	"cmp"
	"fmt"
	"math"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

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
	const title = "Two pieces side by side"
	c := ClassSheet{Title: title, Tab: title, Made: m.Date.Format("2 January 2006") + " · rockerwright " + m.Version}
	for i, column := range columns {
		d, called := column.Report.Design, called(column)
		c.Pieces[i] = Section{ID: fmt.Sprintf("piece-%d", i+1), Title: called, Caption: voiceOf(d).title(d) + ". To scale."}
		c.Files[i] = Section{ID: fmt.Sprintf("file-%d", i+1), Title: "The design file of " + called}
	}
	c.Blocks = append([]sheet.Block{{Title: "How they differ", Lines: Differences(columns)}}, Columns("", "", columns[:]).Blocks...)
	return c
}

// Differences says in words in what two designs differ, as far as it shows in shop
// measures.
func Differences(columns [2]Column) []sheet.Line {
	a, b := columns[0].Report, columns[1].Report
	v := voiceOf(a.Design)
	if other := voiceOf(b.Design).piece; other != v.piece {
		return sheet.Says("One is a " + v.piece + ", the other a " + other +
			": they are asked different things, so only their numbers stand side by side.")
	}
	d := differences{v: v, names: [2]string{called(columns[0]), called(columns[1])}}
	d.of(quantity.Length, a.Tape.TailTip, b.Tape.TailTip, "%s has the higher "+v.tail+" tip: %s against %s off the floor.")
	if one, other := a.Seated(), b.Seated(); d.stand(one, other) {
		if math.IsNaN(one.SeatFall) || math.IsNaN(other.SeatFall) {
			d.of(quantity.Angle, one.Balance.Rest.Tilt, other.Balance.Rest.Tilt, "%s rests further "+v.Back+": %s against %s.")
		} else {
			d.of(quantity.Angle, one.SeatFall, other.SeatFall, "%s lets its seat fall further back with its owner in it: %s against %s.")
		}
		d.of(quantity.Time, one.Balance.Period, other.Balance.Period, "%s takes longer for one rock: %s against %s.")
		d.of(quantity.Force, one.EffortBack, other.EffortBack, "%s wants the harder push for one degree: %s against %s.")
		d.of(quantity.Angle, one.Balance.Forward.Angle, other.Balance.Forward.Angle, "%s keeps more before going "+v.Forward+": %s against %s.")
	}
	if one, other := a.Leaning(), b.Leaning(); d.stand(one, other) {
		one, other := one.Balance.Back, other.Balance.Back
		d.of(quantity.Angle, one.Angle, other.Angle, "%s keeps more before going "+v.Back+": %s against %s.")
		d.of(quantity.Length, one.Lift, other.Lift, "%s must lift its weight higher to go "+v.Back+": %s against %s.")
	}
	alike := len(d.lines) == 0
	switch first := a.Holds(); {
	case first && b.Holds():
		d.say("All limits hold on both.")
	case !first && !b.Holds():
		d.say("On neither do all limits hold.")
	default:
		d.say("All limits hold on " + pick(first, d.names[0], d.names[1]) + ", not on " + pick(first, d.names[1], d.names[0]) + ".")
	}
	if alike {
		return append(sheet.Says("In shop measures they rest, rock and go over alike."), d.lines...)
	}
	return d.lines
}

// A differences gathers what sets two designs apart.
type differences struct {
	v     voice
	names [2]string
	lines []sheet.Line
}

// called returns what a column is called in a sentence.
func called(c Column) string { return cmp.Or(brief(c.Head), "one") }

func (d *differences) say(text string) { d.lines = append(d.lines, sheet.Line{Text: text}) }

// stand reports whether both loads rest, and says where one does not.
func (d *differences) stand(loads ...*check.Load) bool {
	both := true
	for i, l := range loads {
		if l.Balance.Outcome != sim.Rocks {
			d.say(upperFirst(d.names[i]) + " has no rest that could be set against the other's: " + l.Balance.Outcome.String() + ".")
			both = false
		}
	}
	return both
}

// of says which of two values is larger, both given; nothing where they print alike.
func (d *differences) of(kind quantity.Kind, a, b float64, sentence string) {
	first, second := d.v.with(a, kind), d.v.with(b, kind)
	if first == second || math.IsNaN(a) || math.IsNaN(b) {
		return
	}
	name := d.names[0]
	if b > a {
		name, first, second = d.names[1], second, first
	}
	d.say(upperFirst(fmt.Sprintf(sentence, name, first, second)))
}
