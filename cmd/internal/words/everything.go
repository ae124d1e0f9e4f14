package words

import (
	"fmt"
	"math"
	"slices"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// fits returns whom the piece fits, who they are, and how its wood bends under them.
func (v voice) fits(a *trial.Answer) []sheet.Block {
	return slices.Concat(v.fitTable(a), v.people(a.Report), v.gives(a.Report), v.bends(a.Report))
}

// everyLoad returns the readings of every load side by side, as many as fit, person by person; the piece alone
// stands with the first.
func (v voice) everyLoad(r check.Report) []sheet.Block {
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
			Table: v.readingsOf(r.Design, group, everyRemark)})
	}
	return blocks
}

// everySwing returns how long a rock takes by how far it was let go: of the first two loads
// in full, of all in short.
func (v voice) everySwing(r check.Report) []sheet.Block {
	if len(r.Releases) == 0 {
		return nil
	}
	var blocks []sheet.Block
	all := &sheet.Table{Head: sheet.Across("Let go from, degrees", r.Releases, v.angle, "")}
	for i := range r.Loads {
		l := &r.Loads[i]
		t := &sheet.Table{Head: []string{"Let go from", "one rock", "carries to", "friction needed", ""}}
		cells := []string{brief(l.Name)}
		for _, release := range r.Releases {
			s := l.Swing(release)
			from := v.angle(math.Abs(s.Release)) + when(s.Release < 0, " %s", v.Forward)
			if s.Outcome != sim.Rocks {
				t.Add(from, "–", "–", "–", s.Outcome.String())
				cells = append(cells, "–")
				continue
			}
			t.Add(from, fmt.Sprintf("%.2f s", s.Period), v.angle(math.Abs(s.Reach)), fmt.Sprintf("%.2f", s.Friction), "degrees from rest")
			cells = append(cells, v.seconds(s.Period))
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
func (v voice) pulls(r check.Report) sheet.Block {
	t := &sheet.Table{Head: []string{"Pulled backwards at the top of the back", "slowly", "at once and held", ""}}
	for i := range r.Loads {
		if p := r.Pull(&r.Loads[i]); !math.IsNaN(p.Slow) {
			t.Add(brief(r.Loads[i].Name), v.shop(p.Slow, quantity.Force), v.shop(p.Sudden, quantity.Force),
				quantity.Unit(quantity.Force, v.units))
		}
	}
	if len(t.Rows) == 0 {
		return sheet.Block{Title: "What tips it", All: true, Lines: sheet.Says(v.noPull)}
	}
	return sheet.Block{Title: "What tips it", All: true, Table: t}
}

// assumptions says on what the numbers stand.
func (v voice) assumptions(r check.Report) []sheet.Line {
	fitted, looks := "", []string{}
	if r.Curve != nil && r.Curve.Drawn != nil {
		fitted = v.fitted(r.Design, r.Curve.Drawn)
	}
	for _, l := range r.Look {
		looks = append(looks, when(!l.Holds, "Worth a look, with no limit set: %s keeps %s before going %s.",
			brief(l.Load), v.with(l.Got, l.Kind), v.Forward))
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
		fitted,
		when(r.Spread.Estimated, "The weight of the piece is a guess spread over seat, back, arms, legs and rockers "+
			"as slab, panel and rods of the drawn sizes. Any of them 20 %% heavier or lighter moves the empty rest by up to %s, "+
			"the others by up to %s, and the margins by up to %s.",
			v.degrees(r.Spread.EmptyRest), v.degrees(r.Spread.Rest), v.degrees(r.Spread.Margin)),
		when(weighed, "A person given by weight, ahead and above turns about the own balance point like a body with "+
			"a radius of gyration of %s, from a chain of body segments (derived, not published).", v.length(piece.Gyration))),
		sheet.Says(looks...), sheet.Says(pick(r.Design.Bed.Height > 0, string(v.lying), ""),
			when(knocks, "Flats and corners are taken to lose nothing when the rocker rolls over them; really each is a knock.")))
}

// cautions are the usual ones for the kind of piece. They are no standard.
func (v voice) cautions(r check.Report) []sheet.Line {
	return append(sheet.Says("Local codes, the current standards and licensed practice go first. "+
		"Nothing here was tested; try the dry-fitted piece on a clear floor with someone beside you.", string(v.alone),
		when(r.ForAChild(), "Children kneel on the seat facing the back, stand on it and climb on behind; "+
			"of these only a child on the tail was tried. They grow out of what was checked.")), sheet.Says(v.beware...)...)
}

// Notes returns what a program's user should know of the numbers, a sentence or two each.
func Notes(r check.Report) []string {
	var notes []string
	for _, l := range voiceOf(r.Design).assumptions(r) {
		notes = append(notes, l.Text)
	}
	return notes
}
