package words

import (
	"fmt"
	"math"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// everything returns the blocks that are only shown under --all.
func (v voice) everything(a trial.Answer) []Block {
	r := a.Report
	blocks := v.everyLoad(r)
	blocks = append(blocks, v.fitTable(&a)...)
	blocks = append(blocks, v.people(r)...)
	blocks = append(blocks, v.gives(r)...)
	blocks = append(blocks, v.bends(r)...)
	blocks = append(blocks,
		Block{Title: "Every limit", All: true, Table: v.limitTable(v.ranked(r.Limits))},
		v.pulls(r),
	)
	blocks = append(blocks, v.survives(a)...)
	blocks = append(blocks, v.everySwing(r)...)
	return append(blocks,
		Block{Title: "What this rests on", All: true, Lines: v.assumptions(r)},
		Block{Title: "Cautions", All: true, Lines: v.cautions(r)},
	)
}

// everyLoad returns the readings of every load, person by person.
func (v voice) everyLoad(r check.Report) []Block {
	var blocks []Block
	for _, group := range grouped(r.Loads) {
		title := "Every load"
		if name := group[len(group)-1].Sitter; name != "" {
			title += ": " + plain(short(name))
		}
		blocks = append(blocks, Block{Title: title, All: true, Table: v.readingsOf(r.Design, group, everyRemark)})
	}
	return blocks
}

// everySwing returns how long a rock takes by how far it was let go: of the first two loads
// in full, of all in short.
func (v voice) everySwing(r check.Report) []Block {
	var blocks []Block
	for i := range r.Loads[:min(2, len(r.Loads))] {
		if l := &r.Loads[i]; l.Balance.Outcome == sim.Rocks && len(r.Releases) > 0 {
			blocks = append(blocks, v.swings(l, r.Releases))
		}
	}
	if len(r.Loads) > 2 && len(r.Releases) > 0 {
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
		if last < 0 || len(groups[last]) == most || i > 1 && loads[i].Sitter != loads[i-1].Sitter {
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
		l := &r.Loads[i]
		if pull := r.Pull(l); !math.IsNaN(pull.Slow) {
			t.Rows = append(t.Rows, Row{Cells: []string{plain(short(l.Name)), v.shop(pull.Slow, quantity.Force), v.shop(pull.Sudden, quantity.Force), quantity.Unit(quantity.Force, v.units)}})
		}
	}
	if len(t.Rows) == 0 {
		return Block{Title: "What tips it", All: true, Lines: []Line{{Text: v.noPull}}}
	}
	return Block{Title: "What tips it", All: true, Table: t}
}

// swings returns how long a rock takes by how far the load was let go.
func (v voice) swings(l *check.Load, releases []float64) Block {
	t := &Table{Head: []string{"Let go from", "one rock", "carries to", "friction needed", ""}}
	for _, release := range releases {
		s := l.Swing(release)
		from := v.shop(math.Abs(s.Release), quantity.Angle)
		if s.Release < 0 {
			from += " " + v.Forward
		}
		if s.Outcome != sim.Rocks {
			t.Rows = append(t.Rows, Row{Cells: []string{from, "–", "–", "–", s.Outcome.String()}})
			continue
		}
		t.Rows = append(t.Rows, Row{Cells: []string{from, fmt.Sprintf("%.2f s", s.Period), v.shop(math.Abs(s.Reach), quantity.Angle), fmt.Sprintf("%.2f", s.Friction), "degrees from rest"}})
	}
	return Block{Title: "Time of a rock: " + plain(short(l.Name)), All: true, Table: t}
}

// times returns how long a rock of each load takes, by how far it was let go.
func (v voice) times(r check.Report) Block {
	t := &Table{Head: []string{"Let go from, degrees"}}
	for _, release := range r.Releases {
		t.Head = append(t.Head, v.shop(release, quantity.Angle))
	}
	t.Head = append(t.Head, "")
	for i := range r.Loads {
		l := &r.Loads[i]
		row := Row{Cells: []string{plain(short(l.Name))}}
		for _, release := range r.Releases {
			text := "–"
			if s := l.Swing(release); s.Outcome == sim.Rocks {
				text = v.seconds(s.Period)
			}
			row.Cells = append(row.Cells, text)
		}
		row.Cells = append(row.Cells, "s")
		t.Rows = append(t.Rows, row)
	}
	return Block{Title: "Time of a rock, there and back", All: true, Table: t}
}

// assumptions says on what the numbers stand.
func (v voice) assumptions(r check.Report) []Line {
	lines := []Line{
		{Text: "The piece and the person are one rigid body that rolls on the floor without slipping. No friction of the air, no rolling loss: a real rock dies away. A person who moves, a soft rug and a sliding rocker are outside the model."},
		{Text: "No published limit for how near a rocking chair may be to going over was found; the limits marked 'our judgement' are ours. Change them under [limits]."},
	}
	if r.Curve != nil && r.Curve.Drawn != nil {
		lines = append(lines, v.fitted(r.Design, r.Curve.Drawn))
	}
	if r.Spread.Estimated {
		lines = append(lines, Line{Text: fmt.Sprintf("The weight of the piece is a guess spread over seat, back, arms, legs and rockers as slab, panel and rods of the drawn sizes. Any of them 20 %% heavier or lighter moves the empty rest by up to %s, the others by up to %s, and the margins by up to %s.",
			v.degrees(r.Spread.EmptyRest), v.degrees(r.Spread.Rest), v.degrees(r.Spread.Margin))})
	}
	for _, sitter := range r.Design.Sitters {
		if sitter.Mass == 0 || sitter.Inertia > 0 || sitter.Sitting == (piece.Place{}) && sitter.Centre.Y == 0 {
			continue
		}
		lines = append(lines, Line{Text: fmt.Sprintf("A person given by weight, ahead and above turns about the own balance point like a body with a radius of gyration of %s, from a chain of body segments (derived, not published).", v.with(piece.Gyration, quantity.Length))})
		break
	}
	for _, l := range r.Look {
		if !l.Holds {
			lines = append(lines, Line{Text: fmt.Sprintf("Worth a look, with no limit set: %s keeps %s before going %s.", plain(short(l.Load)), v.with(l.Got, l.Kind), v.Forward)})
		}
	}
	if r.Design.Bed.Height > 0 {
		lines = append(lines, paragraphs(v.lying)...)
	}
	if onFlatsOrCorners(r.Design.Rocker) {
		lines = append(lines, Line{Text: "Flats and corners are taken to lose nothing when the rocker rolls over them; really each is a knock."})
	}
	return lines
}

func onFlatsOrCorners(r piece.Rocker) bool {
	for _, a := range r.Arcs {
		if a.Flat != 0 || a.Turn != 0 || a.Radius < 0 {
			return true
		}
	}
	return false
}

// cautions are the usual ones for the kind of piece. They are no standard.
func (v voice) cautions(r check.Report) []Line {
	lines := []Line{
		{Text: "Local codes, the current standards and licensed practice go first. Nothing here was tested; try the dry-fitted piece on a clear floor with someone beside you."},
	}
	lines = append(lines, paragraphs(v.alone)...)
	if r.ForAChild() {
		lines = append(lines, Line{Text: "Children kneel on the seat facing the back, stand on it and climb on behind; of these only a child on the tail was tried. They grow out of what was checked."})
	}
	return append(lines, paragraphs(v.beware...)...)
}

// Notes returns what a program's user should know of the numbers, a sentence or two each.
func Notes(r check.Report) []string {
	var notes []string
	for _, l := range voiceOf(r.Design).assumptions(r) {
		notes = append(notes, l.Text)
	}
	return notes
}
