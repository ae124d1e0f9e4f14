package design

import (
	"maps"
	"reflect"
	"slices"
	"strings"
	"testing"

	"rockerwright/sim/piece"
)

// spellings are one design, each as TOML lets it be written; of the sitter there is one entry of a list.
var spellings = map[string]string{
	"plain": `title = "One"
[rocker]
radius = 42.5 # of the floor edge
nose = "17 1/2"
tail = 24
[body]
mass = 26
centre = [1, 17]
[seat]
front = 16
[[sitter]]
weight = 181
at_ease = {ahead = 5.5, above = 8}
[[part]]
name = "rail"
at = [3.25, 9]
`,
	"spaces": `  title="One"

  [ rocker ]
	radius   =42.5     # of the floor edge
	nose=  "17 1/2"
tail =24
[	body	]
mass=26
centre  =  [ 1 ,
  17 ]  # ahead, above
[ seat ]   # as drawn
front= 16
[[  sitter  ]]
weight=181
[ sitter . at_ease ]
ahead=5.5
above=8
[[ part ]]
name="rail"
at=[3.25,9,]`,
	"quotes": `"title" = 'One'
['rocker']
"radius" = 42.5
'nose' = '''17 1/2'''
"t\u0061il" = 24
["body"]
"mass" = 26
'centre' = [1, 17]
[ "seat" ]
'front' = 16
[["sitter"]]
"weight" = 181
"at_ease"."ahead" = 5.5
'at_ease' . 'above' = 8
[['part']]
"name" = """rail"""
"at" = [3.25, 9]
`,
	"dots": `title = "One"
rocker.radius = 42.5
rocker . nose = "17 1/2"
"rocker".'tail' = 24
seat.front = 16
body.mass = 26
body.centre.x = 1
body.centre.y = 17
part.name = "rail"
part.at.x = 3.25
part.at.y = 9
sitter.weight = 181
sitter.at_ease.ahead = 5.5
sitter.at_ease.above = 8
`,
	"braces": `title = "One"
rocker = {radius = 42.5, nose = "17 1/2", tail = 24}
sitter = [{weight = 181, at_ease = {ahead = 5.5, above = 8}}] # one
body = { "mass" = 26, centre = [1, 17] }
seat = { front = 16 }
part = [ { name = "rail", at = { x = 3.25, y = 9 } } ]
`,
	"other order": "\ufeff" + strings.ReplaceAll(`[seat]
front = 16
[sitter.at_ease]
ahead = 5.5
above = 8
[body.centre]
y = 17
x = 1
[body]
mass = 26
[sitter]
weight = 181
[rocker]
tail = 24
nose = "17 1/2"
radius = 42.5
[part]
name = "rail"
at = [3.25, 9]
`, "\n", "\r\n"),
}

// spelled returns the design of a text; title is not in all of them.
func spelled(t *testing.T, text string) piece.Design {
	t.Helper()
	f, err := Parse("x.toml", text)
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	return f.Design
}

// TestSpelledAlike holds that however a design is spelled it is one design.
func TestSpelledAlike(t *testing.T) {
	want := spelled(t, spellings["plain"])
	if want.Rocker.Radius != 42.5*0.0254 || len(want.Sitters) != 1 || want.Parts[0].At.X != 3.25*0.0254 {
		t.Fatalf("plain: %+v", want)
	}
	for name, text := range spellings {
		got := spelled(t, text)
		got.Title = "One"
		if !reflect.DeepEqual(got, want) {
			t.Errorf("%s:\n got %+v\nwant %+v", name, got, want)
		}
	}
}

