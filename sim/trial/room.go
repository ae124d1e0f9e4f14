package trial

import (
	"math"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"

	"gonum.org/v1/gonum/spatial/r2"
)

// Needed is the room that a piece and its people need while they rock, m, from where its low point touches
// as drawn, and where something can be caught under it.
type Needed struct {
	From, To    float64 // the tilts between which the load that is followed was rocked, rad
	Reach               // of the piece with anybody who is checked in it, each rocked about the own rest
	Hard        Reach   // however hard they rock it, short of going over, leaning to and fro, with arms behind the head or not
	Crest       float64 // behind, at the top of the back, of the load that is followed; NaN without one
	TailLow     float64 // least height of the tail tip over the floor, with that load, m; never below zero
	NoseLow     float64
	TailAtRest  float64 // heights at its rest
	NoseAtRest  float64
	Heels, Toes float64 // of the first person, how far ahead the feet stand on the floor at rest, m; NaN where none do
	NoseComes   float64 // how far ahead the nose tip stands over the floor where it is lowest
	Caught      float64 // length of rocker, at that rest, that stands less than CaughtUnder over the floor
}

// A Reach is how far something reaches along the floor, m.
type Reach struct {
	Behind, Front     float64
	BehindBy, FrontBy string // who or what does: "owner, at ease: head", "" for the piece itself
}

// take widens a reach to a swept room of somebody's.
func (reach *Reach) take(by string, room sim.Room) {
	if room.Back > reach.Behind {
		reach.Behind, reach.BehindBy = room.Back, by
	}
	if room.Forward > reach.Front {
		reach.Front, reach.FrontBy = room.Forward, by
	}
}

// CaughtUnder is the gap in which fingers, toes and tails are caught, m; our judgement: 1 in.
const CaughtUnder = 0.0254

// rock returns the tilts between which a load rocks that is let go at 15 degrees, or at nine tenths
// of what it survives; our judgement of a good rock.
func rock(l *check.Load) (from, to float64) {
	back, _ := l.Rig.LargestRelease(l.Balance)
	release := min(15*quantity.Deg, 0.9*back)
	rest := l.Balance.Rest.Tilt
	_, reach := l.Rig.Period(l.Balance, release)
	if math.IsNaN(reach) {
		reach = -release
	}
	return rest + reach, rest + release
}

// needed sweeps the piece with everybody who is checked, each between the turning points of a rock.
func needed(l *check.Load, r check.Report) Needed {
	d := r.Design
	nowhere := Reach{Behind: math.Inf(-1), Front: math.Inf(-1)}
	n := Needed{Reach: nowhere, Hard: nowhere, Crest: math.NaN()}
	n.From, n.To = rock(l)
	rest := l.Balance.Rest.Tilt
	points := d.RockerOutline(r.Edge, 0.05) // its corners reach furthest
	for _, m := range d.Members(r.Edge) {
		points = append(points, m.Side()...)
	}
	if top, known := d.TopOfBack(); known {
		n.Crest = l.Rig.Sweep(n.From, n.To, r.Placed(top)).Back
	}
	furthest, most := n.From, n.To // of the tilts at which the piece stands with any of them
	for i := range r.Loads {
		if one := &r.Loads[i]; one == l || one.Upright() && (one.Empty || one.Asked()) {
			from, to := rock(one)
			n.sweep(one, points, from, to)
		}
		if one := &r.Loads[i]; one.Moves() && (one.Empty || one.Asked() || one.Posture == person.ArmsBehindHead) {
			from, to := n.Hard.hard(one)
			furthest, most = min(furthest, from), max(most, to)
		}
	}
	n.Hard.take("", l.Rig.Sweep(furthest, most, points...))
	n.NoseLow = max(0, l.Rig.Sweep(n.From, n.To, r.Edge.Nose()).Lowest) // a rounding below it on a tip
	n.TailLow = max(0, l.Rig.Sweep(n.From, n.To, r.Edge.Tail()).Lowest)
	n.NoseAtRest, n.TailAtRest = r.TipsAtRest(l)
	n.NoseComes, _ = l.Rig.Place(r.Edge.Nose(), n.From)
	n.Heels, n.Toes = math.NaN(), math.NaN()
	if first := r.Seated(); len(first.Legs) > 0 && first.Upright() && first.Feet[0].Stage != body.FeetOff {
		figure := first.FiguresAt(first.Balance.Rest.Tilt)[0]
		n.Heels, _ = first.Rig.Place(figure.Heel, first.Balance.Rest.Tilt)
		n.Toes, _ = first.Rig.Place(figure.Toe, first.Balance.Rest.Tilt)
	}
	length := r.Edge.Length()
	nose, _ := r.Edge.Reach()
	const steps = 200
	for i := range steps {
		p, _ := r.Edge.At(nose - length*(float64(i)+0.5)/steps)
		if _, over := l.Rig.Place(p, rest); over < CaughtUnder {
			n.Caught += length / steps
		}
	}
	return n
}

// sweep widens a reach to that of one load between two tilts: of the points of the piece, and of the limbs of who is on it.
func (reach *Reach) sweep(l *check.Load, points []r2.Vec, from, to float64) {
	if points != nil {
		reach.take("", l.Rig.Sweep(from, to, points...))
	}
	for _, figure := range l.Figures {
		for _, limb := range figure.Limits() {
			reach.take(l.Name+": "+limb.Limb, l.Rig.Sweep(from, to, limb.Point))
		}
	}
}

// leansLooked is how finely leans are looked at, rad: a head moves between two by less than a tenth of a millimetre more.
const leansLooked = 2 * quantity.Deg

// hard widens a reach to all that one load can come to between its hilltops, its people leaning to and fro, each lean
// with the hilltops of all of them, and returns between which tilts that is.
func (reach *Reach) hard(l *check.Load) (from, to float64) {
	from, to = rock(l)
	back, forward := l.Leans()
	widen := func(b sim.Balance) {
		if b.Outcome == sim.Rocks && b.Forward.Exists() && b.Back.Exists() {
			from, to = min(from, b.Forward.Tip), max(to, b.Back.Tip)
		}
	}
	widen(l.Balance)
	steps := int(math.Ceil((back - forward) / leansLooked))
	rider := l.Leaner()
	lean := func(i int) float64 { return forward + (back-forward)*float64(i)/float64(max(1, steps)) }
	for i := 0; back > forward && i <= steps; i++ {
		leaning := rider.Leaning(lean(i))
		widen(leaning.Balance())
	}
	reach.sweep(l, nil, from, to)
	for i := 0; back > forward && i <= steps; i++ {
		for _, figure := range l.Figures {
			for _, limb := range figure.Leaning(lean(i)).Upper() {
				reach.take(l.Name+": "+limb.Limb, swept(l.Rig, from, to, limb.Point))
			}
		}
	}
	return from, to
}

// swept is [sim.Rig.Sweep] of one point at each degree, which misses a tenth of a millimetre of the most.
func swept(r sim.Rig, from, to float64, q r2.Vec) sim.Room {
	room := r.Sweep(from, from, q)
	steps := 1 + int((to-from)/quantity.Deg)
	for i := 1; i <= steps; i++ {
		along, _ := r.Place(q, from+(to-from)*float64(i)/float64(steps))
		room.Forward, room.Back = max(room.Forward, along), max(room.Back, -along)
	}
	return room
}
