package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"math"
	"net/http"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"rockerwright/cmd/internal/page"
)

// A madePiece is a design of the table and what has been made of it.
type madePiece struct {
	typedFile
	name, folder string // of the design and of its layout
	hand         handPiece
	layout       string         // as printed
	report       string         // the page to keep
	seen         map[string]any // the answer of the live page
	saved        string         // the file that it hands over
}

// makeAll makes what several papers are read from, in a folder of its own. Report and page are asked for a design that
// differs from the one typed, with changes that lead back: what they say must be of the changed one.
func makeAll(t *testing.T) (made []*madePiece) {
	t.Helper()
	ask := livePage(t)
	folder := t.TempDir()
	files, err := filepath.Glob(filepath.Join(testdata, "papers", "*.toml"))
	if err != nil || len(files) < 10 {
		t.Fatalf("%q: %v", files, err)
	}
	for _, file := range files {
		p := &madePiece{typedFile: typedIn(t, read(t, file)), name: strings.TrimSuffix(filepath.Base(file), ".toml")}
		p.hand, p.folder = p.typedFile.hand(), filepath.Join(folder, p.name+"-layout")
		overwrite(t, filepath.Join(folder, p.name+".toml"), p.text)
		p.layout = p.run(t, "layout", "--paper", "roll 36 in")
		other, changes := p.elsewhere(t)
		overwrite(t, filepath.Join(folder, "other.toml"), other)
		kept := filepath.Join(folder, p.name+".html")
		command(t, append([]string{"report", filepath.Join(folder, "other.toml"), "-o", kept}, changes...)...)
		p.report = read(t, kept)
		work := map[string]any{"name": p.name + ".toml", "text": other, "changes": changes}
		p.saved = fmt.Sprint(ask("file", work)["text"])
		work["more"] = true
		p.seen = ask("see", work)
		made = append(made, p)
	}
	return made
}

// file is the path of the design.
func (p *madePiece) file() string { return strings.TrimSuffix(p.folder, "-layout") + ".toml" }

// run carries out a command on the design.
func (p *madePiece) run(t *testing.T, name string, more ...string) string {
	t.Helper()
	return command(t, append([]string{name, p.file()}, more...)...)
}

// command carries out a call, whether or not a limit holds, and returns what it printed, a space between words.
func command(t *testing.T, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	if code := run(args, &out, &errs); code == noAnswer {
		t.Fatalf("%q: %s", args, &errs)
	}
	return flat(out.String())
}

func flat(text string) string { return strings.Join(strings.Fields(text), " ") }

// otherTitle stands in a file before it is changed.
const otherTitle = "What it was called before"

// elsewhere returns the file with other values for some entries, and the changes that bring back its own.
func (p *madePiece) elsewhere(t *testing.T) (text string, changes []string) {
	t.Helper()
	text = p.text
	changes = []string{fmt.Sprintf("title=%v", p.values["title"])}
	text = strings.Replace(text, fmt.Sprintf("%q", p.values["title"]), fmt.Sprintf("%q", otherTitle), 1)
	for _, entry := range []string{"rocker.radius", "rocker.nose", "rocker.tail", "seat.front", "seat.slide", "seat.rear_cut"} {
		section, key, _ := strings.Cut(entry, ".")
		value, there := p.section(section, 0)[key]
		if !there {
			continue
		}
		line := regexp.MustCompile(`(?m)(^\[` + section + `\](?:.*\n)+?` + key + ` *= *).*$`)
		if !line.MatchString(text) {
			t.Fatalf("%s: %s has no line of its own", p.name, entry)
		}
		text = line.ReplaceAllString(text, fmt.Sprintf("${1}%.2f", 0.93*amountOf(value)))
		changes = append(changes, fmt.Sprintf("%s=%v", entry, value))
	}
	return text, changes
}

