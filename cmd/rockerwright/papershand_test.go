package main

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"
)

// A handPiece is a design by plane geometry alone, out of its file as typed, m and rad; + is ahead and back.
type handPiece struct {
	arcs                       [][2]float64 // radius and length, from the nose
	nose, tail                 float64      // along the floor edge from the low point
	depth, noseDeep, tailDeep  float64
	straight                   bool // the top edge
	front, rear, seat, behind  float64
	slide, frontCut, rearCut   float64
	thick                      float64 // of the seat
	legs                       [2]handLeg
	weights                    [2]float64 // of the piece, of who sits; the ratio counts
	empty, sits                r2.Vec     // where they are, as drawn
	seated, hasSeat, legsDrawn bool
}

type handLeg struct{ at, rake, splay, side float64 }

// edge returns the point of the floor edge so far along it ahead of the low point, and how far it has turned up
// there: along an arc of radius r the heading grows by way/r.
func (h handPiece) edge(way float64) (p r2.Vec, heading float64) {
	left, from, sign := math.Abs(way), h.nose, math.Copysign(1, way)
	for left > 0 {
		begin, k := 0.0, 0
		for k < len(h.arcs)-1 && (begin+h.arcs[k][1] < from || sign < 0 && begin+h.arcs[k][1] == from) {
			begin += h.arcs[k][1]
			k++
		}
		run, r := min(left, from-begin), h.arcs[k][0]
		if sign < 0 {
			run = min(left, begin+h.arcs[k][1]-from)
		}
		if run <= 0 { // beyond a tip the last arc goes on
			run = left
		}
		next := heading + sign*run/r
		p = r2.Add(p, r2.Scale(r, r2.Vec{X: math.Sin(next) - math.Sin(heading), Y: math.Cos(heading) - math.Cos(next)}))
		heading, from, left = next, from-sign*run, left-run
	}
	return p, heading
}

// top returns the point of the top edge over that of the floor edge: square to it by the depth there, which grows
// or shrinks to the tips by the square of the way; of a straight top plumb over it.
func (h handPiece) top(way float64) r2.Vec {
	p, heading := h.edge(way)
	if h.straight {
		return r2.Vec{X: p.X, Y: h.depth}
	}
	deep := h.depth + (h.noseDeep-h.depth)*way*way/h.nose/h.nose
	if way < 0 {
		deep = h.depth + (h.tailDeep-h.depth)*way*way/h.tail/h.tail
	}
	return r2.Add(p, r2.Scale(deep, r2.Vec{X: -math.Sin(heading), Y: math.Cos(heading)}))
}

// between halves a range in which f changes its sign, to where it does.
func between(low, high float64, f func(x float64) float64) float64 {
	for range 100 {
		if middle := (low + high) / 2; f(low)*f(middle) > 0 {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}

// comesDown returns where a line from a point, so far out of plumb with its lower end ahead, meets the top edge, and
// the direction of that edge there.
func (h handPiece) comesDown(from r2.Vec, rake float64) (foot, along r2.Vec) {
	down := r2.Vec{X: math.Sin(rake), Y: -math.Cos(rake)}
	way := between(-h.tail, h.nose, func(way float64) float64 { return r2.Cross(r2.Sub(h.top(way), from), down) })
	const near = 1e-5
	return h.top(way), r2.Unit(r2.Sub(h.top(way+near), h.top(way-near)))
}

func (h handPiece) meet() r2.Vec { return r2.Vec{X: -h.behind, Y: h.rear} }

// fall is that of the seat as drawn.
func (h handPiece) fall() float64 { return math.Asin((h.front - h.rear) / h.seat) }

// carried returns where a point of the seat comes to lie, and by how much the seat turns back: let down at the cut
// legs, about the front foot, and slid along the top edge about the centre of its bend over the low point.
func (h handPiece) carried(p r2.Vec) (r2.Vec, float64) {
	turn := 0.0
	if h.frontCut != 0 || h.rearCut != 0 {
		front, _ := h.comesDown(r2.Vec{X: h.legs[0].at, Y: 1}, 0)
		turn = math.Atan((h.rearCut - h.frontCut) / (front.X - h.legs[1].at))
		p = r2.Add(r2.Rotate(p, turn, front), r2.Vec{Y: -h.frontCut})
	}
	if h.straight {
		return r2.Add(p, r2.Vec{X: h.slide}), turn
	}
	const near = 1e-3 // m: short beside any radius, long beside rounding
	a, b := r2.Sub(h.top(near), h.top(0)), r2.Sub(h.top(0), h.top(-near))
	bend := math.Atan2(r2.Cross(b, a), r2.Dot(b, a)) / ((r2.Norm(a) + r2.Norm(b)) / 2)
	return r2.Rotate(p, h.slide*bend, r2.Vec{Y: h.depth + 1/bend}), turn + h.slide*bend
}

// leg returns the length of a leg by its longest edge, from its foot to the top of the seat: the line that is drawn
// enters the underside of the seat, is carried with it, and comes down on the top edge; its foot is out of square
// along that edge by the side of the leg for each part of its lean, and so across it.
func (h handPiece) leg(l handLeg) float64 {
	drawn, _ := h.comesDown(r2.Vec{X: l.at, Y: 1}, 0)
	slope, rake := math.Tan(h.fall()), math.Tan(l.rake)
	under := h.rear + slope*(drawn.X+h.behind) - h.thick/math.Cos(h.fall())
	up := (under - drawn.Y) / (1 + slope*rake)
	enters, turn := h.carried(r2.Add(drawn, r2.Vec{X: -up * rake, Y: up}))
	foot, along := h.comesDown(enters, l.rake+turn)
	lean := r2.Sub(enters, foot)
	aside := math.Tan(l.splay) * lean.Y
	square := r2.Dot(lean, r2.Vec{X: -along.Y, Y: along.X})
	out := (math.Abs(r2.Dot(lean, along)) + math.Abs(aside)) / square
	return math.Hypot(r2.Norm(lean), aside) + h.thick + l.side*out/2
}

// stands returns how far the seat falls back on the level of the low point, put together.
func (h handPiece) stands() float64 {
	_, turn := h.carried(r2.Vec{})
	return h.fall() + turn
}

// touches returns how far ahead of the low point the floor edge touches at rest: where the balance point is plumb over
// it, that is, on its normal.
func (h handPiece) touches(seated bool) float64 {
	balance, _ := h.carried(h.empty)
	if seated {
		who, _ := h.carried(h.sits)
		balance = r2.Scale(1/(h.weights[0]+h.weights[1]), r2.Add(r2.Scale(h.weights[0], balance), r2.Scale(h.weights[1], who)))
	}
	return between(-h.tail, h.nose, func(way float64) float64 {
		p, heading := h.edge(way)
		return r2.Dot(r2.Sub(balance, p), r2.Vec{X: math.Cos(heading), Y: math.Sin(heading)})
	})
}

// rests returns how far the seat falls back at rest.
func (h handPiece) rests(seated bool) float64 {
	_, heading := h.edge(h.touches(seated))
	return h.stands() - heading
}

// radiusAt returns the radius of the arc so far ahead of the low point.
func (h handPiece) radiusAt(way float64) float64 {
	end := 0.0 // from the nose
	for _, arc := range h.arcs {
		if end += arc[1]; h.nose-way < end {
			return arc[0]
		}
	}
	return h.arcs[len(h.arcs)-1][0]
}
