package design

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"rockerwright/cmd/internal/design/locate"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// text is a sound design; each test changes one line of it.
const text = `title = "Reading chair"
kind  = "chair"
units = "inch"
[rocker]
radius = 42
nose   = 17
tail   = 24
[seat]
front  = "16 1/2"
rear   = "15-7/8"
depth  = 18
width  = 20
behind_low_point = 7
[piece]
weight = 26
[[sitter]]
name   = "owner"
weight = 180
ahead  = 6.75
above  = 9.25
[[sitter]]
name   = "guest"
weight = 120
ahead  = 6
above  = 9
`

// with returns the text with one line replaced.
func with(line, by string) string { return strings.Replace(text, line+"\n", by+"\n", 1) }

// problem parses and checks a design and returns the message a maker reads.
func problem(text string) string {
	f, err := Parse("chair.toml", text)
	if err == nil {
		_, err = check.Check(f.Design)
		err = f.Explain(err)
	}
	if err == nil {
		return ""
	}
	return err.Error()
}

// TestMistakes holds the place and the words of each message. Lines are counted by hand.
func TestMistakes(t *testing.T) {
	for _, tt := range []struct{ name, text, want string }{
		{"sound", text, ""},
		{"unknown key", with("radius = 42", "radios = 42"), "chair.toml:5:1: rocker.radios: there is no such entry; did you mean rocker.radius?"},
		{"unknown section", with("[piece]", "[peice]"), "chair.toml:14:2: peice: there is no such section; did you mean piece?"},
		{"missing key", with("radius = 42", ""), "chair.toml:4:2: rocker.radius: a rocker needs its radius. For example: radius = 42"},
		{"wrong unit", with("radius = 42", `radius = "42 lb"`),
			`chair.toml:5:10: rocker.radius: a length is wanted, and lb is the unit of a weight; "42 lb" is not. For example: radius = 42`},
		{"negative", with("radius = 42", "radius = -42"),
			"chair.toml:5:10: rocker.radius: the radius of the floor edge is more than 0; -42 is not. For example: radius = 42"},
		{"zero", with("tail   = 24", "tail   = 0"),
			"chair.toml:7:10: rocker.tail: the tail, along the curve from the low point is more than 0; 0 is not. For example: tail = 18"},
		{"nan", with("radius = 42", "radius = nan"),
			`chair.toml:5:10: rocker.radius: a length is a finite number; "NaN" is not. For example: radius = 42`},
		{"infinity", with("radius = 42", "radius = inf"),
			`chair.toml:5:10: rocker.radius: a length is a finite number; "+Inf" is not. For example: radius = 42`},
		{"1e308", with("radius = 42", "radius = 1e308"),
			`chair.toml:5:10: rocker.radius: a length is at most 100 km; "1e+308" is not. For example: radius = 42`},
		{"3/0", with("radius = 42", `radius = "3/0"`),
			`chair.toml:5:10: rocker.radius: a length is a number with a unit, and nothing can be parted into 0; ` +
				`"3/0" is not. For example: radius = 42`},
		{"3/0 bare", with("radius = 42", "radius = 3/0"),
			`chair.toml:5:10: radius: a length is a number with a unit, and nothing can be parted into 0; "3/0" is not. For example: "17 1/2 in"`},
		{"given twice", with("tail   = 24", "tail   = 24\ntail = 23"), "chair.toml:8:1: rocker.tail: given twice: keep one"},
		{"a section twice", with("tail   = 24", "tail   = 24\n[ \"rocker\" ]\nsole = 0"), "chair.toml:8:3: rocker: given twice: keep one"},
		{"two masses", with("[piece]", "[body]\nmass = 9\ncentre = [1, 17]\n[piece]"),
			"chair.toml:17:2: piece: the weight of the piece is given twice, under body and under piece: keep one"},
		{"not a number", with("radius = 42", "radius = true"),
			"chair.toml:5:10: rocker.radius: a number is wanted here. For example: radius = 42"},
		{"not a word", with(`kind  = "chair"`, "kind  = 3"), `chair.toml:2:9: kind: this is a word, in quotes. For example: kind = "chair"`},
		{"wrong word", with(`kind  = "chair"`, `kind  = "sofa"`),
			`chair.toml:2:9: kind: "sofa" is not one of: chair, settee, cradle, horse. For example: kind = "chair"`},
		{"first of two sitters", with("weight = 180", "weight = -180"),
			"chair.toml:18:10: sitter.1.weight: the weight of the person is more than 0; -180 is not. For example: weight = 180"},
		{"second of two sitters", with("weight = 120", `weight = "120 mm"`),
			`chair.toml:23:10: sitter.2.weight: a weight is wanted, and mm is the unit of a length; "120 mm" is not. For example: weight = 180`},
		{"a sitter without weight", with("weight = 120", ""),
			"chair.toml:21:3: sitter.2.weight: a person has a weight. For example: weight = 180"},
		{"first of two arcs", with("radius = 42\nnose   = 17\ntail   = 24",
			"nose = 17\narcs = [\n  {radius = 42, length = 0},\n  {radius = 40, length = 20},\n]"),
			"chair.toml:7:26: rocker.arcs.1.length: the length of this arc, along the curve is more than 0; 0 is not. For example: length = 16"},
		{"arcs that make no rocker", with("radius = 42\nnose   = 17\ntail   = 24",
			"nose = 17\narcs = [\n  {radius = 42, length = 20},\n  {radius = 3, length = 20},\n]"),
			"chair.toml:8:3: rocker.arcs.2: these arcs make no rocker: the turns come to 360 degrees or more"},
		{"mass and weight", with("weight = 120", "weight = 120\nmass = 120"),
			"chair.toml:24:1: sitter.2.mass: given twice, here and as weight: keep one"},
		{"a person of 4 m", with("weight = 120\nahead  = 6\nabove  = 9", "height = 157"),
			`chair.toml:23:10: sitter.2.height: a person of 157 in; did you mean "157 cm"?`},
		{"a person of 10 in", with("weight = 120\nahead  = 6\nabove  = 9", "height = 10"),
			`chair.toml:23:1: sitter.2.height: height of 10 in: people are 1 ft 6 in to 7 ft 10 in (0.45 to 2.4 m) tall`},
		{"sizes and a place", with("weight = 120", "weight = 120\nheight = 70"),
			"chair.toml:24:1: sitter.2.height: this person is placed by numbers, which leave no use for height: keep one of the two"},
		{"three places", with("[piece]", "[body]\nmass = 9\ncentre = [1, 17, 3]\n[piece]"),
			"chair.toml:16:18: body.centre.3: a place has two numbers, ahead of the low point and over the floor. For example: [1/2, 17]"},
		{"no equals sign, before a comment of many words",
			with("radius = 42", "radius 42  # of the floor edge. a b c d e f g. h i"),
			"chair.toml:5:7: radius: put an equals sign between the name and the value: radius = 42"},
		{"a word without quotes", with(`title = "Reading chair"`, "title = Reading chair"),
			`chair.toml:1:9: title: put quotes round a word: title = "Reading chair"`},
		{"a dot in quotes", with(`units = "inch"`, `"rocker.radius" = 40`),
			`chair.toml:3:1: "rocker.radius": there is no such entry; did you mean rocker.radius?`},
		{"a text without its end", with(`title = "Reading chair"`, `title = "Reading chair`),
			`chair.toml:1:9: title: the quote at the end is missing: title = "Reading chair"`},
		{"a text without its end, in the middle", with(`kind  = "chair"`, `kind  = 'chair`),
			`chair.toml:2:15: this does not end on its line: a quote or a brace } is missing`},
		{"a text without its end, in a file of CRLF",
			strings.ReplaceAll(with(`kind  = "chair"`, `kind  = "chair`), "\n", "\r\n"),
			`chair.toml:2:9: kind: the quote at the end is missing: kind = "chair"`},
		{"a text in curly quotes", with(`title = "Reading chair"`, "title = “Reading chair”"),
			`chair.toml:1:9: title: use straight quotes: title = "Reading chair"`},
	} {
		if got := problem(tt.text); got != tt.want {
			t.Errorf("%s:\n got %s\nwant %s", tt.name, got, tt.want)
		}
	}
}

