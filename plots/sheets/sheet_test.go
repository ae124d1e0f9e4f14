package sheets

import (
	"bytes"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"rockerwright/plots/scene"
	"rockerwright/sim/quantity"
)

// TestSheets holds that each measuring sheet is one page of its paper, has every blank of
// its range once in the list, keeps its marks within the paper, and comes out the same
// twice.
func TestSheets(t *testing.T) {
	for _, tt := range []struct {
		name        string
		picture     func(quantity.System) scene.Picture
		first, last int
	}{{"person", Person, 1, 9}, {"piece", Piece, 10, 36}, {"level", Level, 37, 43}} {
		for _, units := range []quantity.System{quantity.Inch, quantity.Metric} {
			svg, pdf := drawn(t, tt.picture(units), scene.SVG), drawn(t, tt.picture(units), scene.PDF)
			if again := drawn(t, tt.picture(units), scene.SVG); again != svg {
				t.Errorf("%s: two drawings differ", tt.name)
			}
			size := [...]string{quantity.Inch: `width="215.9mm" height="279.4mm"`, quantity.Metric: `width="210mm" height="297mm"`}[units]
			if !strings.Contains(svg, size) {
				t.Errorf("%s is not %s", tt.name, size)
			}
			if n := strings.Count(pdf, "/Type /Page\n"); n != 1 {
				t.Errorf("%s has %d pages", tt.name, n)
			}
			for n := tt.first; n <= tt.last; n++ {
				if !strings.Contains(svg, ">"+strconv.Itoa(n)+"</text>") {
					t.Errorf("%s lacks blank %d", tt.name, n)
				}
			}
			onPaper(t, tt.name, svg)
		}
	}
}

// TestBlanksAreNumbered holds that the blanks of the sheets have the numbers from 1 on,
// none left out.
func TestBlanksAreNumbered(t *testing.T) {
	list := blanks(1, 99)
	for i, m := range list {
		if m.Blank != i+1 {
			t.Fatalf("after blank %d comes %d (%s)", i, m.Blank, m.Key)
		}
	}
	if len(list) != 43 {
		t.Errorf("%d blanks", len(list))
	}
}

// place is a coordinate pair of an SVG.
var place = regexp.MustCompile(`[ML](-?[0-9.]+) (-?[0-9.]+)|[xc]x?="(-?[0-9.]+)" c?y="(-?[0-9.]+)"`)

// onPaper checks that every place of a page lies on the paper, 5 mm from its edge.
func onPaper(t *testing.T, name, svg string) {
	t.Helper()
	size := regexp.MustCompile(`viewBox="0 0 ([0-9.]+) ([0-9.]+)"`).FindStringSubmatch(svg)
	wide, high := millimetres(t, size[1]), millimetres(t, size[2])
	found := place.FindAllStringSubmatch(svg, -1)
	if len(found) < 100 {
		t.Fatalf("%s: %d places", name, len(found))
	}
	for _, p := range found {
		x, y := millimetres(t, p[1]+p[3]), millimetres(t, p[2]+p[4])
		if x < 5 || x > wide-5 || y < 5 || y > high-5 {
			t.Errorf("%s: a mark at %v, %v mm of %v by %v", name, x, y, wide, high)
		}
	}
}

func millimetres(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// drawn returns a picture's bytes.
func drawn(t *testing.T, p scene.Picture, f scene.Format) string {
	t.Helper()
	var b bytes.Buffer
	if err := p.Draw(&b, f); err != nil {
		t.Fatal(err)
	}
	return b.String()
}
