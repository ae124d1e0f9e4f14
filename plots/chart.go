package plots

import (
	"cmp"
	"math"

	"rockerwright/plots/scene"
	"rockerwright/sim"
	"rockerwright/sim/quantity"
)

// A Chart is what the charts of one piece share. The zero Chart has no title, writes inches and pounds, and is of a
// piece that rocks back and forward.
type Chart struct {
	Title         string // of the piece, before what is drawn
	Units         quantity.System
	Back          string    // where a tilt above zero goes; "" is "back"
	Behind, Ahead string    // behind an angle to that side and to the other; "" is "back" and "forward"
	Marks         []float64 // tilts to look at, which are drawn upright on both sides, rad
}

// A Load is a rig, its balance by [sim.Rig.Balance] or [sim.Rig.BalanceAt], and what the charts call it.
type Load struct {
	Label   string
	Rig     sim.Rig
	Balance sim.Balance
	RunsOff bool // its righting arm may run off the chart
}

// The longest texts of a chart, in letters.
const (
	longestTitle = 60
	longestLabel = 36 // at a curve
	longestTold  = 60 // of a load in what a picture says that it shows
)

// title returns the title of a chart of something.
func (c Chart) title(what string) string {
	if c.Title == "" {
		return what
	}
	return scene.Cut(c.Title, longestTitle) + ": " + what
}

// back returns where a tilt above zero goes.
func (c Chart) back() string { return cmp.Or(c.Back, "back") }

// Sided returns an angle (rad) with its side: "5 degrees back".
func (c Chart) Sided(angle float64) string {
	side, text := cmp.Or(c.Behind, "back"), c.angle(math.Abs(angle))
	if text == c.angle(0) {
		return text
	}
	if angle < 0 {
		side = cmp.Or(c.Ahead, "forward")
	}
	return text + " " + side
}

func (c Chart) angle(x float64) string { return quantity.With(x, quantity.Angle, c.Units) }

func inDegrees(x float64) float64 { return x * 180 / math.Pi }
