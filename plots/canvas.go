package plots

import (
	"fmt"
	"image/color"

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

// sceneOf draws a plot, with a little room around it, as a scene. The error is one for what the plotting library
// draws and a scene has not.
func sceneOf(p *plot.Plot, alt string) (scene.Scene, error) {
	var record recorder.Canvas
	p.Draw(draw.Crop(draw.NewCanvas(&record, chartWidth, chartHeight), 6, -6, 6, -8))
	chart := scene.Group{Name: "chart"}
	type state struct {
		pen    scene.Pen
		turned float64
	}
	var now state
	var kept []state
	for _, action := range record.Actions {
		switch a := action.(type) {
		case *recorder.SetColor:
			now.pen.Colour = colourOf(a.Color)
		case *recorder.SetLineWidth:
			now.pen.Width = mm(a.Width)
		case *recorder.SetLineDash:
			now.pen.Dash = nil
			for _, length := range a.Dashes {
				now.pen.Dash = append(now.pen.Dash, mm(length))
			}
		case *recorder.Push:
			kept = append(kept, now)
		case *recorder.Pop:
			now, kept = kept[len(kept)-1], kept[:len(kept)-1]
		case *recorder.Rotate:
			now.turned += a.Angle
		case *recorder.FillString:
			chart.Add(scene.Shape{Fill: now.pen.Colour, Points: []r2.Vec{r2.Rotate(place(a.Point), now.turned, r2.Vec{})},
				Text: a.String, Size: mm(a.Size), Angle: now.turned})
		case *recorder.Stroke:
			pen := now.pen
			pen.Square = true
			if pen.Width <= 0 {
				continue
			}
			for _, s := range shapesOf(a.Path) {
				s.Pen = pen
				chart.Add(s)
			}
		case *recorder.Fill:
			for _, s := range shapesOf(a.Path) {
				chart.Add(s.Filled(now.pen.Colour))
			}
		default:
			return scene.Scene{}, fmt.Errorf("plots: a scene cannot draw %s", action.Call())
		}
	}
	return scene.Scene{Width: mm(chartWidth), Height: mm(chartHeight), White: true, Decimals: 3,
		Title: p.Title.Text, Alt: alt, Groups: []scene.Group{chart}}, nil
}

// shapesOf returns the lines and rings of a path.
func shapesOf(path vg.Path) []scene.Shape {
	var list []scene.Shape
	for _, step := range path {
		at := place(step.Pos)
		if step.Type == vg.MoveComp {
			list = append(list, scene.Shape{Points: []r2.Vec{at}})
			continue
		}
		switch s := &list[len(list)-1]; step.Type {
		case vg.LineComp:
			s.Points = append(s.Points, at)
		case vg.ArcComp: // of the marks alone, which are whole circles
			*s = scene.Shape{Points: []r2.Vec{at}, Radius: mm(step.Radius)}
		case vg.CloseComp:
			s.Closed = true
		}
	}
	return list
}

func mm(x vg.Length) float64 { return float64(x / vg.Millimeter) }

func place(p vg.Point) r2.Vec { return r2.Vec{X: mm(p.X), Y: mm(p.Y)} }

// colourOf returns a colour of the plotting library, nil being black.
func colourOf(c color.Color) scene.Colour {
	if c == nil {
		return scene.Ink
	}
	r, g, b, _ := c.RGBA()
	return scene.Colour(fmt.Sprintf("#%02x%02x%02x", r>>8, g>>8, b>>8))
}
