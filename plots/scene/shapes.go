package scene

import (
	"image/color"
	"slices"
	"strconv"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"
)

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

var _ color.Color = Ink

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
