package check

import (
	"cmp"
	"math"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// Losses returns what a rock of a load loses on the design's floor.
func (b *Balanced) Losses(l *Load) motion.Losses {
	floor := &b.Design.Floor
	losses := motion.Losses{Rolling: cmp.Or(floor.Rolling, piece.GroundOf(floor.Surface).Rolling), Viscous: floor.Viscous}
	if floor.Halves > 0 && floor.Viscous == 0 && !math.IsNaN(l.Balance.Period) { // on a flat no small rock halves
		losses.Viscous = motion.HalvesIn(l.Rig, l.Balance, floor.Halves)
	}
	return losses
}

// How people rock hard; our judgement.
const (
	TrunkRate = 120 * quantity.Deg // the most with which a trunk turns about the hips, rad/s
	MostLeans = 20                 // after so many nobody goes on
)

// Leans returns between which leans, rad, + back, the people of a load lean to and fro, from sitting as they are posed,
// which is 0: as the posture has it, but no further than a trunk turns in half a rock. It is 0 and 0 where nobody does: who
// lies, who is given by plain numbers, who sits off the back or has something in hand.
func (l *Load) Leans() (back, forward float64) {
	if !l.Moves() || len(l.people) == 0 || l.onRocker || l.OffBalance.Outcome != sim.Rocks {
		return 0, 0
	}
	back, forward = person.Leans(l.Posture)
	if most := TrunkRate * l.OffBalance.Period / 2; back-forward > most {
		back, forward = back*most/(back-forward), forward*most/(back-forward)
	}
	return back, forward
}

// Leaner returns the people of a load who lean, with their feet off the floor, on a floor that holds whatever comes, for
// one that lets go only takes from a rock.
func (l *Load) Leaner() motion.Rider {
	r := motion.Rider{Rig: l.Off}
	r.Rig.Floor.Friction = 0
	for i := range l.people {
		one, figure := &l.people[i].Person, &l.Figures[i]
		trunk := motion.Trunk{Body: one.Upper(*figure), Hips: figure.Hip}
		r.Rig.Body = body.Join(r.Rig.Body, trunk.Body.Scaled(-1))
		r.Trunks = append(r.Trunks, trunk)
	}
	return r
}

// RockedHard lets the people of a load lean to and fro from the rest, at each turn of the rock, by a share of the leans
// of [Load.Leans]: leaning back first or leaning forward first, whichever goes over sooner. There are no Leans in it
// where nobody leans.
func (b *Balanced) RockedHard(l *Load, share float64) motion.Heaving {
	back, forward := l.Leans()
	if back == forward {
		return motion.Heaving{Outcome: sim.Rocks}
	}
	rider, losses := l.Leaner(), b.Losses(l)
	worst := rider.Heave(share*forward, share*back, MostLeans, losses)
	if back != 0 { // who sits on the back leans forward first
		if other := rider.Heave(share*back, share*forward, MostLeans, losses); other.Survived() <= worst.Survived() {
			worst = other
		}
	}
	return worst
}

// survived returns how many whole leans to and fro of its people a load comes back from; NaN where nobody leans.
func survived(b *Balanced, l *Load) float64 {
	if h := b.RockedHard(l, 1); len(h.Leans) > 0 {
		return float64(h.Survived())
	}
	return math.NaN()
}
