package plots

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"rockerwright/plots/scene"
)

// A series is one load's line on a chart.
type series struct {
	label       string
	line        draw.LineStyle
	points      plotter.XYs
	anchor      plotter.XY  // the point of the line at which its label stands
	dots, rings plotter.XYs // that mark places of it
}

// lineOf returns the line of the i-th load; after eight they begin again: hues that the colour-blind tell
// apart (the palette of Okabe and Ito, 2008), of different lightness, each with a dash of its own.
func lineOf(i int) draw.LineStyle {
	lines := [...]draw.LineStyle{
		{Color: scene.Soft, Width: 1.0},
		{Color: scene.Ink, Width: 1.6},
		{Color: scene.Blue, Width: 1.6, Dashes: []vg.Length{7, 3}},
		{Color: scene.Orange, Width: 1.6, Dashes: []vg.Length{2, 2}},
		{Color: scene.Colour("#008264"), Width: 1.1},
		{Color: scene.Colour("#aa5a8c"), Width: 1.3, Dashes: []vg.Length{7, 2, 2, 2}},
		{Color: scene.Colour("#966400"), Width: 1.3, Dashes: []vg.Length{1, 2}},
		{Color: scene.Colour("#3ca0dc"), Width: 1.3, Dashes: []vg.Length{4, 2}},
	}
	return lines[i%len(lines)]
}

// curves are a few lines over one axis.
type curves struct {
	title, x, y string
	curves      []series
	lines       []float64  // tilts to look at, drawn upright, degrees
	low, high   plotter.XY // the range shown
}

// reach widens the range shown to a point.
func (k *curves) reach(p plotter.XY) {
	k.low = plotter.XY{X: min(k.low.X, p.X), Y: min(k.low.Y, p.Y)}
	k.high = plotter.XY{X: max(k.high.X, p.X), Y: max(k.high.Y, p.Y)}
}

// spread leaves a little room below and above the curves.
func (k *curves) spread() {
	room := 0.06 * max(k.high.Y-k.low.Y, 1e-9)
	k.low.Y, k.high.Y = k.low.Y-room, k.high.Y+room
}

// plot lays the chart out: the curves, and to their right the labels, each led to its own line.
func (k curves) plot() *plot.Plot {
	p := newPlot(k.title, k.x, k.y)
	p.X.Padding, p.Y.Padding = 4, 4
	p.X.Tick.Marker = plot.TickerFunc(func(low, _ float64) []plot.Tick { return fifths(low, k.high.X) })
	grid := plotter.NewGrid()
	grid.Vertical.Color, grid.Horizontal.Color = scene.Faint, scene.Faint
	p.Add(grid, &plotter.Line{XYs: plotter.XYs{{X: k.low.X}, {X: k.high.X}},
		LineStyle: draw.LineStyle{Color: scene.Ink, Width: 0.8}})
	for i, tilt := range k.lines {
		for _, x := range []float64{-tilt, tilt} {
			p.Add(&plotter.Line{XYs: plotter.XYs{{X: x, Y: k.low.Y}, {X: x, Y: k.high.Y}},
				LineStyle: draw.LineStyle{Color: scene.Soft, Width: 1, Dashes: []vg.Length{1.5, 2}}})
		}
		p.Add(overlay(func(canvas draw.Canvas, p *plot.Plot) {
			at := placeOn(canvas, p, plotter.XY{X: tilt, Y: k.low.Y})
			at = at.Add(vg.Point{X: 2, Y: 2 + vg.Length(12*i)})
			canvas.FillText(lettered(scene.Soft, 9, draw.YBottom), at, fmt.Sprintf("%g degrees", tilt))
		}))
	}
	for _, s := range k.curves {
		line, err := plotter.NewLine(s.points)
		if err != nil {
			panic(fmt.Sprintf("plots: the curve of %q: %v", s.label, err))
		}
		line.LineStyle = s.line
		mark := draw.GlyphStyle{Color: s.line.Color, Radius: 3.2, Shape: draw.CircleGlyph{}}
		ring := mark
		ring.Shape = draw.RingGlyph{}
		p.Add(line, &plotter.Scatter{XYs: s.dots, GlyphStyle: mark}, &plotter.Scatter{XYs: s.rings, GlyphStyle: ring})
	}
	p.Add(overlay(k.labels))
	p.X.Min, p.X.Max = k.low.X, k.high.X+k.room()*(k.high.X-k.low.X)
	p.Y.Min, p.Y.Max = k.low.Y, k.high.Y
	return p
}

