package validation

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/size"
)

// The chair of the static cases, m and kg: its centre of mass is behind and over the low point.
const (
	chairRadius, chairNose, chairTail = 1.05, 0.40, 0.50
	chairMass, chairBehind, chairHigh = 90.0, 0.03, 0.62
)

func chair(f Fault, slope float64) sim.Rig {
	sits := body.Body{Mass: chairMass, Centre: r2.Vec{X: -chairBehind, Y: chairHigh}, Inertia: 11}
	return f.on(sim.Rig{Profile: f.single(chairRadius, chairNose, chairTail), Body: sits, Floor: sim.Floor{Slope: slope}})
}

// centred is the chair with its centre of mass over the low point.
func centred(f Fault) sim.Rig {
	rig := chair(f, 0)
	rig.Body.Centre.X = 0
	return rig
}

// static is a case of what the balance of the chair says.
func static(f Fault, name, checks, source, unit string, want float64, pick func(sim.Balance) float64) row {
	return row{name, checks, source, unit, want, closed,
		func() (float64, error) { return pick(chair(f, 0).Balance()), nil }}
}

// rests are where a piece comes to rest.
func rests(f Fault) []Case {
	apart := math.Hypot(chairBehind, chairRadius-chairHigh)
	return group("rest",
		static(f, "off-centre", "The tilt at which the centre of mass hangs plumb under the arc's centre.",
			"derived here: the vector from the arc's centre to the centre of mass turns plumb, atan(x/(R − h))", "rad",
			math.Atan2(chairBehind, chairRadius-chairHigh), func(b sim.Balance) float64 { return b.Rest.Tilt }),
		static(f, "steadiness", "How far the arc's centre lies over the centre of mass.",
			"derived here: |G − C|, as for a ship's metacentre", "m", apart, func(b sim.Balance) float64 { return b.Steadiness }),
		static(f, "height", "How high the centre of mass is at rest.",
			"derived here: R − |G − C|", "m", chairRadius-apart, func(b sim.Balance) float64 { return b.Rest.Height }))
}

// tips are how near a piece is to going over its tail, about which it then turns like a rod about its foot.
func tips(f Fault) []Case {
	end := chairTail / chairRadius
	tip := r2.Vec{X: -chairRadius * math.Sin(end), Y: chairRadius * (1 - math.Cos(end))}
	ahead, over := -chairBehind-tip.X, chairHigh-tip.Y
	rest := chairRadius - math.Hypot(chairBehind, chairRadius-chairHigh)
	lift := math.Hypot(ahead, over) - rest
	return group("going over",
		static(f, "tilt", "The tilt at which the centre of mass stands plumb over the tail tip.",
			"derived here: atan2(Gx − Px, Gy − Py)", "rad", math.Atan2(ahead, over), func(b sim.Balance) float64 { return b.Back.Tip }),
		static(f, "lift", "How far the weight must be lifted to get there.",
			"derived here: |G − P| less the height at rest", "m", lift, func(b sim.Balance) float64 { return b.Back.Lift }),
		static(f, "work", "The work that takes.",
			"m·g·lift", "J", chairMass*sim.Gravity*lift, func(b sim.Balance) float64 { return b.Back.Work }))
}

// slopes are rests on a floor that rises to the front.
func slopes(f Fault) []Case {
	apart := math.Hypot(chairBehind, chairRadius-chairHigh)
	level := math.Atan2(chairBehind, chairRadius-chairHigh)
	var rows []row
	for _, degrees := range []float64{-8, 3, 8} {
		slope := degrees * math.Pi / 180
		rows = append(rows, row{fmt.Sprintf("off-centre, %g degrees", degrees), "The rest on a sloping floor, against the vertical.",
			"derived here: the centre of mass stands plumb over the contact, so |G − C| sin(θ − θ₀) = R sin α",
			"rad", level + math.Asin(chairRadius*math.Sin(slope)/apart), closed,
			func() (float64, error) { return chair(f, slope).Balance().Rest.Tilt, nil }})
	}
	for _, known := range [][2]float64{{10, 25.729}, {15, 40.319}} {
		degrees, want := known[0], known[1]
		rows = append(rows, row{fmt.Sprintf("R 1, d 0.4, %g degrees", degrees), "The same to the digits worked out by hand.",
			"derived here: asin(R sin α/d), worked by hand to five digits", "deg", want, relative(2e-5, whyPrinted),
			func() (float64, error) {
				about := body.Body{Mass: 80, Centre: r2.Vec{Y: 0.6}, Inertia: 80 * 0.35 * 0.35}
				rig := f.on(sim.Rig{Profile: f.single(1, 0.9, 0.9), Body: about, Floor: sim.Floor{Slope: degrees * math.Pi / 180}})
				return rig.Balance().Rest.Tilt * 180 / math.Pi, nil
			}})
	}
	return group("slope", rows...)
}

// sizings are radii that keep the feel: a piece with its balance point over the low point,
// H = 24 and then 25 1/2 in up, k = 11 in, on a radius of 42 in.
func sizings(f Fault) []Case {
	const inch, k, low, high, radius = 0.0254, 11.0, 24.0, 25.5, 42.0
	drawn := func(height float64) piece.Design {
		b := f.on(sim.Rig{Body: body.Body{Mass: 90, Centre: r2.Vec{Y: height * inch}, Inertia: 90 * k * k * inch * inch}}).Body
		edge := piece.Rocker{Radius: radius * inch * (1 + f.Radius), Nose: 17 * inch, Tail: 20 * inch}
		return piece.Design{Rocker: edge, Body: b}
	}
	kept := func(way size.Keep) func() (float64, error) {
		return func() (float64, error) {
			l, err := size.Like(drawn(low), drawn(high))
			return l.Kept[way].Exact / inch, err
		}
	}
	solved := relative(1e-10, "the radius is solved to its last digits")
	return group("sizing", []row{
		{"same time", "The radius that keeps the time when the balance point rises.",
			"derived here: (k² + H²)/(R − H) stays, R = H₂ + (k² + H₂²)(R₁ − H₁)/(k² + H₁²)",
			"in", high + (k*k+high*high)*(radius-low)/(k*k+low*low), solved, kept(size.SameTime)},
		{"same steadiness", "The radius that keeps the arc's centre as far above the balance point.",
			"derived here: R = R₁ + H₂ − H₁", "in", radius + high - low, solved, kept(size.SameSteadiness)},
		{"same proportion", "The radius that grows with the height of the balance point.",
			"derived here: R = R₁H₂/H₁", "in", radius * high / low, solved, kept(size.SameProportion)},
		{"time to radius", "The radius of a small rock that takes two seconds.",
			"derived here: 2π√((k² + H²)/(g(R − H))) solved for R",
			"in", low + (k*k+low*low)*math.Pi*math.Pi*inch/sim.Gravity, closed,
			func() (float64, error) {
				r, err := check.Balance(drawn(low))
				if err != nil {
					return 0, err
				}
				feel, _ := size.FeelOf(r)
				return feel.RadiusForPeriod(2) / inch, nil
			}},
	}...)
}
