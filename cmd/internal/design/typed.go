package design

import (
	"fmt"
	"slices"
	"strings"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// SplitChange parts a change as typed, "rocker.radius=36,39,42", into its key and its
// values; ok is false where it is no change. A comma parts values unless it stands in
// quotes, and never a text such as a title, which is taken letter by letter.
func SplitChange(change string) (key string, values []string, ok bool) {
	typed, text, ok := strings.Cut(change, "=")
	key = strings.TrimSpace(typed)
	if !ok || key == "" || strings.ContainsAny(key, `/\`) {
		return "", nil, false
	}
	if isText(key) {
		if typed != key { // key = text
			text = strings.TrimSpace(text)
		}
		return key, []string{text}, true
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

// isText reports whether a key as typed is that of an entry that can be any text, in some design.
func isText(key string) bool {
	return slices.ContainsFunc(piece.Choices(), func(c piece.Choice) bool {
		return c.Words == nil && (c.Key == key || c.Key == generalKey(key))
	})
}

// Torn returns how many words of a call a shell made of one change that was typed with spaces in
// it, and the change as one word: of "rocker.radius", "=", "40", "1/2" all four; it ends before a
// word that isName. It returns 1 and the word itself where it is whole.
func Torn(words []string, isName func(string) bool) (n int, whole string) {
	key, value, begun := strings.Cut(words[0], "=")
	n = 1
	if !begun && len(words) > 1 {
		if value, begun = strings.CutPrefix(words[1], "="); begun {
			n = 2
		}
	}
	if !begun || !named(key) {
		return 1, words[0]
	}
	goesOn := func(i int) bool {
		return i < len(words) && !strings.HasSuffix(words[i], ".toml") && !strings.Contains(words[i], "=") &&
			!strings.HasPrefix(words[i], "--") && !isName(words[i])
	}
	if value == "" && goesOn(n) {
		value, n = words[n], n+1
	}
	for more, i := value, n; goesOn(i); i++ {
		if more += " " + words[i]; reads(key, more) {
			value, n = more, i+1
		}
	}
	if n == 1 {
		return 1, words[0]
	}
	return n, key + "=" + value
}

// means reports whether a word is the key of an entry that all designs know by a general key, or the last part of it.
func means(word, general string) bool {
	return word == general || generalKey(word) == general || word == last(general)
}

// named reports whether a word is the key of an entry, or the last part of one.
func named(word string) bool {
	return slices.ContainsFunc(piece.Keys(), func(key string) bool { return means(word, key) })
}

// reads reports whether a text can be the value of an entry in either system of units.
func reads(key, text string) bool {
	return isText(key) || slices.ContainsFunc(piece.Measures(), func(m piece.Measure) bool {
		if !means(key, m.Key) {
			return false
		}
		_, err := quantity.Parse(text, m.Kind, quantity.Metric)
		return err == nil
	})
}

// Doubtful returns the error for two values that are more likely one with a decimal comma: the
// second is none that the entry has, or far below the first, and both together are one.
func (f *File) Doubtful(key string, values []string) error {
	measure, _, err := f.Design.Measure(key)
	if err != nil || len(values) != 2 || measure.Kind == quantity.Count || strings.Trim(values[1], "0123456789") != "" {
		return nil
	}
	var x [3]float64
	point := values[0] + "." + values[1]
	for i, text := range []string{values[0], values[1], point} {
		if x[i], err = quantity.Parse(text, measure.Kind, f.Design.Units); err != nil {
			return nil
		}
	}
	inside := func(x float64) bool { return x >= measure.Low && x <= measure.High }
	if !inside(x[0]) || !inside(x[2]) || inside(x[1]) && x[1] > x[0]/3 {
		return nil
	}
	typed := fmt.Sprintf("%s=%s", key, point)
	shop := quantity.Shop(x[2], measure.Kind, f.Design.Units)
	if quantity.Round(x[2], measure.Kind, f.Design.Units) == x[2] && strings.Contains(shop, "/") {
		typed += fmt.Sprintf(" or %s=%s", key, strings.Replace(shop, " ", "-", 1))
	}
	return &Error{File: key + "=" + strings.Join(values, ","),
		Message: fmt.Sprintf("a comma parts two values to compare, %s and %s. For one value type: %s. To compare the "+
			"two, type the smaller first: %s=%s,%s",
			values[0], values[1], typed, key, values[1], values[0])}
}

// Call returns what is typed for a command on a file with its changes, and more words behind them.
func (f *File) Call(command string, more ...string) string {
	line := "rockerwright " + command
	if f.Name != BuiltInName {
		line += " " + ShellWord(f.Name)
	}
	for _, word := range slices.Concat(f.Typed, more) {
		line += " " + ShellWord(word)
	}
	return line
}

// CallChanged returns what is typed to check a file with one more change, in place of an earlier one to
// the same entry; of no value the key is an option.
func (f *File) CallChanged(key, value string) string {
	if value == "" {
		return f.Call("check", key)
	}
	changed := *f
	changed.Typed = slices.DeleteFunc(slices.Clone(f.Typed), func(typed string) bool {
		return strings.HasPrefix(typed, key+"=")
	})
	return changed.Call("check", key+"="+value)
}

// ShellWord returns a word as it is typed in a terminal, in quotes where it needs them.
func ShellWord(word string) string {
	if strings.ContainsAny(word, " \t'\"()&;|<>$*?") {
		return `"` + strings.ReplaceAll(word, `"`, `\"`) + `"`
	}
	return word
}
