package pattern

import (
	"strings"
	"unicode"

	"codeberg.org/go-pdf/fpdf"
	"gonum.org/v1/gonum/spatial/r2"
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
