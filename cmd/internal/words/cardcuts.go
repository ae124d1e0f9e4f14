package words

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

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
	if l.Strips != nil {
		lines = append([]Line{{Text: v.bears(*l.Strips)}}, lines...)
	}
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
