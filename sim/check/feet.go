package check

import (
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/motion"
)

// Treads reports whether somebody on a load may push with the feet on the floor: who sits at ease or with the feet off it,
// posed by sizes.
func (l *Load) Treads() bool {
	return (l.Posture == person.AtEase || l.Posture == person.FeetOff) && len(l.people) > 0 && l.Moves() &&
		l.OffBalance.Outcome == sim.Rocks
}

// Treading returns the rig of a load of which [Load.Treads] holds, all of its people riding as they sit, and the feet as
// they stand on the floor to push, without a force: so far ahead of the hips at the rest, m, or under the knees where that
// is zero. Of several people they are the feet of all together, as far as the shortest legs reach.
func (b *Balanced) Treading(l *Load, ahead float64) (sim.Rig, motion.Feet) {
	rig := l.Off
	rig.Body = b.Whole(l)
	rest := l.Balance.Rest.Tilt
	if own := rig.Balance(); own.Outcome == sim.Rocks {
		rest = own.Rest.Tilt
	}
	shortest := 0
	for i := range l.people {
		if l.people[i].Person.LegReach() < l.people[shortest].Person.LegReach() {
			shortest = i
		}
	}
	one, figure := &l.people[shortest].Person, &l.Figures[shortest]
	hips, _ := rig.Place(figure.Hip, rest)
	at, _ := rig.Place(figure.Knee, rest)
	if ahead != 0 {
		at = hips + ahead
	}
	return rig, motion.Feet{At: at, Hips: figure.Hip, Ankle: one.Ankle(), Reach: one.LegReach()}
}
