package size

import (
	"slices"

	"rockerwright/body"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// An Alteration is a change that is no entry of the design.
type Alteration int

const (
	ChangeMeasure  Alteration = iota
	SlidConcentric            // the chair slid half an inch forward on rockers of a concentric top edge
	SlidStraight              // the same, of a straight one
	RearLegsCut               // by a quarter of an inch
	Worn                      // floor edge worn by 1/8 in over 12 in, where it rolls with the owner at ease
	PorchSlope                // the floor rises one degree to the front
	LeansAnInch               // the owner's balance point comes back by an inch
)

const inch = 0.0254 // m, exact

// WornOver is the length along the floor edge over which it wears, by the trade, m.
const WornOver = 12 * inch

// alterations are what each is called, and how much is done of it, SI.
var alterations = [...]Row{
	SlidConcentric: {Label: "slid, concentric top edge", Kind: quantity.Length, Change: inch / 2},
	SlidStraight:   {Label: "slid, straight top edge", Kind: quantity.Length, Change: inch / 2},
	RearLegsCut:    {Label: "rear legs cut", Kind: quantity.Length, Change: inch / 4},
	Worn:           {Label: "edge worn", Kind: quantity.Length, Change: inch / 8},
	PorchSlope:     {Label: "floor rises to the front", Kind: quantity.Angle, Change: quantity.Deg},
	LeansAnInch:    {Label: "sitter leans back", Kind: quantity.Length, Change: inch},
}

func (a Alteration) row() Row {
	r := alterations[a]
	r.Alteration = a
	return r
}

// altered returns the rows of all that can be done to this piece and is no entry of its design.
func altered(d piece.Design, company check.Sitters, now check.Balanced) []Row {
	var rows []Row
	add := func(a Alteration, before piece.Design, alter func(d *piece.Design, by float64)) {
		row, after := a.row(), before.Clone()
		alter(&after, row.Change)
		was, err := company.Balance(before)
		if err == nil && row.ask(after, company) {
			row.Before = readingsOf(was)
			rows = append(rows, row)
		}
	}
	if d.Seat.SlopeKnown() {
		for i, top := range [...]piece.Top{piece.Concentric, piece.Straight} {
			before := d.Clone()
			before.Rocker.Top = top
			add(SlidConcentric+Alteration(i), before, func(d *piece.Design, by float64) { d.Seat.Slide += by })
		}
		add(RearLegsCut, d, func(d *piece.Design, by float64) { d.Seat.RearCut += by })
	}
	if worn, ok := wornDown(now); ok {
		add(Worn, d, func(d *piece.Design, _ float64) { *d = worn })
	}
	add(PorchSlope, d, func(d *piece.Design, by float64) { d.Floor.Slope += by })
	if len(now.Loads) > 1 {
		rows = append(rows, leansAnInch(now))
	}
	return rows
}

// leansAnInch moves the balance point of who sits back by an inch, on every load.
func leansAnInch(now check.Balanced) Row {
	row, after := LeansAnInch.row(), now
	after.Loads = slices.Clone(now.Loads)
	top, known := now.Design.TopOfBack()
	for i := range after.Loads[1:] {
		l := &after.Loads[1+i]
		l.Person.Centre.X -= row.Change
		l.Rig.Body = body.Join(now.Loads[0].Rig.Body, l.Person)
		l.Balance = l.Rig.Balance()
		if l.Balance.Outcome == sim.Rocks {
			l.SeatFall += l.Balance.Rest.Tilt - now.Loads[1+i].Balance.Rest.Tilt
			if known {
				l.EffortBack, l.EffortForward = l.Rig.Effort(l.Balance, now.Placed(top))
			}
		}
	}
	row.Before, row.After, row.Outcome = readingsOf(now), readingsOf(after), after.Loads[1].Balance.Outcome
	return row
}
