package check

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/rocker/bench"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// levelled is the finished chair read by one scale and a level on its seat, on rockers that end as physical does.
func levelled(d piece.Design, physical rocker.Profile) piece.Design {
	known := sim.Rig{Profile: physical}
	known.Body.Mass, known.Body.Centre, known.Body.Inertia = 12, vec(-0.02, 0.42), 1.6
	balance := known.Balance()
	fall := d.Seat.Fall()
	d.Measured.DowelAhead, d.Measured.DowelAbove = 0, 0
	d.Measured.SeatFallsEmpty = fall + balance.Rest.Tilt
	d.Measured.BalancesOnTail = fall + balance.Rest.Tilt + balance.Back.Angle
	d.Measured.BalancesOnNose = fall + balance.Rest.Tilt - balance.Forward.Angle
	return d
}

// TestLevelIsUsed: one scale, three tilts and ten rocks give the body of the finished chair, on ends that are square,
// round or eased, and with legs that were cut; on another mark than the drawn seat too.
func TestLevelIsUsed(t *testing.T) {
	plain := finished()
	edge := must2(rocker.Chain(plain.Rocker.Nose, rocker.Arc(42*quantity.In, plain.Rocker.Nose+plain.Rocker.Tail)))
	const depth, ease = 0.05, 0.02
	radius := 42 * quantity.In
	corner := rocker.Arc(ease, ease*math.Pi/2)
	short := radius * math.Asin(ease/(radius-ease))
	for name, tt := range map[string]struct {
		change   func(d *piece.Design)
		physical rocker.Profile
	}{
		"square": {func(*piece.Design) {}, edge},
		"round": {func(d *piece.Design) { d.Rocker.NoseEnd, d.Rocker.TailEnd = bench.Round, bench.Round },
			must2(rocker.Chain(plain.Rocker.Nose+depth/4*math.Pi, rocker.Arc(depth/2, depth/4*math.Pi), rocker.Arc(radius, edge.Length()),
				rocker.Arc(depth/2, depth/4*math.Pi)))},
		"eased": {func(d *piece.Design) {
			d.Rocker.NoseEnd, d.Rocker.TailEnd, d.Rocker.Ease = bench.Eased, bench.Eased, ease
		},
			must2(rocker.Chain(plain.Rocker.Nose-short+corner.Length, corner, rocker.Arc(radius, edge.Length()-2*short), corner))},
	} {
		d := plain.Clone()
		d.Rocker.Depth = depth
		tt.change(&d)
		d = levelled(d, tt.physical)
		for where, moved := range map[string]func(d *piece.Design){
			"on the seat": func(*piece.Design) {},
			"legs cut": func(d *piece.Design) {
				d.Seat.RearCut = 0.01
				turn := d.Carry(edge).Turn
				m := &d.Measured
				m.SeatFallsEmpty, m.BalancesOnTail, m.BalancesOnNose = m.SeatFallsEmpty+turn, m.BalancesOnTail+turn, m.BalancesOnNose+turn
			},
			"on another mark": func(d *piece.Design) {
				m := &d.Measured
				m.SeatFallsEmpty, m.BalancesOnTail, m.BalancesOnNose = m.SeatFallsEmpty+0.3, m.BalancesOnTail+0.3, m.BalancesOnNose+0.3
				m.LevelOn = piece.OnMark
			},
		} {
			d := d.Clone()
			moved(&d)
			f, err := Examine(d)
			// through a fitted curve
			if err != nil || len(f.Read.Doubts) > 0 || r2.Norm(r2.Sub(f.Read.Body.Centre, vec(-0.02, 0.42))) > 1e-6 {
				t.Errorf("%s, %s: %v, %+v", name, where, err, f.Read)
			}
		}
	}
}

// TestLevelOfCoarseSteps: a level of one degree's steps errs by half a one, and the piece is known less well.
func TestLevelOfCoarseSteps(t *testing.T) {
	d := finished()
	d = levelled(d, must2(Examine(d)).Edge)
	fine := must2(Examine(d)).Read.Above.Uncertain
	d.Measured.LevelStep = quantity.Deg
	r := must2(readingsOf(d, must2(Examine(d)).Edge, nil).Read())
	if math.Abs(r.Slips[0].Noticed) < 2*quantity.Deg || r.Above.Uncertain < 1.1*fine {
		t.Errorf("%+v, %v, was %v", r.Slips, r.Above.Uncertain, fine)
	}
}
