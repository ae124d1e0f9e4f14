package validation

import (
	"math"
	"os"
	"os/exec"
	"testing"
)

// TestEngineLive runs the engine anew where node and its modules are, and holds it against
// the record; else it says that the record alone was used.
func TestEngineLive(t *testing.T) {
	node, err := exec.LookPath("node")
	if err != nil {
		t.Skip("node is not installed: the record of the engine was used, not the engine")
	}
	if _, err := os.Stat("node/node_modules/planck"); err != nil {
		t.Skip("npm ci was not run in validation/node: the record of the engine was used, not the engine")
	}
	run := exec.Command(node, "rock.mjs")
	run.Dir = "node"
	out, err := run.Output()
	if err != nil {
		t.Fatal(err)
	}
	live, version, err := EngineRows(string(out))
	if err != nil {
		t.Fatal(err)
	}
	record, _, err := EngineRows(engineTable)
	if err != nil || len(live) != len(record) {
		t.Fatalf("%v, %d rows live, %d in the record", err, len(live), len(record))
	}
	for i, row := range live {
		if math.Abs(row.Period/record[i].Period-1) > 1e-5 { // the same steps on another machine's rounding
			t.Errorf("%s: live %v s, record %v s", row.Chair, row.Period, record[i].Period)
		}
	}
	t.Log("live: " + version)
}
