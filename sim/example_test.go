package sim_test

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// Which radius? With the weight plumb over the low point the steadiness, which of a ship is
// the metacentric height, is R − H, and a small rock takes T = 2π√((k² + H²)/(g(R − H))); here
// k = 0.35 m and H = 0.6 m. A larger radius stands steadier and rocks quicker.
func Example() {
	for _, radius := range []float64{0.9, 1.05, 1.2} {
		chair := sim.Rig{
			Profile: rocker.Single(radius, 0.4, 0.6),                                        // radius, nose, tail: m
			Body:    body.Body{Mass: 80, Centre: r2.Vec{Y: 0.6}, Inertia: 80 * 0.35 * 0.35}, // kg, m, kg m²
		}
		b := chair.Balance()
		fmt.Printf("%.2f m: steadiness %.2f m, %.2f s there and back\n", radius, b.Steadiness, b.Period)
	}
	// Output:
	// 0.90 m: steadiness 0.30 m, 2.54 s there and back
	// 1.05 m: steadiness 0.45 m, 2.08 s there and back
	// 1.20 m: steadiness 0.60 m, 1.80 s there and back
}

// How near is it to going over, and does a large rock take longer? The centre of the arc is
// |w| = 0.457 m over the weight, so H = 0.610 m and T = 2π√((9 + 93·H²)/(93·g·|w|)) = 2.03 s.
// The tail tip lies 0.577 m behind the low point and 0.170 m over it; the weight is plumb over
// it at atan((0.577 − 0.010)/(0.610 − 0.170)) = 52.2 degrees, and at rest it leans back by 1.3.
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
	fmt.Printf("%.1f s, %v\n", swing.Period, swing.Outcome)
	// Output:
	// 2.03 s there and back
	// 51 degrees before going back
	// 2.1 s, rocks
}

// What a program was given need not be a rig; ask before it is balanced.
func ExampleRig_Validate() {
	chair := sim.Rig{Profile: rocker.Single(1, 0.4, 0.6), Body: body.Body{Centre: r2.Vec{Y: 0.6}}}
	fmt.Println(chair.Validate())
	// Output: sim: a rig needs a mass above 0 kg; 0 is none
}
