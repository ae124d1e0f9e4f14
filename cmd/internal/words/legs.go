package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/rocker/bench"
	"rockerwright/sim/layout"
	"rockerwright/sim/quantity"
)

// legTable returns the numbers of the legs; with all, those of their section too, else without the rows that say
// nothing: rake and splay of plumb legs.
func legTable(w wording, l layout.Layout, all bool) *sheet.Table {
	t := &sheet.Table{Head: sheet.Across("", l.Legs, func(g layout.Leg) string { return brief(g.Name) }, "")}
	row := func(label string, kind quantity.Kind, cell func(g layout.Leg) string) {
		cells := sheet.Across(label, l.Legs, cell, quantity.Unit(kind, w.System))
		if all || slices.ContainsFunc(cells[1:len(l.Legs)+1], func(cell string) bool { return cell != "0" && cell != "–" }) {
			t.Add(cells...)
		}
	}
	add := func(label string, kind quantity.Kind, get func(g layout.Leg) float64) {
		row(label, kind, func(g layout.Leg) string { return w.shop(get(g), kind) })
	}
	foot := func(label string, get func(s bench.Standing) float64) {
		row(label, quantity.Angle, func(g layout.Leg) string {
			return pick(g.Block != nil, "square", w.angle(get(g.Standing)))
		})
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
		corner(w.nose+" inner", func(b *bench.Block) float64 { return b.NoseInner })
		corner(w.nose+" outer", func(b *bench.Block) float64 { return b.NoseOuter })
		corner(w.tail+" inner", func(b *bench.Block) float64 { return b.TailInner })
		corner(w.tail+" outer", func(b *bench.Block) float64 { return b.TailOuter })
	}
	add("meets the rocker, ahead of the low point", quantity.Length, func(g layout.Leg) float64 { return g.Standing.Foot.X })
	add("bevel, rocker to leg, towards the nose", quantity.Angle, func(g layout.Leg) float64 { return g.Standing.Angle })
	foot("foot cut off square, side view", func(s bench.Standing) float64 { return s.Cut })
	foot("foot cut off square, across the rocker", func(s bench.Standing) float64 { return s.Across })
	add("rake, foot ahead", quantity.Angle, func(g layout.Leg) float64 { return g.Line.Rake })
	add("splay, foot out", quantity.Angle, func(g layout.Leg) float64 { return g.Line.Splay })
	add("resultant (lean from plumb)", quantity.Angle, func(g layout.Leg) float64 { return g.Standing.Resultant })
	add("sightline, from the fore-and-aft line", quantity.Angle, func(g layout.Leg) float64 { return g.Sightline() })
	if all {
		add("side of the square section", quantity.Length, func(g layout.Leg) float64 { return g.Side })
	} else if !slices.ContainsFunc(l.Legs, func(g layout.Leg) bool { return !math.IsNaN(g.Sightline()) }) {
		t.Add(append([]string{"plumb: no rake, no splay"}, make([]string, len(l.Legs)+1)...)...)
	}
	return t
}

// LegSheet returns the numbers of the legs with their blocks and their joint in the seat, and says how the angles are meant.
func LegSheet(l layout.Layout, source string) sheet.Sheet {
	w := wordingOf(l.Design)
	return benchPage(w, l, "legs", source, sheet.Block{Table: legTable(w, l, true)}, sheet.Block{Lines: sheet.Says(
		"A leg's length is that of its longest edge, from the foot to the top of the seat; "+
			"scribe the last of it. A cut is + where the leg leans to the nose as it goes up, and its nose side is the shorter; "+
			"across where it leans inwards, and its inner side is. On a block a leg is sawn square, "+
			"and the block carries rake and splay; its heights are square to the top edge there.",
		"Bevel gauge: the resultant, along the sightline: turned out from straight ahead where the foot is ahead, "+
			"from straight back where it is behind. The left leg is the mirror image.")}, jointBlock(w.units, l))
}

// jointBlock returns the notched and rabbeted joint in the seat, two rabbets side by side.
func jointBlock(u units, l layout.Layout) sheet.Block {
	for _, leg := range l.Legs {
		if leg.Joint == nil {
			continue
		}
		t := &sheet.Table{Head: []string{"Notched and rabbeted into the seat", "", "", ""}}
		a, b := leg.Joint[0], leg.Joint[1]
		t.Add(row(u, "rabbet", a.Rabbet, b.Rabbet)...)
		t.Add("glue area of one joint", area(u, a.GlueArea), area(u, b.GlueArea), inUnits(u, "sq in", "cm²"))
		t.Add(row(u, "largest radius into the seat", a.Transition, b.Transition)...)
		return sheet.Block{Table: t, Lines: sheet.Says(fmt.Sprintf("A leg of %s square, "+
			"let into a seat of %s by half of its side (taken, not drawn).",
			u.length(leg.Side), u.length(l.Design.Seat.ThickOr())))}
	}
	return sheet.Block{Lines: sheet.Says("For a joint notched and rabbeted into the seat by 1/4 or 1/2 in these legs are too thin.")}
}

