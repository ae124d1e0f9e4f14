package pattern

import (
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// TestArcsOfAPath: a closed path goes home, whether its last stroke does so or not.
func TestArcsOfAPath(t *testing.T) {
	corners := []r2.Vec{{}, {X: 1}, {X: 1, Y: 1}}
	open, home := bench.Polyline(true, corners...), bench.Polyline(true, append(corners, r2.Vec{})...)
	if a, b := arcs(open), arcs(home); len(a) != 3 || len(b) != 3 || a[2] != b[2] {
		t.Errorf("%v and %v", a, b)
	}
	if a := arcs(bench.Path{Strokes: []bench.Stroke{{To: r2.Vec{X: 1}}}}); len(a) != 1 {
		t.Errorf("%v", a)
	}
}
