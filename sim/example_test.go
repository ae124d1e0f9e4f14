package sim_test

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

func ExampleRig_Balance() {
	edge := rocker.Single(1.067, 0.43, 0.61) // radius, nose, tail: m
	chair := sim.Rig{
		Profile: edge,
		Body:    body.Body{Mass: 93, Centre: r2.Vec{X: -0.01, Y: 0.61}, Inertia: 9}, // kg, m, kg m²
	}
	balance := chair.Balance()
	fmt.Printf("%.2f s there and back\n", balance.Period)
	fmt.Printf("%.0f degrees before going back\n", balance.Back.Angle*180/math.Pi)
	swing := chair.Swing(balance, 0.2) // let go 0.2 rad back
	fmt.Printf("%.2f s, %v\n", swing.Period, swing.Outcome)
	// Output:
	// 2.03 s there and back
	// 51 degrees before going back
	// 2.06 s, rocks
}
