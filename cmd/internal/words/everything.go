package words

import (
	"fmt"
	"math"
	"slices"

	"rockerwright/body"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// everyLoad returns the readings of every load side by side, as many as fit, person by person; the piece alone
// stands with the first.
func everyLoad(w wording, r check.Report) []sheet.Block {
	var groups [][]*check.Load
	for i := range r.Loads {
		last := len(groups) - 1
		if last < 0 || len(groups[last]) == fourAbreast || i > 1 && r.Loads[i].Sitter != r.Loads[i-1].Sitter {
			groups = append(groups, nil)
			last++
		}
		groups[last] = append(groups[last], &r.Loads[i])
	}
	var blocks []sheet.Block
	for _, group := range groups {
		name := group[len(group)-1].Sitter
		t := readingsOf(w, &r.Balanced, group, everyRemark)
		if slices.ContainsFunc(group, func(l *check.Load) bool { return pressed(w, l) != "" }) {
			cells := sheet.Across("  as the feet press", group, func(l *check.Load) string {
				fall, told := l.PressedFall()
				return pick(told, towards(w, fall), "–")
			}, "degrees")
			t.Rows = slices.Insert(t.Rows, 1, sheet.Row{Cells: cells})
		}
		blocks = append(blocks, sheet.Block{Title: "Every load" + when(name != "", ": %s", brief(name)), All: true, Table: t})
	}
	return blocks
}

// everySwing returns how long a rock takes by how far it was let go: of the first two loads in full, of all in short.
func everySwing(w wording, r check.Report) []sheet.Block {
	if len(r.Releases) == 0 {
		return nil
	}
	var blocks []sheet.Block
	all := &sheet.Table{Head: sheet.Across("Let go from, degrees", r.Releases, w.angle, "")}
	for i := range r.Loads {
		l := &r.Loads[i]
		if l.Upright() && !l.Moves() {
			continue
		}
		t := &sheet.Table{Head: []string{"Let go from", "one rock", "carries to", "friction needed", ""}}
		cells := []string{brief(l.Name)}
		for _, release := range r.Releases {
			s := l.Swing(release)
			from := w.angle(unsigned(s.Release)) + when(s.Release < 0, " %s", w.Forward)
			if s.Outcome != sim.Rocks {
				t.Add(from, "–", "–", "–", s.Outcome.String())
				cells = append(cells, "–")
				continue
			}
			t.Add(from, fmt.Sprintf("%.2f s", s.Period), w.angle(unsigned(s.Reach)), fmt.Sprintf("%.2f", s.Friction),
				"degrees from rest")
			cells = append(cells, seconds(w.units, s.Period))
		}
		all.Add(append(cells, "s")...)
		if i < 2 && l.Balance.Outcome == sim.Rocks {
			blocks = append(blocks, sheet.Block{Title: "Time of a rock: " + brief(l.Name), All: true, Table: t})
		}
	}
	if len(r.Loads) > 2 {
		blocks = append(blocks, sheet.Block{Title: "Time of a rock, there and back", All: true, Table: all})
	}
	return blocks
}

// pulls returns what a hand at the top of the back must do to tip the piece.
func pulls(w wording, r check.Report) sheet.Block {
	t := &sheet.Table{Head: []string{"Pulled backwards at the top of the back", "slowly", "at once and held", ""}}
	for i := range r.Loads {
		if p := r.Pull(&r.Loads[i]); !math.IsNaN(p.Slow) {
			t.Add(brief(r.Loads[i].Name), w.shop(p.Slow, quantity.Force), w.shop(p.Sudden, quantity.Force),
				quantity.Unit(quantity.Force, w.System))
		}
	}
	b := sheet.Block{Title: "What tips it", All: true, Table: t}
	if len(t.Rows) == 0 {
		b.Table, b.Lines = nil, sheet.Says(w.noPull)
	}
	return b
}

// assumptions says on what the numbers stand.
func assumptions(w wording, r check.Report) []sheet.Line {
	edge, looks := "", []string{}
	if r.Curve != nil && r.Curve.Drawn != nil {
		edge = fitted(w.units, r.Design, r.Curve.Drawn)
	}
	for _, l := range r.Look {
		looks = append(looks, when(!l.Holds, "Worth a look, with no limit set: %s keeps %s before going %s.",
			brief(l.Load), w.with(l.Got, l.Kind), w.Forward))
	}
	weighed := slices.ContainsFunc(r.Design.Sitters, func(s piece.Sitter) bool {
		return s.Mass != 0 && !(s.Inertia > 0) && (s.Placed != piece.Place{} || s.Centre.Y != 0)
	})
	knocks := slices.ContainsFunc(r.Design.Rocker.Arcs, func(a piece.Arc) bool { return a.Flat != 0 || a.Turn != 0 || a.Radius < 0 })
	slippery, firm := piece.SlidesOff()
	feet := slices.ContainsFunc(r.Loads, func(l check.Load) bool { return len(l.Legs) > 0 })
	return slices.Concat(sheet.Says("The piece and the person are one rigid body that rolls on the floor without slipping"+
		when(feet, ", but for shanks and feet of who sits: they hang from the knees and stand on the floor, free to turn")+". "+
		"No friction of the air, no rolling loss: a real rock dies away. "+
		"A soft rug and a sliding rocker are outside the model, and so is a person who moves, but for one who leans to and fro.",
		"No published limit for how near a rocking chair may be to going over was found; "+
			"the limits marked 'our judgement' are ours. Change them under [limits].",
		when(r.Design.Traits().Seating, "Why those: going over forward, because a foot slips and people rise in a hurry; the fall of the "+
			"seat at ease, because forward one slides and far back one cannot rise; empty, because sitting down is then a fall "+
			"or a climb; slope forward, because cloth slides on wood; the time of a rock, because less is a shake and more a "+
			"swing that hardly stops; the push, because a foot has no more; legs, because nothing carries them beyond the rocker. "+
			"A limit is judged as it is printed, and where it holds or fails by less than is known it is too near to tell."),
		when(r.Design.UsualLimits().Leans > 0, "Leans: children rock hard, and back, forward and back once more is play. Each whole lean "+
			"is made at once at the turn of a rock, which errs to the side of more, but for a lean that is made a little off the turn."),
		edge,
		when(feet, "Who sits slides off a seat that falls forward by %s, on cloth as slippery as that (our judgement); "+
			"rocking brings it down.", w.angle(slippery)+" to "+w.degrees(firm)),
		when(r.Spread.Estimated, "The weight of the piece is a guess spread over seat, back, arms, legs and rockers "+
			"as slab, panel and rods of the drawn sizes. Any of them 20 %% heavier or lighter moves the empty rest by up to %s, "+
			"the others by up to %s, and the margins by up to %s.",
			w.degrees(r.Spread.EmptyRest), w.degrees(r.Spread.Rest), w.degrees(r.Spread.Margin)),
		when(weighed, "A person given by weight, ahead and above turns about the own balance point like a body with "+
			"a radius of gyration of %s, from a chain of body segments (derived, not published).", w.length(piece.Gyration))),
		sheet.Says(looks...), sheet.Says(pick(r.Design.Bed.Drawn(), string(w.lying), ""),
			when(knocks, "Flats and corners are taken to lose nothing when the rocker rolls over them; really each is a knock.")))
}

// cautions are the usual ones for the kind of piece. They are no standard.
func cautions(say *phrases, r check.Report) []sheet.Line {
	return append(sheet.Says("Local codes, the current standards and licensed practice go first. "+
		"Nothing here was tested; try the dry-fitted piece on a clear floor with someone beside you.", string(say.alone),
		when(r.ForAChild(), "Children kneel on the seat facing the back, stand on it and climb on behind; "+
			"of these only a child on the tail was tried. They grow out of what was checked.")), sheet.Says(say.beware...)...)
}

// Notes returns what a program's user should know of the numbers, a sentence or two each.
func Notes(r check.Report) []string {
	var notes []string
	for _, l := range assumptions(wordingOf(r.Design), r) {
		notes = append(notes, l.Text)
	}
	return notes
}

// below returns a block of a table, and what is said below it; nothing of a table without rows.
func below(b sheet.Block, texts ...string) []sheet.Block {
	if len(b.Table.Rows) == 0 {
		return nil
	}
	return []sheet.Block{b, {All: b.All, Lines: sheet.Says(texts...)}}
}

// noTest is said wherever wood is bent on paper.
const noTest = "Not a strength test: straight-grained, dry wood of the middle of its kind, pressed once and gently. " +
	"Joints, knots, screw holes, shock and years of rocking are not in it."

// gives returns how a back of braces yields, load by load; nothing where it is stiff.
func gives(u units, r check.Report) []sheet.Block {
	t := &sheet.Table{Head: []string{"Leaning on the back", "presses", "yields", "leans on by", "of the strength"}}
	for _, l := range r.Loads {
		if g := l.Give; g != nil {
			share := percent(g.Share) + " (" + shares(g.Least, g.Most) + ")"
			t.Mark(g.Most > 1, brief(l.Name), force(u, g.Force), u.length(g.Yield), u.degrees(g.Turn), share)
		}
	}
	b := r.Design.Back.Braces
	return below(sheet.Block{Title: "The back gives", All: true, Table: t}, fmt.Sprintf(
		"%s braces of %s, %s by %s, %s long, bent as one beam %s. Rest, recline and the load on the back are solved "+
			"together; the readings above are with the back bent. Shares in brackets: if the wood is stronger or "+
			"weaker than the middle of its kind by two standard deviations (16 %% each, from memory); the yield "+
			"goes from %s of that shown, as stiffness spreads (22 %% each, from memory).",
		u.shop(b.Count, quantity.Count), brief(b.Wood), u.length(b.Width), u.length(b.Thickness), u.length(b.Length),
		pick(b.Held == body.OneEnd, "fast in the seat, free at the top", "resting in seat and crest rail"),
		shares(check.YieldSpread())), noTest)
}

// bends returns how the rockers bend with the heaviest load on one end; nothing where their sizes are not given.
func bends(w wording, r check.Report) []sheet.Block {
	if len(r.Bending) == 0 {
		return nil
	}
	t := &sheet.Table{Head: []string{"Standing on", "floor pushes", "laminated or bent", "sawn from a board"}}
	var worst []string
	for _, b := range r.Bending {
		tip := "the " + pick(b.Tail, w.tail, w.nose) + " tip"
		t.Mark(b.Across.Most > 1, tip, force(w.units, b.Force), shares(b.Along.Least, b.Along.Most),
			shares(b.Across.Least, b.Across.Most))
		worst = append(worst, fmt.Sprintf("%s from %s with the grain %s out",
			w.length(b.Across.From), tip, w.degrees(b.Across.Grain)))
	}
	return below(sheet.Block{Title: "The rockers bend", All: true, Table: t}, fmt.Sprintf(
		"Of the bending strength of the wood, for each of two rockers, with %s on one end: a cantilever from the "+
			"nearer leg. Sawn rockers are read at the worst short grain between leg and tip (%s) by Hankinson's "+
			"formula with its whole range (Wood Handbook, chapter 5, from memory).",
		brief(r.Bending[0].Load), list(worst)), noTest)
}
