package plots

import (
	"fmt"
	"math"

	"gonum.org/v1/plot/plotter"

	"rockerwright/sim/motion"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// Traces returns the pictures of a motion in time: tilt with its events, energy, what the
// floor must do, and the friction it takes.
func Traces(r trial.Rocking) []Picture {
	return []Picture{tiltInTime(r), energyInTime(r), floorInTime(r), frictionInTime(r)}
}

// shownTime is how much of a motion is drawn, s.
const shownTime = 20.0

// looks reads a motion at even times.
func looks(r trial.Rocking) []motion.Look {
	ground := r.Load.Rig.Rise(r.Load.Balance.Rest.Tilt)
	span := min(r.Trace.Duration, shownTime)
	const points = 800
	list := make([]motion.Look, points+1)
	for i := range list {
		list[i] = r.Trace.Look(r.Load.Rig, ground, span*float64(i)/points)
	}
	return list
}

// inTime lays out a chart of one or more values in time.
func inTime(r trial.Rocking, title, y string, labels []string, value func(motion.Look, int) float64) chart {
	c := chart{title: cut(r.Report.Design.Title, 40) + ", " + cut(r.Load.Name, 24) + ": " + title, x: "time, seconds", y: y}
	c.low, c.high = plotter.XY{}, plotter.XY{X: min(r.Trace.Duration, shownTime)}
	list := looks(r)
	for i, label := range labels {
		k := curve{label: label, line: lineOf(i + 1)}
		for _, look := range list {
			at := plotter.XY{X: look.Time, Y: value(look, i)}
			if math.IsNaN(at.Y) || math.IsInf(at.Y, 0) {
				continue
			}
			k.points = append(k.points, at)
			c.low.Y, c.high.Y = min(c.low.Y, at.Y), max(c.high.Y, at.Y)
		}
		if n := len(k.points); n > 0 {
			k.anchor = k.points[n-1]
			c.curves = append(c.curves, k)
		}
	}
	margin := 0.06 * max(c.high.Y-c.low.Y, 1e-9)
	c.low.Y, c.high.Y = c.low.Y-margin, c.high.Y+margin
	return c
}

// picture returns the chart as a picture.
func (c chart) picture(name, alt string) Picture {
	c.alt = alt
	return Picture{Name: name, Alt: alt, draw: c.write}
}

func tiltInTime(r trial.Rocking) Picture {
	alt := fmt.Sprintf("Tilt of %s in time; it ends at %s: %v.", cut(r.Load.Name, 60), degreesOf(r.Trace.Last.Tilt, r.Report.Design.Units), r.Trace.End)
	c := inTime(r, "tilt (ring: knock; dot: end)", "tilt from as drawn, degrees, + "+r.Report.Design.Ways().Back, []string{"tilt"}, func(l motion.Look, _ int) float64 { return inDegrees(l.Tilt) })
	if len(c.curves) > 0 {
		for _, e := range r.Trace.Events {
			if e.Kind == motion.Knock && e.Time <= c.high.X {
				c.curves[0].rings = append(c.curves[0].rings, plotter.XY{X: e.Time, Y: inDegrees(e.Tilt)})
			}
		}
		if r.Trace.Duration <= c.high.X {
			c.curves[0].dots = plotter.XYs{{X: r.Trace.Duration, Y: inDegrees(r.Trace.Last.Tilt)}}
		}
	}
	return c.picture("tilt in time", alt)
}

func energyInTime(r trial.Rocking) Picture {
	c := inTime(r, "energy over that of the rest", "energy, joules", []string{"energy"}, func(l motion.Look, _ int) float64 { return l.Energy })
	return c.picture("energy in time", fmt.Sprintf("Energy of %s in time.", cut(r.Load.Name, 60)))
}

func floorInTime(r trial.Rocking) Picture {
	units := r.Report.Design.Units
	one := scaleOf(quantity.Force, units)
	c := inTime(r, "what the floor must do", "force, "+quantity.Unit(quantity.Force, units), []string{"up", "forward"},
		func(l motion.Look, i int) float64 { return [...]float64{l.Up, l.Forward}[i] / one })
	return c.picture("floor in time", fmt.Sprintf("Forces of the floor on %s; the largest friction needed is %.2f.", cut(r.Load.Name, 60), r.Trace.Friction))
}

func frictionInTime(r trial.Rocking) Picture {
	c := inTime(r, "friction needed", "sideways over upright force of the floor", []string{"needed"}, func(l motion.Look, _ int) float64 { return math.Abs(l.Forward) / l.Up })
	return c.picture("friction in time", fmt.Sprintf("Friction that %s needs in time; the most is %.2f.", cut(r.Load.Name, 60), r.Trace.Friction))
}