// TestSpelledMistakes holds that the same mistake is found where it stands; lines and columns are
// counted by hand.
func TestSpelledMistakes(t *testing.T) {
	const (
		negative = "rocker.radius: the radius of the floor edge is more than 0; -42.5 is not. For example: radius = 42"
		kilos    = `at_ease.ahead: a length is wanted, and kg is the unit of a weight; "5 kg" is not`
		place    = `at.x: a length is a number with a unit; "wide" is not`
	)
	for _, tt := range []struct {
		old, new string
		want     map[string]string // the place, and the key where it is spelled in the message
		message  string
	}{
		{"42.5", "-42.5", map[string]string{"plain": "3:10", "spaces": "4:12", "quotes": "3:12", "dots": "2:17",
			"braces": "2:20", "other order": "16:10"}, negative},
		{"5.5", `"5 kg"`, map[string]string{"plain": "13:20", "spaces": "16:7", "quotes": "13:21", "dots": "13:24",
			"braces": "3:45", "other order": "4:9"}, kilos},
		{"3.25", `"wide"`, map[string]string{"plain": "16:7", "spaces": "20:5", "quotes": "17:9", "dots": "10:13",
			"braces": "6:38", "other order": "19:7"}, place},
		{"front", "fornt", map[string]string{"plain": "10:1", "spaces": "12:1", "quotes": "10:1", "dots": "5:1",
			"braces": "5:10", "other order": "2:1"}, "seat.fornt: there is no such entry; did you mean seat.front?"},
		{"42.5", "42 1/2", map[string]string{"plain": "3:10", "spaces": "4:12", "quotes": "3:12", "dots": "2:17",
			"braces": "2:20", "other order": "16:10"}, `: put quotes round it: `},
	} {
		for name, text := range spellings {
			if strings.Count(text, tt.old) != 1 {
				t.Fatalf("%s: %q is not there once", name, tt.old)
			}
			_, err := Parse("x.toml", strings.Replace(text, tt.old, tt.new, 1))
			if err == nil || !strings.HasPrefix(err.Error(), "x.toml:"+tt.want[name]+": ") || !strings.Contains(err.Error(), tt.message) {
				t.Errorf("%s: %s for %s:\n got %v\nwant %s %s", name, tt.new, tt.old, err, tt.want[name], tt.message)
			}
		}
	}
}

// TestSpelledLacks holds that an entry that is not there is missed where its section stands; lines and
// columns are counted by hand.
func TestSpelledLacks(t *testing.T) {
	for key, want := range map[string]map[string]string{
		"rocker.depth": {"plain": "2:2", "spaces": "3:5", "quotes": "2:2", "dots": "2:1", "braces": "2:1", "other order": "13:2"},
		"sitter.height": {"plain": "11:3", "spaces": "13:5", "quotes": "11:3", "dots": "12:1", "braces": "3:11",
			"other order": "11:2"},
		"sitter.at_ease.height": {"plain": "13:1", "spaces": "15:3", "quotes": "13:1", "dots": "13:1", "braces": "3:26", "other order": "3:2"},
		"part.shape":            {"plain": "14:3", "spaces": "18:4", "quotes": "15:3", "dots": "9:1", "braces": "6:10", "other order": "17:2"},
	} {
		for name, text := range spellings {
			f, err := Parse("x.toml", text)
			if err != nil {
				t.Fatal(err)
			}
			err = f.Explain(&piece.KeyError{Key: key, Reason: "it is wanted"})
			if want := "x.toml:" + want[name] + ": " + key + ": it is wanted"; err.Error() != want {
				t.Errorf("%s:\n got %v\nwant %s", name, err, want)
			}
		}
	}
}

