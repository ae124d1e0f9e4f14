package plots

import (
	"cmp"
	"math"
	"slices"

	"rockerwright/plots/scene"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// A Chart is what the charts of one piece share. The zero Chart: no title, inches and pounds, rocking back and forward.
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
	Arm     func(tilt float64) (arm, height float64) // nil means that of the Rig; of people at ease that of [sim.Seated.Righting]
	RunsOff bool                                     // its righting arm may run off the chart
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

// ChartOf returns what the charts of a design share. A cradle has the tilts marked of which its cautions speak.
func ChartOf(d piece.Design) Chart {
	sides := d.Directions()
	return Chart{Title: d.Title, Units: d.Units, Marks: sides.Marks,
		Back: sides.Back, Behind: sides.Behind, Ahead: sides.Ahead}
}

// loadOf returns a load of a report. The righting arm of a hazard may run off the chart. Of people whose feet stand on
// the floor only the hilltop at the back is marked: how near they are to going forward is said of feet off the floor.
func loadOf(l *check.Load) Load {
	load := Load{Label: l.Name, Rig: l.Rig, Balance: l.Balance, RunsOff: !l.Empty && l.Role == piece.Hazard}
	if len(l.Legs) > 0 {
		nan := math.NaN()
		load.Arm, load.Balance.Back = l.Arm, l.Back
		load.Balance.Forward = sim.Margin{Tip: nan, Angle: nan, Lift: nan, Work: nan, Over: nan}
	}
	return load
}

// OfReport draws the righting arm and the time of a rock of the loads of a report that matter most.
func OfReport(r check.Report) []scene.Picture {
	var loads []Load
	for _, l := range shown(r) {
		loads = append(loads, loadOf(l))
	}
	c := ChartOf(r.Design)
	return []scene.Picture{c.RightingArm(loads...), c.Period(loads...)}
}

// OfMotion draws the motion of a load of a report in time; see [Chart.Traces].
func OfMotion(r trial.Rocking) []scene.Picture {
	return ChartOf(r.Report.Design).Traces(loadOf(r.Load), r.Trace)
}

// shown returns the loads that a chart draws: the piece alone, each owner's first posture and the one nearest to going
// over backwards, of others who may sit the latter, and of hazards the first of each person.
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
