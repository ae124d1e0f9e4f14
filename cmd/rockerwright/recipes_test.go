package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"flag"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

var everything = flag.Bool("everything", false, "follow the recipes of DEVELOPERS.md too, each in a program of its own")

// TestRecipes follows "How to add" of DEVELOPERS.md for a measure, a limit and a kind of piece. Each is a small
// patch in testdata/recipes, which may touch the files that its recipe names and no others; the tree is built
// with the patched files laid over its own, and must know the new thing wherever a maker meets one.
func TestRecipes(t *testing.T) {
	if !*everything {
		t.Skip("NOT CHECKED: the recipes of DEVELOPERS.md are followed only with -everything, as CI does: that builds the program three times")
	}
	t.Run("measure", func(t *testing.T) {
		t.Parallel()
		rw := follow(t, "A measure a maker can change", "measure.txt")
		rw.says(0, "above the seat\nthickness = \"1-1/4\" # thickness of an arm\n", "new", "chair", "arms.thickness=1-1/4")
		rw.says(0, "Wrote mine.toml", "new", "chair", "mine.toml", "arms.thickness=1-1/4")
		rw.says(0, "YOUR OWNER", "check", "mine.toml")
		rw.says(0, "arms.thickness = 7/8 in", "check", "mine.toml", "arms.thickness=7/8")
		rw.says(0, "\nthickness of an arm ", "whatif", "mine.toml", "--all")
		rw.says(0, "Wrote sized.toml", "size", "mine.toml", "target.one_rock=2.1", "--write", "sized.toml")
		rw.says(0, "arms.thickness = 7/8 in", "check", "sized.toml", "arms.thickness=7/8")
		rw.says(2, "the thickness of an arm is more than 0", "check", "mine.toml", "arms.thickness=-1")
		rw.tests("./sim/piece", "Every|Whole")
	})
	t.Run("limit", func(t *testing.T) {
		t.Parallel()
		rw := follow(t, "A limit", "limit.txt")
		rw.says(0, "Wrote mine.toml", "new", "chair", "mine.toml")
		for _, tt := range []struct {
			most, said string
			exit       int
			holds      bool
		}{
			{"30", "ok", 0, true},
			{"1/2", "owner, effort back", 1, false},
		} {
			change := "limits.effort_back=" + tt.most
			rw.says(tt.exit, tt.said, "check", "mine.toml", change, "--all")
			var answer struct {
				Limits []struct {
					Name   string
					AtMost *float64 `json:"at_most"`
					Got    *float64
					Holds  bool
					Basis  string
				}
			}
			text := rw.says(tt.exit, "{", "check", "mine.toml", change, "--json")
			if err := json.Unmarshal([]byte(text), &answer); err != nil {
				t.Fatal(err)
			}
			asked := 0
			for _, l := range answer.Limits {
				if l.Name != "effort_back_n" {
					continue
				}
				asked++
				if l.AtMost == nil || l.Got == nil || !(*l.Got > 0) || l.Basis != "your file" {
					t.Errorf("%s: %+v", change, l)
				} else if l.Holds != (*l.Got <= *l.AtMost) || l.Holds != tt.holds {
					t.Errorf("%s: got %v of %v, holds %v", change, *l.Got, *l.AtMost, l.Holds)
				}
			}
			if asked < 5 {
				t.Errorf("%s is asked of %d loads", change, asked)
			}
		}
		rw.tests("./sim/piece", "Every|Whole")
	})
	t.Run("kind", func(t *testing.T) {
		t.Parallel()
		rw := follow(t, "A kind of piece", "kind.txt")
		text := strings.Replace(rw.says(0, "kind  = \"chair\"", "new", "chair"), `kind  = "chair"`, `kind  = "stool"`, 1)
		rw.write("stool.toml", text)
		rw.says(0, "WHOSE STOOL IT IS", "check", "stool.toml")
		rw.says(0, "12 degrees", "check", "stool.toml", "--all")
		rw.says(0, `"kind":"stool"`, "check", "stool.toml", "--json")
		rw.says(0, "stone", "rock", "stool.toml")
		rw.says(0, "stool", "size", "stool.toml", "target.one_rock=2.1", "--all")
		rw.says(2, "stool", "check", "stool.toml", "kind=sofa")
		rw.tests("./cmd/internal/words", "NoPhraseIsEmpty")
	})
}

// A patched is the program with a recipe followed, and a folder to run it in.
type patched struct {
	t                *testing.T
	overlay, program string
	folder           string
}

