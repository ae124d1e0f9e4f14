package plots

import (
	"fmt"
	"image/color"
	"io"
	"slices"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/check"
)

// A Format is a kind of picture file.
type Format string

const (
	SVG Format = "svg"
	PDF Format = "pdf"
)

// inPage is an SVG as part of a page: it says what it shows in aria-label, has no ids that
// two pictures could share and no style of its own, which a page may forbid.
const inPage Format = "part of a page"

// A Picture is one drawing of a report.
type Picture struct {
	Name string // of its file, without the ending
	Alt  string // what it shows, with its numbers

	draw func(w io.Writer, f Format) error
}

// Draw writes the picture. The same report gives the same bytes.
func (p Picture) Draw(w io.Writer, f Format) error {
	if f != SVG && f != PDF {
		return fmt.Errorf("plots: there is no format %q", f)
	}
	return p.draw(w, f)
}

// InPage writes the picture as an svg element of an HTML page.
func (p Picture) InPage(w io.Writer) error { return p.draw(w, inPage) }

// Pictures returns all pictures of a report.
func Pictures(r check.Report) []Picture {
	return []Picture{SideView(r), RightingArm(r), TimeOfARock(r)}
}

// cut returns a text of at most n characters, without what a page cannot show.
func cut(text string, n int) string {
	kept := slices.DeleteFunc([]rune(text), func(r rune) bool {
		return r < ' ' || r == 0x7f || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069
	})
	if len(kept) > n {
		kept = append(kept[:n-1], '…')
	}
	return string(kept)
}

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
	pen
	points []r2.Vec // of a line or an area; of a ring or a text its place
	closed bool
	fill   color.RGBA
	radius float64 // of a ring, mm
	text   string
	size   float64 // of the text, mm
	align  align
}

// A pen is how lines are drawn.
type pen struct {
	colour color.RGBA
	width  float64   // mm
	dash   []float64 // mm
}

// An align says which part of a text stands at its place.
type align int

const (
	left align = iota
	middle
	right
)

func rgb(r, g, b uint8) color.RGBA { return color.RGBA{r, g, b, 255} }

var (
	ink    = rgb(0, 0, 0)
	soft   = rgb(110, 110, 110)
	faded  = rgb(140, 140, 140)
	blue   = rgb(0, 90, 160)
	orange = rgb(213, 94, 0)
	pale   = rgb(200, 200, 200)
	faint  = rgb(225, 225, 225)
	white  = rgb(255, 255, 255)
)

// picture returns the scene as a picture.
func (s scene) picture(name string) Picture {
	return Picture{Name: name, Alt: s.alt, draw: func(w io.Writer, f Format) error {
		if f == PDF {
			return s.writePDF(w)
		}
		return s.writeSVG(w, f)
	}}
}

func (s *scene) add(groups ...group) { s.groups = append(s.groups, groups...) }

func (g *group) add(shapes ...shape) { g.shapes = append(g.shapes, shapes...) }

// placed returns where points of something drawn to scale lie on the paper.
func placed(points []r2.Vec, place func(r2.Vec) r2.Vec) []r2.Vec {
	list := make([]r2.Vec, len(points))
	for i, p := range points {
		list[i] = place(p)
	}
	return list
}

// line returns a line through points.
func (p pen) line(points ...r2.Vec) shape { return shape{pen: p, points: points} }

// ring returns a ring about a point.
func (p pen) ring(at r2.Vec, radius float64) shape {
	return shape{pen: p, points: []r2.Vec{at}, radius: radius}
}

// path returns a line through points without a dash.
func path(colour color.RGBA, width float64, points ...r2.Vec) shape {
	return pen{colour: colour, width: width}.line(points...)
}

// filled returns s with a colour inside, round led back to its first point.
func (s shape) filled(colour color.RGBA) shape {
	s.fill = colour
	return s
}

func (s shape) round() shape {
	s.closed = true
	return s
}

// rectangle returns one of a size from its lower left corner.
func rectangle(colour color.RGBA, width float64, at, size r2.Vec) shape {
	return path(colour, width, r2.Box{Min: at, Max: r2.Add(at, size)}.Vertices()...).round()
}

// words returns a text.
func words(at r2.Vec, size float64, align align, text string) shape {
	return shape{points: []r2.Vec{at}, text: text, size: size, align: align, fill: ink}
}

// lines returns texts below each other, so far from base line to base line (mm).
func lines(at r2.Vec, size, down float64, align align, texts ...string) []shape {
	var list []shape
	for i, text := range texts {
		list = append(list, words(r2.Sub(at, r2.Vec{Y: down * float64(i)}), size, align, text))
	}
	return list
}
