// Package report writes what a maker keeps with the piece: one HTML file that needs no
// network and no script, and prints well. Its sentences and tables are those of package
// words, its pictures those of package plots; it computes nothing.
//
// The first page is for the maker, the last one, alone on its sheet, for the owner. The
// whole design file stands before it, in the element with the id "design".
package report

import (
	"bytes"
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"fmt"
	"html"
	"html/template"
	"io"
	"os"
	"strconv"
	"strings"
	"time"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/words"
	"rockerwright/plots/scene"
	"rockerwright/plots/view"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/size"
	"rockerwright/sim/trial"
)

// A Subject is a design and all that was found out about it.
type Subject struct {
	Text    string // the design file, with the changes of this report in it
	Answer  trial.Answer
	Rocking *trial.Rocking // nil where nothing rests on which it could rock
	Making  words.Making
	More    []sheet.Block // of other questions about the same design: what if, sizes
}

// About gathers what a report says of a design. The error is the design's, explained.
func About(f *design.File, m words.Making) (Subject, error) {
	checked, err := trial.Check(f.Design)
	if err != nil {
		return Subject{}, f.Explain(err)
	}
	text := f.Text
	if len(f.Typed) > 0 {
		if text, err = f.Saved(f.Design); err != nil {
			return Subject{}, err
		}
	}
	m.Changes = f.Changes
	s := Subject{Text: text, Answer: checked, Making: m, More: alsoAsked(f)}
	if l := shown(checked.Report); l != nil {
		rocking, err := trial.Rock(f.Design, trial.RockOptions{Load: l.Name, Duration: shownTime})
		if err != nil {
			return Subject{}, f.Explain(err)
		}
		s.Rocking = &rocking
	}
	return s, nil
}

// sitterHeights are for whom else a report says which radius, m: 5 ft to 6 ft 4 in.
var sitterHeights = []float64{1.524, 1.6256, 1.7272, 1.8288, 1.9304}

// alsoAsked returns what a report tells besides what check does: what each measure does, what radius other sitters
// would want, and what rocker meets the design's target; of a question that has no answer, why not.
func alsoAsked(f *design.File) []sheet.Block {
	var blocks []sheet.Block
	answer := func(question string, answered func() []sheet.Block, err error) {
		if err != nil {
			blocks = append(blocks, words.Unanswered(question, err))
			return
		}
		blocks = append(blocks, answered()...)
	}
	table, err := size.WhatIf(f.Design)
	answer("What each measure does", func() []sheet.Block { return words.WhatIfBlocks(table) }, err)
	list, err := size.ForSitters(f.Design, sitterHeights)
	answer("What radius for another sitter", func() []sheet.Block { return words.ForSitters(f.Design, list) }, err)
	if f.Design.Target.Asks() {
		found, err := size.Solve(f.Design, 0)
		answer("The rocker for what it aims for", func() []sheet.Block { return words.SizedBlocks(f.Design, found) }, err)
	}
	return blocks
}

// shownTime is how long the motion is that a report shows, s.
const shownTime = 12

// shown returns the load that rocks in a report: the owner's first that moves, else the
// piece alone; nil where neither does.
func shown(r check.Report) *check.Load {
	for i := range r.Loads {
		if l := &r.Loads[i]; !l.Empty && l.Role == piece.Owner && l.Moves() {
			return l
		}
	}
	if l := &r.Loads[0]; l.Upright() {
		return l
	}
	return nil
}

// Write writes the report of one design.
func Write(w io.Writer, s Subject) error {
	k := words.Keep(s.Answer, s.Rocking, s.Making, s.More)
	return write(w, "report", struct {
		words.Kept
		Subject  Subject
		Pictures []scene.Picture
	}{k, s, view.Pictures(s.Answer.Report)})
}

// Class writes two designs side by side on one page, and in words how they differ; their
// design files follow. columns say what sets them apart.
func Class(w io.Writer, columns [2]words.Column, subjects [2]Subject) error {
	for i, s := range subjects {
		columns[i].Report = s.Answer.Balanced
	}
	return write(w, "class", struct {
		words.ClassSheet
		Subjects [2]Subject
	}{words.Class(columns, subjects[0].Making), subjects})
}

// side returns the side view, where it rocks drawn by rocking.
func (s Subject) side(rocking func(trial.Rocking) scene.Picture) scene.Picture {
	if s.Rocking != nil {
		return rocking(*s.Rocking)
	}
	return view.SideView(s.Answer.Report)
}

// Today returns the date of a report: today, or what SOURCE_DATE_EPOCH says, by which the
// same design gives the same file.
func Today() (time.Time, error) {
	epoch := os.Getenv("SOURCE_DATE_EPOCH")
	if epoch == "" {
		return time.Now(), nil
	}
	seconds, err := strconv.ParseInt(epoch, 10, 64)
	if err != nil {
		return time.Time{}, fmt.Errorf("SOURCE_DATE_EPOCH is a number of seconds since 1970; %q is none", epoch)
	}
	return time.Unix(seconds, 0).UTC(), nil
}

//go:embed report.css
var style string

//go:embed page.html
var pageText string

// A figure is a picture with its caption. Where the page is narrower than the picture
// can be read, it can be moved sideways, by the keyboard too.
type figure struct {
	scene.Picture
	Caption string
}

// pages are the templates of a page. It may load nothing and runs no script but its own, which its policy knows by
// their digests; styles and scripts inside a text would be neither.
var pages = template.Must(template.New("").Funcs(template.FuncMap{
	"policy": func() template.HTMLAttr {
		return template.HTMLAttr(fmt.Sprintf(`content="default-src 'none'; style-src %s; script-src %s; `+
			`base-uri 'none'; form-action 'none'"`, digest(style), digest(view.Script)))
	},
	"style":  func() template.CSS { return template.CSS(style) },
	"script": func() template.JS { return template.JS(view.Script) },
	"tab":    func(title string) template.HTML { return "<title>" + sheet.Escaped(title) + "</title>" },
	"text":   sheet.Escaped, "heading": sheet.Heading, "blocks": sheet.HTML,
	"figure": func(p scene.Picture, caption string) figure { return figure{p, caption} },
	"side":   func(s Subject) scene.Picture { return s.side(view.RockingView) },
	"narrow": func(s Subject) scene.Picture { return s.side(view.NarrowRockingView) }, // for half a page
	"svg":    svg, "file": file,
	"titled": func(name string) string { return strings.ToUpper(name[:1]) + name[1:] },
}).Parse(pageText))

// digest returns what a policy calls an inline part by.
func digest(part string) string {
	sum := sha256.Sum256([]byte(part))
	return "'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
}

// svg returns a picture as part of a page.
func svg(picture scene.Picture) (template.HTML, error) {
	var text strings.Builder
	err := picture.InPage(&text)
	return template.HTML(text.String()), err
}

// file returns a design file as it stands, every character of it.
func file(text string) template.HTML {
	text = strings.TrimPrefix(text, "\ufeff")
	return template.HTML(strings.ReplaceAll(html.EscapeString(text), "\r", "&#13;")) // the first line end is not read
}

// write writes a page, whole or not at all.
func write(w io.Writer, name string, data any) error {
	var page bytes.Buffer
	if err := pages.ExecuteTemplate(&page, name, data); err != nil {
		return err
	}
	_, err := page.WriteTo(w)
	return err
}
