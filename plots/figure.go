package plots

import (
	"image/color"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
)

// A pen is how lines are drawn.
type pen struct {
	colour color.RGBA
	width  float64 // mm
	dash   []float64
}

// figure draws a person from the joints: limbs as lines, the head as a ring between the
// top of the head and the chin. place turns a joint into a point of the paper.
func (p pen) figure(j person.Joints, place func(r2.Vec) r2.Vec) []shape {
	limb := func(points ...r2.Vec) shape {
		return path(p.colour, p.width, placed(points, place)...).dashed(p.dash...)
	}
	top, chin := place(j.Vertex), place(j.Chin)
	head := shape{points: []r2.Vec{r2.Scale(0.5, r2.Add(top, chin))}, radius: 0.45 * r2.Norm(r2.Sub(top, chin)), stroke: p.colour, width: p.width, dash: p.dash}
	return []shape{
		limb(j.Neck, j.Hip, j.Knee, j.Ankle),
		limb(j.Heel, j.Ankle, j.Toe, j.Heel),
		limb(j.Shoulder, j.Elbow, j.Wrist, j.Fingertip),
		head,
	}
}
