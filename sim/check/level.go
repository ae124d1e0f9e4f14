package check

import (
	"math"

	"rockerwright/rocker"
	"rockerwright/rocker/bench"
	"rockerwright/sim/piece"
	"rockerwright/sim/readings"
)

// level fills in what was read with a level, and what the drawing says of it: the fall of the seat on which it lies, as
// it is carried, and how the ends are finished on which the piece balances.
func level(r *readings.Readings, d piece.Design) {
	m := d.Measured
	r.SeatFallsEmpty, r.LevelError = m.SeatFallsEmpty, m.LevelStep/2
	r.BalancesOnTail, r.ReturnsFromTail = m.BalancesOnTail, m.ReturnsFromTail
	r.BalancesOnNose, r.ReturnsFromNose = m.BalancesOnNose, m.ReturnsFromNose
	r.NoseTip, r.TailTip = m.NoseTip, m.TailTip
	if m.LevelOn == piece.OnSeat && d.Seat.SlopeKnown() {
		r.SeatDrawn, r.SeatFall = true, d.Seat.Fall()+d.Carry(r.Edge).Turn
	}
	nose, tail := r.Edge.Bearing(0).To, r.Edge.Bearing(r.Edge.Bearings()-1).From
	r.NoseEnd, r.TailEnd = endOf(d, r.Edge, false, nose), endOf(d, r.Edge, true, tail)
}

// endOf returns how an end stands on the floor. A round end is an arc from the tip T, where the floor edge is tangent to
// the floor at a tilt, that touches the top edge too: half as deep as the rocker there, and of a straight top at height D
//
//	r·cos(tilt) + r = D − Tᵧ.
func endOf(d piece.Design, edge rocker.Profile, isTail bool, tilt float64) readings.End {
	finish, tip := d.Rocker.NoseEnd, edge.Nose()
	if isTail {
		finish, tip = d.Rocker.TailEnd, edge.Tail()
	}
	switch {
	case finish == bench.Round && d.Rocker.Top == piece.Straight:
		return readings.End{Radius: max(0, d.Rocker.DepthOr()-tip.Y) / (1 + math.Cos(tilt)), Round: true}
	case finish == bench.Round:
		return readings.End{Radius: d.Rocker.DepthAt(edge, isTail, 0) / 2, Round: true}
	case finish == bench.Eased:
		return readings.End{Radius: d.Rocker.EaseOr()}
	}
	return readings.End{}
}
