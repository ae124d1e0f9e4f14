package piece

import (
	"cmp"
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// A Carry moves the seat frame against the rocker frame, rigidly: a turn about a point, then a move.
type Carry struct {
	Turn  float64 // rad, + back
	About r2.Vec  // m
	Move  r2.Vec  // m
}

// Point returns where a point of the seat frame lies, chair frame, m.
func (c Carry) Point(p r2.Vec) r2.Vec { return r2.Add(r2.Rotate(p, c.Turn, c.About), c.Move) }

// Body returns a body of the seat frame, in the chair frame.
func (c Carry) Body(b body.Body) body.Body { return b.Turned(c.Turn, c.About).Moved(c.Move) }

// then returns the carry by c and after it by next.
func (c Carry) then(next Carry) Carry {
	return Carry{Turn: c.Turn + next.Turn, About: c.About, Move: r2.Sub(next.Point(r2.Add(c.About, c.Move)), c.About)}
}

// Carry returns how the seat frame lies on the rockers: as drawn, or with legs cut, and
// slid forward along the top edge at the low point.
func (d Design) Carry(edge rocker.Profile) Carry { return d.cut(edge).then(d.slid(edge)) }

// slid returns the seat frame slid forward by Seat.Slide: along a straight top, about the arc's centre on a
// concentric one, and on a tapered one about that of the circle that the top edge follows at the low point.
func (d Design) slid(edge rocker.Profile) Carry {
	slide := d.Seat.Slide
	if slide == 0 {
		return Carry{}
	}
	i, within := edge.Find(0)
	b := edge.Bearing(i)
	depth := d.Rocker.DepthOr()
	if d.Rocker.Top == Straight || b.Radius <= depth {
		return Carry{Move: r2.Vec{X: slide}}
	}
	u, _ := rocker.Down(within)
	top := b.Radius - depth
	if d.Rocker.Top == Taper {
		bend := d.Rocker.topBend(edge, b.Radius)
		if math.Abs(bend*slide) < 1e-9 { // as good as straight
			return Carry{Move: r2.Vec{X: slide}}
		}
		top = 1 / bend
	}
	centre := r2.Sub(b.Contact(within), r2.Scale(depth+top, u))
	return Carry{Turn: slide / top, About: centre}
}

// topBend returns the curvature (1/m) of a tapered top edge over the low point, + hollow, the mean of its sides. A
// depth D + a·s² over a radius R turns the top by 2a/(1 − D/R) for each length of edge more than the edge turns,
// and it is 1 − D/R as long, so the curvature is (1/R + 2a/(1 − D/R))/(1 − D/R).
func (r Rocker) topBend(edge rocker.Profile, radius float64) float64 {
	depth := r.DepthOr()
	nose, tail := edge.Reach()
	bend := 0.0
	for _, side := range []struct{ tip, reach float64 }{{r.NoseDepth, nose}, {r.TailDepth, tail}} {
		if side.reach > 0 {
			bend += (cmp.Or(side.tip, depth) - depth) / (side.reach * side.reach) // half of 2a
		}
	}
	short := 1 - depth/radius
	return (1/radius + bend/short) / short
}

// cut returns the seat frame let down by the cuts at the legs: turned about the front foot, which stands on the
// rocker's top edge where the legs are drawn; where none are, the front ones are taken to stand under the front
// edge of the seat and the rear ones under where back and seat meet.
func (d Design) cut(edge rocker.Profile) Carry {
	front, rear := d.Seat.FrontCut, d.Seat.RearCut
	if front == 0 && rear == 0 || !d.Seat.SlopeKnown() {
		return Carry{}
	}
	foot := d.Foot(Front, edge)
	run := foot.X - d.Foot(Rear, edge).X
	return Carry{Turn: math.Atan((rear - front) / run), About: foot, Move: r2.Vec{Y: -front}}
}
