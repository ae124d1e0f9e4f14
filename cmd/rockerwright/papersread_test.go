package main

import (
	"encoding/json"
	"fmt"
	"html"
	"math"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// filled returns words of the table as a pattern for a piece.
func (p *madePiece) filled(words string) string {
	unit, nose, tail := "in", "nose", "tail"
	if p.metric() {
		unit = "mm"
	}
	if p.values["kind"] == "cradle" {
		nose, tail = "right", "left"
	}
	words = strings.NewReplacer("#", "("+told+")", "~", "(?:"+told+")", "{title}", regexp.QuoteMeta(fmt.Sprint(p.values["title"])),
		"{unit}", unit, "{nose}", nose, "{tail}", tail).Replace(words)
	return "(?i)" + words
}

// said reads what a command prints of the design; FILE is the design once more.
func said(name string, more ...string) func(t *testing.T, p *madePiece) string {
	return func(t *testing.T, p *madePiece) string {
		t.Helper()
		args := slices.Clone(more)
		if i := slices.Index(args, "FILE"); i >= 0 {
			args[i] = p.file()
		}
		return p.run(t, name, args...)
	}
}

// inClass reads the class sheet of the design beside itself, without the files that follow.
func inClass(t *testing.T, p *madePiece) string {
	t.Helper()
	sheet := filepath.Join(t.TempDir(), "x.html")
	p.run(t, "report", p.file(), "-o", sheet)
	text, _, _ := strings.Cut(wordsOf(read(t, sheet)), "The design file of")
	return text
}

// inJSON reads title, curve and falls out of check's numbers for a program; as it is put together the seat falls by so much
// less as the piece is tilted at rest.
func inJSON(t *testing.T, p *madePiece) string {
	t.Helper()
	var r struct {
		Design string
		Rocker struct {
			Arcs []struct {
				Radius float64 `json:"radius_m"`
			}
			Nose float64 `json:"nose_m"`
			Tail float64 `json:"tail_m"`
		}
		Loads []struct {
			Name string
			Rest float64  `json:"rest_tilt_deg"`
			Fall *float64 `json:"seat_slope_deg"`
		}
	}
	if err := json.Unmarshal([]byte(p.run(t, "check", "--json")), &r); err != nil {
		t.Fatal(err)
	}
	text := fmt.Sprintf("%s: radius %.6f, nose %.6f, tail %.6f.", r.Design, r.Rocker.Arcs[0].Radius/p.unit(),
		r.Rocker.Nose/p.unit(), r.Rocker.Tail/p.unit())
	for _, l := range r.Loads {
		who := "empty"
		switch {
		case l.Name != who && p.hand.seated:
			who = "seated"
		case l.Name != who:
			who = l.Name
		}
		if l.Fall != nil {
			text += fmt.Sprintf(" %s falls %.4f, put together falls %.4f.", who, *l.Fall, *l.Fall-l.Rest)
		}
	}
	return text
}

var tags = regexp.MustCompile(`(?s)<(?:script|style)[^>]*>.*?</(?:script|style)>|<[^>]*>`)

// wordsOf returns the words of a page.
func wordsOf(page string) string { return flat(html.UnescapeString(tags.ReplaceAllString(page, " "))) }

// typedThere is where a report keeps the design file.
var typedThere = regexp.MustCompile(`(?s)<pre id="design"[^>]*>(.*?)</pre>`)

func inReport(_ *testing.T, p *madePiece) string {
	return wordsOf(typedThere.ReplaceAllString(p.report, ""))
}

func fileInReport(t *testing.T, p *madePiece) string {
	t.Helper()
	m := typedThere.FindStringSubmatch(p.report)
	if m == nil {
		t.Fatal("there is none")
	}
	return typedIn(t, html.UnescapeString(m[1])).told()
}

// onPage reads parts of the answer of the live page.
func onPage(parts ...string) func(t *testing.T, p *madePiece) string {
	return func(_ *testing.T, p *madePiece) string {
		text := ""
		for _, part := range parts {
			text += fmt.Sprint(p.seen[strings.ToLower(part)]) + " "
		}
		return wordsOf(text)
	}
}

func fileOfPage(t *testing.T, p *madePiece) string {
	t.Helper()
	return typedIn(t, p.saved).told()
}

func picturedInReport(_ *testing.T, p *madePiece) string { return pictured(p.report) }
func picturedOnPage(_ *testing.T, p *madePiece) string {
	return pictured(fmt.Sprint(p.seen["picture"]))
}

var (
	drawnPiece = regexp.MustCompile(`<g class="piece-(empty|seated)"[^>]*>\s*<path d="M(\S+) (\S+?)L(\S+) (\S+?)"[^>]*stroke`)
)

// pictured measures how far the seat falls back in a picture from the side: it is the first line of the piece, from
// where back and seat meet to its front edge, y down.
func pictured(svg string) string {
	text := ""
	for _, m := range drawnPiece.FindAllStringSubmatch(svg, -1) {
		fall := math.Atan2(amount(m[3])-amount(m[5]), amount(m[4])-amount(m[2]))
		text += fmt.Sprintf("%s, drawn falling %.4f. ", m[1], fall*180/math.Pi)
	}
	return text
}

// onCard reads a page of the cards, counted from 0, by poppler.
func onCard(file string, number int) func(t *testing.T, p *madePiece) string {
	return func(t *testing.T, p *madePiece) string {
		t.Helper()
		pages := strings.Split(reader(t, "pdftotext", "-layout", filepath.Join(p.folder, file), "-"), "\f")
		if len(pages) <= number {
			t.Fatalf("%s has %d pages", file, len(pages))
		}
		return flat(pages[number])
	}
}

// inWords reads a file of the layout by mupdf, which reads turned words whole.
func inWords(glob string) func(t *testing.T, p *madePiece) string {
	return func(t *testing.T, p *madePiece) string {
		t.Helper()
		return flat(reader(t, "mutool", "draw", "-q", "-N", "-F", "txt", p.only(t, glob)))
	}
}

// only returns the path of the one file of the layout by that name.
func (p *madePiece) only(t *testing.T, glob string) string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(p.folder, glob))
	if err != nil || len(files) != 1 {
		t.Fatalf("%s: %q are %q", p.name, glob, files)
	}
	return files[0]
}
