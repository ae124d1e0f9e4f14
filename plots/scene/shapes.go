package scene

import "gonum.org/v1/gonum/spatial/r2"

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
