package size

import (
	"fmt"
	"math/rand/v2"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat/distmv"
	"gonum.org/v1/gonum/stat/distuv"
	"gonum.org/v1/gonum/stat/samplemv"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Varied is one measure of a design that a shop makes, and how exactly; or [People].
type Varied struct {
	Key       string
	Measure   piece.Measure
	Value     float64 // as drawn, SI
	Tolerance float64 // 95 times in 100, ± SI
}

// deviation returns the standard deviation of the shop's error, SI: of normal ones 95 in 100 are within 1.96 of it.
func (v Varied) deviation() float64 { return v.Tolerance / twoSided95 }

// People is the key of what varies with who sits: one of the sizes that are given has the balance point elsewhere.
const People = "sitter.balance_point"

// people returns how who sits varies, of those given by sizes, children and riders too: all people of one piece are off
// alike, two side by side as well, which spreads its rest the most. Of plain numbers nothing is known: none varies.
func people(sitters check.Sitters) []Varied {
	if len(sitters) == 0 {
		return nil
	}
	label := piece.Measure{Key: People, Label: "balance point of who sits, ahead", Kind: quantity.Length}
	return []Varied{{Key: People, Measure: label, Tolerance: check.PersonSpread}}
}

// of returns the measure in a design of the same keys.
func (v Varied) of(d *piece.Design) *float64 {
	_, field, err := d.Measure(v.Key)
	if err != nil {
		panic(fmt.Sprintf("size: %v, which was a measure before", err))
	}
	return field
}

const twoSided95 = 1.959963984540054 // of the normal law, any table

// made returns the measures that the shop makes of a design, in the order of piece.Measures:
// those that are drawn, and of those that may be zero the ones whose section is.
func made(d piece.Design) []Varied {
	var list []Varied
	for _, key := range d.Keys() {
		m, field, err := d.Measure(key)
		if err != nil || !m.Made() || m.Fitted {
			continue
		}
		tolerance := d.Tolerance(m)
		if tolerance > 0 && (*field != 0 || mayBeZero(d, m)) {
			list = append(list, Varied{key, m, *field, tolerance})
		}
	}
	return list
}

// mayBeZero reports whether a measure that is zero is drawn so.
func mayBeZero(d piece.Design, m piece.Measure) bool {
	switch m.Key {
	case "seat.behind_low_point":
		return d.Seat.Drawn()
	case "back.recline":
		return d.Back.Drawn()
	case "body.centre.x":
		return d.Body.Mass > 0
	case "part.N.at.x", "part.N.at.y", "part.N.lean":
		return true
	}
	return false
}

// mostMeasures is how many measures a design may have, ten times those of a sculpted chair: a few seconds' work.
const mostMeasures = 400

// countable returns an [*UnsuitedError] for a design of too many measures.
func countable(d piece.Design) error {
	if n := len(d.Keys()); n > mostMeasures {
		return &UnsuitedError{fmt.Sprintf("it has %d measures, and %d at most are changed one after the other: "+
			"draw it with fewer parts or arcs", n, mostMeasures)}
	}
	return nil
}

// hypercube returns n points of a Latin hypercube of so many independent normal variables, in
// standard deviations, a point a row. Each block of a seed has points of its own.
func hypercube(n, variables int, seed, block uint64) *mat.Dense {
	points := mat.NewDense(n, variables, nil)
	samplemv.LatinHypercube{Q: distmv.NewUnitUniform(variables, nil), Src: rand.NewPCG(seed, block)}.Sample(points)
	points.Apply(func(_, _ int, p float64) float64 { return distuv.UnitNormal.Quantile(p) }, points)
	return points
}
