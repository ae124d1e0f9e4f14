package pattern

import (
	"io"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/plots/scene"
	"rockerwright/sim/quantity"
)

// WriteSVG writes the drawing at true size, one unit of it a millimetre, one group a layer.
// Arcs are kept as arcs. The error is an [*Error] or a [*ReachError] for what cannot be drawn.
func (d Drawing) WriteSVG(w io.Writer, units quantity.System) error {
	shapes, err := d.laid(units, true)
	if err != nil {
		return err
	}
	box := bounds(shapes)
	corner := r2.Sub(box.Min, r2.Vec{X: margin, Y: margin})
	s := scene.Scene{
		Width: 1e3 * (box.Size().X + 2*margin), Height: 1e3 * (box.Size().Y + 2*margin),
		Title: d.name(newFace()), Decimals: 4,
	}
	for _, layer := range layers {
		group := scene.Group{Name: string(layer), Pen: styles[layer]}
		for _, each := range shapes {
			if each.layer == layer {
				group.Add(each.placed(func(p r2.Vec) r2.Vec { return r2.Sub(p, corner) }).onPaper()...)
			}
		}
		s.Add(group)
	}
	return s.WriteSVG(w)
}
