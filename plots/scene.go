package plots

import (
	"image/color"
	"io"

	"gonum.org/v1/gonum/spatial/r2"
)

// A scene is a drawing to scale in named groups: x to the right, y up, millimetres of
// paper. Each writer draws the same scene.
type scene struct {
	width, height float64 // mm
	title, alt    string
	groups        []group
	samples       string // of its motion; see [RockingView]
}

// A group is a part of a scene that can be told apart, and moved as one.
type group struct {
	name   string
	shapes []shape
	moves  mover
	still  bool // out of place, and hidden, while the scene moves
}

// A mover is with what a group moves.
type mover string

const (
	withPiece   mover = "piece"   // the piece that rolls
	withContact mover = "contact" // where it touches the floor
	withTime    mover = "time"    // the point of the trace
	withTilt    mover = "tilt"    // a level line across charts whose tilts lie one beside the other
)

// A shape is a line, an area, a ring or a text. Zero colours draw nothing.
type shape struct {
	points []r2.Vec // of a line or an area; of a ring or a text its place
	closed bool
	stroke color.RGBA
	fill   color.RGBA
	width  float64   // of the stroke, mm
	dash   []float64 // mm
	radius float64   // of a ring, mm
	halo   bool      // white around a text, that stands over lines
	text   string
	size   float64 // of the text, mm
	align  align
}

// An align says which part of a text stands at its place.
type align int

const (
	left align = iota
	middle
	right
)

// write writes the scene in a format.
func (s scene) write(w io.Writer, f Format) error {
	if f == PDF {
		return s.writePDF(w)
	}
	return s.writeSVG(w, f)
}

func (g *group) add(shapes ...shape) { g.shapes = append(g.shapes, shapes...) }

// placed returns where points of something drawn to scale lie on the paper.
func placed(points []r2.Vec, place func(r2.Vec) r2.Vec) []r2.Vec {
	list := make([]r2.Vec, len(points))
	for i, p := range points {
		list[i] = place(p)
	}
	return list
}

// path returns a line through points.
func path(stroke color.RGBA, width float64, points ...r2.Vec) shape {
	return shape{points: points, stroke: stroke, width: width}
}

// dashed returns s with a dash.
func (s shape) dashed(dash ...float64) shape {
	s.dash = dash
	return s
}

// round returns s led back to its first point.
func (s shape) round() shape {
	s.closed = true
	return s
}

// rectangle returns one of a size from its lower left corner.
func rectangle(stroke color.RGBA, width float64, at, size r2.Vec) shape {
	to := r2.Add(at, size)
	return path(stroke, width, at, r2.Vec{X: to.X, Y: at.Y}, to, r2.Vec{X: at.X, Y: to.Y}).round()
}

// words returns a text.
func words(at r2.Vec, size float64, align align, text string) shape {
	return shape{points: []r2.Vec{at}, text: text, size: size, align: align, fill: ink}
}
