package size

import (
	"math"

	"rockerwright/rocker/bench"
	"rockerwright/sim/check"
)

// blank returns the length and width of the board that a rocker is sawn from, m; not a number
// where the rocker has no outline.
func blank(r check.Balanced) (length, width float64) {
	outline, err := r.Design.Rocker.OnBench(r.Edge).Outline()
	if err != nil {
		return math.NaN(), math.NaN()
	}
	b := bench.BlankAlong(outline, math.Atan2(r.Edge.Nose().Y-r.Edge.Tail().Y, r.Edge.Nose().X-r.Edge.Tail().X))
	return b.Length, b.Width
}
