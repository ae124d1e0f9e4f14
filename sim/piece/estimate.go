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
	armReach    = 0.8   // arms, as part of the seat's depth
	usualTimber = 700.0 // kg/m³; cancels out
)

// estimate spreads the weight of the piece over seat, back, arms, legs and rockers, by
// slab, panel and rod of the drawn sizes, all of one wood.
func (d Design) estimate(edge rocker.Profile) (heap, error) {
	if !d.Seat.level() {
		return heap{}, &KeyError{Key: "seat", Reason: "the weight is spread over the drawn seat, and none is drawn", Example: "[seat] with front, rear, depth, width and behind_low_point"}
	}
	s := d.Seat
	if s.Width <= 0 {
		return heap{}, &KeyError{Key: "seat.width", Reason: "the weight is spread over the drawn seat, so its width is needed", Example: "width = 20"}
	}
	h := heap{estimated: true}
	meet, front := s.Meet(), s.FrontEdge()
	h.seat = append(h.seat, slab(meet, front, s.Width, slabThick))
	if top, known := d.TopOfBack(); known {
		h.seat = append(h.seat, slab(meet, top, s.Width, panelThick))
	}
	if d.Arms.Height > 0 {
		up := r2.Vec{Y: d.Arms.Height}
		arms, _ := d.ArmsOr()
		reach := r2.Scale(arms.Length/s.Depth, r2.Sub(front, meet))
		arm := slab(r2.Add(meet, up), r2.Add(r2.Add(meet, up), reach), (arms.Width+arms.RearWidth)/2, armThick)
		h.seat = append(h.seat, arm.Scaled(2))
	}
	depth, _ := d.Rocker.size()
	var legs body.Body
	for _, foot := range []r2.Vec{meet, front} {
		floor := edge.Rise(foot.X)
		legs = body.Join(legs, slab(r2.Vec{X: foot.X, Y: min(foot.Y, floor+depth)}, foot, legThick, legThick).Scaled(2))
	}
	h.seat = append(h.seat, legs)
	rockers, err := d.Rocker.wood(edge, usualTimber)
	if err != nil {
		return heap{}, err
	}
	h.rockers = []body.Body{rockers}
	h.scale(d.Piece.Mass)
	return h, nil
}

// slab returns the mass of a straight piece of timber from a to b.
func slab(a, b r2.Vec, width, thick float64) body.Body {
	along := r2.Sub(b, a)
	length := r2.Norm(along)
	return body.Box(usualTimber*length*width*thick, length, thick).
		Turned(math.Atan2(along.Y, along.X), r2.Vec{}).
		Moved(r2.Scale(0.5, r2.Add(a, b)))
}

// scale makes the heap weigh mass altogether, in the same proportions.
func (h *heap) scale(mass float64) {
	total := body.Join(h.seat...).Mass + body.Join(h.rockers...).Mass
	for _, bodies := range [][]body.Body{h.seat, h.rockers} {
		for i, b := range bodies {
			bodies[i] = b.Scaled(mass / total)
		}
	}
}

// weighted returns a copy of the heap in which the i-th body weighs factor times as
// much, and all together mass again.
func (h heap) weighted(i int, factor, mass float64) heap {
	c := heap{estimated: true, seat: slices.Clone(h.seat), rockers: slices.Clone(h.rockers)}
	if i < len(c.seat) {
		c.seat[i] = c.seat[i].Scaled(factor)
	} else {
		c.rockers[i-len(c.seat)] = c.rockers[i-len(c.seat)].Scaled(factor)
	}
	c.scale(mass)
	return c
}
