package design

import (
	"errors"
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// An Error is a mistake in a design file or in a change to it, with its place. Line
// and Column count from 1; they are zero where the mistake has no place in a file.
type Error struct {
	File         string
	Line, Column int
	Message      string
}

// How much of what a maker typed is shown in a message, letters.
const (
	shownName    = 60
	shownPath    = 200
	shownMessage = 4000 // a sentence, and at most all entries of a section
)

func (e *Error) Error() string {
	file, message := quantity.Shown(e.File, shownPath), quantity.Shown(e.Message, shownMessage)
	if e.Line == 0 {
		return fmt.Sprintf("%s: %s", file, message)
	}
	return fmt.Sprintf("%s:%d:%d: %s", file, e.Line, e.Column, message)
}

// nowhere is the offset of what has no place in a file.
const nowhere = -1

// wrong returns the error of what stands at a byte offset of the file.
func (f *File) wrong(offset int, message string) *Error {
	e := &Error{File: f.Name, Message: exampleIn(message, f.Design.Units)}
	if offset != nowhere {
		e.Line, e.Column = locate.At(f.Text, offset)
	}
	return e
}

// at gives an error of an entry its place, nil staying nil.
func (f *File) at(offset int, key string, err error) error {
	if err == nil {
		return nil
	}
	return f.wrong(offset, quantity.Shown(key, shownName)+": "+f.told(err))
}

// Explain gives an error of package piece its place: the line of the file, or the
// change on the command line. Other errors are returned as they are.
func (f *File) Explain(err error) error {
	var wrong *piece.KeyError
	if !errors.As(err, &wrong) {
		return err
	}
	if value, changed := f.changed[short(wrong.Key)]; changed {
		return &Error{File: wrong.Key + "=" + value, Message: exampleIn(f.told(wrong), f.Design.Units)}
	}
	for key := short(wrong.Key); key != ""; key = sectionOf(key) { // the nearest table around it
		i, found := f.places[key]
		if !found { // but there may be keys with dots
			i = slices.IndexFunc(f.entries, func(e locate.Entry) bool { return strings.HasPrefix(short(e.Key), key+".") })
		}
		if i >= 0 {
			return f.at(f.entries[i].Start, wrong.Key, wrong)
		}
	}
	return f.wrong(nowhere, wrong.Key+": "+f.told(wrong))
}

// mends are what would mend a mistake that is no one measure, by what is to be given: sections, lists and words.
var mends = map[string]string{
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

// told returns an error's message: of package piece the reason, and an entry that would mend it, as in a file in inches
// where it was not worked out for this one.
func (f *File) told(err error) string {
	var e *piece.KeyError
	if !errors.As(err, &e) {
		return err.Error()
	}
	measure, _, unknown := f.Design.Measure(sectionOf(e.Key) + "." + e.Give) // beside its key, or in it
	if unknown != nil {
		measure, _, unknown = f.Design.Measure(e.Key + "." + e.Give)
	}
	mend, name := mends[e.Give], e.Give+" = "
	switch {
	case e.Give == "":
		return e.Reason
	case e.Word != "":
		mend = name + strconv.Quote(e.Word)
	case e.Value != 0 && unknown == nil:
		mend = name + worked(e.Value, measure.Kind, f.Design.Units)
	case strings.Contains(e.Give, "."): // a key to type instead
		mend = e.Give
	case unknown == nil:
		mend = name + measure.Example
	}
	return e.Reason + ". For example: " + mend
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

// exampleEntry is an entry in an example, and exampleValue a number or a text in its value.
var (
	exampleEntry = regexp.MustCompile(`\w+ = (\[[^=]*\]|"[^"]*"|-?[\d.]+)`)
	exampleValue = regexp.MustCompile(`"[^"]*"|-?\d[\d./]*`)
)

// exampleIn returns a message whose example, written for a file in inches and pounds, is one for a
// file in the given units.
func exampleIn(message string, system quantity.System) string {
	const mark = "For example: "
	before, example, found := strings.Cut(message, mark)
	if !found || system == quantity.Inch {
		return message
	}
	return before + mark + exampleEntry.ReplaceAllStringFunc(example, func(entry string) string {
		name, values, _ := strings.Cut(entry, " = ")
		kind, known := kindOf(name)
		if !known {
			return entry
		}
		return name + " = " + exampleValue.ReplaceAllStringFunc(values, func(typed string) string {
			x, err := quantity.Parse(strings.Trim(typed, `"`), kind, quantity.Inch)
			if err != nil || strings.Contains(typed, "mm") { // worked out for this file
				return typed
			}
			return quantity.Shop(x, kind, system)
		})
	})
}

// kindOf returns the kind of the measures that are called so, where a file in millimetres writes it otherwise.
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
