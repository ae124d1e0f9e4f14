package validation

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/rocker/bench"
	"rockerwright/sim/readings"
	"rockerwright/sim/trial"
)

// timber are woods and beams.
func timber() []Case {
	var cases []Case
	for _, w := range []struct {
		name    string
		gravity float64
	}{{"white ash", 0.60}, {"black walnut", 0.55}, {"sugar maple", 0.63}, {"black cherry", 0.50}} {
		cases = append(cases, Case{Group: "wood", Name: "density of " + w.name, Checks: "Wood and its water at 12 % moisture.",
			Source: fmt.Sprintf("USDA Wood Handbook, FPL-GTR-190 (2010), Table 5-3a: specific gravity %.2f, times 1.12",
				w.gravity),
			Unit: "kg/m3", Want: 1120 * w.gravity, Tolerance: 0.5, Why: "the table is in whole kg/m3",
			Compute: func() (float64, error) { found, err := body.FindWood(w.name); return found.Density, err }})
	}
	const force, length, modulus, wide, thick = 200.0, 0.6, 12e9, 0.03, 0.01
	second := wide * thick * thick * thick / 12
	bend := func(held body.Held, at float64) (down, stress float64) {
		bar := body.Beam{Length: length, Modulus: modulus, Second: body.SecondMoment(1, wide, thick), Half: thick / 2, Held: held}
		return bar.Bend(force, at)
	}
	const book = "any textbook of strength of materials"
	beam := func(name, formula, unit string, want float64, compute func() float64) {
		cases = append(cases, Case{Group: "beam", Name: name, Checks: "A bar that bends under one load.",
			Source: formula + ", " + book, Unit: unit, Want: want, Accuracy: twelveDigits, Why: whyClosed,
			Compute: func() (float64, error) { return compute(), nil }})
	}
	beam("on two ends, loaded in the middle: deflection", "F·L³/(48·E·I)", "m", force*length*length*length/(48*modulus*second),
		func() float64 { y, _ := bend(body.BothEnds, length/2); return y })
	beam("on two ends, loaded in the middle: stress", "(F·L/4)·6/(b·h²)", "Pa", force*length/4*6/(wide*thick*thick),
		func() float64 { _, s := bend(body.BothEnds, length/2); return s })
	beam("fast at one end, loaded at the other: deflection", "F·L³/(3·E·I)", "m", force*length*length*length/(3*modulus*second),
		func() float64 { y, _ := bend(body.OneEnd, length); return y })
	beam("fast at one end, loaded at the other: stress", "F·L·6/(b·h²)", "Pa", force*length*6/(wide*thick*thick),
		func() float64 { _, s := bend(body.OneEnd, length); return s })
	return cases
}

// reads are readings of a finished piece.
func reads(f Fault) []Case {
	scales := func(pick func(body.Body) float64) func() (float64, error) {
		return func() (float64, error) {
			edge := chain(0.5, rocker.Flat(1))
			r := readings.Readings{Edge: edge, Front: 5, Rear: 7, Apart: 0.6, FrontMark: 0.3, Raised: 0.3, FrontRaised: 3, RearRaised: 9}
			if f.Swapped {
				r.Front, r.Rear = r.Rear, r.Front
			}
			result, err := r.Read()
			return pick(result.Body), err
		}
	}
	const source = "the textbook's two-scale formula by hand: 0.6·5/12 = 0.25 m ahead of the rear mark, (0.25 − " +
		"0.6·3/12)/tan 30° = 0.1·√3 m up"
	return []Case{
		{Group: "readings", Name: "two scales, fore and aft", Checks: "The balance point from two scales.",
			Source: source, Unit: "m", Want: -0.05, Accuracy: twelveDigits, Why: whyClosed,
			Compute: scales(func(b body.Body) float64 { return b.Centre.X })},
		{Group: "readings", Name: "two scales, one end raised", Checks: "Its height from the same, raised.",
			Source: source, Unit: "m", Want: 0.1 * math.Sqrt(3), Accuracy: twelveDigits, Why: whyClosed,
			Compute: scales(func(b body.Body) float64 { return b.Centre.Y })},
	}
}

