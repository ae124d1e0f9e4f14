package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// Sized returns the sheet of the rockers that were found for a target, and of others that a maker
// may like. take is the line to type to save one.
func Sized(d piece.Design, found size.Solution, others []size.Proposal, source string, changes []string, take string) Sheet {
	v := voiceOf(d)
	s := Sheet{Title: v.called(d) + " · for what it aims for", Source: source}
	best := found.Take()
	lines := append(append(changedLine(changes), v.found(best)), v.binds(best)...)
	whole := v.sizedTable(d.Target, found.Proposals, others)
	own, theirs := v.rejections(found.Proposals), append(v.rejections(others), v.curves(found.Proposals[0], others)...)
	last := []Line{{Text: "To save one under a new name:", Type: take}, v.foot()}
	assemble := func(table *Table, notes []Line) Sheet {
		s := s
		s.Blocks = []Block{{Lines: lines}, {Table: table}, {Lines: append(slices.Clone(notes), last...)}}
		return s.fitted(1, v.spare(d.Target), whole)
	}
	first := assemble(whole, append(slices.Clone(own), theirs...))
	if first.lines() > page { // the other curves stand under --all
		first = assemble(v.sizedTable(d.Target, found.Proposals, nil), own)
		first.Blocks = append(first.Blocks, Block{Title: "Two other curves", Lines: theirs, All: true})
	}
	first.Blocks = append(first.Blocks, v.evenTable(found.Proposals[0], others), v.sizedAssumptions())
	return first
}

// changedLine says what was changed for an answer, in a line or two.
func changedLine(changes []string) []Line {
	switch n := len(changes); {
	case n == 0:
		return nil
	case n > 2:
		return []Line{{Label: "CHANGED:", Text: fmt.Sprintf("%d entries. The file is as it was.", n)}}
	}
	return []Line{{Label: "CHANGED:", Text: strings.Join(changes, "; ") + ". The file is as it was."}}
}

// rejections are what check would say no to of those rockers that a first page shows.
func (v voice) rejections(list []size.Proposal) []Line {
	var lines []Line
	for _, p := range list {
		if Shown(p) {
			lines = append(lines, v.rejected(p)...)
		}
	}
	return lines
}

// spare are the rows that a first page can do without, as far as nothing is wanted of them.
func (v voice) spare(t piece.Target) []string {
	wanted := v.wishes(t)
	return slices.DeleteFunc([]string{"one rock from 8 deg", "tip to tip", "push for one degree", "back leans, seated", "  weight must lift"}, func(label string) bool {
		_, is := wanted[label]
		return is
	})
}

// SizedBlocks returns the rockers that were found for a target as blocks of a larger sheet.
func SizedBlocks(d piece.Design, found size.Solution) []Block {
	v := voiceOf(d)
	best := found.Take()
	return []Block{{
		Title: "The rocker for what it aims for", All: true,
		Lines: append([]Line{v.found(best)}, v.binds(best)...), Table: v.sizedTable(d.Target, found.Proposals, nil),
	}}
}

// shownArcs is of how many arcs the even-time rocker of the first page is.
const shownArcs = 3

// found says whether the target is met, and where not how near it comes.
func (v voice) found(p size.Proposal) Line {
	switch short := v.short(p); {
	case p.Met():
		return Line{Label: "FOUND:", Text: p.Curve.String() + " does all that you aim for."}
	case len(short) == 0:
		return Line{Label: "NEAREST:", Text: p.Curve.String() + " does what you aim for, but what must hold does not.", Bad: true}
	default:
		return Line{Label: "NEAREST:", Text: fmt.Sprintf("%s: %s. All of it cannot be had together.", p.Curve, list(short)), Bad: true}
	}
}

// short says of each aim that is missed what it comes to.
func (v voice) short(p size.Proposal) []string {
	var short []string
	for _, m := range p.Misses {
		if name := v.aim(m.Aim); !m.Met() && name != "" {
			short = append(short, fmt.Sprintf("%s %s instead of %s", name, v.aimed(m.Aim, m.Got), v.aimed(m.Aim, m.Want)))
		}
	}
	return short
}

// aim returns what an aim is called.
func (v voice) aim(a size.Aim) string {
	switch a {
	case size.OneRock:
		return "one rock"
	case size.SeatFalls:
		return "the seat falls, seated,"
	case size.BackLeans:
		return "the back leans"
	case size.SeatFallsEmpty:
		return "the seat falls, empty,"
	case size.LargestTilt:
		return "its tips touch at"
	case size.Longest:
		return "tip to tip"
	case size.StockWidth:
		return "a board as wide as"
	case size.StockLength:
		return "a board as long as"
	case size.SmallestRadius:
		return "the tightest strip bends to"
	}
	return ""
}

// aimed returns a value of an aim with its unit.
func (v voice) aimed(a size.Aim, x float64) string {
	switch a {
	case size.OneRock:
		if math.IsNaN(x) {
			return "no rest"
		}
		return fmt.Sprintf("%.2f s", x)
	case size.SeatFalls, size.BackLeans, size.SeatFallsEmpty, size.LargestTilt:
		return v.degrees(x)
	}
	return v.with(x, quantity.Length)
}

