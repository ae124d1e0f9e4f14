package locate

import (
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/BurntSushi/toml"
)

const sample = `title = "a [b] = c # d"   # not a comment inside
units = 'metric'
rocker.arcs = [
  { radius = 42, length = 16 },   # nose
  { "flat" = 3 },
]
[body]
centre = [ 1.5, "2 in" ]
long = """
[no] = "table"
"""
[[sitter]]
weight = -180
lying_back = { ahead = 5, above = 8 }
[[sitter]]
	weight = 2
[sitter.place]
x = 1
`

// A place is a line and a column.
type place [2]int

func at(text string, offset int) place {
	line, column := At(text, offset)
	return place{line, column}
}

// TestEntries holds paths and places; lines and columns are counted by hand.
func TestEntries(t *testing.T) {
	want := []struct {
		name       string
		key, value place
		raw        string
	}{
		{"title", place{1, 1}, place{1, 9}, `"a [b] = c # d"`},
		{"units", place{2, 1}, place{2, 9}, `'metric'`},
		{"rocker.arcs", place{3, 1}, place{3, 15}, "[\n  { radius = 42, length = 16 },   # nose\n  { \"flat\" = 3 },\n]"},
		{"rocker.arcs.1", place{4, 3}, place{4, 3}, "{ radius = 42, length = 16 }"},
		{"rocker.arcs.1.radius", place{4, 5}, place{4, 14}, "42"},
		{"rocker.arcs.1.length", place{4, 18}, place{4, 27}, "16"},
		{"rocker.arcs.2", place{5, 3}, place{5, 3}, `{ "flat" = 3 }`},
		{"rocker.arcs.2.flat", place{5, 5}, place{5, 14}, "3"},
		{"body", place{7, 2}, place{7, 2}, ""},
		{"body.centre", place{8, 1}, place{8, 10}, `[ 1.5, "2 in" ]`},
		{"body.centre.1", place{8, 12}, place{8, 12}, "1.5"},
		{"body.centre.2", place{8, 17}, place{8, 17}, `"2 in"`},
		{"body.long", place{9, 1}, place{9, 8}, "\"\"\"\n[no] = \"table\"\n\"\"\""},
		{"sitter.1", place{12, 3}, place{12, 3}, ""},
		{"sitter.1.weight", place{13, 1}, place{13, 10}, "-180"},
		{"sitter.1.lying_back", place{14, 1}, place{14, 14}, "{ ahead = 5, above = 8 }"},
		{"sitter.1.lying_back.ahead", place{14, 16}, place{14, 24}, "5"},
		{"sitter.1.lying_back.above", place{14, 27}, place{14, 35}, "8"},
		{"sitter.2", place{15, 3}, place{15, 3}, ""},
		{"sitter.2.weight", place{16, 2}, place{16, 11}, "2"},
		{"sitter.2.place", place{17, 2}, place{17, 2}, ""},
		{"sitter.2.place.x", place{18, 1}, place{18, 5}, "1"},
	}
	got, bound := Entries(sample, numbered)
	if bound != nil {
		t.Fatal(bound)
	}
	for i, w := range want {
		if i >= len(got) {
			t.Fatalf("%d entries, want %d", len(got), len(want))
		}
		if g := got[i]; g.Key != w.name || at(sample, g.Start) != w.key || at(sample, g.ValueStart) != w.value ||
			g.Raw != w.raw || w.raw != "" && sample[g.ValueStart:g.ValueEnd] != w.raw {
			t.Errorf("entry %d is %+v, at %v and %v\nwant %+v", i, g, at(sample, g.Start), at(sample, g.ValueStart), w)
		}
	}
	if len(got) != len(want) {
		t.Errorf("%d entries, want %d", len(got), len(want))
	}
	crlf := Mark + strings.ReplaceAll(sample, "\n", "\r\n")
	marked, bound := Entries(crlf, numbered)
	if bound != nil || len(marked) != len(got) {
		t.Fatal(bound, len(marked))
	}
	for i, e := range marked { // an editor's marks take no column
		if e.Key != got[i].Key || at(crlf, e.Start) != at(sample, got[i].Start) || at(crlf, e.ValueStart) != at(sample, got[i].ValueStart) {
			t.Errorf("with a byte order mark and CRLF: %+v, without %+v", e, got[i])
		}
	}
}

