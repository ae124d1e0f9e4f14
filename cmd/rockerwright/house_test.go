package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"
)

// root is the top of the project, seen from this folder.
const root = "../.."

// mayImport is the house: what each room may import besides the standard library. A
// module stands for all its packages, a room only for itself.
var mayImport = map[string][]string{
	"rocker":       {gonum},
	"rocker/root":  {},
	"rocker/rises": {"rocker", "rocker/root", gonum},
	"body":         {gonum},
	"body/person":  {"body", "rocker/root", gonum},
	"sim":          {"rocker", "rocker/root", "body", gonum},
	"rocker/bench": {"rocker", gonum},
	"sim/quantity": {},
	"sim/readings": {"rocker", "rocker/root", "body", "sim", gonum},
	"sim/motion":   {"rocker", "rocker/root", "body", "sim", gonum},
	"sim/piece": {
		"rocker", "rocker/rises", "rocker/root", "rocker/bench", "body", "body/person", "sim", "sim/quantity",
		gonum,
	},
	"sim/check": {
		"rocker", "rocker/rises", "rocker/root", "rocker/bench", "body", "body/person", "sim", "sim/motion", "sim/readings",
		"sim/quantity", "sim/piece", gonum,
	},
	"sim/trial": {
		"rocker", "rocker/rises", "body", "body/person", "sim", "sim/motion", "sim/readings", "sim/quantity",
		"sim/piece", "sim/check", gonum,
	},
	"sim/size": {
		"rocker", "rocker/root", "rocker/bench", "body", "body/person", "sim", "sim/quantity", "sim/piece",
		"sim/check", gonum,
	},
	"sim/layout": {
		"rocker", "rocker/root", "rocker/bench", "body", "body/person", "sim", "sim/quantity", "sim/piece",
		"sim/check", gonum,
	},
	"plots": {
		"plots/scene", "sim", "sim/motion", "sim/quantity", "sim/piece", "sim/check", "sim/trial", "sim/size",
		gonum, plot,
	},
	"plots/scene": {"rocker/bench", "sim/quantity", gonum, fpdf},
	"plots/view": {
		"rocker", "body/person", "plots", "plots/scene", "sim", "sim/quantity", "sim/piece", "sim/check",
		"sim/trial", gonum,
	},
	"plots/pattern": {"rocker/bench", "plots/scene", "sim/quantity", gonum},
	"plots/sheets":  {"body/person", "plots/scene", "plots/view", "sim/quantity", "sim/piece", gonum},
	"validation": {
		"rocker", "rocker/root", "rocker/bench", "body", "body/person", "sim", "sim/motion", "sim/readings",
		"sim/quantity", "sim/piece", "sim/check", "sim/trial", "sim/size", gonum,
	},
	"validation/speed": {},

	"cmd/internal/design/locate": {},
	"cmd/internal/design": {
		"cmd/internal/design/locate", "sim/piece", "sim/check", "sim/quantity", "github.com/BurntSushi/toml",
	},
	"cmd/internal/sheet": {},
	"cmd/internal/words": {
		"cmd/internal/sheet", "body", "body/person", "rocker/bench", "sim/layout", "sim/piece", "sim/check",
		"sim/trial", "sim/size", "sim/readings", "sim/motion", "sim/quantity", "sim", "rocker", "rocker/rises",
	},
	"cmd/internal/report": {
		"cmd/internal/design", "cmd/internal/sheet", "cmd/internal/words", "plots/scene", "plots/view", "sim/piece",
		"sim/check", "sim/trial", "sim/size",
	},
	"cmd/internal/papers": {
		"cmd/internal/design", "cmd/internal/sheet", "cmd/internal/words", "plots/pattern", "sim/layout",
		"sim/piece", "sim/quantity",
	},
	"cmd/internal/page": {
		"cmd/internal/design", "cmd/internal/sheet", "cmd/internal/words", "cmd/internal/report",
		"cmd/internal/papers", "plots/view", "sim/piece", "sim/check", "sim/trial", "sim/size", "sim/quantity",
		"golang.org/x/net",
	},
	"cmd/internal/wire": {
		"sim/piece", "sim/check", "sim/trial", "sim/size", "sim/readings", "sim/motion", "sim/quantity", "sim",
		"body/person", "rocker/rises", "validation",
	},
	"cmd/rockerwright": {
		"cmd/internal/design", "cmd/internal/sheet", "cmd/internal/words", "cmd/internal/wire",
		"cmd/internal/report", "cmd/internal/papers", "cmd/internal/page", "plots", "plots/scene", "plots/sheets",
		"plots/view", "sim/layout", "sim/piece", "sim/check", "sim/trial", "sim/size", "sim/quantity", "validation",
		"github.com/spf13/cobra", "golang.org/x/term",
	},
}

