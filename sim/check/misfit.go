package check

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
)

// A Trouble is how a person does not fit a seat.
type Trouble int

const (
	FeetHang      Trouble = iota // the front edge stands higher than the knee crease
	KneesUp                      // the seat is so low that the knees stand far above the hips
	KneesOverChin                // or even above the chin
	TooWide                      // the hips are wider than the seat
	TooDeep                      // the seat is deeper than the thigh is long
)

// A Misfit is one person whom the piece does not fit.
type Misfit struct {
	Name    string
	Trouble Trouble
	By      float64 // m
}

// reach is by how much a front edge may stand over the knee crease before feet are said
// to hang, m: what a foot makes up for by pointing its toes; our judgement.
const reach = 0.012

// kneesHigh is how far the knees may stand above the hips before a seat is said to be low,
// m; our judgement.
const kneesHigh = 0.13

// misfits returns who, of those who sit, the piece does not fit, at the rest with each
// of them at ease in it.
func (b *Balanced) misfits() []Misfit {
	d := b.Design
	if !d.Seat.SlopeKnown() {
		return nil
	}
	var list []Misfit
	for _, one := range b.people {
		name := loadOf(d, one)
		for _, l := range b.Loads {
			if l.Sitter != name || l.Posture != person.Sitting {
				continue
			}
			switch j := l.Figures[0]; {
			case j.KneesOverChin():
				list = append(list, Misfit{one.name, KneesOverChin, j.KneesUp()})
			case j.KneesUp() > kneesHigh:
				list = append(list, Misfit{one.name, KneesUp, j.KneesUp()})
			}
		}
		at, stands := b.seatedRest(name)
		if !stands || one.role == piece.Hazard {
			continue
		}
		front := at.height(r2.Add(d.Seat.FrontEdge(), r2.Vec{Y: d.Seat.Cushion}))
		for _, m := range []struct {
			trouble  Trouble
			by, from float64
		}{
			{FeetHang, front - one.person.Sizes[person.KneeCrease], reach},
			{TooWide, one.person.Sizes[person.Hips] - d.Seat.Width, 0},
			{TooDeep, d.Seat.Depth - one.person.Sizes[person.ThighLength], 0},
		} {
			if m.by > m.from && (m.trouble != TooWide || d.Seat.Width > 0) {
				list = append(list, Misfit{one.name, m.trouble, m.by})
			}
		}
	}
	return list
}
