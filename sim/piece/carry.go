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
// the arc's centre; on a straight one it moves along.
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
	centre := r2.Sub(b.Contact(within), r2.Scale(b.Radius, u))
	return carry{turn: slide / (b.Radius - depth), about: centre}
}

// cut returns the seat frame let down by the cuts at the legs. The seat turns about the
// front foot, which stands on the rocker's top edge under the front edge of the seat; the
// rear one stands under where back and seat meet.
func (d Design) cut(edge rocker.Profile) carry {
	front, rear := d.Seat.FrontCut, d.Seat.RearCut
	if front == 0 && rear == 0 || !d.Seat.level() {
		return carry{}
	}
	depth, _ := d.Rocker.size()
	foot := d.Seat.FrontEdge()
	run := foot.X - d.Seat.Meet().X
	foot.Y = edge.Rise(foot.X) + depth
	return carry{turn: math.Atan((rear - front) / run), about: foot, move: r2.Vec{Y: -front}}
}
