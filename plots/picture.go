package plots

import (
	"fmt"
	"io"
	"slices"

	"rockerwright/sim/check"
)

// A Format is a kind of picture file.
type Format string

const (
	SVG Format = "svg"
	PDF Format = "pdf"
)

// inPage is an SVG as part of a page: it says what it shows in aria-label, has no ids that
// two pictures could share and no style of its own, which a page may forbid.
const inPage Format = "part of a page"

// A Picture is one drawing of a report.
type Picture struct {
	Name string // of its file, without the ending
	Alt  string // what it shows, with its numbers

	draw func(w io.Writer, f Format) error
}

// Draw writes the picture. The same report gives the same bytes.
func (p Picture) Draw(w io.Writer, f Format) error {
	if f != SVG && f != PDF {
		return fmt.Errorf("plots: there is no format %q", f)
	}
	return p.draw(w, f)
}

// InPage writes the picture as an svg element of an HTML page.
func (p Picture) InPage(w io.Writer) error { return p.draw(w, inPage) }

// Pictures returns all pictures of a report.
func Pictures(r check.Report) []Picture {
	return []Picture{SideView(r), RightingArm(r), TimeOfARock(r)}
}

// cut returns a text of at most n characters, without what a page cannot show.
func cut(text string, n int) string {
	kept := slices.DeleteFunc([]rune(text), func(r rune) bool {
		return r < ' ' || r == 0x7f || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069
	})
	if len(kept) > n {
		kept = append(kept[:n-1], '…')
	}
	return string(kept)
}
