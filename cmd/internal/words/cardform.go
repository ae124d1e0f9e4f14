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

// formBlock says what is bent over the form.
func (v voice) formBlock(l layout.Layout) Block {
	if l.Form.Steam {
		return Block{Title: "STEAM-BENT", Lines: []Line{{Text: fmt.Sprintf(
			"Off the form it loses %.0f %% of its bend, as you say or as makers report (6 to 10 %%, common practice).", l.Form.Lost*100)}}}
	}
	s := l.Strips
	return Block{Title: "STRIPS", Lines: []Line{{Text: fmt.Sprintf(
		"%d strips of %s for each rocker, %s long, %s waste at each end with it; ripped from %s of board, cuts and planing counted. The stack springs back by 1/%d of its bend.",
		s.Stack.Strips, v.thin(s.Strip), v.with(s.Stack.Length, quantity.Length), v.with(l.Shop.EndWaste, quantity.Length), v.with(s.Stack.Stock, quantity.Length),
		s.Stack.Strips*s.Stack.Strips)}}}
}

// none makes a radius that there is not one that is not shown.
func none(radius float64) float64 {
	if radius == 0 {
		return math.NaN()
	}
	return radius
}

// bears says how thick a strip may be.
func (v voice) bears(s layout.Strips) string {
	wood := "A usual hardwood"
	if s.Wood != "" {
		wood = s.Wood
	}
	text := fmt.Sprintf("%s bears strips up to %s at %s, the smallest radius (strain of %.2f %%, half of what breaks it)", wood, v.thin(s.Thickest), v.with(s.Tightest, quantity.Length), s.Strain*100)
	if s.Common > 0 {
		text += fmt.Sprintf("; makers use up to %s (common practice)", v.with(s.Common, quantity.Length))
	}
	return text + "."
}

// boardBlock returns the board of a sawn rocker.
func (v voice) boardBlock(l layout.Layout) Block {
	b := l.Board
	lines := []Line{
		{Text: fmt.Sprintf("Blank %s by %s by %s thick, the grain along it. Two spooned the same way round: a board %s wide, the second shifted by %s across. "+
			"Left and its mirror image in one board, room for a cutter of %s and %s of wood between them: %s by %s.",
			v.with(b.Length, quantity.Length), v.with(b.Width, quantity.Length), v.with(l.Rocker.Width, quantity.Length), v.with(b.Both, quantity.Length), v.with(b.Shift, quantity.Length),
			v.with(l.Shop.Cutter, quantity.Length), v.with(l.Shop.Web, quantity.Length),
			v.with(b.Pair.Length, quantity.Length), v.with(b.Pair.Width, quantity.Length))},
		{Text: fmt.Sprintf("The grain runs out at %s (%s) and %s (%s); thinnest across the grain %s.",
			v.with(b.NoseGrain, quantity.Angle), v.nose, v.with(b.TailGrain, quantity.Angle), v.tail, v.with(b.Thinnest.Thick, quantity.Length))},
	}
	if stock := l.Shop.StockWidth; stock > 0 && stock < b.Width {
		lines = append(lines, Line{Text: fmt.Sprintf("Your boards are %s wide: glue one on, or laminate it.", v.with(stock, quantity.Length)), Bad: true})
	}
	return Block{Title: "BOARD", Lines: lines}
}
