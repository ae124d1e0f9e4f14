package design

import (
	"regexp"
	"strings"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// pair is an entry in an example, and value a number or a text in its value.
var (
	pair  = regexp.MustCompile(`(\w+)( = )(\[[^=]*\]|"[^"]*"|-?[\d.]+)`)
	value = regexp.MustCompile(`"[^"]*"|-?\d[\d./]*`)
)

// exampleIn returns a message whose example, written for a file in inches and pounds, is one for a
// file in the given units.
func exampleIn(message string, system quantity.System) string {
	const mark = "For example: "
	before, example, found := strings.Cut(message, mark)
	if !found || system == quantity.Inch {
		return message
	}
	return before + mark + pair.ReplaceAllStringFunc(example, func(entry string) string {
		part := pair.FindStringSubmatch(entry)
		kind, known := kindOf(part[1])
		if !known {
			return entry
		}
		return part[1] + part[2] + value.ReplaceAllStringFunc(part[3], func(typed string) string {
			if strings.Contains(typed, "mm") { // worked out for this file
				return typed
			}
			x, err := quantity.Parse(strings.Trim(typed, `"`), kind, quantity.Inch)
			if err != nil {
				return typed
			}
			return quantity.Shop(x, kind, system)
		})
	})
}

// kindOf returns the kind of the measures that are called so, where a file in millimetres writes it
// otherwise.
func kindOf(name string) (quantity.Kind, bool) {
	for _, m := range piece.Measures() {
		switch m.Kind {
		case quantity.Length, quantity.Mass, quantity.Force:
			if strings.Contains(m.Key+".", "."+name+".") {
				return m.Kind, true
			}
		}
	}
	return 0, false
}