// TestSpelledSaves holds that a change of any entry is written where the entry stands, or as a new one
// in its section, and nowhere else: read again, the text is the changed design.
func TestSpelledSaves(t *testing.T) {
	texts := maps.Clone(spellings)
	for _, name := range Starts() {
		texts[name], _ = Start(name)
	}
	texts["empty"] = "rocker = {}\nseat={ } # none\n[body]\n[[sitter]]\n[[sitter]]\n[[leg]] # one\n[[part]]\n[[part]]\n"
	texts["lacking"] = "part = [{at = [1]}, {}, { at = [ ] }]\nbody.centre = [2]\n[rocker]\npoints = [[3], [], [\n]]"
	for name, text := range texts {
		plain, err := Parse("x.toml", text)
		if err != nil {
			t.Fatal(err)
		}
		changes := map[string]string{}
		for _, key := range plain.Design.Keys() {
			measure, _, err := plain.Design.Measure(key)
			if err != nil {
				t.Fatal(err)
			}
			changes[key] = strings.Trim(measure.Example, `"`)
		}
		for _, c := range piece.Choices() {
			for _, number := range []string{".", ".1.", ".2."} {
				key := strings.Replace(c.Key, ".N.", number, 1)
				if _, _, err := plain.Design.Choice(key); err == nil {
					changes[key] = slices.Concat([]string{"Two"}, c.Words)[len(c.Words)]
				}
			}
		}
		delete(changes, "kind")  // on which limits hang that are not in the file
		delete(changes, "units") // in which the numbers of the file are read
		for key, value := range changes {
			f := plain.Clone()
			if err := f.Set(key, value); err != nil {
				t.Errorf("%s: %v", name, err)
				continue
			}
			saved, err := f.Saved(f.Design)
			if err != nil {
				t.Errorf("%s: %s: %v", name, key, err)
				continue
			}
			if got := spelled(t, saved); !reflect.DeepEqual(got, f.Design) {
				t.Errorf("%s: %s = %s:\n got %+v\nwant %+v\n%s", name, key, value, got, f.Design, saved)
			}
			before, behind := 0, 0
			for before < len(text) && before < len(saved) && text[before] == saved[before] {
				before++
			}
			for behind < len(text)-before && behind < len(saved)-before && text[len(text)-1-behind] == saved[len(saved)-1-behind] {
				behind++
			}
			_, given := plain.Held(key) // sitter.mass is given as weight
			if gone := text[before : len(text)-behind]; !given && key != "sitter.mass" && gone != "" || strings.ContainsAny(gone, "=,\n{}[]#") {
				t.Errorf("%s: %s = %s took %q away:\n%s", name, key, value, gone, saved)
			}
		}
	}
}

// TestSpelledRedrawn holds that a rocker is drawn in another way, and in the first way again, in each spelling.
func TestSpelledRedrawn(t *testing.T) {
	for name, text := range spellings {
		first, err := Parse("x.toml", text)
		if err != nil {
			t.Fatal(err)
		}
		arcs := first.Design.Clone()
		arcs.Rocker.Radius, arcs.Rocker.Tail = 0, 0
		arcs.Rocker.Arcs = []piece.Arc{{Radius: 1, Length: 0.5}, {Flat: 0.0254}, {Radius: 1.5, Length: 0.5}}
		redrawn, err := first.Saved(arcs)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if got := spelled(t, redrawn); !reflect.DeepEqual(got, arcs) {
			t.Errorf("%s: arcs:\n got %+v\nwant %+v\n%s", name, got, arcs, redrawn)
		}
		second, err := Parse("x.toml", redrawn)
		if err != nil {
			t.Fatal(err)
		}
		again, err := second.Saved(first.Design)
		if err != nil {
			t.Errorf("%s: %v\n%s", name, err, redrawn)
			continue
		}
		if got := spelled(t, again); !reflect.DeepEqual(got, first.Design) {
			t.Errorf("%s: one arc:\n got %+v\nwant %+v\n%s", name, got, first.Design, again)
		}
		if err := first.Rewritable(); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// FuzzSpelled holds that a measure that is changed in any design that is read is changed in the text that is
// written, and nothing else.
func FuzzSpelled(f *testing.F) {
	for i, text := range slices.Collect(maps.Values(spellings)) {
		f.Add(text, 7*i)
	}
	f.Add("[body]\ncentre = []\n[[part]]\nat=[1]\n[[part]]\n[rocker]\npoints = [[1], [], [2, 3]]\n", 3)
	f.Add("body={} # none\nsitter = [{ },{at_ease.ahead = 3,},]\n'seat'.width=3", 5)
	f.Fuzz(func(t *testing.T, text string, n int) {
		file, err := Parse("x.toml", text)
		if err != nil {
			return
		}
		keys := file.Design.Keys()
		key := keys[(n%len(keys)+len(keys))%len(keys)]
		measure, _, err := file.Design.Measure(key)
		if err != nil {
			t.Fatal(err)
		}
		if err := file.Set(key, strings.Trim(measure.Example, `"`)); err != nil {
			t.Fatal(err)
		}
		saved, err := file.Saved(file.Design)
		if err != nil {
			t.Fatalf("%q: %s: %v\n%s", text, key, err, saved)
		}
		if got := spelled(t, saved); !reflect.DeepEqual(got, file.Design) {
			t.Errorf("%q: %s:\n got %+v\nwant %+v\n%s", text, key, got, file.Design, saved)
		}
	})
}
