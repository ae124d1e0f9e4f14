package piece

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// Needed is the room a piece needs while it is rocked, m, from where its low point touches
// as drawn, and where something can be caught under it.
type Needed struct {
	From, To   float64 // the tilts between which it was rocked, rad
	Behind     float64 // of the whole piece
	Front      float64
	Crest      float64 // behind, at the top of the back; NaN without one
	TailLow    float64 // least height of the tail tip over the floor
	NoseLow    float64
	TailAtRest float64 // heights at the rest
	NoseAtRest float64
	Caught     float64 // length of rocker, at the rest, that stands less than CaughtUnder over the floor
}

// CaughtUnder is the gap in which fingers, toes and tails are caught, m; our judgement: 1 in.
const CaughtUnder = 0.0254

// needed sweeps the piece between the turning points of a rock from 15 degrees, or from
// nine tenths of what it survives.
func (d Design) needed(l *Load, r Report) Needed {
	back, _ := l.Rig.LargestRelease(l.Balance)
	release := min(15*degree, 0.9*back)
	rest := l.Balance.Rest.Tilt
	_, reach := l.Rig.Period(l.Balance, release)
	if math.IsNaN(reach) {
		reach = -release
	}
	n := Needed{From: rest + reach, To: rest + release, Crest: math.NaN()}
	ride := d.carry(r.Edge)
	points := []r2.Vec{r.Edge.Nose(), r.Edge.Tail()}
	if top, known := d.TopOfBack(); known {
		crest := ride.point(top)
		n.Crest = l.Rig.Sweep(n.From, n.To, crest).Back
		points = append(points, crest)
	}
	if d.Seat.level() {
		points = append(points, ride.point(d.Seat.FrontEdge()))
	}
	whole := l.Rig.Sweep(n.From, n.To, points...)
	n.Behind, n.Front = whole.Back, whole.Forward
	n.NoseLow = l.Rig.Sweep(n.From, n.To, r.Edge.Nose()).Lowest
	n.TailLow = l.Rig.Sweep(n.From, n.To, r.Edge.Tail()).Lowest
	_, n.NoseAtRest = l.Rig.Place(r.Edge.Nose(), rest)
	_, n.TailAtRest = l.Rig.Place(r.Edge.Tail(), rest)
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
