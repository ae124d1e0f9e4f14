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

// anew reports whether a rocker is drawn in another way.
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
