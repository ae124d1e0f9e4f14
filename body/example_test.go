package body_test

import (
	"errors"
	"fmt"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
)

// A seat of 3 kg and a back of 2 kg. By hand: the centre is at (−0.4/5, 2.7/5) m; the
// seat has 0.051 kg·m², the back 0.060, and the reduced mass 6/5 kg at their distance
// squared, 0.1625 m², another 0.195.
func ExampleJoin() {
	seat := body.Box(3, 0.45, 0.04).Moved(r2.Vec{Y: 0.40})
	back := body.Box(2, 0.03, 0.60).Moved(r2.Vec{X: -0.20, Y: 0.75})
	whole := body.Join(seat, back)
	fmt.Printf("%.1f kg at (%.2f, %.2f) m, %.3f kg·m²\n", whole.Mass, whole.Centre.X, whole.Centre.Y, whole.Inertia)
	// Output: 5.0 kg at (-0.08, 0.54) m, 0.306 kg·m²
}

// A name that fits several woods is asked back.
func ExampleFindWood() {
	for _, name := range []string{"walnut", "elm"} {
		wood, err := body.FindWood(name)
		var several *body.AmbiguousWoodError
		if errors.As(err, &several) {
			fmt.Printf("%s: which of %d?\n", name, len(several.Candidates))
			continue
		}
		fmt.Printf("%s: %.0f kg/m³\n", wood.Name, wood.Density)
	}
	// Output:
	// Walnut, black: 616 kg/m³
	// elm: which of 3?
}

// A tapered walnut leg, placed by the middle of its axis and raked by 0.2 rad. By
// hand: 338 cm³ of wood at 606 kg/m³.
func ExampleCone() {
	walnut, err := body.FindWood("walnut")
	if err != nil {
		fmt.Println(err)
		return
	}
	density, err := walnut.DensityAt(0.08) // of a heated room
	if err != nil {
		fmt.Println(err)
		return
	}
	const foot, top, length = 0.025, 0.040, 0.400 // m
	leg := body.Cone(density*body.ConeVolume(foot, top, length), foot, top, length)
	leg = leg.Turned(0.2, r2.Vec{}).Moved(r2.Vec{X: 0.15, Y: 0.25})
	fmt.Printf("%.2f kg\n", leg.Mass)
	// Output: 0.20 kg
}
