package check

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/quantity"
)

// Rider returns all who ride as one body: with what the floor does not carry of their legs at the rest.
func (l *Load) Rider() body.Body {
	on := l.Person
	for i := range l.Legs {
		hangs := l.Legs[i].Mass()
		if l.Feet != nil {
			hangs -= l.Feet[i].Carried
		}
		on = body.Join(on, body.Body{Mass: hangs, Centre: l.Legs[i].Knee})
	}
	return on
}

// FiguresAt returns the joints of who is posed on it with the piece at a tilt, chair frame: shanks and feet that stand
// on the floor as they do there.
func (l *Load) FiguresAt(tilt float64) []person.Joints {
	figures := slices.Clone(l.Figures)
	for i := range l.Legs {
		legs, j := &l.Legs[i], &figures[i]
		along, over := l.Rig.Place(legs.Knee, tilt)
		knee := r2.Vec{X: along, Y: over}
		back := func(p r2.Vec) r2.Vec {
			return r2.Add(legs.Knee, r2.Rotate(r2.Sub(p, knee), l.Rig.Floor.Slope-tilt, r2.Vec{}))
		}
		ankle, heel, toe := legs.Bars(knee)
		j.Ankle, j.Heel, j.Toe = back(ankle), back(heel), back(toe)
	}
	return figures
}

// Arm returns the righting arm of a load and the height of its balance point over the floor at a tilt, m: of people
// whose feet stand on the floor on the law of the feet.
func (l *Load) Arm(tilt float64) (arm, height float64) {
	if len(l.Legs) > 0 {
		return l.seated.Righting(tilt)
	}
	return l.Rig.Righting(tilt)
}

// SeatBehind and BackBehind return how far the weight of a load stands behind where the rocker touches with the seat
// falling so far, or the back leaning so far from plumb, rad: m, zero where it rests so. Unlike the rest it goes steadily
// with all that is changed, also where that stands still on a step of the feet.
func (b *Balanced) SeatBehind(l *Load, fall float64) float64 {
	return l.behind(fall - b.carry.Turn - b.Design.Seat.Fall())
}
func (b *Balanced) BackBehind(l *Load, recline float64) float64 {
	return l.behind(recline - b.carry.Turn - b.Design.Back.Recline)
}

// behind is how far the weight stands behind the contact at a tilt: of what lies between the two sides of a step that
// it stands on, nothing.
func (l *Load) behind(tilt float64) float64 {
	less, _ := l.Arm(tilt - sim.AtJoint)
	more, _ := l.Arm(tilt + sim.AtJoint)
	switch {
	case less > 0 && more > 0:
		return -min(less, more)
	case less < 0 && more < 0:
		return -max(less, more)
	}
	return 0
}

// Eased returns by how much the righting arm of a load at a tilt is more than with what the floor carries of legs at
// the rest held fixed, both of the whole weight, m; 0 where no feet stand on the floor.
func (l *Load) Eased(tilt float64) float64 {
	arm, _ := l.Arm(tilt)
	held, _ := l.Rig.Righting(tilt)
	whole := l.Rig.Body.Mass
	for i := range l.Feet {
		whole += l.Feet[i].Carried
	}
	return arm - held*(l.Rig.Body.Mass/whole)
}

// PressedFall returns the fall of the seat with the calves pressing, rad, and whether that is told beside the fall at
// ease: a degree and more.
func (l *Load) PressedFall() (fall float64, told bool) {
	by := l.Pressed - l.Balance.Rest.Tilt
	return l.SeatFall + by, by >= quantity.Deg
}

// Whole returns the piece and all who are on it as they are posed, shanks and feet too, chair frame.
func (b *Balanced) Whole(l *Load) body.Body {
	if len(l.Legs) == 0 {
		return l.Rig.Body
	}
	whole := b.Loads[0].Rig.Body
	for i := range l.people {
		whole = body.Join(whole, l.people[i].Person.Whole(l.Figures[i]))
	}
	if lap := l.people[0].lap; l.Posture == person.ChildOnLap {
		whole = body.Join(whole, lap.Whole(l.Figures[len(l.Figures)-1]))
	}
	return whole
}

// On balances the load on a piece of another mass.
func (l *Load) On(empty body.Body) {
	l.Pressed, l.Feet = math.NaN(), nil
	l.Rig.Body = body.Join(empty, l.Person)
	if len(l.Legs) == 0 {
		l.Balance = l.Rig.Balance()
		l.Off, l.OffBalance = l.Rig, l.Balance
		l.Back, l.Forward = l.Balance.Back, l.Balance.Forward
		return
	}
	l.seated = sim.Seated{Rig: l.Rig, Legs: l.Legs}
	seated := l.seated.Balance()
	l.Rig, l.Balance, l.Back = seated.Held, seated.Balance, seated.Back
	l.Feet, l.Pressed = seated.Feet, seated.Pressed
	l.Off = l.Rig
	l.Off.Body = body.Join(empty, l.off)
	l.OffBalance = l.Off.Balance()
	l.Forward = l.OffBalance.Forward
}

// lessForward gives each load with feet on the floor the lesser of its margins forward, feet off or rising.
func lessForward(loads []Load) {
	for i := range loads {
		for k := range loads {
			l, rising := &loads[i], &loads[k]
			if len(l.Legs) > 0 && rising.Posture == person.Rising && rising.Sitter == l.Sitter && rising.Forward.Lift < l.Forward.Lift {
				l.Forward = rising.Forward
			}
		}
	}
}

// moveAhead moves the balance point of who rides so far ahead, m, shanks and feet counted, whatever the floor carries
// of them: they hang and stand where they do, and the rest of the body moves by as much more.
func (l *Load) moveAhead(by float64) {
	whole := l.Person.Mass
	for i := range l.Legs {
		whole += l.Legs[i].Mass()
	}
	l.Person.Centre.X += by * whole / l.Person.Mass
	l.off.Centre.X += by
}

// LeaningBack returns the same with the balance points of all who ride so far further back, m, balanced anew; limits
// and all that hangs on them stay as they were.
func (b Balanced) LeaningBack(by float64) Balanced {
	b.Loads = b.rebalanced(b.Loads[0].Rig.Body, -by, anybody)
	return b
}

// PersonSpread is how surely a person's balance point is known from sizes, fore and aft, m: published bodies of one
// size scatter so (UMTRI, seated posture, and the men of Santschi, DuBois and Omoto; see package person). That 95 in 100
// are within is our reading: package person has no deviation of theirs.
const PersonSpread = 0.025

// RestSpread returns by how much the rest of a load may be off because people of one size differ, rad: for a balance
// point 25 mm ahead or behind. It is NaN without a rest, and of whom nothing is known but plain numbers.
func (b *Balanced) RestSpread(l *Load) float64 {
	if len(l.people) == 0 || l.Balance.Outcome != sim.Rocks {
		return math.NaN()
	}
	most := 0.0
	for _, by := range []float64{-PersonSpread, PersonSpread} {
		moved := *l
		moved.moveAhead(by)
		if moved.On(b.Loads[0].Rig.Body); moved.Balance.Outcome == sim.Rocks {
			most = max(most, math.Abs(moved.Balance.Rest.Tilt-l.Balance.Rest.Tilt))
		}
	}
	return most
}
