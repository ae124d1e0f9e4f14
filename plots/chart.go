package plots

import (
	"bytes"
	"cmp"
	"fmt"
	"image/color"
	"io"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgsvg"
)

// The size of a chart on paper.
const (
	chartWidth  = 7 * vg.Inch
	chartHeight = 4.5 * vg.Inch
)

// longestLabel is how many characters of a load's name a chart shows.
const longestLabel = 36

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
		{Color: soft, Width: 1.0},
		{Color: ink, Width: 1.6},
		{Color: blue, Width: 1.6, Dashes: []vg.Length{7, 3}},
		{Color: orange, Width: 1.6, Dashes: []vg.Length{2, 2}},
		{Color: rgb(0, 130, 100), Width: 1.1},
		{Color: rgb(170, 90, 140), Width: 1.3, Dashes: []vg.Length{7, 2, 2, 2}},
		{Color: rgb(150, 100, 0), Width: 1.3, Dashes: []vg.Length{1, 2}},
		{Color: rgb(60, 160, 220), Width: 1.3, Dashes: []vg.Length{4, 2}},
	}
	return lines[i%len(lines)]
}

// A chart is a few curves over one axis.
type chart struct {
	title, x, y string
	curves      []series
	lines       []float64  // tilts to look at, drawn upright, degrees
	low, high   plotter.XY // the range shown
}

// reach widens the range shown to a point.
func (c *chart) reach(p plotter.XY) {
	c.low = plotter.XY{X: min(c.low.X, p.X), Y: min(c.low.Y, p.Y)}
	c.high = plotter.XY{X: max(c.high.X, p.X), Y: max(c.high.Y, p.Y)}
}

// spread leaves a little room below and above the curves.
func (c *chart) spread() {
	room := 0.06 * max(c.high.Y-c.low.Y, 1e-9)
	c.low.Y, c.high.Y = c.low.Y-room, c.high.Y+room
}

// plot lays the chart out: the curves, and to their right the labels, each led to its
// own line.
func (c chart) plot() (*plot.Plot, error) {
	p := newPlot(c.title, c.x, c.y)
	p.X.Padding, p.Y.Padding = 4, 4
	p.X.Tick.Marker = plot.TickerFunc(func(low, _ float64) []plot.Tick { return fifths(low, c.high.X) })
	grid := plotter.NewGrid()
	grid.Vertical.Color, grid.Horizontal.Color = faint, faint
	p.Add(grid, &plotter.Line{XYs: plotter.XYs{{X: c.low.X}, {X: c.high.X}},
		LineStyle: draw.LineStyle{Color: ink, Width: 0.8}})
	for i, tilt := range c.lines {
		for _, x := range []float64{-tilt, tilt} {
			p.Add(&plotter.Line{XYs: plotter.XYs{{X: x, Y: c.low.Y}, {X: x, Y: c.high.Y}},
				LineStyle: draw.LineStyle{Color: soft, Width: 1, Dashes: []vg.Length{1.5, 2}}})
		}
		p.Add(overlay(func(canvas draw.Canvas, p *plot.Plot) {
			at := placeOn(canvas, p, plotter.XY{X: tilt, Y: c.low.Y})
			at = at.Add(vg.Point{X: 2, Y: 2 + vg.Length(12*i)})
			canvas.FillText(lettered(soft, 9, draw.YBottom), at, fmt.Sprintf("%g degrees", tilt))
		}))
	}
	for _, k := range c.curves {
		line, err := plotter.NewLine(k.points)
		if err != nil {
			return nil, err
		}
		line.LineStyle = k.line
		mark := draw.GlyphStyle{Color: k.line.Color, Radius: 3.2, Shape: draw.CircleGlyph{}}
		ring := mark
		ring.Shape = draw.RingGlyph{}
		p.Add(line, &plotter.Scatter{XYs: k.dots, GlyphStyle: mark}, &plotter.Scatter{XYs: k.rings, GlyphStyle: ring})
	}
	p.Add(overlay(c.labels))
	p.X.Min, p.X.Max = c.low.X, c.high.X+c.room()*(c.high.X-c.low.X)
	p.Y.Min, p.Y.Max = c.low.Y, c.high.Y
	return p, nil
}