// follow builds the program with a patch laid over the tree.
func follow(t *testing.T, recipe, patch string) patched {
	t.Helper()
	p := patched{t: t, folder: t.TempDir(), overlay: filepath.Join(t.TempDir(), "overlay.json")}
	p.program = filepath.Join(filepath.Dir(p.overlay), "rockerwright.exe")
	allowed := filesOf(t, recipe)
	over := map[string]string{}
	for file, text := range patchedFiles(t, read(t, filepath.Join(testdata, "recipes", patch))) {
		if !slices.Contains(allowed, file) {
			t.Errorf("the recipe %q names %q; the patch needs %s", recipe, allowed, file)
		}
		laid := filepath.Join(filepath.Dir(p.overlay), strings.ReplaceAll(file, "/", "_"))
		overwrite(t, laid, text)
		over[filepath.Join(testdata, "../../..", filepath.FromSlash(file))] = laid
	}
	data, err := json.Marshal(map[string]any{"Replace": over})
	if err != nil {
		t.Fatal(err)
	}
	overwrite(t, p.overlay, string(data))
	p.run(0, exec.Command("go", "build", "-overlay", p.overlay, "-ldflags", "-s -w", "-o", p.program, "."))
	return p
}

// says runs the program in the folder and holds its exit code and what it says, on either stream; it returns
// what stands on the first.
func (p patched) says(exit int, want string, args ...string) string {
	p.t.Helper()
	c := exec.Command(p.program, args...)
	c.Dir = p.folder
	return p.run(exit, c, want)
}

// tests runs some tests of a package with the patch laid over the tree.
func (p patched) tests(room, names string) {
	p.t.Helper()
	c := exec.Command("go", "test", "-vet=off", "-overlay", p.overlay, "-run", names, room)
	c.Dir = filepath.Join(testdata, "../../..")
	p.run(0, c)
}

// run runs a command, which must not ask the network for anything.
func (p patched) run(exit int, c *exec.Cmd, wants ...string) string {
	p.t.Helper()
	var out, errs bytes.Buffer
	c.Stdout, c.Stderr, c.Env = &out, &errs, append(os.Environ(), "GOPROXY=off")
	var failed *exec.ExitError
	if err := c.Run(); err != nil && !errors.As(err, &failed) {
		p.t.Fatal(err)
	}
	said := out.String() + errs.String()
	if code := c.ProcessState.ExitCode(); code != exit {
		p.t.Fatalf("%q: exit %d, want %d\n%s", c.Args, code, exit, said)
	}
	for _, want := range wants {
		if !strings.Contains(said, want) {
			p.t.Errorf("%q does not say %q:\n%s", c.Args, want, said)
		}
	}
	return out.String()
}

func (p patched) write(name, text string) { overwrite(p.t, filepath.Join(p.folder, name), text) }

// filesOf returns the files that a recipe of DEVELOPERS.md names, from the top of the project: by the end of their
// path, or by a type that they declare.
func filesOf(t *testing.T, recipe string) []string {
	t.Helper()
	_, text, found := strings.Cut(read(t, filepath.Join(root, "DEVELOPERS.md")), "- **"+recipe+"**")
	if !found {
		t.Fatalf("DEVELOPERS.md has no recipe %q", recipe)
	}
	text, _, _ = strings.Cut(text, "\n- **")
	var files []string
	for _, word := range regexp.MustCompile("`[a-z/]+\\.(go|txt|[A-Z][A-Za-z]+)`").FindAllString(text, -1) {
		word = strings.Trim(word, "`")
		room, name, _ := strings.Cut(word, ".")
		at := len(files)
		err := filepath.WalkDir(root, func(path string, entry fs.DirEntry, err error) error {
			if err != nil || entry.IsDir() || !slices.Contains([]string{".go", ".txt"}, filepath.Ext(path)) {
				return err
			}
			file := filepath.ToSlash(strings.TrimPrefix(path, filepath.FromSlash(root)+string(filepath.Separator)))
			declares := filepath.Base(filepath.Dir(path)) == room && strings.Contains(read(t, path), "\ntype "+name+" ")
			if strings.HasSuffix("/"+file, "/"+word) || declares {
				files = append(files, file)
			}
			return nil
		})
		if err != nil || len(files) != at+1 {
			t.Fatalf("the recipe %q names %s, which is %q: %v", recipe, word, files[at:], err)
		}
	}
	return files
}

// patchedFiles returns the files that a patch touches as it leaves them, by their paths. A patch has for each file its
// path behind "-- ", and before which line what goes in: "before LINE", of which an ellipsis ends a part.
func patchedFiles(t *testing.T, patch string) map[string]string {
	t.Helper()
	files := map[string]string{}
	for _, section := range strings.Split(patch, "\n-- ")[1:] {
		file, rest, _ := strings.Cut(section, "\n")
		lines := strings.SplitAfter(read(t, filepath.Join(root, filepath.FromSlash(file))), "\n")
		for _, insertion := range strings.Split("\n"+rest, "\nbefore ")[1:] {
			before, text, _ := strings.Cut(insertion, "\n")
			begins, part := strings.CutSuffix(before, "…")
			is := func(line string) bool {
				line = strings.TrimSpace(line)
				return line == before || part && strings.HasPrefix(line, begins)
			}
			at := slices.IndexFunc(lines, is)
			if at < 0 || slices.ContainsFunc(lines[at+1:], is) {
				t.Fatalf("%s has no line, or several, %q", file, before)
			}
			lines = slices.Insert(lines, at, strings.TrimSuffix(text, "\n")+"\n")
		}
		files[file] = strings.Join(lines, "")
	}
	return files
}
