package main

import (
	"bytes"
	"math"
	"path/filepath"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/cmd/internal/design"
	"rockerwright/sim/quantity"
)

const legsDrawn = `
[[leg]]
name = "fore post"
at = 6
rake = 4
splay = 5
[[leg]]
kind = "rear"
name = "hind post"
at = -7
rake = -7
splay = 6
block = "3/4"
`

// cutDesigns are a drawn design of each kind, and one in millimetres.
var cutDesigns = []struct {
	kind, file string // a file of the command tests, else the starting design of the kind
	drawn      string // besides
	changes    []string
	gap        float64 // cutter and web, m
}{
	{"chair", "layout-full/full.toml", "", nil, 5. / 8 * 0.0254},
	{"settee", "", legsDrawn, []string{"shop.cutter=1/4", "shop.web=1/4"}, 0.5 * 0.0254},
	{"child", "", legsDrawn, []string{"rocker.made=sawn"}, 5. / 8 * 0.0254},
	{"cradle", "", "", []string{"rocker.made=sawn"}, 5. / 8 * 0.0254},
	{"horse", "", "", []string{"shop.cutter=1"}, 9. / 8 * 0.0254},
	{"metric chair", "layout-metric/metric.toml", "", nil, 0.015},
}

// TestCutListAndOutlines reads what a layout of each kind writes for the saw and for the machine, by other readers, and holds that
// both have the same parts, as many and as long: what is in a pair's file is two of a row, as long along the
// grain; a rocker to be bent is along its lower edge as long as its strips; a panel has the sides of its
// staves. Outlines lie in the one board on its own layer, a cutter and its web apart.
func TestCutListAndOutlines(t *testing.T) {
	for _, tt := range cutDesigns {
		t.Run(tt.kind, func(t *testing.T) {
			text, _ := design.Start(tt.kind)
			units, step := quantity.Inch, 0.0254/16
			if tt.file != "" {
				text = designText(t, tt.file)
			}
			if strings.Contains(text, `"metric"`) {
				units, step = quantity.Metric, 1e-3
			}
			t.Chdir(t.TempDir())
			overwrite(t, "x.toml", text+tt.drawn)
			var out, errs bytes.Buffer
			if code := run(append([]string{"layout", "x.toml"}, tt.changes...), &out, &errs); code == noAnswer {
				t.Fatal(errs.String())
			}
			rows := cutRows(t, "x-layout/cut list.csv", units)
			files, err := filepath.Glob("x-layout/for cutting/*.svg")
			if err != nil || len(files) == 0 {
				t.Fatal(err)
			}
			unit := map[quantity.System]string{quantity.Inch: " (inches).dxf", quantity.Metric: " (millimetres).dxf"}[units]
			for _, file := range files {
				path := strings.TrimSuffix(file, " (millimetres).svg")
				name, a, b := filepath.Base(path), cutSVG(t, file), cutDXF(t, path+unit)
				alikeInBoth(t, name, a, b)
				spacing(t, name, a, tt.gap)
				spacing(t, name, b, tt.gap)
				one, paired := strings.CutSuffix(name, "s left and right")
				stave, isPanel := rows["stave of the "+name]
				_, wide := extent(b.parts[0].points())
				switch row, listed := rows[one]; {
				case paired:
					for _, o := range b.parts {
						_, size := extent(o.points())
						if !listed || row.count != len(b.parts) || math.Abs(size.X-row.length) > step/2+1e-6 || math.Abs(size.Y-row.width) > step/2+1e-6 {
							t.Errorf("%s: %d outlines, %v m by %v; the cut list has %+v", name, len(b.parts), size.X, size.Y, row)
						}
					}
					delete(rows, one)
				case isPanel:
					widest, sides := 0.0, 0
					for _, s := range b.parts[0] {
						sides++
						widest = max(widest, s.length())
					}
					if sides != 2*stave.count+2 || math.Abs(widest-stave.width) > step/2+1e-6 {
						t.Errorf("%s: %d sides, the widest %v m; the cut list has %+v", name, sides, widest, stave)
					}
					delete(rows, "stave of the "+name)
				case name == "rocker":
					bent(t, rows, b.parts[0], step)
				case !strings.HasPrefix(name, "form ") || len(b.parts) != 1 || wide.X < 0.3:
					t.Errorf("%s: %d outlines, of which no row tells", name, len(b.parts))
				}
			}
			for part := range rows { // what is left has no outline: boards, sticks and what is turned
				leg := (strings.HasSuffix(part, " post") || strings.HasSuffix(part, " leg")) && !strings.HasPrefix(part, "block")
				if leg || part == "arm" || part == "rocker" || strings.HasPrefix(part, "stave") {
					t.Errorf("%s has no outline", part)
				}
			}
		})
	}
}

