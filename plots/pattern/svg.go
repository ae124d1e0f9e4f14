package pattern

import (
	"bytes"
	"fmt"
	"html"
	"io"
	"math"
	"strconv"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker/bench"
	"rockerwright/sim/quantity"
)

// WriteSVG writes the drawing at true size, one unit of it a millimetre, one group a layer.
// Arcs are kept as arcs. The error is an [*Error] or a [*ReachError] for what cannot be drawn.
func (d Drawing) WriteSVG(w io.Writer, units quantity.System) error {
	shapes, err := d.laid(units, true)
	if err != nil {
		return err
	}
	box := bounds(shapes)
	origin := r2.Vec{X: box.Min.X - margin, Y: box.Max.Y + margin}
	size := r2.Add(box.Size(), r2.Vec{X: 2 * margin, Y: 2 * margin})
	s := svg{place: func(p r2.Vec) (x, y string) { return milli(p.X - origin.X), milli(origin.Y - p.Y) }}
	fmt.Fprintf(&s.out, `<svg xmlns="http://www.w3.org/2000/svg" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s" font-family="Helvetica, Arial, sans-serif">`+"\n",
		milli(size.X), milli(size.Y))
	fmt.Fprintf(&s.out, "<title>%s</title>\n", html.EscapeString(d.name(newRuler())))
	for _, layer := range layers {
		s.group(layer, shapes)
	}
	s.out.WriteString("</svg>\n")
	_, err = w.Write(s.out.Bytes())
	return err
}

// An svg is a file that is being written.
type svg struct {
	out   bytes.Buffer
	place func(r2.Vec) (x, y string)
}

// group writes the shapes of one layer.
func (s *svg) group(layer Layer, shapes []shape) {
	look := styles[layer]
	dash := ""
	if look.dash != nil {
		var mm []string
		for _, x := range look.dash {
			mm = append(mm, milli(x/points))
		}
		dash = ` stroke-dasharray="` + strings.Join(mm, " ") + `"`
	}
	fmt.Fprintf(&s.out, `<g id="%s" fill="none" stroke="#000" stroke-width="%s" stroke-linecap="round" stroke-linejoin="round"%s>`+"\n",
		layer, milli(look.width), dash)
	for _, each := range shapes {
		switch {
		case each.layer != layer:
		case each.text != "":
			s.text(each)
		case len(each.path.Strokes) > 0:
			fmt.Fprintf(&s.out, "<path d=\"%s\"/>\n", s.path(each.path))
		}
	}
	s.out.WriteString("</g>\n")
}

// path writes a path's commands. A turn to the left, with y up, is against the clock on
// the page too, which SVG calls a sweep of 0.
func (s *svg) path(p bench.Path) string {
	var b strings.Builder
	x, y := s.place(p.Start)
	b.WriteString("M" + x + " " + y)
	for _, a := range drawn(p) {
		x, y := s.place(a.To)
		r := math.Abs(a.Radius())
		if a.Turn == 0 || r > 1e5 { // 100 km: flat to 2e-6 mm over 20 m
			b.WriteString("L" + x + " " + y)
			continue
		}
		large, sweep := 0, 0
		if math.Abs(a.Turn) > math.Pi {
			large = 1
		}
		if a.Turn < 0 {
			sweep = 1
		}
		fmt.Fprintf(&b, "A%[1]s %[1]s 0 %[2]d %[3]d %[4]s %[5]s", milli(r), large, sweep, x, y)
	}
	if p.Closed {
		b.WriteString("Z")
	}
	return b.String()
}

// text writes a line of text.
func (s *svg) text(t shape) {
	x, y := s.place(t.left())
	turn := ""
	if t.angle != 0 {
		turn = fmt.Sprintf(` transform="rotate(%s %s %s)"`, strconv.FormatFloat(-t.angle*180/math.Pi, 'f', 4, 64), x, y)
	}
	fmt.Fprintf(&s.out, `<text x="%s" y="%s" font-size="%s" xml:space="preserve" fill="#000" stroke="none"%s>%s</text>`+"\n",
		x, y, milli(t.height/capital), turn, html.EscapeString(t.text)) // what is fitted has no sign that XML has not
}

// milli writes a length of m in millimetres.
func milli(x float64) string { return quantity.Decimal(x*1e3, 4) }
