package piece

import (
	"slices"

	"rockerwright/body/person"
	"rockerwright/sim/quantity"
)

// What a shop usually holds, 95 times in 100, ±; common practice: a tape to a sixteenth, a
// radius to a quarter, a bevel to half a degree. The weight is a guess at a kitchen scale.
const (
	lengthTolerance = quantity.In / 16
	radiusTolerance = quantity.In / 4
	angleTolerance  = quantity.Deg / 2
	weightTolerance = 2 * quantity.Lb
)

// Measures returns the one table of what a maker can change. The file loader, changes
// on the command line, sizing and labels all read it.
//
// Its rows are of two lines each: what the measure is, and the field of Design that holds it.
func Measures() []Measure { return slices.Clone(measures) }

// length is a measure that is read off a tape, to a sixteenth of an inch.
func length(key, label string, low, high float64, example string, field func(d *Design, n int) *float64) Measure {
	return Measure{
		Key: key, Label: label, Kind: quantity.Length, Low: low * quantity.In, High: high * quantity.In,
		Step: quantity.In / 8, Tolerance: lengthTolerance, Example: example, field: field,
	}
}

// angle is a measure that is set with a bevel, to half a degree. low and high are degrees.
func angle(key, label string, low, high float64, example string, field func(d *Design, n int) *float64) Measure {
	return Measure{
		Key: key, Label: label, Kind: quantity.Angle, Sign: AnySign, Low: low * quantity.Deg, High: high * quantity.Deg,
		Step: quantity.Deg / 2, Tolerance: angleTolerance, Example: example, field: field,
	}
}

// seconds is a time that is taken with a watch.
func seconds(key, label string, low, high float64, example string, field func(d *Design, n int) *float64) Measure {
	return Measure{Key: key, Label: label, Kind: quantity.Time, Low: low, High: high, Step: 0.1, Example: example, field: field}
}

// Measures of which there are several alike, but for [Measure.of].
var (
	weight = Measure{Kind: quantity.Mass, Low: 1 * quantity.Lb, High: 300 * quantity.Lb, Step: quantity.Lb,
		Tolerance: weightTolerance, Example: "26"}
	bevel = Measure{Kind: quantity.Angle, Sign: AnySign, Low: -25 * quantity.Deg, High: 25 * quantity.Deg,
		Step: quantity.Deg / 2, Tolerance: angleTolerance, Example: "8"}
	limit   = Measure{Kind: quantity.Angle, Sign: AtLeastZero, High: 45 * quantity.Deg, Step: quantity.Deg, Example: "15"}
	timber  = Measure{Kind: quantity.Density, Low: 300, High: 1100, Step: 10, Tolerance: 50, Example: `"650 kg/m3"`}
	inertia = Measure{Kind: quantity.Inertia, Sign: AtLeastZero, High: 20, Step: 0.1, Example: `"2.1 kg m2"`}
)

// of returns m of an entry.
func (m Measure) of(key, label string, field func(d *Design, n int) *float64) Measure {
	m.Key, m.Label, m.field = key, label, field
	return m
}

// as returns m with another sign.
func (m Measure) as(sign Sign) Measure {
	m.Sign = sign
	return m
}

// like returns m with another example.
func (m Measure) like(example string) Measure {
	m.Example = example
	return m
}

// onSheet returns m with the number of its blank on the measuring sheets.
func (m Measure) onSheet(blank int) Measure {
	m.Blank = blank
	return m
}

// fitted returns m as one that is set when the piece is put together, not drawn.
func (m Measure) fitted() Measure {
	m.Fitted = true
	return m
}

// held returns m with another usual tolerance.
func (m Measure) held(tolerance float64) Measure {
	m.Tolerance = tolerance
	return m
}

// stepped returns m with another least change worth trying.
func (m Measure) stepped(step float64) Measure {
	m.Step = step
	return m
}

// size is a size of a person.
func size(s person.Size, label string, low, high float64, example string) Measure {
	return length("sitter.N."+SizeKey(s), label, low, high, example,
		func(d *Design, n int) *float64 { return &d.Sitters[n].Person.Sizes[s] }).held(radiusTolerance)
}

// number is a plain count.
func number(key, label string, low, high, step float64, example string, field func(d *Design, n int) *float64) Measure {
	return Measure{Key: key, Label: label, Kind: quantity.Count, Low: low, High: high, Step: step, Example: example, field: field}
}

// wish is a tilt that may be zero.
func wish(key, label, example string, field func(d *Design) *Wish) Measure {
	m := angle(key, label, -10, 35, example, func(d *Design, _ int) *float64 { return &field(d).Value }).held(0)
	m.asked = func(d *Design) *bool { return &field(d).Asked }
	return m
}

var measures = slices.Concat(pieceMeasures[:], otherMeasures[:])
