package readings

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"rockerwright/body"
	"rockerwright/rocker/root"
	"rockerwright/sim"
)

// doubted reports whether the rocks with a rider are.
func doubted(t *testing.T, r Readings) bool {
	t.Helper()
	result, err := r.Read()
	if err != nil {
		t.Fatal(err)
	}
	for _, d := range result.Doubts {
		if d.Reading == "ten_rocks_ridden" {
			return true
		}
	}
	return false
}

// TestRiderDoubtedFromThreeDeviations: rocks with a rider are doubted once they are three standard deviations longer
// or shorter than by all else, and not before: the deviation being that of the sum of independent errors, each
// reading moved by a hundredth of its own.
func TestRiderDoubtedFromThreeDeviations(t *testing.T) {
	r := rodeBy(t, rider)
	empty := readingsOf(t, known)
	r.LetGo, r.TenRocks = empty.LetGo, empty.TenRocks
	variance := 0.0
	moved := r
	for _, one := range moved.read() {
		kept := *one.value
		var late [2]float64
		for i, sign := range []float64{1, -1} {
			*one.value = kept + sign*one.deviation/100
			s, err := moved.solve()
			if err != nil {
				t.Fatal(err)
			}
			late[i] = s.late
		}
		*one.value = kept
		change := (late[0] - late[1]) / 2 * 100
		variance += change * change
	}
	want := doubtful * math.Sqrt(variance)
	for _, sign := range []float64{1, -1} {
		off, _ := root.Edge(func(off float64) bool {
			slower := r
			slower.RiddenTenRocks += sign * off
			return !doubted(t, slower)
		}, 0, 2*want, 1e-6, 0)
		if math.Abs(off/want-1) > 0.02 { // its own derivatives change a little on the way
			t.Errorf("%+.0f: doubted from %v s on, want %v", sign, off, want)
		}
	}
}

// TestTooFewSeconds: rocks quicker than the piece takes without any inertia are told with that time, which is that of
// all its mass at the balance point.
func TestTooFewSeconds(t *testing.T) {
	r := readingsOf(t, known)
	r.TenRocks *= 0.6
	point := sim.Rig{Profile: edge, Body: body.Body{Mass: known.Mass, Centre: known.Centre}}
	want := fmt.Sprintf("(%.1f s)", 10*point.Swing(point.Balance(), r.LetGo).Period)
	if _, err := r.Read(); err == nil || !strings.Contains(err.Error(), want) {
		t.Errorf("%v, want %s", err, want)
	}
}

// TestBelievedInertia: of a light piece with a radius of gyration of two metres the rocks are too many seconds, of one
// with half a metre, as of a long rocking horse, they are believed.
func TestBelievedInertia(t *testing.T) {
	for gyration, believed := range map[float64]bool{0.3: true, 0.5: true, 2: false} {
		b := known
		b.Inertia = b.Mass * gyration * gyration
		result, err := readingsOf(t, b).Read()
		if believed != (err == nil) || believed && math.Abs(result.Body.Inertia/b.Inertia-1) > 1e-6 {
			t.Errorf("gyration %v m: %v, inertia %v of %v", gyration, err, result.Body.Inertia, b.Inertia)
		}
	}
}
