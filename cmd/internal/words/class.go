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

// Differences says in words in what two designs differ, as far as it shows in shop
// measures.
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
		differ(quantity.Angle, one.Balance.Forward.Angle, other.Balance.Forward.Angle,
			"%s keeps more before going "+w.Forward+": %s against %s.")
	}
	if one, other := a.Leaning(), b.Leaning(); stand(one, other) {
		one, other := one.Balance.Back, other.Balance.Back
		differ(quantity.Angle, one.Angle, other.Angle, "%s keeps more before going "+w.Back+": %s against %s.")
		differ(quantity.Length, one.Lift, other.Lift, "%s must lift its weight higher to go "+w.Back+": %s against %s.")
	}
	if len(said) == 0 {
		said = []string{"In shop measures they rest, rock and go over alike."}
	}
	switch first := a.Holds(); {
	case first && b.Holds():
		said = append(said, "All limits hold on both.")
	case !first && !b.Holds():
		said = append(said, "On neither do all limits hold.")
	default:
		said = append(said, "All limits hold on "+pick(first, names[0], names[1])+", not on "+pick(first, names[1], names[0])+".")
	}
	return sheet.Says(said...)
}

// called returns what a column is called in a sentence.
func called(c Column) string { return cmp.Or(brief(c.Head), "one") }