// binds names what sets the answer: of several limits that set one part the tightest.
func (v voice) binds(p size.Proposal) []Line {
	var what []string
	tightest := map[string]size.Miss{}
	for _, m := range p.Binds() {
		if m.Aim == size.KeepsLimit {
			part := v.part(p, m.Limit)
			if was, there := tightest[part]; !there || m.Steps > was.Steps {
				tightest[part] = m
			}
			continue
		}
		what = append(what, map[size.Aim]string{
			size.Longest:        "the longest rocker you allow is used up",
			size.StockWidth:     "the board is no wider",
			size.StockLength:    "the board is no longer",
			size.SmallestRadius: "the strips bend no tighter",
			size.OffJoints:      "the owner must not rest on a joint",
			size.Sensible:       "an end or a radius is as far as was looked",
		}[m.Aim])
	}
	for _, part := range []string{"the " + v.tail, "the " + v.nose, "the curve"} {
		if m, there := tightest[part]; there {
			what = append(what, fmt.Sprintf("%s (%s) sets %s", plain(short(m.Limit.Load)), v.limitName(m.Limit.Name), part))
		}
	}
	if len(what) == 0 {
		return nil
	}
	return []Line{{Label: "What sets it:", Text: list(what) + "."}}
}

// part returns the part of a rocker that sets a limit.
func (v voice) part(p size.Proposal, l check.Limit) string {
	for i := range p.Report.Loads {
		load := &p.Report.Loads[i]
		switch {
		case load.Name != l.Load:
		case strings.HasPrefix(l.Name, "back") && load.Rig.OverTip(load.Balance.Back):
			return "the " + v.tail
		case strings.HasPrefix(l.Name, "forward") && load.Rig.OverTip(load.Balance.Forward):
			return "the " + v.nose
		}
	}
	return "the curve"
}

// rejected says what check would say no to.
func (v voice) rejected(p size.Proposal) []Line {
	var failing []string
	for _, l := range p.Report.Limits {
		if !l.Holds {
			failing = append(failing, fmt.Sprintf("%s, %s", plain(short(l.Load)), v.limitName(l.Name)))
		}
	}
	if len(failing) == 0 {
		return nil
	}
	return []Line{{Label: upperFirst(p.Curve.String()) + ":", Text: fmt.Sprintf("check would say NO: %s.", list(failing[:min(2, len(failing))])), Bad: true}}
}

// sizedTable sets the rockers beside what is wanted.
func (v voice) sizedTable(target piece.Target, found, others []size.Proposal) *Table {
	var columns []Column
	var even []size.Evenness
	for _, p := range append(append([]size.Proposal(nil), found...), others...) {
		if !Shown(p) || len(columns) == mostSized {
			continue
		}
		columns = append(columns, Column{Head: p.Curve.String(), Report: p.Report})
		even = append(even, p.Even)
	}
	g := newGrid(v, columns, 8)
	g.table.Caption = "The rockers that were found, beside what is wanted"
	v.rockerRows(g)
	g.row("tip to tip", g.length(), func(r *check.Balanced) string { return v.shop(r.Tape.TipToTip, quantity.Length) })
	g.rests()
	g.row("back leans, seated", "deg", g.of((*check.Balanced).Seated, func(l *check.Load) string { return v.shop(l.BackRecline, quantity.Angle) }))
	g.rocks()
	cells := []string{"one rock from 8 deg"}
	for _, e := range even {
		cells = append(cells, v.evenAt(e, 2))
	}
	g.table.Rows = append(g.table.Rows, Row{Cells: append(cells, "s")})
	g.holds()
	g.wanted(v.wishes(target))
	return g.table
}

// mostSized is how many rockers stand beside what is wanted.
const mostSized = 5

// wishes returns what is wanted, by the label of its row.
func (v voice) wishes(t piece.Target) map[string]string {
	of := map[string]string{}
	if t.OneRock > 0 {
		of["one rock"] = fmt.Sprintf("%.2f", t.OneRock)
	}
	if t.SeatFalls.Asked {
		of["seat falls, seated"] = v.towards(t.SeatFalls.Value)
	}
	if t.BackLeans.Asked {
		of["back leans, seated"] = v.shop(t.BackLeans.Value, quantity.Angle)
	}
	if t.Empty.Asked {
		of["seat falls, empty"] = v.towards(t.Empty.Value)
	}
	if t.BackMargin > 0 {
		of["before going "+v.Back] = v.shop(t.BackMargin, quantity.Angle)
	}
	if t.BackLift > 0 {
		of["  weight must lift"] = v.shop(t.BackLift, quantity.Length)
	}
	if t.Longest > 0 {
		of["tip to tip"] = v.shop(t.Longest, quantity.Length)
	}
	return of
}

// sizedAssumptions says how the rockers were found.
func (v voice) sizedAssumptions() Block {
	return Block{Title: "How it was found", All: true, Lines: []Line{
		{Text: "The limits of the file, what the shop has and the margins aimed for come first; the time and the leans come as near as these allow. One arc is solved: the radius makes the time, the place of the low point the lean, its ends grow only where a limit asks for it. Two and three arcs are searched from several starts, the same each time; another --seed looks elsewhere."},
		{Text: "The piece and its people stay as they are drawn; the low point moves under them. All is rounded to what is set at the bench, and the table shows what the rounded rocker does."},
	}}
}
