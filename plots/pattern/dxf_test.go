package pattern

import (
	"encoding/json"
	"io"
	"math"
	"os/exec"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// A dxfRead is what testdata/read.py prints.
type dxfRead struct {
	Version string         `json:"version"`
	Units   [2]int         `json:"units"`            // $INSUNITS, $MEASUREMENT
	Stock   [][][2]float64 `json:"stock"`            // corners
	Astray  []string       `json:"closed_elsewhere"` // layers with closed lines that are none of a part, a board or a test square
	Errors  []string       `json:"errors"`
	Layers  []string       `json:"layers"` // used and not in the table
	Outline [][][2]float64 `json:"outline"`
	Closed  []bool         `json:"closed"`
	Squares [][][2]float64 `json:"squares"`
	Texts   []string       `json:"texts"`
	Points  [][2]float64   `json:"points"`
}

// readDXF reads a drawing's DXF by ezdxf, or skips aloud.
func readDXF(t testing.TB, d Drawing, units quantity.System) dxfRead {
	t.Helper()
	python := ""
	for _, p := range []string{"python3", "/usr/bin/python3"} {
		if exec.Command(p, "-c", "import ezdxf").Run() == nil {
			python = p
			break
		}
	}
	if python == "" {
		t.Skip("NOT CHECKED: no python3 with ezdxf is installed (python3-ezdxf)")
	}
	file := written(t, "rocker.dxf", func(w io.Writer) error { return d.WriteDXF(w, units) })
	var r dxfRead
	if err := json.Unmarshal([]byte(tool(t, python, "testdata/read.py", file)), &r); err != nil {
		t.Fatal(err)
	}
	if r.Version != "AC1009" || len(r.Errors) > 0 || len(r.Layers) > 0 || len(r.Astray) > 0 {
		t.Errorf("release %s, audit %q, layers out of the table %q, closed lines on %q", r.Version, r.Errors, r.Layers, r.Astray)
	}
	// ezdxf.units has 1 for inches and 4 for millimetres; $MEASUREMENT 0 is English and 1 metric (from memory)
	if want := map[quantity.System][2]int{quantity.Inch: {1, 0}, quantity.Metric: {4, 1}}[units]; r.Units != want {
		t.Errorf("units %v, want %v", r.Units, want)
	}
	return r
}

// TestDXF reads the file by ezdxf, in both units.
func TestDXF(t *testing.T) {
	for _, tt := range []struct {
		units quantity.System
		unit  float64 // m
		name  string
	}{{quantity.Inch, 0.0254, "UNITS: INCHES"}, {quantity.Metric, 1e-3, "UNITS: MILLIMETRES"}} {
		r := readDXF(t, sample(), tt.units)
		if !slices.Contains(r.Texts, tt.name) || !slices.Contains(r.Texts, "100 mm square") || !slices.Contains(r.Texts, "4 in square") {
			t.Errorf("texts %q", r.Texts)
		}
		if !slices.Equal(r.Closed, []bool{true}) || len(r.Points) != 1 || math.Hypot(r.Points[0][0], r.Points[0][1]) > 1e-9 {
			t.Errorf("outlines closed: %v; points %v, want the low point at the origin", r.Closed, r.Points)
		}
		var chains [][]r2.Vec
		for _, part := range r.Outline {
			var chain []r2.Vec
			for _, p := range part {
				chain = append(chain, r2.Vec{X: p[0] * tt.unit, Y: p[1] * tt.unit})
			}
			chains = append(chains, chain)
		}
		for _, p := range truth() {
			least := math.Inf(1)
			for _, chain := range chains {
				least = min(least, off(p, chain))
			}
			if least > near {
				t.Fatalf("%s: the outline passes %v at %v mm", tt.name, p, least*1e3)
			}
		}
		var sides []float64
		for _, s := range r.Squares {
			var c []r2.Vec
			for _, p := range append(s, s[0]) {
				c = append(c, r2.Vec{X: p[0] * tt.unit * 1e3, Y: p[1] * tt.unit * 1e3})
			}
			sides = append(sides, squareSides(t, c)...)
		}
		wantSquares(t, sides, 1e-6) // nine decimals of an inch
	}
}
