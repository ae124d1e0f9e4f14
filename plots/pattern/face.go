package pattern

import (
	"strings"
	"unicode"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
)

// The heights of capitals, m.
const (
	lettering = 3.5e-3 // the smallest that is read at a bench
	heading   = 5e-3
)

// widest is where a text is cut, m.
const widest = 0.14

// A face measures and fits texts by the height of their capitals, m.
type face struct{ *scene.Face }

func newFace() face { return face{scene.NewFace()} }

// width returns the width of a text whose capitals are so high, m.
func (f face) width(text string, height float64) float64 {
	return f.Width(text) * height / scene.Capital
}

// fit returns a text on one line, without signs that do not print, cut with "..." to a width.
func (f face) fit(text string, height, width float64) string {
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
	if f.width(text, height) <= width {
		return text
	}
	used := f.width("...", height)
	for i, letter := range letters { // these fonts have no kerning as they are set here
		if used += f.width(string(letter), height); used > width {
			return strings.TrimSpace(string(letters[:i])) + "..."
		}
	}
	return text
}

// wrapped returns a text in lines of at most a width; a no-break space holds two words together.
func (f face) wrapped(text string, height, width float64) []string {
	var lines []string
	line := ""
	for _, word := range strings.Split(text, " ") {
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && f.width(longer, height) > width {
			lines = append(lines, line)
			longer = word
		}
		line = longer
	}
	return append(lines, line)
}

// lettered returns a text on a layer, its base line's middle at a point. No text is no shape.
func (f face) lettered(layer Layer, text string, at r2.Vec, angle float64) []shape {
	text = f.fit(text, lettering, widest)
	if text == "" {
		return nil
	}
	width := f.width(text, lettering)
	return []shape{{layer: layer, text: text, at: at, height: lettering, width: width, angle: angle}}
}
