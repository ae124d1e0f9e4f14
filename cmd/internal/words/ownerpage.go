package words

import (
	"cmp"
	"fmt"
	"math"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/trial"
)

// owner returns the page for whoever takes the piece home: no mathematics.
func owner(w wording, a *trial.Answer, rocking *trial.Rocking) Section {
	r := &a.Report
	leave, rest := "", "Empty, it does not stand by itself. Ask the maker before you use it."
	if rocking != nil && !math.IsNaN(rocking.Room.Behind) {
		leave = " From the middle of the rockers it reaches " + reaches(w, rocking.Room.Reach) + " in a good rock: leave that clear, " +
			"and a hand more."
	}
	if empty := &r.Loads[0]; empty.Upright() {
		noseUp, tailUp := r.TipsAtRest(empty)
		rest = fmt.Sprintf("Empty and still on a level floor, "+
			"the %s ends of the rockers stand about %s and the %s ends about %s off the floor, "+
			"the same on both sides.%s If it comes to rest in another way than when it was new, something has moved or worn.",
			w.tail, w.length(tailUp), w.nose, w.length(noseUp), w.leans)
	}
	return Section{ID: "owner", Title: "For the owner of " + cmp.Or(brief(r.Design.Title), "this "+w.piece),
		Blocks: []sheet.Block{
			{Title: "Who it was checked for", Lines: sheet.Says(whom(w, a))},
			{Title: "How it should rest", Lines: sheet.Says(rest)},
			{Title: "Where it stands", Lines: sheet.Says("On a hard, level floor. " +
				"A thick rug, a slope, a porch laid to shed the rain or a gap between boards changes how it rests " +
				"and how near it is to going over. Not by stairs, a step, a hearth or the edge of a porch." + leave)},
			{Title: "Fingers, toes and tails", Lines: sheet.Says("Under each rocker is a gap that closes as it rocks. " +
				"Keep fingers, toes, cords and the tails of pets away from it. The ends of the rockers reach out where one walks: " +
				"go round them, and do not leave it where somebody passes in the dark.")},
			{Title: w.children, Lines: sheet.Says(w.climb...)},
			{Title: "Wear, and when to bring it back", Lines: sheet.Says("The rockers wear first at the middle, where it stands. " +
				"Once a year turn it over and look: bring it back when the middle has gone flat or shows a ridge, " +
				"when a joint moves, clicks or opens, when a rocker, a leg or a rail has a crack, " +
				"when it creeps over the floor as it rocks, " +
				"when the two sides stand unlike, or when it no longer rests as it did." + string(w.locked))},
			{Lines: sheet.Says("Nothing on this page is a test or a certificate: it was calculated from the maker's drawing.",
				"Made by ________________________  Date ______________  Next look ______________")},
		}}
}

// whom says who was checked: the lightest and the heaviest.
func whom(w wording, a *trial.Answer) string {
	r, list := &a.Report, a.Report.Checked()
	if len(list) == 0 {
		return "Nobody: only the empty " + w.piece + " was checked. Ask the maker before anybody uses it."
	}
	named := func(c check.Checked) string { return brief(c.Name) + " of " + mass(w.units, c.Mass) }
	text := "By calculation: " + named(list[0]) + "."
	if heavy := list[len(list)-1]; heavy != list[0] {
		text = "By calculation, the lightest: " + named(list[0]) + "; the heaviest: " + named(heavy) + "."
	}
	text += " That is of its balance, not of its strength." +
		when(!a.Holds(), " Not all of them keep the limits that the maker set: ask which before you use it.") +
		w.whoever
	text += when(w.fuller && r.ForAChild(), " A child grows out of what was checked: "+
		"have it looked at again before a bigger one sits in it.")
	for _, f := range of(a, trial.Warns) {
		if f.What == trial.Braces || f.What == trial.Rockers || f.What == trial.Thin {
			text += " " + warning(w, a, f).Text
		}
	}
	for _, said := range inUse(w, of(a, trial.Hazardous)) {
		text += " " + upperFirst(said) + "."
	}
	return text
}

// reaches says how far a piece reaches on both sides while it rocks, and with whom in it.
func reaches(w wording, n trial.Reach) string {
	one := func(reach float64, way, who string) string {
		return w.length(reach) + " " + way + when(who != "", " (%s)", brief(who))
	}
	return one(n.Behind, w.reachBehind, n.BehindBy) + " and " + one(n.Front, w.reachAhead, n.FrontBy)
}
