package words

import (
	"cmp"
	"fmt"
	"math"
	"strconv"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/rocker/bench"
	"rockerwright/sim/layout"
	"rockerwright/sim/piece"
)

// BenchCard returns the card that hangs over the bench: what to draw, bend and cut, and what to
// do when the level shows something else.
func BenchCard(l layout.Layout, source string) sheet.Sheet {
	v := voiceOf(l.Design)
	blocks := []sheet.Block{v.bigBlock(l), v.curveBlock(l), v.tipsBlock(l)}
	switch {
	case l.Form != nil:
		blocks = append(blocks, v.formBlock(l))
	case l.Board != nil:
		blocks = append(blocks, v.boardBlock(l))
	}
	if len(l.Legs) > 0 {
		blocks = append(blocks, sheet.Block{Title: "LEGS", Table: v.legTable(l, false)})
	}
	if len(l.Remedies) > 0 {
		blocks = append(blocks, v.remedyBlock(l))
	}
	return v.bench(l, "bench card", source, blocks...)
}

// bench returns one of the bench's pages, at its foot what was not drawn.
func (v voice) bench(l layout.Layout, page, source string, blocks ...sheet.Block) sheet.Sheet {
	return sheet.Sheet{Title: v.name(l.Design) + ": " + page, Source: source, Blocks: append(blocks, v.takenBlock(l))}
}

// row returns a row whose cells are lengths, with the unit behind them.
func (v voice) row(label string, lengths ...float64) []string {
	return sheet.Across(label, lengths, v.bare, v.unit())
}

// bigBlock returns what is read from across the shop.
func (v voice) bigBlock(l layout.Layout) sheet.Block {
	var radii, inside []string
	for i, s := range l.Sweeps {
		if s.Radius == 0 {
			continue
		}
		radii = append(radii, v.bare(s.Radius))
		if l.Form != nil && l.Form.Radii[i].ConvexForm > 0 {
			inside = append(inside, v.bare(l.Form.Radii[i].ConvexForm))
		}
	}
	lines := sheet.Says("FLOOR EDGE RADIUS " + strings.Join(radii, ", ") + " " + v.unit())
	if len(inside) > 0 {
		lines = append(lines, sheet.Line{Text: "FORM RADIUS " + strings.Join(inside, ", ") + " " + v.unit() + ", form inside the curve"})
	}
	return sheet.Block{Big: true, Lines: lines}
}

// arcHeads name the arcs of a rocker, from nose to tail: nothing for a single one.
func (v voice) arcHeads(l layout.Layout) []string {
	if len(l.Sweeps) < 2 {
		return nil
	}
	names := make([]string, len(l.Sweeps))
	for i := range names {
		names[i] = strconv.Itoa(i + 1)
	}
	names[0] += " (" + v.nose + ")"
	names[len(names)-1] += " (" + v.tail + ")"
	return sheet.Across("", names, itself, "")
}

// curveBlock returns radius, trammel and pivot of each arc.
func (v voice) curveBlock(l layout.Layout) sheet.Block {
	t := &sheet.Table{Head: v.arcHeads(l)}
	add := func(label string, get func(i int) float64) {
		lengths := make([]float64, len(l.Sweeps))
		for i, s := range l.Sweeps {
			if lengths[i] = get(i); s.Radius == 0 {
				lengths[i] = math.NaN() // a flat is drawn with a straightedge
			}
		}
		t.Add(v.row(label, lengths...)...)
	}
	if len(l.Sweeps) > 1 { // a single one stands large above
		add("FLOOR EDGE RADIUS", func(i int) float64 { return l.Sweeps[i].Radius })
	}
	add("pivot "+v.fromCorner, func(i int) float64 { return l.Sweeps[i].Pivot.X })
	add("pivot over the floor line", func(i int) float64 { return l.Sweeps[i].Pivot.Y })
	if l.Rocker.Sole > 0 {
		add("pin to pencil, lower edge of the wood", func(i int) float64 { return l.Sweeps[i].Wood })
	}
	top := l.Sweeps[0].Top > 0
	if top {
		add("pin to pencil, top edge", func(i int) float64 { return l.Sweeps[i].Top })
	}
	cutter := l.Shop.Cutter
	bit := "pin to the middle of a " + v.length(cutter) + " bit, "
	add(bit+"lower edge", func(i int) float64 { return l.Sweeps[i].WoodArm(cutter).Middle })
	if top {
		add(bit+"top edge", func(i int) float64 { return l.Sweeps[i].TopArm(cutter).Middle })
	}
	form := func(label string, get func(bench.Form) float64) {
		add("FORM RADIUS, form "+label+" the curve", func(i int) float64 { return none(get(l.Form.Radii[i])) })
	}
	if l.Form != nil {
		form("inside", func(f bench.Form) float64 { return f.ConvexForm })
		form("outside", func(f bench.Form) float64 { return f.ConcaveForm })
	}
	return sheet.Block{Title: "CURVE AND TRAMMEL", Table: t, Lines: v.tangents(l)}
}

// tangents says where two arcs meet.
func (v voice) tangents(l layout.Layout) []sheet.Line {
	var places []string
	for _, s := range l.Sweeps[1:] {
		places = append(places, fmt.Sprintf("%s %s and %s up", v.bare(s.From.X), v.Forward, v.length(s.From.Y)))
	}
	if len(places) == 0 {
		return nil
	}
	return sheet.Says("The arcs touch, from the square corner, " + list(places) + ".")
}

// none makes a radius that there is not one that is not shown.
func none(radius float64) float64 {
	if radius == 0 {
		return math.NaN()
	}
	return radius
}

// tipsBlock returns what the tape tests, how deep and wide the rocker is, and how its top and ends run.
func (v voice) tipsBlock(l layout.Layout) sheet.Block {
	tape, k := l.Report.Tape, l.Design.Rocker
	tips := fmt.Sprintf("Low point %s %s. %s tip %s and %s tip %s off the floor; %s tip to tip, %s along the floor edge.",
		v.length(-l.Corner.X), v.fromCorner, upperFirst(v.nose), v.length(tape.NoseTip), v.tail, v.length(tape.TailTip),
		v.length(tape.TipToTip), v.length(tape.Edge))
	text := fmt.Sprintf("%s deep at the low point, %s wide; top edge %s", v.length(l.Rocker.Depth), v.length(l.Rocker.Width),
		map[piece.Top]string{piece.Concentric: "concentric", piece.Straight: "straight", piece.Taper: "tapered"}[k.Top])
	if k.Top == piece.Taper {
		text += fmt.Sprintf(" to %s at the %s and %s at the %s",
			v.length(cmp.Or(k.NoseDepth, l.Rocker.Depth)), v.noseEnd, v.length(cmp.Or(k.TailDepth, l.Rocker.Depth)), v.tailEnd)
	}
	ends := [...]string{"square", "round", "eased to " + v.length(k.EaseOr())}
	text += fmt.Sprintf("; %s %s, %s %s", v.noseEnd, ends[k.NoseEnd], v.tailEnd, ends[k.TailEnd])
	if k.Sole > 0 {
		text += fmt.Sprintf("; a sole of %s, of which the depth is a part", v.length(k.Sole))
	}
	return sheet.Block{Lines: sheet.Says(tips, text+".")}
}
