package size

import (
	"math"

	"rockerwright/body"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Deed is a change that is no entry of the design.
type Deed int

const (
	ChangeMeasure  Deed = iota
	SlidConcentric      // the chair slid half an inch forward on rockers of a concentric top edge
	SlidStraight        // the same, of a straight one
	RearLegsCut         // by a quarter of an inch
	Worn                // floor edge worn by 1/8 in over 12 in, where it rolls with the owner at ease
	PorchSlope          // the floor rises one degree to the front
	LeansAnInch         // the owner's balance point comes back by an inch
)

var deedNames = [...]string{
	"", "slid, concentric top edge", "slid, straight top edge", "rear legs cut",
	"edge worn", "floor rises to the front", "sitter leans back",
}

// String returns what is done, "" of ChangeMeasure.
func (d Deed) String() string { return deedNames[d] }

// How much is done of each deed.
const (
	slid  = inch / 2
	sawn  = inch / 4
	worn  = inch / 8
	porch = math.Pi / 180
	leant = inch

	WornOver = 12 * inch // along the floor edge, m; where an edge wears, by the trade
)

const inch = 0.0254 // m, exact

// deeds returns the rows of all that can be done to this piece and is no entry of its design.
func deeds(d piece.Design, company check.Sitters, now check.Balanced) []Row {
	var rows []Row
	add := func(deed Deed, kind quantity.Kind, change float64, before, after piece.Design) {
		row := Row{Deed: deed, Label: deed.String(), Kind: kind, Change: change}
		was, err := company.Balance(before)
		if err == nil && row.ask(after, company) {
			row.Before = readingsOf(was)
			rows = append(rows, row)
		}
	}
	if d.Seat.Front > 0 {
		for _, slide := range [...]struct {
			deed Deed
			top  piece.Top
		}{{SlidConcentric, piece.Concentric}, {SlidStraight, piece.Straight}} {
			before := d.Clone()
			before.Rocker.Top = slide.top
			after := before.Clone()
			after.Seat.Slide += slid
			add(slide.deed, quantity.Length, slid, before, after)
		}
		after := d.Clone()
		after.Seat.RearCut += sawn
		add(RearLegsCut, quantity.Length, sawn, d, after)
	}
	if after, ok := wornDown(now); ok {
		add(Worn, quantity.Length, worn, d, after)
	}
	after := d.Clone()
	after.Floor.Slope += porch
	add(PorchSlope, quantity.Angle, porch, d, after)
	if len(now.Loads) > 1 {
		rows = append(rows, leansAnInch(now))
	}
	return rows
}

// leansAnInch moves the balance point of who sits back by an inch, on every load.
func leansAnInch(now check.Balanced) Row {
	after := now
	after.Loads = append([]check.Load(nil), now.Loads...)
	top, known := now.Design.TopOfBack()
	for i := range after.Loads[1:] {
		l := &after.Loads[1+i]
		l.Person.Centre.X -= leant
		l.Rig.Body = body.Join(now.Loads[0].Rig.Body, l.Person)
		l.Balance = l.Rig.Balance()
		if l.Balance.Outcome == sim.Rocks {
			l.SeatFall += l.Balance.Rest.Tilt - now.Loads[1+i].Balance.Rest.Tilt
			if known {
				l.EffortBack, l.EffortForward = l.Rig.Effort(l.Balance, now.Placed(top))
			}
		}
	}
	return Row{Deed: LeansAnInch, Label: LeansAnInch.String(), Kind: quantity.Length, Change: leant, Before: readingsOf(now), After: readingsOf(after), Outcome: after.Loads[1].Balance.Outcome}
}
