package design

import (
	"math"
	"regexp"
	"strconv"
	"strings"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// pair is an entry in an example, and value a number or a text in its value.
var (
	pair  = regexp.MustCompile(`(\w+)( = )(\[[^=]*\]|"[^"]*"|-?[\d.]+)`)
	value = regexp.MustCompile(`"[^"]*"|-?\d[\d./]*`)
)

// entries are what would mend a mistake that is no one measure, by what is to be given: sections, lists and words.
var entries = map[string]string{
	"seat":     "[seat] with front, rear, depth, width and behind_low_point",
	"bed":      "[bed] with height, length and width",
	"back":     "[back] with height and recline",
	"sitter":   "[sitter] with height and weight",
	"piece":    "[piece] weight = 26",
	"measured": "[measured] weight = 26",
	"arcs":     "{radius = 42, length = 16}",
	"centre":   "centre = [2, 24]",
	"wood":     `wood = "black walnut"`,
	"paper":    `paper = "letter"`,
}

// told returns an error's message: the reason, and an entry that would mend it, as in a file in inches where it was
// not worked out for this one.
func (f *File) told(e *piece.KeyError) string {
	mends, units := entries[e.Give], f.Design.Units
	name := e.Give + " = "
	switch measure, known := f.given(e); {
	case e.Give == "":
		return e.Reason
	case e.Word != "":
		mends = name + strconv.Quote(e.Word)
	case e.Value != 0 && known:
		mends = name + worked(e.Value, measure.Kind, units)
	case strings.Contains(e.Give, "."): // a key to type instead
		mends = e.Give
	case known:
		mends = name + measure.Example
	}
	return e.Reason + ". For example: " + mends
}

// given returns the measure that an error wants given, beside its key or in it, and whether it is one.
func (f *File) given(e *piece.KeyError) (piece.Measure, bool) {
	for _, key := range []string{sectionOf(e.Key) + "." + e.Give, e.Key + "." + e.Give} {
		if m, _, err := f.Design.Measure(key); err == nil {
			return m, true
		}
	}
	return piece.Measure{}, false
}

// worked writes a number that was worked out as it is typed in a file of these units: on the shop's scale where it lies on it, of a
// metric file with its unit, as what is worked out for the file has.
func worked(x float64, kind quantity.Kind, units quantity.System) string {
	text := strings.ReplaceAll(quantity.Shop(x, kind, units), " ", "-")
	if y, err := quantity.Parse(text, kind, units); err != nil || math.Abs(y-x) > 1e-9 {
		text = strings.ReplaceAll(quantity.Fine(x, kind, units), " ", "-")
	}
	if units == quantity.Metric {
		return strconv.Quote(text + " " + quantity.Unit(kind, units))
	}
	if strings.Contains(text, "/") {
		return strconv.Quote(text)
	}
	return text
}

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
