package person

import (
	"fmt"
	"math"
	"sync"

	"rockerwright/rocker/root"
)

// The oldest of the growth charts here, years, and the age from which a person is grown up.
const (
	chartEnd = 12.0
	grownUp  = 18.0
)

// A growth is one row of the growth charts, of one sex.
type growth struct {
	age            float64 // years
	weight, length spread
	lying          bool // length is that of the lying child
}

// charts holds the growth charts of "girls" and "boys", by age.
//
// Source: CDC/NCHS Growth Charts, United States (2000), Kuczmarski R.J. et al. (2002), Vital Health Stat 11(246).
var charts = sync.OnceValue(func() map[string][]growth {
	c := map[string][]growth{}
	for _, r := range rows(cdcTable) {
		c[r["sex"]] = append(c[r["sex"]], growth{
			age:    r.number("age_months", 1.0/12),
			weight: spread{p5: r.number("weight_kg_p5", 1), p50: r.number("weight_kg_p50", 1), p95: r.number("weight_kg_p95", 1)},
			length: spread{p5: r.number("length_cm_p5", 0.01), p50: r.number("length_cm_p50", 0.01), p95: r.number("length_cm_p95", 0.01)},
			lying:  r["length_kind"] == "recumbent length",
		})
	}
	return c
})

// lyingLonger is by how much a child measures longer lying than standing, m; the head of the table says so.
const lyingLonger = 0.008

// child returns stature and weight of a child of an age (0 to 12 years) at a percentile,
// straight between the rows; lying, its length.
func child(sex Sex, age, percentile float64, lying bool) (stature, mass float64) {
	z, c := quantile(percentile), charts()
	of := func(list []growth) (length, weight float64) {
		var lengths, weights []knot
		for _, g := range list {
			tall := g.length.at(z)
			switch {
			case g.lying && !lying:
				tall -= lyingLonger
			case !g.lying && lying:
				tall += lyingLonger
			}
			lengths, weights = append(lengths, knot{g.age, tall}), append(weights, knot{g.age, g.weight.at(z)})
		}
		return between(lengths, age), between(weights, age)
	}
	girlLong, girlHeavy := of(c["girls"])
	boyLong, boyHeavy := of(c["boys"])
	return sex.mixed(girlLong, boyLong), sex.mixed(girlHeavy, boyHeavy)
}

// ageOf returns the age at which the median child is so tall, from 1 to 12 years.
func ageOf(sex Sex, stature float64) float64 {
	age, _ := root.Edge(func(age float64) bool { // or the end that is nearest
		tall, _ := child(sex, age, 50, false)
		return tall < stature
	}, 1, chartEnd, 1e-11, 0)
	return math.Round(2*age) / 2
}

// A knot is a value at an age.
type knot struct{ age, value float64 }

// between returns the value at an age, straight between knots and level beyond them.
func between(knots []knot, age float64) float64 {
	for i, k := range knots {
		if age <= k.age {
			if i == 0 {
				return k.value
			}
			a := knots[i-1]
			return a.value + (k.value-a.value)*(age-a.age)/(k.age-a.age)
		}
	}
	return knots[len(knots)-1].value
}

// sittingShare holds sitting height over stature of children, by age.
//
// Source: NHTSA, table of the Hybrid III family of test dummies (1, 3 and 6 years); at 18 years the mean of ANSUR II.
var sittingShare = sync.OnceValue(func() []knot {
	ages := map[string]float64{"CRABI 12 month": 1, "Hybrid III 3 year": 3, "Hybrid III 6 year": 6}
	var knots []knot
	for _, r := range rows(dummyTable) {
		if age, is := ages[r["dummy"]]; is {
			knots = append(knots, knot{age, r.number("sitting_height_over_stature", 1)})
		}
	}
	a := ansur()
	return append(knots, knot{grownUp, a.mean(Either, "sitting_height") / a.mean(Either, "stature")})
})

// jensen holds the shares of the mass of children, both limbs, by age.
//
// Source: Jensen R.K. (1986), J. Biomechanics 19:359-368, and (1989) 22:529-536, as held
// in one copy. Below 6 years, where there is none, that at 6 is taken.
var jensen = sync.OnceValue(func() (shares [parts][]knot) {
	for _, r := range rows(jensenTable) {
		for part, c := range chain {
			if r["segment"] != c.segment {
				continue
			}
			for _, age := range []float64{6, 12, 15, 18} {
				shares[part] = append(shares[part], knot{age, r.number(fmt.Sprintf("pct_%gyr", age), 0.01) * c.limbs})
			}
		}
	}
	return shares
})
