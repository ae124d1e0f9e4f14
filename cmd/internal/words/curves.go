package words

import (
	"fmt"
	"math"

	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

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
