package trial

import (
	"math"

	"rockerwright/sim/check"
	"rockerwright/sim/quantity"

	"gonum.org/v1/gonum/spatial/r2"
)

// Needed is the room that a piece and its people need while they rock, m, from where its low point touches
// as drawn, and where something can be caught under it.
type Needed struct {
	From, To      float64 // the tilts between which the load that is followed was rocked, rad
	Behind, Front float64 // of the piece with anybody who is checked in it, each rocked about the own rest
	BehindBy      string  // who or what reaches so far: "owner, at ease: head", "" for the piece itself
	FrontBy       string
	Crest         float64 // behind, at the top of the back, of the load that is followed; NaN without one
	TailLow       float64 // least height of the tail tip over the floor, with that load, m; never below zero
	NoseLow       float64
	TailAtRest    float64 // heights at its rest
	NoseAtRest    float64
	Caught        float64 // length of rocker, at that rest, that stands less than CaughtUnder over the floor
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
	n := Needed{Behind: math.Inf(-1), Front: math.Inf(-1), Crest: math.NaN()}
	n.From, n.To = rock(l)
	rest := l.Balance.Rest.Tilt
	points := d.RockerOutline(r.Edge, 0.05) // its corners reach furthest
	for _, m := range d.Members(r.Edge) {
		points = append(points, m.Side()...)
	}
	if top, known := d.TopOfBack(); known {
		n.Crest = l.Rig.Sweep(n.From, n.To, r.Placed(top)).Back
	}
	for i := range r.Loads {
		if one := &r.Loads[i]; one == l || one.Upright() && (one.Empty || one.Asked()) {
			n.take(one, points)
		}
	}
	n.NoseLow = max(0, l.Rig.Sweep(n.From, n.To, r.Edge.Nose()).Lowest) // a rounding below it on a tip
	n.TailLow = max(0, l.Rig.Sweep(n.From, n.To, r.Edge.Tail()).Lowest)
	n.NoseAtRest, n.TailAtRest = r.TipsAtRest(l)
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

// take adds the room that one load needs: of the points of the piece, and of the limbs of who is in it.
func (n *Needed) take(l *check.Load, points []r2.Vec) {
	from, to := rock(l)
	add := func(by string, points ...r2.Vec) {
		room := l.Rig.Sweep(from, to, points...)
		if room.Back > n.Behind {
			n.Behind, n.BehindBy = room.Back, by
		}
		if room.Forward > n.Front {
			n.Front, n.FrontBy = room.Forward, by
		}
	}
	add("", points...)
	for _, figure := range l.Figures {
		for _, limb := range figure.Limits() {
			add(l.Name+": "+limb.Limb, limb.Point)
		}
	}
}
