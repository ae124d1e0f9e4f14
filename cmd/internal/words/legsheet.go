package words

import (
	"fmt"
	"strconv"

	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

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
