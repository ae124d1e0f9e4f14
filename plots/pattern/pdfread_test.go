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
			middle := r2.Scale(0.5, r2.Add(chain[0], chain[1]))
			if !slices.ContainsFunc(s.marks, func(m r2.Vec) bool { return r2.Norm(r2.Sub(m, middle)) < 1e-5 }) {
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

// squares returns the sides of the test squares of a page, mm.
func (s sheetRead) squares(t testing.TB) []float64 {
	t.Helper()
	var sides []float64
	for _, c := range s.closedPaths {
		if len(c) == 5 && math.Abs(r2.Norm(r2.Sub(c[1], c[0]))-0.1) < 5e-3 && math.Abs(r2.Norm(r2.Sub(c[2], c[1]))-0.1) < 5e-3 {
			for _, side := range squareSides(t, c) {
				sides = append(sides, side*1e3)
			}
		}
	}
	return sides
}
