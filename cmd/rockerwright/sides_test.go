package main

import (
	"bytes"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"rockerwright/cmd/internal/design"
)

// TestCornersAtTheirPlaces reads the stations of the built-in chair: its square tail, 24/42 rad behind, has its tip 42·sin = 22.71
// behind the low point and its top corner, under 2 1/4 in, 39.75·sin = 21.49; in front, 17/42 rad, 16.54 and 15.65.
// They are 42 − 39.75·cos = 8.57 and 5.46 high, the floor edge under them 5.92 and 3.03. Past its corner an edge has no height.
func TestCornersAtTheirPlaces(t *testing.T) {
	folder, _ := kept(t, "")
	text := reader(t, "pdftotext", "-layout", filepath.Join(folder, "1 bench card.pdf"), "-")
	for _, want := range []string{
		`nose tip, 16 9/16 +3 3/8 +–`, `nose top corner, 15 5/8 +3 +5 7/16`,
		`tail tip, -22 11/16 +6 11/16 +–`, `tail top corner, -21 1/2 +5 15/16 +8 9/16`, `(?m)^-22 +6 1/4 +–`,
	} {
		if !regexp.MustCompile(want).MatchString(text) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
}

// TestStraightTopOffered types in what a straight top that cannot be is answered with, inch and metric: it is laid out.
func TestStraightTopOffered(t *testing.T) {
	for _, file := range []string{"layout-full/full.toml", "layout-metric/metric.toml"} {
		text := regexp.MustCompile(`(?m)^(nose|tail)_depth.*\n`).ReplaceAllString(designText(t, file), "")
		t.Chdir(t.TempDir())
		overwrite(t, "x.toml", text)
		changes := []string{"layout", "x.toml", "--replace", "rocker.top=straight", "rocker.depth=2 in"}
		var out, errs bytes.Buffer
		if code := run(changes, &out, &errs); code != noAnswer {
			t.Fatalf("%s: exit %d", file, code)
		}
		said := strings.Join(strings.Fields(errs.String()), " ")
		offered := regexp.MustCompile(`For example: depth = "?([0-9/-]+)"?`).FindStringSubmatch(said)
		if offered == nil {
			t.Fatalf("%s: %s", file, &errs)
		}
		changes[len(changes)-1] = "rocker.depth=" + offered[1]
		errs.Reset()
		if code := run(changes, &out, &errs); code == noAnswer {
			t.Errorf("%s: %s: %s", file, offered[1], &errs)
		}
	}
}

// TestPatternsNameTheirSides: the files for cutting of each kind say at which end and at which side of a part is what; of a cradle
// that rocks sideways, right and left.
func TestPatternsNameTheirSides(t *testing.T) {
	wood := map[string][]string{
		"rocker":                {"nose", "tail", "up"},
		"form inside the curve": {"nose", "tail", "up"}, "form outside the curve": {"nose", "tail", "up"},
		"rockers left and right":    {"nose", "tail", "up", "left, inner face", "right, inner face"},
		"arms left and right":       {"front", "back", "inside", "left, top face", "right, top face"},
		"front legs left and right": {"nose", "tail", "seat, up", "foot", "left, outer face", "right, outer face"},
	}
	cradle := map[string][]string{
		"rocker": {"right", "left", "up"}, "form inside the curve": {"right", "left", "up"},
		"rockers left and right": {"right", "left", "up", "head end, inner face", "foot end, inner face"},
	}
	for _, kind := range []string{"chair", "settee", "child", "cradle", "horse"} {
		text, _ := design.Start(kind)
		t.Chdir(t.TempDir())
		overwrite(t, "x.toml", text)
		want := wood
		if kind == "cradle" {
			want = cradle
		}
		checked := 0
		for _, made := range []string{"laminated", "sawn"} {
			var out, errs bytes.Buffer
			if code := run([]string{"layout", "x.toml", "--replace", "rocker.made=" + made}, &out, &errs); code == noAnswer {
				t.Fatal(errs.String())
			}
			for name, words := range want {
				files, err := filepath.Glob("x-layout/for cutting/" + name + " (*.dxf")
				if err != nil {
					t.Fatal(err)
				}
				if len(files) == 0 {
					continue // a horse has no arms, bent rockers no board
				}
				checked++
				texts := cutDXF(t, files[0]).texts
				for _, word := range words {
					if !slices.Contains(texts, word) {
						t.Errorf("%s: no %q on %s: %q", kind, word, name, texts)
					}
				}
				if kind == "cradle" && (slices.Contains(texts, "nose") || slices.Contains(texts, "tail")) {
					t.Errorf("%s of a cradle that rocks sideways has a nose or a tail: %q", name, texts)
				}
			}
		}
		if checked < 4 {
			t.Errorf("%s: %d files", kind, checked)
		}
	}
}
