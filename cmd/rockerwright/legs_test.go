package main

import (
	"bytes"
	"fmt"
	"math"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/cmd/internal/design"
	"rockerwright/sim/quantity"
)

// splayed are two pairs of legs, raked and splayed; front feet out, rear feet in.
const splayed = `
[[leg]]
name = "fore leg"
at = "%s"
rake = 4
splay = 5
top = "%s"
%[3]s
[[leg]]
kind = "rear"
name = "hind leg"
at = "-%[1]s"
rake = -7
splay = -6
top = "%[2]s"
%[3]s
`

// legsOf lays a design out with legs in place of its own, and returns the file's units.
func legsOf(t *testing.T, text, legs string) quantity.System {
	t.Helper()
	units := quantity.Inch
	if strings.Contains(text, `"metric"`) {
		units = quantity.Metric
	}
	for _, part := range strings.Split(text, "\n[")[1:] {
		if strings.HasPrefix(part, "[leg]]") {
			text = strings.Replace(text, "\n["+part, "", 1)
		}
	}
	overwrite(t, "x.toml", text+"\n"+legs)
	var out, errs bytes.Buffer
	if code := run([]string{"layout", "x.toml", "--replace", "--paper", "roll 36 in"}, &out, &errs); code == noAnswer {
		t.Fatalf("%s\n%s", &errs, text+legs)
	}
	return units
}

// onPages returns the text of a layout's PDF, its words a space apart.
func onPages(t *testing.T, glob string) string {
	t.Helper()
	files, err := filepath.Glob("x-layout/" + glob)
	if err != nil || len(files) != 1 {
		t.Fatalf("%q are %q", glob, files)
	}
	return reader(t, "mutool", "draw", "-q", "-N", "-F", "txt", files[0]) // reads turned words whole
}

// lengthsOnPages returns all lengths that a page gives of legs: the cells of rows that begin with the word, and
// what is "long".
func lengthsOnPages(t *testing.T, glob string, units quantity.System) (list []float64) {
	t.Helper()
	const number = `(\d+(?: \d+/\d+)?|\d+/\d+)`
	var texts []string
	files, err := filepath.Glob("x-layout/" + glob)
	if err != nil || len(files) != 1 {
		t.Fatalf("%q are %q", glob, files)
	}
	for _, line := range strings.Split(reader(t, "pdftotext", "-layout", files[0], "-"), "\n") {
		if cells := regexp.MustCompile(`  +`).Split(strings.TrimSpace(line), -1); len(cells) > 2 && strings.Contains(cells[0], "length") {
			texts = append(texts, cells[1:len(cells)-1]...)
		}
	}
	text := strings.Join(strings.Fields(onPages(t, glob)), " ")
	for _, m := range regexp.MustCompile(number+` (?:in|mm) long, foot|leg, `+number+` (?:in|mm) long`).FindAllStringSubmatch(text, -1) {
		texts = append(texts, m[1]+m[2])
	}
	for _, text := range texts {
		x, err := quantity.Parse(text, quantity.Length, units)
		if err != nil {
			t.Errorf("%s: %q: %v", glob, text, err)
		}
		list = append(list, x)
	}
	return list
}

// TestOneLegOneLength: bench card, leg sheet, pattern, DXF, SVG and cut list tell the same length of a leg for
// five kinds, with a block and without; on a block the foot is square, no word says otherwise, and the
// block's four heights stand beside it.
func TestOneLegOneLength(t *testing.T) {
	if testing.Short() {
		t.Skip("twelve layouts are written and read only without -short")
	}
	for _, tt := range []struct{ kind, file, at, top string }{
		{"chair", "layout-full/full.toml", "7", "14"},
		{"settee", "", "7", "13"}, {"child", "", "5", "8"},
		{"cradle", "", "5", "11"}, {"horse", "", "8", "16"},
		{"metric chair", "layout-metric/metric.toml", "180 mm", "350 mm"},
	} {
		for _, block := range []string{"", `block = "3/4 in"`} {
			t.Run(strings.TrimSpace(tt.kind+" "+block), func(t *testing.T) {
				text, _ := design.Start(tt.kind)
				if tt.file != "" {
					text = designText(t, tt.file)
				}
				t.Chdir(t.TempDir())
				units := legsOf(t, text, fmt.Sprintf(splayed, tt.at, tt.top, block))
				oneLength(t, units, block != "")
			})
		}
	}
}

