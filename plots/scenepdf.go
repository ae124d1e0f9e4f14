package plots

import (
	"io"
	"math"
	"time"

	"codeberg.org/go-pdf/fpdf"
	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgpdf"
)

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
