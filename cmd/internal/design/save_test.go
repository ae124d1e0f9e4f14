package design

import (
	"math"
	"strings"
	"testing"

	"rockerwright/sim/piece"
)

const mine = `# my chair
title = "Mine"   # the name
[rocker]
radius = 42       # the form I have
nose   = 17
tail   = 24       # long

[seat]   # as drawn
front = "16 1/2"
rear  = "15-7/8"
depth = 18
width = 20
behind_low_point = 9   # by eye

[piece]
weight = 26
`

// TestSaved holds what is written and that every comment is still there.
func TestSaved(t *testing.T) {
	one := func(d *piece.Design) {
		d.Rocker.Radius, d.Seat.Behind = 45.125*0.0254, 8.5*0.0254
	}
	two := func(d *piece.Design) {
		d.Rocker.Radius, d.Rocker.Tail = 0, 0
		d.Rocker.Arcs = []piece.Arc{{Radius: 44 * 0.0254, Length: 20 * 0.0254}, {Radius: 60 * 0.0254, Length: 20.5 * 0.0254}}
	}
	for _, tt := range []struct {
		name   string
		change func(d *piece.Design)
		typed  string
		want   []string
	}{
		{"one arc", one, "", []string{`radius = "45 1/8" # the form I have`, `behind_low_point = "8 1/2" # by eye`, "tail   = 24       # long"}},
		{"with a change", one, "piece.weight=30", []string{"weight = 30"}},
		{"a new key", func(*piece.Design) {}, "back.recline=12", []string{"[back]\nrecline = 12 # (17) recline of the back, from plumb"}},
		{"two arcs", two, "", []string{"# radius = 42       # the form I have", "# tail   = 24       # long",
			"arcs = [   # from nose to tail\n  {radius = 44, length = 20},\n  {radius = 60, length = \"20 1/2\"},\n]"}},
		{"no tape reads it", func(d *piece.Design) { d.Seat.Behind = 0.2123456 }, "", []string{`behind_low_point = "0.2123456 m" # by eye`}},
	} {
		f, err := Parse("mine.toml", mine)
		if err != nil {
			t.Fatal(err)
		}
		if key, value, found := strings.Cut(tt.typed, "="); found {
			if err := f.Set(key, value); err != nil {
				t.Fatal(err)
			}
		}
		d := f.Design.Clone()
		tt.change(&d)
		text, err := f.Saved(d)
		if err != nil {
			t.Fatalf("%s: %v", tt.name, err)
		}
		for _, want := range append(tt.want, "# my chair", "# the name", "# as drawn") {
			if !strings.Contains(text, want) {
				t.Errorf("%s: no %q in\n%s", tt.name, want, text)
			}
		}
		again, err := Parse("saved.toml", text)
		if err != nil {
			t.Fatalf("%s: %v", tt.name, err)
		}
		for _, key := range d.Keys() {
			_, x, _ := d.Measure(key)
			_, y, err := again.Design.Measure(key)
			if err != nil || math.Abs(*x-*y) > 1e-12 {
				t.Errorf("%s: %s is %v, want %v (%v)", tt.name, key, y, *x, err)
			}
		}
	}
}

// TestSavedArcs holds that arcs in a file are replaced whole, and that one arc takes their place.
func TestSavedArcs(t *testing.T) {
	text := strings.Replace(mine, "radius = 42       # the form I have\n",
		"arcs = [ # two\n {radius = 42, length = 20}, # front\n {radius = 50, length = 21}\n] # end\n", 1)
	text = strings.Replace(text, "tail   = 24       # long\n", "", 1)
	f, err := Parse("mine.toml", text)
	if err != nil {
		t.Fatal(err)
	}
	d := f.Design.Clone()
	d.Rocker.Arcs = append(d.Rocker.Arcs, piece.Arc{Flat: 0.0254})
	three, err := f.Saved(d)
	if err != nil || !strings.Contains(three, "  {flat = 1},\n] # end") {
		t.Errorf("%v\n%s", err, three)
	}
	d = f.Design.Clone()
	d.Rocker.Arcs, d.Rocker.Radius, d.Rocker.Tail = nil, 40*0.0254, 20*0.0254
	one, err := f.Saved(d)
	if err != nil || !strings.Contains(one, "radius = 40\ntail   = 20 # end") {
		t.Errorf("%v\n%s", err, one)
	}
	inline, err := Parse("mine.toml", "rocker = {radius = 42, nose = 17, tail = 24}\n[piece]\nweight = 26\n")
	if err != nil {
		t.Fatal(err)
	}
	d = inline.Design.Clone()
	d.Rocker.Radius, d.Rocker.Tail, d.Rocker.Arcs = 0, 0, []piece.Arc{{Radius: 1, Length: 0.5}, {Radius: 2, Length: 0.5}}
	const saved = `rocker = {arcs = [{radius = "1 m", length = "0.5 m"}, {radius = "2 m", length = "0.5 m"}], nose = 17}`
	if got, err := inline.Saved(d); err != nil || !strings.HasPrefix(got, saved) {
		t.Errorf("an inline table: %v\n%s", err, got)
	}
	d = inline.Design.Clone()
	d.Rocker.Radius = 40 * 0.0254
	if got, err := inline.Saved(d); err != nil || !strings.Contains(got, "rocker = {radius = 40, nose = 17, tail = 24}") {
		t.Errorf("%v %s", err, got)
	}
}

// TestChangedKind: a kind that is changed on the command line answers as the text with the new word
// does, limits and all, and so does what is saved; a limit that the file says stays.
func TestChangedKind(t *testing.T) {
	const limit = "\n[limits]\nback_margin = 12\n"
	for _, start := range Starts() {
		text, _ := Start(start)
		for _, kind := range []string{"chair", "settee", "cradle", "horse"} {
			for _, said := range []string{"", limit} {
				typed, err := Parse("mine.toml", text+said)
				if err != nil {
					t.Fatal(start, err)
				}
				if err := typed.Set("kind", kind); err != nil {
					t.Fatal(start, kind, err)
				}
				saved, err := typed.Saved(typed.Design)
				if err != nil {
					t.Fatal(start, kind, err)
				}
				read, err := Parse("mine.toml", saved)
				if err != nil {
					t.Fatal(start, kind, err)
				}
				if typed.Design.Limits != read.Design.Limits || said != "" && math.Abs(typed.Design.Limits.BackMargin-12*math.Pi/180) > 1e-12 {
					t.Errorf("%s as a %s: limits %+v, saved %+v", start, kind, typed.Design.Limits, read.Design.Limits)
				}
			}
		}
	}
}
