package words

import (
	"fmt"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// Study returns the sheet of many chairs as a shop makes them.
func Study(d piece.Design, s size.Study, source string) sheet.Sheet {
	w := wordingOf(d)
	title := fmt.Sprintf("%s · %s made as a shop does", shortName(d), many(w.phrases, s.Chairs))
	var lines []sheet.Line
	if s.Stopped() {
		lines = append(lines, sheet.Line{Label: "STOPPED:", Bad: true,
			Text: "after " + thousands(s.Chairs) + " of " + thousands(s.Asked) + ". What follows is of those."})
	}
	if s.Chairs == 0 {
		return sheet.Sheet{Title: title, Source: source, Blocks: []sheet.Block{{Lines: lines}}}
	}
	vary := slices.ContainsFunc(s.Varied, func(v size.Varied) bool { return v.Key == size.People })
	limits := sheet.Line{Label: "LIMITS:", Text: "none fails in any of them", Bad: s.Fails > 0}
	if s.Fails > 0 {
		limits.Text = "one or more fail in " + inHundred(s.Part(s.Fails)) + " of 100"
	}
	limits.Text += when(vary, ", each %s with another person of the same sizes", w.piece) + "."
	lines = append(lines, limits)
	if s.Unusable > 0 {
		lines = append(lines, sheet.Wrong(thousands(s.Unusable)+" of them do not rest at all."))
	}
	blocks := append([]sheet.Block{{Lines: lines}}, spreads(w, d, s)...)
	failing := &sheet.Table{Caption: "How often each limit fails", Head: []string{"fails", "of 100", ""}}
	for _, l := range s.Limits {
		if l.Fails > 0 {
			failing.Mark(true, brief(l.Limit.Load)+", "+limitName(w.phrases, l.Limit.Name), inHundred(s.Part(l.Fails)), "")
		}
	}
	if len(failing.Rows) > 0 {
		blocks = append(blocks, sheet.Block{Table: failing})
	}
	made := sheet.Block{Title: "How they were made", All: true, Lines: sheet.Says(
		"Every measure of each is off by an error of its own, normal, within what the shop usually holds 95 times in 100 "+
			"(common practice; your own under [shop]). "+varying(w, d, vary)+" Each is worked out exactly. "+
			"The errors are drawn in Latin hypercubes of "+thousands(size.Block)+" by a seed, so that the same call gives the same answer.",
		"The shares are squared regression coefficients times the variance of each measure; "+
			"what no straight line explains is left over.")}
	blocks = append(blocks, sheet.Block{Lines: sheet.Says(w.disclaimer)}, sharesTable(w, d, s), made)
	return sheet.Sheet{Title: title, Source: source, Blocks: blocks}
}

// varying says how people vary, if they do.
func varying(w wording, d piece.Design, vary bool) string {
	if !vary {
		return "Who is in it and the floor are as given."
	}
	return "With each is another person of the same sizes, the balance point off by a normal error within " +
		w.length(check.PersonSpread) + " fore and aft as often (our reading of published bodies, one source). All people of one " +
		w.piece + " are off alike" + when(d.Traits().ForTwo, ", two side by side too, which spreads its rest the most") +
		". Who is given by plain numbers and the floor are as given."
}

// amount returns a quantity finely, and its unit.
func amount(u units, q size.Quantity, x float64) (text, unit string) {
	switch q {
	case size.Time:
		return fmt.Sprintf("%.2f", x), "s"
	case size.Effort:
		return quantity.Fine(x, quantity.Force, u.System), quantity.Unit(quantity.Force, u.System)
	case size.BackLift:
		return u.bare(x), u.unit()
	}
	return inDegrees(x, 1), "deg"
}

// quantities names what is read of each chair, in full and over a column.
func quantities(w wording, d piece.Design) (names, heads [len(size.Readings{})]string) {
	rests := restsAs(d)
	names = [...]string{size.FallAtEase: rests + w.seated, size.FallEmpty: rests + "empty", size.Time: "one rock",
		size.Effort: "push for one degree", size.BackMargin: "before going " + w.Back, size.BackLift: "  weight must lift",
		size.ForwardMargin: "before going " + w.Forward}
	heads = [...]string{size.FallAtEase: w.seated, size.FallEmpty: "empty", size.Time: "rock", size.Effort: "push",
		size.BackMargin: w.shortBack, size.BackLift: "lift", size.ForwardMargin: strings.TrimSpace(w.angleForward)}
	return names, heads
}

// spreads returns how each quantity lies, and the measure on which it hangs most, as far as any tells.
func spreads(w wording, d piece.Design, s size.Study) []sheet.Block {
	names, _ := quantities(w, d)
	lie := &sheet.Table{Caption: "How the chairs lie", Head: []string{"", "drawn", "5 %", "50 %", "95 %", ""}}
	hang := &sheet.Table{Head: []string{"hangs most on", "", ""}, Wrap: true}
	for _, spread := range s.Spreads {
		q := spread.Quantity
		cells, unit := []string{names[q]}, ""
		for _, x := range []float64{s.Nominal[q], spread.Low, spread.Middle, spread.High} {
			var text string
			text, unit = amount(w.units, q, x)
			cells = append(cells, text)
		}
		lie.Add(append(cells, unit)...)
		if most, share := s.Most(spread); share >= 0.01 {
			hang.Add(strings.TrimSpace(names[q]), percent(share), labelOf(d, most.Key, most.Measure.Label))
		}
	}
	return []sheet.Block{{Table: lie}, {Table: hang}}
}

func sharesTable(w wording, d piece.Design, s size.Study) sheet.Block {
	_, heads := quantities(w, d)
	head := func(spread size.Spread) string { return heads[spread.Quantity] }
	t := &sheet.Table{Head: sheet.Across("share of the variance, %", s.Spreads, head, "held to"), Wrap: true}
	row := func(label, last string, share func(spread size.Spread) float64) {
		t.Add(sheet.Across(label, s.Spreads, func(spread size.Spread) string { return hundredths(share(spread), 0) },
			last)...)
	}
	for k, varied := range s.Varied {
		row(labelOf(d, varied.Key, varied.Measure.Label), w.with(varied.Tolerance, varied.Measure.Kind),
			func(spread size.Spread) float64 { return spread.Shares[k] })
	}
	row("left over", "", func(spread size.Spread) float64 { return spread.LeftOver })
	return sheet.Block{Title: "What each hangs on", Table: t, All: true}
}