// oneLength holds all that a layout writes of its two pairs of legs against its cut list.
func oneLength(t *testing.T, units quantity.System, blocked bool) {
	t.Helper()
	rows := cutRows(t, "x-layout/cut list.csv", units)
	step := map[quantity.System]float64{quantity.Inch: 0.0254 / 16, quantity.Metric: 1e-3}[units]
	fore, hind := rows["fore leg"].length, rows["hind leg"].length
	for _, glob := range []string{"1 bench card.pdf", "* legs.pdf"} {
		lengths := lengthsOnPages(t, glob, units)
		var fores, hinds int
		for i, x := range lengths {
			if want := [2]float64{fore, hind}[i%2]; math.Abs(x-want) > 1e-9 {
				t.Errorf("%s: leg %d is %v in long, %v in the cut list: %v", glob, i%2+1, x/0.0254, want/0.0254, lengths)
			} else if i%2 == 0 {
				fores++
			} else {
				hinds++
			}
		}
		if fores == 0 || hinds == 0 {
			t.Errorf("%s: %d and %d lengths of the legs", glob, fores, hinds)
		}
	}
	for name, want := range map[string]float64{"fore leg": fore, "hind leg": hind} {
		pattern := "* " + name + "s left and right*.pdf"
		if lengths := lengthsOnPages(t, pattern, units); len(lengths) != 1 || math.Abs(lengths[0]-want) > 1e-9 {
			t.Errorf("%s: %v on the pattern, %v in the cut list", name, lengths, want)
		}
		base := "x-layout/for cutting/" + name + "s left and right ("
		unit := map[quantity.System]string{quantity.Inch: "inches", quantity.Metric: "millimetres"}[units]
		dxf := cutDXF(t, base+unit+").dxf")
		for _, file := range []cutFile{dxf, cutSVG(t, base+"millimetres).svg")} {
			for _, leg := range file.parts {
				_, size := extent(leg.points())
				foot := 0.0 // by how much out of square
				for _, s := range leg {
					if way := r2.Sub(s.points[len(s.points)-1], s.points[0]); math.Abs(way.Y) > size.Y/2 {
						foot = max(foot, math.Abs(way.X))
					}
				}
				if math.Abs(size.X-want) > step/2+1e-6 || blocked != (foot < 1e-6) {
					t.Errorf("%s: an outline of %v, its foot %v m out of square; %v in the cut list", name, size, foot, want)
				}
			}
		}
		said := strings.Join(strings.Fields(onPages(t, pattern)), " ")
		heights := regexp.MustCompile(`sawn square.* inner corner, .* outer; .* inner, .* outer`).MatchString(said)
		if blocked != heights || blocked == strings.Contains(said, "out of square") || blocked == strings.Contains(said, "slanting") {
			t.Errorf("%s says %q", pattern, said)
		}
	}
}

// TestLegByHand: a leg of 1 1/2 in on an arc of 42 in under a concentric top of 2 in, into a seat of 1 3/4 in, 14 in up.
// Its foot is at 42 − √(40² − 8²) = 2.808 up, where the top edge rises at asin(8/40) = 11.537 degrees. With 4 and
// 5 degrees of rake and splay it leans by (tan 4°, 1, tan 5°) = (−0.0699, 1, 0.0875): 11.192·√1.01254 = 11.262 long,
// along the edge −0.0699·cos + sin = 0.1315, square to it 0.0699·sin + cos = 0.9938, so out of square by
// 1.5·0.1315/0.9938 = 0.198 and 1.5·0.0875/0.9938 = 0.132: in all 11.262 + 1.75 + 0.165 = 13.177, 13 3/16. On a block of 3/4
// its middle is 3/4 + 0.099 + 0.066 = 0.915, the corners 0.75, 0.882, 0.948 and 1.080; the leg is shorter by 0.915·0.9938/√1.01254 = 0.904:
// 11.262 + 1.75 − 0.904 = 12.108, 12 1/8. The leg leans to the nose and inwards as it goes up: there the foot is the shorter.
func TestLegByHand(t *testing.T) {
	text, _ := design.Start("chair")
	t.Chdir(t.TempDir())
	const leg = "[[leg]]\nat = 8\nrake = 4\nsplay = 5\ntop = 14\nsize = \"1-1/2\"\n"
	text = strings.Replace(text, "[seat]", "depth = 2\n[seat]\nthickness = \"1-3/4\"", 1)
	legsOf(t, text, leg)
	said := strings.Join(strings.Fields(onPages(t, "* front legs left and right*.pdf")), " ")
	for _, want := range []string{"13 3/16 in long", "its shorter side faces the nose",
		"out of square by 5 degrees too: the inner side is shorter, by 1/8 in", "left, outer face", "right, outer face"} {
		if !strings.Contains(said, want) {
			t.Errorf("no %q in %q", want, said)
		}
	}
	legsOf(t, text, leg+"block = \"3/4\"\n")
	said = strings.Join(strings.Fields(onPages(t, "* front legs left and right*.pdf")), " ")
	for _, want := range []string{"12 1/8 in long",
		"at the nose 3/4 inner corner, 7/8 outer; at the tail 15/16 inner, 1 1/16 outer"} {
		if !strings.Contains(said, want) {
			t.Errorf("no %q in %q", want, said)
		}
	}
	legsOf(t, text, strings.Replace(leg, "splay = 5", "splay = -5", 1))
	said = strings.Join(strings.Fields(onPages(t, "* front legs left and right*.pdf")), " ")
	if !strings.Contains(said, "the outer side is shorter, by 1/8 in") || !strings.Contains(said, "left, inner face") {
		t.Errorf("splayed in: %q", said)
	}
}
