package page

import (
	"bytes"
	"context"
	"encoding/json"
	"math"
	"strings"
	"testing"
	"time"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/papers"
)

// TestLike holds that the changes of a likeness make the time of a rock what it was, to
// the step in which a radius is set.
func TestLike(t *testing.T) {
	h := chairSite(t).handler([]string{ourHost})
	old := work(t, "chair")
	taller := work(t, "chair", "sitter.height=6 ft 4 in", "seat.front=18")
	var found likeness
	like := asked(t, h, "/like", ask{Work: taller, Before: &old, Way: "same time"})
	if err := json.Unmarshal(like.Body.Bytes(), &found); err != nil || !found.Found {
		t.Fatalf("%v %+v", err, found)
	}
	time := func(w Work) float64 {
		f, r, bad := checked(w, true)
		if bad != nil {
			t.Fatal(bad, f)
		}
		return r.Loads[1].Balance.Period
	}
	want, before, after := time(old), time(taller), 0.0
	taller.Changes = append(taller.Changes, found.Changes...)
	const within = 0.02 // 1/8 in of radius is some 0.01 s
	if after = time(taller); math.Abs(after-want) > within || math.Abs(before-want) < within {
		t.Errorf("one rock takes %.3f s, %.3f s before the change; want %.3f s", after, before, want)
	}
}

// TestFileKeepsComments holds that the file that is handed over is the maker's own.
func TestFileKeepsComments(t *testing.T) {
	h := chairSite(t).handler([]string{ourHost})
	w := work(t, "chair", "rocker.tail=20-1/2")
	var saved Work
	if err := json.Unmarshal(asked(t, h, "/file", ask{Work: w}).Body.Bytes(), &saved); err != nil {
		t.Fatal(err)
	}
	want := strings.Replace(w.Text, "tail   = 24              #", "tail   = \"20-1/2\"        #", 1)
	if saved.Text != want || want == w.Text {
		t.Errorf("the file is\n%s", saved.Text)
	}
}

// TestReport holds that the report is the whole one, with the changes in its file.
func TestReport(t *testing.T) {
	var made document
	if err := json.Unmarshal(asked(t, chairSite(t).handler([]string{ourHost}), "/report",
		ask{Work: work(t, "chair", "rocker.tail=20-1/2")}).Body.Bytes(), &made); err != nil {
		t.Fatal(err)
	}
	if made.Name != "chair-report.html" || !strings.Contains(made.Text, "20-1/2&#34;") || !strings.HasSuffix(made.Text, "</html>\n") {
		t.Errorf("%s: %.200s", made.Name, made.Text)
	}
}

// TestPatterns holds that the patterns come through the page as the archive of the layout of that day, and that
// the page is told of a day that no archive can say.
func TestPatterns(t *testing.T) {
	t.Setenv("SOURCE_DATE_EPOCH", "1000000000")
	site, chair := chairSite(t).handler([]string{ourHost}), work(t, "chair")
	var made document
	if err := json.Unmarshal(asked(t, site, "/patterns", ask{Work: chair}).Body.Bytes(), &made); err != nil {
		t.Fatal(err)
	}
	f, err := chair.file()
	if err != nil {
		t.Fatal(err)
	}
	want, err := papers.Zip(f, time.Unix(1000000000, 0).UTC())
	if err != nil || made.Name != "chair-layout.zip" || !bytes.Equal(made.Data, want) {
		t.Errorf("%s of %d bytes, want %d, %v", made.Name, len(made.Data), len(want), err)
	}
	for epoch, says := range map[string]string{"1": "it is 1970", "soon": "SOURCE_DATE_EPOCH is a number of seconds"} {
		t.Setenv("SOURCE_DATE_EPOCH", epoch)
		if w := asked(t, site, "/patterns", ask{Work: chair}); !strings.Contains(w.Body.String(), says) {
			t.Errorf("%s: %s, want %s", epoch, w.Body, says)
		}
	}
}

// TestDropped holds that work whose reader has gone is not begun, and that a full line is
// said to be full.
func TestDropped(t *testing.T) {
	d := queue{slots: make(chan struct{}, 1), line: make(chan struct{}, 1)}
	d.slots <- struct{}{}
	ctx, gone := context.WithCancel(context.Background())
	ended := make(chan error)
	go func() {
		_, err := d.work(ctx, func() (any, error) { t.Error("it was worked on"); return nil, nil })
		ended <- err
	}()
	for len(d.line) == 0 {
		time.Sleep(time.Millisecond)
	}
	if _, err := d.work(context.Background(), func() (any, error) { return nil, nil }); err != errBusy {
		t.Errorf("a full line says %v", err)
	}
	gone()
	if err := <-ended; err != context.Canceled {
		t.Errorf("%v, want that its reader has gone", err)
	}
}

// TestTextsThroughThePage: a title and a name that the page is given come out of the file, the units and the picture's
// words as they went in, letter by letter.
func TestTextsThroughThePage(t *testing.T) {
	h := chairSite(t).handler([]string{ourHost})
	for _, text := range []string{`He said "hi"`, `back\slash \" \n`, "Ludwigs Stühlchen — 椅子 🪑", "<b>&amp;</b>", "# = [x]"} {
		w := work(t, "chair", "title="+text, "sitter.name="+text)
		for _, path := range []string{"/file", "/units"} {
			var saved Work
			if err := json.Unmarshal(asked(t, h, path, ask{Work: w, Units: "metric"}).Body.Bytes(), &saved); err != nil {
				t.Fatal(err)
			}
			f, err := design.Parse("x.toml", saved.Text)
			if err != nil {
				t.Errorf("%s of %q cannot be read: %v", path, text, err)
				continue
			}
			for _, change := range saved.Changes {
				key, value, _ := strings.Cut(change, "=")
				if err := f.Set(key, value); err != nil {
					t.Fatal(err)
				}
			}
			if f.Design.Title != text || f.Design.Sitters[0].Name != text {
				t.Errorf("%s of %q: title %q, name %q", path, text, f.Design.Title, f.Design.Sitters[0].Name)
			}
		}
	}
}
