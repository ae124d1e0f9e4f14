package words

import (
	"fmt"
	"math"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

// A ClassSheet is the text of two designs side by side.
type ClassSheet struct {
	Title, Made string
	Heads       [2]string // over each side view
	Titles      [2]string // below it
	Blocks      []Block   // the differences in words, and the table
	Files       [2]string // over each design file
}

// Class returns the text of a class sheet.
func Class(columns [2]Column, m Making) ClassSheet {
	c := ClassSheet{Title: "Two pieces side by side", Made: fmt.Sprintf("%s · rockerwright %s", m.Date.Format("2 January 2006"), m.Version)}
	for i, column := range columns {
		d := column.Report.Design
		c.Heads[i], c.Titles[i], c.Files[i] = called(column), voiceOf(d).title(d)+". To scale.", "The design file of "+called(column)
	}
	c.Blocks = append([]Block{{Title: "How they differ", Lines: Differences(columns)}}, Columns("", "", columns[:]).Blocks...)
	return c
}

// Differences says in words in what two designs differ, as far as it shows in shop
// measures.
func Differences(columns [2]Column) []Line {
	a, b := columns[0].Report, columns[1].Report
	v := voiceOf(a.Design)
	if other := voiceOf(b.Design).piece; other != v.piece {
		return []Line{{Text: fmt.Sprintf("One is a %s, the other a %s: they are asked different things, so only their numbers stand side by side.", v.piece, other)}}
	}
	d := differences{v: v, names: [2]string{called(columns[0]), called(columns[1])}}
	seated := [2]*check.Load{a.Seated(), b.Seated()}
	leaning := [2]*check.Load{a.Leaning(), b.Leaning()}
	d.of(quantity.Length, a.Tape.TailTip, b.Tape.TailTip, "%s has the higher "+d.v.tail+" tip: %s against %s off the floor.")
	if d.stand(seated) {
		rests := [2]float64{seated[0].SeatFall, seated[1].SeatFall}
		what := "%s lets its seat fall further back with its owner in it: %s against %s."
		if math.IsNaN(rests[0]) || math.IsNaN(rests[1]) {
			rests = [2]float64{seated[0].Balance.Rest.Tilt, seated[1].Balance.Rest.Tilt}
			what = "%s rests further " + v.Back + ": %s against %s."
		}
		d.of(quantity.Angle, rests[0], rests[1], what)
		d.of(quantity.Time, seated[0].Balance.Period, seated[1].Balance.Period, "%s takes longer for one rock: %s against %s.")
		d.of(quantity.Force, seated[0].EffortBack, seated[1].EffortBack, "%s wants the harder push for one degree: %s against %s.")
		d.of(quantity.Angle, seated[0].Balance.Forward.Angle, seated[1].Balance.Forward.Angle, "%s keeps more before going "+v.Forward+": %s against %s.")
	}
	if d.stand(leaning) {
		d.of(quantity.Angle, leaning[0].Balance.Back.Angle, leaning[1].Balance.Back.Angle, "%s keeps more before going "+v.Back+": %s against %s.")
		d.of(quantity.Length, leaning[0].Balance.Back.Lift, leaning[1].Balance.Back.Lift, "%s must lift its weight higher to go "+v.Back+": %s against %s.")
	}
	switch holds := [2]bool{a.Holds(), b.Holds()}; {
	case holds[0] && holds[1]:
		d.say("All limits hold on both.")
	case !holds[0] && !holds[1]:
		d.say("On neither do all limits hold.")
	case holds[0]:
		d.say("All limits hold on " + d.names[0] + ", not on " + d.names[1] + ".")
	default:
		d.say("All limits hold on " + d.names[1] + ", not on " + d.names[0] + ".")
	}
	if len(d.lines) == 1 {
		d.lines = append([]Line{{Text: "In shop measures they rest, rock and go over alike."}}, d.lines...)
	}
	return d.lines
}

// A differences gathers what sets two designs apart.
type differences struct {
	v     voice
	names [2]string
	lines []Line
}

// called returns what a column is called in a sentence.
func called(c Column) string {
	if name := cutTo(plain(c.Head), 40); name != "" {
		return name
	}
	return "one"
}

func (d *differences) say(text string) { d.lines = append(d.lines, Line{Text: text}) }

// stand reports whether both loads rest, and says where one does not.
func (d *differences) stand(loads [2]*check.Load) bool {
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
