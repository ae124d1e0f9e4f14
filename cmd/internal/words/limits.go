package words

import (
	"cmp"
	"math"
	"slices"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

// ranked returns the limits with those that fail first, then those that are nearest to
// it. Of a load that does not rest only that is listed, of one that does all else.
func ranked(limits []check.Limit) []check.Limit {
	list := slices.DeleteFunc(slices.Clone(limits), func(l check.Limit) bool {
		return l.Name == "rest" && l.Holds || l.Name != "rest" && math.IsNaN(l.Got)
	})
	share := func(l check.Limit) float64 {
		if l.Name == "rest" {
			return math.Inf(-1)
		}
		return l.Share()
	}
	slices.SortStableFunc(list, func(a, b check.Limit) int { return cmp.Compare(share(a), share(b)) })
	return list
}

// limitTable returns limits as a table: want, got, whose.
func limitTable(w wording, limits []check.Limit) *sheet.Table {
	t := &sheet.Table{Caption: "What we ask of it", Head: []string{"What we ask", "want", "got", "whose"}}
	for _, l := range limits {
		t.Mark(!l.Holds, limit(w, l)...)
	}
	if len(limits) == 0 {
		t.Add("that it stands", "yes", "yes", check.Physics)
	}
	return t
}

// limit returns the cells of a limit: what is asked, what is wanted, what there is, and by whom it is asked. Where
// rounding to the shop's step would make a failing value look like the one asked, it is given finer.
func limit(w wording, l check.Limit) []string {
	name, basis := sheet.Cut(sheet.Plain(l.Load), 30), l.Basis+"  "+pick(l.Holds, "ok", "NO")
	if l.Name == "rest" {
		return []string{name + " stands", "a rest", "none", basis}
	}
	got := w.shop(l.Got, l.Kind)
	if !l.Holds && got == w.shop(l.Want, l.Kind) {
		got = quantity.Fine(l.Got, l.Kind, w.System)
	}
	return []string{name + ", " + limitName(w.phrases, l.Name), pick(l.AtMost, "at most ", "") + w.with(l.Want, l.Kind), got, basis}
}
