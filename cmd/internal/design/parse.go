// Package design reads a design file: text into a piece.Design, strictly, with the
// line and column of every mistake. It is the only package that knows TOML.
package design

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"github.com/BurntSushi/toml"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/piece"
)

// A File is a design file, read.
type File struct {
	Name    string
	Text    string
	Design  piece.Design
	Changes []string // made by Set, as a maker reads them: "rocker.radius = 40 in"
	Typed   []string // the same as they were typed: "rocker.radius=40"

	entries []locate.Entry
	places  map[string]int    // index of each entry by its short key
	values  []any             // of each entry that is a leaf
	changed map[string]string // short key to what was typed for it on the command line
}

// Parse reads a design from text; name is what messages call it. The error is an
// [*Error]. The text is scanned before it is decoded, for a decoder takes any depth and length.
func Parse(name, text string) (*File, error) {
	f := &File{Name: name, changed: map[string]string{}}
	var err error
	if f.Text, err = plain(text); err != nil {
		return nil, &Error{File: name, Message: err.Error()}
	}
	if bound := f.scan(); bound != nil {
		return nil, f.wrong(bound.Offset, bound.Reason)
	}
	raw := map[string]any{}
	if _, err := toml.Decode(strings.TrimPrefix(f.Text, locate.Mark), &raw); err != nil {
		return nil, f.refused(err)
	}
	if f.values, err = decoded(f.entries); err != nil {
		return nil, f.wrong(nowhere, inOurWords(err.Error()))
	}
	if err := f.start(raw); err != nil {
		return nil, err
	}
	filled := map[*float64]string{}
	for i, e := range f.entries {
		if err := f.fill(e, f.values[i], filled); err != nil {
			return nil, err
		}
	}
	f.assignRoles()
	f.usualLimits()
	return f, nil
}

// scan finds the entries of the text, up to a bound that it passes.
func (f *File) scan() (bound *locate.Bound) {
	f.entries, bound = locate.Entries(f.Text, element)
	f.places = make(map[string]int, len(f.entries))
	for i, e := range f.entries {
		if e.Kind != locate.Stray {
			f.places[short(e.Key)] = i
		}
	}
	return bound
}

// decoded returns the value of each entry that is a leaf, 0 of the others. It is read from the bytes
// that were placed, all in one array, so that no value stands at the place of another.
func decoded(entries []locate.Entry) ([]any, error) {
	raw := slices.Repeat([]string{"0"}, len(entries))
	for i, e := range entries {
		if e.Leaf() {
			raw[i] = e.Raw
		}
	}
	var list struct{ X []any }
	if _, err := toml.Decode("X = [\n"+strings.Join(raw, ",\n")+"]", &list); err != nil {
		return nil, err
	}
	if len(list.X) != len(raw) {
		return nil, errors.New("there are other values than places")
	}
	return list.X, nil
}

// start makes the design as it is before its first line is read: with as many entries as the file has,
// in its units. The error is that of a list longer than is read.
func (f *File) start(raw map[string]any) error {
	d := &f.Design
	for _, key := range []string{"kind", "units"} {
		word, isText := raw[key].(string)
		_, set, err := d.Choice(key)
		if err != nil || !isText {
			continue
		}
		if err := set(word); err != nil {
			continue // a wrong word is reported when its line is read
		}
	}
	for _, list := range piece.Lists() {
		var value any = raw
		section, _, inside := strings.Cut(list.Name, ".")
		for _, name := range strings.Split(list.Name, ".") {
			table, _ := value.(map[string]any)
			value = table[name]
		}
		if e, found := f.find(element(list.Name, list.Most)); found {
			what := list.What
			if !inside {
				what += " under [[" + section + "]]"
			}
			return f.wrong(e.Start, fmt.Sprintf("%s: more than %d %s are not read", list.Name, list.Most, what))
		}
		switch v := value.(type) {
		case map[string]any:
			list.Make(d, 1)
		case []map[string]any:
			list.Make(d, len(v))
		case []any:
			list.Make(d, len(v))
		}
	}
	return nil
}

// fill sets one entry of the design, and checks that a table or an array is one that a design has.
func (f *File) fill(e locate.Entry, value any, filled map[*float64]string) error {
	if !e.Leaf() {
		table := generalKey(e.Key) + "."
		if slices.ContainsFunc(piece.Keys(), func(key string) bool { return strings.HasPrefix(key+".", table) }) {
			return nil
		}
		return f.at(e.Start, e.Key, unknown(e.Key, nil))
	}
	s, err := f.slot(e.Key)
	if err != nil {
		return f.at(e.Start, e.Key, unknown(e.Key, err))
	}
	if s.field != nil {
		if before := filled[s.field]; before != "" {
			return f.at(e.Start, e.Key, fmt.Errorf("given twice, here and as %s: keep one", before))
		}
		filled[s.field] = last(e.Key)
	}
	return f.at(e.ValueStart, e.Key, f.put(s, value, strings.Trim(e.Raw, `"'`)))
}

// assignRoles gives each sitter without a role one: the first, and entries of the same
// name, are the owner, all others others.
func (f *File) assignRoles() {
	sitters := f.Design.Sitters
	for i := range sitters {
		if sitters[i].Name == "" {
			sitters[i].Name = "owner"
			if i > 0 {
				sitters[i].Name = fmt.Sprintf("sitter %d", i+1)
			}
		}
		_, said := f.find(fmt.Sprintf("sitter.%d.role", i+1))
		if !said && sitters[i].Name != sitters[0].Name {
			sitters[i].Role = piece.Other
		}
	}
}
