package readings

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

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

// TestLineIsAsSureAsItsReadings: where one scale is read, level or raised, its error moves the line on which the
// balance point lies by the line's deviation, but for the part of the tape.
func TestLineIsAsSureAsItsReadings(t *testing.T) {
	r := readingsOf(t, known)
	r.Rear, r.RearRaised = 0, 0
	lines, err := r.lines(known.Mass)
	if err != nil || len(lines) != 2 {
		t.Fatal(lines, err)
	}
	r.Front, r.FrontRaised = r.Front+usualScale, r.FrontRaised+usualScale
	moved, _ := r.lines(known.Mass)
	for i, l := range lines {
		across := r2.Norm(r2.Sub(l.normal, moved[i].normal))
		tape := usualTape * math.Cos(math.Asin(r.pairs()[i].raised/r.Apart)) // the tape lies along the marks, the line aslant
		if want := math.Hypot(moved[i].place-l.place, tape); across != 0 || math.Abs(l.deviation/want-1) > 1e-9 {
			t.Errorf("%s: sure to %v m, by its readings %v", l.name, l.deviation, want)
		}
	}
}

// TestWeightDoubtedByTwo: two pairs of scales that agree against the weight make it doubtful; where they do not agree
// with each other either, each pair is.
func TestWeightDoubtedByTwo(t *testing.T) {
	for other, want := range map[float64]int{0: 1, 0.4: 1, 3: 2} { // kg
		r := readingsOf(t, known)
		r.Weight = known.Mass - 2
		r.FrontRaised, r.RearRaised = r.FrontRaised*(1+other/known.Mass), r.RearRaised*(1+other/known.Mass)
		_, doubts, err := r.mass()
		if err != nil || len(doubts) != want || (doubts[0].Reading == "weight") != (want == 1) {
			t.Errorf("pairs %v kg apart: %+v, %v", other, doubts, err)
		}
	}
}
