package validation

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
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

// chain joins spans that make a rocker.
func chain(nose float64, spans ...rocker.Span) rocker.Profile {
	edge, err := rocker.Chain(nose, spans...)
	if err != nil {
		panic(err)
	}
	return edge
}

// single is the rocker of one arc.
func (f Fault) single(radius, nose, tail float64) rocker.Profile {
	if f.Swapped {
		nose, tail = tail, nose
	}
	return rocker.Single(radius*(1+f.Radius), nose, tail)
}

// oneArc returns a body on the rocker of one arc that reaches as far to both sides, m: its mass (kg), how high its
// centre is (m), and its inertia there (kg·m²).
func (f Fault) oneArc(radius, reach, mass, height, inertia float64) sim.Rig {
	about := body.Body{Mass: mass, Centre: r2.Vec{Y: height}, Inertia: inertia}
	return f.on(sim.Rig{Profile: f.single(radius, reach, reach), Body: about})
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
