package design

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"github.com/BurntSushi/toml"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/quantity"
)

// mostMended is how many entries that TOML refuses are looked at for what was meant.
const mostMended = 50

// refused returns the error for a text that TOML does not accept: what was meant by the first
// entry, up to the line where it was refused, of which that can be told; else what is wrong there.
func (f *File) refused(err error) error {
	var parse toml.ParseError
	if !errors.As(err, &parse) {
		return f.wrong(nowhere, inOurWords(err.Error()))
	}
	at := len(f.Text) - len(strings.TrimPrefix(f.Text, locate.Mark)) + parse.Position.Start
	at = min(max(at, 0), len(f.Text)) // the library may say −1
	end := f.lineEnd(at)
	looked, sound := 0, 0 // what stands before sound is accepted; in braces, what ends before at is too
	for _, e := range f.entries {
		if looked == mostMended || e.Start > end {
			break
		}
		inside := e.In >= 0 && f.entries[e.In].Kind != locate.Header
		if inside && (e.Start < sound || e.ValueEnd < at || e.Kind == locate.Element || !e.Leaf()) {
			continue
		}
		text := "x = " + e.Raw
		if !inside {
			text = f.Text[f.lineStart(e.Start):f.lineEnd(e.ValueEnd)]
		}
		if accepted(text) {
			sound = e.ValueEnd
			continue
		}
		looked++
		if offset, message := f.meant(e); message != "" {
			return f.wrong(offset, message)
		}
	}
	message := strings.TrimPrefix(parse.Message, "toml: ")
	switch {
	case strings.Contains(message, "already been defined") || strings.Contains(message, "already created") ||
		strings.Contains(message, "duplicate"):
		name := parse.LastKey
		for _, e := range f.entries {
			if name == "" && e.Kind == locate.Header && e.Start <= at && at <= e.ValueEnd {
				name, at = e.Key, e.Start
			}
		}
		return f.wrong(at, quantity.Shown(name, shownName)+": given twice: keep one")
	case strings.Contains(message, "EOF"):
		for _, e := range slices.Backward(f.entries) {
			if e.Kind != locate.Stray {
				return f.wrong(e.ValueStart, "this does not end: a quote, a bracket ] or a brace } is missing")
			}
		}
	}
	return f.wrong(at, inOurWords(message))
}

// inOurWords says what a TOML library found wrong.
func inOurWords(message string) string {
	for _, said := range [][2]string{
		{"newlines", "this does not end on its line: a quote or a brace } is missing"},
		{"EOF", "the file ends in the middle of a line"},
		{"escape", `inside quotes a backslash begins a code: write \\ for a backslash`},
		{"hexadecimal", `inside quotes \u wants four digits: write \\ for a backslash`},
		{"control", "there is a control character here, which no editor shows: delete it"},
		{"UTF-8", "this is not a text file; save the design as plain text (UTF-8)"},
		{"comma", "the values of a list are parted by commas and end with a bracket ]. For example: centre = [1, 17]"},
		{"datetime", "this is no number; put quotes round a word or a measure"},
		{"range", "this number has too many digits"},
	} {
		if strings.Contains(message, said[0]) {
			return said[1]
		}
	}
	return "this line cannot be read; a line is an entry such as radius = 42, the name of a section such as [rocker], " +
		"or a comment behind a #"
}

