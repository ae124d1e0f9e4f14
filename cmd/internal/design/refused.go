package design

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"sync"
	"unicode/utf8"

	"github.com/BurntSushi/toml"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// What a line can be; compiled when a file is refused.
var (
	assignment = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`^(\s*)([A-Za-z0-9_.-]+)(\s*=\s*)(.*)$`) })
	unequal    = sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(`^(\s*)([A-Za-z0-9_.-]+)(\s*:=?\s*|\s+)(\S.*)$`) })
	bracketed  = sync.OnceValue(func() *regexp.Regexp {
		return regexp.MustCompile(`^(\s*)([\[({<]*)\s*([A-Za-z_.]+)\s*[\])}>:]*\s*(#.*)?$`)
	})
)

// mostMended is how many lines that TOML refuses are looked at for what was meant.
const mostMended = 50

// refused returns the error for a text that TOML does not accept: what was meant by the first
// line, up to where it was refused, of which that can be told; else what is wrong there.
func (f *File) refused(err error) error {
	var parse toml.ParseError
	if !errors.As(err, &parse) {
		return f.wrong(locate.Position{}, inOurWords(err.Error()))
	}
	units, looked := f.unitsOf(), 0
	for i, line := range strings.Split(f.Text, "\n")[:max(1, parse.Position.Line)] {
		line = strings.TrimSuffix(strings.TrimPrefix(line, bom), "\r")
		if accepted(line) {
			continue
		}
		column, message := mend(line, units)
		if message != "" {
			return f.wrong(locate.Position{Line: i + 1, Column: column}, message)
		}
		if column > 0 {
			looked++
		}
		if looked == mostMended {
			break
		}
	}
	message := strings.TrimPrefix(parse.Message, "toml: ")
	at := locate.Position{Line: max(1, parse.Position.Line), Column: column(f.Text, parse.Position)}
	switch {
	case strings.Contains(message, "already been defined") || strings.Contains(message, "already created") || strings.Contains(message, "duplicate"):
		return f.wrong(at, quantity.Shown(parse.LastKey, shownName)+": given twice: keep one")
	case strings.Contains(message, "EOF") && len(f.entries) > 0:
		return f.wrong(f.entries[len(f.entries)-1].Value, "this does not end: a quote, a bracket ] or a brace } is missing")
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
	return "this line cannot be read; a line is an entry such as radius = 42, the name of a section such as [rocker], or a comment behind a #"
}

// mend returns what to type for a line that TOML refuses, and where; "" where that cannot be told.
func mend(line string, units quantity.System) (column int, message string) {
	if part := bracketed().FindStringSubmatch(line); part != nil && slices.Contains(sections[firstSection:], strings.Split(part[3], ".")[0]) {
		header := "[" + part[3] + "]"
		if piece.IsList(part[3]) && part[2] != "[" {
			header = "[" + header + "]"
		}
		return utf8.RuneCountInString(part[1]) + 1, "the name of a section stands in square brackets: " + header
	}
	if part := assignment().FindStringSubmatch(line); part != nil {
		return utf8.RuneCountInString(part[1]+part[2]+part[3]) + 1, meant(part[2], part[4], units)
	}
	if part := unequal().FindStringSubmatch(line); part != nil && named(part[2]) {
		value, _, _ := strings.Cut(part[4], "#")
		value = strings.TrimSpace(value)
		if !accepted("x = " + value) {
			cure, reads := quantity.Repair(value, units)
			if !reads {
				cure = written(strings.Trim(bare(value), `"'“”„`))
			}
			value = cure
		}
		return utf8.RuneCountInString(part[1]+part[2]) + 1, shownLine(part[2], "put an equals sign between the name and the value", value)
	}
	return 0, ""
}

// shownLine says what to type for an entry.
func shownLine(name, what, value string) string {
	name = quantity.Shown(name, shownName)
	return fmt.Sprintf("%s: %s: %s = %s", name, what, name, quantity.Shown(value, shownName))
}

// meant says what was meant by a value that TOML refuses.
func meant(name, value string, units quantity.System) string {
	if cure, reads := quantity.Repair(value, units); reads {
		return shownLine(name, "put quotes round it", cure)
	}
	text := bare(value)
	if startsNumber().MatchString(text) && !strings.ContainsAny(text, "[]{}") {
		if _, err := quantity.Parse(text, quantity.Length, units); err != nil {
			return fmt.Sprintf("%s: %s", quantity.Shown(name, shownName), err)
		}
	}
	if text, curly := straight(value); curly && accepted("x = "+text) {
		return shownLine(name, "use straight quotes", text)
	}
	if word := strings.TrimSpace(value); bareWord().MatchString(word) {
		return shownLine(name, "put quotes round a word", written(word))
	}
	if inner, opens := strings.CutPrefix(strings.TrimSpace(value), `"`); opens {
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

// accepted reports whether TOML accepts a text, which is not nested deeply.
func accepted(text string) bool {
	if _, err := locate.Entries(text); err != nil {
		return false
	}
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
