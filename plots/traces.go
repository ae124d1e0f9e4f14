package plots

import (
	"fmt"
	"math"

	"gonum.org/v1/plot/plotter"

	"rockerwright/plots/scene"
	"rockerwright/sim/motion"
	"rockerwright/sim/quantity"
)

// mostTraced is how much of a motion is drawn, s.
const mostTraced = 20

// A value is what a chart draws of a motion in time.
type value struct {
	label string
	of    func(motion.Look) float64
}

// Traces draws a motion of a load in time, each in a picture of its own: the tilt with its knocks and its end, the
// energy, the forces of the floor, and the friction that is needed. The motion was followed with [motion.Options.Keep].
func (c Chart) Traces(l Load, t motion.Trace) []scene.Picture {
	who, newton := scene.Cut(l.Label, longestTold), quantity.One(quantity.Force, c.Units)
	of := scene.Cut(l.Label, 24)
	if c.Title != "" {
		of = scene.Cut(c.Title, 40) + ", " + of
	}
	var list []scene.Picture
	for i, one := range []struct {
		name, title, y, alt string
		values              []value
	}{
		{"tilt", "tilt (ring: knock; dot: end)", "tilt from as drawn, degrees, + " + c.back(),
			fmt.Sprintf("Tilt of %s in time; it ends at %s: %v.", who, c.angle(t.Last.Tilt), t.End),
			[]value{{"tilt", func(l motion.Look) float64 { return inDegrees(l.Tilt) }}}},
		{"energy", "energy over that of the rest", "energy, joules", fmt.Sprintf("Energy of %s in time.", who),
			[]value{{"energy", func(l motion.Look) float64 { return l.Energy }}}},
		{"floor", "what the floor must do", "force, " + quantity.Unit(quantity.Force, c.Units),
			fmt.Sprintf("Forces of the floor on %s; the largest friction needed is %.2f.", who, t.Friction),
			[]value{{"up", func(l motion.Look) float64 { return l.Up / newton }},
				{"forward", func(l motion.Look) float64 { return l.Forward / newton }}}},
		{"friction", "friction needed", "sideways over upright force of the floor",
			fmt.Sprintf("Friction that %s needs in time; the most is %.2f.", who, t.Friction),
			[]value{{"needed", func(l motion.Look) float64 { return math.Abs(l.Forward) / l.Up }}}},
	} {
		k := curves{title: of + ": " + one.title, x: "time, seconds", y: one.y}
		k.trace(l, t, one.values)
		if i == 0 {
			k.mark(t)
		}
		list = append(list, pictureOf(k.plot(), one.name+" in time", one.alt))
	}
	return list
}

// trace draws values of a motion in time.
func (k *curves) trace(l Load, t motion.Trace, values []value) {
	k.high.X = min(t.Duration, mostTraced)
	ground := l.Rig.Rise(l.Balance.Rest.Tilt)
	const points = 800
	for i, v := range values {
		s := series{label: v.label, line: lineOf(i + 1)}
		for n := range points + 1 {
			look := t.Look(l.Rig, ground, k.high.X*float64(n)/points)
			if at := (plotter.XY{X: look.Time, Y: v.of(look)}); !math.IsNaN(at.Y) && !math.IsInf(at.Y, 0) {
				s.points, s.anchor = append(s.points, at), at
				k.reach(at)
			}
		}
		if len(s.points) > 0 {
			k.curves = append(k.curves, s)
		}
	}
	k.spread()
}

// mark marks the knocks of a motion and its end on the curve of its tilt.
func (k *curves) mark(t motion.Trace) {
	if len(k.curves) == 0 {
		return
	}
	s := &k.curves[0]
	for _, e := range t.Events {
		if e.Kind == motion.Knock && e.Time <= k.high.X {
			s.rings = append(s.rings, plotter.XY{X: e.Time, Y: inDegrees(e.Tilt)})
		}
	}
	if t.Duration <= k.high.X {
		s.dots = plotter.XYs{{X: t.Duration, Y: inDegrees(t.Last.Tilt)}}
	}
}
