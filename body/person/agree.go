package person

import (
	"cmp"
	"math"
)

// possible returns what no person can be.
func (g Given) possible() error {
	within := func(size Size, low, high float64, reason string) error {
		if x := g.Sizes[size]; x != 0 && !(x >= low && x <= high) {
			return &SizeError{Size: size, Value: x, Reason: reason}
		}
		return nil
	}
	return cmp.Or(within(Stature, 0.45, 2.4, "people are 1 ft 6 in to 7 ft 10 in (0.45 to 2.4 m) tall"),
		within(Mass, 2, 350, "people weigh 4 to 770 lb (2 to 350 kg)"))
}

// The fewest and the most kilograms per square metre of stature, of children and of
// grown-ups; our judgement, wide of anyone who sits in a chair.
const (
	thinnest       = 10.0
	stoutestChild  = 45.0
	stoutestAdult  = 90.0
	mostDeviations = 5.0 // of a measure from what the height suggests
)

// agree returns which of the given sizes does not go with the others. A size may be five
// standard deviations of the survey from what was expected of the person.
func (p Person) agree(given, expected Measures) error {
	wrong := func(size Size, reason string, near float64) error {
		return &SizeError{Size: size, Value: p.Sizes[size], Reason: reason, Near: near}
	}
	stout := p.Sizes[Mass] / (p.Sizes[Stature] * p.Sizes[Stature])
	most := stoutestAdult
	if p.Age > 0 {
		most = stoutestChild
	}
	if stout < thinnest || stout > most {
		return wrong(Mass, "this weight does not go with this height", expected[Stature]*expected[Stature]*22)
	}
	a := ansur()
	scale := p.Sizes[Stature] / a.mean(p.Sex, "stature")
	for i, x := range given {
		name := surveyed[i]
		if x == 0 || Size(i) == Stature || Size(i) == Mass || Size(i) == SittingHeight {
			continue
		}
		room := mostDeviations * scale * 0.03 // of the hollow of the back, which the survey has not
		if name != "" {
			room = mostDeviations * scale * a.deviation(p.Sex, name)
		}
		if math.Abs(x-expected[i]) > room {
			return &SizeError{Size: Size(i), Value: x, Reason: "this does not go with the height; measure again", Near: expected[i]}
		}
	}
	switch share := p.Sizes[SittingHeight] / p.Sizes[Stature]; {
	case share < 0.44 || share > 0.70:
		return wrong(SittingHeight, "sitting height is 44 to 70 % of the height, standing", 0.525*p.Sizes[Stature])
	case p.Sizes[Shoulder] > 0.85*p.Sizes[SittingHeight]:
		return wrong(Shoulder, "the shoulder is too near the top of the head", expected[Shoulder])
	case p.Sizes[Shoulder]-p.Sizes[Elbow] < 0.1*p.Sizes[Stature]:
		return wrong(Elbow, "the elbow is too near the shoulder", expected[Elbow])
	}
	return nil
}
