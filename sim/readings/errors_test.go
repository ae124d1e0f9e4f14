package readings

import (
	"errors"
	"math"
	"strings"
	"testing"

	"rockerwright/rocker"
)

// TestLimits holds that the reading named as the limit is the one to better.
func TestLimits(t *testing.T) {
	r := readingsOf(t, known)
	result, err := r.Read()
	if err != nil {
		t.Fatal(err)
	}
	if got := result.Above.Limits(); got != "front_raised" && got != "front" && got != "rear" && got != "rear_raised" {
		t.Errorf("the height is limited by %q, want a scale", got)
	}
	finer := r
	finer.ScaleError = 0.01
	better, err := finer.Read()
	want := 0.0 // ten times finer scales, and the tape as it was
	for _, s := range result.Above.Shares {
		if s.Reading == "apart" || s.Reading == "raised" || s.Reading == "front_mark" {
			want += s.Adds * s.Adds
		} else {
			want += s.Adds * s.Adds / 100
		}
	}
	if want = math.Sqrt(want); err != nil || math.Abs(better.Above.Uncertain/want-1) > 1e-3 { // differences over a sixteenth of a deviation
		t.Errorf("with finer scales the height is uncertain by %v, want %v (%v)", better.Above.Uncertain, want, err)
	}
}

