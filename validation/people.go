package validation

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
)

// people are outside checks of the chain of segments.
func people() []Case {
	const text = "Table A.2.1, position 1, of a text on body dynamics (believed Tözeren, after Santschi, DuBois and Omoto 1963); one source"
	differ := "people differ from the mean of their size"
	var rows []row
	for _, s := range []struct {
		id             string
		stature, mass  float64
		below, inertia float64
	}{{"S4", 1.834, 78.7, 0.818, 13.45}, {"S5", 1.712, 66.8, 0.757, 9.25}, {"S6", 1.862, 92.1, 0.808, 14.58}} {
		standing := func() (body.Body, person.Joints, error) {
			p, err := person.New(person.Given{Sex: person.Man, Sizes: person.Measures{person.Stature: s.stature, person.Mass: s.mass}})
			b, j := p.Standing(r2.Vec{})
			return b, j, err
		}
		rows = append(rows,
			row{s.id + " standing, centre under the top of the head", "The balance point of a standing man.",
				text, "m", s.below, absolute(0.020, differ),
				func() (float64, error) { b, j, err := standing(); return j.Vertex.Y - b.Centre.Y, err }},
			row{s.id + " standing, inertia", "The inertia of a standing man about the left-right axis.",
				text, "kg m2", s.inertia, relative(0.20, differ),
				func() (float64, error) { b, _, err := standing(); return b.Inertia, err }})
	}
	seated := func(mass float64) (person.Pose, error) {
		p, err := person.New(person.Given{Sex: person.Man, Sizes: person.Measures{person.Mass: mass}})
		return p.Pose(person.Seat{Depth: 0.45, Backed: true, Floor: -p.Sizes[person.KneeCrease]}, person.Upright), err
	}
	size := func(g person.Given, s person.Size, less float64) func() (float64, error) {
		return func() (float64, error) { p, err := person.New(g); return p.Sizes[s] - less, err }
	}
	const ansur = "Gordon et al. (2014), ANSUR II, NATICK/TR-15/007, from its public records"
	const cdc = "CDC growth charts (2000), Kuczmarski et al., Vital Health Stat 11(246)"
	table := relative(1e-9, "an entry of the table, interpolated at itself")
	return group("people", append(rows, []row{
		{"sitting upright, ahead of the buttocks", "The balance point of a seated man of 77 kg.",
			"UMTRI, Whole-body center of mass location in seated posture, abstract; one source",
			"m", 0.220, absolute(0.025, "people differ, and relaxed sitting is not upright"),
			func() (float64, error) { p, err := seated(77); return p.Body.Centre.X, err }},
		{"sitting, inertia, mean of 66 men", "The inertia of a seated man.",
			"Santschi, DuBois and Omoto (1963); from memory", "kg m2", 7.52, recalled(0.2),
			func() (float64, error) { p, err := seated(75.6); return p.Body.Inertia, err }},
		{"stature of the 95th percentile man", "The survey is read right.", ansur, "m", 1.870, table,
			size(person.Given{Sex: person.Man, Percentile: 95}, person.Stature, 0)},
		{"knee crease of the 5th percentile woman, barefoot", "The survey is read right.", ansur, "m", 0.350, table,
			size(person.Given{Sex: person.Woman, Percentile: 5}, person.KneeCrease, person.Shoe)},
		{"weight of a boy of 6", "The growth charts are read right.", cdc, "kg", 20.68, table,
			size(person.Given{Sex: person.Man, Age: 6}, person.Mass, 0)},
		{"stature of a girl of 8", "The growth charts are read right.", cdc, "m", 1.276, table,
			size(person.Given{Sex: person.Woman, Age: 8}, person.Stature, 0)},
	}...)...)
}
