package words

import (
	"fmt"
	"math"
	"strconv"

	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// A Laid is one file of a layout.
type Laid struct {
	Name  string
	Pages int // zero of what is not printed
	Note  string
}

// LaidOut says what was written, and what to print first.
func LaidOut(l layout.Layout, folder string, files []Laid) Sheet {
	v := voiceOf(l.Design)
	t := &Table{Head: []string{"In " + folder + "/", "pages", ""}}
	first := ""
	for _, f := range files {
		pages := ""
		if f.Pages > 0 {
			pages = strconv.Itoa(f.Pages)
			if first == "" {
				first = f.Name
			}
		}
		t.Rows = append(t.Rows, Row{Cells: []string{f.Name, pages, f.Note}})
	}
	lines := []Line{
		{Text: fmt.Sprintf("Print first: %s. Then of each pattern its first page alone, at 100 %%, not \"fit to page\": measure the two squares on it before you print the rest, and tape from tip to tip when it is glued.", first)},
	}
	for _, text := range v.taken(l) {
		lines = append(lines, Line{Text: text})
	}
	if !l.Report.Holds() {
		lines = append(lines, Line{Label: "NO:", Text: "a limit does not hold for this design: look at it with rockerwright check before you cut wood.", Bad: true})
	}
	return Sheet{Title: v.benchTitle(l, "layout"), Source: "", Blocks: []Block{{Table: t}, {Lines: lines}}}
}

// A LegLabel is what is written at a leg in its two views.
type LegLabel struct{ Length, Foot, Front string }

// LegLabels returns what is written at each leg.
func LegLabels(l layout.Layout) []LegLabel {
	v := voiceOf(l.Design)
	var list []LegLabel
	for _, leg := range l.Legs {
		cut := fmt.Sprintf("foot cut %s", v.shop(math.Abs(leg.Standing.Cut), quantity.Angle))
		list = append(list, LegLabel{
			Length: v.with(leg.Standing.Length, quantity.Length),
			Foot:   fmt.Sprintf("%s: %s to the rocker, %s off square", plain(short(leg.Name)), v.with(leg.Standing.Angle, quantity.Angle), cut),
			Front:  fmt.Sprintf("%s: splay %s", plain(short(leg.Name)), v.with(leg.Line.Splay, quantity.Angle)),
		})
	}
	return list
}
