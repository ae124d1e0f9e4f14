package main

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"rockerwright/cmd/internal/design"
	"rockerwright/cmd/internal/words"
	"rockerwright/sim/check"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// filledIn are starting designs with changes, in inches and in millimetres, whose check sheets are filled in.
var filledIn = []struct {
	name, start string
	metric      bool
	changes     [][2]string
}{
	{"chair", "chair", false, nil},
	{"chair in mm", "chair", true, nil},
	{"flat chair", "chair", false, [][2]string{{"rocker.radius", "50"}}},
	{"round chair in mm", "chair", true, [][2]string{{"rocker.radius", "36"}, {"rocker.tail", "21"}}},
	{"settee", "settee", false, nil},
	{"settee in mm", "settee", true, [][2]string{{"rocker.radius", "48"}}},
	{"child's chair", "child", false, nil},
	{"child's chair in mm", "child", true, [][2]string{{"rocker.nose", "14"}}},
	{"cradle", "cradle", false, nil},
	{"cradle in mm", "cradle", true, [][2]string{{"rocker.radius", "30"}}},
	{"horse of three arcs", "horse", false, nil},
	{"horse in mm", "horse", true, [][2]string{{"rocker.arcs.2.radius", "40"}}},
}

// filledSheet returns a design with its own check sheet filled in under [measured]: what the sheet says that each
// reading should be, as printed, and of the readings of which it says nothing what check has, to the step of scales and
// tape.
func filledSheet(t *testing.T, name, start string, metric bool, changes [][2]string) *design.File {
	t.Helper()
	text, err := design.Start(start)
	if err != nil {
		t.Fatal(err)
	}
	f, err := design.Parse(name, text)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range changes {
		if err := f.Set(c[0], c[1]); err != nil {
			t.Fatal(err)
		}
	}
	filled, err := f.Filled()
	if err != nil {
		t.Fatal(err)
	}
	if f, err = design.Parse(name, filled); err != nil {
		t.Fatal(err)
	}
	unit, scale := " in", quantity.Lb/2
	if metric {
		f.Design.Units, unit, scale = quantity.Metric, " mm", 0.1
	}
	l, err := layout.Of(f.Design, layout.Options{})
	if err != nil {
		t.Fatal(err)
	}
	var read []string
	say := func(key, value string) { read = append(read, fmt.Sprintf("%s = %q", key, value)) }
	number := func(text, pattern string) string {
		found := regexp.MustCompile(pattern).FindStringSubmatch(text)
		if found == nil {
			t.Fatalf("%s: the sheet does not say %s: %s", name, pattern, text)
		}
		return found[1]
	}
	for _, b := range words.CheckSheet(l, name).Blocks {
		switch {
		case b.Table == nil:
		case strings.HasPrefix(b.Table.Head[0], "Rise over"):
			say("spacing", number(b.Lines[0].Text, `^Stations (.*) apart`))
			read = append(read, "low_point = "+number(b.Lines[0].Text, `the low point is station (\d+)`))
			var rises []string
			for _, row := range b.Table.Rows {
				rises = append(rises, fmt.Sprintf("%q", row.Cells[1]+unit))
			}
			for _, side := range []string{"left", "right"} {
				read = append(read, side+" = ["+strings.Join(rises, ", ")+"]")
			}
		case b.Table.Head[0] == "At rest":
			for _, row := range b.Table.Rows {
				fall, forward := strings.CutSuffix(row.Cells[1], " fwd")
				if row.Cells[0] == "seat falls back" && strings.Contains(row.Cells[2], "(37)") {
					say("seat_falls_empty", map[bool]string{true: "-", false: ""}[forward]+fall+" deg")
				}
				key := map[string]string{"ten rocks, there and back": "ten_rocks", "  let go from this tilt": "let_go"}[row.Cells[0]]
				for i := 1; key != "" && i < len(row.Cells)-1; i += 2 {
					if row.Cells[i] != "–" {
						say(key+[]string{"", "_ridden"}[i/2], row.Cells[i]+map[string]string{"ten_rocks": " s", "let_go": " deg"}[key])
					}
				}
			}
		}
	}
	empty := l.Report.Loads[0].Rig.Body
	say("weight", quantity.Exact(math.Round(empty.Mass/scale)*scale, quantity.Mass))
	say("dowel_ahead", quantity.Shop(empty.Centre.X, quantity.Length, f.Design.Units)+unit)
	say("dowel_above", quantity.Shop(empty.Centre.Y, quantity.Length, f.Design.Units)+unit)
	units := f.Design.Units
	g, err := design.Parse(name, filled+"\n[measured]\n"+strings.Join(read, "\n")+"\n")
	if err != nil {
		t.Fatal(err)
	}
	g.Design.Units = units
	return g
}

