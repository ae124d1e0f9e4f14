package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// Like returns the sheet of what radius keeps the feel of a piece that is liked. source is the new piece's file,
// changes what was changed in it for this answer, take the line to type to save one of the rockers.
func Like(l size.Likeness, source string, changes []string, take string) sheet.Sheet {
	w := wordingOf(l.Wanted.Design)
	table := likeTable(w, l)
	last := append(whenChosen(w.units, l), rulesInBrief(w.units, l)...)
	if take != "" {
		last = append(last, sheet.Line{Text: "To save one under a new name:", Type: take})
	}
	s := sheet.Sheet{Title: shortName(l.Wanted.Design) + " · like " + shortName(l.OldPiece.Design), Source: source,
		Blocks: []sheet.Block{
			{Lines: oldAndNew(w.units, l, changes)}, {Table: table}, {Lines: append(last, sheet.Says(w.disclaimer)...)}}}
	s = s.Fitted(1, []string{"tip to tip", "  weight must lift", "back leans, " + w.seated, "behind the low point"}, table)
	var margins []reading
	for i, load := range l.Wanted.Loads {
		choose := func(r *check.Balanced) *check.Load { return &r.Loads[min(i, len(r.Loads)-1)] }
		margins = slices.Concat(margins, []reading{{label: load.Name}},
			marginOf(w.units, choose, "  "+w.Back, "    lift", back),
			marginOf(w.units, choose, "  "+w.Forward, "    lift", forward))
	}
	every := sideBySide("", ways("as drawn", l.Wanted, l), 10, margins)
	s.Blocks = append(s.Blocks, sheet.Block{Title: "Before going over, every load", Table: every, All: true},
		ruleTable(w.units, l),
		sheet.Block{Title: "What it assumes", All: true, Lines: sheet.Says(
			"Where the low point lies under the seat, the heights of the seat and the ratios of the arcs stay as "+
				"the new piece is drawn; all radii scale by the one at the rest with the owner at ease. The lengths "+
				"along the curve stay; for the same proportion they are the old ones, scaled as the radius is.",
			fmt.Sprintf("The radius is the height of the balance point at rest, "+
				"and on top of it a piece that grows with the square of the sizes "+
				"and shrinks with the square of the time: R = H + (k² + H²)(2π/T)²/g. Here k, the radius of gyration, was %s and H %s.",
				w.length(l.Old.Gyration), w.length(l.Old.Height)),
			"Each is solved together with the rest that it moves, then rounded, and the table shows what the rounded rocker does.")})
	return s
}

// ways returns the columns of the ways, behind a first one.
func ways(head string, first check.Balanced, l size.Likeness) []Column {
	columns := []Column{{Head: head, Report: first}}
	for _, k := range l.Kept {
		columns = append(columns, Column{Head: k.Keep.String(), Report: k.Report})
	}
	return columns
}

// ruleTable sets the rules of the trade beside each other.
func ruleTable(u units, l size.Likeness) sheet.Block {
	t := &sheet.Table{Head: []string{"rule", "radius", "one rock there", ""}}
	for _, r := range l.Rules {
		height, miss := u.length(r.Height), ""
		if !math.IsNaN(r.More) {
			miss = more(u, r.More) + " than the same time wants"
			if more(u, r.More) == asItWas {
				miss = "what the same time wants"
			}
		}
		t.Add(map[size.RuleName]string{
			size.PiSeat:       "3.14 times the seat's height, front edge as drawn: " + height,
			size.PiLeg:        "3.14 times a leg, rocker to seat: " + height,
			size.PiNavel:      "3.14 times the navel's height, sitting: " + height,
			size.CentreAtChin: "the arc's centre at the sitter's chin: " + height + " up",
			size.Start36:      "36 to 40 in to start with: the small end",
			size.Start40:      "36 to 40 in to start with: the large end",
			size.Commonest:    "42 in, the commonest",
		}[r.Name], u.length(r.Radius), timed(r.Period), miss)
	}
	return sheet.Block{Title: "Rules of the trade, for the new piece", Table: t, All: true, Lines: sheet.Says(
		"All of these are common practice; none was measured, and none knows how the old one rocked. " +
			"One rule, 3.14 times a height, is told of three heights, which give three radii. " +
			"What all agree on: the arc's centre lies above the sitter's balance point.")}
}

// shortName returns what a piece is called, short enough for a heading of two.
func shortName(d piece.Design) string {
	return sheet.Cut(sheet.Plain(cmp.Or(d.Title, "untitled "+phrasesOf(d).piece)), 26)
}

// oldAndNew says what is kept, and what the new piece does with the radius it is drawn with.
func oldAndNew(u units, l size.Likeness, changes []string) []sheet.Line {
	rocks := func(f size.Feel) string {
		return fmt.Sprintf("%.2f s on %s, its centre %s above the balance point.",
			f.Period, u.length(f.Radius), u.length(f.Steadiness))
	}
	said := when(len(changes) > 0, "%s: ", list(changes))
	if n := len(changes); n > 2 {
		said = fmt.Sprintf("%d entries changed: ", n)
	}
	now := pick(l.New.Radius > 0, rocks(l.New), "as it is drawn it has no rest with its owner.")
	return []sheet.Line{{Label: "LIKED:", Text: rocks(l.Old)}, {Label: "NOW:", Text: said + now, Bad: !(l.New.Radius > 0)}}
}

