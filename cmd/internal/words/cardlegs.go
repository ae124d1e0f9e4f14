package words

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"rockerwright/rocker/bench"
	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// legTable returns the numbers of the legs; with all, those of their section too.
func (v voice) legTable(l layout.Layout, all bool) *Table {
	t := &Table{Head: []string{""}}
	for _, leg := range l.Legs {
		t.Head = append(t.Head, plain(short(leg.Name)))
	}
	t.Head = append(t.Head, "")
	add := func(label string, kind quantity.Kind, get func(leg layout.Leg) string) {
		cells := []string{label}
		for _, leg := range l.Legs {
			cells = append(cells, get(leg))
		}
		t.Rows = append(t.Rows, Row{Cells: append(cells, quantity.Unit(kind, v.units))})
	}
	length := func(label string, get func(leg layout.Leg) float64) {
		add(label, quantity.Length, func(g layout.Leg) string { return v.shop(get(g), quantity.Length) })
	}
	angle := func(label string, get func(leg layout.Leg) float64) {
		add(label, quantity.Angle, func(g layout.Leg) string { return v.shop(get(g), quantity.Angle) })
	}
	foot := func(label string, get func(s bench.Standing) float64) {
		add(label, quantity.Angle, func(g layout.Leg) string {
			if g.Block != nil {
				return "square"
			}
			return v.shop(get(g.Standing), quantity.Angle)
		})
	}
	length("length, foot to top of the seat", func(g layout.Leg) float64 { return g.Finished.Length })
	if slices.ContainsFunc(l.Legs, onBlock) {
		v.blockRows(length)
	}
	length("meets the rocker, ahead of the low point", func(g layout.Leg) float64 { return g.Standing.Foot.X })
	angle("bevel, rocker to leg, towards the nose", func(g layout.Leg) float64 { return g.Standing.Angle })
	foot("foot cut off square, side view", func(s bench.Standing) float64 { return s.Cut })
	foot("foot cut off square, across the rocker", func(s bench.Standing) float64 { return s.Across })
	angle("rake, foot ahead", func(g layout.Leg) float64 { return g.Line.Rake })
	angle("splay, foot out", func(g layout.Leg) float64 { return g.Line.Splay })
	angle("resultant (lean from plumb)", func(g layout.Leg) float64 { return g.Standing.Resultant })
	angle("sightline, from the fore-and-aft line", func(g layout.Leg) float64 { return v.sightline(g) })
	if !all {
		return v.told(t, l)
	}
	length("side of the square section", func(g layout.Leg) float64 { return g.Side })
	return t
}

func onBlock(g layout.Leg) bool { return g.Block != nil }

// blockRows adds the heights of the corners of the blocks.
func (v voice) blockRows(add func(label string, get func(layout.Leg) float64)) {
	for _, row := range []struct {
		label string
		get   func(b bench.Block) float64
	}{
		{v.nose + " inner", func(b bench.Block) float64 { return b.NoseInner }},
		{v.nose + " outer", func(b bench.Block) float64 { return b.NoseOuter }},
		{v.tail + " inner", func(b bench.Block) float64 { return b.TailInner }},
		{v.tail + " outer", func(b bench.Block) float64 { return b.TailOuter }},
	} {
		add("  height of its block, "+row.label+" corner", func(g layout.Leg) float64 {
			if g.Block == nil {
				return math.NaN()
			}
			return row.get(*g.Block)
		})
	}
}

// told returns a table without the rows that say nothing: rake and splay of plumb legs.
func (v voice) told(t *Table, l layout.Layout) *Table {
	var rows []Row
	for _, row := range t.Rows {
		empty := true
		for _, cell := range row.Cells[1 : len(row.Cells)-1] {
			empty = empty && (cell == "0" || cell == "–")
		}
		if !empty {
			rows = append(rows, row)
		}
	}
	if !slices.ContainsFunc(l.Legs, func(g layout.Leg) bool { return !math.IsNaN(v.sightline(g)) }) {
		cells := make([]string, len(t.Head))
		cells[0] = "plumb: no rake, no splay"
		rows = append(rows, Row{Cells: cells})
	}
	return &Table{Head: t.Head, Rows: rows}
}

// sightline returns a leg's sightline; of a plumb leg there is none.
func (v voice) sightline(g layout.Leg) float64 {
	if g.Standing.Resultant < 1e-9 {
		return math.NaN()
	}
	along := math.Abs(g.Standing.Sightline)
	return min(along, math.Pi-along)
}

// LegSheet returns the numbers of the legs with their blocks and their joint in the seat.
func LegSheet(l layout.Layout, source string) Sheet {
	v := voiceOf(l.Design)
	s := Sheet{Title: v.benchTitle(l, "legs"), Source: source}
	s.Blocks = append(s.Blocks, Block{Table: v.legTable(l, true)}, v.legWords(), v.jointBlock(l), v.takenBlock(l))
	return s
}

// legWords says how the angles are meant.
func (v voice) legWords() Block {
	return Block{Lines: []Line{
		{Text: "A leg's length is that of its longest edge, from the foot to the top of the seat; " +
			"scribe the last of it. A cut is + where the leg leans to the nose as it goes up, and its nose side is the shorter; " +
			"across where it leans inwards, and its inner side is. On a block a leg is sawn square, " +
			"and the block carries rake and splay; its heights are square to the top edge there."},
		{Text: "Bevel gauge: the resultant, along the sightline: turned out from straight ahead where the foot is ahead, from straight back where it is behind. The left leg is the mirror image."},
	}}
}

// jointBlock returns the notched and rabbeted joint in the seat, two rabbets side by side.
func (v voice) jointBlock(l layout.Layout) Block {
	for _, leg := range l.Legs {
		if leg.Joint == nil {
			continue
		}
		t := &Table{Head: []string{"Notched and rabbeted into the seat", "", "", ""}}
		a, b := leg.Joint[0], leg.Joint[1]
		t.Rows = append(t.Rows,
			v.row("rabbet", a.Rabbet, b.Rabbet),
			Row{Cells: []string{"glue area of one joint", v.area(a.GlueArea), v.area(b.GlueArea), v.areaUnit()}},
			v.row("largest radius into the seat", a.Transition, b.Transition))
		return Block{Table: t, Lines: []Line{{Text: fmt.Sprintf("A leg of %s square, let into a seat of %s by half of its side (taken, not drawn).", v.with(leg.Side, quantity.Length), v.with(l.Design.Seat.ThickOr(), quantity.Length))}}}
	}
	return Block{Lines: []Line{{Text: "For a joint notched and rabbeted into the seat by 1/4 or 1/2 in these legs are too thin."}}}
}

func (v voice) area(x float64) string {
	if v.units == quantity.Metric {
		return strconv.FormatFloat(x*1e4, 'f', 0, 64)
	}
	return strconv.FormatFloat(x/(0.0254*0.0254), 'f', 1, 64)
}

func (v voice) areaUnit() string {
	if v.units == quantity.Metric {
		return "cm²"
	}
	return "sq in"
}