// TestOwnCheckSheetAgrees: the check sheet of a design, filled in with what it says itself, agrees everywhere.
func TestOwnCheckSheetAgrees(t *testing.T) {
	for _, one := range filledIn {
		f := filledSheet(t, one.name, one.start, one.metric, one.changes)
		b, err := check.AsBuilt(f.Design)
		if err != nil {
			t.Errorf("%s: %v", one.name, f.Explain(err))
			continue
		}
		want := []string{check.BesideWeight, check.BesideAhead, check.BesideAbove, check.BesideLeft, check.BesideRight, check.BesideTwins,
			check.BesideRocks}
		for _, r := range b.Rows {
			want = slices.DeleteFunc(want, func(what string) bool { return what == r.What })
			if !r.Agrees() {
				t.Errorf("%s: %+v", one.name, r)
			}
		}
		if len(want) > 0 || b.Refused != nil {
			t.Errorf("%s: nothing is said of %v; refused: %v", one.name, want, b.Refused)
		}
		if doubts := b.As.Read.Doubts; len(doubts) > 0 {
			t.Errorf("%s: doubtful: %+v", one.name, doubts)
		}
	}
}

// TestSpoiltReadingIsNamed: of a check sheet that agrees, each reading that is off by three times its ± is told not to
// agree, and no other. Rises enter four rows: that of their side names the station, and leaves it out of the others. The
// tilt of letting go has no row, for hardly anything hangs on it; the balance point and the weight say nothing of
// predictions, which are as drawn.
func TestSpoiltReadingIsNamed(t *testing.T) {
	for _, one := range filledIn {
		f := filledSheet(t, one.name, one.start, one.metric, one.changes)
		f.Design.Measured.SeatFallsEmpty = 0 // a second reading of where the balance point lies
		whole, err := check.AsBuilt(f.Design)
		if err != nil {
			t.Fatal(err)
		}
		known := map[string]float64{}
		for _, r := range whole.Rows {
			known[r.What] = r.Uncertain
		}
		named := func(reading, what string, station int, by float64, spoil func(m *piece.Measured, by float64)) {
			for _, sign := range []float64{1, -1} {
				d := f.Design.Clone()
				spoil(&d.Measured, sign*by)
				b, err := check.AsBuilt(d)
				if err != nil {
					t.Errorf("%s: %s off by %+.4g: %v", one.name, reading, sign*by, err)
					continue
				}
				var not []string
				for _, r := range b.Rows {
					if !r.Agrees() {
						not = append(not, fmt.Sprint(r.What, " ", r.Station))
					}
				}
				if want := []string{fmt.Sprint(what, " ", station)}; !slices.Equal(not, want) {
					t.Errorf("%s: %s off by %+.4g: %v do not agree, want %v", one.name, reading, sign*by, not, want)
				}
			}
		}
		named("weight", check.BesideWeight, 0, 3*known[check.BesideWeight], func(m *piece.Measured, by float64) { m.Weight += by })
		named("dowel_ahead", check.BesideAhead, 0, 3*known[check.BesideAhead], func(m *piece.Measured, by float64) { m.DowelAhead += by })
		named("dowel_above", check.BesideAbove, 0, 3*known[check.BesideAbove], func(m *piece.Measured, by float64) { m.DowelAbove += by })
		named("ten_rocks", check.BesideRocks, 0, 3*known[check.BesideRocks], func(m *piece.Measured, by float64) { m.TenRocks += by })
		if pm := known[check.BesideRidden]; pm > 0 {
			named("ten_rocks_ridden", check.BesideRidden, 0, 3*pm, func(m *piece.Measured, by float64) { m.RiddenTenRocks += by })
		}
		for i := range f.Design.Measured.Left {
			spoil := func(m *piece.Measured, by float64) { m.Left[i] += by }
			off := f.Design.Clone()
			spoil(&off.Measured, 0.02)
			b, err := check.AsBuilt(off)
			if err != nil {
				t.Errorf("%s: station %d: %v", one.name, i+1, err)
				continue
			}
			at := slices.IndexFunc(b.Rows, func(r check.Beside) bool { return r.What == check.BesideLeft })
			named(fmt.Sprintf("left %d", i+1), check.BesideLeft, i+1, 3*b.Rows[at].Uncertain, spoil)
			named(fmt.Sprintf("right %d", i+1), check.BesideRight, i+1, 3*b.Rows[at].Uncertain,
				func(m *piece.Measured, by float64) { m.Right[i] += by })
		}
	}
}
