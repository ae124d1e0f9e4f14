package bench

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// A Sweep is one stretch of the floor edge as a trammel draws it: an arm swung about a pivot,
// or a straight line. Points are measured from the square corner of the pattern.
type Sweep struct {
	Radius float64 // of the floor edge as drawn, m: below zero in a hollow, zero of a line
	Pivot  r2.Vec  // of a line nothing, m

	// From pivot to pencil, m: for the floor edge, for the lower edge of the wood and for
	// the top edge, which is zero where the top is not concentric.
	Floor, Wood, Top float64

	// Where it begins and ends on the floor edge, m. Between two arcs without a corner this is where they touch, on
	// the line of both pivots, and there wood and top change over too.
	From, To r2.Vec
}

// Trammel returns the stretches of the floor edge from the nose to the tail, and the square corner in the chair
// frame, m: on the floor line as drawn, plumb under the hindmost point of the wood, so that x runs forward and y up
// from it. The error is an [*OutlineError].
func (r Rocker) Trammel() (sweeps []Sweep, corner r2.Vec, err error) {
	outline, err := r.Outline()
	if err != nil {
		return nil, r2.Vec{}, err
	}
	h, _, _ := r.Edge.Support(0)
	corner = r2.Vec{X: outline.Bounds().Min.X, Y: -h}
	for _, s := range r.Edge.Drawn() {
		if s.Length == 0 {
			continue
		}
		sweep := Sweep{Radius: s.Radius, From: r2.Sub(s.Start, corner), To: r2.Sub(s.End, corner)}
		if s.Radius != 0 {
			sweep.Pivot = r2.Sub(inside(s.Start, s.From, s.Radius), corner)
			sweep.Floor = math.Abs(s.Radius)
			sweep.Wood = math.Abs(s.Radius - r.Sole)
			if r.concentric() {
				sweep.Top = math.Abs(s.Radius - r.Depth)
			}
		}
		sweeps = append(sweeps, sweep)
	}
	return sweeps, corner, nil
}

// An Arm is the length of a trammel from its pivot to a round cutter, m: to the side of the
// cutter near the pivot, to its middle, and to the far side.
type Arm struct{ Inside, Middle, Outside float64 }

// WoodArm returns the arm that leaves the lower edge of the wood with a cutter of the given diameter (m) outside
// the wood: its inside makes the edge, but in a hollow, where the pivot is below, its outside. An Inside below zero
// is a cutter too large to swing. The zero Arm is that of a line.
func (s Sweep) WoodArm(cutter float64) Arm { return arm(s.Wood, cutter, s.Radius > 0) }

// TopArm returns the arm that leaves the top edge: the zero Arm for a line and a top that is not concentric.
func (s Sweep) TopArm(cutter float64) Arm { return arm(s.Top, cutter, s.Radius < 0) }

// arm returns the arm to a cutter beyond the edge or short of it.
func arm(edge, cutter float64, beyond bool) Arm {
	switch {
	case edge == 0:
		return Arm{}
	case beyond:
		return Arm{edge, edge + cutter/2, edge + cutter}
	}
	return Arm{edge - cutter, edge - cutter/2, edge}
}
