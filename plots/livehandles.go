package plots

import "gonum.org/v1/gonum/spatial/r2"

// handles returns what can be pulled: both tips and the low point, but of an edge that was
// measured nothing.
func (v *liveView) handles() []Handle {
	r := v.watched.Report
	edge := r.Edge.Outline(0.0002)
	if len(edge) < 2 || r.Curve != nil {
		return nil
	}
	at := poseAt(r.Edge, v.rest, r.Design.Floor.Slope)
	handle := func(name string, p, along r2.Vec) Handle {
		const little = 1e-4 // m
		place := v.svg(at.place(p))
		way := r2.Sub(v.svg(at.place(r2.Add(p, r2.Scale(little, along)))), place)
		length := r2.Norm(way)
		return Handle{name, [2]float64{place.X, place.Y}, [2]float64{way.X / length, way.Y / length}, little / length}
	}
	n := len(edge)
	return []Handle{
		handle("nose", edge[0], r2.Unit(r2.Sub(edge[0], edge[1]))),
		handle("tail", edge[n-1], r2.Unit(r2.Sub(edge[n-1], edge[n-2]))),
		handle("low", r2.Vec{}, r2.Vec{X: 1}),
	}
}

// handle draws a handle: a ring, and around it a larger one that is not seen but felt.
func (v *liveView) handle(h Handle) group {
	g := group{name: "handle-" + h.Name, moves: withPiece}
	at := r2.Vec{X: h.At[0], Y: v.height - h.At[1]}
	g.add(shape{points: []r2.Vec{at}, radius: 6}, shape{points: []r2.Vec{at}, radius: 1.9, fill: rgb(255, 255, 255), stroke: blue, width: 0.7})
	return g
}
