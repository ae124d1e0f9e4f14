package plots

import (
	"slices"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// mostShown is how many curves one chart tells apart.
const mostShown = 8

// shown returns the loads that a chart draws: the piece alone, each owner's first posture
// and the one nearest to going over backwards, of others who may sit the latter, and of
// hazards the first of each person.
func shown(r check.Report) []*check.Load {
	list := []*check.Load{&r.Loads[0]}
	add := func(l *check.Load) {
		if l != nil && len(list) < mostShown && !slices.Contains(list, l) {
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
		l := &loads[i]
		if l.Empty || l.Role != role {
			continue
		}
		if last := len(groups) - 1; last >= 0 && groups[last][0].Sitter == l.Sitter {
			groups[last] = append(groups[last], l)
			continue
		}
		groups = append(groups, []*check.Load{l})
	}
	return groups
}
