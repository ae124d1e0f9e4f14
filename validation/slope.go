package validation

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
)

// slopes are rests on a floor that rises to the front.
func slopes(f Fault) []Case {
	apart := math.Hypot(chairBehind, chairRadius-chairHigh)
	level := math.Atan2(chairBehind, chairRadius-chairHigh)
	var cases []Case
	for _, degrees := range []float64{-8, 3, 8} {
		slope := degrees * math.Pi / 180
		cases = append(cases, Case{
			Group: "slope", Name: fmt.Sprintf("off-centre, %g degrees", degrees), Checks: "The rest on a sloping floor, against the vertical.",
			Source: "derived here: the centre of mass stands plumb over the contact, so |G − C| sin(θ − θ₀) = R sin α", Unit: "rad",
			Want: level + math.Asin(chairRadius*math.Sin(slope)/apart), Accuracy: twelveDigits, Why: whyClosed,
			Compute: func() (float64, error) { return chair(f, slope).Balance().Rest.Tilt, nil },
		})
	}
	for _, row := range [][2]float64{{10, 25.729}, {15, 40.319}} {
		degrees, want := row[0], row[1]
		cases = append(cases, Case{
			Group: "slope", Name: fmt.Sprintf("R 1, d 0.4, %g degrees", degrees), Checks: "The same to the digits worked out by hand.",
			Source: "derived here: asin(R sin α/d), worked by hand to five digits", Unit: "deg",
			Want: want, Accuracy: 2e-5, Why: whyPrinted,
			Compute: func() (float64, error) {
				rig := f.on(sim.Rig{
					Profile: f.single(1, 0.9, 0.9),
					Body:    body.Body{Mass: 80, Centre: r2.Vec{Y: 0.6}, Inertia: 80 * 0.35 * 0.35},
					Floor:   sim.Floor{Slope: degrees * math.Pi / 180},
				})
				return rig.Balance().Rest.Tilt * 180 / math.Pi, nil
			},
		})
	}
	return cases
}
