package plots

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"image/color"
	"io"
	"strconv"
	"strings"
)

// writeSVG writes a scene with one <g> a group, its name as id; as part of a page, where
// several scenes may stand, as class.
func (s scene) writeSVG(w io.Writer, f Format) error {
	var b bytes.Buffer
	name := "id"
	if f == inPage {
		name = "class"
	}
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" width="%smm" height="%smm" viewBox="0 0 %s %s" role="img" font-family="%s"`,
		short(s.width), short(s.height), short(s.width), short(s.height), families)
	if s.samples != "" {
		fmt.Fprintf(&b, ` data-samples="%s"`, s.samples)
	}
	if f == inPage {
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
			s.element(&b, shape)
		}
		b.WriteString("</g>\n")
	}
	b.WriteString("</svg>\n")
	_, err := w.Write(b.Bytes())
	return err
}

// element writes one shape, turning y down.
func (s scene) element(b *bytes.Buffer, e shape) {
	at := func(i int) (x, y string) { return short(e.points[i].X), short(s.height - e.points[i].Y) }
	style := ""
	if e.stroke.A > 0 {
		style = fmt.Sprintf(` stroke="%s" stroke-width="%s" stroke-linecap="round" stroke-linejoin="round"`, hex(e.stroke), short(e.width))
		if len(e.dash) > 0 {
			var dash []string
			for _, d := range e.dash {
				dash = append(dash, short(d))
			}
			style += ` stroke-dasharray="` + strings.Join(dash, " ") + `"`
		}
	}
	fill := "none"
	if e.fill.A > 0 {
		fill = hex(e.fill)
	}
	switch {
	case e.text != "":
		x, y := at(0)
		if e.halo {
			style = ` stroke="#fff" stroke-width="0.9" stroke-linejoin="round" paint-order="stroke"`
		}
		fmt.Fprintf(b, `<text x="%s" y="%s" font-size="%s" text-anchor="%s" fill="%s"%s>%s</text>`+"\n",
			x, y, short(e.size), [...]string{"start", "middle", "end"}[e.align], fill, style, escaped(e.text))
	case e.radius > 0:
		x, y := at(0)
		fmt.Fprintf(b, `<circle cx="%s" cy="%s" r="%s" fill="%s"%s/>`+"\n", x, y, short(e.radius), fill, style)
	default:
		var d strings.Builder
		for i := range e.points {
			x, y := at(i)
			d.WriteString(map[bool]string{true: "M", false: "L"}[i == 0] + x + " " + y)
		}
		if e.closed {
			d.WriteString("Z")
		}
		fmt.Fprintf(b, `<path d="%s" fill="%s"%s/>`+"\n", d.String(), fill, style)
	}
}

// short writes a number of mm to a hundredth.
func short(x float64) string {
	text := strings.TrimRight(strings.TrimRight(strconv.FormatFloat(x, 'f', 2, 64), "0"), ".")
	if text == "-0" {
		return "0"
	}
	return text
}

func hex(c color.RGBA) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }

// escaped returns a text as it stands inside XML.
func escaped(text string) string {
	var b bytes.Buffer
	if err := xml.EscapeText(&b, []byte(text)); err != nil {
		return ""
	}
	return b.String()
}
