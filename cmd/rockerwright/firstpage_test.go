package main

import (
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"
)

// TestFirstPages holds that the first answers of size and whatif are a page: at most 30 lines of
// 80 columns, but for the line that is to be typed.
func TestFirstPages(t *testing.T) {
	cases, err := filepath.Glob("testdata/*/args")
	if err != nil {
		t.Fatal(err)
	}
	held := 0
	for _, path := range cases {
		args := read(t, path)
		first, _, _ := strings.Cut(args, "\n")
		if first != "size" && first != "whatif" || strings.Contains(args, "--all") || strings.Contains(args, "--json") || strings.Contains(args, "--text") {
			continue
		}
		text := read(t, filepath.Join(filepath.Dir(path), "stdout"))
		if lines := strings.Count(text, "\n"); lines > 30 {
			t.Errorf("%s: %d lines", path, lines)
		}
		for line := range strings.Lines(text) {
			if line = strings.TrimSuffix(line, "\n"); utf8.RuneCountInString(line) > 80 && !strings.HasPrefix(line, "  rockerwright ") {
				t.Errorf("%s: %q", path, line)
			}
		}
		held++
	}
	if held < 5 {
		t.Errorf("%d answers", held)
	}
}
