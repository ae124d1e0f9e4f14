package check

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Fit is one measure of the piece against one of the owner, as the piece stands with
// the owner at ease in it, m.
type Fit struct {
	Key       string // the measure that changes it
	What      string // "front edge, off the floor"
	Size      person.Size
	Person    float64 // the person's size
	Given     person.Source
	Have      float64
	Low, High float64 // what custom asks; ±Inf where it asks nothing
	Change    float64 // to add to the measure; zero where it is within custom
}

// Holds reports whether the measure is within custom.
func (f Fit) Holds() bool { return f.Change == 0 }

// A clearance is what custom asks of one measure against one size of the person.
type clearance struct {
	key       string
	what      string
	size      person.Size
	low, high float64 // to add to the person's size, m
	have      func(d piece.Design, at attitude) float64
}

// Clearances between a seat and its sitter, m; all common practice among chairmakers.
var clearances = [...]clearance{
	{"seat.front", "front edge, off the floor", person.KneeCrease, -2 * quantity.In, 0, func(d piece.Design, at attitude) float64 {
		return at.height(r2.Add(d.Seat.FrontEdge(), r2.Vec{Y: d.Seat.Cushion}))
	}},
	{"seat.depth", "seat depth", person.ThighLength, -4 * quantity.In, -1.5 * quantity.In, func(d piece.Design, _ attitude) float64 { return d.Seat.Depth }},
	{"seat.width", "seat width", person.Hips, 2 * quantity.In, math.Inf(1), func(d piece.Design, _ attitude) float64 { return d.Seat.Width }},
	{"arms.height", "arms, over the seat", person.Elbow, -2 * quantity.In, quantity.In / 2, func(d piece.Design, _ attitude) float64 { return d.Arms.Height - d.Seat.Cushion }},
	{"back.height", "back, for the shoulders", person.Shoulder, 0, math.Inf(1), func(d piece.Design, _ attitude) float64 { return d.Back.Height - d.Seat.Cushion }},
	{"back.height", "back, for the head", person.SittingHeight, -4 * quantity.In, math.Inf(1), func(d piece.Design, _ attitude) float64 { return d.Back.Height - d.Seat.Cushion }},
	{"back.lumbar", "bulge, over the seat", person.Lumbar, -1 * quantity.In, 1 * quantity.In, func(d piece.Design, _ attitude) float64 { return d.Back.Lumbar - d.Seat.Cushion }},
}

// An attitude is a design as it stands with one load.
type attitude struct {
	carry piece.Carry
	edge  rocker.Profile
	roll  float64
}

// height returns the height of a point of the seat frame over the floor, m.
func (a attitude) height(p r2.Vec) float64 {
	return a.edge.Height(a.carry.Point(p), a.roll)
}

// seatedRest returns how the piece stands with somebody at ease in it, and whether it
// does.
func (b *Balanced) seatedRest(name string) (attitude, bool) {
	for i := range b.Loads {
		l := &b.Loads[i]
		if l.Sitter == name && l.Posture == person.Sitting && l.Upright() {
			return attitude{b.carry, b.Edge, l.Balance.Rest.Tilt - b.Design.Floor.Slope}, true
		}
	}
	return attitude{}, false
}

// loadOf returns the name under which the loads of somebody go.
func loadOf(d piece.Design, one Somebody) string {
	if d.Traits().ForTwo && one.Role == piece.Owner {
		return "both"
	}
	return one.Name
}

// fit returns the owner's fit; none where no owner is posed or the piece does not stand.
// The width of a settee is for two.
func (b *Balanced) fit() []Fit {
	d := b.Design
	if len(b.people) == 0 || b.people[0].Role != piece.Owner || !d.Seat.SlopeKnown() {
		return nil
	}
	owner := b.people[0]
	at, stands := b.seatedRest(loadOf(d, owner))
	if !stands {
		return nil
	}
	var list []Fit
	for _, c := range clearances {
		_, drawn, err := d.Measure(c.key)
		if err != nil || *drawn == 0 {
			continue
		}
		size := owner.Person.Sizes[c.size]
		f := Fit{Key: c.key, What: c.what, Size: c.size, Person: size, Given: owner.Person.Sources[c.size],
			Have: c.have(d, at), Low: size + c.low, High: size + c.high}
		if d.Traits().ForTwo && c.size == person.Hips {
			f.Low *= 2
		}
		f.Change = math.Max(0, f.Low-f.Have) + math.Min(0, f.High-f.Have)
		list = append(list, f)
	}
	return list
}

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
				list = append(list, Misfit{one.Name, KneesOverChin, j.KneesUp()})
			case j.KneesUp() > kneesHigh:
				list = append(list, Misfit{one.Name, KneesUp, j.KneesUp()})
			}
		}
		at, stands := b.seatedRest(name)
		if !stands || one.Role == piece.Hazard {
			continue
		}
		front := at.height(r2.Add(d.Seat.FrontEdge(), r2.Vec{Y: d.Seat.Cushion}))
		for _, m := range []struct {
			trouble  Trouble
			by, from float64
		}{
			{FeetHang, front - one.Person.Sizes[person.KneeCrease], reach},
			{TooWide, one.Person.Sizes[person.Hips] - d.Seat.Width, 0},
			{TooDeep, d.Seat.Depth - one.Person.Sizes[person.ThighLength], 0},
		} {
			if m.by > m.from && (m.trouble != TooWide || d.Seat.Width > 0) {
				list = append(list, Misfit{one.Name, m.trouble, m.by})
			}
		}
	}
	return list
}
