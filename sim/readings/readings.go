package readings

import (
	"cmp"
	"slices"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// Readings are what a maker read off a finished piece. A zero is not read, unless Zero
// names it.
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

	TenRocks float64 // time of ten rocks there and back, empty, s
	LetGo    float64 // tilt from its rest at which it was let go, rad

	RiddenTenRocks, RiddenLetGo float64   // the same with a rider
	Rider                       body.Body // chair frame; the zero Body is not known

	Zero []string // the readings that are truly 0, by their keys in a design file: "dowel_ahead"

	Errors Errors
}

// has reports whether a reading was read.
func (r *Readings) has(name string, value float64) bool {
	return value != 0 || slices.Contains(r.Zero, name)
}

// Errors are the standard deviations of one reading. A zero is the usual one.
type Errors struct {
	Scale float64 // kg; usually 0.1, a bathroom scale of half-pound steps
	Tape  float64 // m; usually 0.8 mm, 1/32 in
	Dowel float64 // m; usually 3 mm, the place of a line of balance
	Watch float64 // of ten rocks, s; usually 0.15
	Angle float64 // of letting go, rad; usually 1 degree
}

// The usual reading errors, and how surely a rider's body is known from sizes; our
// judgement.
const (
	usualScale = 0.1
	usualTape  = 0.0008
	usualDowel = 0.003
	usualWatch = 0.15
	usualAngle = 0.0175
	riderPlace = 0.0125 // of the rider's balance point, m
	riderTurn  = 0.10   // of the rider's inertia, as a part of it
)

// usual returns the errors with the usual one for each zero.
func (e Errors) usual() Errors {
	return Errors{cmp.Or(e.Scale, usualScale), cmp.Or(e.Tape, usualTape), cmp.Or(e.Dowel, usualDowel), cmp.Or(e.Watch, usualWatch), cmp.Or(e.Angle, usualAngle)}
}

// A reading is one number that was read, with its name in a design file.
type reading struct {
	name      string
	value     *float64
	deviation float64
}

// read lists what was read.
func (r *Readings) read() []reading {
	e := r.Errors.usual()
	list := []reading{
		{"weight", &r.Weight, e.Scale},
		{"front", &r.Front, e.Scale}, {"rear", &r.Rear, e.Scale}, {"apart", &r.Apart, e.Tape}, {"front_mark", &r.FrontMark, e.Tape},
		{"raised", &r.Raised, e.Tape}, {"front_raised", &r.FrontRaised, e.Scale}, {"rear_raised", &r.RearRaised, e.Scale},
		{"dowel_ahead", &r.DowelAhead, e.Dowel}, {"dowel_above", &r.DowelAbove, e.Dowel},
		{"ten_rocks", &r.TenRocks, e.Watch}, {"let_go", &r.LetGo, e.Angle},
	}
	list = slices.DeleteFunc(list, func(one reading) bool { return !r.has(one.name, *one.value) })
	if r.RiddenTenRocks != 0 {
		list = append(list,
			reading{"ten_rocks_ridden", &r.RiddenTenRocks, e.Watch}, reading{"let_go_ridden", &r.RiddenLetGo, e.Angle},
			reading{"rider", &r.Rider.Centre.X, riderPlace}, reading{"rider", &r.Rider.Centre.Y, riderPlace},
			reading{"rider", &r.Rider.Inertia, riderTurn * r.Rider.Inertia})
	}
	return list
}
