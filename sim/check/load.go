package check

import (
	"cmp"
	"fmt"
	"math"
	"strings"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Load is the piece with one person in one posture, or empty, and what was found. What does not exist is NaN.
type Load struct {
	Name     string
	Empty    bool
	Role     piece.Role // of a load with a person
	Sitter   string     // the person's name
	Posture  person.Posture
	Figures  []person.Joints // of who is posed on it, as drawn, chair frame
	Standing float64         // mass that the floor carries and the piece does not whatever the tilt, kg
	Give     *Give           // of the back; nil where it is stiff or nobody leans on it

	// Rig and Balance are of all that moves as one: of people whose feet stand on the floor with what it carries of
	// their legs at the rest held fixed. Back and Forward are how near it is to going over as it is said: back
	// on the law of the feet ([sim.Seated]); forward the lesser, by its lift, of feet off the floor and of rising, each from
	// the rest that it has then, for feet on the floor may help there but cannot be counted on. Where no feet stand on
	// the floor they are those of Balance, where they carry part of who rises none is known back.
	Rig           sim.Rig
	Balance       sim.Balance
	Back, Forward sim.Margin
	Person        body.Body   // all who ride, as they are carried on the rockers, without Legs, chair frame
	Legs          []body.Legs // of each whose feet stand on the floor
	Feet          []sim.Feet  // what they do there
	Pressed       float64     // tilt of the rest with the calves pressing, rad; NaN where no feet stand on the floor
	Off           sim.Rig     // with all feet off the floor; of no Legs as Rig
	OffBalance    sim.Balance // of Off

	SeatFall      float64 // of the seat at rest, from level, + back, rad
	BackRecline   float64 // of the back at rest, from plumb, rad
	EffortBack    float64 // at the top of the back to hold it one degree back from its rest, N
	EffortForward float64 // to hold it one degree forward, N

	people   []Somebody // who are posed on it, side by side
	seated   sim.Seated // of Legs
	off      body.Body  // all who ride with their feet off the floor, chair frame
	onRocker bool       // who is on it stands on the rockers, as they are drawn
}

// Upright reports whether the load stands at rest, and not upside down.
func (l *Load) Upright() bool {
	return l.Balance.Outcome == sim.Rocks && math.Abs(l.Balance.Rest.Tilt) < math.Pi/2
}

// Moves reports whether anything is known of the motion of the load: it stands upright, and the floor does not carry
// part of who rises on it.
func (l *Load) Moves() bool { return l.Upright() && l.Standing == 0 }

// Righting is one point of the righting curve.
type Righting struct {
	Degree int     // the tilt, whole degrees
	Tilt   float64 // the same, rad
	Arm    float64 // m
	Height float64 // of the balance point over the floor, m
}

// loads returns the loads of seats as they are carried on the rockers, with the rig of each and nothing computed.
func (b *Balanced) loads(all bool) ([]Load, error) {
	d := b.Design
	empty := b.masses.Joined(b.carry)
	if !(empty.Mass > 0) {
		return nil, &piece.KeyError{Key: "piece", Reason: "all that is drawn is too small to weigh anything"}
	}
	floor := d.StaticFloor()
	list, err := seats(d, b.Somebody, b.Edge, all)
	if err != nil {
		return nil, err
	}
	list[0].Rig = sim.Rig{Profile: b.Edge, Body: empty, Floor: floor}
	for i := range list[1:] {
		l := &list[1+i]
		l.Rig = list[0].Rig
		if l.leans(d) {
			give, err := l.lean(d, b.carry, empty)
			if err != nil {
				return nil, err
			}
			l.Give = &give
		}
		if !l.onRocker {
			l.ride(b.carry)
		}
	}
	return list, nil
}

// ride carries who is on the seat along with it.
func (l *Load) ride(c piece.Carry) {
	if c == (piece.Carry{}) {
		return
	}
	l.Person, l.off = c.Body(l.Person), c.Body(l.off)
	for i := range l.Legs {
		l.Legs[i].Knee = c.Point(l.Legs[i].Knee)
	}
	for i, figure := range l.Figures {
		l.Figures[i] = figure.Moved(c.Point)
	}
}

// settle fills in where the load rests on an empty piece, how far seat and back lean there, and the push for one degree.
func (l *Load) settle(b *Balanced, empty body.Body) {
	d := &b.Design
	l.On(empty)
	l.SeatFall, l.BackRecline, l.EffortBack, l.EffortForward = math.NaN(), math.NaN(), math.NaN(), math.NaN()
	if l.Balance.Outcome != sim.Rocks {
		return
	}
	tilt := l.Balance.Rest.Tilt + b.carry.Turn
	if d.Seat.Drawn() {
		l.SeatFall = tilt + d.Seat.Fall()
	}
	if d.Back.Drawn() {
		l.BackRecline = tilt + d.Back.Recline
	}
	if l.Standing > 0 { // the floor has part of a person: nothing of the motion is known, nor of going over backwards
		nan := math.NaN()
		l.Balance.Period, l.Back = nan, sim.Margin{Tip: nan, Angle: nan, Lift: nan, Work: nan, Over: nan}
		return
	}
	if top, known := d.TopOfBack(); known {
		l.EffortBack, l.EffortForward = l.Rig.Effort(l.Balance, b.carry.Point(top))
	}
}

// Pull returns what tips a load that is pulled backwards at the top of the back; NaN where it has no
// rest, or no back is drawn.
func (b *Balanced) Pull(l *Load) sim.Pull {
	top, known := b.Design.TopOfBack()
	if !known || l.Balance.Outcome != sim.Rocks || l.Standing > 0 {
		return sim.Pull{Slow: math.NaN(), Sudden: math.NaN()}
	}
	return l.Rig.Pull(l.Balance, b.Placed(top))
}

// Equilibria returns every rest and hilltop above the floor.
func (l *Load) Equilibria() []sim.Equilibrium {
	var list []sim.Equilibrium
	for _, e := range l.Rig.Equilibria(nil) {
		if e.Height > 0 && l.Balance.Outcome != sim.Neutral {
			list = append(list, e)
		}
	}
	return list
}

// Swing lets the load go so far (rad, + back) from its rest; with no rest, that is the swing.
func (l *Load) Swing(release float64) sim.Swing {
	if l.Balance.Outcome != sim.Rocks {
		return sim.Swing{Outcome: l.Balance.Outcome, Release: release, Period: math.NaN(), Reach: math.NaN(), Friction: math.NaN()}
	}
	return l.Rig.Swing(l.Balance, release)
}

// Righting returns the righting curve at each whole degree, from five degrees before the hilltop in front to five
// behind the one at the back; without a rest, from 45 degrees forward to 45 back.
func (l *Load) Righting() []Righting {
	b := l.Balance
	if l.Back.Exists() {
		b.Back = l.Back
	}
	first, last := -45, 45
	if b.Forward.Exists() && b.Back.Exists() {
		first = int(math.Floor((b.Rest.Tilt-b.Forward.Angle)/quantity.Deg)) - 5
		last = int(math.Ceil((b.Rest.Tilt+b.Back.Angle)/quantity.Deg)) + 5
	}
	first, last = max(first, -179), min(last, 179)
	curve := make([]Righting, 0, max(0, last-first+1))
	for n := first; n <= last; n++ {
		tilt := float64(n) * quantity.Deg
		arm, height := l.Arm(tilt)
		curve = append(curve, Righting{n, tilt, arm, height})
	}
	return curve
}

// Seated returns the load that stands for the owner at ease: the first with a person, or the
// piece alone where nobody sits in it.
func (b *Balanced) Seated() *Load { return &b.Loads[min(1, len(b.Loads)-1)] }

// Leaning returns the owner's load that is nearest to going back, of those of which something
// is asked; Seated where there is none.
func (b *Balanced) Leaning() *Load {
	var owner []*Load
	for i := range b.Loads {
		if l := &b.Loads[i]; l.Role == piece.Owner && l.Asked() {
			owner = append(owner, l)
		}
	}
	return cmp.Or(LeastBack(owner), b.Seated())
}

// TipsAtRest returns how high the two tips of a rocker stand over the floor where a load
// rests, m; NaN where it does not.
func (b *Balanced) TipsAtRest(l *Load) (nose, tail float64) {
	_, nose = l.Rig.Place(b.Edge.Nose(), l.Balance.Rest.Tilt)
	_, tail = l.Rig.Place(b.Edge.Tail(), l.Balance.Rest.Tilt)
	return nose, tail
}

// Load returns the load of a name; nil where there is none.
func (b *Balanced) Load(name string) *Load {
	for i := range b.Loads {
		if b.Loads[i].Name == name {
			return &b.Loads[i]
		}
	}
	return nil
}

// LoadNamed returns the load of a name or of the beginning of one, in letters of either case; of "" the first person.
func (b *Balanced) LoadNamed(name string) (*Load, error) {
	if name == "" {
		return b.Seated(), nil
	}
	if l := b.Load(name); l != nil { // one name may be the beginning of another
		return l, nil
	}
	var names []string
	for i := range b.Loads {
		if strings.HasPrefix(strings.ToLower(b.Loads[i].Name), strings.ToLower(name)) {
			return &b.Loads[i], nil
		}
		names = append(names, b.Loads[i].Name)
	}
	if now := piece.Formerly(name); now != "" {
		return nil, fmt.Errorf("there is no load %q: %s", name, now)
	}
	return nil, fmt.Errorf("there is no load %q; there are %s", name, strings.Join(names, "; "))
}
