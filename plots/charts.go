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
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// RightingArm draws the righting arm of the loads that matter most against the tilt: the rest is a dot,
// the tilts at which it goes over are rings. A cradle has the tilts of 5 and 10 degrees
// marked, of which its cautions speak.
func RightingArm(r check.Report) Picture {
	units := r.Design.Units
	one := quantity.One(quantity.Length, units)
	c := chart{
		title: cut(r.Design.Title, 60) + ": what brings it back",
		x:     "tilt from as drawn, degrees, + " + r.Design.Directions().Back + " (dot: rest; ring: goes over)",
		y:     "righting arm, " + quantity.Unit(quantity.Length, units),
		low:   plotter.XY{X: math.Inf(1)}, high: plotter.XY{X: math.Inf(-1)},
	}
	for _, tilt := range r.Design.Directions().Marks {
		c.lines = append(c.lines, inDegrees(tilt))
	}
	var alt []string
	for i, l := range shown(r) {
		k := series{label: cut(l.Name, longestLabel), line: lineOf(i)}
		for _, p := range l.Righting() {
			at := plotter.XY{X: float64(p.Degree), Y: p.Arm / one}
			k.points = append(k.points, at)
			if l.Empty || l.Role != piece.Hazard { // a hazard's curve may run off the chart
				c.reach(at)
			}
		}
		said := fmt.Sprintf(": %s", l.Balance.Outcome)
		if b := l.Balance; b.Outcome == sim.Rocks {
			k.dots = plotter.XYs{{X: inDegrees(b.Rest.Tilt)}}
			for _, m := range []sim.Margin{b.Forward, b.Back} {
				if m.Exists() {
					k.rings = append(k.rings, plotter.XY{X: inDegrees(m.Tip)})
				}
			}
			said = fmt.Sprintf(" rests at %s and goes over at %s and %s",
				sided(b.Rest.Tilt, r.Design), sided(b.Back.Tip, r.Design), sided(b.Forward.Tip, r.Design))
		}
		alt = append(alt, cut(l.Name, 60)+said)
		c.curves = append(c.curves, k)
	}
	for i := range c.curves { // within the chart
		k := &c.curves[i]
		outside := func(p plotter.XY) bool {
			return p.X < c.low.X || p.X > c.high.X || p.Y < c.low.Y || p.Y > c.high.Y
		}
		k.anchor = c.high
		if seen := slices.DeleteFunc(slices.Clone(k.points), outside); len(seen) > 0 {
			k.anchor = slices.MaxFunc(seen, func(a, b plotter.XY) int { return cmp.Compare(a.Y, b.Y) })
		}
		k.dots, k.rings = slices.DeleteFunc(k.dots, outside), slices.DeleteFunc(k.rings, outside)
	}
	c.spread()
	return pictureOf("righting arm", "Righting arm against tilt. "+strings.Join(alt, "; ")+".", c.plot)
}

// TimeOfARock draws how long one rock takes, there and back, against the tilt from rest
// at which a load is let go, as far as it comes back.
func TimeOfARock(r check.Report) Picture {
	c := chart{
		title: cut(r.Design.Title, 60) + ": time of one rock",
		x:     "let go from, degrees from its own rest, + " + r.Design.Directions().Back + " (dot: small rock)",
		y:     "there and back, seconds",
		low:   plotter.XY{X: -1}, high: plotter.XY{X: 1, Y: 1},
	}
	var alt []string
	for i, l := range shown(r) {
		small := l.Balance.Period
		if l.Balance.Outcome != sim.Rocks || math.IsNaN(small) {
			alt = append(alt, cut(l.Name, 60)+" has no time of its own")
			continue
		}
		k := series{label: cut(l.Name, longestLabel), line: lineOf(i), dots: plotter.XYs{{Y: small}}, points: timesOf(l, small)}
		for _, p := range k.points {
			c.reach(p)
		}
		k.anchor = k.points[len(k.points)-1]
		alt = append(alt, fmt.Sprintf("%s %.1f s for a small rock", cut(l.Name, 60), small))
		c.curves = append(c.curves, k)
	}
	c.high.Y *= 1.05
	return pictureOf("time of a rock", "Time of one rock against release. "+strings.Join(alt, "; ")+".", c.plot)
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
	newton := quantity.One(quantity.Force, d.Units)
	var list []Picture
	for i, t := range []timeChart{
		{"tilt", "tilt (ring: knock; dot: end)", "tilt from as drawn, degrees, + " + d.Directions().Back,
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
	c.high.X = min(r.Trace.Duration, 20) // s, all that is drawn
	ground := r.Load.Rig.Rise(r.Load.Balance.Rest.Tilt)
	for i, label := range t.labels {
		k := series{label: label, line: lineOf(i + 1)}
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

// shown returns the loads that a chart draws: the piece alone, each owner's first posture
// and the one nearest to going over backwards, of others who may sit the latter, and of
// hazards the first of each person.
func shown(r check.Report) []*check.Load {
	const most = 8 // curves that one chart tells apart
	list := []*check.Load{&r.Loads[0]}
	add := func(l *check.Load) {
		if l != nil && len(list) < most && !slices.Contains(list, l) {
			list = append(list, l)
		}
	}
	for _, role := range []piece.Role{piece.Owner, piece.Other, piece.Hazard} {
		for _, same := range bySitter(r.Loads, role) {
			if role != piece.Other {
				add(same[0])
			}
			if role != piece.Hazard {
				add(check.LeastBack(same))
			}
		}
	}
	return list
}

// bySitter parts the loads of a role by their person, in order.
func bySitter(loads []check.Load, role piece.Role) [][]*check.Load {
	var groups [][]*check.Load
	for i := range loads {
		l, last := &loads[i], len(groups)-1
		switch {
		case l.Empty || l.Role != role:
		case last >= 0 && groups[last][0].Sitter == l.Sitter:
			groups[last] = append(groups[last], l)
		default:
			groups = append(groups, []*check.Load{l})
		}
	}
	return groups
}

func inDegrees(x float64) float64 { return x * 180 / math.Pi }

func degreesOf(x float64, units quantity.System) string {
	return quantity.With(x, quantity.Angle, units)
}
