package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// fits returns whom the piece fits, who they are, and how its wood bends under them.
func fits(w wording, a *trial.Answer) []sheet.Block {
	return slices.Concat(fitTable(w.units, a), people(w.units, a.Report), gives(w.units, a.Report), bends(w, a.Report))
}

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
		blocks = append(blocks, sheet.Block{Title: "Every load" + when(name != "", ": %s", brief(name)), All: true,
			Table: readingsOf(w, r.Design, group, everyRemark)})
	}
	return blocks
}

// everySwing returns how long a rock takes by how far it was let go: of the first two loads
// in full, of all in short.
func everySwing(w wording, r check.Report) []sheet.Block {
	if len(r.Releases) == 0 {
		return nil
	}
	var blocks []sheet.Block
	all := &sheet.Table{Head: sheet.Across("Let go from, degrees", r.Releases, w.angle, "")}
	for i := range r.Loads {
		l := &r.Loads[i]
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
			t.Add(from, fmt.Sprintf("%.2f s", s.Period), w.angle(unsigned(s.Reach)), fmt.Sprintf("%.2f", s.Friction), "degrees from rest")
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
	if len(t.Rows) == 0 {
		return sheet.Block{Title: "What tips it", All: true, Lines: sheet.Says(w.noPull)}
	}
	return sheet.Block{Title: "What tips it", All: true, Table: t}
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
		return s.Mass != 0 && !(s.Inertia > 0) && (s.Sitting != piece.Place{} || s.Centre.Y != 0)
	})
	knocks := slices.ContainsFunc(r.Design.Rocker.Arcs, func(a piece.Arc) bool { return a.Flat != 0 || a.Turn != 0 || a.Radius < 0 })
	return slices.Concat(sheet.Says("The piece and the person are one rigid body that rolls on the floor without slipping. "+
		"No friction of the air, no rolling loss: a real rock dies away. "+
		"A person who moves, a soft rug and a sliding rocker are outside the model.",
		"No published limit for how near a rocking chair may be to going over was found; "+
			"the limits marked 'our judgement' are ours. Change them under [limits].",
		edge,
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

// off says in which way a measure is beyond common practice: too much, too little.
var off = map[string][2]string{
	"seat.front":  {"high", "low"},
	"seat.depth":  {"deep", "shallow"},
	"seat.width":  {"wide", "narrow"},
	"arms.height": {"high", "low"},
	"back.height": {"tall", "short"},
	"back.lumbar": {"high", "low"},
}

// below returns a block of a table, and what is said below it; nothing of a table without rows.
func below(b sheet.Block, texts ...string) []sheet.Block {
	if len(b.Table.Rows) == 0 {
		return nil
	}
	return []sheet.Block{b, {All: b.All, Lines: sheet.Says(texts...)}}
}

// fitTable returns have, want and change by of each measure.
func fitTable(u units, a *trial.Answer) []sheet.Block {
	t := &sheet.Table{Head: []string{"Owner at ease", "have", "want", "change by", "goes by"}}
	for _, f := range a.Fit {
		want, change := u.bare(f.Low)+" to "+u.bare(f.High), "–"
		if math.IsInf(f.High, 1) {
			want = u.bare(f.Low) + " or more"
		}
		if f.Change != 0 {
			change = pick(f.Change > 0, "+", "-") + u.bare(unsigned(f.Change))
		}
		t.Mark(!f.Holds(), f.What, u.bare(f.Have), want, change, f.Size.String())
	}
	return below(sheet.Block{Title: "Fit", All: true, Table: t}, misfits(u, a), "In "+inUnits(u, "inches", "millimetres")+
		". The clearances between a person and a seat are common practice among chairmakers; change them to taste.")
}

// trouble says in what way a seat does not fit.
func trouble(u units, m check.Misfit) string {
	by := u.length(m.By)
	return map[check.Trouble]string{
		check.FeetHang: "feet " + by + " off the floor", check.KneesUp: "knees " + by + " above the hips",
		check.TooWide: "hips " + by + " wider than the seat", check.TooDeep: "seat " + by + " deeper than the thigh",
		check.KneesOverChin: "knees above the chin",
	}[m.Trouble]
}

// people returns what was given and what was estimated of each person.
func people(u units, r check.Report) []sheet.Block {
	first := slices.IndexFunc(r.Somebody, func(s check.Somebody) bool { return s.Role == piece.Owner })
	if first < 0 {
		return nil
	}
	owner := &r.Somebody[first]
	t := &sheet.Table{Head: []string{"Sizes of " + brief(owner.Name), "", "", ""}}
	for _, s := range person.Sizes() {
		text := u.length(owner.Person.Sizes[s])
		switch s {
		case person.Stature:
			text = quantity.Tall(owner.Person.Sizes[s], u.System)
		case person.Mass:
			text = mass(u, owner.Person.Sizes[s])
		}
		t.Add(s.String()+" ("+s.Science()+")", text, "", owner.Person.Sources[s].String())
	}
	var others []string
	for _, one := range r.Somebody {
		if sizes := one.Person.Sizes; one.Name != owner.Name {
			others = append(others, brief(one.Name)+" "+quantity.Tall(sizes[person.Stature], u.System)+", "+mass(u, sizes[person.Mass]))
		}
	}
	return below(sheet.Block{Title: "People", All: true, Table: t},
		"Estimated sizes go with the height in the ANSUR II survey of soldiers (2012), "+
			"of children with the CDC growth charts (2000). Weights of limbs are by de Leva (1996), "+
			"of children by Jensen (1986, 1989). "+
			"A big belly or pregnancy carries the balance point forward; this does not know of it.",
		when(len(others) > 0, "Others: %s.", strings.Join(others, "; ")), postures(r))
}

// postures says how the postures are meant, of those that were checked.
func postures(r check.Report) string {
	meant := map[person.Posture]string{
		person.Sitting:   "sitting is at ease, shoulders a hand off the back, head up",
		person.LyingBack: "lying back is trunk on the back and head behind it",
		person.Perched: "perched is near the front edge with the feet drawn back on the floor, a bar on two supports: " +
			"the seat carries what the feet do not",
		person.FeetFlat: "feet flat leaves the feet and the ankles' share of the shanks to the floor, " +
			"each shank a bar from knee to ankle",
		person.FeetUp:         "feet up is shanks stretched out, off the floor",
		person.PushingUp:      "pushing up has half of the weight on the ends of the arms, through the hands (our judgement)",
		person.RidingForward:  "riders lean 25 degrees fore and aft",
		person.ArmsBehindHead: "arms behind the head is lying back, elbows up",
	}
	var said []string
	for _, p := range person.Postures() {
		checked := func(l check.Load) bool { return l.Posture == p && len(l.Figures) > 0 }
		if meant[p] != "" && slices.ContainsFunc(r.Loads, checked) {
			said = append(said, meant[p])
		}
	}
	return when(len(said) > 0, "%s. In all but perched, feet flat and pushing up the whole person rides on the piece.",
		upperFirst(strings.Join(said, "; ")))
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
		"%s braces of %s, %s by %s, %s long, bent as one beam %s. "+
			"Rest, recline and the load on the back are solved together; the readings above are with the back bent. "+
			"Shares in brackets: if the wood is stronger or weaker than the middle of its kind "+
			"by two standard deviations (16 %% each, from memory); "+
			"the yield goes from %s of that shown, as stiffness spreads (22 %% each, from memory).",
		u.shop(b.Count, quantity.Count), brief(b.Wood), u.length(b.Width), u.length(b.Thickness), u.length(b.Length),
		pick(b.Held == body.OneEnd, "fast in the seat, free at the top", "resting in seat and crest rail"),
		shares(check.YieldSpread())), noTest)
}

