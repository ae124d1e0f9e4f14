package check

import (
	"errors"
	"math"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/readings"
)

// Examine works out what the readings of a design say, whatever is drawn beside them, and how surely: there are no
// loads, for nobody asks how it stands. The error is a [*piece.KeyError].
func Examine(d piece.Design) (Balanced, error) {
	told := d
	d, err := d.EdgeAsRead()
	if d.Measured.Weighed() {
		d.Piece, d.Parts, d.Body = piece.Piece{}, nil, body.Body{}
	}
	b := Balanced{Design: d}
	if err != nil {
		return b, err
	}
	if b.Edge, b.Curve, err = d.Profile(); err != nil {
		return b, err
	}
	if !d.Measured.Weighed() {
		if b.Curve == nil {
			return b, &piece.KeyError{Key: "measured",
				Reason: "nothing was read of this piece: write the readings of the measuring sheet", Give: "measured"}
		}
		return b, nil
	}
	if b.Somebody, err = SittersOf(d); err != nil {
		return b, err
	}
	err = b.weigh()
	b.Design = told
	return b, err
}

// readingsOf returns what package readings wants. The rider of the ridden rocks is the first
// of the people at ease, where the piece rests that is so heavy and balances there.
func readingsOf(d piece.Design, edge rocker.Profile, people []Somebody) readings.Readings {
	m := d.Measured
	r := readings.Readings{
		Edge: edge, Floor: sim.Floor{Slope: d.Floor.Slope, Gravity: d.Floor.Gravity},
		Weight: m.Weight, Front: m.Front, Rear: m.Rear, Apart: m.Apart, FrontMark: m.FrontMark,
		Raised: m.Raised, FrontRaised: m.FrontRaised, RearRaised: m.RearRaised,
		DowelAhead: m.DowelAhead, DowelAbove: m.DowelAbove,
		TenRocks: m.TenRocks, LetGo: m.LetGo, RiddenTenRocks: m.RiddenTenRocks, RiddenLetGo: m.RiddenLetGo,
		Zero: m.Zero, ScaleError: m.ScaleStep / 2,
	}
	level(&r, d)
	if m.RiddenTenRocks > 0 && len(people) > 0 && d.Seat.Drawn() {
		l := Load{Posture: person.AtEase, Rig: sim.Rig{Profile: edge, Floor: r.Floor}, people: people[:1]}
		l.pose(d, 0)
		unridden := r
		unridden.RiddenTenRocks = 0
		if alone, err := unridden.Read(); err == nil { // else it is told of the readings with the rider
			l.On(alone.Body)
		}
		r.Rider = l.Rider()
	}
	return r
}

// weigh fills in the mass of the piece: as drawn, or by its readings, in the rocker frame. Where no
// rocks were timed, or they do not tell it, its inertia is that of the drawn piece of the same weight.
func (b *Balanced) weigh() error {
	d := b.Design
	source, err := d.Source()
	switch {
	case err != nil:
		return err
	case !(math.Abs(d.Floor.Slope) < math.Pi/2):
		return &piece.KeyError{Key: "floor.slope", Reason: "a floor slopes by less than 90 degrees", Give: "slope"}
	case source != piece.ByReadings:
		b.masses, err = d.Masses(b.Edge)
		return err
	case d.Measured.Built && drawsWeight(d):
		return b.weighBuilt()
	case d.Seat.Slide != 0:
		return &piece.KeyError{Key: "seat.slide",
			Reason: "readings of the whole piece do not say what belongs to the rockers, so the seat cannot be slid on them"}
	case d.Measured.RiddenTenRocks > 0 && d.Measured.TenRocks == 0 && (len(b.Somebody) == 0 || !d.Seat.Drawn()):
		return &piece.KeyError{Key: "measured.ten_rocks_ridden",
			Reason: "rocks with a rider need the rider: add who sat in it, with height and weight, and the drawn seat", Give: "sitter"}
	}
	result, err := readingsOf(d, b.Edge, b.Somebody).Read()
	if err != nil {
		return readingError(err)
	}
	if b.Read = &result; math.IsNaN(result.Body.Inertia) {
		if result.Body.Inertia, err = usualInertia(d, b.Edge, result); err != nil {
			return err
		}
		b.UsualInertia = true
	}
	b.masses.Rockers = result.Body
	return nil
}

// readingError returns an error of package readings with its place in the design; others as they are.
func readingError(err error) error {
	if wrong := (*readings.ReadingError)(nil); errors.As(err, &wrong) {
		return &piece.KeyError{Key: "measured." + wrong.Reading, Reason: wrong.Reason}
	}
	return err
}

// usualInertia returns the inertia of the drawn piece were it of one wood and so heavy.
func usualInertia(d piece.Design, edge rocker.Profile, read readings.Result) (float64, error) {
	switch drawn := d.Seat.SlopeKnown(); {
	case !drawn && read.Untold != "":
		return 0, &piece.KeyError{Key: "measured." + read.Untold,
			Reason: "these rocks do not tell the inertia: it is lost in the reading errors. Time ten rocks of the " +
				"empty piece, read the scales finer, or draw the seat so that the inertia can be estimated"}
	case !drawn:
		return 0, &piece.KeyError{Key: "measured",
			Reason: "time ten rocks (ten_rocks, let_go), or draw the seat so that the inertia can be estimated", Give: "ten_rocks"}
	}
	d.Piece.Mass = read.Body.Mass
	m, err := d.Estimate(edge)
	if err != nil {
		return 0, err
	}
	return m.Joined(piece.Carry{}).Inertia, nil
}
