package scene

import (
	"fmt"
	"io"
	"math"
	"strings"
	"time"

	"codeberg.org/go-pdf/fpdf"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// points is the number of points in a millimetre.
const points = 72 / 25.4

// A pdf is a file that is being written. It writes its places itself, to a ten-thousandth of a point, for the
// library rounds to a hundredth, which is 0.0035 mm.
type pdf struct {
	*fpdf.Fpdf
	face *Face
}

// WritePDF writes scenes as the pages of one file, at true size. Its bytes do not depend on the time of day.
func WritePDF(w io.Writer, title string, pages ...Scene) error {
	f := pdf{fpdf.New("P", "pt", "", ""), NewFace()}
	f.SetCatalogSort(true)
	none := time.Unix(0, 0).UTC()
	f.SetCreationDate(none)
	f.SetModificationDate(none)
	f.SetAutoPageBreak(false, 0)
	f.SetTitle(title, true)
	for _, s := range pages {
		f.AddPageFormat("P", fpdf.SizeType{Wd: s.Width * points, Ht: s.Height * points})
		f.RawWriteStr("1 J 1 j")
		for _, g := range s.Groups {
			f.group(g)
		}
	}
	return f.Output(w)
}

// group writes a group.
func (f pdf) group(g Group) {
	if g.Clip != nil {
		f.RawWriteStr("q " + pair(g.Clip.Min) + " " + pair(g.Clip.Size()) + " re W n")
	}
	for _, s := range g.Shapes {
		if s.Text != "" {
			f.text(s)
			continue
		}
		if s.Radius > 0 { // two half circles
			at, side := s.Points[0], r2.Vec{X: s.Radius}
			s.Points = []r2.Vec{r2.Add(at, side), r2.Sub(at, side), r2.Add(at, side)}
			s.Turns, s.Closed = []float64{0, math.Pi, math.Pi}, true
		}
		f.line(s, g.pen(s))
	}
	if g.Clip != nil {
		f.RawWriteStr("Q")
	}
}

// line writes a line or an area.
func (f pdf) line(s Shape, pen Pen) {
	paint := [2][2]string{{"n", "S"}, {"f", "B"}}
	filled, stroked := 0, 0
	if s.Fill != "" {
		filled = 1
		f.RawWriteStr(colour(s.Fill, "g", "rg"))
	}
	if pen.Colour != "" {
		stroked = 1
		f.RawWriteStr(numbers(pen.Width) + " w " + colour(pen.Colour, "G", "RG") + " [" + numbers(pen.Dash...) + "] 0 d")
	}
	path := pair(s.Points[0]) + " m"
	for i := range s.Points[1:] {
		a := s.stroke(i + 1)
		if a.Turn == 0 {
			path += " " + pair(a.To) + " l"
			continue
		}
		for _, c := range cubics(a) {
			path += " " + pair(c[0]) + " " + pair(c[1]) + " " + pair(c[2]) + " c"
		}
	}
	if s.Closed {
		path += " h"
	}
	path += " " + paint[filled][stroked]
	if pen.Square {
		path = "0 J 0 j " + path + " 1 J 1 j"
	}
	f.RawWriteStr(path)
}

// text writes a text.
func (f pdf) text(s Shape) {
	style := ""
	if s.Bold {
		style = "B"
	}
	f.SetFont("Helvetica", style, s.Size*points)
	text := f.face.CodePage(s.Text)
	sin, cos := math.Sincos(s.Angle)
	before := float64(s.Align) / 2 * f.GetStringWidth(text) / points
	at := r2.Sub(s.Points[0], r2.Scale(before, r2.Vec{X: cos, Y: sin}))
	text = strings.NewReplacer(`\`, `\\`, "(", `\(`, ")", `\)`).Replace(text)
	f.RawWriteStr(fmt.Sprintf("%s BT %.6f %.6f %.6f %.6f %s Tm (%s) Tj ET",
		colour(s.Fill, "g", "rg"), cos, sin, -sin, cos, pair(at), text))
}

// colour writes a colour under the operator of greys or that of others.
func colour(c Colour, grey, other string) string {
	red, green, blue, _ := c.RGBA()
	share := func(x uint32) float64 { return float64(x) / 0xffff }
	if red == green && green == blue {
		return fmt.Sprintf("%.2f %s", share(red), grey)
	}
	return fmt.Sprintf("%.3f %.3f %.3f %s", share(red), share(green), share(blue), other)
}

// numbers writes lengths of mm in points.
func numbers(list ...float64) string {
	texts := make([]string, len(list))
	for i, x := range list {
		texts[i] = quantity.Decimal(x*points, 4)
	}
	return strings.Join(texts, " ")
}

func pair(v r2.Vec) string { return numbers(v.X, v.Y) }
