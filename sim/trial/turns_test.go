package trial

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// TestTurns: without losses it turns twice in each rock, there and back, and was let go as far from its rest as it was asked.
func TestTurns(t *testing.T) {
	d := plain(1, 0.4, 0.5, 80, r2.Vec{X: 0.02, Y: 0.6}, 10)
	const from = 3 * quantity.Deg
	r, err := Rock(d, RockOptions{From: from, Duration: 30})
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(r.Released()-from) > 1e-12 {
		t.Errorf("let go %v rad from its rest, want %v", r.Released(), from)
	}
	period := r.Load.Balance.Period // of a small rock: three degrees take hardly longer
	if want := int(30 / (period / 2)); r.Turns() != want && r.Turns() != want+1 {
		t.Errorf("it turns %d times in 30 s of %v s a rock, want %d", r.Turns(), period, want)
	}
}

// TestTipsNeverUnderTheFloor: in a rock that comes to stand on a tip that comes down to the floor, and no further.
func TestTipsNeverUnderTheFloor(t *testing.T) {
	d := plain(1, 0.2, 0.2, 80, r2.Vec{Y: 0.6}, 10) // 0.2 rad to either tip, less than a good rock
	r, err := Rock(d, RockOptions{From: 14 * quantity.Deg})
	if err != nil {
		t.Fatal(err)
	}
	if n := r.Room; n.TailLow < 0 || n.NoseLow < 0 || n.TailLow > 1e-12 || n.NoseLow > 1e-12 {
		t.Errorf("the tips come down to %v and %v m", n.TailLow, n.NoseLow)
	}
}
