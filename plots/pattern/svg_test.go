package pattern

import (
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"os"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// A read is what encoding/xml reads of an SVG.
type read struct {
	Width   string `xml:"width,attr"`
	Height  string `xml:"height,attr"`
	ViewBox string `xml:"viewBox,attr"`
	Title   string `xml:"title"`
	Groups  []struct {
		ID    string `xml:"id,attr"`
		Paths []struct {
			D string `xml:"d,attr"`
		} `xml:"path"`
		Texts []string `xml:"text"`
	} `xml:"g"`
}

func readSVG(t testing.TB, d Drawing, units quantity.System) read {
	t.Helper()
	text, err := os.ReadFile(written(t, "rocker.svg", func(w io.Writer) error { return d.WriteSVG(w, units) }))
	if err != nil {
		t.Fatal(err)
	}
	var r read
	if err := xml.Unmarshal(text, &r); err != nil {
		t.Fatal(err)
	}
	return r
}

// TestSVG reads the file by the standard library and the outline by SVG's own formulas.
func TestSVG(t *testing.T) {
	r := readSVG(t, sample(), quantity.Inch)
	var w, h float64
	if n, err := fmt.Sscanf(r.ViewBox, "0 0 %f %f", &w, &h); n != 2 || err != nil {
		t.Fatalf("viewBox %q", r.ViewBox)
	}
	if r.Width != fmt.Sprintf("%gmm", w) || r.Height != fmt.Sprintf("%gmm", h) {
		t.Errorf("%s by %s shows %s: a unit is not a millimetre", r.Width, r.Height, r.ViewBox)
	}
	for _, g := range r.Groups {
		switch g.ID {
		case "OUTLINE":
			if len(g.Paths) != 1 {
				t.Fatalf("%d paths on OUTLINE, want one", len(g.Paths))
			}
			chain, closed := commands(t, g.Paths[0].D)
			if !closed {
				t.Error("the outline is open")
			}
			first := chain[0]
			for i, p := range chain { // to metres, y up, from where the sample starts
				chain[i] = r2.Add(truth()[0], r2.Vec{X: (p.X - first.X) / 1e3, Y: (first.Y - p.Y) / 1e3})
			}
			for _, p := range truth() {
				if d := off(p, chain); d > near {
					t.Fatalf("the outline passes %v at %v mm", p, d*1e3)
				}
			}
		case "CHECK":
			var sides []float64
			for _, p := range g.Paths {
				if c, closed := commands(t, p.D); closed {
					sides = append(sides, squareSides(t, c)...)
				}
			}
			wantSquares(t, sides, 2e-4) // the rounding of both ends, mm
		}
	}
}

// squareSides returns the lengths of the sides of a closed chain of four corners.
func squareSides(t testing.TB, c []r2.Vec) []float64 {
	t.Helper()
	if len(c) != 5 {
		t.Fatalf("a test square has %d corners", len(c)-1)
	}
	var list []float64
	for i := range 4 {
		list = append(list, r2.Norm(r2.Sub(c[i+1], c[i])))
	}
	if a, b := r2.Norm(r2.Sub(c[2], c[0])), r2.Norm(r2.Sub(c[3], c[1])); math.Abs(a-b) > 1e-3*a {
		t.Errorf("a test square is %v and %v across", a, b)
	}
	return list
}

// wantSquares holds four sides of 4 in, then four of 100 mm, in mm.
func wantSquares(t testing.TB, sides []float64, tolerance float64) {
	t.Helper()
	if len(sides) != 8 {
		t.Fatalf("test squares with the sides %v; want two squares", sides)
	}
	for i, s := range sides {
		want := 101.6
		if i > 3 {
			want = 100
		}
		if math.Abs(s-want) > tolerance {
			t.Errorf("side %d of the test squares is %v mm, want %v", i, s, want)
		}
	}
}
