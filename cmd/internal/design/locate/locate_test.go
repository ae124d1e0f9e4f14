package locate

import (
	"fmt"
	"reflect"
	"strings"
	"testing"

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

// TestEntries holds paths and places; lines and columns are counted by hand.
func TestEntries(t *testing.T) {
	want := []struct {
		path       string
		key, value Position
		raw        string
	}{
		{"title", Position{1, 1}, Position{1, 9}, `"a [b] = c # d"`},
		{"units", Position{2, 1}, Position{2, 9}, `'metric'`},
		{"rocker.arcs", Position{3, 1}, Position{3, 15}, "[\n  { radius = 42, length = 16 },   # nose\n  { \"flat\" = 3 },\n]"},
		{"rocker.arcs[0]", Position{4, 3}, Position{4, 3}, "{ radius = 42, length = 16 }"},
		{"rocker.arcs[0].radius", Position{4, 5}, Position{4, 14}, "42"},
		{"rocker.arcs[0].length", Position{4, 18}, Position{4, 27}, "16"},
		{"rocker.arcs[1]", Position{5, 3}, Position{5, 3}, `{ "flat" = 3 }`},
		{"rocker.arcs[1].flat", Position{5, 5}, Position{5, 14}, "3"},
		{"body", Position{7, 2}, Position{7, 2}, ""},
		{"body.centre", Position{8, 1}, Position{8, 10}, `[ 1.5, "2 in" ]`},
		{"body.centre[0]", Position{8, 12}, Position{8, 12}, "1.5"},
		{"body.centre[1]", Position{8, 17}, Position{8, 17}, `"2 in"`},
		{"body.long", Position{9, 1}, Position{9, 8}, "\"\"\"\n[no] = \"table\"\n\"\"\""},
		{"sitter[0]", Position{12, 3}, Position{12, 3}, ""},
		{"sitter[0].weight", Position{13, 1}, Position{13, 10}, "-180"},
		{"sitter[0].lying_back", Position{14, 1}, Position{14, 14}, "{ ahead = 5, above = 8 }"},
		{"sitter[0].lying_back.ahead", Position{14, 16}, Position{14, 24}, "5"},
		{"sitter[0].lying_back.above", Position{14, 27}, Position{14, 35}, "8"},
		{"sitter[1]", Position{15, 3}, Position{15, 3}, ""},
		{"sitter[1].weight", Position{16, 2}, Position{16, 11}, "2"},
		{"sitter[1].place", Position{17, 2}, Position{17, 2}, ""},
		{"sitter[1].place.x", Position{18, 1}, Position{18, 5}, "1"},
	}
	got, err := Entries(sample)
	if err != nil {
		t.Fatal(err)
	}
	for i, w := range want {
		if i >= len(got) {
			t.Fatalf("%d entries, want %d", len(got), len(want))
		}
		if g := got[i]; g.Path != w.path || g.Key != w.key || g.Value != w.value || g.Raw != w.raw || w.raw != "" && sample[g.ValueStart:g.ValueEnd] != w.raw {
			t.Errorf("entry %d is %+v\nwant %+v", i, g, w)
		}
	}
	if len(got) != len(want) {
		t.Errorf("%d entries, want %d", len(got), len(want))
	}
	marked, err := Entries(mark + strings.ReplaceAll(sample, "\n", "\r\n"))
	if err != nil || len(marked) != len(got) {
		t.Fatal(err, len(marked))
	}
	for i, e := range marked { // an editor's marks take no column
		if e.Path != got[i].Path || e.Key != got[i].Key || e.Value != got[i].Value {
			t.Errorf("with a byte order mark and CRLF: %+v, without %+v", e, got[i])
		}
	}
}

func TestSuggest(t *testing.T) {
	known := []string{"rocker.radius", "rocker.tail", "seat.behind_low_point", "seat"}
	for wrong, want := range map[string]string{
		"rocker.raduis": "rocker.radius", "rocker.Radius": "rocker.radius", "seat.behindlowpoint": "seat.behind_low_point", "seet": "seat", "saet": "seat", "zzz": "", "": "",
	} {
		if got, found := Suggest(wrong, known); got != want || found != (want != "") {
			t.Errorf("Suggest(%q) = %q, %v; want %q", wrong, got, found, want)
		}
	}
}

// leaves lists what a decoded text holds, by path.
func leaves(path string, value any, into map[string]any) {
	switch v := value.(type) {
	case map[string]any:
		for key, inner := range v {
			leaves(joined(path, key), inner, into)
		}
	case []map[string]any:
		for i, inner := range v {
			leaves(fmt.Sprintf("%s[%d]", path, i), inner, into)
		}
	case []any:
		for i, inner := range v {
			leaves(fmt.Sprintf("%s[%d]", path, i), inner, into)
		}
	default:
		into[path] = value
	}
}

// FuzzEntries: no text is too odd to walk over, and of one that TOML accepts, with plain
// keys, every value is found where it stands.
func FuzzEntries(f *testing.F) {
	f.Add(sample)
	f.Add("a.b = 1\n[[c]]\n[c.d]\ne = {f = [1, 2], g = 1979-05-27}\n[[c]]\n")
	f.Add("x = [[[[{a = [")
	f.Fuzz(func(t *testing.T, text string) {
		entries, bound := Entries(text)
		var decoded map[string]any
		if bound != nil && len(text) > 1000 {
			return // what it is there for
		}
		if _, err := toml.Decode(text, &decoded); err != nil || strings.ContainsAny(text, "\\") {
			return
		}
		want := map[string]any{}
		leaves("", decoded, want)
		deep := false
		for path := range want {
			deep = deep || strings.Count(path, ".")+strings.Count(path, "[")+1 > deepest
		}
		if bound != nil || deep {
			if bound == nil && !strings.ContainsAny(text, `"'`) {
				t.Fatalf("%q is deep, and that was not found", text)
			}
			return
		}
		found := map[string]Entry{}
		for _, e := range entries {
			found[e.Path] = e
		}
		for path, value := range want {
			if strings.ContainsAny(strings.ReplaceAll(path, ".", ""), " \t\"'.\r\n") || strings.Contains(path, "..") || strings.HasPrefix(path, ".") || strings.HasSuffix(path, ".") {
				continue // a key in quotes, which no design has
			}
			e, ok := found[path]
			if !ok {
				if strings.ContainsAny(text, `"'`) {
					continue // a key in quotes with a point inside
				}
				t.Fatalf("%q: %s is not found among %+v", text, path, entries)
			}
			var again map[string]any
			if _, err := toml.Decode("x = "+e.Raw, &again); err != nil || !reflect.DeepEqual(again["x"], value) && fmt.Sprint(again["x"]) != fmt.Sprint(value) {
				t.Fatalf("%q: %s stands as %q, which is %v, not %v (%v)", text, path, e.Raw, again["x"], value, err)
			}
		}
	})
}