const (
	gonum = "gonum.org/v1/gonum"
	plot  = "gonum.org/v1/plot"
	fpdf  = "codeberg.org/go-pdf/fpdf"
)

// TestHouse holds the import column of the house: arrows point one way.
func TestHouse(t *testing.T) {
	seen := map[string]bool{}
	err := filepath.WalkDir(root, func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		room, err := filepath.Rel(root, filepath.Dir(path))
		if err != nil {
			return err
		}
		room = filepath.ToSlash(room)
		seen[room] = true
		allowed, known := mayImport[room]
		if !known {
			t.Errorf("%s: the room %q is not in the house", path, room)
			return nil
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		for _, spec := range file.Imports {
			imported, err := strconv.Unquote(spec.Path.Value)
			if err != nil {
				return err
			}
			if ours, found := strings.CutPrefix(imported, "rockerwright/"); found {
				if !slices.Contains(allowed, ours) {
					t.Errorf("%s imports %s; %s may import %v", path, ours, room, allowed)
				}
				continue
			}
			if module := moduleOf(imported); module != "" && !slices.Contains(allowed, module) {
				t.Errorf("%s imports %s; %s may import %v", path, imported, room, allowed)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for room := range mayImport {
		if !seen[room] {
			t.Errorf("the house has a room %q, and there is none", room)
		}
	}
}

// longestLine is how many letters a line of Go may have, a tab counted as one: what stands side by side in a review.
const longestLine = 140

// TestLinesFit lists the lines of Go, tests too, that are longer.
func TestLinesFit(t *testing.T) {
	files := 0
	err := filepath.WalkDir(root, func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || filepath.Ext(path) != ".go" {
			return err
		}
		files++
		n := 0
		for line := range strings.Lines(read(t, path)) {
			n++
			if letters := utf8.RuneCountInString(strings.TrimSuffix(line, "\n")); letters > longestLine {
				t.Errorf("%s:%d: %d letters, %d are the most", path, n, letters, longestLine)
			}
		}
		return nil
	})
	if err != nil || files < 300 {
		t.Errorf("%d files, %v", files, err)
	}
}

// moduleOf returns the module of an import path, "" for the standard library.
func moduleOf(path string) string {
	if !strings.Contains(strings.Split(path, "/")[0], ".") {
		return ""
	}
	return strings.Join(strings.Split(path, "/")[:min(3, strings.Count(path, "/")+1)], "/")
}

// TestTopLevel holds that nothing else of note stands at the top of the project.
func TestTopLevel(t *testing.T) {
	entries, err := os.ReadDir(root)
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"cmd", "sim", "body", "rocker", "plots", "validation", "go.mod", "go.sum", "README.md", "DEVELOPERS.md", "LICENSE"}
	for _, e := range entries {
		if name := e.Name(); !strings.HasPrefix(name, ".") && !slices.Contains(want, name) {
			t.Errorf("%s stands at the top of the project; only %v do", name, want)
		}
	}
}
