package design

import (
	"fmt"
	"regexp"
	"strings"
	"unicode"

	"rockerwright/cmd/internal/design/locate"
)

// replace puts another text in the place of a stretch of the file's, and finds the entries anew.
func (f *File) replace(from, to int, text string) {
	f.Text = f.Text[:from] + text + f.Text[to:]
	f.scan() // a bound is found when the text is parsed
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
	if start := strings.LastIndexByte(f.Text[:offset], '\n') + 1; start > 0 || !strings.HasPrefix(f.Text, locate.Mark) {
		return start
	}
	return len(locate.Mark)
}

// write puts a value, as it stands in a file, in the place of an entry's, or a new entry in its section.
func (f *File) write(key, value string) {
	e, found := f.find(f.givenAs(key))
	if !found {
		f.add(sectionOf(key), last(key), value, f.comment(key))
		return
	}
	rest := f.Text[e.ValueEnd:f.lineEnd(e.ValueEnd)]
	comment, end := strings.TrimLeft(rest, " "), e.ValueEnd
	if strings.HasPrefix(comment, "#") { // it stays where it was if there is room
		blanks := len(rest) - len(comment)
		end += blanks
		value += strings.Repeat(" ", max(1, blanks+len([]rune(e.Raw))-len([]rune(value))))
	}
	f.replace(e.ValueStart, end, value)
}

// givenAs returns the key under which the file gives a measure, which may have two.
func (f *File) givenAs(key string) string {
	_, field, err := f.Design.Measure(key)
	if _, found := f.find(key); found || err != nil {
		return key
	}
	for _, other := range f.Design.Keys() {
		_, found := f.find(other)
		if _, same, err := f.Design.Measure(other); found && err == nil && same == field {
			return other
		}
	}
	return key
}

// add puts a new entry at the end of its section, in the way in which the file writes that: under a header, as dotted
// keys, in braces, or under a new header at the end. The comment is left out where none can stand.
func (f *File) add(section, name, value, comment string) {
	insert := func(at int, text string) { f.replace(at, at, text) }
	line, nl := name+" = "+value, f.newline()
	latest, prefix, begun := f.lastIn(section)
	home, found := f.find(section)
	around, enclosed := f.find(sectionOf(section))
	switch {
	case begun && latest.In >= 0 && f.entries[latest.In].Braced():
		insert(latest.ValueEnd, ", "+prefix+line)
	case begun:
		insert(f.lineEnd(latest.ValueEnd), nl+prefix+line+comment)
	case section == "":
		insert(f.lineStart(0), line+comment+nl)
	case found && home.Kind == locate.Header:
		insert(f.lineEnd(home.ValueEnd), nl+line+comment)
	case found && home.Braced():
		insert(home.ValueStart+1, line)
	case found: // a place that lacks a number
		if x, given := f.find(section + ".x"); given {
			insert(x.ValueEnd, ", "+value)
		} else if name == "x" {
			insert(home.ValueStart+1, value)
		} else {
			insert(home.ValueStart+1, "0, "+value)
		}
	case enclosed && (around.Braced() || isNumber(last(around.Key))):
		f.add(sectionOf(section), last(section)+"."+name, value, comment)
	default:
		insert(len(strings.TrimRight(f.Text, "\r\n")), nl+nl+"["+section+"]"+nl+line+comment)
	}
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
	if err != nil {
		return ""
	}
	if measure.Blank == 0 {
		return " # " + measure.Label
	}
	return fmt.Sprintf(" # (%d) %s", measure.Blank, measure.Label)
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
