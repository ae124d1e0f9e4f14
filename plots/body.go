package plots

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
)

// Usual sizes for drawing what a design does not measure, m.
const (
	drawnDepth = 0.057
	armReach   = 0.8
)

// A part is one line or area of the piece, in the chair frame.
type part struct {
	points []r2.Vec
	closed bool
	thick  bool
}

// partsOf returns the piece as drawn: rockers apart, seat, back, arms and legs, or the
// solids it is made of.
func partsOf(r check.Report) []part {
	d := r.Design
	var parts []part
	if d.Seat.Front > 0 { // a saddle is drawn by its parts
		meet, front := d.Seat.Meet(), d.Seat.FrontEdge()
		parts = append(parts, part{points: []r2.Vec{meet, front}, thick: true})
		depth := rockerDepth(d)
		for _, top := range []r2.Vec{meet, front} {
			foot := r2.Vec{X: top.X, Y: min(top.Y, r.Edge.Rise(top.X)+depth)}
			parts = append(parts, part{points: []r2.Vec{top, foot}, thick: true})
		}
		if top, known := d.TopOfBack(); known {
			parts = append(parts, part{points: []r2.Vec{meet, top}, thick: true})
		}
		if up := (r2.Vec{Y: d.Arms.Height}); d.Arms.Height > 0 {
			from := r2.Add(meet, up)
			to := r2.Add(from, r2.Scale(armReach, r2.Sub(front, meet)))
			parts = append(parts, part{points: []r2.Vec{from, to}, thick: true}, part{points: []r2.Vec{to, r2.Sub(to, up)}})
		}
	}
	for _, p := range d.Parts {
		parts = append(parts, part{points: outlineOf(p), closed: true})
	}
	return parts
}

func rockerDepth(d piece.Design) float64 {
	if d.Rocker.Depth > 0 {
		return d.Rocker.Depth
	}
	return drawnDepth
}

// outlineOf returns a solid seen from the side.
func outlineOf(p piece.Part) []r2.Vec {
	var half []r2.Vec // the corners around its middle, upright
	switch p.Shape {
	case piece.Box:
		half = corners(p.Length/2, p.Length/2, p.Height/2)
	case piece.Cylinder:
		half = corners(p.Diameter/2, p.Diameter/2, p.Height/2)
	case piece.Cone:
		half = corners(p.Diameter/2, p.TopDiameter/2, p.Height/2)
	default:
		radius := max(p.Diameter/2, 0.01)
		for i := range 16 {
			sin, cos := math.Sincos(float64(i) * math.Pi / 8)
			half = append(half, r2.Vec{X: radius * cos, Y: radius * sin})
		}
	}
	for i := range half {
		half[i] = r2.Add(p.At, r2.Rotate(half[i], p.Lean, r2.Vec{}))
	}
	return half
}

func corners(foot, top, up float64) []r2.Vec {
	return []r2.Vec{{X: -foot, Y: -up}, {X: foot, Y: -up}, {X: top, Y: up}, {X: -top, Y: up}}
}

// rockerOf returns the outline of a rocker: its floor edge, and back along its top.
func rockerOf(r check.Report) []r2.Vec {
	edge := r.Edge.Outline(0.0002)
	depth := rockerDepth(r.Design)
	outline := append([]r2.Vec(nil), edge...)
	for i := len(edge) - 1; i >= 0; i-- {
		outline = append(outline, topAt(edge, i, depth, r.Design.Rocker.Top))
	}
	return outline
}

// topAt returns the point of the top edge over the i-th point of the floor edge.
func topAt(edge []r2.Vec, i int, depth float64, top piece.Top) r2.Vec {
	if top == piece.Straight {
		return r2.Vec{X: edge[i].X, Y: max(edge[i].Y, depth)}
	}
	along := r2.Unit(r2.Sub(edge[min(i+1, len(edge)-1)], edge[max(i-1, 0)])) // to the tail
	return r2.Add(edge[i], r2.Scale(depth, r2.Vec{X: along.Y, Y: -along.X}))
}

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
