package words

import (
	"fmt"
	"math"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// custom returns what a rule of the trade says, with the height that it means.
func (v voice) custom(r size.Rule) string {
	height := v.length(r.Height)
	return map[size.RuleName]string{
		size.PiSeat:       "3.14 times the seat's height, front edge as drawn: " + height,
		size.PiLeg:        "3.14 times a leg, rocker to seat: " + height,
		size.PiNavel:      "3.14 times the navel's height, sitting: " + height,
		size.CentreAtChin: "the arc's centre at the sitter's chin: " + height + " up",
		size.Start36:      "36 to 40 in to start with: the small end",
		size.Start40:      "36 to 40 in to start with: the large end",
		size.Commonest:    "42 in, the commonest",
	}[r.Name]
}

// rulesInBrief says on the first page how far the rules of the trade lie apart here.
func (v voice) rulesInBrief(l size.Likeness) []sheet.Line {
	var pi []string
	for _, r := range l.Rules {
		names := map[size.RuleName]string{size.PiSeat: "the seat", size.PiLeg: "a leg", size.PiNavel: "the navel"}
		if name, is := names[r.Name]; is {
			pi = append(pi, fmt.Sprintf("%s %s", name, v.bare(r.Radius)))
		}
	}
	if len(pi) < 2 {
		return nil
	}
	return []sheet.Line{{Label: "Common practice", Text: fmt.Sprintf("disagrees: 3.14 times %s %s; see --all.", strings.Join(pi, ", "), v.unit())}}
}

// ruleTable sets the rules of the trade beside each other.
func (v voice) ruleTable(l size.Likeness) sheet.Block {
	t := &sheet.Table{Head: []string{"rule", "radius", "one rock there", ""}}
	keep := l.Ways[size.SameTime]
	for _, r := range l.Rules {
		miss := ""
		if keep.Found {
			miss = v.more(r.Radius-keep.Exact) + " than the same time wants"
			if strings.HasPrefix(miss, "as it was") {
				miss = "what the same time wants"
			}
		}
		t.Add(v.custom(r), v.length(r.Radius), timed(r.Period), miss)
	}
	return sheet.Block{Title: "Rules of the trade, for the new piece", Table: t, All: true, Lines: sheet.Says(
		"All of these are common practice; none was measured, and none knows how the old one rocked. " +
			"One rule, 3.14 times a height, is told of three heights, which give three radii. " +
			"What all agree on: the arc's centre lies above the sitter's balance point.")}
}

// curves says what the other two curves are for, and what they do here.
func (v voice) curves(one size.Proposal, others []size.Proposal) []sheet.Line {
	var lines []sheet.Line
	for _, p := range others {
		switch misses := v.short(p); {
		case p.Curve == size.FlatterTail && len(misses) > len(v.short(one)):
			lines = append(lines, sheet.Line{Label: "Flatter tail, a brake:", Text: "it misses: " + list(misses) + "."})
		case p.Curve == size.FlatterTail:
			lines = append(lines, sheet.Line{Label: "Flatter tail, a brake:", Text: fmt.Sprintf("the same rock in the middle; "+
				"leaning furthest the weight must lift %s, not %s.",
				v.length(p.Report.Leaning().Balance.Back.Lift), v.bare(one.Report.Leaning().Balance.Back.Lift))})
		case p.Fitted == shownArcs && len(p.Even.Periods) > 0:
			lines = append(lines, sheet.Line{Label: "Even time:", Text: fmt.Sprintf("a rock takes %s s small and %s s from 12 degrees, "+
				"with the owner alone: see --all.", evenAt(p.Even, 0), evenAt(p.Even, len(p.Even.Periods)-1))})
		}
	}
	return lines
}

// evenTable says how even the time is on the even-time rockers, for the owner and for others.
func (v voice) evenTable(one size.Proposal, others []size.Proposal) sheet.Block {
	t := &sheet.Table{Head: []string{"time of one rock, s", "from 1", "4", "8", "12 degrees", "limits", ""}}
	for _, p := range append([]size.Proposal{one}, others...) {
		name := p.Curve.String()
		if p.Curve == size.EvenTime {
			name = "even time, " + counted(p.Fitted, "arc")
		}
		t.Add(sheet.Across(name, []int{0, 1, 2, 3}, func(n int) string { return evenAt(p.Even, n) }, pick(p.Report.Holds(), "hold", "NO"), "")...)
	}
	return sheet.Block{Title: "Large rocks and small ones", Table: t, All: true, Lines: sheet.Says(
		"On one arc a larger rock takes longer or shorter than a small one. On the even-time edge it takes the same, for " + v.rider +
			" and for nobody else; with the arcs that a maker can swing, nearly. It is read for " + v.rider + ", tilted and let go.")}
}

// evenAt returns the time of a rock from the n-th release.
func evenAt(e size.Evenness, n int) string {
	if n >= len(e.Periods) || math.IsNaN(e.Periods[n]) {
		return "–"
	}
	return fmt.Sprintf("%.2f", e.Periods[n])
}

// ForSitters returns the block that says what radius a piece would want for other sitters; none
// where there are none.
func ForSitters(d piece.Design, list []size.ForSitter) []sheet.Block {
	if len(list) == 0 {
		return nil
	}
	v := voiceOf(d)
	t := &sheet.Table{Caption: "Radius for other sitters",
		Head: []string{"sitter", "same time", "same steadiness", "same proportion", "rocks as it is", ""}}
	for _, s := range list {
		radius := func(way size.Way) string {
			k := s.Like.Ways[way]
			switch {
			case !k.Found:
				return "–"
			case len(k.Design.Rocker.Arcs) > 0:
				return fmt.Sprintf("all %.0f %%", 100*k.Scale)
			}
			return v.length(k.Design.Rocker.Radius)
		}
		ways := []size.Way{size.SameTime, size.SameSteadiness, size.SameProportion}
		t.Add(sheet.Across(quantity.Tall(s.Stature, v.units), ways, radius, timed(s.Like.New.Period), "")...)
	}
	old := list[0].Like.Old
	return []sheet.Block{{Title: "What radius for another sitter", Table: t, All: true, Lines: sheet.Says(
		fmt.Sprintf("The radius that keeps what is liked here, %.2f s on %s, when another as stout as the mean sits in this piece "+
			"and nothing else is changed.", old.Period, v.length(old.Radius)))}}
}
