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

// SplitChange parts a change as typed, "rocker.radius=36,39,42", into its key and its
// values; ok is false where it is no change. A comma parts values unless it stands in
// quotes.
func SplitChange(change string) (key string, values []string, ok bool) {
	key, text, ok := strings.Cut(change, "=")
	key = strings.TrimSpace(key)
	if !ok || key == "" || strings.ContainsAny(key, `/\`) {
		return "", nil, false
	}
	text = strings.TrimSpace(text)
	for _, quotes := range [][2]string{{`"`, `"`}, {"“", "”"}, {"„", "“"}} {
		if inner, opens := strings.CutPrefix(text, quotes[0]); opens && strings.HasSuffix(inner, quotes[1]) {
			return key, []string{strings.TrimSuffix(inner, quotes[1])}, true
		}
	}
	for _, v := range strings.Split(text, ",") {
		values = append(values, strings.TrimSpace(v))
	}
	return key, values, true
}

// Set changes one entry of the design, as typed on the command line. The error is an
// [*Error].
func (f *File) Set(key, value string) error {
	fail := func(err error) error {
		message := err.Error()
		if wrong := (*piece.KeyError)(nil); errors.As(err, &wrong) {
			message = strings.TrimPrefix(message, wrong.Key+": ")
		}
		return &Error{File: key + "=" + value, Message: message}
	}
	shown := value
	if _, set, err := f.Design.Choice(key); err == nil {
		if err := set(value); err != nil {
			return fail(err)
		}
	} else {
		measure, field, err := f.Design.Measure(key)
		if err != nil {
			return fail(f.unknown(key, err))
		}
		x, err := quantity.Parse(value, measure.Kind, f.Design.Units)
		if err == nil {
			err = allowed(measure, x, value)
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
		return &Error{File: wrong.Key + "=" + value, Message: strings.TrimPrefix(err.Error(), wrong.Key+": ")}
	}
	explained := &Error{File: f.Name, Message: err.Error()}
	if at, found := f.near(wrong.Key); found {
		explained.Line, explained.Column = at.Line, at.Column
	}
	return explained
}
