package view

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/plots"
	"rockerwright/plots/scene"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

const inch = 0.0254

// designs are pieces of every sort, the odd ones among them.
func designs() map[string]piece.Design {
	chair := piece.Design{
		Title:  "Reading chair",
		Rocker: piece.Rocker{Radius: 42 * inch, Nose: 17 * inch, Tail: 24 * inch},
		Seat:   piece.Seat{Front: 16.5 * inch, Rear: 15.875 * inch, Depth: 18 * inch, Width: 20 * inch, Behind: 7 * inch},
		Back:   piece.Back{Recline: 0.26, Height: 28 * inch},
		Arms:   piece.Arms{Height: 8 * inch},
		Piece:  piece.Piece{Mass: 12},
		Sitters: []piece.Sitter{{Name: "owner", Mass: 82, Posture: person.Upright, Placed: piece.Place{Ahead: 0.17, Above: 0.23},
			AtEase: piece.Place{Ahead: 0.13, Above: 0.22}}},
	}
	cradle := piece.Design{
		Title: "Cradle", Kind: piece.Cradle, Units: quantity.Metric,
		Rocker: piece.Rocker{Radius: 0.86, Nose: 0.33, Tail: 0.33},
		Parts: []piece.Part{
			{Shape: piece.Box, Length: 0.45, Height: 0.3, Mass: 6, At: r2.Vec{Y: 0.2}},
			{Shape: piece.Cone, Diameter: 0.03, TopDiameter: 0.05, Height: 0.2, Mass: 1, At: r2.Vec{Y: 0.1}},
			{Shape: piece.Point, Mass: 1, At: r2.Vec{X: 0.1, Y: 0.1}},
		},
		Sitters: []piece.Sitter{{Name: "newborn", Mass: 3.5, Inertia: 0.01, Centre: r2.Vec{Y: 0.17}}},
	}
	bare := piece.Design{Rocker: piece.Rocker{Radius: 1, Nose: 0.4, Tail: 0.4}, Body: body.Body{Mass: 10, Centre: r2.Vec{Y: 0.5}, Inertia: 1}}
	neutral, fallen, flat, hostile, slope := bare, bare, bare, chair, chair
	neutral.Body.Centre.Y = 1
	fallen.Body.Centre.Y = 1.4
	flat.Rocker = piece.Rocker{Nose: 0.4,
		Arcs: []piece.Arc{{Radius: 1, Length: 0.3}, {Flat: 0.2}, {Radius: -0.8, Length: 0.1}, {Radius: 1, Length: 0.2}}}
	hostile.Title = `<script>alert("x")</script>` + strings.Repeat("🪑\u202e&", 5000)
	slope.Floor.Slope = 0.05
	return map[string]piece.Design{"chair": chair, "cradle": cradle, "bare": bare, "neutral": neutral,
		"fallen": fallen, "flat": flat, "hostile": hostile, "slope": slope}
}

// drawn returns a picture's bytes.
func drawn(t *testing.T, p scene.Picture, f scene.Format) string {
	t.Helper()
	var b bytes.Buffer
	if err := p.Draw(&b, f); err != nil {
		t.Fatalf("%s: %v", p.Name, err)
	}
	return b.String()
}

// TestPictures: every picture of every piece is whole, the same twice, and free of what a
// page cannot show.
func TestPictures(t *testing.T) {
	for name, d := range designs() {
		r, err := check.Check(d)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		for _, p := range Pictures(r) {
			svg := drawn(t, p, scene.SVG)
			if _, err := io.ReadAll(decoder(svg)); err != nil {
				t.Errorf("%s, %s: not well-formed: %v", name, p.Name, err)
			}
			for _, bad := range []string{"NaN", "Inf", "<script", "\u202e"} {
				if strings.Contains(svg, bad) {
					t.Errorf("%s, %s: holds %q", name, p.Name, bad)
				}
			}
			if svg != drawn(t, p, scene.SVG) {
				t.Errorf("%s, %s: not the same twice", name, p.Name)
			}
			if len(svg) > 200_000 {
				t.Errorf("%s, %s: %d bytes", name, p.Name, len(svg))
			}
			pdf := drawn(t, p, scene.PDF)
			if !strings.HasPrefix(pdf, "%PDF-") || pdf != drawn(t, p, scene.PDF) {
				t.Errorf("%s, %s: no PDF, or not the same twice", name, p.Name)
			}
			if p.Alt == "" || strings.Contains(p.Alt, "NaN") {
				t.Errorf("%s, %s: alt text %q", name, p.Name, p.Alt)
			}
		}
	}
}

