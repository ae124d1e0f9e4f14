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
		text += fmt.Sprintf(" The parts of a named wood weigh %s as shaped.", v.with(mass, quantity.Mass))
	} else {
		text += " Name a wood for the mass of a part."
	}
	unit := map[quantity.System]string{quantity.Inch: "inches", quantity.Metric: "millimetres"}[v.units]
	lines := []Line{{Text: text}, {Text: "Length, width and thickness in " + unit + ", the grain along the length, which is that of the longest edge; " +
		"round, shaped and tapered parts as the square they come out of" + string(v.legs) + ". Only what is drawn is listed."}}
	for _, c := range l.Cuts {
		if remark := CutRemark(l, c); remark != "" {
			lines = append(lines, Line{Text: upperFirst(plain(short(c.Part))) + ": " + remark + ".", Bad: c.Wider || c.Thicker})
		}
	}
	if l.Strips != nil {
		lines = append([]Line{{Text: v.bears(*l.Strips)}}, lines...)
	}
	return Sheet{Title: v.benchTitle(l, "cut list"), Source: source, Blocks: []Block{{Table: finished}, {Table: rough}, {Lines: lines}, v.takenBlock(l)}}
}

// CutRemark says how the grain of a seat runs, and what does not come out of the boards there are;
// "" where there is nothing to say.
func CutRemark(l layout.Layout, c layout.Cut) string {
	v := voiceOf(l.Design)
	var remarks []string
	if c.Seat {
		remarks = append(remarks, "the grain runs front to back")
	}
	var over []string
	if c.Wider {
		over = append(over, "wider than your boards ("+v.with(l.Shop.StockWidth, quantity.Length)+")")
	}
	if c.Thicker {
		over = append(over, "thicker than your boards ("+v.with(l.Shop.StockThick, quantity.Length)+")")
	}
	if len(over) > 0 {
		remarks = append(remarks, "rough, it is "+strings.Join(over, " and ")+": glue it up")
	}
	return strings.Join(remarks, "; ")
}

// CutSize writes a size for a spreadsheet: with its unit, "3/4 in", for a bare fraction is taken for a
// day of a month, and so is "6.4" where a comma is the decimal point; whole millimetres plain.
func CutSize(x float64, units quantity.System) string {
	v := voice{units: units}
	text := v.sized(x)
	if whole := strings.TrimSuffix(text, " mm"); !strings.Contains(whole, ".") {
		return whole
	}
	return text
}

// sized writes a size with its unit, one that no rule reads, as of a strip, finer.
func (v voice) sized(x float64) string {
	if rounded := quantity.Round(x, quantity.Length, v.units); math.Abs(rounded-x) > 1e-4 && x < 0.0127 {
		return v.thin(x)
	}
	return v.with(x, quantity.Length)
}

// size writes three sizes: "41 × 1 1/4 × 1/4".
func (v voice) size(s layout.Size) string {
	thick := strings.TrimSuffix(v.sized(s.Thick), " "+v.unit())
	return v.shop(s.Length, quantity.Length) + " × " + v.shop(s.Width, quantity.Length) + " × " + thick
}

// BoardSheet returns the words to the picture of a pair of rockers in one board.
func BoardSheet(l layout.Layout, source string) Sheet {
	v := voiceOf(l.Design)
	return Sheet{Title: v.benchTitle(l, "board"), Source: source, Blocks: []Block{v.boardBlock(l), v.takenBlock(l)}}
}
