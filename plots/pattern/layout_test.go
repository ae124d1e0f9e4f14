package pattern

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// TestNothingOverlaps: no text lies on a line or on another text, the check and the squares
// are off the outline, and the title block of a rocker is inside it, where it is not cut off.
func TestNothingOverlaps(t *testing.T) {
	for name, d := range map[string]Drawing{"rocker": sample(), "ring": big(),
		"strip": strip(0.5, 0.04), "lath": strip(1, 0.004), "chip": strip(0.01, 0.01)} {
		for _, units := range []quantity.System{quantity.Inch, quantity.Metric} {
			shapes, err := d.laid(units, true)
			if err != nil {
				t.Fatal(err)
			}
			texts := ""
			for i, s := range shapes {
				if s.text == "" {
					continue
				}
				texts += s.text + "\n"
				for k, other := range shapes {
					if i != k && covers(s, other) {
						t.Errorf("%s: %q lies on %s %q", name, s.text, other.layer, other.text)
					}
				}
			}
			for _, want := range []string{d.Part, d.Piece, "date __", "owner __", "print at 100 %", "4 in square", "100 mm square", "tape says __"} {
				if !strings.Contains(texts, want) {
					t.Errorf("%s: no %q in\n%s", name, want, texts)
				}
			}
		}
	}
}

// covers reports whether a point of another shape, each half a millimetre, is in a text's
// box from its base line to its capitals.
func covers(text, other shape) bool {
	for _, p := range other.spots(0.5e-3) {
		p = r2.Rotate(r2.Sub(p, text.at), -text.angle, r2.Vec{})
		if math.Abs(p.X) < text.width/2 && p.Y > 0 && p.Y < text.height {
			return true
		}
	}
	return false
}

// TestTitleInside: the title block of the sample is inside its outline.
func TestTitleInside(t *testing.T) {
	shapes, err := sample().laid(quantity.Inch, false)
	if err != nil {
		t.Fatal(err)
	}
	found := 0
	for _, s := range shapes {
		if strings.Contains(s.text, "date __") || strings.Contains(s.text, "Reading chair") || strings.Contains(s.text, "unit: in") {
			found++
			for _, p := range s.corners() {
				if r := r2.Norm(r2.Sub(p, r2.Vec{Y: 1.0668})); r > 1.0668 || r < 1.0668-0.057 {
					t.Errorf("%q reaches %v, out of the rocker", s.text, p)
				}
			}
		}
	}
	if found != 3 {
		t.Errorf("%d lines of the title block, want 3", found)
	}
}

// TestTheCheckSaysBoth: 1000 mm are 39 3/8 in to a sixteenth (39.370).
func TestTheCheckSaysBoth(t *testing.T) {
	for units, want := range map[quantity.System]string{
		quantity.Inch:   "tip to tip 39 3/8 in / 1000 mm",
		quantity.Metric: "tip to tip 1000 mm / 39 3/8 in",
	} {
		shapes, err := strip(1, 0.05).laid(units, false)
		if err != nil {
			t.Fatal(err)
		}
		if all := fmt.Sprint(shapes); !strings.Contains(all, want) {
			t.Errorf("no %q", want)
		}
	}
}

// TestLabelsStand: turned by any way there is, no label stands on its head.
func TestLabelsStand(t *testing.T) {
	shapes, err := sample().laid(quantity.Inch, false)
	if err != nil {
		t.Fatal(err)
	}
	for _, turn := range turns(60) {
		for _, s := range turnedBy(shapes, turn) {
			if s.flips && math.Cos(s.angle) < -0.11 {
				t.Errorf("turned by %v, %q stands at %v", turn, s.text, s.angle)
			}
		}
	}
}
