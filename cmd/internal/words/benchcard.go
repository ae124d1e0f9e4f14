package words

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"rockerwright/rocker/bench"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// BenchCard returns the card that hangs over the bench: what to draw, bend and cut, and what to
// do when the level shows something else.
func BenchCard(l layout.Layout, source string) Sheet {
	v := voiceOf(l.Design)
	s := Sheet{Title: v.benchTitle(l, "bench card"), Source: source}
	s.Blocks = append(s.Blocks, v.bigBlock(l), v.curveBlock(l), v.tipsBlock(l))
	switch {
	case l.Form != nil:
		s.Blocks = append(s.Blocks, v.formBlock(l))
	case l.Board != nil:
		s.Blocks = append(s.Blocks, v.boardBlock(l))
	}
	if len(l.Legs) > 0 {
		s.Blocks = append(s.Blocks, Block{Title: "LEGS", Table: v.legTable(l, false)})
	}
	if len(l.Remedies) > 0 {
		s.Blocks = append(s.Blocks, v.remedyBlock(l))
	}
	s.Blocks = append(s.Blocks, v.takenBlock(l))
	return s
}

// benchTitle names one of the bench's pages.
func (v voice) benchTitle(l layout.Layout, page string) string {
	name := l.Design.Title
	if name == "" {
		name = "Untitled " + v.piece
	}
	return short(name) + ": " + page
}

// unit is that of lengths.
func (v voice) unit() string { return quantity.Unit(quantity.Length, v.units) }

// row returns a row whose cells are lengths, with the unit behind them.
func (v voice) row(label string, lengths ...float64) Row {
	cells := []string{label}
	for _, x := range lengths {
		cells = append(cells, v.shop(x, quantity.Length))
	}
	return Row{Cells: append(cells, v.unit())}
}

// arcHeads name the arcs of a rocker: nothing for a single one.
func (v voice) arcHeads(l layout.Layout) []string {
	if len(l.Sweeps) < 2 {
		return nil
	}
	heads := []string{""}
	for i := range l.Sweeps {
		name := strconv.Itoa(i + 1)
		switch i {
		case 0:
			name += " (" + v.nose + ")"
		case len(l.Sweeps) - 1:
			name += " (" + v.tail + ")"
		}
		heads = append(heads, name)
	}
	return append(heads, "")
}

// bigBlock returns what is read from across the shop.
func (v voice) bigBlock(l layout.Layout) Block {
	var radii, inside []string
	for i, s := range l.Sweeps {
		if s.Radius == 0 {
			continue
		}
		radii = append(radii, v.shop(s.Radius, quantity.Length))
		if l.Form != nil && l.Form.Radii[i].ConvexForm > 0 {
			inside = append(inside, v.shop(l.Form.Radii[i].ConvexForm, quantity.Length))
		}
	}
	lines := []Line{{Text: "FLOOR EDGE RADIUS " + strings.Join(radii, ", ") + " " + v.unit()}}
	if len(inside) > 0 {
		lines = append(lines, Line{Text: "FORM RADIUS " + strings.Join(inside, ", ") + " " + v.unit() + ", form inside the curve"})
	}
	return Block{Big: true, Lines: lines}
}

