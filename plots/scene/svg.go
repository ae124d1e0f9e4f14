package scene

import (
	"bytes"
	"cmp"
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// families are the faces an SVG asks for: first the one that measures charts, as wide as Helvetica.
const families = "Liberation Sans,Arial,Helvetica,sans-serif"

// WriteSVG writes the scene at true size, one unit a millimetre, one <g> a group with its name as id, arcs as arcs.
func (s Scene) WriteSVG(w io.Writer) error { return s.write(w, false) }

// InPage writes the scene as an svg element of an HTML page: it says what it shows in aria-label, has no ids
// that two pictures could share and no style of its own, which a page may forbid.
func (s Scene) InPage(w io.Writer) error { return s.write(w, true) }

// write writes the scene as an SVG; in a page, where several may stand, the name of a group is its class.
func (s Scene) write(w io.Writer, inPage bool) error {
	f := svg{height: s.Height, decimals: cmp.Or(s.Decimals, 2), name: "id"}
	f.put(`<svg xmlns="http://www.w3.org/2000/svg" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s"`,
		f.number(s.Width), f.number(s.Height))
	f.put(` role="img" font-family="%s"`, families)
	if s.Samples != "" {
		f.put(` data-samples="%s"`, s.Samples)
	}
	if inPage {
		f.name = "class"
		f.put(" aria-label=\"%s\">\n", escaped(s.Alt))
	} else {
		f.put(">\n<title>%s</title>\n", escaped(s.Title))
		if s.Alt != "" {
			f.put("<desc>%s</desc>\n", escaped(s.Alt))
		}
	}
	if s.White {
		f.put("<rect width=\"100%%\" height=\"100%%\" fill=\"#fff\"/>\n")
	}
	for _, g := range s.Groups {
		f.group(g)
	}
	f.put("</svg>\n")
	_, err := w.Write(f.Bytes())
	return err
}

// An svg is a file that is being written.
type svg struct {
	bytes.Buffer
	height   float64 // of the paper, mm
	decimals int
	name     string // the attribute with the name of a group
}

func (f *svg) put(format string, values ...any) { fmt.Fprintf(f, format, values...) }

// number writes mm.
func (f *svg) number(x float64) string { return quantity.Decimal(x, f.decimals) }

// at writes a place, y down from the upper edge of the paper.
func (f *svg) at(p r2.Vec) (x, y string) { return f.number(p.X), f.number(f.height - p.Y) }

// group writes a group; what it clips is an svg of its own.
func (f *svg) group(g Group) {
	f.put(`<g %s="%s"`, f.name, escaped(g.Name))
	if g.Pen.Colour != "" {
		f.put(` fill="none"%s`, f.stroke(g.Pen))
	}
	if g.Moves != "" {
		f.put(` data-moves="%s"`, g.Moves)
	}
	if g.Moves == WithShank || g.Moves == WithFoot {
		x, y := f.at(g.About)
		f.put(` data-about="%s %s"`, x, y)
	}
	if g.Still {
		f.put(` data-still=""`)
	}
	f.put(">\n")
	if g.Clip != nil {
		x, y := f.at(r2.Vec{X: g.Clip.Min.X, Y: g.Clip.Max.Y})
		f.put("<svg x=\"%[1]s\" y=\"%[2]s\" width=\"%[3]s\" height=\"%[4]s\" viewBox=\"%[1]s %[2]s %[3]s %[4]s\">\n",
			x, y, f.number(g.Clip.Size().X), f.number(g.Clip.Size().Y))
	}
	for _, s := range g.Shapes {
		f.shape(s, g.Pen.Colour != "")
	}
	if g.Clip != nil {
		f.put("</svg>\n")
	}
	f.put("</g>\n")
}

// shape writes a shape, of a group that has a pen or none.
func (f *svg) shape(s Shape, penned bool) {
	style := ""
	switch {
	case penned && s.Text != "":
		style = fmt.Sprintf(` fill="%s" stroke="none"`, s.Fill)
	case !penned || s.Fill != "" || s.Pen.Colour != "":
		style = fmt.Sprintf(` fill="%s"%s`, cmp.Or(s.Fill, "none"), f.stroke(s.Pen))
	}
	x, y := f.at(s.Points[0])
	switch {
	case s.Text != "":
		f.text(s, x, y, style)
	case s.Radius > 0:
		f.put("<circle cx=\"%s\" cy=\"%s\" r=\"%s\"%s/>\n", x, y, f.number(s.Radius), style)
	default:
		f.put("<path d=\"%s\"%s/>\n", f.path(s), style)
	}
}

func (f *svg) text(s Shape, x, y, style string) {
	turned, space := "", ""
	if s.Angle != 0 {
		turned = fmt.Sprintf(` transform="rotate(%s %s %s)"`, quantity.Decimal(-s.Angle*180/math.Pi, 4), x, y)
	}
	if strings.Contains(s.Text, "  ") {
		space = ` xml:space="preserve"`
	}
	f.put("<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\"%s%s%s>%s</text>\n",
		x, y, f.number(s.Size), [...]string{"start", "middle", "end"}[s.Align], space, style, turned, escaped(s.Text))
}

// path writes the commands of a line. A turn to the left, y up, is against the clock: what SVG calls a sweep of 0.
func (f *svg) path(s Shape) string {
	var b strings.Builder
	flag := map[bool]int{true: 1}
	for i, p := range s.Points {
		x, y := f.at(p)
		a := s.stroke(i)
		r := math.Abs(a.Radius())
		switch {
		case i == 0:
			b.WriteString("M" + x + " " + y)
		case a.Turn == 0 || r > 1e8: // 100 km: flat to 2e-6 mm over 20 m
			b.WriteString("L" + x + " " + y)
		default:
			large, sweep := flag[math.Abs(a.Turn) > math.Pi], flag[a.Turn < 0]
			fmt.Fprintf(&b, "A%[1]s %[1]s 0 %[2]d %[3]d %[4]s %[5]s", f.number(r), large, sweep, x, y)
		}
	}
	if s.Closed {
		b.WriteString("Z")
	}
	return b.String()
}

// stroke writes how a pen draws, "" of one that does not.
func (f *svg) stroke(p Pen) string {
	if p.Colour == "" {
		return ""
	}
	style := fmt.Sprintf(` stroke="%s" stroke-width="%s"`, p.Colour, f.number(p.Width))
	if !p.Square {
		style += ` stroke-linecap="round" stroke-linejoin="round"`
	}
	if len(p.Dash) > 0 {
		var dash []string
		for _, x := range p.Dash {
			dash = append(dash, f.number(x))
		}
		style += ` stroke-dasharray="` + strings.Join(dash, " ") + `"`
	}
	return style
}

// escaped returns a text as it stands inside XML.
func escaped(text string) string {
	var b strings.Builder
	_ = xml.EscapeText(&b, []byte(text)) // a Builder takes all
	return b.String()
}
