package scene

import (
	"fmt"
	"image/color"
	"io"
	"slices"
	"strconv"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
)

// A Scene is a drawing in named groups on a paper: x to the right, y up, mm.
type Scene struct {
	Width, Height float64 // of the paper, mm
	White         bool    // an SVG is white behind everything; else nothing lies there
	Title         string
	Alt           string // what it shows, with its numbers; "" where nothing is told besides the title
	Groups        []Group
	Decimals      int    // of a millimetre in an SVG; 0 is two
	Samples       string // of its motion, in an SVG, for the script that moves its groups
}

// A Group is a part of a scene that can be told apart, and moved as one.
type Group struct {
	Name   string
	Shapes []Shape
	Pen    Pen     // of the shapes without pen and fill of their own, but texts
	Clip   *r2.Box // what lies outside is not drawn, mm; nil draws all
	Moves  Mover
	About  r2.Vec // the ankle as drawn, of what turns about it, mm
	Still  bool   // out of place, and hidden, while the scene moves
}

// A Mover is with what a group moves.
type Mover string

const (
	WithPiece   Mover = "piece"   // the piece that rolls
	WithContact Mover = "contact" // where it touches the floor
	WithTime    Mover = "time"    // the point of a trace
	WithShank   Mover = "shank"   // of a leg that stands, the n-th of a scene with the n-th of its feet
	WithFoot    Mover = "foot"
	WithTilt    Mover = "tilt" // a level line across charts whose tilts lie one beside the other
)

// A Shape is a line, an area, a ring or a text.
type Shape struct {
	Pen
	Fill   Colour
	Points []r2.Vec  // of a line or an area; of a ring its middle, of a text its place, mm
	Turns  []float64 // of the way to each point, to the left, rad, less than a full turn; nil where all are straight
	Closed bool      // a line that is led back to its first point
	Radius float64   // of a ring, mm
	Text   string
	Size   float64 // of the text, mm
	Bold   bool
	Angle  float64 // of the text's base line, rad
	Align  Align
}

// A Pen is how lines are drawn.
type Pen struct {
	Colour Colour
	Width  float64   // mm
	Dash   []float64 // lengths of lines and gaps, mm; none of a whole line
	Square bool      // ends and corners are square, else round
}

// An Align says which part of a text stands at its place, on the base line.
type Align int

const (
	Left Align = iota
	Middle
	Right
)

// Add adds groups.
func (s *Scene) Add(groups ...Group) { s.Groups = append(s.Groups, groups...) }

// Add adds shapes.
func (g *Group) Add(shapes ...Shape) { g.Shapes = append(g.Shapes, shapes...) }

// pen returns with what a shape of the group is drawn.
func (g *Group) pen(s Shape) Pen {
	if s.Pen.Colour == "" && s.Fill == "" {
		return g.Pen
	}
	return s.Pen
}

// stroke returns the stretch of a line that ends at its i-th point, mm.
func (s Shape) stroke(i int) bench.Piece {
	p := bench.Piece{From: s.Points[max(0, i-1)], Stroke: bench.Stroke{To: s.Points[i]}}
	if s.Turns != nil {
		p.Turn = s.Turns[i]
	}
	return p
}

// A Format is a kind of picture file.
type Format string

const (
	SVG Format = "svg"
	PDF Format = "pdf"
)

// A Picture is a scene with the name of its file, without the ending.
type Picture struct {
	Name string
	Scene
}

// Draw writes the picture, always the same bytes. The error is that of w, or that there is no such format.
func (p Picture) Draw(w io.Writer, f Format) error {
	switch f {
	case SVG:
		return p.WriteSVG(w)
	case PDF:
		return WritePDF(w, p.Title, p.Scene)
	}
	return fmt.Errorf("scene: there is no format %q", f)
}

// A Colour is one as SVG writes it, "#rrggbb". The zero Colour draws nothing.
type Colour string

const (
	Ink    Colour = "#000000"
	Soft   Colour = "#6e6e6e"
	Grey   Colour = "#787878"
	Faded  Colour = "#8c8c8c"
	Pale   Colour = "#c8c8c8"
	Faint  Colour = "#e1e1e1"
	White  Colour = "#ffffff"
	Blue   Colour = "#005aa0"
	Orange Colour = "#d55e00"
)

// RGBA returns the colour as [color.Color] has it: all zero of one that draws nothing.
func (c Colour) RGBA() (r, g, b, a uint32) {
	x, err := strconv.ParseUint(strings.TrimPrefix(string(c), "#"), 16, 24)
	if err != nil {
		return 0, 0, 0, 0
	}
	return color.RGBA{uint8(x >> 16), uint8(x >> 8), uint8(x), 255}.RGBA()
}

// Dashed returns the pen of a dashed line.
func Dashed(colour Colour, width float64, dash ...float64) Pen {
	return Pen{Colour: colour, Width: width, Dash: dash}
}

// Line returns a line through points.
func (p Pen) Line(points ...r2.Vec) Shape { return Shape{Pen: p, Points: points} }

// Ring returns a ring about a point.
func (p Pen) Ring(at r2.Vec, radius float64) Shape {
	return Shape{Pen: p, Points: []r2.Vec{at}, Radius: radius}
}

// Path returns a line through points without a dash.
func Path(colour Colour, width float64, points ...r2.Vec) Shape {
	return Pen{Colour: colour, Width: width}.Line(points...)
}

// Filled returns s with a colour inside.
func (s Shape) Filled(colour Colour) Shape {
	s.Fill = colour
	return s
}

// Round returns s led back to its first point.
func (s Shape) Round() Shape {
	s.Closed = true
	return s
}

// Rectangle returns one of a size from its lower left corner.
func Rectangle(colour Colour, width float64, at, size r2.Vec) Shape {
	return Path(colour, width, r2.Box{Min: at, Max: r2.Add(at, size)}.Vertices()...).Round()
}

// Words returns a text.
func Words(at r2.Vec, size float64, align Align, text string) Shape {
	return Shape{Points: []r2.Vec{at}, Text: text, Size: size, Align: align, Fill: Ink}
}

// Lines returns texts below each other, so far from base line to base line (mm).
func Lines(at r2.Vec, size, down float64, align Align, texts ...string) []Shape {
	var list []Shape
	for i, text := range texts {
		list = append(list, Words(r2.Sub(at, r2.Vec{Y: down * float64(i)}), size, align, text))
	}
	return list
}

// Placed returns where points of something drawn to scale lie on the paper.
func Placed(points []r2.Vec, place func(r2.Vec) r2.Vec) []r2.Vec {
	list := make([]r2.Vec, len(points))
	for i, p := range points {
		list[i] = place(p)
	}
	return list
}

// Cut returns a text of at most n characters, without what a page cannot show.
func Cut(text string, n int) string {
	kept := slices.DeleteFunc([]rune(text), func(r rune) bool {
		return r < ' ' || r == 0x7f || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069
	})
	if len(kept) > n {
		kept = append(kept[:n-1], '…')
	}
	return string(kept)
}
