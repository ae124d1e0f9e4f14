package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"errors"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"rockerwright/cmd/internal/design"
)

// browserModules are where the modules of the browser's checks are.
const browserModules = root + "/validation/node"

// pictures keeps what the browser showed, to be looked at.
var pictures = os.Getenv("ROCKERWRIGHT_PICTURES")

// browser returns node, or says why the browser's checks are left out.
func browser(t *testing.T) string {
	if testing.Short() {
		t.Skip("-short: no browser opened the reports")
	}
	node, err := exec.LookPath("node")
	if err != nil {
		t.Skip("node is not installed: no browser opened the reports")
	}
	chromium := os.Getenv("CHROMIUM")
	if chromium == "" {
		chromium = "/usr/bin/chromium"
	}
	if _, err := os.Stat(chromium); err != nil {
		t.Skip("chromium is not installed: no browser opened the reports")
	}
	if _, err := os.Stat(filepath.Join(browserModules, "node_modules/playwright-core")); err != nil {
		t.Skip("npm ci was not run in validation/node: no browser opened the reports")
	}
	if _, err := exec.LookPath("pdftotext"); err != nil {
		t.Skip("poppler is not installed: the printed reports cannot be read")
	}
	return node
}

// inBrowser opens the reports of a folder in a browser and returns what was found wrong,
// a line each.
func inBrowser(t *testing.T, node, folder string) []string {
	t.Helper()
	script, err := filepath.Abs(browserModules + "/reports.mjs")
	if err != nil {
		t.Fatal(err)
	}
	return saidBy(t, node, script, folder)
}

// saidBy runs a script of node, logs what it measured, and returns what it found wrong, a line
// each.
func saidBy(t *testing.T, node, script string, args ...string) []string {
	t.Helper()
	args = append([]string{script}, args...)
	if pictures != "" {
		args = append(args, pictures)
	}
	run := exec.Command(node, args...)
	run.Dir = filepath.Dir(script)
	out, err := run.CombinedOutput()
	if err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	var faults []string
	for line := range strings.Lines(string(out)) {
		if line = strings.TrimSpace(line); strings.HasPrefix(line, "measured ") {
			t.Log(line)
		} else {
			faults = append(faults, line)
		}
	}
	return faults
}

// called runs a command and returns what it printed; a limit that does not hold is an answer.
func called(t *testing.T, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	if code := run(args, &out, &errs); code == noAnswer {
		t.Fatalf("%v: %s", args, &errs)
	}
	return out.String()
}

// startIn writes a starting design into a folder and returns its path.
func startIn(t *testing.T, folder, kind string) string {
	t.Helper()
	text, _ := design.Start(kind)
	path := filepath.Join(folder, kind+".toml")
	overwrite(t, path, text)
	return path
}

// hostile is a design whose texts try to be something else than texts.
func hostile(t *testing.T, folder string) string {
	t.Helper()
	text, _ := design.Start("chair")
	title := `</pre></style><script>alert(1)</script>"'><img src=x onerror=alert(2)> כסא נדנדה 🪑 ` + strings.Repeat("Langer Name ", 834)
	name := `</td><script>alert(3)</script>&amp; סבתא \u202e 👵` + strings.Repeat("x", 10000)
	text = strings.Replace(text, `title = "Reading chair"`, "title = "+tomlText(title), 1)
	text = strings.Replace(text, `name   = "owner"`, "name = "+tomlText(name), 1)
	if !strings.Contains(text, "alert(3)") || !strings.Contains(text, "alert(1)") {
		t.Fatal("the starting design has another title or name")
	}
	path := filepath.Join(folder, "hostile.toml")
	overwrite(t, path, text)
	return path
}

// tomlText returns a text as a basic string of TOML; \u stays.
func tomlText(text string) string { return `"` + strings.ReplaceAll(text, `"`, `\"`) + `"` }

// motionOf returns times and tilts from the rest of what rock computes for a design on a floor that takes
// nothing and holds any force, as a report does where no floor is said.
func motionOf(t *testing.T, path string) [][2]float64 {
	t.Helper()
	rows, err := csv.NewReader(strings.NewReader(called(t, "rock", path, "floor.friction=10", "--csv", "--seconds",
		"12", "--every", "0.1"))).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var answer struct {
		Loads []struct {
			Rest float64 `json:"rest_tilt_deg"`
		}
	}
	if err := json.Unmarshal([]byte(called(t, "check", path, "--json")), &answer); err != nil {
		t.Fatal(err)
	}
	var motion [][2]float64
	for _, row := range rows[1:] {
		time, errTime := strconv.ParseFloat(row[0], 64)
		tilt, errTilt := strconv.ParseFloat(row[1], 64)
		if err := errors.Join(errTime, errTilt); err != nil {
			t.Fatal(err)
		}
		motion = append(motion, [2]float64{time, tilt*180/math.Pi - answer.Loads[1].Rest})
	}
	return motion
}

