package plots

import (
	"slices"

	"rockerwright/plots/scene"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/trial"
)

// ChartOf returns what the charts of a design share. A cradle has the tilts marked of which its cautions speak.
func ChartOf(d piece.Design) Chart {
	sides := d.Directions()
	return Chart{Title: d.Title, Units: d.Units, Marks: sides.Marks,
		Back: sides.Back, Behind: sides.Behind, Ahead: sides.Ahead}
}

// loadOf returns a load of a report. The righting arm of a hazard may run off the chart.
func loadOf(l *check.Load) Load {
	return Load{Label: l.Name, Rig: l.Rig, Balance: l.Balance, RunsOff: !l.Empty && l.Role == piece.Hazard}
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
