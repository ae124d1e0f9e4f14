package main

import (
	"math"

	"rockerwright/body/person"
	"rockerwright/sim/check"
)

// A personJSON is somebody who was posed by sizes.
type personJSON struct {
	Name  string     `json:"name"`
	Role  string     `json:"role"`
	Age   number     `json:"age_years"` // null of a grown-up
	Sizes []sizeJSON `json:"sizes"`
}

type sizeJSON struct {
	Name   string  `json:"name"`
	Metres *number `json:"value_m,omitempty"`
	Mass   *number `json:"value_kg,omitempty"`
	Source string  `json:"source"`
}

type fitJSON struct {
	Key    string `json:"key"`
	What   string `json:"what"`
	Size   string `json:"size"`
	Have   number `json:"have_m"`
	Low    number `json:"at_least_m"`
	High   number `json:"at_most_m"` // null where custom asks nothing
	Change number `json:"change_m"`
	Basis  string `json:"basis"`
}

type mayJSON struct {
	Lightest number `json:"lightest_kg"` // all four null where nobody may
	Heaviest number `json:"heaviest_kg"`
	Shortest number `json:"shortest_m"`
	Tallest  number `json:"tallest_m"`
}

type giveJSON struct {
	Force  number `json:"force_n"`
	Yield  number `json:"yield_m"`
	Turn   number `json:"turn_deg"`
	Stress number `json:"stress_pa"`
	Share  number `json:"strength_share"`
}

type bendingJSON struct {
	End    string `json:"end"`
	Load   string `json:"load"`
	Force  number `json:"force_n"`
	Along  number `json:"along_grain_share_most"`
	Across number `json:"short_grain_share_most"`
}

// A beyondJSON is a pair of legs beyond an end of the rockers.
type beyondJSON struct {
	Legs  string `json:"legs"`
	End   string `json:"end"`
	By    number `json:"by_m"`
	Taken bool   `json:"taken"`
}

func beyondOf(r check.Report) []beyondJSON {
	var list []beyondJSON
	for _, b := range r.Beyond {
		list = append(list, beyondJSON{b.Which.String(), endOf(b.Tail), number(b.By), b.Taken})
	}
	return list
}

// endOf names an end of the rockers.
func endOf(tail bool) string {
	if tail {
		return "tail"
	}
	return "nose"
}

func peopleOf(r check.Report) []personJSON {
	list := []personJSON{}
	for _, one := range r.Somebody {
		j := personJSON{Name: one.Name, Role: one.Role.String(), Age: number(math.NaN())}
		if one.Person.Age > 0 {
			j.Age = number(one.Person.Age)
		}
		for _, s := range person.Sizes() {
			value := number(one.Person.Sizes[s])
			size := sizeJSON{Name: s.String(), Source: one.Person.Sources[s].String()}
			if s == person.Mass {
				size.Mass = &value
			} else {
				size.Metres = &value
			}
			j.Sizes = append(j.Sizes, size)
		}
		list = append(list, j)
	}
	return list
}

func fitOf(r check.Report) []fitJSON {
	list := []fitJSON{}
	for _, f := range r.Fit {
		list = append(list, fitJSON{f.Key, f.What, f.Size.String(), number(f.Have), number(f.Low), number(f.High), number(f.Change), "common practice"})
	}
	return list
}

// mayOf returns who may sit; nil where that was not asked.
func mayOf(m *check.May) *mayJSON {
	switch {
	case m == nil:
		return nil
	case m.Nobody:
		none := number(math.NaN())
		return &mayJSON{none, none, none, none}
	}
	return &mayJSON{number(m.Lightest), number(m.Heaviest), number(m.Shortest), number(m.Tallest)}
}

func giveOf(g *check.Give) *giveJSON {
	if g == nil {
		return nil
	}
	return &giveJSON{number(g.Force), number(g.Yield), degrees(g.Turn), number(g.Stress), number(g.Share)}
}

func bendingOf(r check.Report) []bendingJSON {
	var list []bendingJSON
	for _, b := range r.Bending {
		list = append(list, bendingJSON{endOf(b.Tail), b.Load, number(b.Force), number(b.Along.Most), number(b.Across.Most)})
	}
	return list
}
