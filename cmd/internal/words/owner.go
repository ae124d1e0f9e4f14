package words

import (
	"cmp"
	"fmt"
	"math"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/trial"
)

// owner returns the page for whoever takes the piece home: no mathematics.
func (v voice) owner(a *trial.Answer, rocking *trial.Rocking) Section {
	r := &a.Report
	floor := "On a hard, level floor. A thick rug, a slope, a porch laid to shed the rain or a gap between boards changes how it rests " +
		"and how near it is to going over. Not by stairs, a step, a hearth or the edge of a porch."
	if rocking != nil && !math.IsNaN(rocking.Room.Behind) {
		floor += " From the middle of the rockers it reaches " + v.reaches(*rocking) + " in a good rock: leave that clear, and a hand more."
	}
	return Section{ID: "owner", Title: "For the owner of " + cmp.Or(brief(r.Design.Title), "this "+v.piece), Blocks: []sheet.Block{
		{Title: "Who it was checked for", Lines: sheet.Says(v.whom(a))},
		{Title: "How it should rest", Lines: sheet.Says(v.shouldRest(r))},
		{Title: "Where it stands", Lines: sheet.Says(floor)},
		{Title: "Fingers, toes and tails", Lines: sheet.Says("Under each rocker is a gap that closes as it rocks. " +
			"Keep fingers, toes, cords and the tails of pets away from it. The ends of the rockers reach out where one walks: " +
			"go round them, and do not leave it where somebody passes in the dark.")},
		{Title: v.children, Lines: sheet.Says(v.climb...)},
		{Title: "Wear, and when to bring it back", Lines: sheet.Says("The rockers wear first at the middle, where it stands. " +
			"Once a year turn it over and look: bring it back when the middle has gone flat or shows a ridge, " +
			"when a joint moves, clicks or opens, when a rocker, a leg or a rail has a crack, when it creeps over the floor as it rocks, " +
			"when the two sides stand unlike, or when it no longer rests as it did." + string(v.locked))},
		{Lines: sheet.Says("Nothing on this page is a test or a certificate: it was calculated from the maker's drawing.",
			"Made by ________________________  Date ______________  Next look ______________")},
	}}
}

// whom says who was checked: the lightest and the heaviest.
func (v voice) whom(a *trial.Answer) string {
	r := &a.Report
	list := r.Checked()
	if len(list) == 0 {
		return "Nobody: only the empty " + v.piece + " was checked. Ask the maker before anybody uses it."
	}
	named := func(c check.Checked) string { return brief(c.Name) + " of " + v.mass(c.Mass) }
	text := "By calculation: " + named(list[0]) + "."
	if heavy := list[len(list)-1]; heavy != list[0] {
		text = "By calculation, the lightest: " + named(list[0]) + "; the heaviest: " + named(heavy) + "."
	}
	if !a.Holds() {
		text += " Not all of them keep the limits that the maker set: ask which before you use it."
	}
	if text += v.whoever; !v.fuller {
		return text
	}
	if r.ForAChild() {
		text += " A child grows out of what was checked: have it looked at again before a bigger one sits in it."
	}
	for _, f := range of(a, trial.Warns) {
		if f.What == trial.Braces || f.What == trial.Rockers {
			text += " " + v.warning(a, f).Text
		}
	}
	return text
}

// shouldRest says what the owner can see of the rest with a tape, empty and still.
func (v voice) shouldRest(r *check.Report) string {
	empty := &r.Loads[0]
	if !empty.Upright() {
		return "Empty, it does not stand by itself. Ask the maker before you use it."
	}
	noseUp, tailUp := r.TipsAtRest(empty)
	return fmt.Sprintf("Empty and still on a level floor, the %s ends of the rockers stand about %s and the %s ends about %s off the floor, "+
		"the same on both sides.%s If it comes to rest in another way than when it was new, something has moved or worn.",
		v.tail, v.length(tailUp), v.nose, v.length(noseUp), v.leans)
}

// reaches says how far a piece reaches on both sides while it rocks, and with whom in it.
func (v voice) reaches(r trial.Rocking) string {
	one := func(reach float64, way, who string) string {
		if who != "" {
			who = " (" + brief(who) + ")"
		}
		return v.length(reach) + " " + way + who
	}
	return one(r.Room.Behind, v.reachBehind, r.Room.BehindBy) + " and " + one(r.Room.Front, v.reachAhead, r.Room.FrontBy)
}

// Letter returns a report as a letter to another maker: what the piece is and does, in the
// words of the report. The design file goes below it.
func Letter(a trial.Answer, rocking *trial.Rocking, m Making) sheet.Sheet {
	r := a.Report
	v := voiceOf(r.Design)
	with := ""
	if len(m.Changes) > 0 {
		with = " (with " + sheet.Plain(strings.Join(m.Changes, "; ")) + ")"
	}
	s := sheet.Sheet{Title: v.title(r.Design), Source: m.Date.Format("2 January 2006"), Blocks: []sheet.Block{
		{Lines: sheet.Says("To another maker,")},
		{Lines: sheet.Says(fmt.Sprintf("here is a %s on rockers that I have worked out with rockerwright %s%s. "+
			"All of it is calculated from measures; nothing was tested.", v.piece, m.Version, with), "I checked "+v.checked(r))},
		{Lines: append(sheet.Says("How it came out:"), v.verdict(&a)...)},
		{Lines: []sheet.Line{v.tape(r)}},
		v.readings(r, everyRemark),
		{Lines: v.lessons(&a)},
	}}
	if rocking != nil {
		s.Blocks = append(s.Blocks, sheet.Block{Lines: v.lookedAt(*rocking)})
	}
	s.Blocks = append(s.Blocks, sheet.Block{Lines: v.cautions(r)}, sheet.Block{Lines: []sheet.Line{
		{Text: "The design file is below. Save it as a plain text file, and you can check it yourself:",
			Type: "rockerwright check " + fileName(m.Source)},
		{Text: "With good wishes for the bench."}}})
	return s
}

// lessons says what limits a piece and what its maker would try.
func (v voice) lessons(a *trial.Answer) []sheet.Line {
	try := ""
	if t := a.Try; t != nil {
		try = fmt.Sprintf("I would try %s %s next%s.", t.Label, v.with(t.Value, t.Kind), v.gained(t))
	}
	return append(append(sheet.Says(v.cause(a.Cause), try), v.wrongs(a)...), v.foot())
}

// lookedAt says what else was looked at: of a cradle its tilts, of a horse its slope, and
// the room it takes.
func (v voice) lookedAt(r trial.Rocking) []sheet.Line {
	var lines []sheet.Line
	for _, b := range append(v.slopes(r), v.cradle(r)...) {
		lines = append(lines, b.Lines...)
	}
	return append(lines, sheet.Line{Text: "From where its low point touches it reaches " + v.reaches(r) + " in a good rock."})
}
