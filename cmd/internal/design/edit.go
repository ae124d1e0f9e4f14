package design

import (
	"fmt"
	"regexp"
	"strings"
	"unicode"

	"rockerwright/cmd/internal/design/locate"
)

// replace puts another text in the place of a stretch of the file's, and finds the entries anew.
func (f *File) replace(from, to int, text string) error {
	f.Text = f.Text[:from] + text + f.Text[to:]
	f.values = nil
	return f.scan()
}

// newline returns the line end of the file.
func (f *File) newline() string {
	if strings.Contains(f.Text, "\r\n") {
		return "\r\n"
	}
	return "\n"
}

// lineEnd returns where the line of an offset ends, before its line end.
func (f *File) lineEnd(offset int) int {
	line, _, _ := strings.Cut(f.Text[offset:], "\n")
	return offset + len(strings.TrimSuffix(line, "\r"))
}

// lineStart returns where the line of an offset begins.
func (f *File) lineStart(offset int) int {
	if start := strings.LastIndexByte(f.Text[:offset], '\n') + 1; start > 0 || !strings.HasPrefix(f.Text, bom) {
		return start
	}
	return len(bom)
}

// write puts a value, as it stands in a file, in the place of an entry's, or a new entry in its section.
func (f *File) write(key, value string) error {
	e, found := f.find(f.givenAs(key))
	if !found {
		return f.add(sectionOf(key), last(key), value, f.comment(key))
	}
	rest := f.Text[e.ValueEnd:f.lineEnd(e.ValueEnd)]
	comment := strings.TrimLeft(rest, " ")
	if !strings.HasPrefix(comment, "#") {
		return f.replace(e.ValueStart, e.ValueEnd, value)
	}
	blanks := len(rest) - len(comment) // the comment stays where it was if there is room
	gap := blanks + len([]rune(e.Raw)) - len([]rune(value))
	return f.replace(e.ValueStart, e.ValueEnd+blanks, value+strings.Repeat(" ", max(1, gap)))
}

// givenAs returns the key under which the file gives a measure, which may have two.
func (f *File) givenAs(key string) string {
	_, field, err := f.Design.Measure(key)
	if _, found := f.find(key); found || err != nil {
		return key
	}
	for _, other := range f.Design.Keys() {
		_, same, err := f.Design.Measure(other)
		if _, found := f.find(other); found && err == nil && same == field {
			return other
		}
	}
	return key
}

// add puts a new entry at the end of its section, in the way in which the file writes that: under a
// header, as dotted keys, in braces, or under a new header at the end. The comment is left out where
// none can stand.
func (f *File) add(section, name, value, comment string) error {
	line := name + " = " + value
	if e, prefix, found := f.lastIn(section); found {
		if e.In >= 0 && f.entries[e.In].Braced() {
			return f.replace(e.ValueEnd, e.ValueEnd, ", "+prefix+line)
		}
		return f.below(e, prefix+line+comment)
	}
	home, found := f.find(section)
	around, inner := sectionOf(section), last(section)
	outer, enclosed := f.find(around)
	switch {
	case section == "":
		start := f.lineStart(0)
		return f.replace(start, start, line+comment+f.newline())
	case found && home.Kind == locate.Header:
		return f.below(home, line+comment)
	case found && home.Braced():
		return f.replace(home.ValueStart+1, home.ValueStart+1, line)
	case found: // a place that lacks a number
		at, first := home.ValueStart+1, "0, "
		if x, given := f.find(section + ".x"); given {
			at, first = x.ValueEnd, ", "
		} else if name == "x" {
			first = ""
		}
		return f.replace(at, at, first+value)
	case enclosed && (outer.Braced() || isNumber(last(outer.Key))):
		return f.add(around, inner+"."+name, value, comment)
	}
	end, nl := len(strings.TrimRight(f.Text, "\r\n")), f.newline()
	return f.replace(end, end, nl+nl+"["+section+"]"+nl+line+comment)
}

// below puts a line below an entry.
func (f *File) below(e locate.Entry, line string) error {
	end := f.lineEnd(e.ValueEnd)
	return f.replace(end, end, f.newline()+line)
}

// lastIn returns the last entry of a section that stands in it or in a table around it, and what stands
// there before its name.
func (f *File) lastIn(section string) (found locate.Entry, prefix string, any bool) {
	if section != "" {
		section += "."
	}
	for _, e := range f.entries {
		around := ""
		if e.In >= 0 {
			around = short(f.entries[e.In].Key) + "."
		}
		rest, within := strings.CutPrefix(section, around)
		if e.Kind == locate.Pair && within && strings.HasPrefix(short(e.Key), section) {
			found, prefix, any = e, rest, true
		}
	}
	return found, prefix, any
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
var bareValue = regexp.MustCompile(`^[+-]?[0-9]+(\.[0-9]+)?$`)

// written returns a value as it stands in a file: a plain number, or any text in quotes.
func written(value string) string {
	if bareValue.MatchString(value) {
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
