package main

import (
	"bytes"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
)

// TestLabelsNotKeys: what is printed of a measure is its label. Its key stands where it is to be typed alone: before an =.
// Looked at are the answers of all command tests, and every answer and bench card of the designs in their folders.
func TestLabelsNotKeys(t *testing.T) {
	var keys []string
	for _, m := range piece.Measures() {
		keys = append(keys, strings.ReplaceAll(regexp.QuoteMeta(m.Key), `\.N`, `(\.\d+)?`))
	}
	key := regexp.MustCompile(`\b(` + strings.Join(keys, "|") + `)\b( ?=)?`)
	look := func(where, text string) {
		for _, found := range key.FindAllString(text, -1) {
			if !strings.HasSuffix(found, "=") {
				t.Errorf("%s prints the key %s", where, found)
			}
		}
	}
	for _, wrong := range []string{"part.3.length 1/4 in", "Give rocker.track or", "arms.height"} {
		if found := key.FindString(wrong); found == "" || strings.HasSuffix(found, "=") {
			t.Errorf("in %q no key is found", wrong)
		}
	}
	cases, err := filepath.Glob("testdata/*/args")
	if err != nil || len(cases) == 0 {
		t.Fatal(err)
	}
	for _, path := range cases {
		args := read(t, path)
		if !strings.Contains(args, "help") && !strings.HasPrefix(args, "new") && !strings.Contains(args, "--json") {
			look(path, read(t, filepath.Join(filepath.Dir(path), "stdout")))
		}
	}
	files, err := filepath.Glob("testdata/*/*.toml")
	if err != nil {
		t.Fatal(err)
	}
	seen := map[string]bool{}
	for _, file := range files {
		text := read(t, file)
		if seen[text] || testing.Short() && len(seen) > 5 {
			continue
		}
		seen[text] = true
		for _, args := range []string{"check --all", "rock", "size", "whatif --all", "measure", "report --text"} {
			var out, errs bytes.Buffer
			run(append(strings.Fields(args), file), &out, &errs)
			look(file+", "+args, out.String())
		}
		f, err := design.Parse(file, text)
		if err != nil {
			continue // it is for the errors
		}
		l, err := layout.Of(f.Design, layout.Options{})
		if err != nil {
			continue
		}
		for _, card := range []func(layout.Layout, string) sheet.Sheet{
			words.BenchCard, words.CheckSheet, words.StationSheet, words.CutSheet, words.LegSheet} {
			var out strings.Builder
			if err := card(l, "").Text(&out, true, false); err != nil {
				t.Fatal(err)
			}
			look(file+", on the bench", out.String())
		}
	}
}

// TestCradlesAreLaden: nobody sits in a cradle, and of none it is said that its seat falls, of one or of many.
func TestCradlesAreLaden(t *testing.T) {
	file := filepath.Join(t.TempDir(), "cradle.toml")
	for _, args := range []string{
		"new cradle", "check --all", "whatif --all", "whatif --all --chairs 4096", "size --all target.one_rock=1.5",
	} {
		var out, errs bytes.Buffer
		run(append(strings.Fields(args), file), &out, &errs)
		if errs.Len() > 0 {
			t.Errorf("%s: %s", args, &errs)
		}
		for _, wrong := range []string{"seat falls", "seated", "fwd"} {
			if strings.Contains(out.String(), wrong) {
				t.Errorf("%s: a cradle's answer says %q:\n%s", args, wrong, &out)
			}
		}
	}
}
