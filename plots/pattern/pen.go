package pattern

import (
	"bytes"
	"fmt"
	"math"
	"strings"

	"codeberg.org/go-pdf/fpdf"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// A pen writes on the pages of a PDF. Its places are metres from the lower left corner of
// the page; it writes them itself, to a ten-thousandth of a point, for the library rounds
// to a hundredth, which is 0.0035 mm.
type pen struct {
	*ruler
	pdf *fpdf.Fpdf
}

// points is the number of points in a metre.
const points = 72 / inch

// A style is how a line looks.
type style struct {
	width float64   // m
	grey  float64   // 0 is black
	dash  []float64 // points
}

var (
	styles = map[Layer]style{
		Outline: {width: 0.35e-3},
		Stock:   {width: 0.18e-3, dash: []float64{8, 4}},
		Centre:  {width: 0.18e-3, dash: []float64{14, 3, 2, 3}},
		Marks:   {width: 0.25e-3},
		Texts:   {width: 0.18e-3},
		Check:   {width: 0.18e-3},
	}
	cutLine   = style{width: 0.15e-3, grey: 0.35, dash: []float64{4, 3}}
	glueLine  = style{width: 0.15e-3, grey: 0.35, dash: []float64{1, 2}}
	crossLine = style{width: 0.2e-3}
)

// newPen returns a pen without pages. Its files do not depend on the time of day.
func newPen(r *ruler, title string) *pen {
	pdf := fpdf.New("P", "pt", "", "")
	pdf.SetCatalogSort(true)
	pdf.SetCreationDate(epoch)
	pdf.SetModificationDate(epoch)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetTitle(title, true)
	return &pen{r, pdf}
}

// file returns what was drawn as a PDF.
func (p *pen) file() ([]byte, error) {
	var out bytes.Buffer
	err := p.pdf.Output(&out)
	return out.Bytes(), err
}

// page begins a page of a size, m.
func (p *pen) page(width, height float64) {
	p.pdf.AddPageFormat("P", fpdf.SizeType{Wd: width * points, Ht: height * points})
	p.pdf.RawWriteStr("1 J 1 j")
}

// number writes a length of m in points.
func number(x float64) string { return quantity.Decimal(x*points, 4) }

func pair(v r2.Vec) string { return number(v.X) + " " + number(v.Y) }

// line draws a straight line.
func (p *pen) line(look style, from, to r2.Vec) {
	p.draw(shape{path: bench.Polyline(false, from, to)}, look)
}

// draw draws a shape, placed on its page, as a style says.
func (p *pen) draw(s shape, look style) {
	switch {
	case s.text != "":
		p.write(s.text, s.height, s.left(), s.angle, 0, "")
	case len(s.path.Strokes) > 0:
		p.pdf.RawWriteStr(fmt.Sprintf("%s w %.2f G %v 0 d", number(look.width), look.grey, look.dash))
		var b strings.Builder
		b.WriteString(pair(s.path.Start) + " m")
		for _, a := range drawn(s.path) {
			if a.Turn == 0 {
				b.WriteString(" " + pair(a.To) + " l")
				continue
			}
			for _, c := range cubics(a) {
				for _, p := range c {
					b.WriteString(" " + pair(p))
				}
				b.WriteString(" c")
			}
		}
		if s.path.Closed {
			b.WriteString(" h")
		}
		p.pdf.RawWriteStr(b.String() + " S")
	}
}

// write writes a text with its left end at a place.
func (p *pen) write(text string, height float64, at r2.Vec, angle, grey float64, bold string) {
	p.pdf.SetFont("Helvetica", bold, height/capital*points)
	s, c := math.Sincos(angle)
	escaped := strings.NewReplacer(`\`, `\\`, "(", `\(`, ")", `\)`).Replace(p.cp1252(text))
	p.pdf.RawWriteStr(fmt.Sprintf("%.2f g BT %.6f %.6f %.6f %.6f %s Tm (%s) Tj ET", grey, c, s, -s, c, pair(at), escaped))
}
