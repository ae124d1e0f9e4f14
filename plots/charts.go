package plots

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/plot/plotter"

	"rockerwright/plots/scene"
	"rockerwright/sim"
	"rockerwright/sim/motion"
	"rockerwright/sim/quantity"
)

// RightingArm draws the righting arms of loads against the tilt: the rest is a dot, the tilts at which a load goes
// over are rings. An arm is drawn at each whole degree up to five beyond where the load goes over, or of one that
// does not go over to both sides 45 to both. It panics for a rig whose arm is no number.
func (c Chart) RightingArm(loads ...Load) scene.Picture {
	one := quantity.One(quantity.Length, c.Units)
	k := curves{
		title: c.title("what brings it back"),
		x:     "tilt from as drawn, degrees, + " + c.back() + " (dot: rest; ring: goes over)",
		y:     "righting arm, " + quantity.Unit(quantity.Length, c.Units),
		low:   plotter.XY{X: math.Inf(1)}, high: plotter.XY{X: math.Inf(-1)},
	}
	for _, tilt := range c.Marks {
		k.lines = append(k.lines, inDegrees(tilt))
	}
	var alt []string
	for i, l := range loads {
		s := series{label: scene.Cut(l.Label, longestLabel), line: lineOf(i)}
		first, last := l.degrees()
		righting := l.Arm
		if righting == nil {
			righting = l.Rig.Righting
		}
		for n := first; n <= last; n++ {
			arm, _ := righting(float64(n) * quantity.Deg)
			at := plotter.XY{X: float64(n), Y: arm / one}
			s.points = append(s.points, at)
			if !l.RunsOff {
				k.reach(at)
			}
		}
		said := fmt.Sprintf(": %s", l.Balance.Outcome)
		if b := l.Balance; b.Outcome == sim.Rocks {
			s.dots = plotter.XYs{{X: inDegrees(b.Rest.Tilt)}}
			var over []string
			for _, m := range []sim.Margin{b.Back, b.Forward} {
				if m.Exists() {
					s.rings = append(s.rings, plotter.XY{X: inDegrees(m.Tip)})
					over = append(over, c.Sided(m.Tip))
				}
			}
			said = fmt.Sprintf(" rests at %s", c.Sided(b.Rest.Tilt))
			if len(over) > 0 {
				said += " and goes over at " + strings.Join(over, " and ")
			}
		}
		alt = append(alt, scene.Cut(l.Label, longestTold)+said)
		k.curves = append(k.curves, s)
	}
	outside := func(p plotter.XY) bool { return p.X < k.low.X || p.X > k.high.X || p.Y < k.low.Y || p.Y > k.high.Y }
	for i := range k.curves { // marks within what is shown, and the label at the highest point there
		s := &k.curves[i]
		s.anchor = k.high
		if seen := slices.DeleteFunc(slices.Clone(s.points), outside); len(seen) > 0 {
			s.anchor = slices.MaxFunc(seen, func(a, b plotter.XY) int { return cmp.Compare(a.Y, b.Y) })
		}
		s.dots, s.rings = slices.DeleteFunc(s.dots, outside), slices.DeleteFunc(s.rings, outside)
	}
	k.spread()
	return pictureOf(k.plot(), "righting arm", "Righting arm against tilt. "+strings.Join(alt, "; ")+".")
}

// degrees returns between which tilts the righting arm is drawn.
func (l Load) degrees() (first, last int) {
	const beyond = 5
	first, last = -45, 45
	b := l.Balance
	if b.Forward.Exists() {
		first = max(int(math.Floor((b.Rest.Tilt-b.Forward.Angle)/quantity.Deg))-beyond, -179)
	}
	if b.Back.Exists() {
		last = min(int(math.Ceil((b.Rest.Tilt+b.Back.Angle)/quantity.Deg))+beyond, 179)
	}
	return first, last
}

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
	return pictureOf(k.plot(), "time of a rock", "Time of one rock against release. "+strings.Join(alt, "; ")+".")
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