// TestSpellings holds that each way in which a measure is typed without the right
// quotes gets the line to type instead.
func TestSpellings(t *testing.T) {
	for typed, cure := range map[string]string{
		`17-1/2`:     `"17-1/2"`,
		`17 1/2`:     `"17 1/2"`,
		`17"`:        `"17 in"`,
		`17 in`:      `"17 in"`,
		`17,5`:       `"17.5"`,
		`3' 6`:       `"3 ft 6 in"`,
		`"3' 6""`:    `"3 ft 6 in"`,
		`“17 1/2”`:   `"17 1/2"`,
		`‘17 1/2’`:   `"17 1/2"`,
		`17½`:        `"17 1/2"`,
		`17 1/2" # `: `"17 1/2 in"`,
	} {
		want := "chair.toml:11:10: depth: put quotes round it: depth = " + cure
		if got := problem(with("depth  = 18", "depth  = "+typed)); got != want {
			t.Errorf("depth = %s:\n got %s\nwant %s", typed, got, want)
		}
		if got := problem(with("depth  = 18", "depth = "+cure)); got != "" {
			t.Errorf("the cure depth = %s does not read: %s", cure, got)
		}
	}
}

// TestManyWaysToWriteOneFile holds that marks, line ends and quotes of editors do not
// matter.
func TestManyWaysToWriteOneFile(t *testing.T) {
	want, err := Parse("a", text)
	if err != nil {
		t.Fatal(err)
	}
	for name, same := range map[string]string{
		"byte order mark": locate.Mark + text,
		"CRLF":            strings.ReplaceAll(text, "\n", "\r\n"),
		"curly inch mark": with(`front  = "16 1/2"`, `front  = "16 1/2”"`),
		"feet and inches": with(`front  = "16 1/2"`, `front  = "1' 4 1/2"`),
		"one fraction":    with(`front  = "16 1/2"`, `front  = "16½"`),
	} {
		got, err := Parse("a", same)
		if err != nil || got.Design.Seat != want.Design.Seat || got.Design.Rocker.Radius != want.Design.Rocker.Radius {
			t.Errorf("%s: %v, %+v; want %+v", name, err, got, want.Design.Seat)
		}
	}
}

