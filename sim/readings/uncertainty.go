package readings

import (
	"cmp"
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

// A Slip is an error of a level's reading beyond its usual one.
type Slip struct {
	Reading string
	Noticed float64 // so much of it the other readings tell 95 times in 100, rad
}

// A Result is what the readings say, with uncertainties.
type Result struct {
	Mass, Ahead, Above, Inertia Value // kg, m, m, kg·m²; Inertia is NaN where no rocks were timed, and where they do not tell it
	Zero                        Value // what the level shows on its mark at tilt 0, + back, rad; NaN where none was read
	Body                        body.Body
	Doubts                      []Doubt
	Slips                       []Slip // of each tilt that others hold

	// Untold names the rocks timed that do not tell the inertia: "ten_rocks_ridden"; "" where there are none.
	Untold string
}

// twoSided95 is how many standard deviations hold 95 of 100 normal errors.
const twoSided95 = 1.959963984540054

// Read returns what the readings say of the piece in the chair frame, and which disagree, with uncertainties: the
// changes of the result with each reading moved by a part of its standard deviation either way, scaled up and added
// as squares (first-order propagation of independent errors, as in the GUM, JCGM 100:2008, 5.1.2). The error is a
// [*ReadingError]: a reading that cannot be, or what to read next.
func (r Readings) Read() (Result, error) {
	result, err := r.result()
	if err != nil {
		return result, r.swapped(err)
	}
	if len(result.Doubts) > 0 {
		names, _ := r.swaps()
		for i := range result.Doubts {
			result.Doubts[i].Swapped = names
		}
	}
	return result, nil
}

// result is Read without a word on what may have been swapped.
func (r Readings) result() (Result, error) {
	s, err := r.solve()
	if err != nil {
		return Result{}, err
	}
	late := Value{Value: s.late}
	result := Result{Body: s.body, Doubts: s.doubts, Slips: s.slips}
	values := [...]*Value{&result.Mass, &result.Ahead, &result.Above, &result.Inertia, &late, &result.Zero}
	for i, x := range s.numbers() {
		values[i].Value = x
	}
	const part = 1.0 / 16 // of a deviation: small enough to be straight, far above rounding
	moved := r
	if r.tilted() {
		moved.near = &s.at
	}
	list := moved.read()
	for _, one := range list { // what was read stays read where it is moved to 0
		moved.Zero = append(slices.Clip(moved.Zero), one.name)
	}
	for _, reading := range list {
		kept, h := *reading.value, part*reading.deviation
		*reading.value = kept + h
		up, errUp := moved.solve()
		*reading.value = kept - h
		down, errDown := moved.solve()
		*reading.value = kept
		if errUp != nil || errDown != nil {
			return result, wrong(reading.name, "a reading error of the usual size makes these readings contradict each other: read again")
		}
		high, low := up.numbers(), down.numbers()
		for i := range values {
			if adds := twoSided95 * math.Abs(high[i]-low[i]) / (2 * part); adds > 0 {
				values[i].Shares = append(values[i].Shares, Share{reading.name, adds})
			}
		}
	}
	for _, v := range values {
		v.sum()
	}
	if off := math.Abs(late.Value) * twoSided95 / late.Uncertain; off > doubtful {
		expected := r.RiddenTenRocks - late.Value
		result.Doubts = append(result.Doubts, Doubt{Reading: "ten_rocks_ridden", Read: r.RiddenTenRocks, Expected: expected})
	}
	err = r.judge(&result, s.least)
	return result, err
}

// sum puts the largest share first and adds them as squares.
func (v *Value) sum() {
	squares := 0.0
	for _, s := range v.Shares {
		squares += s.Adds * s.Adds
	}
	v.Uncertain = math.Sqrt(squares)
	slices.SortStableFunc(v.Shares, func(a, b Share) int { return cmp.Compare(b.Adds, a.Adds) })
}