// curveBlock returns radius, trammel and pivot of each arc.
func (v voice) curveBlock(l layout.Layout) Block {
	column := func(get func(i int) float64) []float64 {
		var list []float64
		for i := range l.Sweeps {
			x := get(i)
			if l.Sweeps[i].Radius == 0 {
				x = math.NaN() // a flat is drawn with a straightedge
			}
			list = append(list, x)
		}
		return list
	}
	cutter := l.Shop.Cutter
	t := &Table{Head: v.arcHeads(l)}
	add := func(label string, get func(i int) float64) { t.Rows = append(t.Rows, v.row(label, column(get)...)) }
	if len(l.Sweeps) > 1 { // a single one stands large above
		add("FLOOR EDGE RADIUS", func(i int) float64 { return l.Sweeps[i].Radius })
	}
	add("pivot "+v.fromCorner, func(i int) float64 { return l.Sweeps[i].Pivot.X })
	add("pivot over the floor line", func(i int) float64 { return l.Sweeps[i].Pivot.Y })
	if l.Rocker.Sole > 0 {
		add("pin to pencil, lower edge of the wood", func(i int) float64 { return l.Sweeps[i].Wood })
	}
	if l.Sweeps[0].Top > 0 {
		add("pin to pencil, top edge", func(i int) float64 { return l.Sweeps[i].Top })
	}
	bit := v.with(cutter, quantity.Length)
	add("pin to the middle of a "+bit+" bit, lower edge", func(i int) float64 { return l.Sweeps[i].WoodArm(cutter).Middle })
	if l.Sweeps[0].Top > 0 {
		add("pin to the middle of a "+bit+" bit, top edge", func(i int) float64 { return l.Sweeps[i].TopArm(cutter).Middle })
	}
	if l.Form != nil {
		form := func(get func(bench.Form) float64) func(i int) float64 {
			return func(i int) float64 { return none(get(l.Form.Radii[i])) }
		}
		add("FORM RADIUS, form inside the curve", form(func(f bench.Form) float64 { return f.ConvexForm }))
		add("FORM RADIUS, form outside the curve", form(func(f bench.Form) float64 { return f.ConcaveForm }))
	}
	return Block{Title: "CURVE AND TRAMMEL", Table: t, Lines: v.tangents(l)}
}

// tangents says where two arcs meet.
func (v voice) tangents(l layout.Layout) []Line {
	var places []string
	for _, s := range l.Sweeps[1:] {
		places = append(places, fmt.Sprintf("%s %s and %s up", v.shop(s.From.X, quantity.Length), v.Forward, v.with(s.From.Y, quantity.Length)))
	}
	if len(places) == 0 {
		return nil
	}
	return []Line{{Text: "The arcs touch, from the square corner, " + list(places) + "."}}
}

// tipsBlock returns what the tape tests.
func (v voice) tipsBlock(l layout.Layout) Block {
	tape := l.Report.Tape
	lines := []Line{
		{Text: fmt.Sprintf("Low point %s %s. %s tip %s and %s tip %s off the floor; %s tip to tip, %s along the floor edge.",
			v.with(-l.Corner.X, quantity.Length), v.fromCorner, upperFirst(v.nose), v.with(tape.NoseTip, quantity.Length), v.tail, v.with(tape.TailTip, quantity.Length),
			v.with(tape.TipToTip, quantity.Length), v.with(tape.Edge, quantity.Length))},
		{Text: v.section(l)},
	}
	return Block{Lines: lines}
}

// section says how deep and wide the rocker is, and how its top and ends run.
func (v voice) section(l layout.Layout) string {
	k := l.Design.Rocker
	text := fmt.Sprintf("%s deep at the low point, %s wide; top edge ", v.with(l.Rocker.Depth, quantity.Length), v.with(l.Rocker.Width, quantity.Length))
	switch k.Top {
	case piece.Straight:
		text += "straight"
	case piece.Taper:
		text += fmt.Sprintf("tapered to %s at the %s and %s at the %s", v.with(or(k.NoseDepth, l.Rocker.Depth), quantity.Length), v.noseEnd, v.with(or(k.TailDepth, l.Rocker.Depth), quantity.Length), v.tailEnd)
	default:
		text += "concentric"
	}
	ends := [...]string{"square", "round", "eased to " + v.with(k.EaseOr(), quantity.Length)}
	text += fmt.Sprintf("; %s %s, %s %s", v.noseEnd, ends[k.NoseEnd], v.tailEnd, ends[k.TailEnd])
	if k.Sole > 0 {
		text += fmt.Sprintf("; a sole of %s, of which the depth is a part", v.with(k.Sole, quantity.Length))
	}
	return text + "."
}

func or(x, other float64) float64 {
	if x == 0 {
		return other
	}
	return x
}
