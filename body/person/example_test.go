package person_test

import (
	"fmt"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
)

// How much of somebody does a rocking chair carry? With the feet off the floor all; where they
// stand flat, the floor carries them and the ankles' share of the shanks: of a man of 80 kg, by
// de Leva's table, 2·1.37 % and 43.95 % of 2·4.33 %, 5.2 kg. Who leans forward to get up has
// more weight on the feet.
func ExamplePerson_Pose() {
	man, err := person.New(person.Given{Sex: person.Man, Sizes: person.Measures{person.Stature: 1.75, person.Mass: 80}})
	if err != nil {
		fmt.Println(err)
		return
	}
	seat := person.Seat{Meet: r2.Vec{X: -0.2, Y: 0.38}, Fall: 0.1, Depth: 0.45, Backed: true, Recline: 0.35} // m, rad
	off, eased, rising := man.Pose(seat, person.FeetOff), man.Pose(seat, person.AtEase), man.Pose(seat, person.Rising)
	flat := eased.Legs.Full()
	fmt.Printf("feet off: the chair carries %.1f kg, the floor %.1f kg\n", off.Body.Mass, off.Standing)
	fmt.Printf("feet flat: the chair carries %.1f kg, the floor %.1f kg\n", eased.Body.Mass+eased.Legs.Mass()-flat, flat)
	fmt.Println("rising: more on the feet:", rising.Standing > flat)
	// Output:
	// feet off: the chair carries 80.0 kg, the floor 0.0 kg
	// feet flat: the chair carries 74.8 kg, the floor 5.2 kg
	// rising: more on the feet: true
}
