package plots

import (
	"bytes"
	"cmp"
	"encoding/xml"
	"fmt"
	"image/color"
	"io"
	"math"
	"strings"
	"time"

	"codeberg.org/go-pdf/fpdf"
	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgpdf"

	"rockerwright/sim/quantity"
)

// writeSVG writes a scene with one <g> a group, its name as id; as part of a page, where
// several scenes may stand, as class.
func (s scene) writeSVG(w io.Writer, f Format) error {
	var b bytes.Buffer
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s" role="img" font-family="%[3]s"`,
		short(s.width), short(s.height), families)
	if s.samples != "" {
		fmt.Fprintf(&b, ` data-samples="%s"`, s.samples)
	}
	name := "id"
	if f == inPage {
		name = "class"
		fmt.Fprintf(&b, " aria-label=\"%s\">\n", escaped(s.alt))
	} else {
		fmt.Fprintf(&b, ">\n<title>%s</title>\n<desc>%s</desc>\n", escaped(s.title), escaped(s.alt))
	}
	b.WriteString("<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n")
	for _, g := range s.groups {
		fmt.Fprintf(&b, "<g %s=\"%s\"", name, escaped(g.name))
		if g.moves != "" {
			fmt.Fprintf(&b, ` data-moves="%s"`, g.moves)
		}
		if g.still {
			b.WriteString(` data-still=""`)
		}
		b.WriteString(">\n")
		for _, shape := range g.shapes {
			shape.element(&b, s.height)
		}
		b.WriteString("</g>\n")
	}
	b.WriteString("</svg>\n")
	_, err := w.Write(b.Bytes())
	return err
}

// element writes the shape, turning y down from the height of the paper.
func (e shape) element(b *bytes.Buffer, height float64) {
	at := func(p r2.Vec) (x, y string) { return short(p.X), short(height - p.Y) }
	fill, style := cmp.Or(hex(e.fill), "none"), ""
	if e.colour.A > 0 {
		style = fmt.Sprintf(` stroke="%s" stroke-width="%s" stroke-linecap="round" stroke-linejoin="round"`, hex(e.colour), short(e.width))
		if len(e.dash) > 0 {
			style += fmt.Sprintf(` stroke-dasharray="%s"`, strings.Trim(fmt.Sprint(e.dash), "[]"))
		}
	}
	switch {
	case e.text != "":
		x, y := at(e.points[0])
		fmt.Fprintf(b, `<text x="%s" y="%s" font-size="%s" text-anchor="%s" fill="%s"%s>%s</text>`+"\n",
			x, y, short(e.size), [...]string{"start", "middle", "end"}[e.align], fill, style, escaped(e.text))
	case e.radius > 0:
		x, y := at(e.points[0])
		fmt.Fprintf(b, `<circle cx="%s" cy="%s" r="%s" fill="%s"%s/>`+"\n", x, y, short(e.radius), fill, style)
	default:
		var d strings.Builder
		verb := "M"
		for _, p := range e.points {
			x, y := at(p)
			d.WriteString(verb + x + " " + y)
			verb = "L"
		}
		if e.closed {
			d.WriteString("Z")
		}
		fmt.Fprintf(b, `<path d="%s" fill="%s"%s/>`+"\n", d.String(), fill, style)
	}
}

// short writes a number of mm to a hundredth.
func short(x float64) string { return quantity.Decimal(x, 2) }

// hex returns a colour as SVG has it, "" for one that draws nothing.
func hex(c color.RGBA) string {
	if c.A == 0 {
		return ""
	}
	return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B)
}

// escaped returns a text as it stands inside XML.
func escaped(text string) string {
	var b strings.Builder
	_ = xml.EscapeText(&b, []byte(text)) // a Builder takes all
	return b.String()
}

// A pdfPage is a page whose texts come out as they were written: the library's fonts
// have the letters of code page 1252, western Europe's; any other is a point.
type pdfPage struct {
	*vgpdf.Canvas
	encode func(text string) string
}

// FillString writes a text.
func (p pdfPage) FillString(face font.Face, at vg.Point, text string) {
	p.Canvas.FillString(face, at, p.encode(text))
}

// The plotting library makes its own document and hands none out, so what keeps the time of day out of it
// is set for the whole process; before anything is drawn, for pages may be drawn at once.
func init() {
	none := time.Unix(0, 0).UTC()
	fpdf.SetDefaultCreationDate(none)
	fpdf.SetDefaultModificationDate(none)
	fpdf.SetDefaultCatalogSort(true)
}

// newPDF returns a page whose bytes do not depend on the time of day.
func newPDF(width, height vg.Length) pdfPage {
	canvas := vgpdf.New(width, height)
	canvas.EmbedFonts(true)
	return pdfPage{canvas, fpdf.New("", "", "", "").UnicodeTranslatorFromDescriptor("cp1252")}
}

// writePDF writes a scene as one page of its size.
func (s scene) writePDF(w io.Writer) error {
	canvas := newPDF(mm(s.width), mm(s.height))
	page := draw.New(canvas)
	for _, g := range s.groups {
		for _, e := range g.shapes {
			paint(page, e)
		}
	}
	_, err := canvas.WriteTo(w)
	return err
}

func mm(x float64) vg.Length { return vg.Length(x) * vg.Millimeter }

func point(p r2.Vec) vg.Point { return vg.Point{X: mm(p.X), Y: mm(p.Y)} }

// paint draws one shape.
func paint(page draw.Canvas, e shape) {
	if e.text != "" {
		style := text.Style{Color: e.fill, Font: typeface(mm(e.size)), YAlign: draw.YBottom, Handler: plot.DefaultTextHandler,
			XAlign: [...]text.XAlignment{draw.XLeft, draw.XCenter, draw.XRight}[e.align]}
		at := point(e.points[0])
		at.Y -= mm(e.size * 0.22) // the place of a text is on its base line
		page.FillText(style, at, e.text)
		return
	}
	var outline vg.Path
	for i, p := range e.points {
		switch at := point(p); {
		case e.radius > 0:
			outline.Move(vg.Point{X: at.X + mm(e.radius), Y: at.Y})
			outline.Arc(at, mm(e.radius), 0, 2*math.Pi)
		case i == 0:
			outline.Move(at)
		default:
			outline.Line(at)
		}
	}
	if e.closed || e.radius > 0 {
		outline.Close()
	}
	if e.fill.A > 0 {
		page.SetColor(e.fill)
		page.Fill(outline)
	}
	if e.colour.A > 0 {
		page.SetColor(e.colour)
		page.SetLineWidth(mm(e.width))
		var dash []vg.Length
		for _, d := range e.dash {
			dash = append(dash, mm(d))
		}
		page.SetLineDash(dash, 0)
		page.Stroke(outline)
	}
}
