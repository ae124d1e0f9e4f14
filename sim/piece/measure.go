package piece

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"rockerwright/sim/quantity"
)

// A Sign says which values a measure can have at all.
type Sign int

const (
	AboveZero Sign = iota
	AtLeastZero
	NotZero // below zero it bends the other way
	AnySign
)

// signs are the signs as the table of measures calls them.
var signs = [...]string{AboveZero: "above 0", AtLeastZero: "0 or more", NotZero: "not 0", AnySign: "any"}

// A Measure is one measure that a maker can change, and all that is known of it.
type Measure struct {
	Key       string // "rocker.tail", "sitter.N.weight"; N counts from 1
	Label     string // as it is called at the bench
	Kind      quantity.Kind
	Sign      Sign
	Low, High float64 // the range over which it is changed, SI
	Step      float64 // the least change worth trying, SI
	Tolerance float64 // what a shop usually holds it to, 95 times in 100, ± SI; common practice
	Example   string  // a value as typed in a file in inches
	Fitted    bool    // set when the piece is put together; zero as drawn
	Blank     int     // its number on the measuring sheets; zero where it is not on them

	field field
	asked field // of a Wish, whether it is given; else nil
}

// Given marks the measure as given in a design, for those that may be zero: a [Wish].
func (m Measure) Given(d *Design) {
	if m.asked != nil {
		m.asked(d, 0).SetBool(true)
	}
}

// in returns where a design holds the measure; n counts the entries of a list from 0.
func (m Measure) in(d *Design, n int) *float64 { return m.field(d, n).Addr().Interface().(*float64) }

// Name returns the last part of the key: "tail".
func (m Measure) Name() string { return lastOf(m.Key) }

// In returns what a design has of the measure, SI; of one in a list, of its first entry.
func (m Measure) In(d *Design) float64 { return *m.in(d, 0) }

// Wanted returns what a design wants of a limit, SI, and whether it asks: zero asks nothing, but of a [Wish].
func (m Measure) Wanted(d *Design) (want float64, asked bool) {
	want = m.In(d)
	if m.asked != nil {
		return want, m.asked(d, 0).Bool()
	}
	return want, want != 0
}

// LimitOf returns the measure of a limit, "rest_tilt". It panics where the table has none.
func LimitOf(name string) Measure {
	return measures()[slices.IndexFunc(measures(), func(m Measure) bool { return m.Key == "limits."+name })]
}

// read are the measures of the rocker that were read off an edge, not drawn.
var read = []string{"rocker.rises.N", "rocker.spacing", "rocker.origin", "rocker.points.N.x", "rocker.points.N.y"}

// Made reports whether the measure is of the piece, not of people, readings, floor, limits or wishes.
func (m Measure) Made() bool {
	section, _, _ := strings.Cut(m.Key, ".")
	return slices.ContainsFunc(sections[:], func(s Section) bool { return s.Made && s.Name == section }) && !slices.Contains(read, m.Key)
}

// A Choice is an entry of a design that is a word or a text.
type Choice struct {
	Key   string
	Label string
	Words []string // what it can be; nil for any text

	set func(d *Design, n int, word string)
}

// Has reports whether a word is one that the choice can be.
func (c Choice) Has(word string) bool { return slices.Contains(c.Words, word) }

// Measure returns the measure of that key, "sitter.2.weight", counting from 1, and the field of the design that
// holds it. The number of an only sitter, part or arc may be left out. The error is a [*KeyError].
func (d *Design) Measure(key string) (Measure, *float64, error) {
	general, n, err := d.general(key)
	if err != nil {
		return Measure{}, nil, err
	}
	i := slices.IndexFunc(measures(), func(m Measure) bool { return m.Key == general })
	if i < 0 {
		return Measure{}, nil, unknown(key)
	}
	m := measures()[i]
	return m, m.in(d, n), nil
}

// Choice returns the choice of that key, and what sets it to one of its words; any other word is an error.
func (d *Design) Choice(key string) (Choice, func(word string) error, error) {
	general, n, err := d.general(key)
	if err != nil {
		return Choice{}, nil, err
	}
	i := slices.IndexFunc(choices[:], func(c Choice) bool { return c.Key == general })
	if i < 0 {
		return Choice{}, nil, unknown(key)
	}
	c := choices[i]
	return c, func(word string) error {
		if c.Words != nil && !c.Has(word) {
			reason := fmt.Sprintf("%q is not one of: %s", quantity.Shown(word, 40), strings.Join(c.Words, ", "))
			return &KeyError{Key: key, Give: lastOf(key), Word: c.Words[0], Reason: cmp.Or(Formerly(word), reason)}
		}
		c.set(d, n, word)
		return nil
	}, nil
}

func unknown(key string) error {
	return &KeyError{Key: key, Reason: "there is no such entry"}
}

func lastOf(key string) string { return key[strings.LastIndexByte(key, '.')+1:] }

// general turns "sitter.2.weight" into "sitter.N.weight" and 1, and checks that there are so many.
func (d *Design) general(key string) (general string, n int, err error) {
	for _, list := range lists {
		rest, found := strings.CutPrefix(key, list.Name+".")
		if !found {
			continue
		}
		have := list.Have(d)
		number, tail, _ := strings.Cut(rest, ".")
		count, err := strconv.Atoi(number)
		if err != nil {
			count, tail = 1, rest
			if have > 1 {
				return "", 0, &KeyError{Key: key, Give: list.Name + ".1." + rest,
					Reason: fmt.Sprintf("there are %d entries of %s: say which, counting from 1", have, list.Name)}
			}
		}
		if count < 1 || count > have {
			return "", 0, &KeyError{Key: key, Reason: fmt.Sprintf("the design has %d entries of %s", have, list.Name)}
		}
		return strings.TrimSuffix(list.Name+".N."+tail, "."), count - 1, nil
	}
	return key, 0, nil
}

// Clone returns a copy that shares nothing with d.
func (d Design) Clone() Design {
	for i := range lists {
		lists[i].clone(&d)
	}
	d.Measured.Zero = slices.Clone(d.Measured.Zero)
	return d
}

// Keys returns every key a design file can have, sorted as in Measures and Choices.
func Keys() []string {
	var keys []string
	for _, c := range choices {
		keys = append(keys, c.Key)
	}
	for _, m := range measures() {
		keys = append(keys, m.Key)
	}
	return keys
}

// Keys returns the key of every measure that the design has a field for, in the order of
// Measures, lists numbered from 1: "sitter.2.weight", of an only sitter or part "sitter.weight".
func (d *Design) Keys() []string {
	var keys []string
	for _, m := range measures() {
		keys = append(keys, d.KeysOf(m.Key)...)
	}
	return keys
}

// KeysOf returns the keys by which a design has a measure or a choice, "sitter.N.weight".
func (d *Design) KeysOf(general string) []string {
	section, rest, listed := strings.Cut(general, ".N")
	if !listed {
		return []string{general}
	}
	have := lists[slices.IndexFunc(lists[:], func(l List) bool { return l.Name == section })].Have(d)
	if have == 1 && !strings.Contains(section, ".") {
		return []string{section + rest}
	}
	keys := make([]string, have)
	for n := range keys {
		keys[n] = fmt.Sprintf("%s.%d%s", section, n+1, rest)
	}
	return keys
}

// ArcKey returns the key of an entry of the n-th arc, from 1.
func ArcKey(n int, name string) string { return fmt.Sprintf("rocker.arcs.%d.%s", n, name) }
