package size

import (
	"math"
	"testing"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// TestBlankOfEachTop: a taper that is as deep at its tips as over the low point is a concentric rocker, and
// takes its board; a slimmer one takes a board that is no wider.
func TestBlankOfEachTop(t *testing.T) {
	board := func(change func(r *piece.Rocker)) (length, width float64) {
		d := readingChair()
		d.Rocker.Depth = 2 * inch
		change(&d.Rocker)
		r, err := check.Balance(d)
		if err != nil {
			t.Fatal(err)
		}
		return blank(r)
	}
	length, width := board(func(*piece.Rocker) {})
	level, levelWidth := board(func(r *piece.Rocker) { r.Top, r.NoseDepth, r.TailDepth = piece.Taper, r.Depth, r.Depth })
	// the taper's top is laid in short arcs, fair to a hundredth of a millimetre
	if !(math.Abs(level-length) < 1e-5 && math.Abs(levelWidth-width) < 1e-5) {
		t.Errorf("a taper of one depth takes %v by %v m, a concentric rocker %v by %v", level, levelWidth, length, width)
	}
	_, slim := board(func(r *piece.Rocker) { r.Top, r.NoseDepth, r.TailDepth = piece.Taper, r.Depth/2, r.Depth/2 })
	if !(slim > 0 && slim <= width) {
		t.Errorf("a rocker slimmer at its tips takes a board %v m wide, a concentric one %v", slim, width)
	}
}
