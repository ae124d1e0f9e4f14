package plots

import (
	"bytes"
	"cmp"
	"encoding/xml"
	"fmt"
	"image/color"
	"io"
	"strings"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/quantity"
)

// writeSVG writes a scene with one <g> a group, its name as id; as part of a page, where
// several scenes may stand, as class.
func (s scene) writeSVG(w io.Writer, f Format) error {
	var b bytes.Buffer
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s" role="img" font-family="%[3]s"`,
		short(s.width), short(s.height), families)
	if s.samples != "" {
		fmt.Fprintf(&b, ` data-samples="%s"`, s.samples)
	}
	name := "id"
	if f == inPage {
		name = "class"
		fmt.Fprintf(&b, " aria-label=\"%s\">\n", escaped(s.alt))
	} else {
		fmt.Fprintf(&b, ">\n<title>%s</title>\n<desc>%s</desc>\n", escaped(s.title), escaped(s.alt))
	}
	b.WriteString("<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n")
	for _, g := range s.groups {
		fmt.Fprintf(&b, "<g %s=\"%s\"", name, escaped(g.name))
		if g.moves != "" {
			fmt.Fprintf(&b, ` data-moves="%s"`, g.moves)
		}
		if g.still {
			b.WriteString(` data-still=""`)
		}
		b.WriteString(">\n")
		for _, shape := range g.shapes {
			shape.element(&b, s.height)
		}
		b.WriteString("</g>\n")
	}
	b.WriteString("</svg>\n")
	_, err := w.Write(b.Bytes())
	return err
}

// element writes the shape, turning y down from the height of the paper.
func (e shape) element(b *bytes.Buffer, height float64) {
	at := func(p r2.Vec) (x, y string) { return short(p.X), short(height - p.Y) }
	fill, style := cmp.Or(hex(e.fill), "none"), ""
	if e.colour.A > 0 {
		style = fmt.Sprintf(` stroke="%s" stroke-width="%s" stroke-linecap="round" stroke-linejoin="round"`, hex(e.colour), short(e.width))
		if len(e.dash) > 0 {
			var dash []string
			for _, d := range e.dash {
				dash = append(dash, short(d))
			}
			style += ` stroke-dasharray="` + strings.Join(dash, " ") + `"`
		}
	}
	switch {
	case e.text != "":
		x, y := at(e.points[0])
		fmt.Fprintf(b, `<text x="%s" y="%s" font-size="%s" text-anchor="%s" fill="%s"%s>%s</text>`+"\n",
			x, y, short(e.size), [...]string{"start", "middle", "end"}[e.align], fill, style, escaped(e.text))
	case e.radius > 0:
		x, y := at(e.points[0])
		fmt.Fprintf(b, `<circle cx="%s" cy="%s" r="%s" fill="%s"%s/>`+"\n", x, y, short(e.radius), fill, style)
	default:
		var d strings.Builder
		verb := "M"
		for _, p := range e.points {
			x, y := at(p)
			d.WriteString(verb + x + " " + y)
			verb = "L"
		}
		if e.closed {
			d.WriteString("Z")
		}
		fmt.Fprintf(b, `<path d="%s" fill="%s"%s/>`+"\n", d.String(), fill, style)
	}
}

// short writes a number of mm to a hundredth.
func short(x float64) string { return quantity.Decimal(x, 2) }

// hex returns a colour as SVG has it, "" for one that draws nothing.
func hex(c color.RGBA) string {
	if c.A == 0 {
		return ""
	}
	return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B)
}

// escaped returns a text as it stands inside XML.
func escaped(text string) string {
	var b strings.Builder
	_ = xml.EscapeText(&b, []byte(text)) // a Builder takes all
	return b.String()
}
