package words

import (
	"fmt"

	"rockerwright/body"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// noTest is said wherever wood is bent on paper.
const noTest = "Not a strength test: straight-grained, dry wood of the middle of its kind, pressed once and gently. Joints, knots, screw holes, shock and years of rocking are not in it."

// gives returns how a back of braces yields, load by load; nothing where it is stiff.
func (v voice) gives(r check.Report) []Block {
	t := &Table{Head: []string{"Leaning on the back", "presses", "yields", "leans on by", "of the strength"}}
	for _, l := range r.Loads {
		if g := l.Give; g != nil {
			t.Rows = append(t.Rows, Row{
				Cells: []string{plain(short(l.Name)), v.with(g.Force, quantity.Force), v.with(g.Yield, quantity.Length), v.degrees(g.Turn), share(g.Share, g.Least, g.Most)},
				Bad:   g.Most > 1,
			})
		}
	}
	if len(t.Rows) == 0 {
		return nil
	}
	b := r.Design.Back.Braces
	held := "resting in seat and crest rail"
	if b.Held == body.OneEnd {
		held = "fast in the seat, free at the top"
	}
	lines := []Line{{Text: fmt.Sprintf("%s braces of %s, %s by %s, %s long, bent as one beam %s. Rest, recline and the load on the back are solved together; the readings above are with the back bent. Shares in brackets: if the wood is stronger or weaker than the middle of its kind by two standard deviations (16 %% each, from memory); the yield goes from %s to %s of that shown, as stiffness spreads (22 %% each, from memory).",
		v.shop(b.Count, quantity.Count), plain(short(b.Wood)), v.with(b.Width, quantity.Length), v.with(b.Thickness, quantity.Length), v.with(b.Length, quantity.Length), held, percent(1/(1+2*piece.ModulusSpread)), percent(1/(1-2*piece.ModulusSpread)))}, {Text: noTest}}
	return []Block{{Title: "The back gives", All: true, Table: t}, {All: true, Lines: lines}}
}

// bends returns how the rockers bend with the heaviest load on one end; nothing where
// their sizes are not given.
func (v voice) bends(r check.Report) []Block {
	if len(r.Bending) == 0 {
		return nil
	}
	t := &Table{Head: []string{"Standing on", "floor pushes", "laminated or bent", "sawn from a board"}}
	var worst []string
	for _, b := range r.Bending {
		name := v.nose
		if b.Tail {
			name = v.tail
		}
		t.Rows = append(t.Rows, Row{
			Cells: []string{"the " + name + " tip", v.with(b.Force, quantity.Force), ofStrength(b.Along), ofStrength(b.Across)},
			Bad:   b.Across.Most > 1,
		})
		worst = append(worst, fmt.Sprintf("%s from the %s tip with the grain %s out", v.with(b.Across.From, quantity.Length), name, v.degrees(b.Across.Grain)))
	}
	lines := []Line{
		{Text: fmt.Sprintf("Of the bending strength of the wood, for each of two rockers, with %s on one end: a cantilever from the nearer leg. Sawn rockers are read at the worst short grain between leg and tip (%s) by Hankinson's formula with its whole range (Wood Handbook, chapter 5, from memory).", plain(short(r.Bending[0].Load)), list(worst))},
		{Text: noTest},
	}
	return []Block{{Title: "The rockers bend", All: true, Table: t}, {All: true, Lines: lines}}
}

func ofStrength(s check.Section) string {
	return percent(s.Least) + " to " + percent(s.Most)
}

// share writes a share of the strength with its spread.
func share(middle, least, most float64) string {
	return fmt.Sprintf("%s (%s to %s)", percent(middle), percent(least), percent(most))
}

func percent(x float64) string { return fmt.Sprintf("%.0f %%", x*100) }
