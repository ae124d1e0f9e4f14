package words

import (
	"fmt"
	"math"
	"slices"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// everything returns the blocks that are only shown under --all.
func (v voice) everything(a trial.Answer) []Block {
	r := a.Report
	return slices.Concat(v.everyLoad(r), v.fits(&a),
		[]Block{{Title: "Every limit", All: true, Table: v.limitTable(ranked(r.Limits))}, v.pulls(r)},
		v.survives(a), v.everySwing(r),
		[]Block{{Title: "What this rests on", All: true, Lines: v.assumptions(r)}, {Title: "Cautions", All: true, Lines: v.cautions(r)}})
}

// fits returns whom the piece fits, who they are, and how its wood bends under them.
func (v voice) fits(a *trial.Answer) []Block {
	return slices.Concat(v.fitTable(a), v.people(a.Report), v.gives(a.Report), v.bends(a.Report))
}

// everyLoad returns the readings of every load, person by person.
func (v voice) everyLoad(r check.Report) []Block {
	var blocks []Block
	for _, group := range grouped(r.Loads) {
		title := "Every load"
		if name := group[len(group)-1].Sitter; name != "" {
			title += ": " + brief(name)
		}
		blocks = append(blocks, Block{Title: title, All: true, Table: v.readingsOf(r.Design, group, everyRemark)})
	}
	return blocks
}

// everySwing returns how long a rock takes by how far it was let go: of the first two loads
// in full, of all in short.
func (v voice) everySwing(r check.Report) []Block {
	if len(r.Releases) == 0 {
		return nil
	}
	var blocks []Block
	for i := range r.Loads[:min(2, len(r.Loads))] {
		if l := &r.Loads[i]; l.Balance.Outcome == sim.Rocks {
			blocks = append(blocks, v.swings(l, r.Releases))
		}
	}
	if len(r.Loads) > 2 {
		blocks = append(blocks, v.times(r))
	}
	return blocks
}

// grouped parts loads into groups that fit side by side, each of one person; the piece
// alone stands with the first.
func grouped(loads []check.Load) [][]*check.Load {
	var groups [][]*check.Load
	for i := range loads {
		last := len(groups) - 1
		if last < 0 || len(groups[last]) == fourAbreast || i > 1 && loads[i].Sitter != loads[i-1].Sitter {
			groups = append(groups, nil)
			last++
		}
		groups[last] = append(groups[last], &loads[i])
	}
	return groups
}

// pulls returns what a hand at the top of the back must do to tip the piece.
func (v voice) pulls(r check.Report) Block {
	t := &Table{Head: []string{"Pulled backwards at the top of the back", "slowly", "at once and held", ""}}
	for i := range r.Loads {
		if p := r.Pull(&r.Loads[i]); !math.IsNaN(p.Slow) {
			t.add(across(brief(r.Loads[i].Name), []float64{p.Slow, p.Sudden}, func(force float64) string {
				return v.shop(force, quantity.Force)
			}, quantity.Unit(quantity.Force, v.units))...)
		}
	}
	b := Block{Title: "What tips it", All: true, Table: t}
	if len(t.Rows) == 0 {
		b.Table, b.Lines = nil, says(v.noPull)
	}
	return b
}

// swings returns how long a rock takes by how far the load was let go.
func (v voice) swings(l *check.Load, releases []float64) Block {
	t := &Table{Head: []string{"Let go from", "one rock", "carries to", "friction needed", ""}}
	for _, release := range releases {
		s := l.Swing(release)
		from := v.angle(math.Abs(s.Release))
		if s.Release < 0 {
			from += " " + v.Forward
		}
		if s.Outcome != sim.Rocks {
			t.add(from, "–", "–", "–", s.Outcome.String())
			continue
		}
		t.add(from, fmt.Sprintf("%.2f s", s.Period), v.angle(math.Abs(s.Reach)), fmt.Sprintf("%.2f", s.Friction), "degrees from rest")
	}
	return Block{Title: "Time of a rock: " + brief(l.Name), All: true, Table: t}
}

// times returns how long a rock of each load takes, by how far it was let go.
func (v voice) times(r check.Report) Block {
	t := &Table{Head: across("Let go from, degrees", r.Releases, v.angle, "")}
	for i := range r.Loads {
		t.add(across(brief(r.Loads[i].Name), r.Releases, func(release float64) string {
			if s := r.Loads[i].Swing(release); s.Outcome == sim.Rocks {
				return v.seconds(s.Period)
			}
			return "–"
		}, "s")...)
	}
	return Block{Title: "Time of a rock, there and back", All: true, Table: t}
}

// assumptions says on what the numbers stand.
func (v voice) assumptions(r check.Report) []Line {
	texts := []string{"The piece and the person are one rigid body that rolls on the floor without slipping. " +
		"No friction of the air, no rolling loss: a real rock dies away. " +
		"A person who moves, a soft rug and a sliding rocker are outside the model.",
		"No published limit for how near a rocking chair may be to going over was found; " +
			"the limits marked 'our judgement' are ours. Change them under [limits]."}
	if r.Curve != nil && r.Curve.Drawn != nil {
		texts = append(texts, v.fitted(r.Design, r.Curve.Drawn))
	}
	if r.Spread.Estimated {
		texts = append(texts, fmt.Sprintf("The weight of the piece is a guess spread over seat, back, arms, legs and rockers "+
			"as slab, panel and rods of the drawn sizes. Any of them 20 %% heavier or lighter moves the empty rest by up to %s, "+
			"the others by up to %s, and the margins by up to %s.",
			v.degrees(r.Spread.EmptyRest), v.degrees(r.Spread.Rest), v.degrees(r.Spread.Margin)))
	}
	if slices.ContainsFunc(r.Design.Sitters, func(s piece.Sitter) bool {
		return s.Mass != 0 && !(s.Inertia > 0) && (s.Sitting != piece.Place{} || s.Centre.Y != 0)
	}) {
		texts = append(texts, "A person given by weight, ahead and above turns about the own balance point like a body with "+
			"a radius of gyration of "+v.length(piece.Gyration)+", from a chain of body segments (derived, not published).")
	}
	for _, l := range r.Look {
		if !l.Holds {
			texts = append(texts, fmt.Sprintf("Worth a look, with no limit set: %s keeps %s before going %s.",
				brief(l.Load), v.with(l.Got, l.Kind), v.Forward))
		}
	}
	if r.Design.Bed.Drawn() {
		texts = append(texts, string(v.lying))
	}
	if slices.ContainsFunc(r.Design.Rocker.Arcs, func(a piece.Arc) bool { return a.Flat != 0 || a.Turn != 0 || a.Radius < 0 }) {
		texts = append(texts, "Flats and corners are taken to lose nothing when the rocker rolls over them; really each is a knock.")
	}
	return says(texts...)
}

// cautions are the usual ones for the kind of piece. They are no standard.
func (v voice) cautions(r check.Report) []Line {
	child := ""
	if r.ForAChild() {
		child = "Children kneel on the seat facing the back, stand on it and climb on behind; " +
			"of these only a child on the tail was tried. They grow out of what was checked."
	}
	return append(says("Local codes, the current standards and licensed practice go first. "+
		"Nothing here was tested; try the dry-fitted piece on a clear floor with someone beside you.",
		string(v.alone), child), says(v.beware...)...)
}

// Notes returns what a program's user should know of the numbers, a sentence or two each.
func Notes(r check.Report) []string {
	var notes []string
	for _, l := range voiceOf(r.Design).assumptions(r) {
		notes = append(notes, l.Text)
	}
	return notes
}
