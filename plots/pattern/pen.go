package pattern

import (
	"bytes"
	"fmt"
	"math"
	"strings"
	"time"
	"unicode"

	"codeberg.org/go-pdf/fpdf"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// capital is the height of Helvetica's capitals, in sizes of the font (Adobe's font metrics
// say 718 of 1000).
const capital = 0.718

// The heights of capitals, m.
const (
	lettering = 3.5e-3 // the smallest that is read at a bench
	heading   = 5e-3
)

// widest is where a text is cut, m.
const widest = 0.14

// A ruler measures text as it is set in Helvetica.
type ruler struct {
	pdf    *fpdf.Fpdf
	encode func(string) string
}

func newRuler() *ruler {
	pdf := fpdf.New("P", "pt", "", "")
	pdf.SetFont("Helvetica", "", 1000)
	return &ruler{pdf, pdf.UnicodeTranslatorFromDescriptor("cp1252")}
}

// cp1252 returns a text in western Europe's code page, "?" for every letter it lacks.
func (r *ruler) cp1252(text string) string {
	var b strings.Builder
	for _, letter := range text {
		switch code := r.encode(string(letter)); {
		case letter == unicode.ReplacementChar, len(code) != 1, code == "." && letter != '.':
			b.WriteByte('?')
		default:
			b.WriteString(code)
		}
	}
	return b.String()
}

// width returns the width of a text whose capitals are so high, m.
func (r *ruler) width(text string, height float64) float64 {
	return r.pdf.GetStringWidth(r.cp1252(text)) / 1000 * height / capital
}

// fit returns a text on one line, without signs that do not print, cut to a width with
// "..." where it is longer.
func (r *ruler) fit(text string, height, width float64) string {
	const most = 400 // letters that could ever fit
	var letters []rune
	for _, letter := range text {
		if len(letters) > most {
			break
		}
		if unicode.IsSpace(letter) {
			letter = ' '
		}
		if unicode.IsGraphic(letter) {
			letters = append(letters, letter)
		}
	}
	text = strings.TrimSpace(string(letters))
	if r.width(text, height) <= width {
		return text
	}
	used := r.width("...", height)
	for i, letter := range letters { // these fonts have no kerning as they are set here
		if used += r.width(string(letter), height); used > width {
			return strings.TrimSpace(string(letters[:i])) + "..."
		}
	}
	return text
}

// wrapped returns a text in lines of at most a width; a no-break space holds two words
// together.
func (r *ruler) wrapped(text string, height, width float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.Split(text, " ") {
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && r.width(longer, height) > width {
			lines = append(lines, line)
			longer = word
		}
		line = longer
	}
	return append(lines, line)
}

// lettered returns a text on a layer, its base line's middle at a point. No text is no shape.
func (r *ruler) lettered(layer Layer, text string, at r2.Vec, angle float64) []shape {
	text = r.fit(text, lettering, widest)
	if text == "" {
		return nil
	}
	return []shape{{layer: layer, text: text, at: at, height: lettering, width: r.width(text, lettering), angle: angle}}
}

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
	none := time.Unix(0, 0).UTC()
	pdf.SetCreationDate(none)
	pdf.SetModificationDate(none)
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
