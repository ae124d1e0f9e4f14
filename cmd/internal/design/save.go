package design

import (
	"cmp"
	"errors"
	"maps"
	"math"
	"slices"
	"strings"

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