// livePage serves the page while the test lasts, and returns what asks it.
func livePage(t *testing.T) func(path string, what map[string]any) map[string]any {
	t.Helper()
	door, err := page.Open(0)
	if err != nil {
		t.Fatal(err)
	}
	ctx, stop := context.WithCancel(context.Background())
	ended := make(chan error)
	go func() { ended <- door.Serve(ctx, &page.Site{Version: version()}) }()
	t.Cleanup(func() { stop(); <-ended })
	return func(path string, what map[string]any) (answer map[string]any) {
		t.Helper()
		data, err := json.Marshal(what)
		if err != nil {
			t.Fatal(err)
		}
		r, err := http.NewRequestWithContext(ctx, "POST", door.URL()+path, bytes.NewReader(data))
		if err != nil {
			t.Fatal(err)
		}
		r.Header.Set("Content-Type", "application/json")
		r.Header.Set("Origin", strings.TrimSuffix(door.URL(), "/"))
		got, err := http.DefaultClient.Do(r)
		if err != nil {
			t.Fatal(err)
		}
		defer got.Body.Close()
		if err := json.NewDecoder(got.Body).Decode(&answer); err != nil || got.StatusCode != http.StatusOK || answer["fault"] != nil {
			t.Fatalf("%s: %s %v: %v", path, got.Status, err, answer["fault"])
		}
		return answer
	}
}

// fileOfNew returns what a starting design of the kind says with the values of this one typed behind it, which carry
// their units: it is written in inches.
func fileOfNew(t *testing.T, p *madePiece) string {
	t.Helper()
	kind, unit := strings.TrimSuffix(p.name, "-metric"), " in"
	if p.metric() {
		unit = " mm"
	}
	args := []string{"new", kind, filepath.Join(t.TempDir(), "x.toml"), fmt.Sprintf("title=%v", p.values["title"])}
	set := func(entry string, value any) { args = append(args, fmt.Sprintf("%s=%v%s", entry, value, unit)) }
	for _, entry := range []string{"rocker.radius", "rocker.nose", "rocker.tail", "seat.front", "seat.rear", "seat.depth"} {
		section, key, _ := strings.Cut(entry, ".")
		if value, there := p.section(section, 0)[key]; there {
			set(entry, value)
		}
	}
	if list, _ := p.section("rocker", 0)["arcs"].([]any); len(list) > 0 {
		for i, each := range list {
			set(fmt.Sprintf("rocker.arcs.%d.radius", i+1), each.(map[string]any)["radius"])
			set(fmt.Sprintf("rocker.arcs.%d.length", i+1), each.(map[string]any)["length"])
		}
	}
	command(t, args...)
	return typedIn(t, read(t, args[2])).told()
}

// fileOfSize returns what the design file says in which a rocker is saved that keeps the radius there is.
func fileOfSize(t *testing.T, p *madePiece) string {
	t.Helper()
	saved := filepath.Join(t.TempDir(), "x.toml")
	p.run(t, "size", "--like", p.file(), "--keep", "radius", "--write", saved)
	return typedIn(t, read(t, saved)).told()
}

// formOnPage returns what the form of the live page says, as it is typed there.
func formOnPage(t *testing.T, p *madePiece) string {
	t.Helper()
	values := p.seen["values"].(map[string]any)
	get := func(key string) float64 {
		value, there := values[key].(map[string]any)
		if !there {
			return math.NaN()
		}
		return amountOf(value["text"])
	}
	radius, tail := get("rocker.radius"), get("rocker.tail")
	if p.section("rocker", 0)["arcs"] != nil {
		radius, tail = get("rocker.arcs.1.radius"), -get("rocker.nose")
		for i := range p.hand.arcs {
			tail += get(fmt.Sprintf("rocker.arcs.%d.length", i+1))
		}
	}
	text := fmt.Sprintf("title %v. radius %.4f, nose %.4f, tail %.4f.", p.seen["title"], radius, get("rocker.nose"), tail)
	if fall := math.Asin((get("seat.front") - get("seat.rear")) / get("seat.depth")); !math.IsNaN(fall) {
		text += fmt.Sprintf(" drawn with a fall of %.4f.", fall*180/math.Pi)
	}
	return text
}

// inLayout returns a file of the layout as it stands.
func inLayout(name string) func(t *testing.T, p *madePiece) string {
	return func(t *testing.T, p *madePiece) string {
		t.Helper()
		data, err := os.ReadFile(filepath.Join(p.folder, name))
		if err != nil {
			t.Fatal(err)
		}
		return string(data)
	}
}
