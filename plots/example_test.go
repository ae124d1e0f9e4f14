package plots_test

import (
	"bytes"
	"fmt"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/plots"
	"rockerwright/plots/scene"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/quantity"
)

// The charts need no design: a rig is enough.
func ExampleChart() {
	rig := sim.Rig{
		Profile: rocker.Single(1.067, 0.43, 0.61),                                   // radius, nose, tail: m
		Body:    body.Body{Mass: 93, Centre: r2.Vec{X: -0.01, Y: 0.61}, Inertia: 9}, // kg, m, kg m²
	}
	loaded := plots.Load{Label: "test load", Rig: rig, Balance: rig.Balance()}
	chart := plots.Chart{Title: "Test rig", Units: quantity.Metric}
	for _, picture := range []scene.Picture{chart.RightingArm(loaded), chart.Period(loaded)} {
		var file bytes.Buffer
		if err := picture.Draw(&file, scene.SVG); err != nil {
			fmt.Println(err)
		}
		fmt.Printf("%s.svg is drawn: %v\n", picture.Name, bytes.HasPrefix(file.Bytes(), []byte("<svg ")))
		fmt.Println(strings.ReplaceAll(picture.Alt, ". ", ".\n"))
	}
	// Output:
	// righting arm.svg is drawn: true
	// Righting arm against tilt.
	// test load rests at 1.5 degrees back and goes over at 52 degrees back and 39 degrees forward.
	// time of a rock.svg is drawn: true
	// Time of one rock against release.
	// test load 2.0 s for a small rock.
}
