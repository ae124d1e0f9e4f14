package words

import (
	"cmp"
	"fmt"
	"strconv"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// CutSheet returns the cut list: parts as finished, and the rough wood for them.
func CutSheet(l layout.Layout, source string) sheet.Sheet {
	w := wordingOf(l.Design)
	finished := &sheet.Table{Head: []string{"Finished", "", "", quantity.Unit(quantity.Mass, w.System)}}
	rough := &sheet.Table{Head: []string{"Rough", "", "", inUnits(w.units, "board feet", "litres")}}
	var remarks []sheet.Line
	for _, c := range l.Cuts {
		part, of := brief(c.Part), strconv.Itoa(c.Count)+" of"
		finished.Add(part, of, dimensions(w.units, c.Finished), w.shop(c.Mass(), quantity.Mass))
		rough.Add(part, of, dimensions(w.units, c.Rough), bulk(w.units, c))
		if remark := CutRemark(l, c); remark != "" {
			remarks = append(remarks, sheet.Line{Text: upperFirst(part) + ": " + remark + ".", Bad: c.Wider || c.Thicker})
		}
	}
	strips := ""
	if s := l.Strips; s != nil { // how thick one may be
		strips = fmt.Sprintf("%s bears strips up to %s at %s, the smallest radius (strain of %s %%, half of what breaks it)",
			cmp.Or(s.Wood, "A usual hardwood"), thin(w.units, s.Thickest), w.length(s.Tightest), hundredths(s.Strain, 2)) +
			when(s.Common > 0, "; makers use up to %s (common practice)", w.length(s.Common)) + "."
	}
	cubic, feet, weighs := l.Sum()
	notes := sheet.Says(strips, fmt.Sprintf("Rough wood in all: %.2f board feet, %.4f m³. ", feet, cubic)+
		pick(weighs > 0, "The parts of a named wood weigh "+mass(w.units, weighs)+" as shaped.",
			"Name a wood for the mass of a part."),
		"Length, width and thickness in "+inUnits(w.units, "inches", "millimetres")+
			", the grain along the length, which is that of the longest edge; "+
			"round, shaped and tapered parts as the square they come out of"+string(w.legs)+". Only what is drawn is listed.")
	return benchPage(w, l, "cut list", source,
		sheet.Block{Table: finished}, sheet.Block{Table: rough}, sheet.Block{Lines: append(notes, remarks...)})
}

// bulk writes the rough wood of a row: board feet or litres.
func bulk(u units, c layout.Cut) string {
	cubic, feet := c.Volume()
	return fixed(u, feet, 2, cubic*1e3, 2)
}

// CutRemark says how the grain of a seat runs, and what does not come out of the boards there are;
// "" where there is nothing to say.
func CutRemark(l layout.Layout, c layout.Cut) string {
	w := wordingOf(l.Design)
	over := list(given(when(c.Wider, "wider than your boards (%s)", w.length(l.Shop.StockWidth)),
		when(c.Thicker, "thicker than your boards (%s)", w.length(l.Shop.StockThick))))
	return strings.Join(given(when(c.Seat, "the grain runs front to back"),
		when(over != "", "rough, it is %s: glue it up", over)), "; ")
}

// CutSize writes a size for a spreadsheet: with its unit, "3/4 in", for a bare fraction is taken for a
// day of a month, and so is "6.4" where a comma is the decimal point; whole millimetres plain.
func CutSize(x float64, system quantity.System) string {
	text := sized(units{system}, x)
	if whole := strings.TrimSuffix(text, " mm"); !strings.Contains(whole, ".") {
		return whole
	}
	return text
}

// sized writes a size with its unit, one that no rule reads, as of a strip, finer.
func sized(u units, x float64) string {
	if rounded := quantity.Round(x, quantity.Length, u.System); unsigned(rounded-x) > 1e-4 && x < 0.0127 {
		return thin(u, x)
	}
	return u.length(x)
}

// dimensions writes three sizes: "41 × 1 1/4 × 1/4".
func dimensions(u units, s layout.Size) string {
	return u.bare(s.Length) + " × " + u.bare(s.Width) + " × " + strings.TrimSuffix(sized(u, s.Thick), " "+u.unit())
}
