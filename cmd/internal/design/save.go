package design

import (
	"cmp"
	"errors"
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// Filled returns the file's text with its changes written in, and the seat, arms and back sized to its owner where a
// size of the owner was among the changes. Comments stay where they are.
func (f *File) Filled() (string, error) {
	if err := f.keepsUnits(); err != nil {
		return "", err
	}
	values := map[string]string{}
	if slices.ContainsFunc(f.Typed, func(change string) bool { return strings.HasPrefix(change, "sitter.") }) {
		sized, keys, err := check.Recommended(f.Design)
		if err != nil {
			return "", f.Explain(err)
		}
		for _, key := range keys {
			if measure, field, err := sized.Measure(key); err == nil {
				values[short(key)] = quantity.Shop(*field, measure.Kind, f.Design.Units)
			}
		}
	}
	maps.Copy(values, f.changed)
	return f.with(values).Text, nil
}

// keepsUnits returns why a changed unit cannot be written into the text, whose plain numbers it would make
// others; nil where it was not changed.
func (f *File) keepsUnits() error {
	said := "inch"
	if e, found := f.find("units"); found {
		said = strings.Trim(e.Raw, `"'`)
	}
	if word, changed := f.changed["units"]; !changed || word == said {
		return nil
	}
	return f.Explain(&piece.KeyError{Key: "units",
		Reason: `the plain numbers of this design are written for other units and would be read wrong; ` +
			`on the page of "rockerwright open" a design is written anew for inches or millimetres`})
}

// with returns the file with the values of some short keys, as they are typed, written in their
// place; those that are not in the file at the end of their section. Its design is that of f.
func (f *File) with(values map[string]string) *File {
	made, known := f.Clone(), piece.Keys()
	keys := slices.SortedFunc(maps.Keys(values), func(a, b string) int {
		rank := cmp.Compare(slices.Index(known, generalKey(a)), slices.Index(known, generalKey(b)))
		return cmp.Or(strings.Compare(sectionOf(a), sectionOf(b)), rank, strings.Compare(a, b))
	})
	for _, key := range keys {
		value := written(values[key])
		if _, _, err := f.Design.Choice(key); err == nil {
			value = inQuotes(values[key]) // a text, though it be a number
		}
		made.write(key, value)
	}
	return made
}

// Saved returns the file's text with the measures of a design, and the changes that were typed,
// written in their places; comments stay where they are. The design has the same people, parts
// and kinds of entries as the file's, but its rocker may have other arcs: lines of a rocker
// that is drawn in another way now are kept as comments. The error is an [*Error].
func (f *File) Saved(d piece.Design) (string, error) {
	if err := f.keepsUnits(); err != nil {
		return "", err
	}
	values := maps.Clone(f.changed)
	changes, err := Changes(f.Design, d)
	if err != nil {
		return "", err
	}
	for _, change := range changes {
		key, value, _ := strings.Cut(change, "=")
		values[short(key)] = value
	}
	made := f.with(values)
	if anew(f.Design.Rocker, d.Rocker) {
		if err := made.redraw(d); err != nil {
			return "", err
		}
	}
	_, err = Parse(f.Name, made.Text)
	return made.Text, err
}

// anew reports whether a rocker is drawn in another way than it was.
func anew(was, is piece.Rocker) bool {
	return len(was.Arcs) != len(is.Arcs) || len(was.Rises) != len(is.Rises) || len(was.Points) != len(is.Points)
}

// Changes returns the changes, "rocker.tail=20-1/2", that lead from a design to another with the same
// entries; but for those of the curve of its rocker where that is drawn in another way.
func Changes(from, to piece.Design) ([]string, error) {
	changes := []string{}
	for _, key := range from.Keys() {
		if anew(from.Rocker, to.Rocker) && curveKey(key) {
			continue
		}
		measure, was, lost := from.Measure(key)
		_, is, err := to.Measure(key)
		if err := errors.Join(lost, err); err != nil {
			return nil, err
		}
		if *was != *is {
			changes = append(changes, key+"="+AsTyped(*is, measure.Kind, to.Units))
		}
	}
	return changes, nil
}

// AsTyped returns a value as a maker types it, where that says it to a thousandth of a
// millimetre; else in its SI unit.
func AsTyped(x float64, kind quantity.Kind, units quantity.System) string {
	if math.Abs(quantity.Round(x, kind, units)-x) < 1e-6 {
		return quantity.Shop(x, kind, units)
	}
	return quantity.Exact(x, kind)
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
	var old []locate.Entry // in front of what is added
	for _, e := range f.entries {
		if slices.Contains(ways, e.Key) {
			old = append(old, e)
		}
	}
	for _, line := range lines {
		name, value, _ := strings.Cut(line, " = ")
		f.add("rocker", name, value, "")
	}
	for _, e := range slices.Backward(old) {
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

// In returns the text of the design, with its changes in it, for plain numbers of another system: each plain number
// is written anew, to a ten-thousandth of its unit or finer; numbers that bring their unit stay, and so do comments,
// whatever they say of units. The error is an [*Error].
func (f *File) In(units quantity.System) (string, error) {
	text, err := f.Saved(f.Design)
	if err != nil {
		return "", err
	}
	saved, err := Parse(f.Name, text)
	if err != nil || saved.Design.Units == units {
		return text, err
	}
	values := map[string]string{}
	for _, key := range saved.Design.Keys() {
		e, found := saved.find(key)
		measure, field, err := saved.Design.Measure(key)
		if err != nil {
			return "", err
		}
		kind := measure.Kind
		if found && quantity.One(kind, saved.Design.Units) != quantity.One(kind, units) && plainNumber(e.Raw) {
			values[short(key)] = inUnits(*field, kind, units)
		}
	}
	_, said := saved.find("units")
	if said {
		values["units"] = units.String()
	}
	made := saved.with(values)
	if !said {
		start := made.lineStart(0)
		made.replace(start, start, "units = \""+units.String()+"\"\n")
	}
	_, err = Parse(f.Name, made.Text)
	return made.Text, err
}

// plainNumber reports whether a raw value brings no unit.
func plainNumber(raw string) bool {
	return !strings.ContainsFunc(strings.Trim(raw, "\"'"), func(r rune) bool {
		return r > 0x7f && !strings.ContainsRune("½¼¾⅛⅜⅝⅞⅓⅔⅙⅚⅕⅖⅗⅘−–⁄", r) ||
			r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r == '"' || r == '\''
	})
}

// inUnits returns a value as a plain number, as a maker types it where that says it.
func inUnits(x float64, kind quantity.Kind, units quantity.System) string {
	if math.Abs(quantity.Round(x, kind, units)-x) < 1e-9 {
		return quantity.Shop(x, kind, units)
	}
	return quantity.Decimal(x/quantity.One(kind, units), 4)
}
