package plots

import (
	"io"
	"math"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
)

// writePDF writes a scene as one page of its size.
func (s scene) writePDF(w io.Writer) error {
	canvas := newPDF(mm(s.width), mm(s.height))
	page := draw.New(canvas)
	for _, g := range s.groups {
		for _, e := range g.shapes {
			paint(page, e)
		}
	}
	_, err := canvas.WriteTo(w)
	return err
}

func mm(x float64) vg.Length { return vg.Length(x) * vg.Millimeter }

func point(p r2.Vec) vg.Point { return vg.Point{X: mm(p.X), Y: mm(p.Y)} }

// paint draws one shape.
func paint(page draw.Canvas, e shape) {
	if e.text != "" {
		style := text.Style{Color: e.fill, Font: typeface(mm(e.size)), YAlign: draw.YBottom, Handler: plot.DefaultTextHandler,
			XAlign: [...]text.XAlignment{draw.XLeft, draw.XCenter, draw.XRight}[e.align]}
		at := point(e.points[0])
		at.Y -= mm(e.size * 0.22) // the place of a text is on its base line
		page.FillText(style, at, e.text)
		return
	}
	var outline vg.Path
	switch {
	case e.radius > 0:
		centre := point(e.points[0])
		outline.Move(vg.Point{X: centre.X + mm(e.radius), Y: centre.Y})
		outline.Arc(centre, mm(e.radius), 0, 2*math.Pi)
	default:
		for i, p := range e.points {
			if i == 0 {
				outline.Move(point(p))
			} else {
				outline.Line(point(p))
			}
		}
	}
	if e.closed || e.radius > 0 {
		outline.Close()
	}
	if e.fill.A > 0 {
		page.SetColor(e.fill)
		page.Fill(outline)
	}
	if e.stroke.A > 0 {
		page.SetColor(e.stroke)
		page.SetLineWidth(mm(e.width))
		var dash []vg.Length
		for _, d := range e.dash {
			dash = append(dash, mm(d))
		}
		page.SetLineDash(dash, 0)
		page.Stroke(outline)
	}
}
