package pattern

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"strings"
	"unicode"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// WriteDXF writes the drawing as DXF of release 12 (AC1009), which every program reads: outlines as closed polylines
// whose bulges keep the arcs, plain layer names. The coordinates are inches or millimetres: the header says which in
// $INSUNITS and $MEASUREMENT, which are of later releases and are let be by a program that knows no unit, and for
// people so does a text on the layer TEXT. The error is an [*Error] or a [*ReachError] for what cannot be drawn.
func (d Drawing) WriteDXF(w io.Writer, units quantity.System) error {
	shapes, err := d.laid(units, true)
	if err != nil {
		return err
	}
	f := dxf{unit: quantity.In, face: newFace()}
	name, insert, measurement := "UNITS: INCHES", 1, 0
	if units == quantity.Metric {
		f.unit, name, insert, measurement = 1e-3, "UNITS: MILLIMETRES", 4, 1
	}
	box := bounds(shapes)
	corner := r2.Vec{X: box.Min.X, Y: box.Min.Y - 12e-3}
	shapes = append(shapes, shape{layer: Texts, text: name, height: heading, width: f.face.width(name, heading),
		at: r2.Add(corner, r2.Vec{X: f.face.width(name, heading) / 2})})
	f.put(0, "SECTION", 2, "HEADER", 9, "$ACADVER", 1, "AC1009", 9, "$DWGCODEPAGE", 3, "ANSI_1252",
		9, "$INSUNITS", 70, insert, 9, "$MEASUREMENT", 70, measurement,
		9, "$EXTMIN", 10, corner, 9, "$EXTMAX", 10, box.Max, 0, "ENDSEC")
	f.tables()
	f.put(0, "SECTION", 2, "ENTITIES")
	for _, s := range shapes {
		f.entity(s)
	}
	f.put(0, "ENDSEC", 0, "EOF")
	_, err = w.Write(f.out.Bytes())
	return err
}

// A dxf is a file that is being written.
type dxf struct {
	out  bytes.Buffer
	unit float64 // m
	face face
}

// put writes pairs of a group code and its value; a point (m) stands under its code and those 10 and 20 above.
func (f *dxf) put(pairs ...any) {
	for i := 0; i < len(pairs); i += 2 {
		switch value := pairs[i+1].(type) {
		case r2.Vec:
			code := pairs[i].(int)
			f.put(code, value.X/f.unit, code+10, value.Y/f.unit, code+20, 0.0)
		case float64:
			fmt.Fprintf(&f.out, "%3d\r\n%.9f\r\n", pairs[i], value)
		default:
			fmt.Fprintf(&f.out, "%3d\r\n%v\r\n", pairs[i], value)
		}
	}
}

// tables writes the one kind of line, the layers and the one style of text.
func (f *dxf) tables() {
	f.put(0, "SECTION", 2, "TABLES",
		0, "TABLE", 2, "LTYPE", 70, 1,
		0, "LTYPE", 2, "CONTINUOUS", 70, 0, 3, "Solid line", 72, 65, 73, 0, 40, 0.0, 0, "ENDTAB",
		0, "TABLE", 2, "LAYER", 70, len(layers))
	for i, layer := range layers {
		colour := []int{7, 8, 1, 5, 7, 3}[i] // white, grey, red, blue, white, green
		f.put(0, "LAYER", 2, string(layer), 70, 0, 62, colour, 6, "CONTINUOUS")
	}
	f.put(0, "ENDTAB", 0, "TABLE", 2, "STYLE", 70, 1,
		0, "STYLE", 2, "STANDARD", 70, 0, 40, 0.0, 41, 1.0, 50, 0.0, 71, 0, 42, 0.2, 3, "txt", 4, "",
		0, "ENDTAB", 0, "ENDSEC")
}

// entity writes a shape: a text, a point, a line, or a polyline.
func (f *dxf) entity(s shape) {
	layer := string(s.layer)
	list := arcs(s.path)
	switch {
	case s.text != "":
		f.put(0, "TEXT", 8, layer, 10, s.left(), 40, s.height/f.unit, 1, f.words(s.text),
			50, s.angle*180/math.Pi, 7, "STANDARD", 72, 1, 11, s.at)
	case s.point:
		f.put(0, "POINT", 8, layer, 10, s.at)
	case len(list) == 1 && list[0].Turn == 0:
		f.put(0, "LINE", 8, layer, 10, list[0].From, 11, list[0].To)
	case len(list) > 0:
		closed := 0
		if s.path.Closed {
			closed = 1
		} else {
			list = append(list, bench.Piece{From: list[len(list)-1].To})
		}
		f.put(0, "POLYLINE", 8, layer, 66, 1, 10, r2.Vec{}, 70, closed)
		for _, a := range list {
			f.put(0, "VERTEX", 8, layer, 10, a.From)
			if a.Turn != 0 {
				f.put(42, math.Tan(a.Turn/4))
			}
		}
		f.put(0, "SEQEND", 8, layer)
	}
}

// words returns a text as DXF has it: on one line, in the code page, a letter that this lacks as
// \U+ and four hexadecimal digits, without the signs that begin a command. "?" is a letter beyond four digits.
func (f *dxf) words(text string) string {
	var b strings.Builder
	for _, letter := range strings.NewReplacer(`\U+`, `\U+005CU+`, `\M+`, `\U+005CM+`, "%%", "% %", "^", "^ ").Replace(text) {
		code := f.face.CodePage(string(letter))
		if code == "?" && letter != '?' && letter <= 0xffff && letter != unicode.ReplacementChar {
			code = fmt.Sprintf(`\U+%04X`, letter)
		}
		b.WriteString(code)
	}
	return b.String()
}
