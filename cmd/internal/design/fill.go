package design

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"sync"
	"unicode"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// Filled returns the file's text with its changes written in, and the seat, arms and
// back sized to its owner where a size of the owner was among the changes. Comments stay
// where they are.
func (f *File) Filled() (string, error) {
	sized := f.Design
	values := map[string]string{}
	for key, typed := range f.changed {
		values[without1(key)] = typed
		if strings.HasPrefix(key, "sitter.") {
			recommended, keys, err := check.Recommended(f.Design)
			if err != nil {
				return "", f.Explain(err)
			}
			sized = recommended
			for _, set := range keys {
				measure, field, err := sized.Measure(set)
				if _, asked := f.changed[set]; err == nil && !asked {
					values[set] = quantity.Shop(*field, measure.Kind, f.Design.Units)
				}
			}
		}
	}
	return f.withValues(values), nil
}

// withValues returns the file's text with the values of some keys, as they are typed, written
// in their place; those that are not in the file at the end of their section.
func (f *File) withValues(values map[string]string) string {
	var edits []edit
	var missing []string
	for _, key := range keysOf(values, f.Design) {
		if e, found := f.find(key); found {
			edits = append(edits, f.replacing(e, f.entry(key, values[key])))
		} else {
			missing = append(missing, key)
		}
	}
	slices.SortStableFunc(missing, func(a, b string) int { return strings.Compare(sectionOf(a), sectionOf(b)) })
	made := map[string]bool{}
	var behind []edit // under new headers, at the end
	for _, key := range missing {
		e := f.adding(sectionOf(key), last(key), f.entry(key, values[key]), f.comment(key), made)
		if made[sectionOf(key)] {
			behind = append(behind, e)
		} else {
			edits = append(edits, e)
		}
	}
	return edited(f.Text, append(edits, behind...))
}

// sectionOf returns all of a key but its last part.
func sectionOf(key string) string { return key[:max(0, strings.LastIndexByte(key, '.'))] }

// keysOf returns the keys of values, words first and then in the order of the measures.
func keysOf(values map[string]string, d piece.Design) []string {
	var keys []string
	for _, known := range append(piece.Keys(), d.Keys()...) {
		key := strings.Replace(known, ".N.", ".", 1)
		if _, given := values[key]; given && !slices.Contains(keys, key) {
			keys = append(keys, key)
		}
	}
	return keys
}

// comment returns what stands behind a line that is put in: its blank and its label.
func (f *File) comment(key string) string {
	measure, _, err := f.Design.Measure(key)
	switch {
	case err != nil:
		return ""
	case measure.Blank > 0:
		return fmt.Sprintf(" # (%d) %s", measure.Blank, measure.Label)
	}
	return " # " + measure.Label
}

// bareValue is what needs no quotes.
var bareValue = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`^[+-]?[0-9]+(\.[0-9]+)?$`) })

// entry returns the value of a key as it stands in a file: a text in quotes, though it be a number.
func (f *File) entry(key, value string) string {
	if _, _, err := f.Design.Choice(key); err == nil {
		return inQuotes(value)
	}
	return written(value)
}

// written returns a value as it stands in a file: a plain number, or any text in quotes.
func written(value string) string {
	if bareValue().MatchString(value) {
		return value
	}
	return inQuotes(value)
}

// inQuotes returns a text in quotes with the escapes of TOML.
func inQuotes(value string) string {
	var b strings.Builder
	for _, r := range strings.ToValidUTF8(value, "\ufffd") {
		switch {
		case r == '"' || r == '\\':
			b.WriteString(`\` + string(r))
		case unicode.IsControl(r):
			fmt.Fprintf(&b, `\u%04X`, r)
		default:
			b.WriteRune(r)
		}
	}
	return `"` + b.String() + `"`
}
