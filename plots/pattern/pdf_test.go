package pattern

import (
	"bytes"
	"cmp"
	"encoding/xml"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// A sheetRead is what poppler reads of one page. Lengths are m, y up.
type sheetRead struct {
	row, col, n, of int
	text            string
	size            r2.Vec
	outline         []r2.Vec // all of it, also what the page cuts off
	closed          bool
	marks           []r2.Vec // registration crosses
	closedPaths     [][]r2.Vec
}

var (
	strokeWidth = regexp.MustCompile(`stroke-width:([0-9.]+);`)
	flipped     = regexp.MustCompile(`^matrix\(1,0,0,-1,0,([0-9.]+)\)$`)
	sheetName   = regexp.MustCompile(`Sheet (\d+)-(\d+) +(\d+) of (\d+) +for (.+) paper +print at 100 %`)
)

// readPDF reads every page by pdftocairo and pdftotext.
func readPDF(t testing.TB, file string) []sheetRead {
	t.Helper()
	texts := strings.Split(tool(t, "pdftotext", "-layout", file, "-"), "\f") // each page ends with one
	var list []sheetRead
	for i, text := range texts[:len(texts)-1] {
		s, page := sheetRead{text: text}, strconv.Itoa(i+1)
		if m := sheetName.FindStringSubmatch(s.text); m != nil {
			for k, n := range []*int{&s.row, &s.col, &s.n, &s.of} {
				*n, _ = strconv.Atoi(m[k+1]) // the pattern has digits only
			}
		}
		out := filepath.Join(t.TempDir(), "page.svg")
		tool(t, "pdftocairo", "-svg", "-noshrink", "-nocenter", "-f", page, "-l", page, file, out)
		text, err := os.ReadFile(out)
		if err != nil {
			t.Fatal(err)
		}
		s.paths(t, text)
		list = append(list, s)
	}
	return list
}

// paths reads the stroked paths of a page: the outline is 0.35 mm wide and a registration
// cross 0.2 mm.
func (s *sheetRead) paths(t testing.TB, text []byte) {
	t.Helper()
	for d := xml.NewDecoder(bytes.NewReader(text)); ; {
		token, err := d.Token()
		if err != nil {
			break
		}
		e, ok := token.(xml.StartElement)
		if ok && e.Name.Local == "svg" {
			s.size = pageSize(t, e)
		}
		if !ok || e.Name.Local != "path" {
			continue
		}
		attr := map[string]string{}
		for _, a := range e.Attr {
			attr[a.Name.Local] = a.Value
		}
		m, w := flipped.FindStringSubmatch(attr["transform"]), strokeWidth.FindStringSubmatch(attr["style"])
		if m == nil || w == nil {
			continue // letters and clips
		}
		chain, closed := commands(t, attr["d"])
		for i := range chain {
			chain[i] = r2.Scale(0.0254/72, chain[i])
		}
		switch width, _ := strconv.ParseFloat(w[1], 64); {
		case math.Abs(width*25.4/72-0.35) < 0.01:
			s.outline, s.closed = chain, closed
		case math.Abs(width*25.4/72-0.2) < 0.005:
			if middle := r2.Scale(0.5, r2.Add(chain[0], chain[1])); !slices.ContainsFunc(s.marks, func(m r2.Vec) bool { return r2.Norm(r2.Sub(m, middle)) < 1e-5 }) {
				s.marks = append(s.marks, middle)
			}
		case closed:
			s.closedPaths = append(s.closedPaths, chain)
		}
	}
}

// pageSize returns a page's size in m.
func pageSize(t testing.TB, e xml.StartElement) r2.Vec {
	t.Helper()
	var w, h float64
	for _, a := range e.Attr {
		if a.Name.Local == "viewBox" {
			if _, err := fmt.Sscanf(a.Value, "0 0 %f %f", &w, &h); err != nil {
				t.Fatal(err)
			}
		}
	}
	return r2.Vec{X: w * 0.0254 / 72, Y: h * 0.0254 / 72}
}

// fitted returns how the sample lies on a page: by its start and the point of the drawn
// outline that is furthest from it, which are its two tips.
func fitted(outline []r2.Vec) (place func(r2.Vec) r2.Vec, length float64) {
	start := outline[0]
	far := slices.MaxFunc(outline, func(a, b r2.Vec) int {
		return cmp.Compare(r2.Norm(r2.Sub(a, start)), r2.Norm(r2.Sub(b, start)))
	})
	tail, nose := truth()[0], truth()[4*200]
	is, was := r2.Sub(far, start), r2.Sub(nose, tail)
	turn := math.Atan2(is.Y, is.X) - math.Atan2(was.Y, was.X)
	return func(p r2.Vec) r2.Vec { return r2.Add(start, r2.Rotate(r2.Sub(p, tail), turn, r2.Vec{})) }, r2.Norm(is)
}

// TestPDF reads every paper's file by poppler: true size on each page, everything on some
// sheet, names, test squares.
func TestPDF(t *testing.T) {
	for _, paper := range Papers() {
		t.Run(paper.Name, func(t *testing.T) {
			file := pdfOf(t, sample(), paper.Name, quantity.Inch)
			if info, err := os.Stat(file); err != nil || info.Size() > 300e3 {
				t.Errorf("%v, %v; want at most 300 kB", info.Size(), err)
			}
			pages := readPDF(t, file)
			shown := make([]bool, len(truth()))
			for i, s := range pages {
				if i == 0 && !paper.isRoll() {
					continue
				}
				if long, short := max(s.size.X, s.size.Y), min(s.size.X, s.size.Y); !paper.isRoll() && // a hundredth of a point in the file
					math.Hypot(long-max(paper.Width, paper.Height), short-min(paper.Width, paper.Height)) > 1e-5 || paper.isRoll() && math.Abs(s.size.X-paper.Width) > 1e-5 {
					t.Errorf("page %d is %v m", i+1, s.size)
				}
				if !s.closed {
					t.Fatalf("page %d: the outline is open", i+1)
				}
				place, length := fitted(s.outline)
				if want := 2 * 1.0668 * math.Sin(22*degree); math.Abs(length-want) > 1e-5 { // poppler rounds to 1/256 point, 1.4e-6 m
					t.Errorf("page %d: tip to tip is %v m, want %v", i+1, length, want)
				}
				for k, p := range truth() {
					at := place(p)
					if d := off(at, s.outline); d > near {
						t.Fatalf("page %d: the outline passes %v at %v mm", i+1, p, d*1e3)
					}
					shown[k] = shown[k] || paper.isRoll() || at.X >= 0.01 && at.X <= s.size.X-0.01 && at.Y >= 0.019 && at.Y <= s.size.Y-0.01
				}
				if !paper.isRoll() && (s.n != i || s.of != len(pages)-1 || !strings.Contains(s.text, "for "+paper.Name+" paper")) {
					t.Errorf("page %d is named %d-%d, %d of %d:\n%s", i+1, s.row, s.col, s.n, s.of, s.text)
				}
			}
			if slices.Contains(shown, false) {
				t.Error("a part of the outline is on no sheet")
			}
			if !strings.Contains(pages[0].text, "100 %") {
				t.Errorf("the first page does not say at which scale:\n%s", pages[0].text)
			}
			var sides []float64
			for _, c := range pages[0].closedPaths {
				if len(c) == 5 && math.Abs(r2.Norm(r2.Sub(c[1], c[0]))-0.1) < 5e-3 && math.Abs(r2.Norm(r2.Sub(c[2], c[1]))-0.1) < 5e-3 {
					sides = append(sides, squareSides(t, c)...)
				}
			}
			for i := range sides {
				sides[i] *= 1e3
			}
			wantSquares(t, sides, 5e-3) // poppler rounds to 1/256 point, 0.0014 mm, at both ends
		})
	}
}

// big is a ring's quarter, 1 m of radius, that needs rows and columns.
func big() Drawing {
	p := bench.Path{Start: r2.Vec{X: 1}, Closed: true, Strokes: []bench.Stroke{
		{To: r2.Vec{Y: 1}, Turn: math.Pi / 2}, {To: r2.Vec{Y: 0.5}}, {To: r2.Vec{X: 0.5}, Turn: -math.Pi / 2},
	}}
	return Drawing{Part: "Quarter", Piece: "Ring", Items: []Item{Curve{Path: p}}, TipToTip: [2]r2.Vec{{X: 1}, {Y: 1}}}
}

// TestNeighbours: laid together by their crosses, two sheets draw the same outline. The
// crosses are as far apart on one as on the other.
func TestNeighbours(t *testing.T) {
	for paper, d := range map[string]Drawing{"letter": sample(), "A4": big(), "A3": big(), "tabloid": sample()} {
		pages := readPDF(t, pdfOf(t, d, paper, quantity.Metric))[1:]
		joints := 0
		for _, a := range pages {
			for _, b := range pages {
				across, down := a.row == b.row && a.col+1 == b.col, a.col == b.col && a.row+1 == b.row
				if !across && !down {
					continue
				}
				joints++
				compare := func(m, n r2.Vec) int { return cmp.Compare(m.X, n.X) }
				if across {
					compare = func(m, n r2.Vec) int { return cmp.Compare(m.Y, n.Y) }
				}
				from, to := edge(a.marks, across, true), edge(b.marks, across, false)
				slices.SortFunc(from, compare)
				slices.SortFunc(to, compare)
				if len(from) != 2 || len(to) != 2 {
					t.Fatalf("%s: %d-%d has the crosses %v, %d-%d %v", paper, a.row, a.col, a.marks, b.row, b.col, b.marks)
				}
				shift := r2.Sub(to[0], from[0])
				const rounding = 1e-5 // m; poppler's 1/256 point at each of four places
				if off := r2.Norm(r2.Sub(r2.Sub(to[1], from[1]), shift)); off > rounding {
					t.Errorf("%s: the crosses of %d-%d and %d-%d are %v m off", paper, a.row, a.col, b.row, b.col, off)
				}
				for i := range a.outline {
					if off := r2.Norm(r2.Sub(r2.Sub(b.outline[i], a.outline[i]), shift)); off > rounding {
						t.Fatalf("%s: %d-%d and %d-%d draw the outline %v m apart", paper, a.row, a.col, b.row, b.col, off)
					}
				}
			}
		}
		if joints < len(pages)-1 {
			t.Errorf("%s: %d sheets with %d joints", paper, len(pages), joints)
		}
	}
}

// edge returns the crosses at one edge of a sheet's cell: right or left, lower or upper.
func edge(marks []r2.Vec, across, far bool) []r2.Vec {
	at := func(m r2.Vec) float64 {
		if across {
			return m.X
		}
		return -m.Y
	}
	best := math.Inf(1)
	if far {
		best = -best
	}
	for _, m := range marks {
		if far {
			best = max(best, at(m))
		} else {
			best = min(best, at(m))
		}
	}
	var list []r2.Vec
	for _, m := range marks {
		if math.Abs(at(m)-best) < 1e-4 {
			list = append(list, m)
		}
	}
	return list
}

// strip is a straight piece.
func strip(length, width float64) Drawing {
	return Drawing{Part: "Strip", Piece: "Test", TipToTip: [2]r2.Vec{{}, {X: length}}, Items: []Item{
		Curve{Path: polyline(true, r2.Vec{}, r2.Vec{X: length}, r2.Vec{X: length, Y: width}, r2.Vec{Y: width})},
	}}
}

// TestFewestSheets: the numbers are by hand. A4 has 297 − 2·10 − 9 = 268 mm for a drawing
// upright, less 2 mm on each side, and 277 mm lying down. A strip of 283 by 5 mm, its check
// 20 mm beside it, is too long for either and fits across: 283·cos 30° + 40·sin 30° = 265.
func TestFewestSheets(t *testing.T) {
	for _, tt := range []struct {
		d      Drawing
		sheets int
	}{{strip(0.1, 0.05), 1}, {strip(0.25, 0.005), 1}, {strip(0.283, 0.005), 1}, {strip(0.45, 0.005), 2}, {strip(0.16, 0.23), 1}} {
		pages := readPDF(t, pdfOf(t, tt.d, "A4", quantity.Metric))
		if got := len(pages) - 1; got != tt.sheets {
			t.Errorf("%v takes %d sheets, want %d", tt.d.TipToTip, got, tt.sheets)
		}
	}
	// the middle of a ring's quarter is empty: sheets on which nothing falls are left out
	pages := readPDF(t, pdfOf(t, big(), "A4", quantity.Metric))
	rows, cols := 0, 0
	for _, s := range pages {
		rows, cols = max(rows, s.row), max(cols, s.col)
	}
	if len(pages)-1 >= rows*cols {
		t.Errorf("%d sheets in %d rows of %d: none is left out", len(pages)-1, rows, cols)
	}
}
