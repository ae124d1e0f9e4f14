package design

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
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

// anew reports whether a rocker is drawn in another way than it was.
func anew(was, is piece.Rocker) bool {
	return len(was.Arcs) != len(is.Arcs) || len(was.Rises) != len(is.Rises) || len(was.Points) != len(is.Points)
}

// Rewritable returns why a rocker of other arcs could not be written into the file; nil where it can.
func (f *File) Rewritable() error {
	d := f.Design.Clone()
	k := &d.Rocker
	k.Radius, k.Tail, k.Rises, k.Points, k.Spacing, k.Origin = 0, 0, nil, nil, 0, 0
	k.Arcs = slices.Repeat([]piece.Arc{{Radius: 1, Length: 0.1}}, len(k.Arcs)+2)
	_, err := f.Saved(d)
	return err
}

// ways are the entries that draw the curve of a rocker, without its ends.
var ways = []string{"rocker.radius", "rocker.tail", "rocker.arcs", "rocker.rises", "rocker.spacing", "rocker.origin", "rocker.points"}

// curveKey reports whether a key is of the curve of the rocker.
func curveKey(key string) bool {
	return slices.ContainsFunc(ways, func(way string) bool { return strings.HasPrefix(key+".", way+".") })
}

// redraw draws the rocker of the file's text in another way, by arcs or by one radius: in the place of
// arcs that are there, else at the end of the section; other lines are kept as comments.
func (f *File) redraw(d piece.Design) error {
	if rocker, found := f.find("rocker"); found && rocker.Braced() {
		pairs := curveOf(d, ", ", "[", "]")
		for _, e := range f.entries {
			if e.In >= 0 && f.entries[e.In] == rocker && !curveKey(e.Key) {
				pairs = append(pairs, f.Text[e.Start:e.ValueEnd])
			}
		}
		f.replace(rocker.ValueStart, rocker.ValueEnd, "{"+strings.Join(pairs, ", ")+"}")
		return nil
	}
	lines := curveOf(d, ",\n  ", "[   # from nose to tail\n  ", ",\n]")
	if e, found := f.find("rocker.arcs"); found {
		key := f.Text[e.Start:e.ValueStart]
		prefix := key[:strings.LastIndexByte(key, '.')+1]
		f.replace(e.Start, e.ValueEnd, prefix+strings.Join(lines, f.newline()+prefix))
		return nil
	}
	if e, found := f.find("rocker.arcs.1"); found {
		return f.at(e.Start, "rocker.arcs", errors.New("to be written anew the arcs want to stand as one entry under "+
			"[rocker]: arcs = [...]"))
	}
	old := slices.DeleteFunc(slices.Clone(f.entries), func(e locate.Entry) bool { return !slices.Contains(ways, e.Key) })
	for _, line := range lines {
		name, value, _ := strings.Cut(line, " = ")
		f.add("rocker", name, value, "")
	}
	for _, e := range slices.Backward(old) { // they stand in front of what was added
		start := f.lineStart(e.Start)
		f.replace(start, e.ValueEnd, "# "+strings.ReplaceAll(f.Text[start:e.ValueEnd], "\n", "\n# "))
	}
	return nil
}

// curveOf returns the entries that draw the curve of a rocker: its radius and tail, or its arcs,
// between two texts and parted by one.
func curveOf(d piece.Design, parted, before, behind string) []string {
	write := func(x float64) string { return written(AsTyped(x, quantity.Length, d.Units)) }
	if len(d.Rocker.Arcs) == 0 {
		return []string{"radius = " + write(d.Rocker.Radius), "tail   = " + write(d.Rocker.Tail)}
	}
	var arcs []string
	for _, a := range d.Rocker.Arcs {
		switch {
		case a.Radius != 0:
			arcs = append(arcs, fmt.Sprintf("{radius = %s, length = %s}", write(a.Radius), write(a.Length)))
		case a.Flat != 0:
			arcs = append(arcs, fmt.Sprintf("{flat = %s}", write(a.Flat)))
		default:
			arcs = append(arcs, fmt.Sprintf("{turn = %q}", quantity.Exact(a.Turn, quantity.Angle)))
		}
	}
	return []string{"arcs = " + before + strings.Join(arcs, parted) + behind}
}
