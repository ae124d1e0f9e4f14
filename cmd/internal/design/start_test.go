package design

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"rockerwright/cmd/internal/design/locate"
)

// TestBlanksInComments holds that the numbers in the comments of the starting designs are
// those of the blanks on the measuring sheets, and that none is left out of a chair.
func TestBlanksInComments(t *testing.T) {
	for _, name := range Starts() {
		text, _ := Start(name)
		f, err := Parse(name, text)
		if err != nil {
			t.Fatal(err)
		}
		lines := strings.Split(text, "\n")
		for _, e := range f.entries {
			m, _, err := f.Design.Measure(e.Key)
			if err != nil {
				continue
			}
			number, _ := locate.At(text, e.ValueStart)
			line := lines[number-1]
			_, comment, _ := strings.Cut(line, "#")
			numbered := strings.HasPrefix(strings.TrimSpace(comment), "(")
			want := fmt.Sprintf("(%d)", m.Blank)
			if numbered && !strings.HasPrefix(strings.TrimSpace(comment), want) {
				t.Errorf("%s: %q, want %s", name, line, want)
			}
			if !numbered && m.Blank > 0 && f.Design.Seat.Front > 0 {
				t.Errorf("%s: %q lacks the number of its blank, %s", name, line, want)
			}
		}
	}
}

// TestFilled holds that a filled design reads back as what it was filled with, comments
// and all.
func TestFilled(t *testing.T) {
	text, _ := Start("chair")
	f, err := Parse("chair", text)
	if err != nil {
		t.Fatal(err)
	}
	for _, change := range [][2]string{{"sitter.height", "6 ft 1 in"}, {"sitter.knee_crease", "19"},
		{"floor.slope", "1"}, {"seat.width", "21 1/4"}} {
		if err := f.Set(change[0], change[1]); err != nil {
			t.Fatal(err)
		}
	}
	filled, err := f.Filled()
	if err != nil {
		t.Fatal(err)
	}
	again, err := Parse("filled", filled)
	if err != nil {
		t.Fatal(err, filled)
	}
	d := again.Design
	for _, tt := range []struct {
		name      string
		got, want float64
	}{
		{"height", d.Sitters[0].Person.Sizes[0], 73 * 0.0254}, {"slope", d.Floor.Slope, f.Design.Floor.Slope},
		{"width as asked, not as recommended", d.Seat.Width, 21.25 * 0.0254}, {"radius untouched", d.Rocker.Radius, f.Design.Rocker.Radius},
	} {
		if math.Abs(tt.got-tt.want) > 1e-12 { // feet and inches, in two roundings
			t.Errorf("%s: %v, want %v", tt.name, tt.got, tt.want)
		}
	}
	if d.Seat.Front <= f.Design.Seat.Front {
		t.Errorf("a knee crease of 19 in leaves the front edge at %v", d.Seat.Front)
	}
	if strings.Count(filled, "#") < strings.Count(text, "#") || !strings.Contains(filled, "knee_crease = 19 # (3)") ||
		!strings.Contains(filled, "[floor]\nslope = 1") {
		t.Errorf("filled:\n%s", filled)
	}
}
