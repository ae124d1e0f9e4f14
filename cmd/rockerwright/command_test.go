package main

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "rewrite the expected output of the command tests")

// TestCommands runs each folder of testdata: its args, one a line, in a fresh copy of
// the folder, against its stdout, stderr and exit. Words and layout are held byte for byte. So are numbers, those of many
// digits with a tolerance, for processors round otherwise, but for answers that rest on estimates ([estimates]).
func TestCommands(t *testing.T) {
	cases, err := filepath.Glob("testdata/*/args")
	if err != nil || len(cases) == 0 {
		t.Fatalf("no command tests found: %v", err)
	}
	for _, args := range cases {
		folder := filepath.Dir(args)
		t.Run(filepath.Base(folder), func(t *testing.T) { runCommand(t, folder) })
	}
}

func runCommand(t *testing.T, folder string) {
	absolute, err := filepath.Abs(folder)
	if err != nil {
		t.Fatal(err)
	}
	here := t.TempDir()
	if err := os.CopyFS(here, os.DirFS(folder)); err != nil {
		t.Fatal(err)
	}
	t.Chdir(here)
	t.Setenv("SOURCE_DATE_EPOCH", "1000000000") // letters carry a date
	var stdout, stderr bytes.Buffer
	var args []string
	for line := range strings.Lines(read(t, filepath.Join(absolute, "args"))) {
		args = append(args, strings.TrimSuffix(line, "\n"))
	}
	code := run(args, &stdout, &stderr)
	got := map[string]string{"stdout": stdout.String(), "stderr": stderr.String(), "exit": strconv.Itoa(code) + "\n"}
	for _, name := range []string{"stdout", "stderr", "exit"} {
		golden := filepath.Join(absolute, name)
		where := "no file"
		if want, err := os.ReadFile(golden); err == nil {
			compare := unlike
			if name == "stdout" && estimates(t, absolute, args) {
				compare = unlikeMasked
			}
			where = compare(got[name], string(want))
		}
		switch {
		case *update:
			overwrite(t, golden, got[name])
		case where != "":
			t.Errorf("%s: %s\ngot:\n%s", name, where, got[name])
		}
	}
	sameFiles(t, absolute, here)
}

var plain = regexp.MustCompile(`(?m)^(\[body\]|inertia)`)

// estimates reports whether an answer rests on what we take where nothing is said: how people are made and sit, what a
// piece weighs, how a floor is. What rests on plain numbers alone does not, as a person does not whose inertia is given.
func estimates(t *testing.T, folder string, args []string) bool {
	t.Helper()
	answers := []string{"check", "rock", "size", "whatif", "report", "layout", "measure"}
	if len(args) > 0 && (!slices.Contains(answers, args[0]) || slices.Contains(args, "--help")) {
		return false
	}
	files, err := filepath.Glob(filepath.Join(folder, "*.toml"))
	if err != nil {
		t.Fatal(err)
	}
	return !slices.ContainsFunc(files, func(file string) bool { return plain.MatchString(read(t, file)) })
}

// sameFiles checks that the files the test came with are as they were: a command only
// reads them.
func sameFiles(t *testing.T, before, after string) {
	entries, err := os.ReadDir(before)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if e.IsDir() || e.Name() == "stdout" || e.Name() == "stderr" || e.Name() == "exit" {
			continue
		}
		if read(t, filepath.Join(before, e.Name())) != read(t, filepath.Join(after, e.Name())) {
			t.Errorf("the command changed %s", e.Name())
		}
	}
}

func read(t *testing.T, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// TestCradleWords: of a cradle that rocks sideways nothing is said of a chair's sides and parts, but for the names
// of entries in its file.
func TestCradleWords(t *testing.T) {
	t.Chdir(t.TempDir())
	startIn(t, ".", "cradle")
	chairs := regexp.MustCompile(`(?i)\b(backwards|forwards?|front|seat|seated|crest|nose|tail|behind|ahead|` +
		`top of the back|goes? back|leans? back)\b`)
	entries := regexp.MustCompile(`\b(rocker|seat|target|limits)\.[a-z_]+`)
	for _, args := range [][]string{
		{"check", "cradle.toml", "--all"}, {"rock", "cradle.toml"}, {"rock", "cradle.toml", "--from", "75"}, {"whatif", "cradle.toml", "--all"},
		{"size", "cradle.toml", "target.one_rock=1.2", "--all"}, {"check", "cradle.toml", "rocker.radius=30,34"},
	} {
		var out, errs bytes.Buffer
		run(args, &out, &errs)
		if out.Len() < 200 {
			t.Errorf("%v: %s%s", args, &out, &errs)
		}
		for line := range strings.Lines(out.String()) {
			if found := chairs.FindString(entries.ReplaceAllString(line, "")); found != "" {
				t.Errorf("%v says %q of a cradle: %s", args, found, line)
			}
		}
	}
}
