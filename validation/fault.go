package validation

import (
	"rockerwright/rocker"
	"rockerwright/sim"
)

// A Fault makes an ingredient of a case wrong on purpose, to show that the case would turn
// red. The zero Fault makes nothing wrong. Fields are the parts by which an ingredient is
// too large.
type Fault struct {
	Radius, Height, Inertia, Gravity float64
	Swapped                          bool // front for back
	Level                            bool // the floor's slope left out
}

// single is the rocker of one arc.
func (f Fault) single(radius, nose, tail float64) rocker.Profile {
	if f.Swapped {
		nose, tail = tail, nose
	}
	return rocker.Single(radius*(1+f.Radius), nose, tail)
}

// on returns a rig with the fault.
func (f Fault) on(r sim.Rig) sim.Rig {
	r.Body.Centre.Y *= 1 + f.Height
	r.Body.Inertia *= 1 + f.Inertia
	if f.Gravity != 0 {
		r.Floor.Gravity = r.Floor.FreeFall() * (1 + f.Gravity)
	}
	if f.Swapped {
		r.Body.Centre.X = -r.Body.Centre.X
	}
	if f.Level {
		r.Floor.Slope = 0
	}
	return r
}
