package plots

import (
	"fmt"
	"io"

	"rockerwright/sim/piece"
)

// A Format is a kind of picture file.
type Format string

const (
	SVG Format = "svg"
	PDF Format = "pdf"
)

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

// Pictures returns all pictures of a report.
func Pictures(r piece.Report) []Picture {
	return []Picture{SideView(r), RightingArm(r), TimeOfARock(r)}
}
