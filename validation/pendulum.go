package validation

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/mathext"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/sim"
)

// hung returns a body on a rocker of one point, its centre of mass below by depth (m),
// with its radius of gyration (m): a pendulum.
func hung(f Fault, depth, gyration float64) sim.Rig {
	return f.on(sim.Rig{Profile: chain(0), Body: body.Body{Mass: 3, Centre: r2.Vec{Y: -depth}, Inertia: 3 * gyration * gyration}})
}

// pendulums are bodies that swing on a corner.
func pendulums(f Fault) []Case {
	const length, depth, gyration = 0.8, 0.45, 0.3
	var cases []Case
	for _, p := range []struct {
		name, of, source      string
		depth, gyration, want float64
	}{
		{"simple", "a point mass below a corner", "2π√(l/g), any textbook of mechanics", length, 0, 2 * math.Pi * math.Sqrt(length/sim.Gravity)},
		{"uniform rod", "a rod hung by its end", "2π√(2l/3g), any textbook of mechanics: inertia ml²/3 about the end",
			length / 2, length / math.Sqrt(12), 2 * math.Pi * math.Sqrt(2*length/3/sim.Gravity)},
		{"physical", "any body below a corner", "2π√((k² + d²)/(gd)), any textbook of mechanics",
			depth, gyration, 2 * math.Pi * math.Sqrt((gyration*gyration+depth*depth)/(sim.Gravity*depth))},
	} {
		cases = append(cases, Case{
			Group: "pendulum", Name: p.name + ", small", Checks: "The small swing of " + p.of + ".", Source: p.source, Unit: "s", Want: p.want,
			Accuracy: twelveDigits, Why: whyClosed,
			Compute: func() (float64, error) { return small(hung(f, p.depth, p.gyration)) },
		})
	}
	cases = append(cases, Case{
		Group: "pendulum", Name: "physical, from 100 degrees", Checks: "The exact period of any body below a corner.",
		Source: "4√((k² + d²)/(gd))·K(m), m = sin²(A/2), any textbook of mechanics; K by gonum/mathext", Unit: "s",
		Want:     4 * math.Sqrt((gyration*gyration+depth*depth)/(sim.Gravity*depth)) * mathext.CompleteK(math.Pow(math.Sin(50*math.Pi/180), 2)),
		Accuracy: tenDigits, Why: whyQuadrature,
		Compute: func() (float64, error) { return large(hung(f, depth, gyration), 100*math.Pi/180) },
	})
	for _, amplitude := range []float64{5, 30, 60, 90, 120, 150} {
		release := amplitude * math.Pi / 180
		half := math.Sin(release / 2)
		cases = append(cases, Case{
			Group: "pendulum", Name: fmt.Sprintf("simple, from %g degrees", amplitude),
			Checks: "The exact period of a swing of any size.",
			Source: "4√(l/g)·K(m), m = sin²(A/2): complete elliptic integral of the first kind, as in any textbook of mechanics; K by gonum/mathext",
			Unit:   "s", Want: 4 * math.Sqrt(length/sim.Gravity) * mathext.CompleteK(half*half), Accuracy: tenDigits, Why: whyQuadrature,
			Compute: func() (float64, error) { return large(hung(f, length, 0), release) },
		})
	}
	return cases
}
