package size_test

import (
	"fmt"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// Which radius rocks in the time that is wished? On one arc R = H + (k² + H²)(2π/T)²/g: with
// H = 0.6 m, k = 0.35 m and 2.2 s it is 0.6 + 0.4825·(2.856)²/9.807 = 1.001 m, which is read on a
// rule to the nearest 5 mm.
func ExampleSolve() {
	var d piece.Design
	d.Units = quantity.Metric
	d.Rocker.Radius, d.Rocker.Nose, d.Rocker.Tail = 1.2, 0.45, 0.6 // m, as drawn
	d.Body = body.Body{Mass: 80, Centre: r2.Vec{Y: 0.6}, Inertia: 80 * 0.35 * 0.35}
	d.Target.OneRock = 2.2 // s
	found, err := size.Solve(d, 1)
	if err != nil {
		fmt.Println(err)
		return
	}
	take := found.Take()
	fmt.Printf("%v, radius %.3f m, %.1f s there and back\n", take.Shape, take.Design.Rocker.Radius, take.Report.Seated().Balance.Period)
	// Output: one arc, radius 1.000 m, 2.2 s there and back
}
