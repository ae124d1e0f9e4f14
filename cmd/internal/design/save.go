package design

import (
	"fmt"
	"math"
	"strings"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// Saved returns the file's text with the measures of a design, and the changes that were typed,
// written in their places; comments stay where they are. The design has the same people, parts
// and kinds of entries as the file's, but its rocker may have other arcs: lines of a rocker
// that is drawn in another way now are kept as comments. The error is an [*Error].
func (f *File) Saved(d piece.Design) (string, error) {
	values := map[string]string{}
	for key, typed := range f.changed {
		values[without1(key)] = typed
	}
	was, now := f.Design.Clone(), d.Clone()
	redrawn := len(was.Rocker.Arcs) != len(now.Rocker.Arcs)
	for _, key := range was.Keys() {
		if redrawn && (key == "rocker.radius" || key == "rocker.tail" || strings.HasPrefix(key, "rocker.arcs.")) {
			continue
		}
		measure, before, err := was.Measure(key)
		if err != nil {
			return "", err
		}
		_, after, err := now.Measure(key)
		if err != nil {
			return "", err
		}
		if *before != *after {
			values[without1(key)] = typed(*after, measure.Kind, d.Units)
		}
	}
	text := f.withValues(values)
	if redrawn {
		var err error
		if text, err = redrawnArcs(f.Name, text, d); err != nil {
			return "", err
		}
	}
	_, err := Parse(f.Name, text)
	return text, err
}

// typed returns a value as a maker types it, where that says it to a thousandth of a
// millimetre; else in its SI unit.
func typed(x float64, kind quantity.Kind, units quantity.System) string {
	if shop := quantity.Shop(x, kind, units); math.Abs(quantity.Round(x, kind, units)-x) < 1e-6 {
		return shop
	}
	return quantity.Exact(x, kind)
}

// redrawnArcs returns a text with its rocker drawn by other arcs.
func redrawnArcs(name, text string, d piece.Design) (string, error) {
	f, err := Parse(name, text)
	if err != nil {
		return "", err
	}
	write := func(x float64) string { return written(typed(x, quantity.Length, d.Units)) }
	if e, found := f.find("rocker.arcs"); found {
		if len(d.Rocker.Arcs) > 0 {
			return text[:e.ValueStart] + arcsText(d.Rocker.Arcs, write) + text[e.ValueEnd:], nil
		}
		line, err := f.ownLine(text, e)
		if err != nil {
			return "", err
		}
		return text[:line] + "radius = " + write(d.Rocker.Radius) + "\ntail   = " + write(d.Rocker.Tail) + text[e.ValueEnd:], nil
	}
	for _, key := range []string{"rocker.tail", "rocker.radius"} { // the later line first, so that the other stays
		if e, found := f.find(key); found {
			line, err := f.ownLine(text, e)
			if err != nil {
				return "", err
			}
			text = text[:line] + "# " + text[line:]
			if f, err = Parse(name, text); err != nil {
				return "", err
			}
		}
	}
	return inserted(text, "rocker", "arcs = "+arcsText(d.Rocker.Arcs, write)), nil
}

// ownLine returns where the line of an entry begins, which must be its alone.
func (f *File) ownLine(text string, e locate.Entry) (offset int, err error) {
	line := strings.LastIndexByte(text[:e.ValueStart], '\n') + 1
	name, _, _ := strings.Cut(text[line:], "=")
	if strings.TrimSpace(name) != last(keyOf(e.Path)) {
		return 0, f.at(e.Key, keyOf(e.Path), fmt.Errorf("to be written anew it wants a line of its own under [rocker]"))
	}
	return line, nil
}

// arcsText returns arcs as they stand in a file, one a line.
func arcsText(arcs []piece.Arc, write func(x float64) string) string {
	var b strings.Builder
	b.WriteString("[   # from nose to tail\n")
	for _, a := range arcs {
		switch {
		case a.Radius != 0:
			fmt.Fprintf(&b, "  {radius = %s, length = %s},\n", write(a.Radius), write(a.Length))
		case a.Flat != 0:
			fmt.Fprintf(&b, "  {flat = %s},\n", write(a.Flat))
		default:
			fmt.Fprintf(&b, "  {turn = %q},\n", quantity.Exact(a.Turn, quantity.Angle))
		}
	}
	return b.String() + "]"
}
