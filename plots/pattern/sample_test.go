package pattern

import (
	"flag"
	"fmt"
	"io"
	"math"
	"os"
	"path/filepath"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// keep is a folder in which the files are left to be looked at.
var keep = flag.String("keep", "", "leave the written files in this folder")

const degree = math.Pi / 180

// sample is a rocker of one arc of 42 in, from 23° behind the low point to 21° before it,
// 57 mm deep, with straight ends.
func sample() Drawing {
	const radius, depth, tail, nose = 1.0668, 0.057, -23 * degree, 21 * degree
	on := func(r, angle float64) r2.Vec { return r2.Vec{X: r * math.Sin(angle), Y: radius - r*math.Cos(angle)} }
	band := func(r float64) bench.Path {
		return bench.Path{Start: on(r, tail), Strokes: []bench.Stroke{{To: on(r, nose), Turn: nose - tail}}}
	}
	outline := band(radius)
	outline.Closed = true
	outline.Strokes = append(outline.Strokes,
		bench.Stroke{To: on(radius-depth, nose)},
		bench.Stroke{To: on(radius-depth, tail), Turn: tail - nose},
	)
	leg := func(angle float64, label string) Line {
		return Line{From: on(radius, angle), To: on(radius-depth, angle), Label: label}
	}
	return Drawing{
		Part: "Rocker", Piece: "Reading chair",
		Items: []Item{
			Contour{Path: outline},
			Contour{Layer: Centre, Path: band(radius - depth/2)},
			Mark{At: on(radius, 0), Label: "low point"},
			leg(-14*degree, "rear leg"), leg(12*degree, "front leg"),
			Grain{From: on(radius-depth*0.75, 2*degree), To: on(radius-depth*0.75, 7*degree)},
		},
		TipToTip: [2]r2.Vec{on(radius, tail), on(radius, nose)},
	}
}

// bowed is a strip of a length and depth whose long edges turn by an angle.
func bowed(length, depth, turn float64) Contour {
	return Contour{Path: bench.Path{Closed: true, Strokes: []bench.Stroke{
		{To: r2.Vec{X: length}, Turn: turn}, {To: r2.Vec{X: length, Y: depth}}, {To: r2.Vec{Y: depth}, Turn: -turn},
	}}}
}

// written returns a file of the drawing's name, written into a folder.
func written(t testing.TB, name string, write func(io.Writer) error) string {
	t.Helper()
	folder := *keep
	if folder == "" {
		folder = t.TempDir()
	}
	file := filepath.Join(folder, name)
	out, err := os.Create(file)
	if err != nil {
		t.Fatal(err)
	}
	if err := write(out); err != nil {
		t.Fatal(err)
	}
	if err := out.Close(); err != nil {
		t.Fatal(err)
	}
	return file
}

// pdfOf writes a drawing on paper of a name.
func pdfOf(t testing.TB, d Drawing, paper string, units quantity.System) string {
	t.Helper()
	p, err := PaperNamed(paper)
	if err != nil {
		t.Fatal(err)
	}
	return written(t, paper+".pdf", func(w io.Writer) error { return d.WritePDF(w, p, units) })
}

// WritePDF writes what Print returns.
func (d Drawing) WritePDF(w io.Writer, paper Paper, units quantity.System) error {
	printed, err := d.Print(paper, units)
	if err == nil {
		_, err = w.Write(printed.PDF)
	}
	return err
}

// rollOf returns a roll of a width, m.
func rollOf(width float64) Paper {
	return Paper{Name: fmt.Sprintf("roll %.0f mm", width*1e3), Width: width}
}
