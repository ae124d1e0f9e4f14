package main

import (
	"bytes"
	"cmp"
	"encoding/json"
	"math"
	"path/filepath"
	"regexp"
	"strconv"
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
		if first != "size" && first != "whatif" || strings.Contains(args, "--all") || strings.Contains(args, "--json") ||
			strings.Contains(args, "--text") {
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

// TestVerdictNumbers holds of every kind of piece and many rockers that a margin printed in the verdict
// is that of the load that it is printed beside, as --json has it.
func TestVerdictNumbers(t *testing.T) {
	nearest := regexp.MustCompile(`(?:OTHERS:|,) nearest to going over is (.+?): ` +
		`([0-9./ ]+) degrees?(?:,| left before going) (backwards|forwards|to the left|to the right)`)
	owner := regexp.MustCompile(`YOUR OWNER, ([a-z ]+), feet o[nf]+ the floor: [^.]*?, ` +
		`([0-9./ ]+) degrees? left before going (backwards|forwards)(?:, (.+?))?\. `)
	checked := 0
	for _, kind := range []string{"chair", "child", "settee", "cradle", "horse"} {
		for _, change := range []string{"", "rocker.radius=30", "rocker.radius=36", "rocker.radius=50", "rocker.tail=15"} {
			if kind == "horse" && strings.HasPrefix(change, "rocker.") {
				change = "rocker.arcs.2.radius=" + change[strings.Index(change, "=")+1:]
			}
			file := filepath.Join(t.TempDir(), kind+".toml")
			var out, errs bytes.Buffer
			if run([]string{"new", kind, file}, &out, &errs); errs.Len() > 0 {
				t.Fatal(&errs)
			}
			args := []string{"check", file}
			if change != "" {
				args = append(args, change)
			}
			out.Reset()
			run(args, &out, &errs)
			text := strings.Join(strings.Fields(out.String()), " ")
			text, _, _ = strings.Cut(text, "HAZARDS:")
			out.Reset()
			run(append(args, "--json"), &out, &errs)
			var report struct {
				Loads []struct {
					Name          string
					Back, Forward struct {
						Margin *float64 `json:"margin_deg"`
					}
				}
			}
			if err := json.Unmarshal(out.Bytes(), &report); err != nil {
				t.Fatalf("%v: %v %s", args, err, &errs)
			}
			margin := map[string]float64{}
			for _, l := range report.Loads {
				if l.Back.Margin != nil {
					margin[l.Name+" back"] = *l.Back.Margin
				}
				if l.Forward.Margin != nil {
					margin[l.Name+" forward"] = *l.Forward.Margin
				}
			}
			same := func(name, side, shown string) {
				way := " forward"
				if side == "backwards" || side == "to the left" {
					way = " back"
				}
				want, known := margin[name+way]
				if got := mixed(shown); !known || math.Abs(got-want) > 0.25+1e-9 { // half of the shop's half degree
					t.Errorf("%v: the verdict gives %s%s %s degrees, --json %v", args, name, way, shown, want)
				}
				checked++
			}
			for _, m := range nearest.FindAllStringSubmatch(text, -1) {
				same(m[1], m[3], m[2])
			}
			for _, m := range owner.FindAllStringSubmatch(text, -1) {
				first, _, _ := strings.Cut(report.Loads[1].Name, ",")
				posture := cmp.Or(strings.TrimPrefix(strings.TrimPrefix(m[4], "feet off"), ", "), m[1])
				same(first+", "+posture, m[3], m[2])
			}
		}
	}
	if checked < 20 {
		t.Errorf("only %d numbers were found", checked)
	}
}

// mixed reads "62 1/2".
func mixed(text string) float64 {
	var sum float64
	for _, word := range strings.Fields(text) {
		over, under, fraction := strings.Cut(word, "/")
		n, _ := strconv.ParseFloat(over, 64)
		if fraction {
			d, _ := strconv.ParseFloat(under, 64)
			n /= d
		}
		sum += n
	}
	return sum
}
