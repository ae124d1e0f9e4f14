package design

import (
	"errors"
	"fmt"
	"runtime"
	"strings"
	"testing"
	"time"
)

// filledUp returns a text of the largest size that is read: a beginning, as many rows as there is
// room for, each with its number where row has a verb, and an end.
func filledUp(begin, row, end string) string {
	var b strings.Builder
	b.WriteString(begin)
	for i := 0; ; i++ {
		next := row
		if strings.Contains(row, "%d") {
			next = fmt.Sprintf(row, i)
		}
		if b.Len()+len(next)+len(end) > Largest {
			return b.String() + end
		}
		b.WriteString(next)
	}
}

// hostile are texts that no maker writes, of the largest size that is read.
var hostile = map[string]string{
	"tables":                   filledUp("", "[a%d]\n", ""),
	"tables eight deep":        filledUp("", "[a.b.c.d.e.f.g.k%d]\n", ""),
	"arrays of tables":         filledUp("", "[[a]]\n", ""),
	"tables in arrays":         filledUp("", "[[a]]\n[a.b]\n", ""),
	"people":                   filledUp("", "[[sitter]]\n", ""),
	"parts":                    filledUp("", "[[part]]\n", ""),
	"keys":                     filledUp("", "k%d=1\n", ""),
	"keys eight deep":          filledUp("", "a.b.c.d.e.f.g.k%d=1\n", ""),
	"keys in quotes":           filledUp("", "\"k%d\"=1\n", ""),
	"keys under a long name":   filledUp("["+strings.Repeat("k", Largest/2)+"]\n", "k%d=1\n", ""),
	"keys under 60 letters":    filledUp("["+strings.TrimSuffix(strings.Repeat(strings.Repeat("k", 60)+".", 7), ".")+"]\n", "k%d=1\n", ""),
	"one array":                filledUp("a=[", "1,", "]"),
	"an array of texts":        filledUp("a=[", "'',", "]"),
	"an array of tables":       filledUp("a=[", "{},", "]"),
	"an array of arrays":       filledUp("a=[", "[],", "]"),
	"an array of comments":     filledUp("a=[", "#\n", "]"),
	"arcs":                     filledUp("[rocker]\narcs=[", "{},", "]"),
	"one inline table":         filledUp("a={", "k%d=1,", "z=1}"),
	"a long title":             filledUp("title=\"", "x", "\""),
	"a long title of escapes":  filledUp("title=\"", `\u0041`, "\""),
	"a long title of newlines": filledUp("title=\"\"\"", "\n", "\"\"\""),
	"a long number":            filledUp("[rocker]\nradius=", "1", ""),
	"comments":                 filledUp("", "#\n", ""),
	"line ends":                filledUp("", "\r\n", "a=1"),
	"brackets":                 filledUp("", "[", ""),
	"brackets of a value":      filledUp("a=", "[", ""),
	"braces":                   filledUp("", "{a=", ""),
	"braces of a value":        filledUp("a=", "{a=", ""),
	"dots":                     filledUp("", "a.", "a=1"),
	"dots of a header":         filledUp("[", "a.", "a]"),
	"no end of a text":         filledUp("a=\"", "x", ""),
	"no end of a long text":    filledUp("a=\"\"\"", "x\n", ""),
	"no value":                 filledUp("", "a=_\n", ""),
	"no value, longer":         filledUp("", "rocker.radius=_________________\n", ""),
	"no equals sign":           filledUp("", "radius x\n", ""),
	"words":                    filledUp("", "rocker x y\n", ""),
	"deep lines in a text":     filledUp("a=\"\"\"", "\n"+strings.Repeat("a={", 200), "\"\"\"\nb="),
	"a deep line in a text":    filledUp("a=\"\"\"\nx=", "{a=", "\n\"\"\"\nb="),
	"refused at the end":       filledUp("a=[", "1,", "_]"),
	"tables, the last refused": filledUp("a=[", "{b=1},", "{b=_}]"),
	"tables, all refused":      filledUp("a=[", "{b=_},", "]"),
	"pairs, all refused":       filledUp("a={", "b=_,", "}"),
	"names in braces":          filledUp("a={", "b ", "}"),
	"names in quotes":          filledUp("", "'a'.\"b\".", "a=1"),
	"quotes":                   filledUp("", "\"", ""),
	"strings in braces":        filledUp("a={", "b=\"\"\"\n\"\"\",", "}"),
	"backslashes":              filledUp("a=\"", `\\`, "\"\nb="),
}

// TestHostile holds how long and in how much memory whatever is read: a second and 300 MB, which
// is what a small computer has to spare. In a decoder alone some of these take gigabytes. An error
// has its place, or is of the whole file.
func TestHostile(t *testing.T) {
	if raced {
		t.Skip("time and memory are held without the race detector")
	}
	for name, text := range hostile {
		var before, after runtime.MemStats
		runtime.GC()
		runtime.ReadMemStats(&before)
		start := time.Now()
		_, err := Parse("chair.toml", text)
		took := time.Since(start)
		runtime.ReadMemStats(&after)
		if made := after.TotalAlloc - before.TotalAlloc; took > time.Second || made > 300<<20 {
			t.Errorf("%s: read in %v with %d MB", name, took, made>>20)
		}
		var wrong *Error
		if err != nil && (!errors.As(err, &wrong) || len(err.Error()) > 5000) {
			t.Errorf("%s: %.200v", name, err)
		}
	}
	if _, err := Parse("chair.toml", strings.Repeat("#", Largest+1)); err == nil {
		t.Error("a file of any size is read")
	}
}

// TestDepth holds where a text is refused that is nested deeper than any design; lines and
// columns are counted by hand.
func TestDepth(t *testing.T) {
	for text, want := range map[string]string{
		"\na = " + strings.Repeat("[", 9):                "chair.toml:2:13: this is nested more than 8 deep; no entry of a design is",
		"a = " + strings.Repeat("{a=", 8) + "1":          "chair.toml:1:29: this is nested more than 8 deep; no entry of a design is",
		"[a.b]\nc.d.e.f.g.h.i=1":                         "chair.toml:2:15: this is nested more than 8 deep; no entry of a design is",
		"[" + strings.Repeat("a.", 8) + "a]":             "chair.toml:1:18: this is nested more than 8 deep; no entry of a design is",
		"# \n" + strings.Repeat("a.", 8) + "a = 1":       "chair.toml:2:17: this is nested more than 8 deep; no entry of a design is",
		"title = 'x'\n" + strings.Repeat("k", 61) + " =": "chair.toml:2:1: this name has more than 60 letters; no entry of a design has",
	} {
		if _, err := Parse("chair.toml", text); err == nil || err.Error() != want {
			t.Errorf("%.40q:\n got %v\nwant %s", text, err, want)
		}
	}
}
