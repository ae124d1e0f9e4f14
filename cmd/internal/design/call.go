package design

import (
	"slices"
	"strings"
)

// BuiltInName is what messages call the design that is taken where none is named.
const BuiltInName = "built-in example"

// BuiltIn returns the design that is taken where none is named.
func BuiltIn() (*File, error) {
	text, _ := Start("chair")
	return Parse(BuiltInName, text)
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
