package plots

import (
	"fmt"
	"math"

	"gonum.org/v1/plot/plotter"

	"rockerwright/sim/motion"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// shownTime is how much of a motion is drawn, s.
const shownTime = 20.0

// A timeChart is one or more values of a motion in time.
type timeChart struct {
	name, title, y string
	alt            string
	labels         []string // of its values
	value          func(l motion.Look, i int) float64
}

// Traces returns the pictures of a motion in time: tilt with its events, energy, what the
// floor must do, and the friction it takes.
func Traces(r trial.Rocking) []Picture {
	d, who := r.Report.Design, cut(r.Load.Name, 60)
	newton := scaleOf(quantity.Force, d.Units)
	var list []Picture
	for i, t := range []timeChart{
		{"tilt", "tilt (ring: knock; dot: end)", "tilt from as drawn, degrees, + " + d.Ways().Back,
			fmt.Sprintf("Tilt of %s in time; it ends at %s: %v.", who, degreesOf(r.Trace.Last.Tilt, d.Units), r.Trace.End),
			[]string{"tilt"}, func(l motion.Look, _ int) float64 { return inDegrees(l.Tilt) }},
		{"energy", "energy over that of the rest", "energy, joules", fmt.Sprintf("Energy of %s in time.", who),
			[]string{"energy"}, func(l motion.Look, _ int) float64 { return l.Energy }},
		{"floor", "what the floor must do", "force, " + quantity.Unit(quantity.Force, d.Units),
			fmt.Sprintf("Forces of the floor on %s; the largest friction needed is %.2f.", who, r.Trace.Friction),
			[]string{"up", "forward"}, func(l motion.Look, i int) float64 { return [...]float64{l.Up, l.Forward}[i] / newton }},
		{"friction", "friction needed", "sideways over upright force of the floor",
			fmt.Sprintf("Friction that %s needs in time; the most is %.2f.", who, r.Trace.Friction),
			[]string{"needed"}, func(l motion.Look, _ int) float64 { return math.Abs(l.Forward) / l.Up }},
	} {
		c := t.chart(r)
		if i == 0 {
			c.mark(r)
		}
		list = append(list, pictureOf(t.name+" in time", t.alt, c.plot))
	}
	return list
}

// chart lays the values out.
func (t timeChart) chart(r trial.Rocking) chart {
	c := chart{title: cut(r.Report.Design.Title, 40) + ", " + cut(r.Load.Name, 24) + ": " + t.title, x: "time, seconds", y: t.y}
	c.high.X = min(r.Trace.Duration, shownTime)
	ground := r.Load.Rig.Rise(r.Load.Balance.Rest.Tilt)
	for i, label := range t.labels {
		k := curve{label: label, line: lineOf(i + 1)}
		const points = 800
		for n := range points + 1 {
			look := r.Trace.Look(r.Load.Rig, ground, c.high.X*float64(n)/points)
			if at := (plotter.XY{X: look.Time, Y: t.value(look, i)}); !math.IsNaN(at.Y) && !math.IsInf(at.Y, 0) {
				k.points, k.anchor = append(k.points, at), at
				c.reach(at)
			}
		}
		if len(k.points) > 0 {
			c.curves = append(c.curves, k)
		}
	}
	c.spread()
	return c
}

// mark marks the knocks of a motion and its end on the curve of its tilt.
func (c *chart) mark(r trial.Rocking) {
	if len(c.curves) == 0 {
		return
	}
	k := &c.curves[0]
	for _, e := range r.Trace.Events {
		if e.Kind == motion.Knock && e.Time <= c.high.X {
			k.rings = append(k.rings, plotter.XY{X: e.Time, Y: inDegrees(e.Tilt)})
		}
	}
	if r.Trace.Duration <= c.high.X {
		k.dots = plotter.XYs{{X: r.Trace.Duration, Y: inDegrees(r.Trace.Last.Tilt)}}
	}
}
