package plots

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"rockerwright/plots/scene"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

type bar struct {
	label string
	value float64
	said  string // the value as it stands behind the bar
}

// A barChart is bars over each other, the first on top.
type barChart struct {
	title, x string
	bars     []bar
}

// Effects draws what each change of a table does to the fall of the seat, owner at ease, the largest on top.
func Effects(t size.Table) scene.Picture {
	d := t.Report.Design
	c := barChart{title: ChartOf(d).title("what each change does"),
		x: "degrees the seat falls further back, owner at ease (left: forward)"}
	for _, r := range t.Rows {
		if by := inDegrees(r.After[size.FallAtEase] - r.Before[size.FallAtEase]); !math.IsNaN(by) {
			label := fmt.Sprintf("%s, %s", cmp.Or(r.Key, r.Label), quantity.With(r.Change, r.Kind, d.Units))
			c.bars = append(c.bars, bar{label, by, fmt.Sprintf("%+.1f", by)})
		}
	}
	return c.picture("what each change does", "Change of the seat's fall")
}

// Shares draws on what the fall of the seat with the owner at ease hangs in many chairs.
func Shares(d piece.Design, s size.Study) scene.Picture {
	c := barChart{title: ChartOf(d).title("on what the rest hangs"),
		x: fmt.Sprintf("%% of the variance of the seat's fall, owner at ease, in %d chairs", s.Chairs)}
	for _, spread := range s.Spreads {
		if spread.Quantity != size.FallAtEase {
			continue
		}
		for k, share := range spread.Shares {
			v := s.Varied[k]
			label := fmt.Sprintf("%s, held to %s", v.Key, quantity.With(v.Tolerance, v.Measure.Kind, d.Units))
			c.bars = append(c.bars, bar{label, 100 * share, fmt.Sprintf("%.0f %%", 100*share)})
		}
	}
	return c.picture("on what the rest hangs", "Shares of the variance of the seat's fall")
}

// picture returns the largest bars as a picture.
func (c barChart) picture(name, what string) scene.Picture {
	slices.SortStableFunc(c.bars, func(a, b bar) int { return cmp.Compare(math.Abs(b.value), math.Abs(a.value)) })
	const most = 14 // bars that one picture tells apart
	c.bars = c.bars[:min(most, len(c.bars))]
	var alt []string
	for _, b := range c.bars {
		alt = append(alt, b.label+" "+b.said)
	}
	return pictureOf(c.plot(), name, what+": "+strings.Join(alt, "; ")+".")
}

// plot lays the chart out.
func (c barChart) plot() *plot.Plot {
	p := newPlot(c.title, c.x, "")
	p.X.Padding = 4
	var values plotter.Values
	var labels []string
	for _, b := range slices.Backward(c.bars) {
		values, labels = append(values, b.value), append(labels, b.label)
	}
	if len(values) > 0 {
		bars, err := plotter.NewBarChart(values, 11)
		if err != nil {
			panic("plots: the bars: " + err.Error())
		}
		bars.Horizontal, bars.Color, bars.LineStyle.Width = true, scene.Blue, 0
		grid := plotter.NewGrid()
		grid.Horizontal.Width, grid.Vertical.Color = 0, scene.Faint
		p.Add(grid, bars, overlay(c.values))
		p.NominalY(labels...)
	}
	wide := p.X.Max - p.X.Min
	p.X.Min, p.X.Max = p.X.Min-0.12*wide, p.X.Max+0.12*wide // room for the values
	return p
}

// values writes the value of each bar behind it.
func (c barChart) values(canvas draw.Canvas, p *plot.Plot) {
	for i, b := range c.bars {
		style, gap := lettered(scene.Ink, 9, draw.YCenter), vg.Length(3)
		if b.value < 0 {
			style.XAlign, gap = draw.XRight, -3
		}
		at := placeOn(canvas, p, plotter.XY{X: b.value, Y: float64(len(c.bars) - 1 - i)})
		canvas.FillText(style, vg.Point{X: at.X + gap, Y: at.Y}, b.said)
	}
}
