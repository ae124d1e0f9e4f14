package person

import (
	"math"
	"sync"
)

// A spread is one measure of one sex in a survey, m or kg.
type spread struct{ mean, sd, p5, p50, p95 float64 }

// at returns the value z standard deviations of the normal law from the middle,
// straight between the three percentiles that the table has and beyond them.
func (s spread) at(z float64) float64 {
	if z < 0 {
		return s.p50 + (s.p50-s.p5)*z/quantile95
	}
	return s.p50 + (s.p95-s.p50)*z/quantile95
}

// quantile95 is the normal law's 95th percentile, in standard deviations.
const quantile95 = 1.6448536269514722

// quantile returns the percentile p (0 to 100) of the normal law, in standard deviations.
func quantile(p float64) float64 { return math.Sqrt2 * math.Erfinv(p/50-1) }

// A survey holds what is taken from ANSUR II of "women" and "men", by the name of its measure.
type survey map[string]map[string]spread

// ansur reads the survey.
//
// Source: Gordon C.C. et al. (2014), 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007, computed
// from its public records; 4082 men, 1986 women. Soldiers are fitter and younger than the public.
var ansur = sync.OnceValue(func() survey {
	s := survey{"women": {}, "men": {}}
	for _, r := range rows(ansurTable) {
		scale := map[string]float64{"mm": 1e-3, "kg": 1}[r["unit"]]
		s[r["sex"]][r["measure"]] = spread{
			r.number("mean", scale), r.number("sd", scale),
			r.number("p5", scale), r.number("p50", scale), r.number("p95", scale),
		}
	}
	return s
})

// surveyed is the survey's name of each size it has.
var surveyed = [sizes]string{
	Stature: "stature", Mass: "weight", KneeCrease: "popliteal_height", ThighLength: "buttock_popliteal_length",
	Hips: "hip_breadth_sitting", Elbow: "elbow_rest_height", Shoulder: "acromial_height_sitting", SittingHeight: "sitting_height",
}

// mean returns the mean of a measure.
func (s survey) mean(sex Sex, measure string) float64 {
	return sex.mixed(s["women"][measure].mean, s["men"][measure].mean)
}

// percentile returns every size at the percentile p of the survey, barefoot. No person
// has all measures at one percentile; each by itself is what the survey says.
func (s survey) percentile(sex Sex, p float64) Measures {
	z := quantile(p)
	return s.each(func(name string) float64 { return sex.mixed(s["women"][name].at(z), s["men"][name].at(z)) })
}

// means returns the mean of every size, barefoot.
func (s survey) means(sex Sex) Measures {
	m := s.each(func(name string) float64 { return s.mean(sex, name) })
	m[Lumbar] = hollow
	return m
}

// each returns a number for every size that the survey has.
func (survey) each(of func(name string) float64) (m Measures) {
	for i, name := range surveyed {
		if name != "" {
			m[i] = of(name)
		}
	}
	return m
}

// hollow is the height of the hollow of a grown-up's back over the seat, m: 8 in, common practice among chairmakers.
const hollow = 0.2032

// Shoe is what a shoe adds under the heel, m; common practice.
const Shoe = 0.025

// Sex chooses the rows of the tables. The zero Sex is the mean of both.
type Sex int

const (
	Either Sex = iota // the mean of women and men
	Woman
	Man
)

// String returns the word for s in a design file, "" for Either.
func (s Sex) String() string { return [...]string{"", "woman", "man"}[s] }

// mixed returns the value of the sex, or the mean of both.
func (s Sex) mixed(woman, man float64) float64 {
	switch s {
	case Woman:
		return woman
	case Man:
		return man
	}
	return (woman + man) / 2
}
