package piece

import (
	"errors"
	"math"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/readings"
)

// Measured holds raw shop readings of a finished piece. Zero is not read, unless Zero
// names it.
type Measured struct {
	Weight    float64 // of the whole piece
	ScaleStep float64 // the smallest step that the scales show; zero means 0.2 kg, about half a pound

	Front, Rear float64 // scales under two marks on the floor edge, both marks level
	Apart       float64 // between the marks, straight
	FrontMark   float64 // along the floor edge from the low point forward to the front mark

	Raised                  float64 // the front mark raised against the rear one
	FrontRaised, RearRaised float64 // the scales then

	DowelAhead, DowelAbove float64 // lines on which the piece balances on a dowel

	TenRocks, LetGo             float64 // time of ten rocks there and back, empty; tilt from which it was let go
	RiddenTenRocks, RiddenLetGo float64 // the same with the first sitter in it

	Spacing     float64   // of stations along a straightedge under the rocker
	LowPoint    float64   // which station is the low point, counted from 1 at the nose
	Left, Right []float64 // rises from the straightedge to the floor edge, from the nose

	Zero []string // the readings that are truly 0, by the last part of their keys: "dowel_ahead"
}

// weighed reports whether the readings say what the piece weighs.
func (m Measured) weighed() bool { return m.Weight > 0 || m.Front > 0 || m.Rear > 0 }

// curved reports whether the readings say how the rockers are curved.
func (m Measured) curved() bool { return len(m.Left) > 0 || len(m.Right) > 0 }

// readings returns what package readings wants. The rider of the ridden rocks is the first
// of the people, sitting.
func (d Design) readings(edge rocker.Profile, people []somebody) readings.Readings {
	m := d.Measured
	r := readings.Readings{
		Edge: edge, Floor: sim.Floor{Slope: d.Floor.Slope, Gravity: d.Floor.Gravity},
		Weight: m.Weight, Front: m.Front, Rear: m.Rear, Apart: m.Apart, FrontMark: m.FrontMark,
		Raised: m.Raised, FrontRaised: m.FrontRaised, RearRaised: m.RearRaised,
		DowelAhead: m.DowelAhead, DowelAbove: m.DowelAbove,
		TenRocks: m.TenRocks, LetGo: m.LetGo, RiddenTenRocks: m.RiddenTenRocks, RiddenLetGo: m.RiddenLetGo,
		Zero: m.Zero, Errors: readings.Errors{Scale: m.ScaleStep / 2},
	}
	if m.RiddenTenRocks > 0 && len(people) > 0 && d.Seat.drawn() {
		r.Rider = people[0].person.Pose(d.place(0), person.Sitting).Body
	}
	return r
}

// measured returns the mass of the piece by its readings, in the rocker frame. Where no
// rocks were timed, or they do not tell it, its inertia is that of the drawn piece of the
// same weight.
func (d Design) measured(edge rocker.Profile, people []somebody) (heap, error) {
	switch {
	case d.Seat.Slide != 0:
		return heap{}, &KeyError{Key: "seat.slide", Reason: "readings of the whole piece do not say what belongs to the rockers, so the seat cannot be slid on them"}
	case d.Measured.RiddenTenRocks > 0 && d.Measured.TenRocks == 0 && (len(people) == 0 || !d.Seat.drawn()):
		return heap{}, &KeyError{Key: "measured.ten_rocks_ridden", Reason: "rocks with a rider need the rider: add [sitter] with height and weight, and the drawn [seat]"}
	}
	result, err := d.readings(edge, people).Uncertainty()
	if err != nil {
		return heap{}, misread(err)
	}
	h := heap{result: &result}
	if math.IsNaN(result.Body.Inertia) {
		if result.Body.Inertia, err = d.usualInertia(edge, result); err != nil {
			return heap{}, err
		}
		h.usualInertia = true
	}
	h.rockers = []body.Body{result.Body}
	return h, nil
}

// usualInertia returns the inertia of the drawn piece were it of one wood and so heavy.
func (d Design) usualInertia(edge rocker.Profile, read readings.Result) (float64, error) {
	switch drawn := d.Seat.level(); {
	case !drawn && read.Untold != "":
		return 0, &KeyError{Key: "measured." + read.Untold, Reason: "these rocks do not tell the inertia: it is lost in the reading errors. Time ten rocks of the empty piece, read the scales finer, or draw [seat] so that the inertia can be estimated"}
	case !drawn:
		return 0, &KeyError{Key: "measured", Reason: "time ten rocks (ten_rocks, let_go), or draw [seat] so that the inertia can be estimated", Example: "ten_rocks = 14.2"}
	}
	d.Piece.Mass = read.Body.Mass
	h, err := d.estimate(edge)
	if err != nil {
		return 0, err
	}
	return h.joined(carry{}).Inertia, nil
}

// misread returns an error of package readings with its place in the design.
func misread(err error) error {
	var wrong *readings.ReadingError
	if errors.As(err, &wrong) {
		return &KeyError{Key: "measured." + wrong.Reading, Reason: wrong.Reason}
	}
	return err
}
