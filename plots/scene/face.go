package scene

import (
	"strings"
	"unicode"

	"codeberg.org/go-pdf/fpdf"
)

// A Face measures words as a PDF sets them, in Helvetica.
type Face struct {
	pdf    *fpdf.Fpdf
	encode func(string) string
}

// Capital is the height of the face's capitals, in sizes (Adobe's font metrics say 718 of 1000).
const Capital = 0.718

// NewFace returns the face.
func NewFace() *Face {
	pdf := fpdf.New("P", "pt", "", "")
	pdf.SetFont("Helvetica", "", 1000)
	return &Face{pdf, pdf.UnicodeTranslatorFromDescriptor("cp1252")}
}

// CodePage returns a text in western Europe's code page, 1252, "?" for every letter it lacks.
func (f *Face) CodePage(text string) string {
	var b strings.Builder
	for _, letter := range text {
		switch code := f.encode(string(letter)); {
		case letter == unicode.ReplacementChar, len(code) != 1, code == "." && letter != '.':
			b.WriteByte('?')
		default:
			b.WriteString(code)
		}
	}
	return b.String()
}

// Width returns the width of a text in sizes of its letters.
func (f *Face) Width(text string) float64 { return f.pdf.GetStringWidth(f.CodePage(text)) / 1000 }
