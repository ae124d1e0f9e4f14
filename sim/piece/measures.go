package piece

import (
	_ "embed"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"

	"rockerwright/sim/quantity"
)

//go:embed measures.txt
var measureTable string

// Measures returns the one table of what a maker can change. The file loader, changes
// on the command line, sizing and labels all read it.
func Measures() []Measure { return slices.Clone(measures()) }

var measures = sync.OnceValue(func() []Measure { return readMeasures(measureTable) })

// kindsOf are the kinds of quantities, as the table calls them.
var kindsOf = map[string]quantity.Kind{
	"length": quantity.Length, "angle": quantity.Angle, "weight": quantity.Mass, "inertia": quantity.Inertia,
	"time": quantity.Time, "force": quantity.Force, "damping": quantity.Damping, "gravity": quantity.Gravity,
	"density": quantity.Density, "ratio": quantity.Ratio, "count": quantity.Count,
}

// readMeasures reads the table. It panics on one that is not as it should be, for it is part of the program.
func readMeasures(table string) []Measure {
	var all []Measure
	for line := range strings.Lines(table) {
		cells := strings.Split(strings.TrimSuffix(line, "\n"), "|")
		if len(cells) < 2 || line[0] == '#' {
			continue
		}
		cells = append(cells, make([]string, 11)...)
		for i := range cells {
			cells[i] = strings.TrimSpace(cells[i])
		}
		wrong := func(what string) { panic(fmt.Sprintf("piece: measures.txt: %s: no such %s", cells[0], what)) }
		m := Measure{Key: cells[0], Label: cells[1], Example: cells[8], Fitted: cells[10] == "yes",
			field: fieldOf(cells[0])}
		if wish, is := strings.CutSuffix(otherwise[m.Key], ".value"); is {
			m.asked = fieldOf(wish + ".asked")
		}
		kind, known := kindsOf[cells[2]]
		if !known {
			wrong("kind")
		}
		m.Kind = kind
		if m.Sign = Sign(slices.Index(signs[:], cells[3])); m.Sign < 0 {
			wrong("sign")
		}
		for i, into := range []*float64{&m.Low, &m.High, &m.Step, &m.Tolerance} {
			if cells[4+i] == "" {
				continue
			}
			x, err := quantity.Parse(cells[4+i], kind, quantity.Inch)
			if err != nil {
				wrong(err.Error())
			}
			*into = x
		}
		m.Blank, _ = strconv.Atoi(cells[9])
		all = append(all, m)
	}
	return all
}
