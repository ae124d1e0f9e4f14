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

// A Picture is a scene with the name of its file, without the ending.
type Picture struct {
	Name string
	Scene
}

// Draw writes the picture. The same picture gives the same bytes. The error is that of w, or one that says that
// there is no such format.
func (p Picture) Draw(w io.Writer, f Format) error {
	switch f {
	case SVG:
		return p.WriteSVG(w)
	case PDF:
		return WritePDF(w, p.Title, p.Scene)
	}
	return fmt.Errorf("scene: there is no format %q", f)
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
