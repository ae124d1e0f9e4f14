package wire

import (
	"math"

	"rockerwright/body/person"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// somebody is a person who was posed by sizes.
func somebody(one check.Somebody) Object {
	age := math.NaN() // of a grown-up
	if one.Person.Age > 0 {
		age = one.Person.Age
	}
	sizes := each(person.Sizes(), func(s person.Size) Object {
		value := "value_m"
		if s == person.Mass {
			value = "value_kg"
		}
		return Object{{"name", s.String()}, {value, one.Person.Sizes[s]}, {"source", one.Person.Sources[s].String()}}
	})
	return Object{{"name", one.Name}, {"role", one.Role.String()}, {"age_years", age}, {"sizes", sizes}}
}

// fit is how a measure suits a person; a bound is null where custom asks nothing.
func fit(f check.Fit) Object {
	return Object{
		{"key", f.Key}, {"what", f.What}, {"size", f.Size.String()},
		{"have_m", f.Have}, {"at_least_m", f.Low}, {"at_most_m", f.High}, {"change_m", f.Change},
		{"basis", "common practice"},
	}
}

// may says who may sit, nil where that was not asked; all four are null where nobody may.
func may(m *check.May) Object {
	if m == nil {
		return nil
	}
	said := func(x float64) float64 {
		if m.Nobody {
			return math.NaN()
		}
		return x
	}
	return Object{
		{"lightest_kg", said(m.Lightest)}, {"heaviest_kg", said(m.Heaviest)},
		{"shortest_m", said(m.Shortest)}, {"tallest_m", said(m.Tallest)},
	}
}

// give is how a back bends under who leans on it.
func give(g *check.Give) Object {
	if g == nil {
		return nil
	}
	return Object{
		{"force_n", g.Force}, {"yield_m", g.Yield}, {"turn_deg", degrees(g.Turn)},
		{"stress_pa", g.Stress}, {"strength_share", g.Share},
	}
}

func bending(b check.Bending) Object {
	return Object{
		{"end", endOf(b.Tail)}, {"load", b.Load}, {"force_n", b.Force},
		{"along_grain_share_most", b.Along.Most}, {"short_grain_share_most", b.Across.Most},
	}
}

// beyond is a pair of legs beyond an end of the rockers.
func beyond(b piece.Beyond) Object {
	return Object{{"legs", b.Which.String()}, {"end", endOf(b.Tail)}, {"by_m", b.By}, {"taken", b.Taken}}
}

// endOf names an end of the rockers.
func endOf(tail bool) string {
	if tail {
		return "tail"
	}
	return "nose"
}
