package plots

import (
	"time"

	"codeberg.org/go-pdf/fpdf"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
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
