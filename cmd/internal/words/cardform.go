package words

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// thin writes a thickness to a hundredth of an inch or a tenth of a millimetre, with its unit.
func (v voice) thin(x float64) string {
	text := strconv.FormatFloat(x/0.0254, 'f', 3, 64)
	if v.units == quantity.Metric {
		text = strconv.FormatFloat(x*1e3, 'f', 1, 64)
	}
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".") + " " + v.unit()
}

// formBlock returns strips and form, floor-edge radius and form radius told apart.
func (v voice) formBlock(l layout.Layout) Block {
	t := &Table{Head: v.arcHeads(l)}
	var floor, inside, outside []float64
	for _, f := range l.Form.Radii {
		floor, inside, outside = append(floor, none(f.FloorEdge)), append(inside, none(f.ConvexForm)), append(outside, none(f.ConcaveForm))
	}
	if len(floor) > 1 { // a single one stands large above
		t.Rows = append(t.Rows, v.row("floor edge radius, finished", floor...), v.row("FORM RADIUS, form inside the curve (touches the top edge)", inside...))
	}
	t.Rows = append(t.Rows,
		v.row("FORM RADIUS, form outside the curve (touches the floor side)", outside...))
	if l.Form.Steam {
		return Block{Title: "STEAM-BENT, OVER A FORM", Table: t, Lines: []Line{{Text: fmt.Sprintf(
			"Off the form it loses %.0f %% of its bend, as you say or as makers report (6 to 10 %%, common practice).", l.Form.Lost*100)}}}
	}
	return Block{Title: "STRIPS AND FORM", Table: t, Lines: v.strips(l)}
}

// none makes a radius that there is not one that is not shown.
func none(radius float64) float64 {
	if radius == 0 {
		return math.NaN()
	}
	return radius
}

// strips says what the stack is made of.
func (v voice) strips(l layout.Layout) []Line {
	s := l.Strips
	wood := "A usual hardwood"
	if s.Wood != "" {
		wood = s.Wood
	}
	bears := fmt.Sprintf("%s bears %s at that bend (strain %.2f %%, half of what breaks it)", wood, v.thin(s.Thickest), s.Strain*100)
	if s.Common > 0 {
		bears += fmt.Sprintf("; makers use up to %s (common practice)", v.with(s.Common, quantity.Length))
	}
	return []Line{
		{Text: fmt.Sprintf("%d strips of %s for each rocker, %s long, %s waste at each end with it; ripped from %s of board, cuts and planing counted. The stack springs back by 1/%d of its bend.",
			s.Stack.Strips, v.thin(s.Strip), v.with(s.Stack.Length, quantity.Length), v.with(l.Shop.EndWaste, quantity.Length), v.with(s.Stack.Stock, quantity.Length),
			s.Stack.Strips*s.Stack.Strips)},
		{Text: bears + "."},
	}
}

// boardBlock returns the board of a sawn rocker.
func (v voice) boardBlock(l layout.Layout) Block {
	b := l.Board
	nose, tail := v.tips()
	lines := []Line{
		{Text: fmt.Sprintf("Blank %s by %s by %s thick, the grain along it. Two spooned the same way round: a board %s wide, the second shifted by %s across. Left and its mirror image in one board: %s by %s.",
			v.with(b.Length, quantity.Length), v.with(b.Width, quantity.Length), v.with(l.Rocker.Width, quantity.Length), v.with(b.Both, quantity.Length), v.with(b.Shift, quantity.Length),
			v.with(b.Pair.Length, quantity.Length), v.with(b.Pair.Width, quantity.Length))},
		{Text: fmt.Sprintf("The grain runs out at %s (%s) and %s (%s); thinnest across the grain %s.",
			v.with(b.NoseGrain, quantity.Angle), nose, v.with(b.TailGrain, quantity.Angle), tail, v.with(b.Thinnest.Thick, quantity.Length))},
	}
	if stock := l.Shop.StockWidth; stock > 0 && stock < b.Width {
		lines = append(lines, Line{Text: fmt.Sprintf("Your boards are %s wide: glue one on, or laminate it.", v.with(stock, quantity.Length)), Bad: true})
	}
	return Block{Title: "BOARD", Lines: lines}
}