// TestTwins holds that an inch file and its metric twin are one design.
func TestTwins(t *testing.T) {
	metric := `units = "metric"
[rocker]
radius = 1066.8
nose = 431.8
tail = 609.6
[body]
mass = 11.793401620
centre = [25.4, 431.8]
inertia = 1.5
`
	inches := `[rocker]
radius = 42
nose = 17
tail = 24
[body]
mass = 26
centre = [1, 17]
inertia = "1.5 kg m2"
`
	a, err := Parse("a", metric)
	if err != nil {
		t.Fatal(err)
	}
	b, err := Parse("b", inches)
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range []string{"rocker.radius", "rocker.nose", "rocker.tail", "body.mass", "body.centre.x", "body.centre.y", "body.inertia"} {
		_, x, _ := a.Design.Measure(m)
		_, y, _ := b.Design.Measure(m)
		if d := *x - *y; d > 1e-15**x || d < -1e-15**x {
			t.Errorf("%s: %v and %v", m, *x, *y)
		}
	}
}

// TestSet holds changes on the command line, and that clones do not share them.
func TestSet(t *testing.T) {
	f, err := Parse("chair.toml", text)
	if err != nil {
		t.Fatal(err)
	}
	changed := f.Clone()
	for _, c := range [][2]string{{"rocker.radius", "3' 4"}, {"sitter.2.weight", "60 kg"}, {"kind", "settee"}} {
		if err := changed.Set(c[0], c[1]); err != nil {
			t.Errorf("Set(%q, %q): %v", c[0], c[1], err)
		}
	}
	if changed.Design.Rocker.Radius != 40*0.0254 || changed.Design.Sitters[1].Mass != 60 || changed.Design.Kind != piece.Settee {
		t.Errorf("changed: %+v", changed.Design)
	}
	if f.Design.Rocker.Radius != 42*0.0254 || f.Design.Sitters[1].Mass == 60 || len(f.Changes) != 0 {
		t.Error("the change reached the file it was cloned from")
	}
	if want := "rocker.radius = 40 in"; len(changed.Changes) != 3 || changed.Changes[0] != want {
		t.Errorf("changes %q, want %q first", changed.Changes, want)
	}
	for change, want := range map[[2]string]string{
		{"rocker.taal", "4"}: "rocker.taal=4: there is no such entry; did you mean rocker.tail?",
		{"rocker.tail", "-4"}: "rocker.tail=-4: the tail, along the curve from the low point is more than 0; " +
			"-4 is not. For example: tail = 18",
		{"sitter.weight", "4"}:   "sitter.weight=4: there are 2 entries of sitter: say which, counting from 1. For example: sitter.1.weight",
		{"sitter.3.weight", "4"}: "sitter.3.weight=4: the design has 2 entries of sitter",
		{"kind", "sofa"}:         `kind=sofa: "sofa" is not one of: chair, settee, cradle, horse. For example: kind = "chair"`,
	} {
		if err := f.Set(change[0], change[1]); err == nil || err.Error() != want {
			t.Errorf("Set(%q):\n got %v\nwant %s", change, err, want)
		}
	}
	if err := changed.Set("rocker.depth", "30 ft"); err != nil {
		t.Fatal(err)
	}
	_, err = check.Check(changed.Design)
	if got := changed.Explain(err).Error(); !strings.HasPrefix(got, "rocker.depth=30 ft: a rocker this deep") {
		t.Errorf("a change that makes no piece: %s", got)
	}
}