func TestDoubtsAndErrors(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(r *Readings)
		doubt  string
		fails  string
		says   string
	}{
		{"scales against weight", func(r *Readings) {
			r.Weight, r.DowelAbove = 14, 0.42
			r.Raised, r.FrontRaised, r.RearRaised = 0, 0, 0
		}, "front and rear", "", ""},
		{"weight against both pairs", func(r *Readings) { r.Weight = 14 }, "weight", "", ""},
		{"raised scales against weight", func(r *Readings) { r.RearRaised += 1 }, "front_raised and rear_raised", "", ""},
		{"dowel against scales", func(r *Readings) { r.DowelAhead, r.TenRocks = 0.01, 0 }, "dowel_ahead", "", ""},
		{"below zero", func(r *Readings) { r.Front = -1 }, "", "front", "0 or more"},
		{"outside the marks", func(r *Readings) { r.Rear = 0; r.Front = 13 }, "", "front", "outside the two marks"},
		{"raised, outside the marks", func(r *Readings) { r.FrontRaised, r.RearRaised = 12.5, 0 }, "", "front_raised",
			"outside the two marks"},
		{"raised too far", func(r *Readings) { r.Raised = 0.6 }, "", "raised", "distance of the marks"},
		{"not raised", func(r *Readings) { r.Raised, r.FrontRaised, r.RearRaised = 0, 0, 0 }, "", "raised", "height is not"},
		{"only a dowel above", func(r *Readings) { *r = Readings{Edge: edge, Weight: 12, DowelAbove: 0.4} }, "",
			"dowel_ahead", "fore and aft is not"},
		{"no place", func(r *Readings) { *r = Readings{Edge: edge, Weight: 12} }, "", "front", "two scales"},
		{"no weight", func(r *Readings) { *r = Readings{Edge: edge} }, "", "weight", "weigh the piece"},
		{"front and rear changed", func(r *Readings) { r.FrontRaised, r.RearRaised = 9, 3 }, "", "front_raised", "under the floor"},
		{"marks too far apart", func(r *Readings) { r.Apart = 2 }, "", "apart", "no rocker"},
		{"mark beyond the tip", func(r *Readings) { r.FrontMark = 2 }, "", "front_mark", "beyond the tip"},
		{"beyond a tip", func(r *Readings) { *r = Readings{Edge: edge, Weight: 12, DowelAhead: 2, DowelAbove: 0.4} },
			"", "dowel_ahead", "beyond a tip"},
		{"too quick", func(r *Readings) { r.TenRocks = 3 }, "", "ten_rocks", "fewer seconds"},
		{"too long", func(r *Readings) { r.TenRocks = 300 }, "", "ten_rocks", "more seconds"},
		{"negative time", func(r *Readings) { r.TenRocks = -14 }, "", "ten_rocks", "more than 0 s"},
		{"infinite scale", func(r *Readings) { r.Rear = math.Inf(1) }, "", "rear", "no number"},
		{"infinite raised scale", func(r *Readings) { r.RearRaised = math.Inf(1) }, "", "rear_raised", "no number"},
		{"no number", func(r *Readings) { r.DowelAhead = math.NaN() }, "", "dowel_ahead", "no number"},
		{"no edge", func(r *Readings) { r.Edge = rocker.Profile{} }, "", "edge", "floor edge"},
		{"no front mark", func(r *Readings) { r.FrontMark = 0 }, "", "front_mark", "0 where the mark is at the low point"},
		{"scale of nothing", func(r *Readings) { r.Front, r.Zero = 0, []string{"front"} }, "", "front", "outside the two marks"},
		{"not said how far raised", func(r *Readings) { r.Raised = 0 }, "", "raised", "how far"},
		{"level pair swapped", func(r *Readings) { r.Front, r.Rear = r.Rear, r.Front }, "", "front", "probably swapped: front and rear;"},
		{"level pair swapped, coarse scales", func(r *Readings) {
			r.Front, r.Rear = r.Rear, r.Front
			r.ScaleError = 0.2
		}, "ten_rocks", "", "front and rear"},
		{"nobody known rides", func(r *Readings) { r.RiddenTenRocks, r.RiddenLetGo, r.TenRocks = 20, 0.09, 0 }, "",
			"ten_rocks_ridden", "body of the rider"},
		{"too quick with a rider", func(r *Readings) {
			r.RiddenTenRocks, r.RiddenLetGo, r.Rider, r.TenRocks = 14, 0.09, rider, 0
		}, "", "ten_rocks_ridden", "with this rider"},
		{"too slow with a rider", func(r *Readings) {
			r.RiddenTenRocks, r.RiddenLetGo, r.Rider, r.TenRocks = 60, 0.09, rider, 0
		}, "", "ten_rocks_ridden", "more seconds"},
		{"with a rider, three times off", func(r *Readings) {
			r.RiddenTenRocks, r.RiddenLetGo, r.Rider = 64.8, 0.09, rider
		}, "ten_rocks_ridden", "", ""},
		{"with a rider, no release", func(r *Readings) { r.RiddenTenRocks, r.Rider = 21.6, rider }, "",
			"let_go_ridden", "how many degrees"},
		{"no release", func(r *Readings) { r.LetGo = 0 }, "", "let_go", "how many degrees"},
		{"over the top", func(r *Readings) { r.LetGo = 1.5 }, "", "let_go", "would not come back"},
		{"no rest", func(r *Readings) {
			*r = Readings{Edge: edge, Weight: 12, DowelAhead: 0.01, DowelAbove: 1.3, TenRocks: 20, LetGo: 0.1}
		}, "", "ten_rocks", "no rest"},
	} {
		r := readingsOf(t, known)
		tt.change(&r)
		result, err := r.Read()
		doubts := result.Doubts
		var wrong *ReadingError
		switch {
		case tt.fails != "" && (!errors.As(err, &wrong) || wrong.Reading != tt.fails || !strings.Contains(err.Error(), tt.says)):
			t.Errorf("%s: %v, want an error of %s that says %q", tt.name, err, tt.fails, tt.says)
		case tt.fails == "" && err != nil:
			t.Errorf("%s: %v", tt.name, err)
		case tt.doubt != "" && (len(doubts) == 0 || doubts[0].Reading != tt.doubt):
			t.Errorf("%s: doubts %+v, want %s", tt.name, doubts, tt.doubt)
		case tt.doubt != "" && doubts[0].Swapped != tt.says:
			t.Errorf("%s: swapped %q, want %q", tt.name, doubts[0].Swapped, tt.says)
		}
	}
}