// meant returns what to type for an entry that TOML refuses, and where; "" where that cannot be told.
func (f *File) meant(e locate.Entry) (offset int, message string) {
	units := quantity.Inch
	if u, found := f.find("units"); found && strings.Trim(u.Raw, `"'`) == "metric" {
		units = quantity.Metric
	}
	end := f.lineEnd(e.ValueEnd)
	line := strings.TrimLeft(f.Text[f.lineStart(e.Start):end], " \t")
	if e.Kind == locate.Pair {
		name, value := strings.TrimRight(f.Text[e.Start:e.ValueStart], "= \t"), f.Text[e.ValueStart:end]
		unclear := name == "" || strings.Contains(value, "\n")
		if e.In >= 0 && f.entries[e.In].Braced() {
			value = e.Raw
			unclear = strings.Contains(value, "=") || strings.HasPrefix(value, `"`) && !strings.HasSuffix(value, `"`)
		}
		if unclear {
			return 0, ""
		}
		return e.ValueStart, meantValue(name, value, units)
	}
	word := strings.Trim(bare(line), "[](){}<>:\"' \t")
	if section, _, _ := strings.Cut(word, "."); isSection(section) && !strings.ContainsAny(word, " \t=\"'") {
		header := sectionHeader(word)
		if strings.HasPrefix(line, "[") && !strings.HasPrefix(line, "[[") {
			header = "[" + word + "]"
		}
		return end - len(line), "the name of a section stands in square brackets: " + header
	}
	behind := strings.TrimLeft(e.Raw, " \t")
	value := strings.TrimLeft(strings.TrimPrefix(strings.TrimPrefix(behind, ":"), "="), " \t")
	if e.Kind == locate.Header || value == "" || behind == e.Raw && behind == value || !named(e.Key) {
		return 0, ""
	}
	if value = bare(value); !accepted("x = " + value) {
		cure, reads := quantity.Repair(value, units)
		if !reads {
			cure = written(strings.Trim(value, `"'“”„`))
		}
		value = cure
	}
	return e.ValueStart, shownLine(e.Key, "put an equals sign between the name and the value", value)
}

// shownLine says what to type for an entry.
func shownLine(name, what, value string) string {
	name = quantity.Shown(name, shownName)
	return fmt.Sprintf("%s: %s: %s = %s", name, what, name, quantity.Shown(value, shownName))
}

// meantValue says what was meant by a value that TOML refuses.
func meantValue(name, value string, units quantity.System) string {
	if cure, reads := quantity.Repair(value, units); reads {
		return shownLine(name, "put quotes round it", cure)
	}
	text, word := bare(value), strings.TrimSpace(value)
	if startsNumber.MatchString(text) && !strings.ContainsAny(text, "[]{}") {
		if _, err := quantity.Parse(text, quantity.Length, units); err != nil {
			return fmt.Sprintf("%s: %s", quantity.Shown(name, shownName), err)
		}
	}
	if straight := straightQuotes.Replace(value); straight != value && accepted("x = "+straight) {
		return shownLine(name, "use straight quotes", straight)
	}
	if bareWord.MatchString(word) {
		return shownLine(name, "put quotes round a word", written(word))
	}
	if inner, opens := strings.CutPrefix(word, `"`); opens {
		inner, closed := strings.CutSuffix(inner, `"`)
		switch {
		case closed && inner != "":
			return shownLine(name, `inside quotes, write \" for a quote and \\ for a backslash`, written(inner))
		case !strings.Contains(inner, `"`):
			return shownLine(name, "the quote at the end is missing", written(strings.TrimSpace(inner)))
		}
	}
	return ""
}

// What a value may be that TOML refuses.
var (
	startsNumber   = regexp.MustCompile(`^[+-]?[0-9.]`)
	bareWord       = regexp.MustCompile(`^[A-Za-z][A-Za-z -]*$`)
	straightQuotes = strings.NewReplacer("“", `"`, "”", `"`, "„", `"`, "‘", "'", "’", "'")
)

// bare returns a value without a comment behind it.
func bare(value string) string {
	value, _, _ = strings.Cut(value, "#")
	return strings.TrimSpace(value)
}

// accepted reports whether TOML accepts a text, which is not nested deeply.
func accepted(text string) bool {
	if _, bound := locate.Entries(text, element); bound != nil {
		return false
	}
	var ignored map[string]any
	_, err := toml.Decode(text, &ignored)
	return err == nil
}
