package scene

import (
	"bytes"
	"image/png"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// half is a scene of each sort of shape: a half circle of 20 mm, a ring, words, and what is clipped.
func half() Scene {
	pen := Pen{Colour: Ink, Width: 1}
	arc := Shape{Points: []r2.Vec{{X: 10, Y: 40}, {X: 50, Y: 40}}, Turns: []float64{0, math.Pi}}
	clipped := Group{Name: "clipped", Clip: &r2.Box{Min: r2.Vec{X: 5, Y: 5}, Max: r2.Vec{X: 15, Y: 95}}}
	clipped.Add(Path(Blue, 2, r2.Vec{X: 0, Y: 90}, r2.Vec{X: 100, Y: 90}))
	return Scene{Width: 100, Height: 100, White: true, Title: "Half & half", Groups: []Group{
		{Name: "penned", Pen: pen, Shapes: []Shape{arc, Words(r2.Vec{X: 50, Y: 50}, 4, Middle, "½ (in) – two  spaces")}},
		{Name: "own", Moves: WithTilt, Shapes: []Shape{Dashed(Orange, 0.5, 2, 1).Ring(r2.Vec{X: 80, Y: 80}, 5).Filled(Pale)}},
		clipped,
	}}
}

// TestSVG holds what stands in the file, by SVG's own words: y runs down, an arc to the left turns against the clock,
// which is a sweep of 0, and a shape without pen has that of its group.
func TestSVG(t *testing.T) {
	var b bytes.Buffer
	if err := half().WriteSVG(&b); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		`viewBox="0 0 100 100"`, "<title>Half &amp; half</title>\n<rect",
		`<g id="penned" fill="none" stroke="#000000" stroke-width="1" stroke-linecap="round" stroke-linejoin="round">`,
		`<path d="M10 60A20 20 0 0 0 50 60"/>`,
		`xml:space="preserve" fill="#000000" stroke="none">½ (in) – two  spaces</text>`,
		`data-moves="tilt"`, `<circle cx="80" cy="20" r="5" fill="#c8c8c8" stroke="#d55e00"`, `stroke-dasharray="2 1"`,
		`<svg x="5" y="5" width="10" height="90" viewBox="5 5 10 90">`,
	} {
		if !strings.Contains(b.String(), want) {
			t.Errorf("no %s in\n%s", want, &b)
		}
	}
	if strings.Contains(b.String(), "<desc>") {
		t.Error("it tells what it shows, and nothing was said")
	}
}

// TestPDFIsTheSame renders the two files of a scene, and finds ink in both at the same places: on the half circle,
// on the ring, in the clip, and neither beside them nor outside of the clip.
func TestPDFIsTheSame(t *testing.T) {
	for _, name := range []string{"pdftoppm", "rsvg-convert"} {
		if _, err := exec.LookPath(name); err != nil {
			t.Skipf("NOT CHECKED: %s is not installed", name)
		}
	}
	folder := t.TempDir()
	for name, tool := range map[string][]string{
		"svg": {"rsvg-convert", "-w", "500", "-o", folder + "/svg.png", folder + "/half.svg"},
		"pdf": {"pdftoppm", "-png", "-singlefile", "-scale-to", "500", folder + "/half.pdf", folder + "/pdf"},
	} {
		var b bytes.Buffer
		if err := (Picture{Scene: half()}).Draw(&b, Format(name)); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(folder, "half."+name), b.Bytes(), 0o600); err != nil {
			t.Fatal(err)
		}
		if out, err := exec.Command(tool[0], tool[1:]...).CombinedOutput(); err != nil {
			t.Fatalf("%v: %s", err, out)
		}
		seen := pixels(t, filepath.Join(folder, name+".png"))
		for _, p := range []struct {
			x, y float64 // mm
			ink  bool
		}{
			{30, 20, true}, {15.86, 25.86, true}, {44.14, 25.86, true}, // an arc to the left hangs below its chord
			{30, 40, false}, {30, 60, false}, {30, 18, false},
			{80, 80, true}, {80, 85, true}, {80, 87, false}, {10, 90, true}, {20, 90, false}, {2, 90, false},
		} {
			if dark := seen(p.x, p.y); dark != p.ink {
				t.Errorf("%s: ink at %v, %v mm: %v", name, p.x, p.y, dark)
			}
		}
	}
}

// TestErrors: what cannot be drawn is said, and what the writer says comes back.
func TestErrors(t *testing.T) {
	err := (Picture{Scene: half()}).Draw(&bytes.Buffer{}, "bmp")
	if err == nil || !strings.Contains(err.Error(), `"bmp"`) {
		t.Errorf("as bmp: %v", err)
	}
	full, err := os.Open(os.DevNull) // not for writing
	if err != nil {
		t.Fatal(err)
	}
	defer full.Close()
	for _, format := range []Format{SVG, PDF} {
		if (Picture{Scene: half()}).Draw(full, format) == nil {
			t.Errorf("%s is written to what cannot be written", format)
		}
	}
}

// TestFace: letters that the code page lacks are "?", its own are kept, and a text is as wide as Adobe's metrics of
// Helvetica say: H 722, i 222 of 1000.
func TestFace(t *testing.T) {
	face := NewFace()
	if got := face.CodePage("a½–椅"); got != "a\xbd\x96?" {
		t.Errorf("%q", got)
	}
	if got := face.Width("Hi"); math.Abs(got-0.944) > 1e-12 {
		t.Errorf("Hi is %v wide", got)
	}
}

// TestCut: a text is cut without breaking a letter, and what a page cannot show is left out.
func TestCut(t *testing.T) {
	for text, want := range map[string]string{"chair": "chair", "½½½½½½": "½½½½…", "a\nb\u202e": "ab"} {
		if got := Cut(text, 5); got != want {
			t.Errorf("%q is cut to %q", text, got)
		}
	}
}

// pixels reads a picture of 500 pixels of a paper of 100 mm, and returns whether there is ink at a place, y up.
func pixels(t *testing.T, file string) func(x, y float64) bool {
	t.Helper()
	f, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	seen, err := png.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
	return func(x, y float64) bool {
		r, g, b, a := seen.At(int(x*5), int((100-y)*5)).RGBA()
		return a > 0 && min(r, g, b) < 0xe000
	}
}
