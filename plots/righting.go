package plots

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/plot/plotter"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// RightingArm draws the righting arm of the loads that matter most against the tilt: the rest is a dot,
// the tilts at which it goes over are rings. A cradle has the tilts of 5 and 10 degrees
// marked, of which its cautions speak.
func RightingArm(r check.Report) Picture {
	units := r.Design.Units
	one := scaleOf(quantity.Length, units)
	c := chart{
		title: cut(r.Design.Title, 60) + ": what brings it back",
		x:     "tilt from as drawn, degrees, + " + r.Design.Ways().Back + " (dot: rest; ring: goes over)",
		y:     "righting arm, " + quantity.Unit(quantity.Length, units),
	}
	for _, tilt := range r.Design.Ways().Marks {
		c.lines = append(c.lines, inDegrees(tilt))
	}
	c.low, c.high = plotter.XY{X: math.Inf(1)}, plotter.XY{X: math.Inf(-1)}
	var alt []string
	for i, l := range shown(r) {
		k := curve{label: cut(l.Name, longestLabel), line: lineOf(i)}
		for _, p := range l.Righting() {
			at := plotter.XY{X: float64(p.Degree), Y: p.Arm / one}
			k.points = append(k.points, at)
			if l.Empty || l.Role != piece.Hazard { // a hazard's curve may run off the chart
				c.low.X, c.high.X = min(c.low.X, at.X), max(c.high.X, at.X)
				c.low.Y, c.high.Y = min(c.low.Y, at.Y), max(c.high.Y, at.Y)
			}
		}
		if l.Balance.Outcome == sim.Rocks {
			k.dots = plotter.XYs{{X: inDegrees(l.Balance.Rest.Tilt)}}
			for _, m := range []sim.Margin{l.Balance.Forward, l.Balance.Back} {
				if m.Exists() {
					k.rings = append(k.rings, plotter.XY{X: inDegrees(m.Tip)})
				}
			}
			alt = append(alt, fmt.Sprintf("%s rests at %s and goes over at %s and %s", cut(l.Name, 60),
				sided(l.Balance.Rest.Tilt, r.Design), sided(l.Balance.Back.Tip, r.Design), sided(l.Balance.Forward.Tip, r.Design)))
		} else {
			alt = append(alt, fmt.Sprintf("%s: %s", cut(l.Name, 60), l.Balance.Outcome))
		}
		c.curves = append(c.curves, k)
	}
	for i := range c.curves { // within the chart
		k := &c.curves[i]
		outside := func(p plotter.XY) bool {
			return p.X < c.low.X || p.X > c.high.X || p.Y < c.low.Y || p.Y > c.high.Y
		}
		seen := slices.DeleteFunc(slices.Clone(k.points), outside)
		k.anchor = plotter.XY{X: c.high.X, Y: c.high.Y}
		if len(seen) > 0 {
			k.anchor = slices.MaxFunc(seen, func(a, b plotter.XY) int { return cmp.Compare(a.Y, b.Y) })
		}
		k.dots, k.rings = slices.DeleteFunc(k.dots, outside), slices.DeleteFunc(k.rings, outside)
	}
	margin := 0.06 * (c.high.Y - c.low.Y)
	c.low.Y, c.high.Y = c.low.Y-margin, c.high.Y+margin
	return c.picture("righting arm", "Righting arm against tilt. "+strings.Join(alt, "; ")+".")
}

// scaleOf returns how much SI one on a chart's axis is.
func scaleOf(kind quantity.Kind, units quantity.System) float64 {
	one, err := quantity.FromNumber(1, kind, units)
	if err != nil {
		return 1
	}
	return one
}

func inDegrees(x float64) float64 { return x * 180 / math.Pi }

func degreesOf(x float64, units quantity.System) string {
	return quantity.With(x, quantity.Angle, units)
}
