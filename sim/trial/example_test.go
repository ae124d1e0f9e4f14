package trial_test

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
	"rockerwright/sim/trial"
)

// rider is 80 kg, 0.6 m up with a gyration of 0.35 m, on an arc of 1 m.
func rider(tail float64) piece.Design {
	return piece.Design{
		Rocker:  piece.Rocker{Radius: 1, Nose: 0.5, Tail: tail},
		Body:    body.Body{Mass: 10, Centre: r2.Vec{Y: 0.6}, Inertia: 10 * 0.35 * 0.35},
		Sitters: []piece.Sitter{{Name: "owner", Mass: 70, Centre: r2.Vec{Y: 0.6}, Inertia: 70 * 0.35 * 0.35}},
		Limits:  piece.Limits{BackMargin: 15 * math.Pi / 180},
	}
}

// A tail of 0.15 m is short.
//
// By hand: its tip is 0.149 m behind and 0.011 m up, so the weight, 0.6 m up at rest, stands over it at
// atan(0.149/0.589), 14 degrees.
func ExampleCheck() {
	answer, err := trial.Check(rider(0.15))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, f := range answer.Findings {
		fmt.Printf("%v: %s of %s is %.0f of %.0f degrees, look at %s\n", f.Level, f.What, f.Load.Name, f.Got*180/math.Pi,
			f.Want*180/math.Pi, f.Key)
	}
	// Output:
	// limit: back_margin of owner is 14 of 15 degrees, look at rocker.tail
}

// The same on a longer tail, let go from 10 degrees on a floor that halves a small rock in seven.
//
// By hand: a small rock takes 2π·√((0.35² + 0.6²)/(9.81·0.4)) s, 2.2 s there and back; one from 10 degrees takes a
// hundredth longer.
func ExampleFollow() {
	d := rider(0.5)
	d.Floor.Halves = 7
	report, err := check.Check(d)
	if err != nil {
		fmt.Println(err)
		return
	}
	rocking, err := trial.Follow(report, trial.RockOptions{From: 10 * math.Pi / 180})
	if err != nil {
		fmt.Println(err)
		return
	}
	var turns []motion.Event
	for _, e := range rocking.Trace.Events {
		if e.Kind == motion.Turns {
			turns = append(turns, e)
		}
	}
	fmt.Printf("%.1f s there and back, falls to half in %.0f rocks\n", turns[2].Time-turns[0].Time, rocking.HalvesIn)
	// Output:
	// 2.2 s there and back, falls to half in 7 rocks
}
