package readings

import (
	"math"
	"slices"

	"rockerwright/body"
)

// A Share is how much one reading adds to the uncertainty of a value.
type Share struct {
	Reading string
	Adds    float64 // ± at 95 %, by this reading alone
}

// A Value is one thing that was read, with its uncertainty.
type Value struct {
	Value     float64
	Uncertain float64 // ± at 95 %
	Shares    []Share // the largest first
}

// Limits returns the reading that limits the value, "" where none adds anything.
func (v Value) Limits() string {
	if len(v.Shares) == 0 {
		return ""
	}
	return v.Shares[0].Reading
}

// A Result is what the readings say, with uncertainties.
type Result struct {
	Mass, Ahead, Above, Inertia Value // kg, m, m, kg·m²; Inertia is NaN where no rocks were timed
	Body                        body.Body
	Doubts                      []Doubt
}

// within is how many standard deviations hold 95 of 100 normal errors.
const within = 1.959963984540054

// Uncertainty returns the result with uncertainties: each reading moved by a part of its
// standard deviation either way, and the changes of the result, scaled up, added as
// squares (first-order propagation of independent errors, as in the GUM, JCGM 100:2008,
// 5.1.2). The error is that of [Readings.Read].
func (r Readings) Uncertainty() (Result, error) {
	b, doubts, err := r.Read()
	if err != nil {
		return Result{}, err
	}
	result := Result{Body: b, Doubts: doubts}
	values := [...]*Value{&result.Mass, &result.Ahead, &result.Above, &result.Inertia}
	for i, x := range numbers(b) {
		values[i].Value = x
	}
	const part = 1.0 / 16 // of a deviation: small enough to be straight, far above rounding
	for _, reading := range r.read() {
		kept, h := *reading.value, part*reading.deviation
		*reading.value = kept + h
		up, _, errUp := r.Read()
		*reading.value = kept - h
		down, _, errDown := r.Read()
		*reading.value = kept
		if errUp != nil || errDown != nil {
			return result, wrong(reading.name, "a reading error of the usual size makes these readings contradict each other: read again")
		}
		high, low := numbers(up), numbers(down)
		for i := range values {
			if adds := within * math.Abs(high[i]-low[i]) / (2 * part); adds > 0 {
				values[i].Shares = append(values[i].Shares, Share{reading.name, adds})
			}
		}
	}
	for _, v := range values {
		squares := 0.0
		for _, s := range v.Shares {
			squares += s.Adds * s.Adds
		}
		v.Uncertain = math.Sqrt(squares)
		slices.SortStableFunc(v.Shares, func(a, b Share) int {
			switch {
			case a.Adds > b.Adds:
				return -1
			case a.Adds < b.Adds:
				return 1
			}
			return 0
		})
	}
	return result, nil
}

func numbers(b body.Body) [4]float64 {
	return [4]float64{b.Mass, b.Centre.X, b.Centre.Y, b.Inertia}
}