func TestSuggest(t *testing.T) {
	known := []string{"rocker.radius", "rocker.tail", "seat.behind_low_point", "seat"}
	for wrong, want := range map[string]string{
		"rocker.raduis": "rocker.radius", "rocker.Radius": "rocker.radius", "seat.behindlowpoint": "seat.behind_low_point",
		"seet": "seat", "saet": "seat", "zzz": "", "": "",
	} {
		if got, found := Suggest(wrong, known); got != want || found != (want != "") {
			t.Errorf("Suggest(%q) = %q, %v; want %q", wrong, got, found, want)
		}
	}
}

// numbered names the values of a list.
func numbered(list string, n int) string { return fmt.Sprintf("%s.%d", list, n+1) }

// leaves lists what a decoded text holds, by key, and returns how many parts the longest key has.
func leaves(key string, depth int, value any, into map[string]any) (deep int) {
	deep = depth
	switch v := value.(type) {
	case map[string]any:
		for name, inner := range v {
			deep = max(deep, leaves(joined(key, nameOf(strconv.Quote(name))), depth+1, inner, into))
		}
	case []map[string]any:
		for i, inner := range v {
			deep = max(deep, leaves(numbered(key, i), depth, inner, into))
		}
	case []any:
		for i, inner := range v {
			deep = max(deep, leaves(numbered(key, i), depth+1, inner, into))
		}
	default:
		into[key] = value
	}
	return deep
}

// FuzzEntries: no text is too odd to walk over, and of one that TOML accepts every value, and
// nothing else, is found where it stands.
func FuzzEntries(f *testing.F) {
	f.Add(sample)
	f.Add("a.b = 1\n[[c]]\n[c.d]\ne = {f = [1, 2], g = 1979-05-27}\n[[c]]\n")
	f.Add("x = [[[[{a = [")
	f.Add("[ a . 'b c' ]\n\"d.e\" . f = 1\n\"\\u0067\" = {\"\" = 2, 'h\"' . i = []}\n" +
		"[[ \"[1]\" ]]\n[\"[1]\".j]\nk = '''\n'''\nl = [[1, {m = 3}],\n# n\n4]")
	f.Fuzz(func(t *testing.T, text string) {
		entries, bound := Entries(text, numbered)
		var decoded map[string]any
		if bound != nil && len(text) > 1000 {
			return // what it is there for
		}
		if _, err := toml.Decode(text, &decoded); err != nil || !utf8.ValidString(text) ||
			strings.Contains(strings.ReplaceAll(text, "\r\n", ""), "\r") {
			return // package design takes no other letters, and makes newlines of carriage returns
		}
		want := map[string]any{}
		if deep := leaves("", 0, decoded, want); bound != nil || deep > deepest {
			if bound == nil {
				t.Fatalf("%q is deep, and that was not found", text)
			}
			return
		}
		for _, e := range entries {
			if e.Kind == Stray {
				t.Fatalf("%q: %+v is no line of its own", text, e)
			}
			if !e.Leaf() {
				continue
			}
			value, found := want[e.Key]
			if !found {
				t.Fatalf("%q: there is no %s, or twice: %+v", text, e.Key, e)
			}
			var again map[string]any
			if _, err := toml.Decode("x = "+e.Raw, &again); err != nil || !reflect.DeepEqual(again["x"], value) &&
				fmt.Sprint(again["x"]) != fmt.Sprint(value) {
				t.Fatalf("%q: %s stands as %q, which is %v, not %v (%v)", text, e.Key, e.Raw, again["x"], value, err)
			}
			delete(want, e.Key)
		}
		if len(want) > 0 {
			t.Fatalf("%q: %v are not found among %+v", text, want, entries)
		}
	})
}
