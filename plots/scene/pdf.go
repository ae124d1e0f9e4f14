package scene

import (
	"fmt"
	"io"
	"math"
	"strings"
	"time"
	"unicode"

	"codeberg.org/go-pdf/fpdf"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// points is the number of points in a millimetre.
const points = 72 / 25.4

// A pdf is a file being written, its places to a ten-thousandth of a point: the library's hundredth is 0.0035 mm.
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

func (f pdf) line(s Shape, pen Pen) {
	paint := map[[2]bool]string{{false, false}: "n", {true, false}: "f", {false, true}: "S", {true, true}: "B"}
	filled, stroked := s.Fill != "", pen.Colour != ""
	if filled {
		f.RawWriteStr(colour(s.Fill, "g", "rg"))
	}
	if stroked {
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
	path += " " + paint[[2]bool{filled, stroked}]
	if pen.Square {
		path = "0 J 0 j " + path + " 1 J 1 j"
	}
	f.RawWriteStr(path)
}

func (f pdf) text(s Shape) {
	f.SetFont("Helvetica", map[bool]string{true: "B"}[s.Bold], s.Size*points)
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

// cubics returns an arc as Bézier curves from its start, each by its two handles and its end, of at most 15° and less
// than 0.001 mm off. The handles of a turn τ are chord/(3 cos²(τ/4)) long along the tangents; the radius is then off by
// at most 2.73e-4 R at 90° and falls with the sixth power of τ, to 5.9e-9 R at 15° (Goldapp, Approximation of circular
// arcs by cubic polynomials, Computer Aided Geometric Design 8, 1991, from memory; the tests measure it).
func cubics(a bench.Piece) [][3]r2.Vec {
	const off = 1e-3 // mm
	step := min(math.Pi/12, math.Pi/2*math.Pow(off/(2.73e-4*math.Abs(a.Radius())), 1.0/6))
	list := make([][3]r2.Vec, max(1, int(math.Ceil(math.Abs(a.Turn)/step))))
	for i := range list {
		n := float64(len(list))
		p := a.Cut(float64(i)/n, float64(i+1)/n)
		c := math.Cos(p.Turn / 4)
		handle := r2.Scale(1/(3*c*c), r2.Sub(p.To, p.From))
		list[i] = [3]r2.Vec{
			r2.Add(p.From, r2.Rotate(handle, -p.Turn/2, r2.Vec{})),
			r2.Sub(p.To, r2.Rotate(handle, p.Turn/2, r2.Vec{})),
			p.To,
		}
	}
	return list
}

// A Face measures words as a PDF sets them, in Helvetica.
type Face struct {
	pdf    *fpdf.Fpdf
	encode func(string) string
}

// Capital is the height of the face's capitals, in sizes (Adobe's font metrics say 718 of 1000).
const Capital = 0.718

// NewFace returns the face.
func NewFace() *Face {
	pdf := fpdf.New("P", "pt", "", "")
	pdf.SetFont("Helvetica", "", 1000)
	return &Face{pdf, pdf.UnicodeTranslatorFromDescriptor("cp1252")}
}

// CodePage returns a text in western Europe's code page, 1252, "?" for every letter it lacks.
func (f *Face) CodePage(text string) string {
	var b strings.Builder
	for _, letter := range text {
		switch code := f.encode(string(letter)); {
		case letter == unicode.ReplacementChar, len(code) != 1, code == "." && letter != '.':
			b.WriteByte('?')
		default:
			b.WriteString(code)
		}
	}
	return b.String()
}

// Width returns the width of a text in sizes of its letters.
func (f *Face) Width(text string) float64 { return f.pdf.GetStringWidth(f.CodePage(text)) / 1000 }
