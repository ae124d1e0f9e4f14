package readings

import (
	"cmp"
	"math"
	"slices"
)

// check returns what no reading can be.
func (r Readings) check() error {
	if r.Edge.Length() == 0 {
		return wrong("edge", "the floor edge of the rockers is needed")
	}
	for _, one := range r.read() {
		if math.IsNaN(*one.value) || math.IsInf(*one.value, 0) {
			return wrong(one.name, "this is no number")
		}
	}
	for _, one := range r.read() {
		switch {
		case !(*one.value < 0):
		case one.name == "ten_rocks", one.name == "ten_rocks_ridden":
			return wrong(one.name, "ten rocks take more than 0 s")
		case slices.Contains([]string{"weight", "front", "rear", "front_raised", "rear_raised"}, one.name):
			return wrong(one.name, "a scale shows 0 or more")
		}
	}
	return nil
}

// mass returns the mass, as weighed, or the sum of both scales.
func (r Readings) mass() (float64, []Doubt, error) {
	mass := cmp.Or(r.Weight, r.Front+r.Rear)
	if mass == 0 {
		return 0, nil, wrong("weight", "weigh the piece, or stand it on two scales")
	}
	var doubts []Doubt
	scale := r.scale()
	for _, pair := range []struct {
		name string
		a, b float64
		both bool
	}{
		{"front and rear", r.Front, r.Rear, r.Weight != 0 && r.has("front", r.Front) && r.has("rear", r.Rear)},
		{"front_raised and rear_raised", r.FrontRaised, r.RearRaised, r.has("front_raised", r.FrontRaised) && r.has("rear_raised", r.RearRaised)},
	} {
		off := math.Abs(pair.a+pair.b-mass) / (scale * math.Sqrt(3))
		if pair.both && off > doubtful { // else there is nothing to hold it against
			doubts = append(doubts, Doubt{Reading: pair.name, Read: pair.a + pair.b, Expected: mass, Apart: off})
		}
	}
	if len(doubts) == 2 && math.Abs(doubts[0].Read-doubts[1].Read) <= doubtful*2*scale { // both pairs agree against it
		sum := (doubts[0].Read + doubts[1].Read) / 2
		doubts = []Doubt{{Reading: "weight", Read: r.Weight, Expected: sum, Apart: math.Abs(r.Weight-sum) / scale}}
	}
	return mass, doubts, nil
}
