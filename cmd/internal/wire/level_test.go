package wire

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"rockerwright/sim/check"
	shop "rockerwright/sim/readings"
)

// TestTiltsInDegrees: what a level shows is in degrees wherever measure says it.
func TestTiltsInDegrees(t *testing.T) {
	half := math.Pi / 2
	text, err := json.Marshal(Measure(check.Balanced{Read: &shop.Result{
		Zero: shop.Value{Value: half, Uncertain: half / 2}, Doubts: []shop.Doubt{{Reading: "balances_on_nose", Read: -half, Expected: half}},
		Slips: []shop.Slip{{Reading: "balances_on_tail", Noticed: half / 2}},
	}}))
	for _, want := range []string{
		`{"name":"level_zero_deg","value":90,"uncertain_95":45,"limited_by":""}`,
		`{"reading":"balances_on_nose","read":-90,"expected":90}`, `{"reading":"balances_on_tail","noticed_deg":45}`,
	} {
		if err != nil || !strings.Contains(string(text), want) {
			t.Errorf("%s, %v; want %s", text, err, want)
		}
	}
	text, err = json.Marshal(Measure(check.Balanced{Read: &shop.Result{Zero: shop.Value{Value: math.NaN()}}}))
	if err != nil || strings.Contains(string(text), "level_zero") {
		t.Errorf("no level: %s, %v", text, err)
	}
}
