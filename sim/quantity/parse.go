package quantity

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"
	"unicode"
)

// An Error says why a text is no quantity of a kind.
type Error struct {
	Text    string
	Want    string // "a length is wanted; this is a weight"
	Example string // one that would do, as typed
}

func (e *Error) Error() string {
	return fmt.Sprintf("%s; %q is not. For example: %s", e.Want, e.Text, e.Example)
}

// Parse reads a quantity of a kind, in SI. A number without a unit has the one of the system. Feet and inches may follow
// each other: "3 ft 6 in", "3' 6". A decimal comma is read in the metric system. The error is an [*Error]: no number, a
// number that is not finite or larger than makes sense (100 km), a unit that is unknown or of another kind.
//
// A plain decimal number takes one conversion and one multiplication: what a program wrote arrives bit for bit.
func Parse(text string, kind Kind, system System) (float64, error) {
	fail := func(want string) (float64, error) { return 0, newError(text, kind, system, want) }
	s := &scales[kind]
	parts, err := split(text, system)
	if err != nil {
		return fail(s.what + " is a number with a unit" + err.Error())
	}
	if kind == Length && len(parts) == 2 {
		return feetAndInches(text, parts, system)
	}
	if len(parts) != 1 {
		return fail(s.what + " is one number with one unit")
	}
	factor, known := s.factor(parts[0].unit, system)
	if !known {
		return fail(s.what + " is wanted" + otherKind(parts[0].unit, kind))
	}
	return bounded(text, parts[0].number*factor, kind, system)
}

// FromNumber returns what a plain number stands for, in SI: one multiplication. The error is as that of [Parse].
func FromNumber(x float64, kind Kind, system System) (float64, error) {
	return bounded(fmt.Sprint(x), x*One(kind, system), kind, system)
}

// bounded returns x, or an error where it is no size that makes sense.
func bounded(text string, x float64, kind Kind, system System) (float64, error) {
	s := &scales[kind]
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return 0, newError(text, kind, system, s.what+" is a finite number")
	}
	if math.Abs(x) > s.most*(1+1e-12) {
		largest := strings.TrimSpace(fmt.Sprintf("%g %s", s.most, s.units[0].names[0]))
		largest = cmp.Or(map[Kind]string{Length: "100 km", Angle: "360 degrees"}[kind], largest)
		return 0, newError(text, kind, system, s.what+" is at most "+largest)
	}
	return x, nil
}

// feetAndInches reads two parts, feet and then inches.
func feetAndInches(text string, parts []term, system System) (float64, error) {
	s := &scales[Length]
	feet, _ := s.factor(parts[0].unit, system)
	inches, _ := s.factor(parts[1].unit, Inch)
	if feet != 12*In || inches != In || parts[1].number < 0 {
		return 0, newError(text, Length, system, "a length is one number with one unit, or feet and then inches")
	}
	total := 12*math.Abs(parts[0].number) + parts[1].number
	return bounded(text, math.Copysign(total, parts[0].number)*In, Length, system)
}

// otherKind says of which kind a unit is, where it is of another.
func otherKind(name string, kind Kind) string {
	for k := range scales {
		if _, found := scales[k].factor(name, Metric); found && Kind(k) != kind {
			return ", and " + name + " is the unit of " + scales[k].what
		}
	}
	return fmt.Sprintf(", and %q is no unit of it", name)
}

func newError(text string, kind Kind, system System, want string) error {
	example := scales[kind].example[system]
	if strings.ContainsAny(example, " /") {
		example = `"` + example + `"`
	}
	return &Error{Text: Shown(text, 40), Want: want, Example: example}
}

// Shown returns a text for a message: at most so many letters, a question mark for each control of a terminal.
func Shown(text string, most int) string {
	letters := 0
	for at := range text {
		if letters++; letters > most {
			text = text[:at] + "…"
			break
		}
	}
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) || unicode.In(r, unicode.Zl, unicode.Zp, unicode.Bidi_Control) {
			return '?'
		}
		return r
	}, strings.ToValidUTF8(text, "?"))
}

// A term is one number with its unit, "" where it brings none.
type term struct {
	number float64
	unit   string
}

// longest is how long a text may be that is read: nobody writes half as many, and one without end holds up the reader.
const longest = 100

// split parts a text into its numbers with their units.
func split(text string, system System) ([]term, error) {
	rest := strings.TrimSpace(typeset.Replace(text))
	switch {
	case rest == "":
		return nil, fmt.Errorf(", and there is none")
	case len(rest) > longest:
		return nil, fmt.Errorf(" of at most %d letters", longest)
	}
	var parts []term
	for rest != "" {
		if len(parts) == 2 {
			return nil, fmt.Errorf("")
		}
		number, behind, err := readNumber(rest, system)
		if err != nil {
			return nil, err
		}
		name, next := readUnit(behind)
		parts = append(parts, term{number, name})
		rest = strings.TrimSpace(next)
		if rest != "" && name == "" {
			return nil, fmt.Errorf("")
		}
	}
	return parts, nil
}

// readUnit takes the unit off the front of a text: all up to the next number.
func readUnit(text string) (name, rest string) {
	text = strings.TrimLeft(text, " ")
	end := len(text)
	for i, r := range text {
		point := r == '.' && len(text) > i+1 && unicode.IsDigit(rune(text[i+1])) // else it ends a short form: 42 in.
		if starts := unicode.IsDigit(r) || point || r == '-' && i > 0; starts && !insideUnit(text[:i]) {
			end = i
			break
		}
	}
	name = strings.ToLower(strings.TrimSuffix(strings.TrimSpace(text[:end]), "."))
	return strings.Join(strings.Fields(powers.Replace(name)), " "), text[end:]
}

// powers writes the powers and products of a unit with plain letters.
var powers = strings.NewReplacer("·", " ", "²", "2", "³", "3", "^", "", "*", " ")

// insideUnit reports whether a digit behind this text is the power of a unit, as in m2 and ft3.
func insideUnit(before string) bool {
	ends := func(base string) bool { return strings.HasSuffix(strings.ToLower(before), base) }
	return strings.ContainsAny(before, " /·*^") && slices.ContainsFunc([]string{"m", "in", "ft", "s", "^"}, ends)
}

// typeset turns the many signs of typesetting into the few that are read.
var typeset = strings.NewReplacer(
	"\u00a0", " ", "\u202f", " ", "\u2009", " ", "\t", " ",
	"−", "-", "–", "-", "⁄", "/", "∕", "/",
)
