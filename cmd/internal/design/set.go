package design

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// Set changes one entry of the design, as typed on the command line. The error is an
// [*Error].
func (f *File) Set(key, value string) error {
	fail := func(err error) error {
		message := err.Error()
		if wrong := (*piece.KeyError)(nil); errors.As(err, &wrong) {
			message = f.told(wrong)
		}
		return &Error{File: key + "=" + value, Message: exampleIn(message, f.Design.Units)}
	}
	shown := value
	if choice, set, err := f.Design.Choice(key); err == nil {
		if err = readable(choice, value); err == nil {
			err = set(value)
		}
		if err != nil {
			return fail(err)
		}
	} else {
		measure, field, err := f.Design.Measure(key)
		if full := f.fullKeys(key); err != nil && len(full) > 0 {
			return fail(fmt.Errorf("type the whole name of the entry: %s=%s", strings.Join(full, "="+value+" or "), value))
		}
		if err != nil {
			return fail(f.unknown(key, err))
		}
		x, err := quantity.Parse(value, measure.Kind, f.Design.Units)
		if err == nil {
			err = allowed(measure, x, value, f.Design.Units)
		}
		if err != nil {
			return fail(withExample(err, measure))
		}
		f.put(key, field, x)
		measure.Given(&f.Design)
		shown = quantity.With(x, measure.Kind, f.Design.Units)
	}
	if f.changed == nil {
		f.changed = map[string]string{}
	}
	f.changed[key] = value
	f.Changes = append(f.Changes, fmt.Sprintf("%s = %s", key, shown))
	f.Typed = append(f.Typed, key+"="+value)
	return nil
}

// fullKeys returns the keys of the design that a name without its section may stand for: of those
// with that last part the one that the file gives, or all.
func (f *File) fullKeys(name string) []string {
	var all, given []string
	for _, key := range f.Design.Keys() {
		if !strings.Contains(key, ".") || last(key) != name {
			continue
		}
		all = append(all, key)
		if _, found := f.find(key); found {
			given = append(given, key)
		}
	}
	if len(given) == 1 {
		return given
	}
	return all
}

// put writes a number into the design; of a reading that it is there, though it is 0.
func (f *File) put(key string, field *float64, x float64) {
	*field = x
	if reading, measured := strings.CutPrefix(key, "measured."); measured && x == 0 {
		f.Design.Measured.Zero = append(f.Design.Measured.Zero, reading)
	}
}

// Clone returns a copy whose design shares nothing with f, for another column.
func (f *File) Clone() *File {
	c := *f
	c.Design = f.Design.Clone()
	c.Changes, c.Typed = slices.Clone(f.Changes), slices.Clone(f.Typed)
	c.changed = maps.Clone(f.changed)
	return &c
}

// Explain gives an error of package piece its place: the line of the file, or the
// change on the command line. Other errors are returned as they are.
func (f *File) Explain(err error) error {
	var wrong *piece.KeyError
	if !errors.As(err, &wrong) {
		return err
	}
	if value, changed := f.changed[wrong.Key]; changed {
		return &Error{File: wrong.Key + "=" + value, Message: exampleIn(f.told(wrong), f.Design.Units)}
	}
	at, _ := f.near(wrong.Key)
	return f.wrong(at, wrong.Key+": "+f.told(wrong))
}
