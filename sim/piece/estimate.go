package piece

import (
	"slices"

	"rockerwright/body"
	"rockerwright/rocker"
)

// Estimate spreads the weight of the piece over seat, back, arms, legs and rockers, by
// slab, panel and rod of the drawn sizes, all of one wood.
func (d Design) Estimate(edge rocker.Profile) (Masses, error) {
	if !d.Seat.SlopeKnown() {
		return Masses{}, &KeyError{Key: "seat", Reason: "the weight is spread over the drawn seat, and none is drawn", Give: "seat"}
	}
	s := d.Seat
	if s.Width <= 0 {
		return Masses{}, &KeyError{Key: "seat.width", Reason: "the weight is spread over the drawn seat, so its width is needed", Give: "width"}
	}
	m := Masses{Estimated: true}
	var legs body.Body
	for _, member := range d.members(edge, Carry{}) {
		switch {
		case member.Leg != nil:
			legs = body.Join(legs, member.wood(usualTimber))
		case member.Shaped > 0:
			m.Seat = append(m.Seat, member.wood(usualTimber))
		}
	}
	m.Seat = append(m.Seat, legs)
	rockers, err := d.Rocker.wood(edge, usualTimber)
	if err != nil {
		return Masses{}, err
	}
	m.Rockers = []body.Body{rockers}
	m.scale(d.Piece.Mass)
	return m, nil
}

// scale makes them weigh mass altogether, in the same proportions.
func (m *Masses) scale(mass float64) {
	total := body.Join(m.Seat...).Mass + body.Join(m.Rockers...).Mass
	for _, bodies := range [][]body.Body{m.Seat, m.Rockers} {
		for i, b := range bodies {
			bodies[i] = b.Scaled(mass / total)
		}
	}
}

// Weighted returns a copy in which the i-th body, those of the seat first, weighs factor times as
// much, and all together mass (kg) again.
func (m Masses) Weighted(i int, factor, mass float64) Masses {
	c := Masses{Estimated: true, Seat: slices.Clone(m.Seat), Rockers: slices.Clone(m.Rockers)}
	if i < len(c.Seat) {
		c.Seat[i] = c.Seat[i].Scaled(factor)
	} else {
		c.Rockers[i-len(c.Seat)] = c.Rockers[i-len(c.Seat)].Scaled(factor)
	}
	c.scale(mass)
	return c
}
