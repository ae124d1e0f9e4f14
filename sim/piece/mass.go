package piece

import (
	"fmt"
	"slices"

	"rockerwright/body"
	"rockerwright/rocker"
)

// Masses are the mass of the empty piece: what rides in the seat frame, and what is part of the rockers.
type Masses struct {
	Seat      []body.Body
	Rockers   body.Body
	Estimated bool // spread from one weight
}

// Joined returns the whole, in the chair frame.
func (m Masses) Joined(c Carry) body.Body { return body.Join(c.Body(body.Join(m.Seat...)), m.Rockers) }

// A Source is where a design says what the piece weighs, by the name of its section.
type Source string

const (
	ByBody     Source = "body"
	ByParts    Source = "part"
	ByReadings Source = "measured"
	ByWeight   Source = "piece"
)

// Source returns the one source of the mass of the piece: what is drawn, or where nothing is, or it is asked for as
// built, what was read. The error is a [*KeyError].
func (d Design) Source() (Source, error) {
	drawn := given(alternative{string(ByBody), d.Body.Mass > 0}, alternative{string(ByParts), len(d.Parts) > 0},
		alternative{string(ByWeight), d.Piece.Mass > 0})
	switch {
	case len(drawn) > 1:
		return "", &KeyError{Key: drawn[1],
			Reason: fmt.Sprintf("the weight of the piece is given twice, under %s and under %s: keep one", drawn[0], drawn[1])}
	case len(drawn) == 1 && !d.Measured.balanced():
		return Source(drawn[0]), nil
	case len(drawn) == 0 && !d.Measured.Weighed():
		return "", &KeyError{Key: "piece", Reason: "the weight of the piece is missing: a guess is enough", Give: "piece"}
	}
	return ByReadings, nil
}

// Masses returns the mass of the piece as it is drawn. Where it is measured instead, that is for
// who reads the readings: there is none here. The error is a [*KeyError].
func (d Design) Masses(edge rocker.Profile) (Masses, error) {
	source, err := d.Source()
	switch {
	case err != nil:
		return Masses{}, err
	case source == ByWeight:
		return d.Estimate(edge)
	case source == ByParts:
		return d.parts(edge)
	case source == ByBody && d.Seat.Slide != 0:
		return Masses{}, &KeyError{Key: "seat.slide",
			Reason: "the plain numbers of the body do not say what belongs to the rockers, so the seat cannot be slid " +
				"on them: give the weight of the piece, or its parts"}
	case source == ByBody:
		return Masses{Rockers: d.Body}, nil
	}
	return Masses{}, nil
}

// parts returns the mass by [[part]], and by the rockers' wood where its sizes are drawn.
func (d Design) parts(edge rocker.Profile) (Masses, error) {
	var m Masses
	for i, p := range d.Parts {
		b, err := p.body(fmt.Sprintf("part.%d", i+1))
		if err != nil {
			return Masses{}, err
		}
		m.Seat = append(m.Seat, b)
	}
	if d.Rocker.Depth > 0 && d.Rocker.Width > 0 {
		density, err := density(d.Rocker.Wood, d.Rocker.Density, 0, "rocker")
		if err != nil {
			return Masses{}, err
		}
		m.Rockers, err = d.Rocker.wood(edge, density)
		return m, err
	}
	return m, nil
}

// Estimate spreads the weight of the piece over seat, back, arms, legs and rockers, by
// slab, panel and rod of the drawn sizes, all of one wood.
func (d Design) Estimate(edge rocker.Profile) (Masses, error) {
	if !d.Seat.SlopeKnown() {
		return Masses{}, &KeyError{Key: "seat", Reason: "the weight is spread over the drawn seat, and none is drawn", Give: "seat"}
	}
	s := d.Seat
	if s.Width <= 0 {
		return Masses{}, &KeyError{Key: "seat.width",
			Reason: "the weight is spread over the drawn seat, so its width is needed", Give: "width"}
	}
	m := Masses{Estimated: true, Seat: make([]body.Body, 0, 6)}
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
	var err error
	if m.Rockers, err = d.Rocker.wood(edge, usualTimber); err != nil {
		return Masses{}, err
	}
	m.scale(d.Piece.Mass)
	return m, nil
}

// scale makes them weigh mass altogether, in the same proportions.
func (m *Masses) scale(mass float64) {
	factor := mass / (body.Join(m.Seat...).Mass + m.Rockers.Mass)
	for i, b := range m.Seat {
		m.Seat[i] = b.Scaled(factor)
	}
	m.Rockers = m.Rockers.Scaled(factor)
}

// Weighted returns a copy in which the i-th body, those of the seat and behind them the rockers, weighs factor times
// as much, and all together mass (kg) again.
func (m Masses) Weighted(i int, factor, mass float64) Masses {
	m.Seat = slices.Clone(m.Seat)
	if i < len(m.Seat) {
		m.Seat[i] = m.Seat[i].Scaled(factor)
	} else {
		m.Rockers = m.Rockers.Scaled(factor)
	}
	m.scale(mass)
	return m
}
