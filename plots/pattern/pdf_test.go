package pattern

import (
	"cmp"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

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
				wrong := math.Abs(s.size.X - paper.Width) // a hundredth of a point in the file
				if long, short := max(s.size.X, s.size.Y), min(s.size.X, s.size.Y); !paper.isRoll() {
					wrong = math.Hypot(long-max(paper.Width, paper.Height), short-min(paper.Width, paper.Height))
				}
				if wrong > 1e-5 {
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
			wantSquares(t, pages[0].squares(t), 5e-3) // poppler rounds to 1/256 point, 0.0014 mm, at both ends
		})
	}
}

// big is a ring's quarter, 1 m of radius, that needs rows and columns.
func big() Drawing {
	p := bench.Path{Start: r2.Vec{X: 1}, Closed: true, Strokes: []bench.Stroke{
		{To: r2.Vec{Y: 1}, Turn: math.Pi / 2}, {To: r2.Vec{Y: 0.5}}, {To: r2.Vec{X: 0.5}, Turn: -math.Pi / 2},
	}}
	return Drawing{Part: "Quarter", Piece: "Ring", Items: []Item{Contour{Path: p}}, TipToTip: [2]r2.Vec{{X: 1}, {Y: 1}}}
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
		Contour{Path: bench.Polyline(true, r2.Vec{}, r2.Vec{X: length}, r2.Vec{X: length, Y: width}, r2.Vec{Y: width})},
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
