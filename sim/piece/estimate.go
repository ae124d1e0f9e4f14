package piece

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// Usual thicknesses by which one weight is spread, m. They are our judgement of a
// sculpted chair after shaping; only their proportions matter.
const (
	slabThick   = 0.034 // seat, hollowed from thicker stock
	panelThick  = 0.015 // back, as if its braces were one panel
	armWide     = 0.060 // an arm
	armThick    = 0.030 //
	legThick    = 0.040 // a leg, square
	ArmReach    = 0.8   // arms, as part of the seat's depth
	usualTimber = 700.0 // kg/m³; cancels out
)

// Estimate spreads the weight of the piece over seat, back, arms, legs and rockers, by
// slab, panel and rod of the drawn sizes, all of one wood.
func (d Design) Estimate(edge rocker.Profile) (Masses, error) {
	if !d.Seat.SlopeKnown() {
		return Masses{}, &KeyError{Key: "seat", Reason: "the weight is spread over the drawn seat, and none is drawn", Example: "[seat] with front, rear, depth, width and behind_low_point"}
	}
	s := d.Seat
	if s.Width <= 0 {
		return Masses{}, &KeyError{Key: "seat.width", Reason: "the weight is spread over the drawn seat, so its width is needed", Example: "width = 20"}
	}
	m := Masses{Estimated: true}
	meet, front := s.Meet(), s.FrontEdge()
	m.Seat = append(m.Seat, slab(meet, front, s.Width, slabThick))
	if top, known := d.TopOfBack(); known {
		m.Seat = append(m.Seat, slab(meet, top, s.Width, panelThick))
	}
	if d.Arms.Height > 0 {
		up := r2.Vec{Y: d.Arms.Height}
		arms, _ := d.ArmsOr()
		reach := r2.Scale(arms.Length/s.Depth, r2.Sub(front, meet))
		arm := slab(r2.Add(meet, up), r2.Add(r2.Add(meet, up), reach), (arms.Width+arms.RearWidth)/2, armThick)
		m.Seat = append(m.Seat, arm.Scaled(2))
	}
	depth, _ := d.Rocker.Size()
	var legs body.Body
	for _, foot := range []r2.Vec{meet, front} {
		floor := edge.Rise(foot.X)
		legs = body.Join(legs, slab(r2.Vec{X: foot.X, Y: min(foot.Y, floor+depth)}, foot, legThick, legThick).Scaled(2))
	}
	m.Seat = append(m.Seat, legs)
	rockers, err := d.Rocker.wood(edge, usualTimber)
	if err != nil {
		return Masses{}, err
	}
	m.Rockers = []body.Body{rockers}
	m.scale(d.Piece.Mass)
	return m, nil
}

// slab returns the mass of a straight piece of timber from a to b.
func slab(a, b r2.Vec, width, thick float64) body.Body {
	along := r2.Sub(b, a)
	length := r2.Norm(along)
	return body.Box(usualTimber*length*width*thick, length, thick).
		Turned(math.Atan2(along.Y, along.X), r2.Vec{}).
		Moved(r2.Scale(0.5, r2.Add(a, b)))
}

// scale makes them weigh mass altogether, in the same proportions.
func (m *Masses) scale(mass float64) {
	total := body.Join(m.Seat...).Mass + body.Join(m.Rockers...).Mass
	for _, bodies := range [][]body.Body{m.Seat, m.Rockers} {
		for i, b := range bodies {
			bodies[i] = b.Scaled(mass / total)
		}
	}
}

// Weighted returns a copy in which the i-th body, those of the seat first, weighs factor times as
// much, and all together mass (kg) again.
func (m Masses) Weighted(i int, factor, mass float64) Masses {
	c := Masses{Estimated: true, Seat: slices.Clone(m.Seat), Rockers: slices.Clone(m.Rockers)}
	if i < len(c.Seat) {
		c.Seat[i] = c.Seat[i].Scaled(factor)
	} else {
		c.Rockers[i-len(c.Seat)] = c.Rockers[i-len(c.Seat)].Scaled(factor)
	}
	c.scale(mass)
	return c
}
