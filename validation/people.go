package validation

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
)

// people are outside checks of the chain of segments.
func people() []Case {
	const text = "Table A.2.1, position 1, of a text on body dynamics (believed Tözeren, after Santschi, DuBois and Omoto 1963); one source"
	var cases []Case
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
		cases = append(cases,
			Case{Group: "people", Name: s.id + " standing, centre under the top of the head",
				Checks: "The balance point of a standing man.", Source: text, Unit: "m", Want: s.below, Tolerance: 0.020,
				Why:     "people differ from the mean of their size",
				Compute: func() (float64, error) { b, j, err := standing(); return j.Vertex.Y - b.Centre.Y, err }},
			Case{Group: "people", Name: s.id + " standing, inertia",
				Checks: "The inertia of a standing man about the left-right axis.", Source: text,
				Unit: "kg m2", Want: s.inertia, Accuracy: 0.20,
				Why:     "people differ from the mean of their size",
				Compute: func() (float64, error) { b, _, err := standing(); return b.Inertia, err }})
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
	const table = "an entry of the table, interpolated at itself"
	return append(cases,
		Case{Group: "people", Name: "sitting upright, ahead of the buttocks",
			Checks: "The balance point of a seated man of 77 kg.",
			Source: "UMTRI, Whole-body center of mass location in seated posture, abstract; one source",
			Unit:   "m", Want: 0.220, Tolerance: 0.025,
			Why:     "people differ, and relaxed sitting is not upright",
			Compute: func() (float64, error) { p, err := seated(77); return p.Body.Centre.X, err }},
		Case{Group: "people", Name: "sitting, inertia, mean of 66 men", Checks: "The inertia of a seated man.",
			Source: "Santschi, DuBois and Omoto (1963); from memory", Unit: "kg m2", Want: 7.52, Accuracy: 0.2,
			Why: "from memory", Memory: true,
			Compute: func() (float64, error) { p, err := seated(75.6); return p.Body.Inertia, err }},
		Case{Group: "people", Name: "stature of the 95th percentile man", Checks: "The survey is read right.",
			Source: ansur, Unit: "m", Want: 1.870, Accuracy: 1e-9, Why: table,
			Compute: size(person.Given{Sex: person.Man, Percentile: 95}, person.Stature, 0)},
		Case{Group: "people", Name: "knee crease of the 5th percentile woman, barefoot",
			Checks: "The survey is read right.", Source: ansur, Unit: "m", Want: 0.350, Accuracy: 1e-9,
			Why:     table,
			Compute: size(person.Given{Sex: person.Woman, Percentile: 5}, person.KneeCrease, person.Shoe)},
		Case{Group: "people", Name: "weight of a boy of 6", Checks: "The growth charts are read right.",
			Source: cdc, Unit: "kg", Want: 20.68, Accuracy: 1e-9, Why: table,
			Compute: size(person.Given{Sex: person.Man, Age: 6}, person.Mass, 0)},
		Case{Group: "people", Name: "stature of a girl of 8", Checks: "The growth charts are read right.",
			Source: cdc, Unit: "m", Want: 1.276, Accuracy: 1e-9, Why: table,
			Compute: size(person.Given{Sex: person.Woman, Age: 8}, person.Stature, 0)},
	)
}
