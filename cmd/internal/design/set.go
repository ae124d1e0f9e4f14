package design

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A slot is where a design keeps what a key says: a word or a number.
type slot struct {
	key     string
	choice  piece.Choice
	set     func(word string) error // nil of a number
	measure piece.Measure
	field   *float64 // nil of a word
}

// slot returns the slot of a key. The error is that of [piece.Design.Measure].
func (f *File) slot(key string) (slot, error) {
	s := slot{key: key}
	var err error
	if s.choice, s.set, err = f.Design.Choice(key); err != nil {
		s.measure, s.field, err = f.Design.Measure(key)
	}
	return s, err
}

// Set changes one entry of the design, as typed on the command line. The error is an [*Error].
func (f *File) Set(key, value string) error {
	s, err := f.slot(key)
	if err == nil {
		err = f.put(s, value, value)
	} else if full := f.fullKeys(key); len(full) > 0 {
		err = fmt.Errorf("type the whole name of the entry: %s=%s", strings.Join(full, "="+value+" or "), value)
	} else {
		err = unknown(key, err)
	}
	if err != nil {
		return &Error{File: key + "=" + value, Message: exampleIn(f.told(err), f.Design.Units)}
	}
	shown := value
	if s.field != nil {
		shown = quantity.With(*s.field, s.measure.Kind, f.Design.Units)
	}
	f.changed[short(key)] = value
	if key == "kind" || strings.HasPrefix(key, "sitter.") { // whose role, age and height say whether it is for a child
		f.usualLimits()
	}
	f.Changes = append(f.Changes, fmt.Sprintf("%s = %s", key, shown))
	f.Typed = append(f.Typed, key+"="+value)
	return nil
}

// usualLimits gives the design the limits that go with its kind and its owner, but for those that were said.
func (f *File) usualLimits() {
	said := piece.Design{Limits: f.Design.Limits}
	f.Design.Limits = f.Design.UsualLimits()
	for _, key := range piece.Keys() {
		_, found := f.find(key)
		_, changed := f.changed[key]
		if m, from, err := said.Measure(key); err == nil && strings.HasPrefix(key, "limits.") && (found || changed) {
			_, field, _ := f.Design.Measure(key)
			*field = *from
			m.Given(&f.Design)
		}
	}
}

// fullKeys returns the keys of the design that a name without its section may stand for: of those
// with that last part the one that the file gives, or all.
func (f *File) fullKeys(name string) []string {
	all := slices.DeleteFunc(f.Design.Keys(), func(key string) bool { return sectionOf(key) == "" || last(key) != name })
	given := slices.DeleteFunc(slices.Clone(all), func(key string) bool {
		_, found := f.find(key)
		return !found
	})
	if len(given) == 1 {
		return given
	}
	return all
}

// put writes a value of TOML, or a text, into the design; typed is how it was typed.
func (f *File) put(s slot, value any, typed string) error {
	d, measure := &f.Design, s.measure
	if s.set != nil {
		word, ok := value.(string)
		if yes, is := value.(bool); is && s.choice.Has("yes") {
			word, ok = map[bool]string{true: "yes", false: "no"}[yes], true
		}
		if !ok {
			example := slices.Concat(s.choice.Words, []string{"word"})[0]
			return fmt.Errorf("this is a word, in quotes. For example: %s = %q", last(s.key), example)
		}
		if err := readable(s.choice, word); err != nil {
			return err
		}
		return s.set(word)
	}
	var err error
	var x float64
	switch v := value.(type) {
	case string:
		x, err = quantity.Parse(v, measure.Kind, d.Units)
	case float64:
		x, err = quantity.FromNumber(v, measure.Kind, d.Units)
	case int64:
		x, err = quantity.FromNumber(float64(v), measure.Kind, d.Units)
	default:
		err = fmt.Errorf("a number is wanted here. For example: %s = %s", last(s.key), measure.Example)
	}
	if err == nil {
		err = allowed(measure, x, typed, d.Units)
	}
	var misread *quantity.Error
	if errors.As(err, &misread) { // of a list, the number alone is the example
		misread.Example = strings.TrimPrefix(last(measure.Key)+" = "+measure.Example, "N = ")
	}
	if err != nil {
		return err
	}
	*s.field = x
	if reading, measured := strings.CutPrefix(s.key, "measured."); measured && x == 0 { // it is there, though it is 0
		d.Measured.Zero = append(d.Measured.Zero, reading)
	}
	measure.Given(d)
	return nil
}

// allowed returns what is wrong with the sign or the unit of a value.
func allowed(m piece.Measure, x float64, typed string, units quantity.System) error {
	want := ""
	switch {
	case m.Sign == piece.AboveZero && x <= 0:
		want = "is more than 0"
	case m.Sign == piece.AtLeastZero && x < 0:
		want = "is 0 or more"
	case m.Sign == piece.NotZero && x == 0:
		want = "is not 0"
	case m.Key == "sitter.N.height":
		return unitMeant(x, typed, units)
	default:
		return nil
	}
	return fmt.Errorf("%s %s; %s is not. For example: %s = %s", article(m.Label), want,
		quantity.Shown(typed, shownName), last(m.Key), m.Example)
}

// unitMeant returns the error for a person's height that is nobody's in the unit of the file,
// but a plain number that is somebody's in another: 6.4 for 6 ft 4 in, 178 for 178 cm.
func unitMeant(x float64, typed string, units quantity.System) error {
	const least, most = 0.45, 2.4 // m, of anybody
	number, err := strconv.ParseFloat(typed, 64)
	if err != nil || x >= least && x <= most {
		return nil
	}
	tries := []string{typed + " cm", typed + " m"}
	if feet, inches, _ := strings.Cut(typed, "."); units == quantity.Inch {
		tries = slices.Insert(tries, 0, feet+" ft")
		if n, err := strconv.Atoi(inches); err == nil && n < 12 {
			tries = slices.Insert(tries, 0, feet+" ft "+inches+" in")
		}
	}
	for _, try := range tries {
		if y, err := quantity.Parse(try, quantity.Length, quantity.Metric); err == nil && y >= least && y <= most {
			return fmt.Errorf("a person of %s %s; did you mean %q?", strconv.FormatFloat(number, 'f', -1, 64),
				quantity.Unit(quantity.Length, units), try)
		}
	}
	return nil
}

// article puts "the" before a label that has none.
func article(label string) string {
	first, _, _ := strings.Cut(label, " ")
	if slices.Contains([]string{"the", "how", "what", "who", "which", "whose", "a"}, first) {
		return label
	}
	return "the " + label
}

// readable returns what is wrong with a text for a choice that can be any.
func readable(c piece.Choice, text string) error {
	switch {
	case c.Words != nil:
		return nil
	case !utf8.ValidString(text):
		return errors.New("these bytes are no letters (UTF-8)")
	case strings.ContainsFunc(text, func(r rune) bool { return unicode.IsControl(r) || unicode.In(r, unicode.Zl, unicode.Zp) }):
		return fmt.Errorf("%s is one line, without tabs, line breaks or other control characters; take them out", article(c.Label))
	}
	return nil
}

// Clone returns a copy whose design shares nothing with f, for another column.
func (f *File) Clone() *File {
	c := *f
	c.Design = f.Design.Clone()
	c.Changes, c.Typed = slices.Clone(f.Changes), slices.Clone(f.Typed)
	c.changed = maps.Clone(f.changed)
	return &c
}
