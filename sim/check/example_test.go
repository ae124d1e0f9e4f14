package check_test

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// A chair of 10 kg, its balance point 0.40 m up, on rockers of one arc of 1 m, with somebody of 70 kg whose balance
// point is 0.60 m up and 40 mm behind the low point.
//
// By hand: together they weigh 80 kg, 0.575 m up and 35 mm behind, so 0.425 m under the arc's centre. It rests where
// that hangs plumb, at atan(0.035/0.425), 4.7 degrees. The tail tip is 0.479 m behind and 0.122 m up; the weight stands
// over it at atan((0.479 − 0.035)/(0.575 − 0.122)), 44.5 degrees, 39.8 further.
func ExampleCheck() {
	report, err := check.Check(piece.Design{
		Rocker:  piece.Rocker{Radius: 1, Nose: 0.4, Tail: 0.5},
		Body:    body.Body{Mass: 10, Centre: r2.Vec{Y: 0.4}, Inertia: 1},
		Sitters: []piece.Sitter{{Name: "owner", Mass: 70, Centre: r2.Vec{X: -0.04, Y: 0.6}}},
		Limits:  piece.Limits{BackMargin: 15 * math.Pi / 180},
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	b := report.Load("owner").Balance
	fmt.Printf("%v: rests %.1f degrees back, goes over %.1f degrees further\n", b.Outcome, b.Rest.Tilt*180/math.Pi,
		b.Back.Angle*180/math.Pi)
	fmt.Println("keeps its limits:", report.Holds())
	// Output:
	// rocks: rests 4.7 degrees back, goes over 39.8 degrees further
	// keeps its limits: true
}

// Where somebody rests is asked of many designs; the people are made once. The seat is slid along a straight top edge,
// and carries them along.
//
// By hand: the 80 kg of a light frame and its rider are 0.6 m up, 0.4 m under the centre of an arc of 1 m; slid forward
// by 35 mm they hang plumb at atan(0.035/0.4), 5 degrees forward.
func ExampleSitters_Balance() {
	d := piece.Design{
		Rocker:  piece.Rocker{Radius: 1, Nose: 0.5, Tail: 0.5, Depth: 0.2, Top: piece.Straight},
		Seat:    piece.Seat{Rear: 0.4},
		Parts:   []piece.Part{{Shape: piece.Point, Mass: 5, At: r2.Vec{Y: 0.6}}},
		Sitters: []piece.Sitter{{Name: "rider", Mass: 75, Centre: r2.Vec{Y: 0.6}}},
	}
	people, err := check.SittersOf(d)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, slide := range []float64{0, 0.035} {
		d.Seat.Slide = slide
		stands, err := people.Balance(d)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("slid by %2.0f mm: %.0f degrees\n", 1000*slide, stands.Seated().Balance.Rest.Tilt*180/math.Pi)
	}
	// Output:
	// slid by  0 mm: 0 degrees
	// slid by 35 mm: -5 degrees
}