// decoder reads XML to its end.
func decoder(text string) io.Reader {
	d := xml.NewDecoder(strings.NewReader(text))
	return readerFunc(func([]byte) (int, error) {
		_, err := d.Token()
		return 0, err
	})
}

type readerFunc func([]byte) (int, error)

func (f readerFunc) Read(p []byte) (int, error) { return f(p) }

// TestFormats: there are two.
func TestFormats(t *testing.T) {
	r, err := check.Check(designs()["bare"])
	if err != nil {
		t.Fatal(err)
	}
	if err := SideView(r).Draw(io.Discard, "bmp"); err == nil {
		t.Error("a side view was drawn as bmp")
	}
}

// TestSideViewGroups: the groups by which a page moves the piece, for each ghost.
func TestSideViewGroups(t *testing.T) {
	r, err := check.Check(designs()["chair"])
	if err != nil {
		t.Fatal(err)
	}
	svg := drawn(t, SideView(r), scene.SVG)
	for _, id := range []string{"floor", "rocker-edge", "piece-empty", "rocker-seated", "piece-seated", "person-seated",
		"centre-edge", "marks", "title", "label-edge", "label-empty", "label-seated", "scale"} {
		if strings.Count(svg, `<g id="`+id+`">`) != 1 {
			t.Errorf("group %s is not there once", id)
		}
	}
	for _, label := range []string{"at the edge of going back", "owner, at ease", "empty", "arc centre", "touches here", "12 in"} {
		if !strings.Contains(svg, label) {
			t.Errorf("no label %q", label)
		}
	}
}

// TestSideViewIsTrue measures the drawing back: a pose stands on the floor, at the tilt
// it says, and keeps lengths.
func TestSideViewIsTrue(t *testing.T) {
	for name, d := range designs() {
		r, err := check.Check(d)
		if err != nil {
			t.Fatal(err)
		}
		for _, tilt := range []float64{-0.3, 0, 0.2, 0.9} {
			at := poseAt(r, tilt)
			lowest := math.Inf(1)
			for _, p := range r.Edge.Outline(1e-7) {
				q := at.place(p)
				lowest = min(lowest, q.Y*math.Cos(d.Floor.Slope)-q.X*math.Sin(d.Floor.Slope)) // over the sloping floor
			}
			if math.Abs(lowest) > 1e-6 {
				t.Errorf("%s at %v rad: the lowest point of the edge is %v m over the floor", name, tilt, lowest)
			}
			a, b := at.place(r2.Vec{}), at.place(r2.Vec{X: 0.3})
			along := r2.Sub(b, a)
			if math.Abs(r2.Norm(along)-0.3) > 1e-12 || math.Abs(math.Atan2(along.Y, along.X)-tilt) > 1e-9 {
				t.Errorf("%s at %v rad: a level line of the drawing lies at %v rad", name, tilt, math.Atan2(along.Y, along.X))
			}
		}
	}
}

var number = regexp.MustCompile(`(?:x|cx)="(-?[0-9.]+)"`)

// TestLabelsAreOnThePage: every text and ring of the side view begins on the paper.
func TestLabelsAreOnThePage(t *testing.T) {
	for name, d := range designs() {
		r, err := check.Check(d)
		if err != nil {
			t.Fatal(err)
		}
		for _, found := range number.FindAllStringSubmatch(drawn(t, SideView(r), scene.SVG), -1) {
			if x, err := strconv.ParseFloat(found[1], 64); err != nil || x < 0 || x > viewWidth {
				t.Errorf("%s: something stands at x = %s mm", name, found[1])
			}
		}
	}
}

func BenchmarkPictures(b *testing.B) {
	r, err := check.Check(designs()["chair"])
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		for _, p := range Pictures(r) {
			if err := p.Draw(io.Discard, scene.SVG); err != nil {
				b.Fatal(fmt.Errorf("%s: %w", p.Name, err))
			}
		}
	}
}

// TestTraces holds that every picture of a motion is drawn, the same twice, in both formats.
func TestTraces(t *testing.T) {
	r, err := trial.Rock(designs()["chair"], trial.RockOptions{})
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range plots.OfMotion(r) {
		if a, b := drawn(t, p, scene.SVG), drawn(t, p, scene.SVG); a != b || len(a) < 5000 || strings.Contains(a, "NaN") {
			t.Errorf("%s: %d bytes, %d the second time", p.Name, len(a), len(b))
		}
		if pdf := drawn(t, p, scene.PDF); !strings.HasPrefix(pdf, "%PDF") {
			t.Errorf("%s is no PDF", p.Name)
		}
	}
}
