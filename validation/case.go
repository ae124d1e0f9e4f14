package validation

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// A Case is one number that is known from outside this project's code.
type Case struct {
	Group, Name string
	Checks      string  // what it checks, a sentence
	Source      string  // author, year, title, place; or the derivation, "derived here: …"
	Unit        string  // of Want
	Want        float64 // from the source
	Accuracy    float64 // the largest relative error
	Tolerance   float64 // or the largest absolute one, where Accuracy is zero
	Why         string  // the reason for either
	Memory      bool    // the value is from memory: printed, never asserted
	Compute     func() (float64, error)
}

// Check computes the case and returns what it got; the error says by how much it misses.
func (c Case) Check() (got float64, err error) {
	got, err = c.Compute()
	if err != nil {
		return got, err
	}
	allowed := cmp.Or(c.Accuracy*math.Abs(c.Want), c.Tolerance)
	if off := math.Abs(got - c.Want); !(off <= allowed) && !c.Memory {
		return got, fmt.Errorf("got %v %s, want %v, %.1g off", got, c.Unit, c.Want, off)
	}
	return got, nil
}

// Digits returns in how many digits got agrees with the wanted value, at most 16.
func (c Case) Digits(got float64) float64 {
	off := math.Abs(got - c.Want)
	if c.Want != 0 {
		off /= math.Abs(c.Want)
	}
	return min(16, -math.Log10(off))
}

// A row is a case of a group; see [Case].
type row struct {
	name, checks, source, unit string
	want                       float64
	near                       bound
	compute                    func() (float64, error)
}

// group returns the cases of a group.
func group(name string, rows ...row) []Case {
	list := make([]Case, len(rows))
	for i, r := range rows {
		list[i] = Case{name, r.name, r.checks, r.source, r.unit, r.want,
			r.near.accuracy, r.near.tolerance, r.near.why, r.near.memory, r.compute}
	}
	return list
}

// A bound says how far a case may be off, and why: so large a part of what is wanted, or so much of it.
type bound struct {
	accuracy, tolerance float64
	why                 string
	memory              bool
}

func relative(accuracy float64, why string) bound  { return bound{accuracy: accuracy, why: why} }
func absolute(tolerance float64, why string) bound { return bound{tolerance: tolerance, why: why} }

// recalled is the bound of a value that is from memory.
func recalled(accuracy float64) bound {
	return bound{accuracy: accuracy, why: "from memory", memory: true}
}

// The bounds that most cases have.
var (
	closed     = relative(1e-12, "a closed form on both sides: a dozen roundings")
	quadrature = relative(1e-10, "the period of a finite rock is promised to 1e-10")
	followed   = relative(1e-9, "the motion is promised to 1e-9")
)

const whyPrinted = "the source prints so many digits"

// Cases returns every case, group by group.
func Cases() []Case { return cases(Fault{}) }

// cases returns every case, computed with a fault.
func cases(f Fault) []Case {
	return slices.Concat(
		pendulums(f), cylinders(f), finite(f), rests(f), tips(f), slopes(f), swings(f), joints(f), feet(f), curves(f),
		motions(f), corners(f), floors(f), pulls(f), sizings(f), people(), timber(), reads(f), benches(), standards(f),
		independent(f), engines(f))
}

// A Fault makes an ingredient of a case wrong on purpose, to show that the case would turn red. The zero Fault makes
// nothing wrong. Fields are the parts by which an ingredient is too large.
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

// oneArc returns a body on one arc, reach to both sides (m): its mass (kg), its centre's height, its inertia (kg·m²).
func (f Fault) oneArc(radius, reach, mass, height, inertia float64) sim.Rig {
	return f.over(f.single(radius, reach, reach), mass, height, inertia)
}

// over returns a body on an edge, its centre so high over where that is drawn to touch.
func (f Fault) over(edge rocker.Profile, mass, height, inertia float64) sim.Rig {
	return f.on(sim.Rig{Profile: edge, Body: body.Body{Mass: mass, Centre: r2.Vec{Y: height}, Inertia: inertia}})
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
