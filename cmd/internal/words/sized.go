package words

import (
	"fmt"
	"slices"
	"strings"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/size"
)

// Sized returns the sheet of the rockers that were found for a target, and of others that a maker
// may like. take is the line to type to save one.
func Sized(d piece.Design, found size.Solution, others []size.Proposal, source string, changes []string, take string) Sheet {
	v := voiceOf(d)
	s := Sheet{Title: v.called(d) + " · for what it aims for", Source: source}
	lines := append(changed(changes, true), v.found(found.Take())...)
	whole := v.sizedTable(d.Target, found.Proposals, others)
	own, theirs := v.rejected(found.Proposals), append(v.rejected(others), v.curves(found.Proposals[0], others)...)
	last := []Line{{Text: "To save one under a new name:", Type: take}, v.foot()}
	assemble := func(table *Table, notes []Line) Sheet {
		s := s
		s.Blocks = []Block{{Lines: lines}, {Table: table}, {Lines: slices.Concat(notes, last)}}
		return s.fitted(1, v.spare(d.Target), whole)
	}
	first := assemble(whole, slices.Concat(own, theirs))
	if first.lines() > page { // the other curves stand under --all
		first = assemble(v.sizedTable(d.Target, found.Proposals, nil), own)
		first.Blocks = append(first.Blocks, Block{Title: "Two other curves", Lines: theirs, All: true})
	}
	first.Blocks = append(first.Blocks, v.evenTable(found.Proposals[0], others), Block{Title: "How it was found", All: true, Lines: says(
		"The limits of the file, what the shop has and the margins aimed for come first; the time and the leans come as near as these allow. "+
			"One arc is solved: the radius makes the time, the place of the low point the lean, its ends grow only where a limit asks for it. "+
			"Two and three arcs are searched from several starts, the same each time; another --seed looks elsewhere.",
		"The piece and its people stay as they are drawn; the low point moves under them. "+
			"All is rounded to what is set at the bench, and the table shows what the rounded rocker does.")})
	return first
}

// spare are the rows that a first page can do without, as far as nothing is wanted of them.
func (v voice) spare(t piece.Target) []string {
	wanted := v.wishes(t)
	spare := []string{"one rock from 8 deg", "tip to tip", "push for one degree", "back leans, seated", "  weight must lift"}
	return slices.DeleteFunc(spare, func(label string) bool { return wanted[label] != "" })
}

// SizedBlocks returns the rockers that were found for a target as blocks of a larger sheet.
func SizedBlocks(d piece.Design, found size.Solution) []Block {
	v := voiceOf(d)
	return []Block{{Title: "The rocker for what it aims for", All: true,
		Lines: v.found(found.Take()), Table: v.sizedTable(d.Target, found.Proposals, nil)}}
}

// shownArcs is of how many arcs the even-time rocker of the first page is.
const shownArcs = 3

// Shown reports whether a rocker stands on the first page of [Sized].
func Shown(p size.Proposal) bool { return p.Curve != size.EvenTime || p.Fitted == shownArcs }

// found says whether the target is met, where not how near it comes, and what sets the answer.
func (v voice) found(p size.Proposal) []Line {
	line := Line{Label: "NEAREST:", Bad: true}
	switch short := v.short(p); {
	case p.Met():
		line = Line{Label: "FOUND:", Text: p.Curve.String() + " does all that you aim for."}
	case len(short) == 0:
		line.Text = p.Curve.String() + " does what you aim for, but what must hold does not."
	default:
		line.Text = fmt.Sprintf("%s: %s. All of it cannot be had together.", p.Curve, list(short))
	}
	return append([]Line{line}, v.binds(p)...)
}

// short says of each aim that is missed what it comes to.
func (v voice) short(p size.Proposal) []string {
	var short []string
	for _, m := range p.Misses {
		if name := aims[m.Aim]; !m.Met() && name != "" {
			short = append(short, fmt.Sprintf("%s %s instead of %s", name, v.aimed(m.Aim, m.Got), v.aimed(m.Aim, m.Want)))
		}
	}
	return short
}

