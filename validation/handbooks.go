package validation

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/rocker/bench"
	"rockerwright/sim/readings"
	"rockerwright/sim/trial"
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
	seated := func(mass float64) (body.Body, error) {
		p, err := person.New(person.Given{Sex: person.Man, Sizes: person.Measures{person.Mass: mass}})
		seat := person.Seat{Depth: 0.45, Backed: true, Floor: -p.Sizes[person.KneeCrease]}
		return p.Whole(p.Pose(seat, person.Upright).Joints), err
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
			func() (float64, error) { p, err := seated(77); return p.Centre.X, err }},
		{"sitting upright, 140 kg, ahead of the buttocks", "The balance point of a seated man of 140 kg.",
			"UMTRI, Whole-body center of mass location in seated posture, abstract; one source",
			"m", 0.273, absolute(0.025, "people differ, and relaxed sitting is not upright"),
			func() (float64, error) { p, err := seated(140); return p.Centre.X, err }},
		{"sitting, inertia, mean of 66 men", "The inertia of a seated man.",
			"Santschi, DuBois and Omoto (1963); from memory", "kg m2", 7.52, recalled(0.2),
			func() (float64, error) { p, err := seated(75.6); return p.Inertia, err }},
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

// timber are woods and beams.
func timber() []Case {
	var woods []row
	for _, w := range []struct {
		name    string
		gravity float64
	}{{"white ash", 0.60}, {"black walnut", 0.55}, {"sugar maple", 0.63}, {"black cherry", 0.50}} {
		woods = append(woods, row{"density of " + w.name, "Wood and its water at 12 % moisture.",
			fmt.Sprintf("USDA Wood Handbook, FPL-GTR-190 (2010), Table 5-3a: specific gravity %.2f, times 1.12", w.gravity),
			"kg/m3", 1120 * w.gravity, absolute(0.5, "the table is in whole kg/m3"),
			func() (float64, error) { found, err := body.FindWood(w.name); return found.Density, err }})
	}
	const force, length, modulus, wide, thick = 200.0, 0.6, 12e9, 0.03, 0.01
	second := wide * thick * thick * thick / 12
	beam := func(name, formula, unit string, want float64, held body.Held, at float64, pick func(down, stress float64) float64) row {
		return row{name, "A bar that bends under one load.", formula + ", any textbook of strength of materials", unit, want, closed,
			func() (float64, error) {
				bar := body.Beam{Length: length, Modulus: modulus, Second: body.SecondMoment(1, wide, thick), Half: thick / 2, Held: held}
				return pick(bar.Bend(force, at)), nil
			}}
	}
	down, stress := func(down, _ float64) float64 { return down }, func(_, stress float64) float64 { return stress }
	return slices.Concat(group("wood", woods...), group("beam",
		beam("on two ends, loaded in the middle: deflection", "F·L³/(48·E·I)", "m",
			force*length*length*length/(48*modulus*second), body.BothEnds, length/2, down),
		beam("on two ends, loaded in the middle: stress", "(F·L/4)·6/(b·h²)", "Pa",
			force*length/4*6/(wide*thick*thick), body.BothEnds, length/2, stress),
		beam("fast at one end, loaded at the other: deflection", "F·L³/(3·E·I)", "m",
			force*length*length*length/(3*modulus*second), body.OneEnd, length, down),
		beam("fast at one end, loaded at the other: stress", "F·L·6/(b·h²)", "Pa",
			force*length*6/(wide*thick*thick), body.OneEnd, length, stress)))
}

// reads are readings of a finished piece.
func reads(f Fault) []Case {
	const source = "the textbook's two-scale formula by hand: 0.6·5/12 = 0.25 m ahead of the rear mark, (0.25 − " +
		"0.6·3/12)/tan 30° = 0.1·√3 m up"
	scales := func(name, checks string, want float64, pick func(body.Body) float64) row {
		return row{name, checks, source, "m", want, closed, func() (float64, error) {
			r := readings.Readings{Edge: chain(0.5, rocker.Flat(1)), Front: 5, Rear: 7, Apart: 0.6, FrontMark: 0.3,
				Raised: 0.3, FrontRaised: 3, RearRaised: 9}
			if f.Swapped {
				r.Front, r.Rear = r.Rear, r.Front
			}
			result, err := r.Read()
			return pick(result.Body), err
		}}
	}
	return group("readings",
		scales("two scales, fore and aft", "The balance point from two scales.", -0.05,
			func(b body.Body) float64 { return b.Centre.X }),
		scales("two scales, one end raised", "Its height from the same, raised.", 0.1*math.Sqrt(3),
			func(b body.Body) float64 { return b.Centre.Y }))
}

