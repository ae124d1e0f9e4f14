package words

import (
	"fmt"
	"math"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// Study returns the sheet of many chairs as a shop makes them.
func Study(d piece.Design, s size.Study, source string) sheet.Sheet {
	v := voiceOf(d)
	title := fmt.Sprintf("%s · %s made as a shop does", v.called(d), v.many(s.Chairs))
	var lines []sheet.Line
	if s.Stopped() {
		lines = append(lines, sheet.Line{Label: "STOPPED:", Bad: true,
			Text: "after " + thousands(s.Chairs) + " of " + thousands(s.Asked) + ". What follows is of those."})
	}
	if s.Chairs == 0 {
		return sheet.Sheet{Title: title, Source: source, Blocks: []sheet.Block{{Lines: lines}}}
	}
	limits := sheet.Line{Label: "LIMITS:", Text: "none fails in any of them."}
	if s.Fails > 0 {
		limits.Text, limits.Bad = "one or more fail in "+inHundred(float64(s.Fails)/float64(s.Chairs))+" of 100.", true
	}
	lines = append(lines, limits)
	if s.Astray > 0 {
		lines = append(lines, sheet.Wrong(thousands(s.Astray)+" of them do not rest at all."))
	}
	blocks := []sheet.Block{{Lines: lines}, {Table: v.spreads(s)}}
	if t := v.failing(s); len(t.Rows) > 0 {
		blocks = append(blocks, sheet.Block{Table: t})
	}
	return sheet.Sheet{Title: title, Source: source,
		Blocks: append(blocks, sheet.Block{Lines: []sheet.Line{v.foot()}}, v.sharesTable(s), studyAssumptions())}
}

// many says how many pieces, "4,096 chairs".
func (v voice) many(n int) string { return thousands(n) + " " + v.piece + "s" }

// shortNames are what the quantities are called over a column.
var shortNames = [...]string{size.FallSitting: "seated", size.FallEmpty: "empty", size.Time: "rock", size.Effort: "push",
	size.BackMargin: "back", size.BackLift: "lift", size.ForwardMargin: "fwd"}

// quantityName returns what a quantity is called.
func (v voice) quantityName(q size.Quantity) string {
	return [...]string{size.FallSitting: "seat falls, seated", size.FallEmpty: "seat falls, empty", size.Time: "one rock",
		size.Effort: "push for one degree", size.BackMargin: "before going " + v.Back, size.BackLift: "  weight must lift",
		size.ForwardMargin: "before going " + v.Forward}[q]
}

// amount returns a quantity finely, and its unit.
func (v voice) amount(q size.Quantity, x float64) (text, unit string) {
	switch q {
	case size.Time:
		return fmt.Sprintf("%.2f", x), "s"
	case size.Effort:
		return quantity.Fine(x, quantity.Force, v.units), quantity.Unit(quantity.Force, v.units)
	case size.BackLift:
		return v.bare(x), v.unit()
	}
	return fmt.Sprintf("%.1f", x*180/math.Pi), "deg"
}

// spreads returns how each quantity lies, and what it hangs on most.
func (v voice) spreads(s size.Study) *sheet.Table {
	t := &sheet.Table{Caption: "How the chairs lie", Head: []string{"", "drawn", "5 %", "50 %", "95 %", "", "hangs most on"}}
	for _, spread := range s.Spreads {
		q := spread.Quantity
		drawn, unit := v.amount(q, s.Nominal[q])
		low, _ := v.amount(q, spread.Low)
		middle, _ := v.amount(q, spread.Middle)
		high, _ := v.amount(q, spread.High)
		t.Add(v.quantityName(q), drawn, low, middle, high, unit, most(s, spread))
	}
	return t
}

// most names the measure on which a quantity hangs most.
func most(s size.Study, spread size.Spread) string {
	most := 0
	for k, share := range spread.Shares {
		if share > spread.Shares[most] {
			most = k
		}
	}
	if spread.Shares[most] < 0.01 {
		return "" // too few to tell
	}
	return s.Varied[most].Key + " " + percent(spread.Shares[most])
}

// failing returns the limits that fail.
func (v voice) failing(s size.Study) *sheet.Table {
	t := &sheet.Table{Caption: "How often each limit fails", Head: []string{"fails", "of 100", ""}}
	for _, l := range s.Limits {
		if l.Fails > 0 {
			t.Mark(true, brief(l.Limit.Load)+", "+v.limitName(l.Limit.Name), inHundred(float64(l.Fails)/float64(s.Chairs)), "")
		}
	}
	return t
}

// sharesTable returns every share.
func (v voice) sharesTable(s size.Study) sheet.Block {
	name := func(spread size.Spread) string { return shortNames[spread.Quantity] }
	t := &sheet.Table{Head: sheet.Across("share of the variance, %", s.Spreads, name, "held to")}
	row := func(label, last string, share func(spread size.Spread) float64) {
		t.Add(sheet.Across(label, s.Spreads, func(spread size.Spread) string { return fmt.Sprintf("%.0f", 100*share(spread)) }, last)...)
	}
	for k, varied := range s.Varied {
		row(varied.Key, v.with(varied.Tolerance, varied.Measure.Kind), func(spread size.Spread) float64 { return spread.Shares[k] })
	}
	row("left over", "", func(spread size.Spread) float64 { return spread.LeftOver })
	return sheet.Block{Title: "What each hangs on", Table: t, All: true}
}

// studyAssumptions says how the chairs were made.
func studyAssumptions() sheet.Block {
	return sheet.Block{Title: "How they were made", All: true, Lines: sheet.Says(
		"Every measure of each is off by an error of its own, normal, within what the shop usually holds 95 times in 100 "+
			"(common practice; your own under [shop]); people and floor are as given. Each is worked out exactly. "+
			"The errors are drawn in Latin hypercubes of "+thousands(size.Block)+" by a seed, so that the same call gives the same answer.",
		"The shares are squared regression coefficients times the variance of each measure; what no straight line explains is left over.")}
}
