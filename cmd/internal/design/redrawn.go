package design

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// redrawn returns a text with its rocker drawn in another way, by arcs or by one radius: in the
// place of arcs that are there, else at the end of the section; other lines are kept as comments.
func redrawn(name, text string, d piece.Design) (string, error) {
	f, err := Parse(name, text)
	if err != nil {
		return "", err
	}
	if e, found := f.find("rocker"); found && strings.HasPrefix(e.Raw, "{") {
		return f.rebraced(e, curveOf(d, ", ", "[", "]")), nil
	}
	const indent = ",\n  "
	lines := curveOf(d, indent, "[   # from nose to tail\n  ", ",\n]")
	var edits []edit
	if e, found := f.find("rocker.arcs"); found {
		key := f.Text[e.KeyStart:e.ValueStart]
		prefix := key[:strings.LastIndexByte(key, '.')+1]
		return edited(text, []edit{{e.KeyStart, e.ValueEnd, prefix + strings.Join(lines, f.newline()+prefix)}}), nil
	}
	if e, found := f.find("rocker.arcs.1"); found {
		return "", f.at(e.Key, "rocker.arcs", errors.New("to be written anew the arcs want to stand as one entry under [rocker]: arcs = [...]"))
	}
	for _, way := range ways {
		if e, found := f.find(way); found {
			edits = append(edits, f.commented(e)...)
		}
	}
	for _, line := range lines {
		name, value, _ := strings.Cut(line, " = ")
		edits = append(edits, f.adding("rocker", name, value, "", map[string]bool{}))
	}
	return edited(text, edits), nil
}

// curveOf returns the entries that draw the curve of a rocker: its radius and tail, or its arcs,
// between two texts and parted by one.
func curveOf(d piece.Design, parted, before, behind string) []string {
	write := func(x float64) string { return written(typed(x, quantity.Length, d.Units)) }
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

// commented makes comments of the lines of an entry.
func (f *File) commented(e locate.Entry) []edit {
	var edits []edit
	for at := f.lineStart(e.KeyStart); ; {
		edits = append(edits, edit{at, at, "# "})
		line := strings.IndexByte(f.Text[at:e.ValueEnd], '\n')
		if line < 0 {
			return edits
		}
		at += line + 1
	}
}

// rebraced returns the file's text with the curve in an inline table [rocker] drawn anew.
func (f *File) rebraced(rocker locate.Entry, lines []string) string {
	var pairs []string
	for _, e := range f.entries {
		if e.In >= 0 && f.entries[e.In] == rocker && !slices.Contains(ways, keyOf(e.Path)) {
			pairs = append(pairs, f.Text[e.KeyStart:e.ValueEnd])
		}
	}
	return edited(f.Text, []edit{{rocker.ValueStart, rocker.ValueEnd, "{" + strings.Join(append(lines, pairs...), ", ") + "}"}})
}
