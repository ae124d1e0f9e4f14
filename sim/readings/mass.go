package readings

import "math"

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
	for _, s := range []struct {
		name  string
		value float64
	}{{"weight", r.Weight}, {"front", r.Front}, {"rear", r.Rear}, {"front_raised", r.FrontRaised}, {"rear_raised", r.RearRaised}} {
		if s.value < 0 {
			return wrong(s.name, "a scale shows 0 or more")
		}
	}
	for _, time := range []struct {
		name  string
		value float64
	}{{"ten_rocks", r.TenRocks}, {"ten_rocks_ridden", r.RiddenTenRocks}} {
		if time.value < 0 {
			return wrong(time.name, "ten rocks take more than 0 s")
		}
	}
	return nil
}

// mass returns the mass, as weighed, or the sum of both scales.
func (r Readings) mass() (float64, []Doubt, error) {
	mass := r.Weight
	if mass == 0 {
		mass = r.Front + r.Rear
	}
	if mass == 0 {
		return 0, nil, wrong("weight", "weigh the piece, or stand it on two scales")
	}
	var doubts []Doubt
	scale := or(r.Errors.Scale, usualScale)
	for _, pair := range []struct {
		name string
		a, b float64
		both bool
	}{
		{"front and rear", r.Front, r.Rear, r.Weight != 0 && r.has("front", r.Front) && r.has("rear", r.Rear)},
		{"front_raised and rear_raised", r.FrontRaised, r.RearRaised, r.has("front_raised", r.FrontRaised) && r.has("rear_raised", r.RearRaised)},
	} {
		if !pair.both { // nothing to hold it against
			continue
		}
		if off := math.Abs(pair.a+pair.b-mass) / (scale * math.Sqrt(3)); off > doubtful {
			doubts = append(doubts, Doubt{Reading: pair.name, Read: pair.a + pair.b, Expected: mass, Apart: off})
		}
	}
	if len(doubts) == 2 && math.Abs(doubts[0].Read-doubts[1].Read) <= doubtful*2*scale { // both pairs agree against it
		sum := (doubts[0].Read + doubts[1].Read) / 2
		doubts = []Doubt{{Reading: "weight", Read: r.Weight, Expected: sum, Apart: math.Abs(r.Weight-sum) / scale}}
	}
	return mass, doubts, nil
}
