package validation

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/rocker/bench"
	"rockerwright/sim/readings"
	"rockerwright/sim/trial"
)

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
