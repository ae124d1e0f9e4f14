package main

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"rockerwright/cmd/internal/design"
	"rockerwright/plots"
	"rockerwright/sim/check"
)

// TestReadme keeps the README's example and its picture in step with what the program
// says and draws.
func TestReadme(t *testing.T) {
	const begin, end = "<!-- example: begin -->\n", "<!-- example: end -->\n"
	path := filepath.Join(root, "README.md")
	readme := read(t, path)
	before, rest, found := strings.Cut(readme, begin)
	shown, after, closed := strings.Cut(rest, end)
	if !found || !closed {
		t.Fatal("the README has no place for the example")
	}
	var out, errs bytes.Buffer
	if code := run(nil, &out, &errs); code != allHold {
		t.Fatalf("exit %d: %s", code, &errs)
	}
	want := "\n    $ go run ./cmd/rockerwright\n" + indented(out.String()) + "\n"
	if *update {
		overwrite(t, path, before+begin+want+end+after)
	} else if shown != want {
		t.Errorf("the README shows\n%s\nwant\n%s", shown, want)
	}

	proofs(t, path)
	text, _ := design.Start("chair")
	f, err := design.Parse("chair.toml", text)
	if err != nil {
		t.Fatal(err)
	}
	report, err := check.Check(f.Design)
	if err != nil {
		t.Fatal(err)
	}
	var picture bytes.Buffer
	if err := plots.SideView(report).Draw(&picture, plots.SVG); err != nil {
		t.Fatal(err)
	}
	path = "testdata/reading-chair.svg"
	if *update {
		overwrite(t, path, picture.String())
	} else if where := unlikeDrawn(t, picture.String(), read(t, path), nearInView); where != "" {
		t.Errorf("the README's picture is not what the program draws now: %s", where)
	}
}

// proofs keeps the README's table of proofs in step with what proof finds.
func proofs(t *testing.T, path string) {
	t.Helper()
	const begin, end = "<!-- proof: begin -->\n", "<!-- proof: end -->\n"
	before, rest, found := strings.Cut(read(t, path), begin)
	shown, after, closed := strings.Cut(rest, end)
	if !found || !closed {
		t.Fatal("the README has no place for the proofs")
	}
	want := proofTable(prove(nil))
	if *update {
		overwrite(t, path, before+begin+want+end+after)
	} else if shown != want {
		t.Errorf("the README's proofs are\n%s\nwant\n%s", shown, want)
	}
}

// indented puts four spaces before each line that is not empty.
func indented(text string) string {
	var b strings.Builder
	for line := range strings.Lines(text) {
		if line != "\n" {
			b.WriteString("    ")
		}
		b.WriteString(line)
	}
	return b.String()
}

func overwrite(t *testing.T, path, text string) {
	t.Helper()
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// TestPicturesAreDrawnWholeOrNotAtAll, and never over the design.
func TestPicturesAreDrawnWholeOrNotAtAll(t *testing.T) {
	dir := t.TempDir()
	text, _ := design.Start("chair")
	mine := filepath.Join(dir, "mine.toml")
	overwrite(t, mine, text)
	var out, errs bytes.Buffer
	code := run([]string{"check", mine, "--pictures", filepath.Join(dir, "new", "folder")}, &out, &errs)
	if code != allHold || strings.Count(out.String(), "Drew ") != 3 {
		t.Errorf("exit %d: %s%s", code, &out, &errs)
	}
	for _, tt := range []struct {
		args []string
		says string
	}{
		{[]string{"check", mine, "--pictures", mine}, "--pictures names a folder"},
		{[]string{"check", mine, "--pictures", dir, "--format", "bmp"}, "svg or pdf"},
		{[]string{"check", mine, mine, "--pictures", dir}, "one design at a time"},
		{[]string{"check", filepath.Join(dir, "side view.svg"), "--pictures", dir}, "is the design itself"},
	} {
		overwrite(t, filepath.Join(dir, "side view.svg"), text)
		errs.Reset()
		if code := run(tt.args, &out, &errs); code != noAnswer || !strings.Contains(errs.String(), tt.says) {
			t.Errorf("%q: exit %d, %q; want it to say %q", tt.args, code, &errs, tt.says)
		}
		if read(t, filepath.Join(dir, "side view.svg")) != text || read(t, mine) != text {
			t.Errorf("%q changed a design", tt.args)
		}
		if left, _ := filepath.Glob(filepath.Join(dir, ".draft-*")); len(left) > 0 {
			t.Errorf("%q left %v", tt.args, left)
		}
	}
}

// TestNewNeverWritesOver an existing file.
func TestNewNeverWritesOver(t *testing.T) {
	path := filepath.Join(t.TempDir(), "my chair.toml")
	var out, errs bytes.Buffer
	if code := run([]string{"new", "chair", path}, &out, &errs); code != allHold || !strings.Contains(out.String(), `check "`) {
		t.Fatalf("exit %d: %s%s", code, &out, &errs)
	}
	want, _ := design.Start("chair")
	if read(t, path) != want {
		t.Error("the file is not the starting design")
	}
	overwrite(t, path, "mine")
	if code := run([]string{"new", "chair", path}, &out, &errs); code != noAnswer || read(t, path) != "mine" ||
		!strings.Contains(errs.String(), "already there") {
		t.Errorf("exit %d, the file holds %q, said %s", code, read(t, path), &errs)
	}
	errs.Reset()
	if code := run([]string{"new", "chair", filepath.Join(path, "below.toml")}, &out, &errs); code != noAnswer ||
		!strings.Contains(errs.String(), "cannot be written") {
		t.Errorf("exit %d: %s", code, &errs)
	}
}

// proofTable is the table of the README: each group, how many cases, how finely they are
// held, and against what.
func proofTable(list []proven) string {
	var b strings.Builder
	b.WriteString("| group | cases | held to | for example, against |\n|---|---|---|---|\n")
	for i := 0; i < len(list); {
		k, missed := i, 0
		loosest, finest := 0.0, math.Inf(1)
		for ; k < len(list) && list[k].Group == list[i].Group; k++ {
			if list[k].miss != nil {
				missed++
			}
			if a := list[k].Accuracy; a > 0 && !list[k].Memory {
				loosest, finest = math.Max(loosest, a), math.Min(finest, a)
			}
		}
		to := fmt.Sprintf("%.0e", loosest)
		switch {
		case missed > 0:
			to = fmt.Sprintf("%d MISS", missed)
		case loosest == 0 && list[i].Memory:
			to = "printed only"
		case loosest == 0:
			to = fmt.Sprintf("%.0e %s", list[i].Tolerance, list[i].Unit)
		case finest < loosest:
			to = fmt.Sprintf("%.0e to %.0e", finest, loosest)
		}
		source, _, _ := strings.Cut(list[i].Source, ";")
		fmt.Fprintf(&b, "| %s | %d | %s | %s |\n", list[i].Group, k-i, strings.TrimSpace(to), strings.ReplaceAll(source, "|", "\\|"))
		i = k
	}
	return b.String()
}
