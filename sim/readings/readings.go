package readings

import (
	"cmp"
	"fmt"
	"slices"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// Readings are what a maker read off a finished piece. A zero is not read, unless Zero names it.
type Readings struct {
	Edge  rocker.Profile
	Floor sim.Floor

	Weight float64 // of the whole piece, kg

	Front, Rear float64 // scales under two marks on the floor edge, both marks level, kg
	Apart       float64 // between the marks, straight, m
	FrontMark   float64 // along the floor edge from the low point forward to the front mark, m

	Raised                  float64 // the front mark against the rear one, m
	FrontRaised, RearRaised float64 // the scales then, kg

	DowelAhead float64 // line of balance ahead of the low point, m
	DowelAbove float64 // line of balance over the floor line, the piece on its side, m

	// A level on one mark of the empty piece, on a level floor, + back, rad: at rest, and as it just balances on its
	// ends: where it just goes over, and where it just comes back.
	SeatFallsEmpty                  float64
	BalancesOnTail, ReturnsFromTail float64
	BalancesOnNose, ReturnsFromNose float64

	SeatDrawn        bool    // whether SeatFall is known
	SeatFall         float64 // what the level shows on its mark at tilt 0, + back, rad
	NoseTip, TailTip float64 // of the floor edge over the floor at the same rest, m
	NoseEnd, TailEnd End

	TenRocks float64 // time of ten rocks there and back, empty, s
	LetGo    float64 // tilt from its rest at which it was let go, rad

	RiddenTenRocks, RiddenLetGo float64   // the same with a rider
	Rider                       body.Body // chair frame; the zero Body is not known

	Zero []string // the readings that are truly 0, by their keys in a design file: "dowel_ahead"

	ScaleError float64 // standard deviation of a scale, kg; zero: usually 0.1, a bathroom scale of half-pound steps
	LevelError float64 // standard deviation of a level, rad; zero: usually 0.1 degree, read both ways round

	off  offsets
	near *state // where the solution is sought; nil where that is not known yet
}

func (r *Readings) has(name string, value float64) bool {
	return value != 0 || slices.Contains(r.Zero, name)
}

// The usual standard deviations of a reading, and how surely sizes give a rider's body; our judgement.
const (
	usualScale = 0.1    // kg
	usualTape  = 0.0008 // m; 1/32 in
	usualDowel = 0.003  // m; the place of a line of balance
	UsualWatch = 0.15   // s; of ten rocks
	UsualAngle = 0.0175 // rad; of letting go, 1 degree
	riderPlace = 0.0125 // of the rider's balance point, m
	riderTurn  = 0.10   // of the rider's inertia, as a part of it
)

// scale returns the standard deviation of a scale, kg.
func (r *Readings) scale() float64 { return cmp.Or(r.ScaleError, usualScale) }

// A reading is one number that was read, with its name in a design file.
type reading struct {
	name      string
	value     *float64
	deviation float64
}

func (r *Readings) read() []reading {
	scale := r.scale()
	list := []reading{
		{"weight", &r.Weight, scale},
		{"front", &r.Front, scale}, {"rear", &r.Rear, scale}, {"apart", &r.Apart, usualTape}, {"front_mark", &r.FrontMark, usualTape},
		{"raised", &r.Raised, usualTape}, {"front_raised", &r.FrontRaised, scale}, {"rear_raised", &r.RearRaised, scale},
		{"dowel_ahead", &r.DowelAhead, usualDowel}, {"dowel_above", &r.DowelAbove, usualDowel},
		{"ten_rocks", &r.TenRocks, UsualWatch}, {"let_go", &r.LetGo, UsualAngle},
	}
	list = slices.DeleteFunc(list, func(one reading) bool { return !r.has(one.name, *one.value) })
	list = append(list, r.levelled()...)
	if r.RiddenTenRocks != 0 {
		list = append(list,
			reading{"ten_rocks_ridden", &r.RiddenTenRocks, UsualWatch}, reading{"let_go_ridden", &r.RiddenLetGo, UsualAngle},
			reading{"rider", &r.Rider.Centre.X, riderPlace}, reading{"rider", &r.Rider.Centre.Y, riderPlace},
			reading{"rider", &r.Rider.Inertia, riderTurn * r.Rider.Inertia})
	}
	return list
}

// A ReadingError reports a reading that cannot be, or one that is missing.
type ReadingError struct {
	Reading string // its key in a design file: "front_raised"
	Reason  string
	Missing bool // nothing that was read is wrong: what else to read is told
}

func (e *ReadingError) Error() string { return fmt.Sprintf("readings: %s: %s", e.Reading, e.Reason) }

func wrong(reading, reason string) error { return &ReadingError{Reading: reading, Reason: reason} }
