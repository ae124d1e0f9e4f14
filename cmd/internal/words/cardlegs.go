package words

import (
	"math"
	"slices"

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
