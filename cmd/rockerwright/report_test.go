package main

import (
	"bytes"
	"encoding/xml"
	"errors"
	"html"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"rockerwright/cmd/internal/design"
	"rockerwright/plots"
	"rockerwright/sim/trial"
)

// reports writes a report of each starting design, of a class and of a hostile design into
// a folder, and returns them by name.
func reports(t *testing.T) map[string]string {
	t.Helper()
	folder := t.TempDir()
	paths := map[string]string{"hostile": hostile(t, folder)}
	for _, kind := range design.Starts() {
		paths[kind] = startIn(t, folder, kind)
	}
	pages := map[string]string{}
	for name, path := range paths {
		to := filepath.Join(folder, name+".html")
		called(t, "report", path, "-o", to)
		pages[name] = read(t, to)
	}
	to := filepath.Join(folder, "class.html")
	called(t, "report", paths["chair"], paths["child"], "-o", to)
	pages["class"] = read(t, to)
	return pages
}

// TestReportIsWhole reads each report as a stranger would: it is well-formed, its headings
// are in order, its ids its own, its tables have captions and heads, it names no other
// place, and is as small as was promised.
func TestReportIsWhole(t *testing.T) {
	for name, page := range reports(t) {
		if len(page) > 700_000 {
			t.Errorf("%s: %d bytes, want 700,000 or fewer", name, len(page))
		}
		outline(t, name, page)
		text := strings.ToLower(regexp.MustCompile(`(?s)<style>.*?</style>|<script>.*?</script>|<[^>]*>`).ReplaceAllString(page, " "))
		for _, never := range []string{`\bsafe`, `\bunsafe`, `\bsecure`, `\bfast\b`, `\bnan\b`, `\binf\b`, `%!`} {
			if found := regexp.MustCompile(never).FindString(text); found != "" {
				t.Errorf("%s: it says %q", name, found)
			}
		}
	}
}

// forbidden are attributes that fetch, go somewhere, style or run.
var forbidden = regexp.MustCompile(`^(href|src|srcset|action|style|on\w+)$`)

// outline walks through the elements of a page.
func outline(t *testing.T, name, page string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(page))
	d.Strict, d.AutoClose, d.Entity = false, []string{"meta", "br", "input", "img"}, xml.HTMLEntity
	level, ids, tables, captions, scripts := 0, map[string]bool{}, 0, 0, 0
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		e, is := token.(xml.StartElement)
		if !is {
			continue
		}
		switch tag := e.Name.Local; {
		case len(tag) == 2 && tag[0] == 'h' && tag[1] >= '1' && tag[1] <= '6':
			if now := int(tag[1] - '0'); now > level+1 {
				t.Errorf("%s: a heading of level %d stands under one of level %d", name, now, level)
			} else {
				level = now
			}
		case tag == "table":
			tables++
		case tag == "caption":
			captions++
		case tag == "script":
			scripts++
		case tag == "img" || tag == "iframe" || tag == "link" || tag == "a":
			t.Errorf("%s: there is an element %s", name, tag)
		}
		for _, a := range e.Attr {
			if forbidden.MatchString(a.Name.Local) && a.Name.Space == "" {
				t.Errorf("%s: an element %s has an attribute %s", name, e.Name.Local, a.Name.Local)
			}
			if a.Name.Local == "id" && ids[a.Value] {
				t.Errorf("%s: the id %s is there twice", name, a.Value)
			} else if a.Name.Local == "id" {
				ids[a.Value] = true
			}
		}
	}
	if tables != captions || tables == 0 || scripts != 1 {
		t.Errorf("%s: %d tables, %d captions, %d scripts", name, tables, captions, scripts)
	}
}

// TestDesignInReport takes the design out of each report: it is the file, letter by letter,
// or with the changes in their places, the same design.
func TestDesignInReport(t *testing.T) {
	folder := t.TempDir()
	inside := regexp.MustCompile(`(?s)<pre id="design" dir="ltr">\n(.*?)</pre>`)
	takenOut := func(path string) string {
		found := inside.FindStringSubmatch(read(t, path))
		if found == nil {
			t.Fatalf("%s has no design", path)
		}
		return html.UnescapeString(found[1])
	}
	for name, text := range map[string]string{
		"plain":   read(t, startIn(t, folder, "chair")),
		"hostile": read(t, hostile(t, folder)),
		"windows": strings.ReplaceAll(read(t, startIn(t, folder, "horse")), "\n", "\r\n"),
		"blank":   "\n\n" + read(t, startIn(t, folder, "cradle")),
	} {
		path, to := filepath.Join(folder, name+".toml"), filepath.Join(folder, name+".html")
		overwrite(t, path, text)
		called(t, "report", path, "-o", to)
		if got := takenOut(to); got != text {
			t.Errorf("%s: %d characters came out, %d went in", name, len(got), len(text))
		}
	}
	changed := []string{filepath.Join(folder, "plain.toml"), "rocker.tail=20-1/2", "floor.surface=boards", "sitter.weight=95 kg"}
	to, again := filepath.Join(folder, "changed.html"), filepath.Join(folder, "again.toml")
	called(t, append([]string{"report", "-o", to}, changed...)...)
	overwrite(t, again, takenOut(to))
	if want, got := called(t, append([]string{"check", "--json"}, changed...)...), called(t, "check", "--json", again); got != want {
		t.Error("the design in the report of a changed design is another one")
	}
}

