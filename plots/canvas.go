package plots

import (
	"fmt"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/recorder"

	"rockerwright/plots/scene"
)

// The size of a chart on paper.
const (
	chartWidth  = 7 * vg.Inch
	chartHeight = 4.5 * vg.Inch
)

// pictureOf draws a plot, with a little room around it, as a scene; alt says what it shows.
func pictureOf(p *plot.Plot, name, alt string) scene.Picture {
	var record recorder.Canvas
	p.Draw(draw.Crop(draw.NewCanvas(&record, chartWidth, chartHeight), 6, -6, 6, -8))
	chart, pen := scene.Group{Name: "chart"}, scene.Pen{Square: true}
	turned := 0.0 // by how much the page is turned, which it is for a text alone
	for _, action := range record.Actions {
		switch a := action.(type) {
		case *recorder.SetColor:
			r, g, b, _ := a.Color.RGBA()
			pen.Colour = scene.Colour(fmt.Sprintf("#%02x%02x%02x", r>>8, g>>8, b>>8))
		case *recorder.SetLineWidth:
			pen.Width = mm(a.Width)
		case *recorder.SetLineDash:
			pen.Dash = nil
			for _, length := range a.Dashes {
				pen.Dash = append(pen.Dash, mm(length))
			}
		case *recorder.Push:
		case *recorder.Rotate:
			turned = a.Angle
		case *recorder.Pop:
			turned = 0
		case *recorder.FillString:
			text := scene.Words(r2.Rotate(place(a.Point), turned, r2.Vec{}), mm(a.Size), scene.Left, a.String)
			text.Angle = turned
			chart.Add(text.Filled(pen.Colour))
		case *recorder.Stroke:
			if pen.Width > 0 {
				chart.Add(shapesOf(a.Path, pen, "")...)
			}
		case *recorder.Fill:
			chart.Add(shapesOf(a.Path, scene.Pen{}, pen.Colour)...)
		default:
			panic("plots: a scene cannot draw " + action.Call())
		}
	}
	return scene.Picture{Name: name, Scene: scene.Scene{Width: mm(chartWidth), Height: mm(chartHeight), White: true,
		Decimals: 3, Title: p.Title.Text, Alt: alt, Groups: []scene.Group{chart}}}
}

// shapesOf returns the lines and rings of a path.
func shapesOf(path vg.Path, pen scene.Pen, fill scene.Colour) []scene.Shape {
	var list []scene.Shape
	for _, step := range path {
		last := len(list) - 1
		switch at := place(step.Pos); step.Type {
		case vg.MoveComp:
			list = append(list, pen.Line(at).Filled(fill))
		case vg.LineComp:
			list[last].Points = append(list[last].Points, at)
		case vg.ArcComp: // of the marks alone, which are whole circles
			list[last] = pen.Ring(at, mm(step.Radius)).Filled(fill)
		case vg.CloseComp:
			list[last].Closed = true
		}
	}
	return list
}

func mm(x vg.Length) float64 { return float64(x / vg.Millimeter) }

func place(p vg.Point) r2.Vec { return r2.Vec{X: mm(p.X), Y: mm(p.Y)} }
