package person

import (
	"cmp"
	"fmt"
	"math"
)

// Given is what is known of a person. Zero fields are estimated.
type Given struct {
	Sex        Sex
	Age        float64 // of a child, years; zero means grown up, unless too short for that
	Percentile float64 // of the survey, or of the growth charts, above 0 and below 100; zero means the height given, or the middle
	Sizes      Measures
}

// A Person is a person's sizes and segments. Make one by [New]: the zero Person has no limbs, and posing it panics.
type Person struct {
	Sex     Sex
	Age     float64 // years; zero of a grown-up
	Sizes   Measures
	Sources [sizes]Source

	segments [parts]proportions // of its kind
	lengths  [parts]float64     // m
	hipUp    float64            // of the hip joints over a hard seat, m
	hipAhead float64            // of the hip joints ahead of the plane behind the buttocks, m
	ahead    float64            // by how much flesh carries trunk and thighs ahead, m
	shoulder float64            // from the hip joints along the trunk to the shoulder joints, m
}

// Least stature of a grown-up, m; who is shorter and of no given age is read as a child.
const leastGrownUp = 1.40

// OfAChild reports whether the person that is given is a child: by the age, or shorter than any grown-up.
func (g Given) OfAChild() bool {
	tall := g.Sizes[Stature]
	return g.Age > 0 && g.Age < grownUp || tall > 0 && tall < leastGrownUp
}

// New returns a person by what is known of one. Of a grown-up without a height it is the
// mean of the survey; a weight without a height has that height. The error is a
// [*SizeError]: a size that nobody has, or two that do not go together. It panics for an age
// below zero, a percentile outside 0 to 100 and a Sex that is none.
func New(g Given) (Person, error) {
	if !(g.Age >= 0 && g.Percentile >= 0 && g.Percentile < 100) || g.Sex < Either || g.Sex > Man {
		panic(fmt.Sprintf("person: nobody has the age %g, the percentile %g and the Sex %d", g.Age, g.Percentile, int(g.Sex)))
	}
	if err := g.possible(); err != nil {
		return Person{}, err
	}
	p := Person{Sex: g.Sex, Age: g.Age}
	if p.Age >= grownUp {
		p.Age = 0
	}
	if p.Age == 0 && g.OfAChild() {
		p.Age = ageOf(g.Sex, g.Sizes[Stature])
	}
	base := p.base(g)
	p.Sizes = p.grown(base)
	if g.Percentile > 0 && p.Age == 0 {
		for i, x := range ansur().percentile(g.Sex, g.Percentile) {
			if x > 0 && g.Sizes[i] == 0 {
				p.Sizes[i], p.Sources[i] = x, Survey
			}
		}
		p.Sizes[KneeCrease] += Shoe
	} else if g.Percentile > 0 || p.Age > 0 {
		p.Sources[Stature], p.Sources[Mass] = Survey, Survey
	}
	if p.Sources[Lumbar] == Estimated {
		p.Sources[Lumbar] = CommonPractice
	}
	expected := p.Sizes
	for i, x := range g.Sizes {
		if x > 0 {
			p.Sizes[i], p.Sources[i] = x, Measured
		}
	}
	if err := p.agree(g.Sizes, expected); err != nil {
		return Person{}, err
	}
	p.build(expected)
	p.ahead = p.flesh()
	return p, nil
}

// base returns stature, mass and sitting height, given or estimated.
func (p Person) base(g Given) Measures {
	var m Measures
	a := ansur()
	percentile := cmp.Or(g.Percentile, 50)
	tall, heavy := a.mean(g.Sex, "stature"), a.mean(g.Sex, "weight")
	share := a.mean(g.Sex, "sitting_height") / tall
	if p.Age > 0 {
		tall, heavy = child(g.Sex, min(p.Age, chartEnd), percentile, false)
		share = between(sittingShare(), p.Age)
	} else if g.Percentile > 0 {
		whole := a.percentile(g.Sex, percentile)
		tall, heavy = whole[Stature], whole[Mass]
	}
	m[Stature] = cmp.Or(g.Sizes[Stature], tall)
	taller := m[Stature] / tall
	m[Mass] = cmp.Or(g.Sizes[Mass], heavy*(taller*taller)) // as stout as the mean
	m[SittingHeight] = cmp.Or(g.Sizes[SittingHeight], share*m[Stature])
	return m
}

// grown returns every size by stature, mass and sitting height: what lies over the seat
// in proportion to the sitting height, the legs to the rest of the stature, and the
// breadth of the hips as that of a body of the same shape, √(mass/stature).
func (p Person) grown(base Measures) Measures {
	mean := ansur().means(p.Sex)
	m := base
	above := base[SittingHeight] / mean[SittingHeight]
	below := (base[Stature] - base[SittingHeight]) / (mean[Stature] - mean[SittingHeight])
	m[KneeCrease] = mean[KneeCrease]*below + Shoe
	m[ThighLength] = mean[ThighLength] * below
	m[Hips] = mean[Hips] * math.Sqrt(base[Mass]/base[Stature]*mean[Stature]/mean[Mass])
	for _, s := range []Size{Elbow, Shoulder, Lumbar} {
		m[s] = mean[s] * above
	}
	return m
}

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
			room = mostDeviations * scale * p.Sex.mixed(a["women"][name].sd, a["men"][name].sd)
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
