// Package papers makes the files of a layout: which drawings and cards there are of a piece, what
// each is called and on which paper it is printed, what comes first.
package papers

import (
	"archive/zip"
	"bytes"
	"cmp"
	"fmt"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"time"

	"rockerwright/cmd/internal/design"
	"rockerwright/plots/pattern"
	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// A File is one file of a layout, made but not yet written.
type File struct {
	Name  string // within the folder of the layout, with slashes
	Data  []byte
	Pages int // zero of what is not printed
}

// ours is what the files of a layout are called, and the folder in it.
var ours = regexp.MustCompile(`^(\d+ [^/]*\.pdf|cut list\.csv|for cutting(/[^/]*\.(dxf|svg))?)$`)

// Ours reports whether a name within the folder of a layout, with slashes, is one that a layout writes.
func Ours(name string) bool { return ours.MatchString(name) }

// Of lays a design out on the paper asked for, "" for that of the design or the sheet that goes with its units, and
// returns the files, those to be printed first. The error is the design's, explained, or of --paper.
func Of(f *design.File, asked string, options layout.Options) (layout.Layout, []File, error) {
	s := set{source: filepath.Base(f.Name), asked: asked != ""}
	usual := map[quantity.System]string{quantity.Inch: "letter", quantity.Metric: "A4"}[f.Design.Units]
	var err error
	if s.paper, err = pattern.PaperNamed(cmp.Or(asked, f.Design.Shop.Paper, usual)); err != nil {
		return layout.Layout{}, nil, f.Explain(s.unfit(err, ""))
	}
	if s.sheet = s.paper; s.paper.Name != "letter" && s.paper.Name != "A4" {
		if s.sheet, err = pattern.PaperNamed(usual); err != nil {
			panic(err) // it is in the table
		}
	}
	l, err := layout.Of(f.Design, options)
	if err != nil {
		return l, nil, f.Explain(err)
	}
	s.l, s.title = l, cmp.Or(l.Design.Title, "Untitled "+l.Design.Kind.String())
	if len(f.Changes) > 0 {
		s.source += ", changed"
	}
	s.all()
	if s.err != nil {
		return l, nil, f.Explain(s.err)
	}
	slices.SortStableFunc(s.made, func(a, b File) int { // what is printed, the list, what is cut
		return cmp.Compare(strings.Count(a.Name, "/"), strings.Count(b.Name, "/"))
	})
	return l, s.made, nil
}

// Sizes names the papers that a layout is printed on.
func Sizes() []string {
	var names []string
	for _, p := range pattern.Papers() {
		names = append(names, p.Name)
	}
	return names
}

// Zip returns the layout of a design as a zip archive of its files, dated by the day: the same design
// gives the same bytes on the same day. The error is that of [Of], or of a day that a zip cannot say.
func Zip(f *design.File, now time.Time) ([]byte, error) {
	day := time.Date(now.Year(), now.Month(), now.Day(), 0, 0, 0, 0, now.Location())
	if year := day.Year(); year < 1980 || year > 2105 { // a zip counts from 1980, and in 32 bits of seconds until 2106
		return nil, fmt.Errorf("the files in a zip are dated 1980 to 2105, and by SOURCE_DATE_EPOCH or the clock "+
			"it is %d: set that right, and try again", year)
	}
	_, files, err := Of(f, "", layout.Options{})
	if err != nil {
		return nil, err
	}
	var packed bytes.Buffer
	archive := zip.NewWriter(&packed)
	for _, file := range files {
		w, err := archive.CreateHeader(&zip.FileHeader{Name: file.Name, Method: zip.Deflate, Modified: day})
		if err == nil {
			_, err = w.Write(file.Data)
		}
		if err != nil {
			return nil, fmt.Errorf("%s does not go into the zip: %w", file.Name, err)
		}
	}
	if err := archive.Close(); err != nil {
		return nil, fmt.Errorf("the zip cannot be closed: %w", err)
	}
	return packed.Bytes(), nil
}