func TestSplitChange(t *testing.T) {
	for _, tt := range []struct {
		typed, key string
		values     []string
		ok         bool
	}{
		{"rocker.radius=36,39", "rocker.radius", []string{"36", "39"}, true},
		{"rocker.tail=“20 1/2”", "rocker.tail", []string{"20 1/2"}, true},
		{`title="a, b"`, "title", []string{`"a, b"`}, true}, // letter by letter
		{`title = a, b `, "title", []string{"a, b"}, true},
		{`sitter.2.name= a=b`, "sitter.2.name", []string{" a=b"}, true},
		{`rocker.tail="20,5"`, "rocker.tail", []string{"20,5"}, true},
		{"chair.toml", "", nil, false},
		{"dir/a=b.toml", "", nil, false},
		{"=3", "", nil, false},
	} {
		key, values, ok := SplitChange(tt.typed)
		if key != tt.key || strings.Join(values, "|") != strings.Join(tt.values, "|") || ok != tt.ok {
			t.Errorf("SplitChange(%q) = %q, %q, %v", tt.typed, key, values, ok)
		}
	}
}

// TestRead holds what is said of things that are no design file.
func TestRead(t *testing.T) {
	dir := t.TempDir()
	write := func(name string, data []byte) string {
		path := filepath.Join(dir, name)
		if err := os.WriteFile(path, data, 0o644); err != nil {
			t.Fatal(err)
		}
		return path
	}
	for path, want := range map[string]string{
		filepath.Join(dir, "none.toml"): "there is no such file",
		dir:                             "this is a folder",
		write("empty.toml", nil):        "the file is empty",
		write("blank.toml", []byte(locate.Mark+" \n\n")):   "the file is empty",
		write("binary.toml", []byte{1, 0, 2}):              "not a text file",
		write("latin.toml", []byte("title = \"B\xe4nk\"")): "not a text file",
		write("large.toml", make([]byte, 50<<20)):          "larger than 64 KiB",
	} {
		_, err := Read(path)
		var wrong *Error
		if !errors.As(err, &wrong) || !strings.Contains(err.Error(), want) || !strings.HasPrefix(err.Error(), path) {
			t.Errorf("Read(%s): %v; want it to say %q", path, err, want)
		}
	}
	if f, err := Read(write("chair.toml", []byte(text))); err != nil || f.Design.Title != "Reading chair" {
		t.Errorf("a sound file: %v", err)
	}
}

// TestStartsAreSound holds that each starting design checks, stands, and keeps its own
// limits.
func TestStartsAreSound(t *testing.T) {
	for _, name := range Starts() {
		text, err := Start(name)
		if err != nil {
			t.Fatal(err)
		}
		f, err := Parse(name, text)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		r, err := check.Check(f.Design)
		if err != nil || !r.Holds() {
			t.Errorf("%s: %v, limits %+v", name, err, r.Limits)
		}
	}
	if _, err := Start("sofa"); err == nil {
		t.Error("there is a sofa")
	}
	if child, err := Start("Child's"); err != nil || !strings.Contains(child, "child") {
		t.Error("child's is not found")
	}
}

// FuzzParse holds that the loader never panics and that its errors print, and that what
// it accepts is checked or explained.
func FuzzParse(f *testing.F) {
	for _, name := range Starts() {
		text, _ := Start(name)
		f.Add(text)
	}
	f.Add(text)
	f.Add("[rocker]\narcs = [{turn = 3}]\n[body]\nmass = 1")
	f.Add("sitter = 3\n[sitter]\nname = [[[")
	f.Fuzz(func(t *testing.T, text string) {
		file, err := Parse("fuzz.toml", text)
		if err == nil {
			_, err = check.Check(file.Design)
			err = file.Explain(err)
		}
		if err != nil && !strings.Contains(err.Error(), "fuzz.toml") {
			t.Errorf("an error without its file: %v", err)
		}
	})
}
