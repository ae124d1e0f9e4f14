package plots

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/sim/check"
)

// A part is one line or area of the piece, in the chair frame.
type part struct {
	points []r2.Vec
	closed bool
	thick  bool
}

// partsOf returns the piece as it stands on its rockers, from the side: its members as lines, or the
// solids it is made of.
func partsOf(r check.Report) []part {
	var parts []part
	for _, m := range r.Design.Members(r.Edge) {
		parts = append(parts, part{points: m.Side(), closed: m.Outline != nil, thick: m.Thick > 0 && m.Outline == nil})
	}
	return parts
}

// rockerOf returns the outline of a rocker.
func rockerOf(r check.Report) []r2.Vec { return r.Design.RockerOutline(r.Edge, 0.0002) }

// A pose is the piece at one tilt: how points of the chair frame stand on the floor.
type pose struct {
	contact, along, up r2.Vec // chair frame
	rolled             float64
	slope              float64
}

// poseAt returns the piece rolled to a tilt against the vertical.
func poseAt(edge rocker.Profile, tilt, slope float64) pose {
	i, roll := edge.Find(tilt - slope)
	b := edge.Bearing(i)
	down, tailward := rocker.Down(roll)
	return pose{b.Contact(roll), r2.Scale(-1, tailward), r2.Scale(-1, down), b.RolledAt(roll), slope}
}

// place returns where a point of the chair frame stands, x forward and y plumb, m, from
// where the low point touches the floor as drawn.
func (p pose) place(q r2.Vec) r2.Vec {
	from := r2.Sub(q, p.contact)
	flat := r2.Vec{X: r2.Dot(from, p.along) - p.rolled, Y: r2.Dot(from, p.up)}
	return r2.Rotate(flat, p.slope, r2.Vec{})
}
