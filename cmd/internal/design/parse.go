package design

import (
	"errors"
	"fmt"
	"strings"

	"github.com/BurntSushi/toml"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A File is a design file, read.
type File struct {
	Name    string
	Text    string
	Design  piece.Design
	Changes []string // made by Set, as a maker reads them: "rocker.radius = 40 in"
	Typed   []string // the same as they were typed: "rocker.radius=40"

	entries []locate.Entry
	places  map[string]int    // index of each entry by its key
	changed map[string]string // key to what was typed for it on the command line
}

// Parse reads a design from text; name is what messages call it. The error is an
// [*Error]. The text is scanned before it is decoded, for a decoder takes any depth and length.
func Parse(name, text string) (*File, error) {
	f := &File{Name: name}
	var err error
	if f.Text, err = plain(text); err != nil {
		return nil, &Error{File: name, Message: err.Error()}
	}
	var bound *locate.BoundError
	if f.entries, err = locate.Entries(f.Text); errors.As(err, &bound) {
		return nil, f.wrong(bound.At, bound.Reason)
	}
	raw := map[string]any{}
	if _, err := toml.Decode(strings.TrimPrefix(f.Text, bom), &raw); err != nil {
		return nil, f.refused(err)
	}
	f.places = make(map[string]int, len(f.entries))
	for i, e := range f.entries {
		f.places[keyOf(e.Path)] = i
	}
	if err := f.tooMany(); err != nil {
		return nil, err
	}
	f.Design = start(raw)
	leaves := map[string]any{}
	flatten("", raw, leaves)
	filled := map[*float64]string{}
	for _, e := range f.entries {
		value, leaf := leaves[e.Path]
		if !leaf {
			if err := f.checkTable(e); err != nil {
				return nil, err
			}
			continue
		}
		if err := f.fill(e, value, filled); err != nil {
			return nil, err
		}
	}
	f.assignRoles()
	return f, nil
}

// start returns the design before its first line is read: as many entries as the file
// has, in its units, with the limits that go with its kind.
func start(raw map[string]any) piece.Design {
	var d piece.Design
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
	d.Limits = piece.DefaultLimits(d.Kind)
	for _, list := range piece.Lists() {
		section, entry, inside := strings.Cut(list.Name, ".")
		value := raw[section]
		if table, is := value.(map[string]any); inside && is {
			value = table[entry]
		} else if inside {
			continue
		}
		list.Make(&d, count(value))
	}
	return d
}

// count returns how many tables a value holds.
func count(value any) int {
	switch v := value.(type) {
	case map[string]any:
		return 1
	case []map[string]any:
		return len(v)
	case []any:
		return len(v)
	}
	return 0
}

// flatten lists the leaves of a decoded file by their path, "sitter[0].weight".
func flatten(path string, value any, leaves map[string]any) {
	switch v := value.(type) {
	case map[string]any:
		for key, inner := range v {
			if path != "" {
				key = path + "." + key
			}
			flatten(key, inner, leaves)
		}
	case []map[string]any:
		for i, inner := range v {
			flatten(fmt.Sprintf("%s[%d]", path, i), inner, leaves)
		}
	case []any:
		for i, inner := range v {
			flatten(fmt.Sprintf("%s[%d]", path, i), inner, leaves)
		}
	default:
		leaves[path] = value
	}
}

// fill sets one entry of the design.
func (f *File) fill(e locate.Entry, value any, filled map[*float64]string) error {
	key := keyOf(e.Path)
	at := func(err error) error { return f.at(e.Value, key, err) }
	if choice, set, err := f.Design.Choice(key); err == nil {
		word, ok := value.(string)
		if yes, is := value.(bool); is && choice.Has("yes") {
			word, ok = map[bool]string{true: "yes", false: "no"}[yes], true
		}
		if !ok {
			example := "word"
			if len(choice.Words) > 0 {
				example = choice.Words[0]
			}
			return at(fmt.Errorf("this is a word, in quotes. For example: %s = %q", last(key), example))
		}
		if err := readable(choice, word); err != nil {
			return at(err)
		}
		return at(set(word))
	}
	measure, field, err := f.Design.Measure(key)
	if err != nil {
		return f.at(e.Key, key, f.unknown(key, err))
	}
	if before := filled[field]; before != "" {
		return f.at(e.Key, key, fmt.Errorf("given twice, here and as %s: keep one", before))
	}
	filled[field] = last(key)
	var x float64
	switch v := value.(type) {
	case string:
		x, err = quantity.Parse(v, measure.Kind, f.Design.Units)
	case float64:
		x, err = quantity.FromNumber(v, measure.Kind, f.Design.Units)
	case int64:
		x, err = quantity.FromNumber(float64(v), measure.Kind, f.Design.Units)
	default:
		err = fmt.Errorf("a number is wanted here. For example: %s = %s", last(key), measure.Example)
	}
	if err == nil {
		err = allowed(measure, x, strings.Trim(e.Raw, `"'`), f.Design.Units)
	}
	f.put(key, field, x)
	measure.Given(&f.Design)
	return at(withExample(err, measure))
}

// checkTable checks that a table or an array of the file is one that a design has.
func (f *File) checkTable(e locate.Entry) error {
	key := generalKey(keyOf(e.Path))
	for _, known := range piece.Keys() {
		if known == key || strings.HasPrefix(known, key+".") {
			return nil
		}
	}
	return f.at(e.Key, keyOf(e.Path), f.unknown(keyOf(e.Path), nil))
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

// at gives an error its place, nil staying nil.
func (f *File) at(p locate.Position, key string, err error) error {
	if err == nil {
		return nil
	}
	var wrong *piece.KeyError
	if errors.As(err, &wrong) {
		return f.wrong(p, wrong.Key+": "+f.told(wrong))
	}
	return f.wrong(p, quantity.Shown(key, shownName)+": "+err.Error())
}
