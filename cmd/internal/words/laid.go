package words

import (
	"fmt"
	"strconv"

	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// A Laid is one file of a layout.
type Laid struct {
	Name  string
	Pages int // zero of what is not printed
}

// LaidOut says what was written, and what to print first.
func LaidOut(l layout.Layout, folder string, files []Laid) Sheet {
	v := voiceOf(l.Design)
	t := &Table{Head: []string{folder + "/", "pages"}}
	first := ""
	for _, f := range files {
		pages := ""
		if f.Pages > 0 {
			pages = strconv.Itoa(f.Pages)
			if first == "" {
				first = f.Name
			}
		}
		t.Rows = append(t.Rows, Row{Cells: []string{f.Name, pages}})
	}
	lines := []Line{
		{Text: fmt.Sprintf("Print first: %s. Then of each pattern its first page alone, at 100 %%, not \"fit to page\": measure the two squares on it before you print the rest, and tape from tip to tip when it is glued.", first)},
	}
	if taken := v.taken(l); taken != "" {
		lines = append(lines, Line{Text: taken})
	}
	if !l.Report.Holds() {
		lines = append(lines, Line{Label: "NO:", Text: "a limit does not hold for this design: look at it with rockerwright check before you cut wood.", Bad: true})
	}
	return Sheet{Title: v.benchTitle(l, "layout"), Blocks: []Block{{Table: t}, {Lines: lines}}}
}

// A LegLabel is what is written at a leg in its two views.
type LegLabel struct{ Length, Rake, Foot, Front, Track string }

// LegLabels returns what is written at each leg.
func LegLabels(l layout.Layout) []LegLabel {
	v := voiceOf(l.Design)
	var list []LegLabel
	for _, leg := range l.Legs {
		list = append(list, LegLabel{
			Length: plain(short(leg.Name)) + ", " + v.with(leg.Finished.Length, quantity.Length) + " long",
			Foot:   v.with(leg.Standing.Angle, quantity.Angle),
			Rake:   "rake " + v.with(leg.Line.Rake, quantity.Angle),
			Front:  plain(short(leg.Name)) + ", splay " + v.with(leg.Line.Splay, quantity.Angle),
			Track:  v.with(2*leg.Standing.Foot.Z, quantity.Length),
		})
	}
	return list
}
