package main

import (
	"bytes"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// laidOut runs layout in a fresh folder on a file of the command tests, "" for the built-in chair, and returns the
// folder of the layout and what was printed.
func laidOut(t *testing.T, file string) (folder, said string) {
	t.Helper()
	here := t.TempDir()
	t.Chdir(here)
	args := []string{"layout"}
	folder = filepath.Join(here, "reading-chair-layout")
	if file != "" {
		copied := filepath.Join(here, filepath.Base(file))
		overwrite(t, copied, designText(t, file))
		args = append(args, copied)
		folder = strings.TrimSuffix(copied, ".toml") + "-layout"
	}
	var out, errs bytes.Buffer
	if code := run(args, &out, &errs); code != allHold {
		t.Fatalf("exit %d: %s", code, &errs)
	}
	return folder, out.String()
}

// A keptLayout is what layout wrote and printed of a file of the command tests.
type keptLayout struct {
	files map[string]string // by name
	said  string
}

var keptLayouts = map[string]keptLayout{}

// kept returns a folder with what layout wrote, and what it printed, which is run but once for all tests that only read.
func kept(t *testing.T, file string) (folder, said string) {
	t.Helper()
	was, there := keptLayouts[file]
	if !there {
		folder, said := laidOut(t, file)
		keptLayouts[file] = keptLayout{filesIn(t, folder), said}
		return folder, said
	}
	folder = t.TempDir()
	for name, text := range was.files {
		path := filepath.Join(folder, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		overwrite(t, path, text)
	}
	return folder, was.said
}

// testdata is the folder of the command tests, by its own name, for tests change theirs.
var testdata = func() string {
	path, err := filepath.Abs("testdata")
	if err != nil {
		panic(err)
	}
	return path
}()

func designText(t *testing.T, file string) string { return read(t, filepath.Join(testdata, file)) }

// filesIn returns the files of a folder by their names.
func filesIn(t *testing.T, folder string) map[string]string {
	t.Helper()
	files := map[string]string{}
	err := filepath.WalkDir(folder, func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		name, err := filepath.Rel(folder, path)
		files[filepath.ToSlash(name)] = read(t, path)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// reader runs an independent reader and returns what it says, complaints with it; a reader
// that is missing is said.
func reader(t *testing.T, name string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil {
		t.Skipf("NOT CHECKED: %s is not installed", name)
	}
	out, err := exec.Command(name, args...).CombinedOutput()
	if err != nil {
		t.Errorf("%s %q: %v: %s", name, args, err, out)
	}
	return string(out)
}

var layouts = []string{"", "layout-full/full.toml", "layout-metric/metric.toml"}

// TestLayoutFiles: what was printed is what is there; each PDF has the pages that were named,
// opens in poppler and mupdf without a word, and is small. How long a layout takes is measured
// by .ci/run, as a process.
func TestLayoutFiles(t *testing.T) {
	for _, file := range layouts {
		t.Run(file, func(t *testing.T) {
			folder, said := kept(t, file)
			for name, data := range filesIn(t, folder) {
				pages := regexp.MustCompile(regexp.QuoteMeta(name) + ` *(\d*)`).FindStringSubmatch(said)
				if pages == nil {
					t.Errorf("%s is not in the list:\n%s", name, said)
					continue
				}
				if !strings.HasSuffix(name, ".pdf") {
					continue
				}
				if len(data) > 300e3 {
					t.Errorf("%s has %d bytes, more than 300 kB", name, len(data))
				}
				path := filepath.Join(folder, name)
				t.Run("poppler", func(t *testing.T) {
					info := reader(t, "pdfinfo", path)
					if !regexp.MustCompile(`Pages: +` + pages[1] + `\n`).MatchString(info) {
						t.Errorf("%s: %s pages were named:\n%s", name, pages[1], info)
					}
					if said := reader(t, "pdftoppm", "-r", "20", "-png", path, filepath.Join(t.TempDir(), "page")); said != "" {
						t.Errorf("poppler on %s: %s", name, said)
					}
				})
				t.Run("mupdf", func(t *testing.T) {
					// -N: some builds warn, whatever the file, that they have no colour profiles
					said := reader(t, "mutool", "draw", "-q", "-N", "-r", "20", "-o", filepath.Join(t.TempDir(), "%d.png"), path)
					if strings.TrimSpace(said) != "" {
						t.Errorf("mupdf on %s: %s", name, said)
					}
				})
			}
		})
	}
}

// TestLayoutIsTheSame from run to run, byte for byte.
func TestLayoutIsTheSame(t *testing.T) {
	for _, file := range layouts {
		a, _ := kept(t, file)
		b, _ := laidOut(t, file)
		first, second := filesIn(t, a), filesIn(t, b)
		if len(first) != len(second) || len(first) < 8 {
			t.Errorf("%d and %d files", len(first), len(second))
		}
		for name := range first {
			if first[name] != second[name] {
				t.Errorf("%s differs from run to run", name)
			}
		}
	}
}

// TestFractions: no fraction of any page is nothing, a whole, or can be shortened.
func TestFractions(t *testing.T) {
	// by mupdf, which reads rotated words whole
	fraction := regexp.MustCompile(`(?:^|[ \n])(\d+)/(\d+)`)
	for _, file := range layouts[:2] {
		folder, _ := kept(t, file)
		found := 0
		for name := range filesIn(t, folder) {
			if !strings.HasSuffix(name, ".pdf") {
				continue
			}
			for _, m := range fraction.FindAllStringSubmatch(reader(t, "mutool", "draw", "-q", "-N", "-F", "txt", filepath.Join(folder, name)), -1) {
				above, _ := strconv.Atoi(m[1]) // digits only
				below, _ := strconv.Atoi(m[2])
				found++
				if above == 0 || above >= below || below > 32 && above != 1 || above%2 == 0 {
					t.Errorf("%s: %s/%s", name, m[1], m[2])
				}
			}
		}
		if found < 100 {
			t.Errorf("%d fractions", found)
		}
	}
}

// TestRadiiAreToldApart wherever a form is: on card, rocker and form.
func TestRadiiAreToldApart(t *testing.T) {
	folder, _ := kept(t, "")
	checked := 0
	for name := range filesIn(t, folder) {
		if !strings.HasSuffix(name, ".pdf") || strings.Contains(name, "legs") || strings.Contains(name, "left and right") {
			continue
		}
		text := strings.Join(strings.Fields(reader(t, "pdftotext", "-raw", filepath.Join(folder, name), "-")), "")
		for _, want := range []string{"FLOOREDGERADIUS", "FORMRADIUS", "391/4in"} {
			if !strings.Contains(text, want) {
				t.Errorf("no %q in %s", want, name)
			}
		}
		checked++
	}
	if checked != 3 {
		t.Errorf("%d files checked", checked)
	}
}

// TestInchMetricTwins: the same lengths give the same outlines for cutting, whatever the units.
func TestInchMetricTwins(t *testing.T) {
	text := designText(t, "layout-full/full.toml")
	here := t.TempDir()
	t.Chdir(here)
	number := regexp.MustCompile(`(?m)^(\w+\s*= )"?(-?[0-9][-0-9 /]*)"?( *#.*)?$`)
	metric := strings.Replace(text, `"inch"`, `"metric"`, 1)
	angles := regexp.MustCompile(`^(rake|splay|recline|staves|weight|nose_end)`)
	metric = number.ReplaceAllStringFunc(metric, func(line string) string {
		m := number.FindStringSubmatch(line)
		switch {
		case strings.HasPrefix(m[1], "weight"):
			return m[1] + `"` + m[2] + ` lb"`
		case angles.MatchString(m[1]):
			return line
		}
		return m[1] + `"` + m[2] + ` in"`
	})
	metric = strings.NewReplacer("radius = 42, length = 26", `radius = "42 in", length = "26 in"`,
		"radius = 60, length = 15", `radius = "60 in", length = "15 in"`).Replace(metric)
	shop := "[shop]\nspacing = \"2 in\"\ncutter = \"1/2 in\"\nweb = \"1/8 in\"\n" +
		"kerf = \"1/8 in\"\nplaning = \"1/16 in\"\nend_waste = \"2 in\"\npaper = \"A3\"\n"
	outlines := map[string][2]string{}
	for i, one := range []struct{ name, text string }{{"in.toml", text + shop}, {"mm.toml", metric + shop}} {
		overwrite(t, one.name, one.text)
		var out, errs bytes.Buffer
		if code := run([]string{"layout", one.name}, &out, &errs); code != allHold {
			t.Fatalf("exit %d: %s\n%s", code, &errs, one.text)
		}
		for name, data := range filesIn(t, strings.TrimSuffix(one.name, ".toml")+"-layout") {
			if strings.HasSuffix(name, ".svg") {
				_, group, _ := strings.Cut(data, `id="OUTLINE"`)
				group, _, _ = strings.Cut(group, "</g>")
				pair := outlines[name]
				pair[i] = relative(t, group)
				outlines[name] = pair
			}
		}
	}
	for name, pair := range outlines {
		if pair[0] == "" || pair[0] != pair[1] {
			t.Errorf("%s differs:\n%.300s\n%.300s", name, pair[0], pair[1])
		}
	}
	if len(outlines) != 6 {
		t.Errorf("%d outlines", len(outlines))
	}
}

// relative returns the coordinates of paths measured from the first of them, in whole
// thousandths of a millimetre, for the page begins where its texts do.
func relative(t *testing.T, group string) string {
	t.Helper()
	var first [2]float64
	var b strings.Builder
	for i, m := range regexp.MustCompile(`(?:[ML]|[01] )(-?[0-9.]+)[ ,](-?[0-9.]+)(?:[ "A-Z]|$)`).FindAllStringSubmatch(group, -1) {
		for k := range 2 {
			x, err := strconv.ParseFloat(m[k+1], 64)
			if err != nil {
				t.Fatal(err)
			}
			if i == 0 {
				first[k] = x
			}
			b.WriteString(strconv.Itoa(int((x-first[k])*1e2+0.5)) + " ") // hundredths: two roundings of a thousandth
		}
	}
	return b.String()
}

// TestLayoutIsKept: what is there stays without --replace, and is whole after it.
func TestLayoutIsKept(t *testing.T) {
	folder, _ := laidOut(t, "layout-full/full.toml")
	card := filepath.Join(folder, "1 bench card.pdf")
	before := read(t, card)
	overwrite(t, card, "mine")
	design := strings.TrimSuffix(folder, "-layout") + ".toml"
	var out, errs bytes.Buffer
	if code := run([]string{"layout", design}, &out, &errs); code != noAnswer || read(t, card) != "mine" ||
		!strings.Contains(errs.String(), "--replace") {
		t.Errorf("exit %d: %s", code, &errs)
	}
	if code := run([]string{"layout", design, "--replace"}, &out, &errs); code != allHold || read(t, card) != before {
		t.Errorf("exit %d: %s", code, &errs)
	}
	nothingLeft(t, filepath.Dir(folder), "full.toml", "full-layout")
}

// nothingLeft checks that a folder holds these and nothing else.
func nothingLeft(t *testing.T, folder string, want ...string) {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	if len(names) != len(want) {
		t.Errorf("%s holds %q, want %q", folder, names, want)
	}
}

// TestLayoutUnwritable: a folder that nobody may write to leaves nothing, and says why.
func TestLayoutUnwritable(t *testing.T) {
	if os.Geteuid() == 0 {
		t.Skip("NOT CHECKED: to root every folder is open; the full disk is checked instead")
	}
	here := t.TempDir()
	design := filepath.Join(here, "full.toml")
	overwrite(t, design, designText(t, "layout-full/full.toml"))
	if err := os.Chmod(here, 0o555); err != nil {
		t.Fatal(err)
	}
	defer os.Chmod(here, 0o755)
	var out, errs bytes.Buffer
	if code := run([]string{"layout", design}, &out, &errs); code != noAnswer || !strings.Contains(errs.String(), "permission denied") {
		t.Errorf("exit %d: %s", code, &errs)
	}
	nothingLeft(t, here, "full.toml")
}

// TestLayoutFullDisk: a disk of 48 kB takes half of a layout; nothing of it is left.
func TestLayoutFullDisk(t *testing.T) {
	here := t.TempDir()
	if out, err := exec.Command("mount", "-t", "tmpfs", "-o", "size=48k", "tmpfs", here).CombinedOutput(); err != nil {
		t.Skipf("NOT CHECKED: no small disk can be mounted here: %s", out)
	}
	defer func() {
		if out, err := exec.Command("umount", here).CombinedOutput(); err != nil {
			t.Errorf("umount: %s", out)
		}
	}()
	design := filepath.Join(here, "full.toml")
	overwrite(t, design, designText(t, "layout-full/full.toml"))
	var out, errs bytes.Buffer
	if code := run([]string{"layout", design}, &out, &errs); code != noAnswer ||
		!strings.Contains(errs.String(), "no space left") || !strings.Contains(errs.String(), "Nothing was kept") {
		t.Errorf("exit %d: %s", code, &errs)
	}
	nothingLeft(t, here, "full.toml")
}

// TestBenchCard reads the card of the built-in chair by poppler and holds it to sums by hand, in
// inches: the square corner is plumb under the tail tip, 42·sin(24/42) = 22.71 behind the low
// point; the tips are 42·(1 − cos(17/42)) = 3.39 and 42·(1 − cos(24/42)) = 6.67 high, and
// 2·42·sin(41/84) = 39.38 apart; the top edge has 42 − 2 1/4, and a bit of 1/2 in runs a
// quarter outside the wood; nine strips of 1/4 in are bent over (42 − 1 1/8)·80/81 ∓ 1 1/8 =
// 39.25 and 41.50; the front legs meet the top edge √(18² − (5/8)²) − 9 = 8.99 ahead, where it
// rises at asin(8.99/39.75) = 13.1 degrees.
func TestBenchCard(t *testing.T) {
	folder, _ := kept(t, "")
	text := strings.Join(strings.Fields(reader(t, "pdftotext", "-layout", filepath.Join(folder, "1 bench card.pdf"), "-")), " ")
	for _, want := range []string{
		"FLOOR EDGE RADIUS 42 in", "FORM RADIUS 39 1/4 in, form inside the curve",
		"pivot forward of the square corner 22 11/16 in", "pivot over the floor line 42 in", "pin to pencil, top edge 39 3/4 in",
		"bit, lower edge 42 1/4 in", "bit, top edge 39 1/2 in", "Low point 22 11/16 in forward",
		"Nose tip 3 3/8 in and tail tip 6 11/16 in off the floor; 39 3/8 in tip to tip, 41 in along the floor edge",
		"9 strips of 0.25 in for each rocker, 45 in long", "springs back by 1/81",
		"FORM RADIUS, form inside the curve 39 1/4 in", "FORM RADIUS, form outside the curve 41 1/2 in",
		"bears strips up to 0.318 in at 39 3/4 in",
		"meets the rocker, ahead of the low point 9 -9 in", "bevel, rocker to leg, towards the nose 77 103 degrees",
		"EMPTY, the level shows", "NOBODY in it, the seat should fall 11 degrees",
		"(owner, at ease: 11 1/2 degrees, to 15 degrees by the feet): cut nothing by that.",
		"seat falls 14 degrees", "Seat: the grain runs front to back.",
		"NOT DRAWN, SO TAKEN: front legs plumb under the seat's front edge",
		"(30) ________", "(32) ________", "(35) left", "(36) right", "(20) weight of the finished piece", "(29) balances on a dowel",
		"low point is station 3", "A calculation for your judgement, no certificate.",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q on the card:\n%s", want, text)
		}
	}
}

// TestHostileTitles: whatever a title or a name holds, the layout is written, and nothing leaves its folder.
func TestHostileTitles(t *testing.T) {
	here := t.TempDir()
	t.Chdir(here)
	for i, name := range []string{"<script>alert(1)</script>", "../../../evil", "a/b\\\\c", "ש לום \u202e x",
		"(a) \\\\ ) % 100 %%", "=cmd|'/c calc'!A1", strings.Repeat("long ", 2000), "🪑 stuhl"} {
		text := designText(t, "layout-full/full.toml")
		text = strings.Replace(text, `"Sculpted rocker"`, `"`+name+`"`, 1)
		text = strings.NewReplacer(`"headrest"`, `"`+name+`"`, `"rear post"`, `"`+name+`"`).Replace(text)
		overwrite(t, "x.toml", text)
		var out, errs bytes.Buffer
		if code := run([]string{"layout", "x.toml", "--replace"}, &out, &errs); code != allHold {
			t.Errorf("title %d: exit %d: %s", i, code, &errs)
		}
		nothingLeft(t, here, "x.toml", "x-layout")
		for file, data := range filesIn(t, "x-layout") {
			switch {
			case strings.HasSuffix(file, ".svg") && strings.Contains(data, "<script"):
				t.Errorf("%s holds a script", file)
			case file == "cut list.csv" && strings.Contains(data, "\n="):
				t.Errorf("the cut list holds a formula:\n%s", data)
			case strings.HasSuffix(file, ".pdf"):
				if said := reader(t, "pdfinfo", filepath.Join("x-layout", file)); strings.Contains(said, "Error") {
					t.Errorf("%s: %s", file, said)
				}
			}
		}
	}
}

// TestNoLinePartsAFraction: neither 3 from 13/16 nor both from their unit, on any card.
func TestNoLinePartsAFraction(t *testing.T) {
	parted := regexp.MustCompile(`(?m)[ (]\d+ *\n *(\d+/\d+|in|mm)\b`)
	for _, file := range layouts {
		folder, _ := kept(t, file)
		for name := range filesIn(t, folder) {
			if !strings.HasSuffix(name, ".pdf") || strings.Contains(name, "(") { // the patterns have no running text
				continue
			}
			if m := parted.FindString(reader(t, "pdftotext", "-layout", filepath.Join(folder, name), "-")); m != "" {
				t.Errorf("%s of %q: %q", name, file, m)
			}
		}
	}
}

// TestCuttingFiles: every DXF and SVG for cutting has closed outlines, the DXF with arcs as
// bulges and the unit in its text and its name.
func TestCuttingFiles(t *testing.T) {
	// outlines and bulges: the full chair's rocker has the tapered top's arcs, at least; a form four arcs or two;
	// the joints of a panel are marks in one outline
	want := map[string][2]int{
		"rocker": {1, 2}, "rockers left and right": {2, 4},
		"form inside the curve": {1, 2}, "form outside the curve": {1, 1},
		"headrest": {1, 0}, "arms left and right": {2, 0},
		"front legs left and right": {2, 0}, "rear legs left and right": {2, 0},
		"front posts left and right": {2, 0}, "rear posts left and right": {2, 0},
	}
	for _, file := range layouts {
		folder, _ := kept(t, file)
		for name, data := range filesIn(t, folder) {
			part, unit, _ := strings.Cut(strings.TrimPrefix(name, "for cutting/"), " (")
			switch filepath.Ext(name) {
			case ".dxf":
				r := readDXF(t, filepath.Join(folder, name))
				bulges := 0
				for _, straight := range slices.Concat(r.Straight...) {
					if !straight {
						bulges++
					}
				}
				if r.Version != "AC1009" || len(r.Errors) > 0 || slices.Contains(r.Closed, false) ||
					len(r.Parts) != want[part][0] || bulges < want[part][1] {
					t.Errorf("%s of %q: %s, %q, closed %v, %d outlines with %d bulges", name, file, r.Version, r.Errors, r.Closed, len(r.Parts), bulges)
				}
				word := strings.TrimSuffix(unit, ").dxf")
				if !slices.ContainsFunc(r.Texts, func(text string) bool { return strings.HasPrefix(strings.ToLower(text), "units: "+word) }) {
					t.Errorf("%s of %q does not say its unit: %q", name, file, r.Texts)
				}
			case ".svg":
				_, group, _ := strings.Cut(data, `id="OUTLINE"`)
				group, _, _ = strings.Cut(group, "</g>")
				if paths := strings.Count(group, "<path"); paths != want[part][0] || strings.Count(group, "Z") != paths ||
					!strings.HasPrefix(unit, "millimetres") {
					t.Errorf("%s of %q: %d outlines", name, file, paths)
				}
			}
		}
	}
}
