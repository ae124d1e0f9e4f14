package view

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/plots/scene"
	"rockerwright/sim"
	"rockerwright/sim/check"
)

func rockerOf(r check.Report) []r2.Vec { return r.Design.RockerOutline(r.Edge, 0.0002) }

// woodOf returns the ends and corners of the piece and the outline of its rocker, from the side, in the chair frame.
func woodOf(r check.Report) []r2.Vec {
	var points []r2.Vec
	for _, m := range r.Design.Members(r.Edge) {
		points = append(points, m.Side()...)
	}
	return append(points, rockerOf(r)...)
}

// A pose is the piece at one tilt: how points of the chair frame stand on the floor.
type pose struct {
	rig             sim.Rig
	tilt            float64
	contact, centre r2.Vec // of the arc it stands on, chair frame
}

// poseAt returns the piece of a report rolled to a tilt against the vertical.
func poseAt(r check.Report, tilt float64) pose {
	i, roll := r.Edge.Find(tilt - r.Design.Floor.Slope)
	b := r.Edge.Bearing(i)
	return pose{r.Loads[0].Rig, tilt, b.Contact(roll), b.Centre()}
}

// place returns where a point of the chair frame stands: x forward, y plumb, m, from the low point as drawn.
func (p pose) place(q r2.Vec) r2.Vec {
	along, over := p.rig.Place(q, p.tilt)
	return r2.Rotate(r2.Vec{X: along, Y: over}, p.rig.Floor.Slope, r2.Vec{})
}

// Figure draws a person, placed on the paper: limbs as lines between joints, the head as a ring from its top to the chin.
func Figure(p scene.Pen, j person.Joints, place func(r2.Vec) r2.Vec) []scene.Shape {
	knee, ankle := place(j.Knee), place(j.Ankle)
	return append(riding(p, j, place), p.Line(knee, ankle), foot(p, ankle, place(j.Heel), place(j.Toe)))
}

// riding draws a person down to the knees.
func riding(p scene.Pen, j person.Joints, place func(r2.Vec) r2.Vec) []scene.Shape {
	top, chin := place(j.Vertex), place(j.Chin)
	return []scene.Shape{
		p.Line(scene.Placed([]r2.Vec{j.Neck, j.Hip, j.Knee}, place)...),
		p.Line(scene.Placed([]r2.Vec{j.Shoulder, j.Elbow, j.Wrist, j.Fingertip}, place)...),
		p.Ring(r2.Scale(0.5, r2.Add(top, chin)), 0.45*r2.Norm(r2.Sub(top, chin))),
	}
}

// balancePoint draws the usual sign of a centre of mass: a disc with two quarters dark.
func balancePoint(p scene.Pen, at r2.Vec) []scene.Shape {
	const radius = 2.0
	shapes := []scene.Shape{scene.Pen{Colour: p.Colour, Width: 0.4}.Ring(at, radius).Filled(scene.White)}
	for _, start := range []float64{0, math.Pi} {
		quarter := []r2.Vec{at}
		for i := range 9 {
			sin, cos := math.Sincos(start + float64(i)*math.Pi/16)
			quarter = append(quarter, r2.Add(at, r2.Vec{X: radius * cos, Y: radius * sin}))
		}
		shapes = append(shapes, scene.Pen{}.Line(quarter...).Round().Filled(p.Colour))
	}
	return shapes
}

func inDegrees(x float64) float64 { return x * 180 / math.Pi }
