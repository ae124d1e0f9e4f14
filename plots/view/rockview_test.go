package view

import (
	"bytes"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/trial"
)

// rockings are motions of every sort of piece that stands.
func rockings(t *testing.T) map[string]trial.Rocking {
	t.Helper()
	list := map[string]trial.Rocking{}
	for name, d := range designs() {
		if r, err := trial.Rock(d, trial.RockOptions{Duration: 12}); err == nil {
			list[name] = r
		}
	}
	if len(list) < 5 {
		t.Fatalf("only %d pieces rock", len(list))
	}
	return list
}

// samplesIn returns the samples an SVG carries.
func samplesIn(t *testing.T, svg string) (every float64, rows [][]float64) {
	t.Helper()
	found := regexp.MustCompile(`data-samples="([^"]*)"`).FindStringSubmatch(svg)
	if found == nil {
		t.Fatal("there are no samples")
	}
	parts := strings.Split(found[1], ";")
	every, err := strconv.ParseFloat(parts[0], 64)
	if err != nil {
		t.Fatal(err)
	}
	for _, part := range parts[1:] {
		var row []float64
		for _, field := range strings.Fields(part) {
			x, err := strconv.ParseFloat(field, 64)
			if err != nil {
				t.Fatal(err)
			}
			row = append(row, x)
		}
		rows = append(rows, row)
	}
	return every, rows
}

// TestSamplesMoveThePiece moves points of the piece as the script does, and holds that they
// are where the pose at the computed tilt has them, and that the rocker stays on the floor.
func TestSamplesMoveThePiece(t *testing.T) {
	for name, r := range rockings(t) {
		ghosts := ghostsOf(r.Report)
		ghosts[len(ghosts)-1] = ghost{name: "seated", load: r.Load, tilt: r.Load.Balance.Rest.Tilt, moves: true}
		list, _ := instants(r)
		least, most := between(list)
		reach := []ghost{{load: r.Load, tilt: least}, {load: r.Load, tilt: most}}
		room := area{width: viewWidth - panelWide, high: rockingHigh, least: rockingLeast, top: rockingTop, low: rockingLow}
		view := frameOf(r.Report, append(reach, ghosts...), room)
		every, rows := samplesIn(t, drawn(t, RockingView(r), scene.SVG))
		if len(rows) < 100 {
			t.Errorf("%s: %d samples", name, len(rows))
		}
		for i := 0; i < len(rows); i += 7 {
			tilt := r.Trace.At(float64(i) * every).Tilt
			at, rest := poseAt(r.Report, tilt), poseAt(r.Report, r.Load.Balance.Rest.Tilt)
			for _, q := range []r2.Vec{r.Report.Edge.Nose(), r.Report.Edge.Tail(), r.Load.Rig.Body.Centre} {
				moved := r2.Add(r2.Rotate(view.svg(rest.place(q)), rows[i][2]*math.Pi/180, r2.Vec{}), r2.Vec{X: rows[i][0], Y: rows[i][1]})
				// hundredths of a mm in x and y, thousandths of a degree at 200 mm
				if off := r2.Norm(r2.Sub(moved, view.svg(at.place(q)))); off > 0.012 {
					t.Errorf("%s, sample %d: a point is %.3f mm off", name, i, off)
				}
			}
			touched := r2.Add(view.svg(rest.place(rest.contact)), r2.Vec{X: rows[i][3], Y: rows[i][4]})
			if off := r2.Norm(r2.Sub(touched, view.svg(at.place(at.contact)))); off > 0.01 {
				t.Errorf("%s, sample %d: the contact is %.3f mm off", name, i, off)
			}
		}
	}
}

// TestRockingViews: every view of every piece is whole, the same twice, on its paper, and as
// part of a page has nothing that two pictures could share or a page forbid.
func TestRockingViews(t *testing.T) {
	for name, r := range rockings(t) {
		for _, p := range []scene.Picture{RockingView(r), NarrowRockingView(r)} {
			svg := drawn(t, p, scene.SVG)
			if svg != drawn(t, p, scene.SVG) || strings.Contains(svg, "NaN") || strings.Contains(svg, "<script") {
				t.Errorf("%s: not whole, or not the same twice", name)
			}
			if !strings.HasPrefix(drawn(t, p, scene.PDF), "%PDF-") {
				t.Errorf("%s: no PDF", name)
			}
			for _, found := range number.FindAllStringSubmatch(svg, -1) {
				if x, err := strconv.ParseFloat(found[1], 64); err != nil || x < 0 || x > viewWidth {
					t.Errorf("%s: something stands at x = %s mm", name, found[1])
				}
			}
			for _, group := range []string{`data-moves="piece"`, `data-moves="contact"`, `data-still=""`, `id="paths"`, `id="rocker-seated"`} {
				if !strings.Contains(svg, group) {
					t.Errorf("%s: no group with %s", name, group)
				}
			}
		}
		for _, p := range append(Pictures(r.Report), RockingView(r)) {
			var b bytes.Buffer
			if err := p.InPage(&b); err != nil {
				t.Fatal(err)
			}
			page := b.String()
			if !strings.HasPrefix(page, "<svg ") || !strings.Contains(page, ` role="img"`) || !strings.Contains(page, ` aria-label="`) {
				t.Errorf("%s, %s: as part of a page it begins %.80s", name, p.Name, page)
			}
			tags := regexp.MustCompile(`(aria-label="[^"]*")|>[^<]*<`).ReplaceAllString(page, "><")
			if found := regexp.MustCompile(`\s(id|style|on\w+)=`).FindString(tags); found != "" {
				t.Errorf("%s, %s: as part of a page it has %q", name, p.Name, found)
			}
		}
	}
}

// TestScript: as small as was promised, and it asks for nothing.
func TestScript(t *testing.T) {
	if len(Script) > 6000 {
		t.Errorf("the script has %d bytes, want 6,000 or fewer", len(Script))
	}
	for _, never := range []string{"fetch(", "XMLHttp", "import(", "eval(", "innerHTML", "</"} {
		if strings.Contains(Script, never) {
			t.Errorf("the script has %q", never)
		}
	}
}
