package scene

import (
	"fmt"
	"io"
	"slices"
)

// A Format is a kind of picture file.
type Format string

const (
	SVG Format = "svg"
	PDF Format = "pdf"
)

// A Picture is a scene that is laid out when it is drawn.
type Picture struct {
	Name string // of its file, without the ending
	Alt  string // what it shows, with its numbers
	Lay  func() (Scene, error)
}

// Picture returns the scene as a picture.
func (s Scene) Picture(name string) Picture {
	return Picture{name, s.Alt, func() (Scene, error) { return s, nil }}
}

// Draw writes the picture. The same picture gives the same bytes. The error is that of laying it out, that of
// w, or one that says that there is no such format.
func (p Picture) Draw(w io.Writer, f Format) error {
	if f != SVG && f != PDF {
		return fmt.Errorf("scene: there is no format %q", f)
	}
	s, err := p.Lay()
	if err != nil {
		return err
	}
	if f == PDF {
		return WritePDF(w, s.Title, s)
	}
	return s.WriteSVG(w)
}

// InPage writes the picture as an svg element of an HTML page: it says what it shows in aria-label, has no ids
// that two pictures could share and no style of its own, which a page may forbid.
func (p Picture) InPage(w io.Writer) error {
	s, err := p.Lay()
	if err != nil {
		return err
	}
	return s.write(w, true)
}

// Cut returns a text of at most n characters, without what a page cannot show.
func Cut(text string, n int) string {
	kept := slices.DeleteFunc([]rune(text), func(r rune) bool {
		return r < ' ' || r == 0x7f || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069
	})
	if len(kept) > n {
		kept = append(kept[:n-1], '…')
	}
	return string(kept)
}