// TestReportIsKept: a report is written whole or not at all, over nothing unless told so,
// and never over a design.
func TestReportIsKept(t *testing.T) {
	folder := t.TempDir()
	t.Chdir(folder)
	path := startIn(t, folder, "chair")
	was := read(t, path)
	if out := called(t, "report", path); !strings.Contains(out, "Wrote chair-report.html.") {
		t.Errorf("it says %q", out)
	}
	for _, c := range []struct {
		args []string
		says string
	}{
		{[]string{"report", path}, "is already there and was left as it is"},
		{[]string{"report", path, "-o", path, "--replace"}, "is the design itself"},
		{[]string{"report", path, "-o", "no/such/folder.html"}, "cannot be written"},
		{[]string{"report", path, "rocker.radius=38,40,42"}, "two side by side; 3 were named"},
		{[]string{"report", path, path, "--text"}, "a letter tells of one"},
		{[]string{"report", "nothing.toml"}, "there is no such file"},
	} {
		var out, errs bytes.Buffer
		if code := run(c.args, &out, &errs); code != noAnswer || !strings.Contains(errs.String(), c.says) {
			t.Errorf("%v: exit %d, %q; want it to say %q", c.args, code, &errs, c.says)
		}
	}
	called(t, "report", path, "--replace")
	if read(t, path) != was {
		t.Error("the design was changed")
	}
	entries, err := os.ReadDir(folder)
	if err != nil || len(entries) != 2 {
		t.Errorf("%v, %v are left in the folder; want the design and its report", entries, err)
	}
}

// TestReportSameTwice: with the date given, the same design gives the same file.
func TestReportSameTwice(t *testing.T) {
	t.Setenv("SOURCE_DATE_EPOCH", "1000000000")
	folder := t.TempDir()
	var pages []string
	for _, name := range []string{"a.html", "b.html"} {
		called(t, "report", "-o", filepath.Join(folder, name))
		pages = append(pages, read(t, filepath.Join(folder, name)))
	}
	if pages[0] != pages[1] || !strings.Contains(pages[0], "9 September 2001") {
		t.Error("two reports of one design on one day differ, or have another date")
	}
	t.Setenv("SOURCE_DATE_EPOCH", "soon")
	var out, errs bytes.Buffer
	if code := run([]string{"report", "-o", filepath.Join(folder, "c.html")}, &out, &errs); code != noAnswer ||
		!strings.Contains(errs.String(), "SOURCE_DATE_EPOCH is a number of seconds") {
		t.Errorf("exit %d with no date, %s", code, &errs)
	}
}

// TestGoldenPictures holds the pictures of the starting designs as they were looked at.
func TestGoldenPictures(t *testing.T) {
	for _, kind := range design.Starts() {
		text, _ := design.Start(kind)
		f, err := design.Parse(kind+".toml", text)
		if err != nil {
			t.Fatal(err)
		}
		rocking, err := trial.Rock(f.Design, trial.RockOptions{Duration: 12})
		if err != nil {
			t.Fatal(err)
		}
		for _, picture := range []plots.Picture{
			plots.RockingView(rocking), plots.RightingArm(rocking.Report), plots.TimeOfARock(rocking.Report),
		} {
			var svg bytes.Buffer
			if err := picture.Draw(&svg, plots.SVG); err != nil {
				t.Fatal(err)
			}
			path := filepath.Join("testdata", "pictures", kind+", "+picture.Name+".svg")
			if *update {
				overwrite(t, path, svg.String())
				continue
			}
			where := ""
			if picture.Name == "rocking" {
				where = unlikeDrawn(t, svg.String(), read(t, path), nearInView)
			} else {
				where = unlikeChart(t, svg.String(), read(t, path))
			}
			if where != "" {
				t.Errorf("%s is not what the program draws now: look at it, then -update: %s", path, where)
			}
		}
	}
}

// BenchmarkReport writes the report of the built-in chair.
func BenchmarkReport(b *testing.B) {
	to := filepath.Join(b.TempDir(), "chair.html")
	for b.Loop() {
		start := time.Now()
		if code := run([]string{"report", "-o", to, "--replace"}, io.Discard, io.Discard); code != allHold {
			b.Fatalf("exit %d", code)
		}
		if took := time.Since(start); took > 600*time.Millisecond {
			b.Logf("%v, want 600 ms or less", took)
		}
	}
}

// TestReportTellsWhatHasNoAnswer: what a report asks besides, and gets no answer to, it says with the reason.
func TestReportTellsWhatHasNoAnswer(t *testing.T) {
	folder := t.TempDir()
	to := filepath.Join(folder, "x.html")
	text := designText(t, "check-measured/old.toml") + "\n[target]\none_rock = 2\n"
	overwrite(t, filepath.Join(folder, "x.toml"), text)
	called(t, "report", filepath.Join(folder, "x.toml"), "-o", to)
	page := read(t, to)
	for _, question := range []string{"What radius for another sitter", "The rocker for what it aims for"} {
		_, after, found := strings.Cut(page, question)
		if after = after[:min(len(after), 600)]; !found || !strings.Contains(after, "No answer: its rockers are measured, not drawn") {
			t.Errorf("%q has no answer, and the report does not say why: %.300s", question, after)
		}
	}
}
