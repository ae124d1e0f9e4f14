package words

import (
	"math"
	"slices"

	"rockerwright/sim/check"
	"rockerwright/sim/quantity"
)

// ranked returns the limits with those that fail first, then those that are nearest to
// it. Of a load that does not rest only that is listed, of one that does all else.
func (v voice) ranked(limits []check.Limit) []check.Limit {
	var list []check.Limit
	for _, l := range limits {
		if l.Name == "rest" && l.Holds || l.Name != "rest" && math.IsNaN(l.Got) {
			continue
		}
		list = append(list, l)
	}
	slices.SortStableFunc(list, func(a, b check.Limit) int {
		switch x, y := reserve(a), reserve(b); {
		case x < y:
			return -1
		case x > y:
			return 1
		}
		return 0
	})
	return list
}

// foremost returns the limits for a first page: of each that fails the load on which it fails
// most, for the verdict names all loads; then the nearest of those that hold, as there is room.
func (v voice) foremost(limits []check.Limit, remarks remarks) []check.Limit {
	var list []check.Limit
	told := map[string]bool{}
	for _, l := range v.ranked(limits) {
		switch {
		case !l.Holds && !told[l.Name], l.Holds && (len(list) == 0 || remarks > oneLimit && len(list) < 3):
			list = append(list, l)
			told[l.Name] = true
		}
	}
	return list
}

// reserve returns by how much a limit holds, as a part of it; below zero it does not.
func reserve(l check.Limit) float64 {
	switch {
	case l.Name == "rest":
		return math.Inf(-1)
	case !math.IsNaN(l.AtMost):
		return 1 - l.Got/l.AtMost
	}
	return l.Got/l.AtLeast - 1
}

// limitTable returns limits as a table: want, got, whose.
func (v voice) limitTable(limits []check.Limit) *Table {
	t := &Table{Caption: "What we ask of it", Head: []string{"What we ask", "want", "got", "whose"}}
	for _, l := range limits {
		t.Rows = append(t.Rows, v.limitRow(l))
	}
	if len(limits) == 0 {
		t.Rows = append(t.Rows, Row{Cells: []string{"that it stands", "yes", "yes", check.Physics}})
	}
	return t
}

func (v voice) limitRow(l check.Limit) Row {
	verdict := "ok"
	if !l.Holds {
		verdict = "NO"
	}
	name := cutTo(plain(l.Load), 30) + ", " + v.limitName(l.Name)
	if l.Name == "rest" {
		name = cutTo(plain(l.Load), 30) + " stands"
		return Row{Cells: []string{name, "a rest", "none", l.Basis + "  " + verdict}, Bad: true}
	}
	return Row{Cells: []string{name, v.wanted(l), v.got(l), l.Basis + "  " + verdict}, Bad: !l.Holds}
}

// got returns what a limit has. Where rounding to the shop's step would make a failing
// value look like the one asked, it is given finer.
func (v voice) got(l check.Limit) string {
	want := l.AtLeast
	if math.IsNaN(want) {
		want = l.AtMost
	}
	text := v.shop(l.Got, l.Kind)
	if l.Holds || text != v.shop(want, l.Kind) {
		return text
	}
	return quantity.Fine(l.Got, l.Kind, v.units)
}