// TestReportsInBrowser opens, prints and rocks a report of each kind, of a class and of a
// hostile design in a browser; see validation/node/reports.mjs for what it holds. The
// design taken out of the report gives the same JSON.
func TestReportsInBrowser(t *testing.T) {
	node := browser(t)
	folder := t.TempDir()
	expected := map[string][][2]float64{}
	paths := map[string]string{"hostile": hostile(t, folder)}
	for _, kind := range design.Starts() {
		paths[kind] = startIn(t, folder, kind)
		expected[kind+".html"] = motionOf(t, paths[kind])
	}
	for name, path := range paths {
		called(t, "report", path, "-o", filepath.Join(folder, name+".html"))
	}
	called(t, "report", paths["chair"], "rocker.radius=38,46", "-o", filepath.Join(folder, "class.html"))
	data, err := json.Marshal(expected)
	if err != nil {
		t.Fatal(err)
	}
	overwrite(t, filepath.Join(folder, "expected.json"), string(data))
	for _, fault := range inBrowser(t, node, folder) {
		t.Error(fault)
	}
	for name, path := range paths {
		again := filepath.Join(t.TempDir(), "again.toml")
		overwrite(t, again, read(t, filepath.Join(folder, name+".design.txt")))
		if called(t, "check", path, "--json") != called(t, "check", again, "--json") {
			t.Errorf("%s: the design taken out of the report is another one", name)
		}
	}
}

// TestBrowserFindsFaults holds that the browser's checks can fail: of two pages with one
// fault of each sort all are told. The first breaks the page's own policy; the second has
// one that lets its changed parts through.
func TestBrowserFindsFaults(t *testing.T) {
	node := browser(t)
	folder := t.TempDir()
	path := startIn(t, folder, "chair")
	expected, err := json.Marshal(map[string][][2]float64{"broken.html": motionOf(t, path)})
	if err != nil {
		t.Fatal(err)
	}
	overwrite(t, filepath.Join(folder, "expected.json"), string(expected))
	called(t, "report", path, "-o", filepath.Join(folder, "broken.html"))
	page := read(t, filepath.Join(folder, "broken.html"))
	overwrite(t, filepath.Join(folder, "blocked.html"), replaced(t, page,
		"<header>", `<header><img src="http://192.0.2.1/x.png"><script>alert(1)</script><p id="first">twice</p>`,
		"let now = null", "let  now = null"))
	broken := replaced(t, page,
		".block { margin: .75rem 0; }", ".block { margin: .75rem 0; color: #bbb; }",
		"main { max-width: 50rem;", "main { width: 60rem;",
		"figure, tr, .owner .block { break-inside: avoid; }", "",
		".owner { break-before: page;", ".owner {",
		"rotate(${turn})", "rotate(${1.01 * turn})",
		"(speed * (at - last))", "(1.2 * speed * (at - last))",
		"if (calm.matches) return;", "",
		"= again.hidden = calm.matches", "= again.hidden = false",
		`addEventListener("beforeprint"`, `addEventListener("never"`)
	policy := regexp.MustCompile(`style-src '[^']*'; script-src '[^']*'`)
	broken = policy.ReplaceAllString(broken, "style-src 'unsafe-inline'; script-src 'unsafe-inline'")
	overwrite(t, filepath.Join(folder, "broken.html"), broken)
	faults := strings.Join(inBrowser(t, node, folder), "\n")
	for _, want := range []string{
		"blocked.html: it asks for http", "blocked.html: the console says", "no-dup-id", "image-alt", "blocked.html: it has no buttons",
		"color-contrast", "phone: the page is", "the owner's page does not begin the last sheet",
		"off the computed motion", "of true speed", "with reduced motion there are the buttons", "it is not still on paper",
	} {
		if !strings.Contains(faults, want) {
			t.Errorf("nothing was said of %q:\n%s", want, faults)
		}
	}
}

// replaced returns a text with other parts in the place of some, which must be there.
func replaced(t *testing.T, text string, pairs ...string) string {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		if !strings.Contains(text, pairs[i]) {
			t.Fatalf("the report has no %q", pairs[i])
		}
	}
	return strings.NewReplacer(pairs...).Replace(text)
}
