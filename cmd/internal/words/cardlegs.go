package words

import (
	"math"

	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// legTable returns the numbers of the legs; with all, those of block and joint too.
func (v voice) legTable(l layout.Layout, all bool) *Table {
	t := &Table{Head: []string{""}}
	for _, leg := range l.Legs {
		t.Head = append(t.Head, plain(short(leg.Name)))
	}
	t.Head = append(t.Head, "")
	add := func(label string, kind quantity.Kind, get func(leg layout.Leg) float64) {
		cells := []string{label}
		for _, leg := range l.Legs {
			cells = append(cells, v.shop(get(leg), kind))
		}
		unit := quantity.Unit(kind, v.units)
		t.Rows = append(t.Rows, Row{Cells: append(cells, unit)})
	}
	length := func(label string, get func(leg layout.Leg) float64) { add(label, quantity.Length, get) }
	angle := func(label string, get func(leg layout.Leg) float64) { add(label, quantity.Angle, get) }
	length("length on the centre line, seat to rocker", func(g layout.Leg) float64 { return g.Standing.Length })
	length("meets the rocker, ahead of the low point", func(g layout.Leg) float64 { return g.Standing.Foot.X })
	angle("bevel, rocker to leg, towards the nose", func(g layout.Leg) float64 { return g.Standing.Angle })
	angle("foot cut off square, side view", func(g layout.Leg) float64 { return g.Standing.Cut })
	angle("rake, foot ahead", func(g layout.Leg) float64 { return g.Line.Rake })
	angle("splay, foot out", func(g layout.Leg) float64 { return g.Line.Splay })
	angle("resultant (lean from plumb)", func(g layout.Leg) float64 { return g.Standing.Resultant })
	angle("sightline, from the fore-and-aft line", func(g layout.Leg) float64 { return v.sightline(g) })
	if !all {
		return v.told(t)
	}
	angle("foot cut off square, across the rocker", func(g layout.Leg) float64 { return g.Standing.Across })
	length("with a block: length of the leg, sawn square", func(g layout.Leg) float64 { return g.Standing.Length - g.Block.Shorter })
	length("  block, height at its nose side", func(g layout.Leg) float64 { return g.Block.Nose })
	length("  block, height at its tail side", func(g layout.Leg) float64 { return g.Block.Tail })
	length("  block, height at its inner side", func(g layout.Leg) float64 { return g.Block.Inner })
	length("  block, height at its outer side", func(g layout.Leg) float64 { return g.Block.Outer })
	angle("  block, its upper face, side view", func(g layout.Leg) float64 { return g.Block.Side })
	angle("  block, its upper face, across", func(g layout.Leg) float64 { return g.Block.Across })
	length("side of the square section", func(g layout.Leg) float64 { return g.Side })
	return t
}

// told returns a table without the rows that say nothing: rake and splay of plumb legs.
func (v voice) told(t *Table) *Table {
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
	if len(rows) == len(t.Rows)-4 {
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
