package words

import (
	"fmt"
	"math"
	"strings"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// custom returns what a rule of the trade says, with the height that it means.
func (v voice) custom(r size.Rule) string {
	height := v.with(r.Height, quantity.Length)
	switch r.Name {
	case size.PiSeat:
		return "3.14 times the seat's height, front edge as drawn: " + height
	case size.PiLeg:
		return "3.14 times a leg, rocker to seat: " + height
	case size.PiNavel:
		return "3.14 times the navel's height, sitting: " + height
	case size.CentreAtChin:
		return "the arc's centre at the sitter's chin: " + height + " up"
	case size.Start36:
		return "36 to 40 in to start with: the small end"
	case size.Start40:
		return "36 to 40 in to start with: the large end"
	}
	return "42 in, the commonest"
}

// rulesInBrief says on the first page how far the rules of the trade lie apart here.
func (v voice) rulesInBrief(l size.Likeness) []Line {
	var pi []string
	for _, r := range l.Rules {
		names := map[size.RuleName]string{size.PiSeat: "the seat", size.PiLeg: "a leg", size.PiNavel: "the navel"}
		if name, is := names[r.Name]; is {
			pi = append(pi, fmt.Sprintf("%s %s", name, v.shop(r.Radius, quantity.Length)))
		}
	}
	if len(pi) < 2 {
		return nil
	}
	return []Line{{Label: "Common practice", Text: fmt.Sprintf("disagrees: 3.14 times %s %s; see --all.", strings.Join(pi, ", "), quantity.Unit(quantity.Length, v.units))}}
}

// ruleTable sets the rules of the trade beside each other.
func (v voice) ruleTable(l size.Likeness) Block {
	t := &Table{Head: []string{"rule", "radius", "one rock there", ""}}
	keep := l.Ways[size.SameTime]
	for _, r := range l.Rules {
		time := "no rest"
		if !math.IsNaN(r.Period) {
			time = fmt.Sprintf("%.2f s", r.Period)
		}
		miss := ""
		if keep.Found {
			miss = v.more(r.Radius-keep.Exact) + " than the same time wants"
			if strings.HasPrefix(miss, "as it was") {
				miss = "what the same time wants"
			}
		}
		t.Rows = append(t.Rows, Row{Cells: []string{v.custom(r), v.with(r.Radius, quantity.Length), time, miss}})
	}
	lines := []Line{{Text: "All of these are common practice; none was measured, and none knows how the old one rocked. One rule, 3.14 times a height, is told of three heights, which give three radii. What all agree on: the arc's centre lies above the sitter's balance point."}}
	return Block{Title: "Rules of the trade, for the new piece", Lines: lines, Table: t, All: true}
}

// curves says what the other two curves are for, and what they do here.
func (v voice) curves(one size.Proposal, others []size.Proposal) []Line {
	var lines []Line
	for _, p := range others {
		was, now := one.Report.Leaning(), p.Report.Leaning()
		switch {
		case p.Curve == size.FlatterTail && len(v.short(p)) > len(v.short(one)):
			lines = append(lines, Line{Label: "Flatter tail, a brake:", Text: "it misses: " + list(v.short(p)) + "."})
		case p.Curve == size.FlatterTail:
			lines = append(lines, Line{Label: "Flatter tail, a brake:", Text: fmt.Sprintf("the same rock in the middle; leaning furthest the weight must lift %s, not %s.",
				v.with(now.Balance.Back.Lift, quantity.Length), v.shop(was.Balance.Back.Lift, quantity.Length))})
		case p.Fitted == shownArcs && len(p.Even.Periods) > 0:
			lines = append(lines, Line{Label: "Even time:", Text: fmt.Sprintf("a rock takes %s s small and %s s from 12 degrees, with the owner alone: see --all.",
				v.evenAt(p.Even, 0), v.evenAt(p.Even, len(p.Even.Periods)-1))})
		}
	}
	return lines
}

// evenTable says how even the time is on the even-time rockers, for the owner and for others.
func (v voice) evenTable(one size.Proposal, others []size.Proposal) Block {
	t := &Table{Head: []string{"time of one rock, s", "from 1", "4", "8", "12 degrees", "limits", ""}}
	add := func(name string, p size.Proposal) {
		cells := []string{name}
		for i := range 4 {
			cells = append(cells, v.evenAt(p.Even, i))
		}
		holds := "hold"
		if !p.Report.Holds() {
			holds = "NO"
		}
		t.Rows = append(t.Rows, Row{Cells: append(cells, holds, "")})
	}
	add(one.Curve.String(), one)
	for _, p := range others {
		name := p.Curve.String()
		if p.Curve == size.EvenTime {
			name = "even time, " + counted(p.Fitted, "arc")
		}
		add(name, p)
	}
	lines := []Line{{Text: fmt.Sprintf("On one arc a larger rock takes longer or shorter than a small one. On the even-time edge it takes the same, for %s and for nobody else; with the arcs that a maker can swing, nearly. It is read for %s, tilted and let go.", v.rider, v.rider)}}
	return Block{Title: "Large rocks and small ones", Lines: lines, Table: t, All: true}
}

// evenAt returns the time of a rock from the n-th release.
func (v voice) evenAt(e size.Evenness, n int) string {
	if n >= len(e.Periods) || math.IsNaN(e.Periods[n]) {
		return "–"
	}
	return fmt.Sprintf("%.2f", e.Periods[n])
}

// ForSitters returns the block that says what radius a piece would want for other sitters; none
// where there are none.
func ForSitters(d piece.Design, list []size.ForSitter) []Block {
	if len(list) == 0 {
		return nil
	}
	v := voiceOf(d)
	t := &Table{Caption: "Radius for other sitters", Head: []string{"sitter", "same time", "same steadiness", "same proportion", "rocks as it is", ""}}
	for _, s := range list {
		cells := []string{quantity.Tall(s.Stature, v.units)}
		for _, way := range []size.Way{size.SameTime, size.SameSteadiness, size.SameProportion} {
			k := s.Like.Ways[way]
			text := "–"
			if k.Found {
				text = v.with(k.Design.Rocker.Radius, quantity.Length)
				if len(k.Design.Rocker.Arcs) > 0 {
					text = fmt.Sprintf("all %.0f %%", 100*k.Scale)
				}
			}
			cells = append(cells, text)
		}
		rocks := "no rest"
		if s.Like.New.Period > 0 {
			rocks = fmt.Sprintf("%.2f s", s.Like.New.Period)
		}
		t.Rows = append(t.Rows, Row{Cells: append(cells, rocks, "")})
	}
	return []Block{{
		Title: "What radius for another sitter",
		Lines: []Line{{Text: fmt.Sprintf("The radius that keeps what is liked here, %.2f s on %s, when another as stout as the mean sits in this piece and nothing else is changed.", list[0].Like.Old.Period, v.with(list[0].Like.Old.Radius, quantity.Length))}},
		Table: t, All: true,
	}}
}