// benches are what the bench needs.
func benches() []Case {
	const rake, splay = 14 * math.Pi / 180, 6 * math.Pi / 180
	foot := r2.Vec{X: math.Tan(rake), Y: math.Tan(splay)}
	// n strips of second moment I bent to κ and glued to one bar of n³·I: E·n³·I·Δκ = n·E·I·κ.
	strips := 7.0
	return []Case{
		{Group: "bench", Name: "sagitta", Checks: "The rise of a rocker over half its chord.",
			Source: "R − √(R² − c²), any table of circular segments", Unit: "m", Want: 1.0668 - math.Sqrt(1.0668*1.0668-0.2032*0.2032),
			Accuracy: twelveDigits, Why: whyClosed,
			Compute: func() (float64, error) { return rocker.Single(1.0668, 0.5, 0.5).Rise(0.2032), nil }},
		{Group: "bench", Name: "springback of seven strips",
			Checks: "How much of its bend a glued stack loses.",
			Source: "derived here, by beam theory beside the case: n·E·I/(E·n³·I)", Unit: "", Want: strips / (strips * strips * strips),
			Accuracy: twelveDigits, Why: whyClosed,
			Compute: func() (float64, error) { return bench.Springback(7), nil }},
		{Group: "bench", Name: "resultant of rake and splay", Checks: "The lean of a compound leg.",
			Source: "derived here, by vectors: the angle of (tan rake, tan splay, 1) from plumb", Unit: "rad",
			Want: math.Acos(1 / math.Sqrt(1+r2.Norm2(foot))), Accuracy: tenDigits,
			Why:     "an arc cosine of a small angle",
			Compute: func() (float64, error) { return bench.Resultant(rake, splay), nil }},
		{Group: "bench", Name: "sightline of rake and splay", Checks: "The direction in which it leans.",
			Source: "derived here, by vectors: the direction of (tan rake, tan splay)",
			Unit:   "rad", Want: math.Acos(foot.X / r2.Norm(foot)),
			Accuracy: tenDigits, Why: "an arc cosine of a small angle",
			Compute: func() (float64, error) { return bench.Sightline(rake, splay), nil }},
		// On the form a stack of n strips bent to κ holds n·E·I·κ, and off it n³·E·I·(κ − κ′) balances that: κ′ = κ·(1 − 1/n²).
		// Of a floor edge of 1.0668 m and a stack of 0.057 m the middle is at 1.0668 − 0.0285 m, so the form's inside is at
		// (1.0668 − 0.0285)·(1 − 1/49) − 0.0285 m.
		{Group: "bench", Name: "form of seven strips", Checks: "The radius of a form inside the curve.",
			Source: "derived here, by beam theory beside the case: the middle of the stack bends back by 1/n²",
			Unit:   "m", Want: (1.0668-0.0285)*(1-strips/(strips*strips*strips)) - 0.0285, Accuracy: twelveDigits,
			Why: whyClosed,
			Compute: func() (float64, error) {
				form, err := bench.FormFor(1.0668, 0.057, 0, bench.Springback(7))
				return form.ConvexForm, err
			}},
		{Group: "bench", Name: "radius of a hollow", Checks: "A coopered panel from its width and depth.",
			Source: "(c²/4 + h²)/2h, any handbook of circle formulas: a chord of 0.48 m and a rise of 0.08 m are a " +
				"circle of 0.4 m, by 0.24² + 0.32² = 0.4²",
			Unit: "m", Want: 0.4, Accuracy: twelveDigits, Why: whyClosed,
			Compute: func() (float64, error) { return bench.SagittaRadius(0.48, 0.08) }},
	}
}

// standards are the arithmetic of published tests, each with how far it is to be trusted.
func standards(f Fault) []Case {
	var cases []Case
	for _, row := range [][2]float64{{10, 0.1763}, {15, 0.2679}} {
		cases = append(cases, Case{Group: "standards", Name: fmt.Sprintf("friction on a slope of %.0f degrees", row[0]),
			Checks: "What keeps a piece from sliding on a test's slope.",
			Source: "slopes of EN 71-1 8.23.1 (10 degrees, read in the text) and others (15 degrees, from memory); " +
				"the value derived here, tan α, printed to four digits",
			Unit: "", Want: row[1], Tolerance: 5e-5, Why: whyPrinted,
			Compute: func() (float64, error) {
				rig := chair(f, row[0]*math.Pi/180)
				rig.Profile = f.single(1.6, 0.9, 0.9)
				return rig.Swing(rig.Balance(), 0).Friction, nil
			}})
	}
	for _, row := range [][2]float64{{0.400, 171.42}, {0.450, 157.135}, {0.500, 142.85}} {
		cases = append(cases, Case{Group: "standards", Name: fmt.Sprintf("rearward force at a seat of %.0f mm", 1000*row[0]),
			Checks: "The force of a seating test.",
			Source: "EN 1022, fixed back, 0.2857(1000 − H) N; from memory, unverified",
			Unit:   "N", Want: row[1], Accuracy: 1e-4, Why: "from memory", Memory: true,
			Compute: func() (float64, error) { return trial.RearForce(row[0]), nil }})
	}
	return cases
}