// benches are what the bench needs.
func benches() []Case {
	const rake, splay = 14 * math.Pi / 180, 6 * math.Pi / 180
	foot := r2.Vec{X: math.Tan(rake), Y: math.Tan(splay)}
	small := relative(1e-10, "an arc cosine of a small angle")
	// n strips of second moment I bent to κ and glued to one bar of n³·I: E·n³·I·Δκ = n·E·I·κ.
	strips := 7.0
	return group("bench", []row{
		{"sagitta", "The rise of a rocker over half its chord.", "R − √(R² − c²), any table of circular segments",
			"m", 1.0668 - math.Sqrt(1.0668*1.0668-0.2032*0.2032), closed,
			func() (float64, error) { return rocker.Single(1.0668, 0.5, 0.5).Rise(0.2032), nil }},
		{"springback of seven strips", "How much of its bend a glued stack loses.",
			"derived here, by beam theory beside the case: n·E·I/(E·n³·I)", "", strips / (strips * strips * strips), closed,
			func() (float64, error) { return bench.Springback(7), nil }},
		{"resultant of rake and splay", "The lean of a compound leg.",
			"derived here, by vectors: the angle of (tan rake, tan splay, 1) from plumb",
			"rad", math.Acos(1 / math.Sqrt(1+r2.Norm2(foot))), small,
			func() (float64, error) { return bench.Resultant(rake, splay), nil }},
		{"sightline of rake and splay", "The direction in which it leans.",
			"derived here, by vectors: the direction of (tan rake, tan splay)", "rad", math.Acos(foot.X / r2.Norm(foot)), small,
			func() (float64, error) { return bench.Sightline(rake, splay), nil }},
		// On the form a stack of n strips bent to κ holds n·E·I·κ, and off it n³·E·I·(κ − κ′) balances that: κ′ = κ·(1 − 1/n²).
		// Of a floor edge of 1.0668 m and a stack of 0.057 m the middle is at 1.0668 − 0.0285 m, so the form's inside is at
		// (1.0668 − 0.0285)·(1 − 1/49) − 0.0285 m.
		{"form of seven strips", "The radius of a form inside the curve.",
			"derived here, by beam theory beside the case: the middle of the stack bends back by 1/n²",
			"m", (1.0668-0.0285)*(1-strips/(strips*strips*strips)) - 0.0285, closed,
			func() (float64, error) {
				form, err := bench.FormFor(1.0668, 0.057, 0, bench.Springback(7))
				return form.ConvexForm, err
			}},
		{"radius of a hollow", "A coopered panel from its width and depth.",
			"(c²/4 + h²)/2h, any handbook of circle formulas: a chord of 0.48 m and a rise of 0.08 m are a " +
				"circle of 0.4 m, by 0.24² + 0.32² = 0.4²", "m", 0.4, closed,
			func() (float64, error) { return bench.SagittaRadius(0.48, 0.08) }},
	}...)
}

// standards are the arithmetic of published tests, each with how far it is to be trusted.
func standards(f Fault) []Case {
	var rows []row
	for _, known := range [][2]float64{{10, 0.1763}, {15, 0.2679}} {
		rows = append(rows, row{fmt.Sprintf("friction on a slope of %.0f degrees", known[0]),
			"What keeps a piece from sliding on a test's slope.",
			"slopes of EN 71-1 8.23.1 (10 degrees, read in the text) and others (15 degrees, from memory); " +
				"the value derived here, tan α, printed to four digits", "", known[1], absolute(5e-5, whyPrinted),
			func() (float64, error) {
				rig := chair(f, known[0]*math.Pi/180)
				rig.Profile = f.single(1.6, 0.9, 0.9)
				return rig.Swing(rig.Balance(), 0).Friction, nil
			}})
	}
	for _, known := range [][2]float64{{0.400, 171.42}, {0.450, 157.135}, {0.500, 142.85}} {
		rows = append(rows, row{fmt.Sprintf("rearward force at a seat of %.0f mm", 1000*known[0]), "The force of a seating test.",
			"EN 1022, fixed back, 0.2857(1000 − H) N; from memory, unverified", "N", known[1], recalled(1e-4),
			func() (float64, error) { return trial.RearForce(known[0]), nil }})
	}
	return group("standards", rows...)
}
