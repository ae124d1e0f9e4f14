package plots

import (
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
)

// figureOf draws a person from the joints: limbs as lines, the head as a ring between
// the top of the head and the chin. place turns a point of the chair frame into one of
// the paper.
func figureOf(j person.Joints, place func(r2.Vec) r2.Vec, g ghost) []shape {
	limb := func(points ...r2.Vec) shape {
		placed := make([]r2.Vec, len(points))
		for i, p := range points {
			placed[i] = place(p)
		}
		return path(g.colour, g.wide*0.7, placed...).dashed(g.dash...)
	}
	top, chin := place(j.Vertex), place(j.Chin)
	middle := r2.Scale(0.5, r2.Add(top, chin))
	head := shape{points: []r2.Vec{middle}, radius: r2.Norm(r2.Sub(top, chin)) / 2 * 0.9, stroke: g.colour, width: g.wide * 0.7, dash: g.dash}
	return []shape{
		limb(j.Neck, j.Hip, j.Knee, j.Ankle),
		limb(j.Heel, j.Ankle, j.Toe, j.Heel),
		limb(j.Shoulder, j.Elbow, j.Wrist, j.Fingertip),
		head,
	}
}