// bent holds strips, or wood to be steamed, to the longer side of the rocker's outline, between its ends.
func bent(t *testing.T, rows map[string]cutRow, rocker cutOutline, step float64) {
	t.Helper()
	row, steamed := rows["rocker, to be steamed"]
	strips, laminated := rows["strip of the rockers"]
	if !steamed && !laminated {
		return // sawn, and in the file of the pair
	}
	if laminated {
		row = strips
	}
	longest, run := 0.0, 0.0
	for _, s := range rocker {
		if run += s.length(); s.straight {
			run = 0
		}
		longest = max(longest, run)
	}
	if math.Abs(longest-row.length) > step/2+1e-4 { // the chords of the arcs
		t.Errorf("a rocker is %v m along its lower edge; the cut list has %+v", longest, row)
	}
}

// alikeInBoth holds that DXF and SVG have the same outlines and boards, to the SVG's last digits.
func alikeInBoth(t *testing.T, name string, a, b cutFile) {
	t.Helper()
	if len(a.parts) != len(b.parts) || len(a.parts) == 0 || len(a.stock) != len(b.stock) {
		t.Fatalf("%s: %d and %d outlines, %d and %d boards", name, len(a.parts), len(b.parts), len(a.stock), len(b.stock))
	}
	const digits = 1e-6 // m: ten thousandths of a millimetre, and the chords of 400 to an arc
	for i := range a.parts {
		_, p := extent(a.parts[i].points())
		_, q := extent(b.parts[i].points())
		if r2.Norm(r2.Sub(p, q)) > 5*digits || len(a.parts[i]) != len(b.parts[i]) {
			t.Errorf("%s: outline %d is %v m in SVG, %v in DXF, of %d and %d strokes", name, i, p, q, len(a.parts[i]), len(b.parts[i]))
		}
	}
}

// spacing holds that outlines are no nearer than the gap to each other, and lie in the board.
func spacing(t *testing.T, name string, f cutFile, gap float64) {
	t.Helper()
	if paired := strings.HasSuffix(name, " left and right"); paired != (len(f.stock) == 1) || paired != (len(f.parts) == 2) {
		t.Errorf("%s: %d outlines in %d boards", name, len(f.parts), len(f.stock))
	}
	for i, o := range f.parts {
		for _, other := range f.parts[:i] {
			const digits = 1e-6                                               // m: of the SVG
			if got := nearest(o, other); got < gap-digits || got > gap+1e-3 { // and no wood wasted
				t.Errorf("%s: outlines are %v mm apart, want a cutter and its web, %v", name, got*1e3, gap*1e3)
			}
		}
		for _, board := range f.stock {
			low, size := extent(board)
			at, reach := extent(o.points())
			if off := r2.Sub(at, low); off.X < -1e-6 || off.Y < -1e-6 || off.X+reach.X > size.X+1e-6 || off.Y+reach.Y > size.Y+1e-6 {
				t.Errorf("%s: an outline of %v at %v is out of its board of %v", name, reach, off, size)
			}
		}
	}
}
