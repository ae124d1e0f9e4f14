package main

import (
	"encoding/csv"
	"encoding/json"
	"encoding/xml"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// A cutFile is what is read of one file for cutting, by whichever reader, m.
type cutFile struct {
	parts []cutOutline
	stock [][]r2.Vec // corners of boards
	texts []string   // of a DXF
}

// A cutOutline is a closed outline, by its strokes as points.
type cutOutline []cutStroke
type cutStroke struct {
	straight bool
	points   []r2.Vec
}

// length returns the length of a stroke, along its chords.
func (s cutStroke) length() float64 {
	sum := 0.0
	for i := 1; i < len(s.points); i++ {
		sum += r2.Norm(r2.Sub(s.points[i], s.points[i-1]))
	}
	return sum
}

// points returns all points of an outline, those of a stroke together.
func (o cutOutline) points() (list []r2.Vec) {
	for _, s := range o {
		list = append(list, s.points...)
	}
	return list
}

// extent returns the lower corner and the size of the box around points.
func extent(points []r2.Vec) (low, size r2.Vec) {
	low, high := points[0], points[0]
	for _, p := range points {
		low, high = r2.Vec{X: min(low.X, p.X), Y: min(low.Y, p.Y)}, r2.Vec{X: max(high.X, p.X), Y: max(high.Y, p.Y)}
	}
	return low, r2.Sub(high, low)
}

// nearest returns how near two outlines are, at a point of either.
func nearest(a, b cutOutline) float64 {
	least := math.Inf(1)
	for _, pair := range [2][2]cutOutline{{a, b}, {b, a}} {
		points := pair[0].points()
		for _, s := range pair[1] {
			for i := 1; i < len(s.points); i++ {
				from, way := s.points[i-1], r2.Sub(s.points[i], s.points[i-1])
				for _, p := range points {
					part := 0.0
					if n := r2.Norm2(way); n > 0 {
						part = min(max(r2.Dot(r2.Sub(p, from), way)/n, 0), 1)
					}
					least = min(least, r2.Norm(r2.Sub(p, r2.Add(from, r2.Scale(part, way)))))
				}
			}
		}
	}
	return least
}

// A dxfRead is what plots/pattern/testdata/read.py prints of a file.
type dxfRead struct {
	Version  string
	Units    [2]int
	Parts    [][][][2]float64
	Straight [][]bool
	Closed   []bool
	Stock    [][][2]float64
	Errors   []string
	Texts    []string
	Astray   []string `json:"closed_elsewhere"`
}

// asksDXF starts ezdxf once for all tests, and returns what asks it for a file; nil where it is not installed. Its
// input ends with this process, and it with that.
var asksDXF = sync.OnceValue(func() func(path string) (dxfRead, error) {
	pythons := []string{"/usr/bin/python3", "python3"}
	with := slices.IndexFunc(pythons, func(p string) bool { return exec.Command(p, "-c", "import ezdxf").Run() == nil })
	if with < 0 {
		return nil
	}
	c := exec.Command(pythons[with], filepath.Join(testdata, "../../../plots/pattern/testdata/read.py"))
	c.Stderr = os.Stderr
	in, err := c.StdinPipe()
	if err != nil {
		panic(err)
	}
	out, err := c.StdoutPipe()
	if err != nil {
		panic(err)
	}
	if err := c.Start(); err != nil {
		panic(err)
	}
	answers := json.NewDecoder(out)
	return func(path string) (r dxfRead, err error) {
		if _, err := fmt.Fprintln(in, path); err != nil {
			return r, err
		}
		return r, answers.Decode(&r)
	}
})

// readDXF reads a DXF file by ezdxf.
func readDXF(t *testing.T, file string) dxfRead {
	t.Helper()
	ask := asksDXF()
	if ask == nil {
		t.Skip("NOT CHECKED: no python3 with ezdxf is installed (python3-ezdxf)")
	}
	path, err := filepath.Abs(file)
	if err != nil {
		t.Fatal(err)
	}
	r, err := ask(path)
	if err != nil {
		t.Fatalf("%s: %v", file, err)
	}
	return r
}

// cutDXF reads a DXF file in the unit that its header names.
func cutDXF(t *testing.T, file string) cutFile {
	t.Helper()
	r := readDXF(t, file)
	unit, known := map[[2]int]float64{{1, 0}: 0.0254, {4, 1}: 1e-3}[r.Units]
	if !known || len(r.Errors)+len(r.Astray) > 0 || slices.Contains(r.Closed, false) {
		t.Errorf("%s: units %v, errors %q, closed lines on %q, outlines closed %v", file, r.Units, r.Errors, r.Astray, r.Closed)
	}
	f, metres := cutFile{texts: r.Texts}, func(points [][2]float64) (list []r2.Vec) {
		for _, p := range points {
			list = append(list, r2.Vec{X: p[0] * unit, Y: p[1] * unit})
		}
		return list
	}
	for k, part := range r.Parts {
		var o cutOutline
		for j, stroke := range part {
			o = append(o, cutStroke{r.Straight[k][j], metres(stroke)})
		}
		f.parts = append(f.parts, o)
	}
	for _, board := range r.Stock {
		f.stock = append(f.stock, metres(board))
	}
	return f
}

// cutSVG reads an SVG by encoding/xml; its unit is what its width says of its view box.
func cutSVG(t *testing.T, file string) (f cutFile) {
	t.Helper()
	var r struct {
		Width   string `xml:"width,attr"`
		ViewBox string `xml:"viewBox,attr"`
		Groups  []struct {
			ID    string `xml:"id,attr"`
			Paths []struct {
				D string `xml:"d,attr"`
			} `xml:"path"`
		} `xml:"g"`
	}
	var width, box float64
	if err := xml.Unmarshal([]byte(read(t, file)), &r); err != nil {
		t.Fatal(err)
	}
	if n, err := fmt.Sscanf(r.Width+" "+r.ViewBox, "%fmm 0 0 %f", &width, &box); n != 2 || err != nil {
		t.Fatalf("%s: %s for %s: %v", file, r.Width, r.ViewBox, err)
	}
	for _, g := range r.Groups {
		for _, path := range g.Paths {
			closed := strings.HasSuffix(path.D, "Z")
			if closed && g.ID != "OUTLINE" && g.ID != "STOCK" && g.ID != "CHECK" || !closed && g.ID == "OUTLINE" {
				t.Errorf("%s: %s on %s", file, path.D, g.ID)
			}
			switch o := svgStrokes(t, path.D, width/box*1e-3); g.ID {
			case "OUTLINE":
				f.parts = append(f.parts, o)
			case "STOCK":
				f.stock = append(f.stock, o.points())
			}
		}
	}
	return f
}

// svgStrokes reads a path of M, L, A and Z, an arc by its chord and radius, y up.
func svgStrokes(t *testing.T, d string, unit float64) (o cutOutline) {
	t.Helper()
	for _, c := range "MLAZ" {
		d = strings.ReplaceAll(d, string(c), " "+string(c)+" ")
	}
	words := strings.Fields(d)
	value := func(i int) float64 {
		x, err := strconv.ParseFloat(words[i], 64)
		if err != nil {
			t.Fatal(err)
		}
		return x * unit
	}
	var at, start r2.Vec // y up
	for i := 0; i < len(words); i++ {
		switch words[i] {
		case "M":
			at, i = r2.Vec{X: value(i + 1), Y: -value(i + 2)}, i+2
			start = at
		case "Z":
			if r2.Norm(r2.Sub(start, at)) > 0 {
				o = append(o, cutStroke{true, []r2.Vec{at, start}})
			}
		case "L":
			to := r2.Vec{X: value(i + 1), Y: -value(i + 2)}
			o, at, i = append(o, cutStroke{true, []r2.Vec{at, to}}), to, i+2
		case "A":
			to, radius := r2.Vec{X: value(i + 6), Y: -value(i + 7)}, value(i+1)
			half := math.Asin(min(1, r2.Norm(r2.Sub(to, at))/2/radius)) // of the turn
			if words[i+4] == "1" {
				half = math.Pi - half
			}
			if words[i+5] == "1" { // with the clock
				half = -half
			}
			s := cutStroke{points: []r2.Vec{at}} // 400 chords
			for k := 1; k <= 400; k++ {
				part := float64(k) / 400
				reach := r2.Rotate(r2.Scale(math.Sin(half*part)/math.Sin(half), r2.Sub(to, at)), -half*(1-part), r2.Vec{})
				s.points = append(s.points, r2.Add(at, reach))
			}
			o, at, i = append(o, s), to, i+7
		}
	}
	return o
}

// cutRow is a row of the cut list: how many, and the finished length and width, m.
type cutRow struct {
	count         int
	length, width float64
}

// cutRows reads a cut list by its heads, and holds that no cell is taken for a day or a formula.
func cutRows(t *testing.T, file string, units quantity.System) map[string]cutRow {
	t.Helper()
	table, err := csv.NewReader(strings.NewReader(strings.TrimPrefix(read(t, file), "\ufeff"))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	size := func(cell string) float64 {
		if strings.ContainsAny(cell, "/.") && !strings.HasSuffix(cell, " in") && !strings.HasSuffix(cell, " mm") {
			t.Errorf("%q is taken for a day or a number of another country", cell)
		}
		x, err := quantity.Parse(cell, quantity.Length, units)
		if err != nil {
			t.Error(err)
		}
		return x
	}
	rows := map[string]cutRow{}
	for _, row := range table[1:] {
		count, err := strconv.Atoi(row[slices.Index(table[0], "count")])
		if _, twice := rows[row[0]]; err != nil || twice {
			t.Errorf("%q: %v, listed twice: %v", row, err, twice)
		}
		for _, cell := range row[3:9] {
			size(cell)
		}
		rows[row[0]] = cutRow{count, size(row[3]), size(row[4])}
	}
	return rows
}
