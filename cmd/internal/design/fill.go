package design

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"sync"

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
			recommended, keys, err := piece.Recommended(f.Design)
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
	lines := strings.Split(f.Text, "\n")
	var added [][2]string // section and line
	for _, key := range f.keysOf(values) {
		e, found := f.find(key)
		if !found {
			section, name := key[:strings.LastIndexByte(key, '.')], last(key)
			added = append(added, [2]string{section, fmt.Sprintf("%s = %s%s", name, written(values[key]), f.comment(key))})
			continue
		}
		lines[e.Value.Line-1] = replaced(lines[e.Value.Line-1], e.Value.Column-1, e.Raw, written(values[key]))
	}
	text := strings.Join(lines, "\n")
	for _, one := range added {
		text = inserted(text, one[0], one[1])
	}
	return text
}

// keysOf returns the keys of values, words first and then in the order of the measures; of two
// on one line the later comes first, so that the place of the other stays.
func (f *File) keysOf(values map[string]string) []string {
	var keys []string
	for _, known := range append(piece.Keys(), f.Design.Keys()...) {
		key := strings.Replace(known, ".N.", ".", 1)
		if _, given := values[key]; given && !slices.Contains(keys, key) {
			keys = append(keys, key)
		}
	}
	slices.SortStableFunc(keys, func(a, b string) int {
		x, foundX := f.find(a)
		y, foundY := f.find(b)
		switch {
		case foundX && foundY && x.Value.Line == y.Value.Line:
			return y.Value.Column - x.Value.Column
		case foundX && foundY:
			return x.Value.Line - y.Value.Line
		case foundX != foundY: // those that are there first
			return map[bool]int{true: -1, false: 1}[foundX]
		}
		return 0
	})
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

// written returns a value as it stands in a file.
func written(value string) string {
	if bareValue().MatchString(value) {
		return value
	}
	return `"` + strings.ReplaceAll(value, `"`, "") + `"`
}

// replaced returns a line with the raw value at a column (in characters, from 0) replaced,
// and the comment behind it where it was if there is room.
func replaced(line string, column int, raw, value string) string {
	runes := []rune(line)
	head, tail := string(runes[:column]), string(runes[column+len([]rune(raw)):])
	comment := strings.TrimLeft(tail, " ")
	gap := len(tail) - len(comment) + len([]rune(raw)) - len([]rune(value))
	switch {
	case comment == "":
		return head + value
	case !strings.HasPrefix(comment, "#"):
		return head + value + tail
	}
	return head + value + strings.Repeat(" ", max(1, gap)) + comment
}

// inserted returns a text with a line put in at the end of a section, which is made
// where there is none.
func inserted(text, section, line string) string {
	lines := strings.Split(strings.TrimRight(text, "\n"), "\n")
	at := -1
	for i, l := range lines {
		head := strings.TrimSpace(strings.SplitN(l, "#", 2)[0])
		switch {
		case head == "["+section+"]":
			at = i + 1
		case strings.HasPrefix(head, "[") && at >= 0:
			return strings.Join(append(lines[:at:at], append([]string{line}, lines[at:]...)...), "\n") + "\n"
		case head != "" && at >= 0:
			at = i + 1
		}
	}
	if at < 0 {
		return strings.Join(lines, "\n") + "\n\n[" + section + "]\n" + line + "\n"
	}
	return strings.Join(append(lines[:at:at], append([]string{line}, lines[at:]...)...), "\n") + "\n"
}
