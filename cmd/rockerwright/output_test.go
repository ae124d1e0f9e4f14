package main

import (
	"bytes"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// writers are the calls of every command that writes, with the first, by the alphabet, of the files that each writes.
var writers = []struct {
	name, file string
	args       []string
	replaces   bool // it takes --replace
}{
	{"new", "x.toml", []string{"new", "chair", "x.toml"}, false},
	{"size", "x.toml", []string{"size", "mine.toml", "--like", "mine.toml", "--write", "x.toml"}, false},
	{"report", "x.html", []string{"report", "mine.toml", "-o", "x.html"}, true},
	{"report by name", "mine-report.html", []string{"report", "mine.toml"}, true},
	{"measure", "drawn/measure the person.pdf", []string{"measure", "--into", "drawn"}, true},
	{"check", "drawn/righting arm.svg", []string{"check", "mine.toml", "--pictures", "drawn"}, true},
	{"rock", "drawn/energy in time.svg", []string{"rock", "mine.toml", "--pictures", "drawn"}, true},
	{"whatif", "drawn/what each change does.svg", []string{"whatif", "mine.toml", "--pictures", "drawn"}, true},
}

// TestOneRuleForOutputs: what is there is kept, and replaced only where that is said and it is a plain
// file; nothing else is ever left in the folder.
func TestOneRuleForOutputs(t *testing.T) {
	call := func(args ...string) (int, string) {
		var out, errs bytes.Buffer
		code := run(args, &out, &errs)
		return code, errs.String()
	}
	for _, w := range writers {
		t.Run(w.name, func(t *testing.T) {
			t.Chdir(t.TempDir())
			if code, errs := call("new", "chair", "mine.toml"); code != allHold {
				t.Fatal(errs)
			}
			if code, errs := call(w.args...); code != allHold {
				t.Fatalf("the first time: %s", errs)
			}
			var first string // of what it wrote
			for file := range filesIn(t, ".") {
				if file != "mine.toml" && (first == "" || file < first) {
					first = file
				}
			}
			if filepath.ToSlash(first) != w.file {
				t.Errorf("it wrote %s, want %s", first, w.file)
			}
			if err := os.WriteFile(first, []byte("mine"), 0o644); err != nil {
				t.Fatal(err)
			}
			wrote := len(filesIn(t, "."))
			code, errs := call(w.args...)
			if code != noAnswer || read(t, first) != "mine" ||
				!strings.Contains(errs, "is already there and was left as it is. Choose another") ||
				strings.Contains(errs, "--replace") != w.replaces {
				t.Errorf("where it is: exit %d, %q", code, errs)
			}
			if w.replaces {
				if code, errs := call(append(w.args, "--replace")...); code != allHold || read(t, first) == "mine" {
					t.Errorf("--replace: exit %d, %s", code, errs)
				}
			}
			for name, make := range map[string]func() error{
				"a folder":               func() error { return os.Mkdir(first, 0o755) },
				"a link to another file": func() error { return os.Symlink(filepath.Join("..", "elsewhere"), first) },
			} {
				if err := errors.Join(os.RemoveAll(first), make()); err != nil {
					t.Skip(err)
				}
				args := w.args
				if w.replaces {
					args = append(append([]string{}, args...), "--replace")
				}
				if code, errs := call(args...); code != noAnswer || !strings.Contains(errs, "is "+name+", and is left as it is") {
					t.Errorf("where %s is: exit %d, %q", name, code, errs)
				}
			}
			if err := os.RemoveAll(first); err != nil {
				t.Fatal(err)
			}
			if got := len(filesIn(t, ".")); got != wrote-1 {
				t.Errorf("%d files are left, want %d", got, wrote-1)
			}
		})
	}
}

// TestNamesFitWhatIsWritten: a name that promises another kind of file is refused with a better one, and
// nothing is written.
func TestNamesFitWhatIsWritten(t *testing.T) {
	t.Chdir(t.TempDir())
	var out, errs bytes.Buffer
	if run([]string{"new", "chair", "mine.toml"}, &out, &errs); errs.Len() > 0 {
		t.Fatal(&errs)
	}
	if err := os.WriteFile("plain", []byte("mine"), 0o644); err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		args []string
		says string
	}{
		{[]string{"report", "mine.toml", "-o", "x.pdf"},
			"x.pdf is to be a report, which is an HTML file to be opened in a browser and printed from there: name it x.html"},
		{[]string{"report", "mine.toml", "-o", "report"}, "name it report.html"},
		{[]string{"new", "chair", "x.pdf"}, "x.pdf is to be a design, which is plain text: name it x.toml"},
		{[]string{"size", "mine.toml", "--like", "mine.toml", "--write", "x.html"}, "name it x.toml"},
		{[]string{"check", "mine.toml", "--pictures", "plain"}, "--pictures names a folder, and plain is a file"},
		{[]string{"report", "mine.toml", "-o", "nowhere/x.html"}, "there is no folder nowhere. Make it first"},
		{[]string{"new", "chair", "plain/x.toml"}, "plain is a file, not a folder"},
		{[]string{"report", "mine.toml", "-o", "a\x1b[31mb/x.html"}, "there is no folder a"},
	} {
		out.Reset()
		errs.Reset()
		code := run(tt.args, &out, &errs)
		if code != noAnswer || !strings.Contains(errs.String(), tt.says) || strings.Contains(errs.String(), "\x1b") {
			t.Errorf("%q: exit %d, %q, want %q", tt.args, code, &errs, tt.says)
		}
	}
	if files := filesIn(t, "."); len(files) != 2 || files["plain"] != "mine" {
		t.Errorf("%d files are there, want 2", len(files))
	}
}

// TestOutputsAreWhole: where one of several files cannot be written, none is.
func TestOutputsAreWhole(t *testing.T) {
	t.Chdir(t.TempDir())
	good := func(w io.Writer) error { _, err := io.WriteString(w, "good"); return err }
	bad := func(w io.Writer) error { return errors.Join(good(w), errors.New("no ink")) }
	err := writeOutputs([]output{{"a", good}, {"b", bad}}, nil, false, "")
	if err == nil || !strings.Contains(err.Error(), "b cannot be written: no ink") || len(filesIn(t, ".")) != 0 {
		t.Errorf("%v, and %d files are there", err, len(filesIn(t, ".")))
	}
}
