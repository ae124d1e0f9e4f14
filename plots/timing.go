package plots

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/plot/plotter"

	"rockerwright/sim"
	"rockerwright/sim/check"
)

// TimeOfARock draws how long one rock takes, there and back, against the tilt from rest
// at which a load is let go, as far as it comes back.
func TimeOfARock(r check.Report) Picture {
	c := chart{
		title: cut(r.Design.Title, 60) + ": time of one rock",
		x:     "let go from, degrees from its own rest, + " + r.Design.Ways().Back + " (dot: small rock)",
		y:     "there and back, seconds",
	}
	c.low, c.high = plotter.XY{X: -1}, plotter.XY{X: 1, Y: 1}
	var alt []string
	for i, l := range shown(r) {
		small := l.Balance.Period
		if l.Balance.Outcome != sim.Rocks || math.IsNaN(small) {
			alt = append(alt, cut(l.Name, 60)+" has no time of its own")
			continue
		}
		k := curve{label: cut(l.Name, longestLabel), line: lineOf(i), anchor: plotter.XY{Y: small}, dots: plotter.XYs{{Y: small}}}
		k.points = timesOf(l, small)
		for _, p := range k.points {
			c.low.X, c.high.X = min(c.low.X, p.X), max(c.high.X, p.X)
			c.high.Y = max(c.high.Y, p.Y)
		}
		k.anchor = k.points[len(k.points)-1]
		alt = append(alt, fmt.Sprintf("%s %.1f s for a small rock", cut(l.Name, 60), small))
		c.curves = append(c.curves, k)
	}
	c.high.Y *= 1.05
	return c.picture("time of a rock", "Time of one rock against release. "+strings.Join(alt, "; ")+".")
}

// timesOf returns a load's times at each half degree from which it comes back, up to
// twice the small rock's.
func timesOf(l *check.Load, small float64) plotter.XYs {
	points := plotter.XYs{{X: 0, Y: small}}
	for _, way := range []float64{-1, 1} {
		for n := 1.0; n <= 360; n++ {
			period, _ := l.Rig.Period(l.Balance, way*n/2*math.Pi/180)
			if !(period <= 2*small) {
				break
			}
			points = append(points, plotter.XY{X: way * n / 2, Y: period})
		}
		if way < 0 {
			slices.Reverse(points)
		}
	}
	return points
}
