package design

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// withExample gives an error of package quantity the example of the measure itself.
func withExample(err error, m piece.Measure) error {
	var wrong *quantity.Error
	if !errors.As(err, &wrong) {
		return err
	}
	better := *wrong
	better.Example = m.Example
	if name := last(m.Key); name != "N" { // of a list, the number alone
		better.Example = name + " = " + m.Example
	}
	return &better
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
	return fmt.Errorf("%s %s; %s is not. For example: %s = %s", article(m.Label), want, quantity.Shown(typed, shownName), last(m.Key), m.Example)
}

// unitMeant returns the error for a person's height that is nobody's in the unit of the file,
// but a plain number that is somebody's in another: 6.4 for 6 ft 4 in, 178 for 178 cm.
func unitMeant(x float64, typed string, units quantity.System) error {
	const least, most = 0.45, 2.4 // m, of anybody
	number, err := strconv.ParseFloat(typed, 64)
	if err != nil || x >= least && x <= most {
		return nil
	}
	feet, inches, _ := strings.Cut(typed, ".")
	tries := []string{feet + " ft " + inches + " in", feet + " ft", typed + " cm", typed + " m"}
	if units == quantity.Metric {
		tries = []string{typed + " cm", typed + " m"}
	}
	for _, try := range tries {
		y, err := quantity.Parse(try, quantity.Length, quantity.Metric)
		if n, whole := strconv.Atoi(inches); err != nil || y < least || y > most || strings.HasSuffix(try, " in") && (whole != nil || n > 11) {
			continue
		}
		return fmt.Errorf("a person of %s %s; did you mean %q?", strconv.FormatFloat(number, 'f', -1, 64), quantity.Unit(quantity.Length, units), try)
	}
	return nil
}

// article puts "the" before a label that has none.
func article(label string) string {
	for _, has := range []string{"the ", "how ", "what ", "who ", "which ", "whose ", "a "} {
		if strings.HasPrefix(label, has) {
			return label
		}
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
