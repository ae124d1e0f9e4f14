package words

import (
	"fmt"
	"math"
	"slices"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/rocker/bench"
	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// legTable returns the numbers of the legs; with all, those of their section too.
func (v voice) legTable(l layout.Layout, all bool) *sheet.Table {
	t := &sheet.Table{Head: sheet.Across("", l.Legs, func(g layout.Leg) string { return brief(g.Name) }, "")}
	add := func(label string, kind quantity.Kind, get func(g layout.Leg) float64) {
		t.Add(sheet.Across(label, l.Legs, func(g layout.Leg) string { return v.shop(get(g), kind) }, quantity.Unit(kind, v.units))...)
	}
	foot := func(label string, get func(s bench.Standing) float64) {
		t.Add(sheet.Across(label, l.Legs, func(g layout.Leg) string {
			if g.Block != nil {
				return "square"
			}
			return v.angle(get(g.Standing))
		}, quantity.Unit(quantity.Angle, v.units))...)
	}
	corner := func(label string, get func(b *bench.Block) float64) {
		add("  height of its block, "+label+" corner", quantity.Length, func(g layout.Leg) float64 {
			if g.Block == nil {
				return math.NaN()
			}
			return get(g.Block)
		})
	}
	add("length, foot to top of the seat", quantity.Length, func(g layout.Leg) float64 { return g.Finished.Length })
	if slices.ContainsFunc(l.Legs, func(g layout.Leg) bool { return g.Block != nil }) {
		corner(v.nose+" inner", func(b *bench.Block) float64 { return b.NoseInner })
		corner(v.nose+" outer", func(b *bench.Block) float64 { return b.NoseOuter })
		corner(v.tail+" inner", func(b *bench.Block) float64 { return b.TailInner })
		corner(v.tail+" outer", func(b *bench.Block) float64 { return b.TailOuter })
	}
	add("meets the rocker, ahead of the low point", quantity.Length, func(g layout.Leg) float64 { return g.Standing.Foot.X })
	add("bevel, rocker to leg, towards the nose", quantity.Angle, func(g layout.Leg) float64 { return g.Standing.Angle })
	foot("foot cut off square, side view", func(s bench.Standing) float64 { return s.Cut })
	foot("foot cut off square, across the rocker", func(s bench.Standing) float64 { return s.Across })
	add("rake, foot ahead", quantity.Angle, func(g layout.Leg) float64 { return g.Line.Rake })
	add("splay, foot out", quantity.Angle, func(g layout.Leg) float64 { return g.Line.Splay })
	add("resultant (lean from plumb)", quantity.Angle, func(g layout.Leg) float64 { return g.Standing.Resultant })
	add("sightline, from the fore-and-aft line", quantity.Angle, sightline)
	if !all {
		return told(t, l)
	}
	add("side of the square section", quantity.Length, func(g layout.Leg) float64 { return g.Side })
	return t
}

// told returns a table without the rows that say nothing: rake and splay of plumb legs.
func told(t *sheet.Table, l layout.Layout) *sheet.Table {
	t.Rows = slices.DeleteFunc(t.Rows, func(r sheet.Row) bool {
		return !slices.ContainsFunc(r.Cells[1:len(r.Cells)-1], func(cell string) bool { return cell != "0" && cell != "–" })
	})
	if !slices.ContainsFunc(l.Legs, func(g layout.Leg) bool { return !math.IsNaN(sightline(g)) }) {
		t.Add(sheet.Across("plumb: no rake, no splay", t.Head[1:], func(string) string { return "" })...)
	}
	return t
}

// sightline returns a leg's sightline; of a plumb leg there is none.
func sightline(g layout.Leg) float64 {
	if g.Standing.Resultant < 1e-9 {
		return math.NaN()
	}
	along := math.Abs(g.Standing.Sightline)
	return min(along, math.Pi-along)
}

// LegSheet returns the numbers of the legs with their blocks and their joint in the seat, and says how the angles are meant.
func LegSheet(l layout.Layout, source string) sheet.Sheet {
	v := voiceOf(l.Design)
	return v.bench(l, "legs", source, sheet.Block{Table: v.legTable(l, true)}, sheet.Block{Lines: sheet.Says(
		"A leg's length is that of its longest edge, from the foot to the top of the seat; "+
			"scribe the last of it. A cut is + where the leg leans to the nose as it goes up, and its nose side is the shorter; "+
			"across where it leans inwards, and its inner side is. On a block a leg is sawn square, "+
			"and the block carries rake and splay; its heights are square to the top edge there.",
		"Bevel gauge: the resultant, along the sightline: turned out from straight ahead where the foot is ahead, "+
			"from straight back where it is behind. The left leg is the mirror image.")}, v.jointBlock(l))
}

// jointBlock returns the notched and rabbeted joint in the seat, two rabbets side by side.
func (v voice) jointBlock(l layout.Layout) sheet.Block {
	for _, leg := range l.Legs {
		if leg.Joint == nil {
			continue
		}
		t := &sheet.Table{Head: []string{"Notched and rabbeted into the seat", "", "", ""}}
		a, b := leg.Joint[0], leg.Joint[1]
		area := func(x float64) string { return v.fixed(x/(0.0254*0.0254), 1, x*1e4, 0) }
		t.Add(v.row("rabbet", a.Rabbet, b.Rabbet)...)
		t.Add("glue area of one joint", area(a.GlueArea), area(b.GlueArea), v.inUnits("sq in", "cm²"))
		t.Add(v.row("largest radius into the seat", a.Transition, b.Transition)...)
		return sheet.Block{Table: t, Lines: sheet.Says(fmt.Sprintf("A leg of %s square, let into a seat of %s by half of its side (taken, not drawn).",
			v.length(leg.Side), v.length(l.Design.Seat.ThickOr())))}
	}
	return sheet.Block{Lines: sheet.Says("For a joint notched and rabbeted into the seat by 1/4 or 1/2 in these legs are too thin.")}
}
