package design

import (
	"errors"
	"fmt"
	"regexp"
	"strings"
	"sync"
	"unicode/utf8"

	"github.com/BurntSushi/toml"

	"rockerwright/sim/quantity"
)

// assignment is a line of the form key = value.
var assignment = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`^(\s*)([A-Za-z0-9_.-]+)(\s*=\s*)(.*)$`)
})

// refused returns the error for a text that TOML does not accept. Where a line holds a
// measure as the trade writes it, it says how to quote that line.
func (f *File) refused(err error) error {
	units := f.unitsOf()
	for i, line := range strings.Split(f.Text, "\n") {
		line = strings.TrimSuffix(strings.TrimPrefix(line, bom), "\r")
		part := assignment().FindStringSubmatch(line)
		if part == nil || accepted("x = "+part[4]) {
			continue
		}
		place := &Error{File: f.Name, Line: i + 1, Column: utf8.RuneCountInString(part[1]+part[2]+part[3]) + 1}
		if cure, reads := quantity.Repair(part[4], units); reads {
			place.Message = fmt.Sprintf("%s: put quotes round it: %s = %s", part[2], part[2], cure)
			return place
		}
		if text := bare(part[4]); startsNumber().MatchString(text) && !strings.ContainsAny(text, "[]{}") {
			if _, err := quantity.Parse(text, quantity.Length, units); err != nil {
				place.Message = fmt.Sprintf("%s: %s", part[2], err)
				return place
			}
		}
		if text, curly := straight(part[4]); curly && accepted("x = "+text) {
			place.Message = fmt.Sprintf("%s: use straight quotes: %s = %s", part[2], part[2], text)
			return place
		}
		if word := strings.TrimSpace(part[4]); bareWord().MatchString(word) {
			place.Message = fmt.Sprintf("%s: put quotes round a word: %s = %q", part[2], part[2], word)
			return place
		}
	}
	var parse toml.ParseError
	if !errors.As(err, &parse) {
		return &Error{File: f.Name, Message: err.Error()}
	}
	message := strings.TrimPrefix(parse.Message, "toml: ")
	if strings.Contains(message, "already been defined") || strings.Contains(message, "duplicate") {
		message = parse.LastKey + ": given twice: keep one"
	}
	return &Error{File: f.Name, Line: max(1, parse.Position.Line), Column: column(f.Text, parse.Position), Message: message}
}

// bare returns a value without a comment behind it.
func bare(value string) string {
	value, _, _ = strings.Cut(value, "#")
	return strings.TrimSpace(value)
}

// What a value may be that TOML refuses; compiled when a file is refused.
var (
	startsNumber = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`^[+-]?[0-9.]`) })
	bareWord     = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`^[A-Za-z][A-Za-z -]*$`) })
)

// straight returns a text with curly quotes made straight, and whether it had any.
func straight(text string) (string, bool) {
	made := strings.NewReplacer("“", `"`, "”", `"`, "„", `"`, "‘", "'", "’", "'").Replace(text)
	return made, made != text
}

// accepted reports whether TOML accepts a text.
func accepted(text string) bool {
	var ignored map[string]any
	_, err := toml.Decode(text, &ignored)
	return err == nil
}

// unitsOf reads the units of a text that TOML does not accept as a whole.
func (f *File) unitsOf() quantity.System {
	if regexp.MustCompile(`(?m)^\s*units\s*=\s*["']metric["']`).MatchString(f.Text) {
		return quantity.Metric
	}
	return quantity.Inch
}

// column returns the column of a position, counted in characters from 1.
func column(text string, p toml.Position) int {
	text = strings.TrimPrefix(text, bom)
	start := max(0, min(p.Start, len(text))) // the library may say −1
	line := text[strings.LastIndexByte(text[:start], '\n')+1 : start]
	return utf8.RuneCountInString(line) + 1
}