// likeTable sets the ways side by side, the old piece in front.
func likeTable(w wording, l size.Likeness) *sheet.Table {
	columns := ways("as it was", l.OldPiece, l)
	return sideBySide("What each radius does", columns, 10, append(rockerOf(w, columns), holds))
}

// whenChosen says for each way when a maker would choose it.
func whenChosen(u units, l size.Likeness) []sheet.Line {
	reasons := map[size.Keep]string{
		size.SameTime:       "for who likes its beat.",
		size.SameSteadiness: "for who likes how it answers a lean.",
		size.SameProportion: "when all grows alike; larger is slower.",
		size.SameRadius:     "when the form or the trammel is there already.",
	}
	var lines []sheet.Line
	for _, k := range l.Kept {
		text := when(k.Keep != size.SameRadius, "%s; ", more(u, k.More)) + reasons[k.Keep]
		if !k.Found {
			text = "no radius does it here."
		}
		lines = append(lines, sheet.Line{Label: upperFirst(k.Keep.String()) + ":", Text: text, Bad: !k.Found})
	}
	return lines
}

// asItWas is said of a radius that does not change.
const asItWas = "as it was"

// more says by how much a radius changes.
func more(u units, by float64) string {
	if u.bare(unsigned(by)) == "0" {
		return asItWas
	}
	return u.length(unsigned(by)) + pick(by > 0, " more", " less")
}

// radiiAre says of which radii a letter speaks.
const radiiAre = "Radii are of the floor edge: pin to the outside of the pencil, and not the form's."

// LikeLetter returns the answer of [Like] as a letter to another maker.
func LikeLetter(l size.Likeness, changes []string) sheet.Sheet {
	w := wordingOf(l.Wanted.Design)
	old, now := shortName(l.OldPiece.Design), shortName(l.Wanted.Design)
	if old == now {
		now = "it again with " + cmp.Or(list(changes), "nothing changed")
	}
	why := "It hangs on what you want to keep, for no one radius keeps everything. The radius of the floor edge is " +
		"the height of the balance point of chair and sitter, and on top of that a piece that makes the time: " +
		"raise the balance point and keep the radius, and that piece gets smaller, so the rock gets slower and the " +
		"chair less sure of its rest."
	return sheet.Sheet{Title: "To a fellow maker", Blocks: []sheet.Block{
		{Lines: sheet.Says("You like how " + old + " rocks and are making " + now + ". What radius does it want?")},
		{Lines: sheet.Says(why)},
		{Lines: oldAndNew(w.units, l, nil)}, {Lines: whenChosen(w.units, l)}, {Table: likeTable(w, l)},
		{Lines: append(rulesInBrief(w.units, l), sheet.Says(radiiAre+" Seat heights and the place of the low "+
			"point are as drawn.", w.disclaimer)...)}}}
}

// rulesInBrief says on the first page how far the rules of the trade lie apart here.
func rulesInBrief(u units, l size.Likeness) []sheet.Line {
	var pi []string
	for _, r := range l.Rules {
		names := map[size.RuleName]string{size.PiSeat: "the seat", size.PiLeg: "a leg", size.PiNavel: "the navel"}
		if name, is := names[r.Name]; is {
			pi = append(pi, name+" "+u.bare(r.Radius))
		}
	}
	if len(pi) < 2 {
		return nil
	}
	return []sheet.Line{{Label: "Common practice", Text: fmt.Sprintf("disagrees: 3.14 times %s %s; see --all.",
		strings.Join(pi, ", "), u.unit())}}
}

// ForSitters returns the block that says what radius a piece would want for other sitters; none where there are none.
func ForSitters(d piece.Design, list []size.ForSitter) []sheet.Block {
	if len(list) == 0 {
		return nil
	}
	w := wordingOf(d)
	t := &sheet.Table{Caption: "Radius for other sitters",
		Head: []string{"sitter", "same time", "same steadiness", "same proportion", "rocks as it is", ""}}
	for _, s := range list {
		radius := func(way size.Keep) string {
			k := s.Like.Kept[way]
			switch {
			case !k.Found:
				return "–"
			case len(k.Design.Rocker.Arcs) > 0:
				return "all " + percent(k.Scale)
			}
			return w.length(k.Design.Rocker.Radius)
		}
		ways := []size.Keep{size.SameTime, size.SameSteadiness, size.SameProportion}
		t.Add(sheet.Across(quantity.Tall(s.Stature, w.System), ways, radius, timed(s.Like.New.Period), "")...)
	}
	old := list[0].Like.Old
	return []sheet.Block{{Title: "What radius for another sitter", Table: t, All: true, Lines: sheet.Says(
		fmt.Sprintf("The radius that keeps what is liked here, %.2f s on %s, when another as stout as the mean sits "+
			"in this piece and nothing else is changed.", old.Period, w.length(old.Radius)))}}
}
