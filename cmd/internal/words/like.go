package words

import (
	"fmt"
	"math"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// Like returns the sheet of what radius keeps the feel of a piece that is liked. source is the
// new piece's file, changes what was changed in it for this answer, take the line to type to
// save one of the rockers.
func Like(l size.Likeness, source string, changes []string, take string) Sheet {
	v := voiceOf(l.Wanted.Design)
	s := Sheet{Title: v.called(l.Wanted.Design) + " · like " + v.called(l.OldPiece.Design), Source: source}
	table := v.likeTable(l)
	s.Blocks = append(s.Blocks, Block{Lines: v.oldAndNew(l, changes)}, Block{Table: table})
	last := append(v.when(l), v.rulesInBrief(l)...)
	if take != "" {
		last = append(last, Line{Text: "To save one under a new name:", Type: take})
	}
	s.Blocks = append(s.Blocks, Block{Lines: append(last, v.foot())})
	s = s.fitted(1, []string{"tip to tip", "  weight must lift", "back leans, seated", "behind the low point"}, table)
	s.Blocks = append(s.Blocks, v.likeMargins(l), v.ruleTable(l), v.likeAssumptions(l))
	return s
}

// called returns what a piece is called, short enough for a heading of two.
func (v voice) called(d piece.Design) string {
	name := d.Title
	if name == "" {
		name = "untitled " + v.piece
	}
	return cutTo(plain(name), 26)
}

// oldAndNew says what is kept, and what the new piece does with the radius it is drawn with.
func (v voice) oldAndNew(l size.Likeness, changes []string) []Line {
	old := l.Old
	lines := []Line{{Label: "LIKED:", Text: v.rocksOn(old)}}
	now := Line{Label: "NOW:", Text: v.changed(changes)}
	if !(l.New.Radius > 0) {
		now.Text += "as it is drawn it has no rest with its owner."
		now.Bad = true
	} else {
		now.Text += v.rocksOn(l.New)
	}
	return append(lines, now)
}

// rocksOn says how a piece rocks, and how far the arc's centre stands above the balance point.
func (v voice) rocksOn(f size.Feel) string {
	return fmt.Sprintf("%.2f s on %s, its centre %s above the balance point.", f.Period, v.with(f.Radius, quantity.Length), v.with(f.Steadiness, quantity.Length))
}

// changed names the changes that make the new piece.
func (v voice) changed(changes []string) string {
	switch len(changes) {
	case 0:
		return ""
	case 1, 2:
		return list(changes) + ": "
	}
	return fmt.Sprintf("%d entries changed: ", len(changes))
}

// likeTable sets the ways side by side, the old piece in front.
func (v voice) likeTable(l size.Likeness) *Table {
	columns := []Column{{Head: "as it was", Report: l.OldPiece}}
	for _, k := range l.Ways {
		columns = append(columns, Column{Head: k.Way.String(), Report: k.Report})
	}
	g := newGrid(v, columns, 10)
	g.table.Caption = "What each radius does"
	v.rockerRows(g)
	g.row("tip to tip", g.length(), func(r *check.Balanced) string { return v.shop(r.Tape.TipToTip, quantity.Length) })
	g.rests()
	g.row("back leans, seated", "deg", g.of((*check.Balanced).Seated, func(l *check.Load) string { return v.shop(l.BackRecline, quantity.Angle) }))
	g.rocks()
	g.holds()
	return g.table
}

// rockerRows adds the rocker itself: its arcs from nose to tail, its ends and its low point.
func (v voice) rockerRows(g *grid) {
	most := 1
	for _, c := range g.columns {
		most = max(most, arcs(c.Report.Design.Rocker))
	}
	for n := range most {
		label := "radius"
		if most > 1 {
			label = fmt.Sprintf("radius %d, from nose", n+1)
		}
		g.row(label, g.length(), func(r *check.Balanced) string { return v.shopOr(nthArc(r.Design.Rocker, n).Radius) })
		if most > 1 {
			g.row("  along the curve", g.length(), func(r *check.Balanced) string { return v.shopOr(nthArc(r.Design.Rocker, n).Length) })
		}
	}
	g.row(v.nose+" along the curve", g.length(), func(r *check.Balanced) string { n, _ := r.Edge.Reach(); return v.shop(n, quantity.Length) })
	g.row(v.tail+" along the curve", g.length(), func(r *check.Balanced) string { _, t := r.Edge.Reach(); return v.shop(t, quantity.Length) })
	if g.columns[0].Report.Design.Seat.Front > 0 {
		g.row("behind the low point", g.length(), func(r *check.Balanced) string { return v.shop(r.Design.Seat.Behind, quantity.Length) })
	}
}

// shopOr returns a length, "" where there is none.
func (v voice) shopOr(x float64) string {
	if x == 0 {
		return ""
	}
	return v.shop(x, quantity.Length)
}

// nthArc returns the n-th arc, flats and corners not counted; the zero Arc where there are not so
// many.
func nthArc(r piece.Rocker, n int) piece.Arc {
	if len(r.Arcs) == 0 && n == 0 {
		return piece.Arc{Radius: r.Radius, Length: r.Nose + r.Tail}
	}
	for _, a := range r.Arcs {
		if a.Radius == 0 {
			continue
		}
		if n == 0 {
			return a
		}
		n--
	}
	return piece.Arc{}
}

// when says for each way when a maker would choose it.
func (v voice) when(l size.Likeness) []Line {
	reasons := map[size.Way]string{
		size.SameTime:       "for who likes its beat.",
		size.SameSteadiness: "for who likes how it answers a lean.",
		size.SameProportion: "when all grows alike; larger is slower.",
		size.SameRadius:     "when the form or the trammel is there already.",
	}
	var lines []Line
	for _, k := range l.Ways {
		text := reasons[k.Way]
		switch {
		case !k.Found:
			text = "no radius does it here."
		case k.Way != size.SameRadius:
			text = fmt.Sprintf("%s; %s", v.more(k.Exact-l.Old.Radius), text)
		}
		lines = append(lines, Line{Label: upperFirst(k.Way.String()) + ":", Text: text, Bad: !k.Found})
	}
	return lines
}

// more says by how much a radius changes.
func (v voice) more(by float64) string {
	switch text := v.with(math.Abs(by), quantity.Length); {
	case v.shop(math.Abs(by), quantity.Length) == "0":
		return "as it was"
	case by > 0:
		return text + " more"
	default:
		return text + " less"
	}
}

// likeMargins returns the margins of every load on every rocker.
func (v voice) likeMargins(l size.Likeness) Block {
	columns := []Column{{Head: "as drawn", Report: l.Wanted}}
	for _, k := range l.Ways {
		columns = append(columns, Column{Head: k.Way.String(), Report: k.Report})
	}
	g := newGrid(v, columns, 10)
	length := quantity.Unit(quantity.Length, v.units)
	for i := range l.Wanted.Loads {
		choose := func(r *check.Balanced) *check.Load { return &r.Loads[min(i, len(r.Loads)-1)] }
		g.table.Rows = append(g.table.Rows, Row{Cells: []string{l.Wanted.Loads[i].Name}})
		g.row("  "+v.Back, "deg", g.of(choose, func(l *check.Load) string { return v.shop(l.Balance.Back.Angle, quantity.Angle) }))
		g.row("    lift", length, g.of(choose, func(l *check.Load) string { return v.shop(l.Balance.Back.Lift, quantity.Length) }))
		g.row("  "+v.Forward, "deg", g.of(choose, func(l *check.Load) string { return v.shop(l.Balance.Forward.Angle, quantity.Angle) }))
		g.row("    lift", length, g.of(choose, func(l *check.Load) string { return v.shop(l.Balance.Forward.Lift, quantity.Length) }))
	}
	return Block{Title: "Before going over, every load", Table: g.table, All: true}
}

// likeAssumptions says what the answer assumes.
func (v voice) likeAssumptions(l size.Likeness) Block {
	lines := []Line{
		{Text: "Where the low point lies under the seat, the heights of the seat and the ratios of the arcs stay as the new piece is drawn; all radii scale by the one at the rest with the owner at ease. The lengths along the curve stay; for the same proportion they are the old ones, scaled as the radius is."},
		{Text: fmt.Sprintf("The radius is the height of the balance point at rest, and on top of it a piece that grows with the square of the sizes and shrinks with the square of the time: R = H + (k² + H²)(2π/T)²/g. Here k, the radius of gyration, was %s and H %s.",
			v.with(l.Old.Gyration, quantity.Length), v.with(l.Old.Height, quantity.Length))},
		{Text: "Each is solved together with the rest that it moves, then rounded, and the table shows what the rounded rocker does."},
	}
	return Block{Title: "What it assumes", Lines: lines, All: true}
}

// LikeLetter returns the answer of [Like] as a letter to another maker.
func LikeLetter(l size.Likeness, changes []string) Sheet {
	v := voiceOf(l.Wanted.Design)
	old, now := v.called(l.OldPiece.Design), v.called(l.Wanted.Design)
	asked := fmt.Sprintf("You like how %s rocks and are making %s. What radius does it want?", old, now)
	if old == now {
		asked = fmt.Sprintf("You like how %s rocks and are making it again with %s. What radius does it want?", old, changedTo(changes))
	}
	why := "It hangs on what you want to keep, for no one radius keeps everything. The radius of the floor edge is the height of the balance point of chair and sitter, and on top of that a piece that makes the time: raise the balance point and keep the radius, and that piece gets smaller, so the rock gets slower and the chair less sure of its rest."
	s := Sheet{Title: "To a fellow maker", Blocks: []Block{{Lines: []Line{{Text: asked}}}, {Lines: []Line{{Text: why}}}}}
	s.Blocks = append(s.Blocks, Block{Lines: v.oldAndNew(l, nil)}, Block{Lines: v.when(l)}, Block{Table: v.likeTable(l)})
	s.Blocks = append(s.Blocks, Block{Lines: append(v.rulesInBrief(l), Line{Text: "Radii are of the floor edge: pin to the outside of the pencil, and not the form's. Seat heights and the place of the low point are as drawn."}, v.foot())})
	return s
}

// changedTo names changes in a sentence.
func changedTo(changes []string) string {
	if len(changes) == 0 {
		return "nothing changed"
	}
	return list(changes)
}

// SizedLetter returns the answer of [Sized] as a letter to another maker.
func SizedLetter(d piece.Design, found size.Solution, others []size.Proposal) Sheet {
	v := voiceOf(d)
	best := found.Take()
	s := Sheet{Title: "To a fellow maker", Blocks: []Block{{Lines: []Line{{Text: fmt.Sprintf("You asked what rocker %s wants for what you aim for. This is what came out.", v.called(d))}}}}}
	s.Blocks = append(s.Blocks, Block{Lines: append([]Line{v.found(best)}, v.binds(best)...)}, Block{Table: v.sizedTable(d.Target, found.Proposals, others)})
	s.Blocks = append(s.Blocks, Block{Lines: append(v.curves(found.Proposals[0], others), Line{Text: "Radii are of the floor edge: pin to the outside of the pencil, and not the form's."}, v.foot())})
	return s
}

// Shown reports whether a rocker stands on the first page of [Sized].
func Shown(p size.Proposal) bool {
	return p.Curve != size.EvenTime || p.Fitted == shownArcs
}
