package trial

import (
	"math"
	"strings"
	"testing"

	"rockerwright/body/person"
	"rockerwright/rocker/rises"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestFindingsAreWhatTheReportSays: whatever a report has that does not hold is one finding, with its numbers and a
// measure that the design has; the gravest come first, and of limits those that miss most.
func TestFindingsAreWhatTheReportSays(t *testing.T) {
	for name, change := range map[string]func(d *piece.Design){
		"short":   func(d *piece.Design) { d.Rocker.Tail = 8 * quantity.In },
		"high":    func(d *piece.Design) { d.Seat.Front, d.Seat.Rear = 0.60, 0.58 },
		"narrow":  func(d *piece.Design) { d.Seat.Width, d.Seat.Depth = 0.28, 0.60 },
		"stub":    func(d *piece.Design) { d.Rocker.Nose = 5 * quantity.In },
		"falling": func(d *piece.Design) { d.Rocker.Radius = 20 * quantity.In },
		"weak": func(d *piece.Design) {
			d.Rocker.Depth, d.Rocker.Width, d.Rocker.Wood = 0.02, 0.02, "black walnut"
			d.Back.Braces = piece.Braces{Count: 1, Width: 0.03, Thickness: 0.006, Length: 0.6, Wood: "white ash"}
		},
	} {
		d := sized()
		change(&d)
		a, err := Standing(d)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		want := [levels]int{Unfit: len(a.Misfits), Warns: len(a.Beyond)}
		if name == "weak" {
			want[Warns] += 2 // braces and rockers, each once
		}
		for _, l := range a.Limits {
			switch stands := a.Load(l.Load).Upright(); {
			case !l.Holds && l.Name == "rest":
				want[Falls]++
			case !l.Holds && stands && math.Abs(l.Room()) >= l.Spread:
				want[Fails]++
			case stands && math.Abs(l.Room()) < l.Spread:
				want[TooNear]++
			}
		}
		for _, f := range a.Fit {
			if !f.Holds() && f.Size != person.SittingHeight { // a rest for the head is a wish
				want[Unfit]++
			}
		}
		var got [levels]int
		for i, f := range a.Findings {
			got[f.Level]++
			if _, _, err := d.Measure(f.Key); f.Key != "" && err != nil {
				t.Errorf("%s: %s looks at %v", name, f.What, err)
			}
			if i > 0 && f.Level < a.Findings[i-1].Level || f.Level == Fails && !(f.Limit.Share() < 1) ||
				f.Fit != nil && (f.Got != f.Fit.Have || f.Want-f.Got != f.Fit.Change) || f.Misfit != nil && f.Got != f.Misfit.By ||
				f.Bent != nil && !(f.Got > 1) || f.Beyond != nil && f.Got != f.Beyond.By {
				t.Errorf("%s: %+v is told otherwise than it was found, or behind what is less grave", name, f)
			}
		}
		if want[Hazardous], want[WorthALook] = got[Hazardous], got[WorthALook]; got != want || a.Holds() != (want[Falls]+want[Fails] == 0) {
			t.Errorf("%s: findings %v, want %v; holds %v", name, got, want, a.Holds())
		}
	}
	for _, tt := range []struct {
		rocker piece.Rocker
		keys   string
	}{
		{piece.Rocker{Depth: 0.05, Top: piece.Taper, TailDepth: quantity.In / 4, NoseDepth: quantity.In / 3},
			"rocker.tail_depth rocker.nose_depth"},
		{piece.Rocker{Depth: 0.05, Top: piece.Taper, TailDepth: quantity.In / 2}, ""},
		{piece.Rocker{Depth: 0.012}, "rocker.depth"}, {piece.Rocker{Depth: 0.013}, ""}, {piece.Rocker{}, ""},
	} {
		var keys []string
		for _, f := range thin(tt.rocker) {
			keys = append(keys, f.Key)
		}
		if got := strings.Join(keys, " "); got != tt.keys {
			t.Errorf("%+v: thin by %q, want %q", tt.rocker, got, tt.keys)
		}
	}
	for _, apart := range []float64{0.004, -0.004} { // left or right higher
		list := Uneven(&piece.Traced{Apart: apart, Left: &rises.Fit{Suspect: -1, Explains: true},
			Right: &rises.Fit{Suspect: 3, Without: 0.02}})
		if len(list) != 2 || list[0].Key != "measured.right" || list[0].Want != 0.02 || list[1].Got != 0.004 {
			t.Errorf("rockers apart by %v: %+v", apart, list)
		}
	}
}
