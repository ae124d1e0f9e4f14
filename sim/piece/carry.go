package piece

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// A carry moves the seat frame against the rocker frame, rigidly: a turn about a
// point, then a move.
type carry struct {
	turn  float64 // + back
	about r2.Vec
	move  r2.Vec
}

func (c carry) point(p r2.Vec) r2.Vec {
	return r2.Add(r2.Rotate(p, c.turn, c.about), c.move)
}

func (c carry) body(b body.Body) body.Body {
	return b.Turned(c.turn, c.about).Moved(c.move)
}

// then returns the carry by c and after it by next.
func (c carry) then(next carry) carry {
	return carry{turn: c.turn + next.turn, about: c.about, move: r2.Sub(next.point(r2.Add(c.about, c.move)), c.about)}
}

// carry returns how the seat frame lies on the rockers: as drawn, or with legs cut, and
// slid forward along the top edge at the low point.
func (d Design) carry(edge rocker.Profile) carry {
	return d.cut(edge).then(d.slid(edge))
}

// slid returns the seat frame slid forward by Seat.Slide: on a concentric top it turns about
// the arc's centre; on a straight one it moves along; on a tapered one it turns about the
// centre of the circle that the top edge follows at the low point.
func (d Design) slid(edge rocker.Profile) carry {
	slide := d.Seat.Slide
	if slide == 0 {
		return carry{}
	}
	i, within := edge.Find(0)
	b := edge.Bearing(i)
	depth, _ := d.Rocker.size()
	if d.Rocker.Top == Straight || b.Radius <= depth {
		return carry{move: r2.Vec{X: slide}}
	}
	u, _ := rocker.Down(within)
	top := b.Radius - depth
	if d.Rocker.Top == Taper {
		bend := d.Rocker.topBend(edge, b.Radius)
		if math.Abs(bend*slide) < 1e-9 { // as good as straight
			return carry{move: r2.Vec{X: slide}}
		}
		top = 1 / bend
	}
	centre := r2.Sub(b.Contact(within), r2.Scale(depth+top, u))
	return carry{turn: slide / top, about: centre}
}

// topBend returns the curvature (1/m) of a tapered top edge over the low point, + hollow, the
// mean of its two sides. A depth D + a·s² over an edge of radius R turns the top by
// 2a/(1 − D/R) for each length of edge more than the edge turns, and the top is 1 − D/R as
// long, so the curvature is (1/R + 2a/(1 − D/R))/(1 − D/R).
func (r Rocker) topBend(edge rocker.Profile, radius float64) float64 {
	depth, _ := r.size()
	nose, tail := edge.Reach()
	bend := 0.0
	for _, side := range []struct{ tip, reach float64 }{{r.NoseDepth, nose}, {r.TailDepth, tail}} {
		if side.reach > 0 {
			bend += (or(side.tip, depth) - depth) / (side.reach * side.reach) // half of 2a
		}
	}
	short := 1 - depth/radius
	return (1/radius + bend/short) / short
}

// cut returns the seat frame let down by the cuts at the legs. The seat turns about the
// front foot, which stands on the rocker's top edge where the legs are drawn; where none
// are, the front ones are taken to stand under the front edge of the seat and the rear ones
// under where back and seat meet.
func (d Design) cut(edge rocker.Profile) carry {
	front, rear := d.Seat.FrontCut, d.Seat.RearCut
	if front == 0 && rear == 0 || !d.Seat.level() {
		return carry{}
	}
	foot := d.foot(Front, edge)
	run := foot.X - d.foot(Rear, edge).X
	return carry{turn: math.Atan((rear - front) / run), about: foot, move: r2.Vec{Y: -front}}
}
