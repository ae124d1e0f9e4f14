package motion_test

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/motion"
)

// chair is 80 kg on one arc, the weight plumb over the low point.
func chair() (sim.Rig, sim.Balance) {
	rig := sim.Rig{
		Profile: rocker.Single(1.067, 0.43, 0.61),                                        // radius, nose, tail: m
		Body:    body.Body{Mass: 80, Centre: r2.Vec{Y: 0.62}, Inertia: 80 * 0.35 * 0.35}, // kg, m, kg m²
	}
	return rig, rig.Balance()
}

// How long does it rock? A maker counts in how many small rocks the tilt falls to half; with
// that loss it is at half after six rocks, which are twelve turns, and at a quarter after twelve.
func ExampleHalvesIn() {
	rig, balance := chair()
	losses := motion.Losses{Viscous: motion.HalvesIn(rig, balance, 6)}
	const release = 0.02 // rad back of the rest
	trace := motion.Run(rig, balance, motion.Start{Tilt: balance.Rest.Tilt + release}, motion.Options{Losses: losses})
	turns := 0
	for _, e := range trace.Events {
		if e.Kind != motion.Turns {
			continue
		}
		if turns++; turns == 12 || turns == 24 {
			fmt.Printf("after %d rocks: %.2f\n", turns/2, (e.Tilt-balance.Rest.Tilt)/release)
		}
	}
	// Output:
	// after 6 rocks: 0.50
	// after 12 rocks: 0.25
}

// How hard a shove does it stand? A push that is over before the chair has moved gives it the
// rate F·t·y/J at the rest, and goes over with ½·J·ω² = m·g·lift: with F·t = √(2J·m·g·lift)/y.
func ExampleThreshold() {
	rig, balance := chair()
	top := r2.Vec{X: -0.4, Y: 1.1}
	const short = 0.01 // s
	force, none := motion.Threshold(func(force float64) bool {
		push := motion.Push{At: top, Force: force, Time: short}
		trace := motion.Run(rig, balance, motion.Start{Tilt: balance.Rest.Tilt, Push: push}, motion.Options{Duration: 5})
		return trace.Outcome == sim.GoesOverBackwards
	}, 100e3)
	_, height := rig.Place(top, balance.Rest.Tilt)
	byHand := math.Sqrt(2*rig.Inertia(balance.Rest.Tilt)*balance.Back.Work) / height
	fmt.Printf("%v, %.2f of what is found by hand\n", none, force*short/byHand)
	// Output: false, 1.00 of what is found by hand
}
