package words

import (
	"fmt"
	"math"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/trial"
)

// besides returns what room the piece takes, and what else it does on its floor.
func besides(w wording, r trial.Rocking) []sheet.Block {
	return append([]sheet.Block{room(w, r), overSideways(w, r), walks(w, r)}, titled("Stops and corners", stops(w, r))...)
}

// room says what room the piece needs, and where something is caught.
func room(w wording, r trial.Rocking) sheet.Block {
	n := r.Room
	return sheet.Block{Title: "Room", Lines: sheet.Says(fmt.Sprintf("From where its low point touches it reaches %s, "+
		"with anybody who is checked in it, "+
		"each in a good rock, 15 degrees from the own rest (here between %s %s and %s %s)%s.",
		reaches(w, n.Reach), w.degrees(unsigned(n.From)), w.Forward, w.degrees(unsigned(n.To)), w.Back,
		when(!math.IsNaN(n.Crest), "; the top of the back alone %s behind here", w.length(n.Crest))),
		fmt.Sprintf("At rest the %s tip stands %s and the %s tip %s off the floor; on the way they come down to %s and %s. "+
			"Along %s of each rocker the gap is less than %s: that is where fingers, toes and tails are caught "+
			"(1 in is our judgement).",
			w.tail, w.length(n.TailAtRest), w.nose, w.length(n.NoseAtRest), w.length(n.TailLow), w.length(n.NoseLow),
			w.length(n.Caught), w.length(trial.CaughtUnder)),
		when(n.Hard.Behind > math.Inf(-1), "However hard it is rocked, short of going over: nothing and nobody reaches further than %s%s.",
			reaches(w, n.Hard), when(len(r.Heaved) > 0, ", however they lean, with the hands at rest or behind the head")),
		when(!math.IsNaN(n.Heels), "The feet on the floor stand from %s to %s ahead; the %s tips come down at %s.",
			w.length(n.Heels), w.length(n.Toes), w.nose, w.length(n.NoseComes)))}
}

func overSideways(w wording, r trial.Rocking) sheet.Block {
	if len(r.Sideways) == 0 {
		return sheet.Block{Title: "Sideways", Lines: sheet.Says("Give " + w.tracks +
			" to learn how near it is to going over sideways.")}
	}
	t := &sheet.Table{Head: []string{"Before going over one rocker", "degrees", "lift", "leans", ""}}
	for _, s := range r.Sideways {
		t.Mark(s.Angle == 0, brief(s.Load), w.angle(s.Angle), w.bare(s.Lift), pick(s.Lean > 0, w.bare(s.Lean), "–"), w.unit())
	}
	track, _ := r.Report.Design.Track()
	return sheet.Block{Title: "Sideways", Table: t, Lines: sheet.Says("Floor edges taken " + w.length(track) + " apart. " +
		"Leans: how far the balance point of who sits goes to the side, over an arm 0.11 of the stature, " +
		"at the end of a settee to 250 mm (10 in) from the seat's end; our judgement.")}
}

func walks(w wording, r trial.Rocking) sheet.Block {
	walk := r.Walk
	if walk == nil {
		return sheet.Block{Title: "Walks", Lines: sheet.Says("Give " + w.tracks + " to learn how unequal rockers walk.")}
	}
	text := "The two rockers are taken to be one curve and parallel, so it does not walk."
	if !walk.OneCurve || walk.Scrub > 0 {
		text = fmt.Sprintf("In a rock of 10 degrees either way it turns on the floor by %s degrees and back, "+
			"leans sideways by up to %s degrees, and each rocker is dragged %s.",
			inDegrees(unsigned(walk.Heading), 2), inDegrees(walk.Lean, 2), fine(w.units, walk.Scrub))
	}
	return sheet.Block{Title: "Walks", Lines: sheet.Says(text,
		when(!math.IsNaN(walk.Enough), "How equal is equal enough: "+
			"tail tips that stand %s apart in height drag each rocker 1/32 in (0.8 mm) in a rock "+
			"(our judgement of what nobody notices).", fine(w.units, walk.Enough)),
		"Assumed: both rockers roll along their own line as far as they can; "+
			"how much of the drag slides and how much walks, friction decides.")}
}

// stops says what corners do: blocks and lips.
func stops(w wording, r trial.Rocking) []sheet.Line {
	var lines []sheet.Line
	for _, s := range r.Stops {
		left := pick(math.IsNaN(s.Left), ", and the hilltop lies on it.",
			"; behind it "+w.degrees(s.Left)+" are left to the hilltop.")
		lines = append(lines, sheet.Line{Text: fmt.Sprintf("From a tilt of %s to %s it stands on a corner; "+
			"the righting arm goes from %s to %s there%s",
			towards(w, s.From), towards(w, s.To), w.length(s.ArmFirst), w.length(s.ArmLast), left)})
	}
	return lines
}