// aims are what aims are called.
var aims = map[size.Aim]string{
	size.OneRock:        "one rock",
	size.SeatFalls:      "the seat falls, seated,",
	size.BackLeans:      "the back leans",
	size.SeatFallsEmpty: "the seat falls, empty,",
	size.LargestTilt:    "its tips touch at",
	size.Longest:        "tip to tip",
	size.StockWidth:     "a board as wide as",
	size.StockLength:    "a board as long as",
	size.SmallestRadius: "the tightest strip bends to",
}

// aimed returns a value of an aim with its unit.
func (v voice) aimed(a size.Aim, x float64) string {
	switch a {
	case size.OneRock:
		return timed(x)
	case size.SeatFalls, size.BackLeans, size.SeatFallsEmpty, size.LargestTilt:
		return v.degrees(x)
	}
	return v.length(x)
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
			what = append(what, fmt.Sprintf("%s (%s) sets %s", brief(m.Limit.Load), v.limitName(m.Limit.Name), part))
		}
	}
	if len(what) == 0 {
		return nil
	}
	return []Line{{Label: "What sets it:", Text: list(what) + "."}}
}

// part returns the part of a rocker that sets a limit.
func (v voice) part(p size.Proposal, l check.Limit) string {
	load, _ := p.Report.LoadNamed(l.Load)
	switch {
	case load == nil:
	case strings.HasPrefix(l.Name, "back") && load.Rig.OverTip(load.Balance.Back):
		return "the " + v.tail
	case strings.HasPrefix(l.Name, "forward") && load.Rig.OverTip(load.Balance.Forward):
		return "the " + v.nose
	}
	return "the curve"
}

// rejected says what check would say no to of those rockers that a first page shows.
func (v voice) rejected(proposals []size.Proposal) []Line {
	var lines []Line
	for _, p := range proposals {
		var failing []string
		for _, l := range p.Report.Limits {
			if !l.Holds && Shown(p) {
				failing = append(failing, brief(l.Load)+", "+v.limitName(l.Name))
			}
		}
		if len(failing) > 0 {
			lines = append(lines, Line{Label: upperFirst(p.Curve.String()) + ":", Bad: true,
				Text: "check would say NO: " + list(failing[:min(2, len(failing))]) + "."})
		}
	}
	return lines
}

// sizedTable sets the rockers beside what is wanted.
func (v voice) sizedTable(target piece.Target, found, others []size.Proposal) *Table {
	var columns []Column
	var even []size.Evenness
	for _, p := range slices.Concat(found, others) {
		if Shown(p) && len(columns) < mostSized {
			columns = append(columns, Column{Head: p.Curve.String(), Report: p.Report})
			even = append(even, p.Even)
		}
	}
	g := newGrid(v, "The rockers that were found, beside what is wanted", columns, 8)
	g.rocker()
	g.table.add(across("one rock from 8 deg", even, func(e size.Evenness) string { return evenAt(e, 2) }, "s")...)
	g.holds()
	g.wanted(v.wishes(target))
	return g.table
}

// mostSized is how many rockers stand beside what is wanted.
const mostSized = 5

// wishes returns what is wanted, by the label of its row.
func (v voice) wishes(t piece.Target) map[string]string {
	of := map[string]string{}
	wish := func(asked bool, label, text string) {
		if asked {
			of[label] = text
		}
	}
	wish(t.OneRock > 0, "one rock", fmt.Sprintf("%.2f", t.OneRock))
	wish(t.SeatFalls.Asked, "seat falls, seated", v.towards(t.SeatFalls.Value))
	wish(t.BackLeans.Asked, "back leans, seated", v.angle(t.BackLeans.Value))
	wish(t.Empty.Asked, "seat falls, empty", v.towards(t.Empty.Value))
	wish(t.BackMargin > 0, "before going "+v.Back, v.angle(t.BackMargin))
	wish(t.BackLift > 0, "  weight must lift", v.bare(t.BackLift))
	wish(t.Longest > 0, "tip to tip", v.bare(t.Longest))
	return of
}
