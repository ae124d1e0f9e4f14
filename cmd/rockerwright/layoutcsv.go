package main

import (
	"bytes"
	"encoding/csv"
	"math"
	"strconv"
	"strings"

	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// cutList returns the cut list as comma-separated values: sizes as decimals in the maker's
// unit, which stands in the heads.
func cutList(l layout.Layout) []byte {
	units := l.Design.Units
	unit := quantity.Unit(quantity.Length, units)
	heads := []string{"part", "count", "wood"}
	for _, which := range []string{"finished", "rough"} {
		for _, side := range []string{"length", "width", "thickness"} {
			heads = append(heads, which+" "+side+" ("+unit+")")
		}
	}
	heads = append(heads, "rough, all (board feet)", "rough, all (m3)", "finished squares, all (kg)")
	var out bytes.Buffer
	w := csv.NewWriter(&out)
	rows := [][]string{heads}
	for _, c := range l.Cuts {
		cubic, feet := c.Volume()
		row := []string{spreadsheetWord(c.Part), strconv.Itoa(c.Count), spreadsheetWord(c.Wood)}
		for _, size := range []layout.Size{c.Finished, c.Rough} {
			for _, x := range []float64{size.Length, size.Width, size.Thick} {
				row = append(row, quantity.Fine(x, quantity.Length, units))
			}
		}
		row = append(row, decimal(feet, 3), decimal(cubic, 6), decimal(c.Mass(), 3))
		rows = append(rows, row)
	}
	if err := w.WriteAll(rows); err != nil {
		panic(err) // a buffer takes everything
	}
	return out.Bytes()
}

// decimal writes a number, nothing where there is none.
func decimal(x float64, digits int) string {
	if math.IsNaN(x) {
		return ""
	}
	return strconv.FormatFloat(x, 'f', digits, 64)
}

// spreadsheetWord returns a name that a spreadsheet does not take for a formula.
func spreadsheetWord(text string) string {
	if strings.IndexAny(text, "=+-@\t\r") == 0 {
		return "'" + text
	}
	return text
}

// fileWord returns a name as part of a file's name: letters, digits and spaces of it, at most
// forty, "panel" where nothing is left.
func fileWord(name string) string {
	var b strings.Builder
	for _, r := range name {
		if b.Len() >= 40 {
			break
		}
		if r == ' ' || r == '-' || r >= '0' && r <= '9' || r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' {
			b.WriteRune(r)
		}
	}
	if word := strings.TrimSpace(b.String()); word != "" {
		return word
	}
	return "panel"
}