// bends returns how the rockers bend with the heaviest load on one end; nothing where
// their sizes are not given.
func bends(w wording, r check.Report) []sheet.Block {
	if len(r.Bending) == 0 {
		return nil
	}
	t := &sheet.Table{Head: []string{"Standing on", "floor pushes", "laminated or bent", "sawn from a board"}}
	var worst []string
	for _, b := range r.Bending {
		tip := "the " + pick(b.Tail, w.tail, w.nose) + " tip"
		t.Mark(b.Across.Most > 1, tip, force(w.units, b.Force), shares(b.Along.Least, b.Along.Most), shares(b.Across.Least, b.Across.Most))
		worst = append(worst, fmt.Sprintf("%s from %s with the grain %s out",
			w.length(b.Across.From), tip, w.degrees(b.Across.Grain)))
	}
	return below(sheet.Block{Title: "The rockers bend", All: true, Table: t}, fmt.Sprintf(
		"Of the bending strength of the wood, for each of two rockers, "+
			"with %s on one end: a cantilever from the nearer leg. "+
			"Sawn rockers are read at the worst short grain between leg and tip (%s) "+
			"by Hankinson's formula with its whole range (Wood Handbook, chapter 5, from memory).",
		brief(r.Bending[0].Load), list(worst)), noTest)
}