// area writes an area (m²) in square inches or cm².
func area(u units, x float64) string { return fixed(u, x/(quantity.In*quantity.In), 1, x*1e4, 0) }

// CutSheet returns the cut list: parts as finished, and the rough wood for them.
func CutSheet(l layout.Layout, source string) sheet.Sheet {
	w := wordingOf(l.Design)
	finished := &sheet.Table{Head: []string{"Finished", "", "", quantity.Unit(quantity.Mass, w.System)}}
	rough := &sheet.Table{Head: []string{"Rough", "", "", inUnits(w.units, "board feet", "litres")}}
	var remarks []sheet.Line
	for _, c := range l.Cuts {
		part, of := brief(c.Part), strconv.Itoa(c.Count)+" of"
		finished.Add(part, of, dimensions(w.units, c.Finished), w.shop(c.Mass(), quantity.Mass))
		rough.Add(part, of, dimensions(w.units, c.Rough), bulk(w.units, c))
		if remark := CutRemark(l, c); remark != "" {
			remarks = append(remarks, sheet.Line{Text: upperFirst(part) + ": " + remark + ".", Bad: c.Wider || c.Thicker})
		}
	}
	strips := ""
	if s := l.Strips; s != nil { // how thick one may be
		strips = fmt.Sprintf("%s bears strips up to %s at %s, the smallest radius (strain of %s %%, half of what breaks it)",
			cmp.Or(s.Wood, "A usual hardwood"), thin(w.units, s.Thickest), w.length(s.Tightest), hundredths(s.Strain, 2)) +
			when(s.Common > 0, "; makers use up to %s (common practice)", w.length(s.Common)) + "."
	}
	cubic, feet, weighs := l.Sum()
	notes := sheet.Says(strips, fmt.Sprintf("Rough wood in all: %.2f board feet, %.4f m³. ", feet, cubic)+
		pick(weighs > 0, "The parts of a named wood weigh "+mass(w.units, weighs)+" as shaped.",
			"Name a wood for the mass of a part."),
		"Length, width and thickness in "+inUnits(w.units, "inches", "millimetres")+
			", the grain along the length, which is that of the longest edge; "+
			"round, shaped and tapered parts as the square they come out of"+string(w.legs)+". Only what is drawn is listed.")
	return benchPage(w, l, "cut list", source,
		sheet.Block{Table: finished}, sheet.Block{Table: rough}, sheet.Block{Lines: append(notes, remarks...)})
}

// bulk writes the rough wood of a row: board feet or litres.
func bulk(u units, c layout.Cut) string {
	cubic, feet := c.Volume()
	return fixed(u, feet, 2, cubic*1e3, 2)
}

// CutRemark says how the grain of a seat runs, and what does not come out of the boards there are;
// "" where there is nothing to say.
func CutRemark(l layout.Layout, c layout.Cut) string {
	w := wordingOf(l.Design)
	over := list(given(when(c.Wider, "wider than your boards (%s)", w.length(l.Shop.StockWidth)),
		when(c.Thicker, "thicker than your boards (%s)", w.length(l.Shop.StockThick))))
	return strings.Join(given(when(c.Seat, "the grain runs front to back"),
		when(over != "", "rough, it is %s: glue it up", over)), "; ")
}

// CutSize writes a size for a spreadsheet: with its unit, "3/4 in", for a bare fraction is taken for a
// day of a month, and so is "6.4" where a comma is the decimal point; whole millimetres plain.
func CutSize(x float64, system quantity.System) string {
	text := sized(units{system}, x)
	if whole := strings.TrimSuffix(text, " mm"); !strings.Contains(whole, ".") {
		return whole
	}
	return text
}

// sized writes a size with its unit, one that no rule reads, as of a strip, finer.
func sized(u units, x float64) string {
	if rounded := quantity.Round(x, quantity.Length, u.System); unsigned(rounded-x) > 1e-4 && x < 0.0127 {
		return thin(u, x)
	}
	return u.length(x)
}

// dimensions writes three sizes: "41 × 1 1/4 × 1/4".
func dimensions(u units, s layout.Size) string {
	return u.bare(s.Length) + " × " + u.bare(s.Width) + " × " + strings.TrimSuffix(sized(u, s.Thick), " "+u.unit())
}
