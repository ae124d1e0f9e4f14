package rocker_test

import (
	"fmt"

	"rockerwright/rocker"
)

// One arc, or a flatter tail as a brake? On an arc the tilt is the length rolled over divided
// by the radius: behind the low point the first radius ends at 0.3/1.0 = 0.3 rad, and the tail
// tip is reached 0.32/1.6 = 0.2 rad later.
func ExampleChain() {
	edge, err := rocker.Chain(0.45, rocker.Arc(1, 0.45+0.3), rocker.Arc(1.6, 0.32)) // m, from the nose
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, tilt := range []float64{0, 0.29, 0.31} {
		h, _, ddh := edge.Support(tilt)
		fmt.Printf("at %.2f rad it rolls on a radius of %.1f m\n", tilt, h+ddh)
	}
	tail := edge.Bearing(edge.Bearings() - 1)
	fmt.Printf("at %.2f rad it stands on the tail tip\n", tail.From)
	// Output:
	// at 0.00 rad it rolls on a radius of 1.0 m
	// at 0.29 rad it rolls on a radius of 1.0 m
	// at 0.31 rad it rolls on a radius of 1.6 m
	// at 0.50 rad it stands on the tail tip
}