func newPlot(title, x, y string) *plot.Plot {
	p := plot.New()
	p.BackgroundColor = nil // the scene's
	p.Title.Text, p.X.Label.Text, p.Y.Label.Text = title, x, y
	p.Title.TextStyle.Font, p.Title.Padding = typeface(12), 8
	for _, axis := range []*plot.Axis{&p.X, &p.Y} {
		axis.Tick.Label.Font = typeface(9)
		if axis.Label.Text != "" { // an empty one keeps its room
			axis.Label.TextStyle.Font = typeface(10)
		}
	}
	return p
}

// room returns how much wider than its curves a chart must be for their labels.
func (k curves) room() float64 {
	longest := vg.Length(0)
	for _, s := range k.curves {
		longest = max(longest, labelStyle.Width(s.label))
	}
	share := float64(longest / (chartWidth - 60)) // of the chart inside its axis
	return (0.07 + share) / (1 - share)
}

// typeface is the one face of all pictures; size in points.
func typeface(size vg.Length) font.Font {
	return font.Font{Typeface: "Liberation", Variant: "Sans", Size: size}
}

var labelStyle = lettered(scene.Ink, 9.5, draw.YCenter)

// lettered is a style of text that begins at its place.
func lettered(colour scene.Colour, size vg.Length, up text.YAlignment) text.Style {
	return text.Style{Color: colour, Font: typeface(size), XAlign: draw.XLeft, YAlign: up,
		Handler: plot.DefaultTextHandler}
}

// An overlay draws itself over a plot.
type overlay func(canvas draw.Canvas, p *plot.Plot)

// Plot draws it.
func (o overlay) Plot(canvas draw.Canvas, p *plot.Plot) { o(canvas, p) }

// placeOn returns where a point of a plot lies on its page.
func placeOn(canvas draw.Canvas, p *plot.Plot, at plotter.XY) vg.Point {
	toX, toY := p.Transforms(&canvas)
	return vg.Point{X: toX(at.X), Y: toY(at.Y)}
}

// fifths marks each fifth degree between two tilts, and names each fifteenth.
func fifths(low, high float64) []plot.Tick {
	var ticks []plot.Tick
	for n := int(math.Ceil(low/5)) * 5; float64(n) <= high; n += 5 {
		tick := plot.Tick{Value: float64(n)}
		if n%15 == 0 {
			tick.Label = strconv.Itoa(n)
		}
		ticks = append(ticks, tick)
	}
	return ticks
}

// labels draws the names of the curves in a column at the right, in the order of their anchors' heights so
// that no two leaders cross, and never nearer to each other than a line of text.
func (k curves) labels(canvas draw.Canvas, p *plot.Plot) {
	curves := slices.Clone(k.curves)
	slices.SortStableFunc(curves, func(a, b series) int { return cmp.Compare(b.anchor.Y, a.anchor.Y) })
	const lineHeight = vg.Length(13)
	places := make([]vg.Point, len(curves)) // of the labels
	for i, s := range curves {              // downwards, as near to the anchor as the one above lets it
		places[i] = placeOn(canvas, p, plotter.XY{X: k.high.X + 0.05*(k.high.X-k.low.X), Y: s.anchor.Y})
		if i > 0 {
			places[i].Y = min(places[i].Y, places[i-1].Y-lineHeight)
		}
	}
	low := canvas.Min.Y + lineHeight/2
	for i := len(places) - 1; i >= 0 && places[i].Y < low; i-- { // and back up from the bottom
		places[i].Y = low
		low += lineHeight
	}
	for i, s := range curves {
		from := placeOn(canvas, p, s.anchor)
		canvas.StrokeLine2(draw.LineStyle{Color: s.line.Color, Width: 0.5}, from.X, from.Y, places[i].X-3, places[i].Y)
		canvas.FillText(labelStyle, places[i], s.label)
	}
}