// newPlot returns an empty plot.
func newPlot(title, x, y string) *plot.Plot {
	p := plot.New()
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
func (c chart) room() float64 {
	longest := vg.Length(0)
	for _, k := range c.curves {
		longest = max(longest, labelStyle.Width(k.label))
	}
	share := float64(longest / (chartWidth - 60)) // of the chart inside its axis
	return (0.07 + share) / (1 - share)
}

// typeface is the one face of all pictures; size in points.
func typeface(size vg.Length) font.Font {
	return font.Font{Typeface: "Liberation", Variant: "Sans", Size: size}
}

// labelStyle is that of a curve's label.
var labelStyle = lettered(ink, 9.5, draw.YCenter)

// lettered is a style of text that begins at its place.
func lettered(colour color.RGBA, size vg.Length, up text.YAlignment) text.Style {
	return text.Style{Color: colour, Font: typeface(size), XAlign: draw.XLeft, YAlign: up, Handler: plot.DefaultTextHandler}
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
func (c chart) labels(canvas draw.Canvas, p *plot.Plot) {
	curves := slices.Clone(c.curves)
	slices.SortStableFunc(curves, func(a, b series) int { return cmp.Compare(b.anchor.Y, a.anchor.Y) })
	const lineHeight = vg.Length(13)
	places := make([]vg.Point, len(curves)) // of the labels
	for i, k := range curves {              // downwards, as near to the anchor as the one above lets it
		places[i] = placeOn(canvas, p, plotter.XY{X: c.high.X + 0.05*(c.high.X-c.low.X), Y: k.anchor.Y})
		if i > 0 {
			places[i].Y = min(places[i].Y, places[i-1].Y-lineHeight)
		}
	}
	low := canvas.Min.Y + lineHeight/2
	for i := len(places) - 1; i >= 0 && places[i].Y < low; i-- { // and back up from the bottom
		places[i].Y = low
		low += lineHeight
	}
	for i, k := range curves {
		from := placeOn(canvas, p, k.anchor)
		canvas.StrokeLine2(draw.LineStyle{Color: k.line.Color, Width: 0.5}, from.X, from.Y, places[i].X-3, places[i].Y)
		canvas.FillText(labelStyle, places[i], k.label)
	}
}

// pictureOf returns a chart as a picture, with a little room around it; alt says what it shows.
func pictureOf(name, alt string, plot func() (*plot.Plot, error)) Picture {
	return Picture{Name: name, Alt: alt, draw: func(w io.Writer, f Format) error {
		p, err := plot()
		if err != nil {
			return err
		}
		var canvas vg.CanvasWriterTo = vgsvg.New(chartWidth, chartHeight)
		if f == PDF {
			canvas = newPDF(chartWidth, chartHeight)
		}
		p.Draw(draw.Crop(draw.NewCanvas(canvas, chartWidth, chartHeight), 6, -6, 6, -8))
		var out bytes.Buffer
		if _, err := canvas.WriteTo(&out); err != nil {
			return err
		}
		text := out.Bytes()
		if f != PDF {
			text = styles.ReplaceAllFunc(text, attributes)
		}
		if f == inPage {
			_, svg, _ := bytes.Cut(text, []byte("<svg"))
			text = append([]byte(`<svg role="img" aria-label="`+escaped(alt)+`"`), svg...)
		}
		_, err = w.Write(text)
		return err
	}}
}

// styles are the style attributes of an SVG; a text has no quotes of its own.
var styles = regexp.MustCompile(`style="[^"]*"`)

// attributes returns a style as attributes of their own, which a page that forbids styles
// lets through, and without those that say the usual.
func attributes(style []byte) []byte {
	var list []string
	for _, entry := range strings.Split(strings.Trim(string(style[len("style="):]), `"`), ";") {
		name, value, found := strings.Cut(strings.TrimSpace(entry), ":")
		if !found || value == "normal" {
			continue
		}
		if name == "font-family" {
			value = families
		}
		list = append(list, fmt.Sprintf(`%s="%s"`, name, value))
	}
	return []byte(strings.Join(list, " "))
}

// families are the faces an SVG asks for; the first is the one it was measured with.
const families = "Liberation Sans,Arial,Helvetica,sans-serif"
