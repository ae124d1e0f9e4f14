package trial

import (
	"testing"

	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
	"rockerwright/sim/readings"
)

// TestDoubtsOfTilts: a doubtful tilt is an angle under its key, and of the drawn seat under that of the seat.
func TestDoubtsOfTilts(t *testing.T) {
	var r check.Report
	r.Read = &readings.Result{Doubts: []readings.Doubt{{Reading: "balances_on_tail"}, {Reading: "seat"}, {Reading: "nose_tip"}}}
	list := warnings(&r)
	for i, want := range []struct {
		key  string
		kind quantity.Kind
	}{{"measured.balances_on_tail", quantity.Angle}, {"seat.front", quantity.Angle}, {"measured.nose_tip", quantity.Length}} {
		if len(list) != 3 || list[i].Key != want.key || list[i].Kind != want.kind {
			t.Errorf("%+v, want %v", list, want)
		}
	}
}
