package size

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/sim/piece"
)

// blank returns the length and width of the board that a rocker is sawn from, its long side
// along the chord from tip to tip, m.
func blank(r piece.Report) (length, width float64) {
	nose, tail := r.Edge.Nose(), r.Edge.Tail()
	along := r2.Unit(r2.Sub(nose, tail))
	across := r2.Vec{X: -along.Y, Y: along.X}
	depth := r.Design.Rocker.DepthOr()
	least, most := r2.Vec{X: math.Inf(1), Y: math.Inf(1)}, r2.Vec{X: math.Inf(-1), Y: math.Inf(-1)}
	reach := func(p r2.Vec) {
		x, y := r2.Dot(p, along), r2.Dot(p, across)
		least.X, least.Y = min(least.X, x), min(least.Y, y)
		most.X, most.Y = max(most.X, x), max(most.Y, y)
	}
	outline := r.Edge.Outline(1e-4)
	for _, p := range outline {
		reach(p)
	}
	for _, end := range []struct {
		at   r2.Vec
		tilt float64
	}{{nose, r.Edge.Bearing(0).To}, {tail, r.Edge.Bearing(r.Edge.Bearings() - 1).From}} {
		down, _ := rocker.Down(end.tilt)
		reach(r2.Sub(end.at, r2.Scale(depth, down)))
	}
	return most.X - least.X, most.Y - least.Y
}
