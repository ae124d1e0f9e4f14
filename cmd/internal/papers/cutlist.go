package papers

import (
	"bytes"
	"encoding/csv"
	"math"
	"strconv"
	"strings"
	"unicode"

	"rockerwright/cmd/internal/words"
	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// cutList returns the cut list as comma-separated values: sizes as a maker reads them, what is
// added up as plain numbers. Letters beyond ASCII are announced by a byte order mark, without which
// spreadsheets take them for others.
func cutList(l layout.Layout) []byte {
	units := l.Design.Units
	sizes, wood, weight := "", "rough, all (board feet)", "finished, all (lb)"
	if units == quantity.Metric {
		sizes, wood, weight = " (mm)", "rough, all (cm3)", "finished, all (g)"
	}
	heads := []string{"part", "count", "wood"}
	for _, which := range []string{"finished", "rough"} {
		for _, side := range []string{"length", "width", "thickness"} {
			heads = append(heads, which+" "+side+sizes)
		}
	}
	rows := [][]string{append(heads, wood, weight, "remark")}
	for _, c := range l.Cuts {
		row := []string{spreadsheetWord(c.Part), strconv.Itoa(c.Count), spreadsheetWord(c.Wood)}
		for _, size := range []layout.Size{c.Finished, c.Rough} {
			for _, x := range []float64{size.Length, size.Width, size.Thick} {
				row = append(row, words.CutSize(x, units))
			}
		}
		cubic, feet := c.Volume()
		volume, mass := decimal(feet, 3), quantity.Fine(c.Mass(), quantity.Mass, units)
		if units == quantity.Metric { // no decimals, whose sign depends on the country
			volume, mass = decimal(cubic*1e6, 0), decimal(c.Mass()*1e3, 0)
		}
		if math.IsNaN(c.Mass()) {
			mass = ""
		}
		rows = append(rows, append(row, volume, mass, words.CutRemark(l, c)))
	}
	var out bytes.Buffer
	if err := csv.NewWriter(&out).WriteAll(rows); err != nil {
		panic(err) // a buffer takes everything
	}
	if bytes.ContainsFunc(out.Bytes(), func(r rune) bool { return r > unicode.MaxASCII }) {
		return append([]byte("\ufeff"), out.Bytes()...)
	}
	return out.Bytes()
}

// decimal writes a number with so many decimals.
func decimal(x float64, digits int) string { return strconv.FormatFloat(x, 'f', digits, 64) }

// spreadsheetWord returns a name that a spreadsheet does not take for a formula, a number or a date.
func spreadsheetWord(text string) string {
	if strings.IndexAny(text, "=+-@\t\r") == 0 || text != "" && strings.Trim(text, "0123456789 .,:/-") == "" {
		return "'" + text
	}
	return text
}
