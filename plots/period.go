package plots

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/plot/plotter"

	"rockerwright/plots/scene"
	"rockerwright/sim"
	"rockerwright/sim/quantity"
)

// Period draws how long one rock takes, there and back, against the tilt from rest at which a load is let go, as far
// as it comes back; the small rock is a dot. A load without a small rock is told, and not drawn.
func (c Chart) Period(loads ...Load) scene.Picture {
	k := curves{
		title: c.title("time of one rock"),
		x:     "let go from, degrees from its own rest, + " + c.back() + " (dot: small rock)",
		y:     "there and back, seconds",
		low:   plotter.XY{X: -1}, high: plotter.XY{X: 1, Y: 1},
	}
	var alt []string
	for i, l := range loads {
		small, told := l.Balance.Period, scene.Cut(l.Label, longestTold)
		if l.Balance.Outcome != sim.Rocks || math.IsNaN(small) {
			alt = append(alt, told+" has no time of its own")
			continue
		}
		s := series{label: scene.Cut(l.Label, longestLabel), line: lineOf(i),
			dots: plotter.XYs{{Y: small}}, points: l.periods()}
		for _, p := range s.points {
			k.reach(p)
		}
		s.anchor = s.points[len(s.points)-1]
		alt = append(alt, fmt.Sprintf("%s %.1f s for a small rock", told, small))
		k.curves = append(k.curves, s)
	}
	k.high.Y *= 1.05
	return k.picture("time of a rock", "Time of one rock against release. "+strings.Join(alt, "; ")+".")
}

// periods returns a load's times at each half degree from which it comes back, up to twice the small rock's.
func (l Load) periods() plotter.XYs {
	small := l.Balance.Period
	points := plotter.XYs{{X: 0, Y: small}}
	for _, side := range []float64{-1, 1} {
		for n := 1.0; n <= 360; n++ {
			period, _ := l.Rig.Period(l.Balance, side*n/2*quantity.Deg)
			if !(period <= 2*small) {
				break
			}
			points = append(points, plotter.XY{X: side * n / 2, Y: period})
		}
		if side < 0 {
			slices.Reverse(points)
		}
	}
	return points
}
