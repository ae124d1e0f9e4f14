package plots

import (
	"bytes"
	"fmt"
	"image/color"
	"io"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"gonum.org/v1/plot"
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

// A curve is one load's line on a chart.
type curve struct {
	label  string
	line   line
	points plotter.XYs
	anchor plotter.XY // the point of the line at which its label stands
	dots   plotter.XYs
	rings  plotter.XYs
}

// A chart is a few curves over one axis.
type chart struct {
	title, x, y string
	alt         string
	curves      []curve
	lines       []float64  // tilts to look at, drawn upright, degrees
	low, high   plotter.XY // the range shown
}

// write draws the chart.
func (c chart) write(w io.Writer, f Format) error {
	p, err := c.plot()
	if err != nil {
		return err
	}
	return writePlot(w, f, p, c.alt)
}

// plot lays the chart out: the curves, and to their right the labels, each led to its
// own line.
func (c chart) plot() (*plot.Plot, error) {
	p := newPlot(c.title, c.x, c.y)
	p.X.Padding, p.Y.Padding = 4, 4
	wide := c.high.X - c.low.X
	p.X.Tick.Marker = plot.TickerFunc(func(low, _ float64) []plot.Tick { return fifths(low, c.high.X) })
	grid := plotter.NewGrid()
	grid.Vertical.Color, grid.Horizontal.Color = rgb(225, 225, 225), rgb(225, 225, 225)
	zero, err := plotter.NewLine(plotter.XYs{{X: c.low.X, Y: 0}, {X: c.high.X, Y: 0}})
	if err != nil {
		return nil, err
	}
	zero.Width = 0.8
	p.Add(grid, zero)
	for i, tilt := range c.lines {
		for _, x := range []float64{-tilt, tilt} {
			upright, err := plotter.NewLine(plotter.XYs{{X: x, Y: c.low.Y}, {X: x, Y: c.high.Y}})
			if err != nil {
				return nil, err
			}
			upright.Color, upright.Dashes = soft, []vg.Length{1.5, 2}
			p.Add(upright)
		}
		p.Add(named{fmt.Sprintf("%g degrees", tilt), plotter.XY{X: tilt, Y: c.low.Y}, vg.Length(12 * i)})
	}
	for _, k := range c.curves {
		if err := k.addTo(p); err != nil {
			return nil, err
		}
	}
	p.Add(labels{slices.Clone(c.curves), c.high.X + 0.05*wide})
	p.X.Min, p.X.Max = c.low.X, c.high.X+c.room()*wide
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

// labelStyle is that of a curve's label.
var labelStyle = lettered(ink, 9.5, draw.YCenter)

// lettered is a style of text that begins at its place.
func lettered(colour color.RGBA, size vg.Length, up text.YAlignment) text.Style {
	return text.Style{Color: colour, Font: typeface(size), XAlign: draw.XLeft, YAlign: up, Handler: plot.DefaultTextHandler}
}

// addTo draws one curve, its rest and its tips.
func (k curve) addTo(p *plot.Plot) error {
	drawn, err := plotter.NewLine(k.points)
	if err != nil {
		return err
	}
	drawn.Color, drawn.Width, drawn.Dashes = k.line.colour, k.line.width, k.line.dash
	p.Add(drawn)
	for _, marks := range []struct {
		at    plotter.XYs
		shape draw.GlyphDrawer
	}{{k.dots, draw.CircleGlyph{}}, {k.rings, draw.RingGlyph{}}} {
		if len(marks.at) == 0 {
			continue
		}
		points, err := plotter.NewScatter(marks.at)
		if err != nil {
			return err
		}
		points.GlyphStyle = draw.GlyphStyle{Color: k.line.colour, Radius: 3.2, Shape: marks.shape}
		p.Add(points)
	}
	return nil
}

// A named place has a text beside it.
type named struct {
	text string
	at   plotter.XY
	up   vg.Length // above it
}

// Plot writes the text.
func (n named) Plot(canvas draw.Canvas, p *plot.Plot) {
	toX, toY := p.Transforms(&canvas)
	canvas.FillText(lettered(soft, 9, draw.YBottom), vg.Point{X: toX(n.at.X) + 2, Y: toY(n.at.Y) + 2 + n.up}, n.text)
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

// labels are the names of curves in a column at the right.
type labels struct {
	curves []curve
	x      float64
}

// Plot draws the labels, in the order of their anchors' heights so that no two leaders
// cross, and never nearer to each other than a line of text.
func (l labels) Plot(canvas draw.Canvas, p *plot.Plot) {
	toX, toY := p.Transforms(&canvas)
	slices.SortStableFunc(l.curves, func(a, b curve) int {
		return int(math.Copysign(1, b.anchor.Y-a.anchor.Y))
	})
	const lineHeight = vg.Length(13)
	at := make([]vg.Length, len(l.curves))
	for i, k := range l.curves { // downwards, as near to the anchor as the one above lets it
		at[i] = toY(k.anchor.Y)
		if i > 0 {
			at[i] = min(at[i], at[i-1]-lineHeight)
		}
	}
	if low := canvas.Min.Y + lineHeight/2; len(at) > 0 && at[len(at)-1] < low { // and back up from the bottom
		at[len(at)-1] = low
		for i := len(at) - 2; i >= 0; i-- {
			at[i] = max(at[i], at[i+1]+lineHeight)
		}
	}
	x := toX(l.x)
	for i, k := range l.curves {
		style := draw.LineStyle{Color: k.line.colour, Width: 0.5}
		canvas.StrokeLine2(style, toX(k.anchor.X), toY(k.anchor.Y), x-3, at[i])
		canvas.FillText(labelStyle, vg.Point{X: x, Y: at[i]}, k.label)
	}
}

// writePlot writes a laid-out plot. alt says what it shows.
func writePlot(w io.Writer, f Format, p *plot.Plot, alt string) error {
	if f == PDF {
		canvas := newPDF(chartWidth, chartHeight)
		p.Draw(paddedPage(canvas))
		_, err := canvas.WriteTo(w)
		return err
	}
	canvas := vgsvg.New(chartWidth, chartHeight)
	p.Draw(paddedPage(canvas))
	var svg bytes.Buffer
	if _, err := canvas.WriteTo(&svg); err != nil {
		return err
	}
	text := styles.ReplaceAllFunc(svg.Bytes(), attributes)
	if f == inPage {
		text = bytes.Replace(text[bytes.Index(text, []byte("<svg")):], []byte("<svg"), []byte("<svg role=\"img\" aria-label=\""+escaped(alt)+"\""), 1)
	}
	_, err := w.Write(text)
	return err
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

// paddedPage returns a page with a little room around what is drawn.
func paddedPage(canvas vg.CanvasSizer) draw.Canvas {
	return draw.Crop(draw.New(canvas), 6, -6, 6, -8)
}

// families are the faces an SVG asks for; the first is the one it was measured with.
const families = "Liberation Sans,Arial,Helvetica,sans-serif"
