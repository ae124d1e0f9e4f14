package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/body/person"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/trial"
)

// tooNear says which limits are too near to tell, of those that fail on no load.
func tooNear(w wording, a *trial.Answer) []sheet.Line {
	near := slices.DeleteFunc(of(a, trial.TooNear), func(n *trial.Finding) bool {
		return slices.ContainsFunc(of(a, trial.Fails), func(f *trial.Finding) bool { return f.What == n.What })
	})
	if len(near) == 0 {
		return nil
	}
	return []sheet.Line{{Label: "TOO NEAR TO TELL:", Text: told(w, a.Design, near)}}
}

// failing returns the findings of limits that fail, and of these limits those that are too near to tell on other loads.
func failing(a *trial.Answer) []*trial.Finding {
	list := of(a, trial.Fails)
	for _, near := range of(a, trial.TooNear) {
		if slices.ContainsFunc(list, func(f *trial.Finding) bool { return f.What == near.What }) {
			list = append(list, near)
		}
	}
	return list
}

// told says which limits findings miss, in their order, by whom and by how much, and the measure to look at.
func told(w wording, d piece.Design, findings []*trial.Finding) string {
	var said []string
	for i, f := range findings {
		alike := func(o *trial.Finding) bool { return o.What == f.What }
		if slices.ContainsFunc(findings[:i], alike) {
			continue
		}
		var told []string
		for _, o := range findings[i:] {
			if alike(o) {
				told = append(told, who(o.Load)+" "+gets(w, o.Limit)+when(o.Level != f.Level, " (too near)"))
			}
		}
		what := upperFirst(limitName(w.phrases, f.What)) + ", " + wants(w, f.Limit)
		if f.What == "rest" {
			what = "Stands only just"
		}
		said = append(said, fmt.Sprintf("%s: %s%s.", what, strings.Join(told, ", "),
			when(f.Key != "", "; look at the %s", measure(d, f.Key))))
	}
	return strings.Join(said, " ")
}

// measure says in few words which measure to look at.
func measure(d piece.Design, key string) string {
	m, _, err := d.Measure(key)
	if err != nil {
		return key
	}
	short := map[string]string{"seat.behind_low_point": "low point under the seat", "rocker.radius": "radius",
		piece.ArcKey(1, "length"): "length of the arc at the nose"}[key]
	if last := len(d.Rocker.Arcs); last > 1 && key == piece.ArcKey(last, "length") {
		short = "length of the arc at the tail"
	}
	if strings.HasPrefix(short, "length of the arc") {
		return short
	}
	if short == "" {
		short, _, _ = strings.Cut(m.Label, ",")
	}
	return labelOf(d, key, short)
}

// who names a load in a list: its posture behind the name, and at ease none.
func who(l *check.Load) string {
	if l.Posture == person.AtEase {
		return brief(l.Sitter)
	}
	return strings.Replace(brief(l.Name), ", ", " ", 1)
}

// asked says what one load gets of a limit, and what is asked: "owner, rising: tilt, going forward 1/2, 10 degrees asked".
func asked(w wording, l *check.Limit) string {
	if l.Name == "rest" {
		return brief(l.Load) + " stands, " + onlyJust
	}
	return fmt.Sprintf("%s: %s %s, %s", brief(l.Load), limitName(w.phrases, l.Name), gets(w, l), wants(w, l))
}

// onlyJust is said of what stands, but might not.
const onlyJust = "but not with the balance point an inch off"

// gets writes what there is of a limit, with its ± where that matters, and wants what is asked, with the unit of both.
func gets(w wording, l *check.Limit) string {
	if l.Name == "rest" {
		return onlyJust
	}
	return sided(w, l, l.Got) + when(l.Near, " ±%s", w.shop(l.Spread, l.Kind))
}
func wants(w wording, l *check.Limit) string {
	level := !l.AtMost && l.Want <= 0 // the other way round: no further forward than that
	return when(l.AtMost || level, "at most ") + w.with(unsigned(l.Want), l.Kind) + when(level, " %s", w.Forward) + " asked"
}

// sided writes an amount of a limit to the shop's step, with its side where it may lie on either.
func sided(w wording, l *check.Limit, x float64) string {
	return w.shop(unsigned(x), l.Kind) + when(x < 0, " %s", w.Forward)
}

// ranked returns the limits with those that fail first, then those that are nearest to
// it. Of a load that does not rest only that is listed, of one that does all else.
func ranked(limits []check.Limit) []check.Limit {
	falls := map[string]bool{}
	for _, l := range limits {
		if l.Name == "rest" && !l.Holds {
			falls[l.Load] = true
		}
	}
	list := slices.DeleteFunc(slices.Clone(limits), func(l check.Limit) bool {
		return l.Name == "rest" && l.Holds || l.Name != "rest" && falls[l.Load]
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

// limitTable returns limits of a piece as a table: want, got, whose.
func limitTable(w wording, r *check.Balanced, limits []check.Limit) *sheet.Table {
	t := &sheet.Table{Caption: "What we ask of it", Head: []string{"What we ask", "want", "got", "whose"}}
	for i := range limits {
		t.Mark(limits[i].Fails(), limit(w, r.Load(limits[i].Load), &limits[i])...)
	}
	if len(limits) == 0 {
		t.Add("that it stands", "yes", "yes", check.Physics)
	}
	return t
}

// limit returns the cells of a limit on a load: what is asked, what is wanted, what there is, and by whom it is asked.
func limit(w wording, on *check.Load, l *check.Limit) []string {
	name, basis := sheet.Cut(who(on), 30), l.Basis+"  "+pick(l.Near, "near", pick(l.Holds, "ok", "NO"))
	if l.Name == "rest" {
		return []string{name + " stands", "a rest", "none", basis}
	}
	want := when(l.AtMost, "at most ") + w.with(l.Want, l.Kind)
	short := map[string]string{"back_margin": "tilt " + w.shortBack, "back_lift": "lift " + w.shortBack,
		"forward_margin": "tilt " + w.shortForward, "forward_lift": "lift " + w.shortForward,
		"seat_falls_least": "seat falls", "seat_falls_most": "seat falls", "empty_falls_least": "seat falls",
		"empty_falls_most": "seat falls", "slides_off": "slope" + w.angleForward, "push": "push",
		"legs_beyond": "leg beyond", "leans": "leans"}[l.Name]
	got := w.shop(l.Got, l.Kind) + when(l.Near, " ±%s", w.shop(l.Spread, l.Kind))
	return []string{name + ", " + cmp.Or(short, limitName(w.phrases, l.Name)), want, got, basis}
}
