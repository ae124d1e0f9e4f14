package words

import (
	"fmt"
	"math"
	"strings"

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
