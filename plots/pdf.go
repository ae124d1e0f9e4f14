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

// newPDF returns a page whose bytes do not depend on the time of day.
func newPDF(width, height vg.Length) pdfPage {
	none := time.Unix(0, 0).UTC()
	fpdf.SetDefaultCreationDate(none)
	fpdf.SetDefaultModificationDate(none)
	fpdf.SetDefaultCatalogSort(true)
	canvas := vgpdf.New(width, height)
	canvas.EmbedFonts(true)
	return pdfPage{canvas, fpdf.New("", "", "", "").UnicodeTranslatorFromDescriptor("cp1252")}
}
