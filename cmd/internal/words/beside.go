package words

import (
	"fmt"
	"math"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// seating returns the lever arms of published tests, with how far each is to be trusted.
func (v voice) seating(r trial.Rocking) []sheet.Block {
	const title = "Lever arms of published tests"
	if r.Report.ForAChild() {
		return []sheet.Block{{Title: title, Lines: sheet.Says("Not tried: the tests that were found load a seat with a grown-up's 600 N (135 lb), " +
			"and this is a child's " + v.piece + ". They say nothing of it, either way.")}}
	}
	if len(r.Seating) == 0 {
		return nil
	}
	lines := sheet.Says("Not a test certificate: the lever arms of published seating tests, " +
		"tried on the piece alone with their weight on its seat. The tests are made on the finished piece by their own rules.")
	for _, s := range r.Seating {
		text, tips := v.force(math.Abs(s.Force))+" for 5 s: ", v.force(s.Tips)+" put on gently"
		switch unseen := math.IsNaN(s.Force); {
		case s.Outcome != sim.Rocks && unseen, s.Tips == 0 && s.Outcome == sim.NoRest:
			text = "does not stand under the weight alone."
		case unseen:
			text = "goes over under " + tips + "; the force asked was not seen."
		case s.Outcome == sim.Rocks:
			text += "comes back; goes over under " + tips + "."
		default:
			text += s.Outcome.String() + "; " + tips + " takes it over."
		}
		text = fmt.Sprintf("%s (%s; %s): %s", upperFirst(s.Name), s.Source, s.Confidence, text)
		lines = append(lines, sheet.Line{Text: text, Bad: s.Outcome != sim.Rocks})
	}
	return []sheet.Block{{Title: title, Lines: lines}}
}

// slopes returns a horse on its slope.
func (v voice) slopes(r trial.Rocking) []sheet.Block {
	if len(r.Slopes) == 0 {
		return nil
	}
	lines := sheet.Says("On a slope of 10 degrees (loads and slope: EN 71-1, 8.23.1, read in the text; not a test certificate):")
	for _, s := range r.Slopes {
		text := s.Name + ": goes over."
		if s.Rests {
			text = s.Name + ": stands, " + v.degrees(s.Margin) + " before going over."
		}
		lines = append(lines, sheet.Line{Text: text, Bad: !s.Rests})
	}
	return []sheet.Block{{Title: "On a slope", Lines: lines}}
}

// cradle returns a cradle against the tilts of 5 and 10 degrees, and what its ends limit.
func (v voice) cradle(r trial.Rocking) []sheet.Block {
	if v.marked == "" {
		return nil
	}
	p := r.Report.Edge
	right, left := -p.Bearing(0).To, p.Bearing(p.Bearings()-1).From
	lines := sheet.Says(fmt.Sprintf("The curve ends at a tilt of %s %s and %s %s, where it stands on a tip; nothing before that stops it. "+
		"A limit of 5 or 10 degrees needs stops.", v.degrees(left), v.Back, v.degrees(right), v.Forward))
	for i := range r.Report.Loads {
		l := &r.Report.Loads[i]
		if !l.Upright() {
			continue
		}
		tilt := math.Abs(l.Balance.Rest.Tilt)
		word := "within 5 degrees"
		switch {
		case tilt > 10*quantity.Deg:
			word = "beyond 10 degrees"
		case tilt > 5*quantity.Deg:
			word = "between 5 and 10 degrees"
		}
		text := upperFirst(brief(l.Name)) + " rests at " + v.degrees(tilt) + ": " + word + "."
		lines = append(lines, sheet.Line{Text: text, Bad: tilt > 5*quantity.Deg})
	}
	return []sheet.Block{{Title: string(v.marked), Lines: lines}}
}

// room says what room the piece needs, and where something is caught.
func (v voice) room(r trial.Rocking) sheet.Block {
	n, crest := r.Room, ""
	if !math.IsNaN(n.Crest) {
		crest = "; the top of the back alone " + v.length(n.Crest) + " behind here"
	}
	return sheet.Block{Title: "Room", Lines: sheet.Says(fmt.Sprintf("From where its low point touches it reaches %s, with anybody who is checked in it, "+
		"each in a good rock, 15 degrees from the own rest (here between %s %s and %s %s)%s.",
		v.reaches(r), v.degrees(math.Abs(n.From)), v.Forward, v.degrees(math.Abs(n.To)), v.Back, crest),
		fmt.Sprintf("At rest the %s tip stands %s and the %s tip %s off the floor; on the way they come down to %s and %s. "+
			"Along %s of each rocker the gap is less than %s: that is where fingers, toes and tails are caught (1 in is our judgement).",
			v.tail, v.length(n.TailAtRest), v.nose, v.length(n.NoseAtRest), v.length(max(0, n.TailLow)), v.length(max(0, n.NoseLow)),
			v.length(n.Caught), v.length(trial.CaughtUnder)))}
}

// sideways returns the margins to the side.
func (v voice) sideways(r trial.Rocking) sheet.Block {
	if len(r.Sideways) == 0 {
		return sheet.Block{Title: "Sideways", Lines: sheet.Says("Give " + v.tracks + " to learn how near it is to going over sideways.")}
	}
	t := &sheet.Table{Head: []string{"Before going over one rocker", "degrees", "lift", "leans", ""}}
	for _, s := range r.Sideways {
		t.Mark(s.Angle == 0, brief(s.Load), v.angle(s.Angle), v.bare(s.Lift), pick(s.Lean > 0, v.bare(s.Lean), "–"), v.unit())
	}
	track, _ := r.Report.Design.Track()
	return sheet.Block{Title: "Sideways", Table: t, Lines: sheet.Says("Floor edges taken " + v.length(track) + " apart. " +
		"Leans: how far the balance point of who sits goes to the side, over an arm 0.11 of the stature, " +
		"at the end of a settee to 250 mm (10 in) from the seat's end; our judgement.")}
}

// walks says how the piece walks.
func (v voice) walks(r trial.Rocking) sheet.Block {
	w := r.Walk
	if w == nil {
		return sheet.Block{Title: "Walks", Lines: sheet.Says("Give " + v.tracks + " to learn how unequal rockers walk.")}
	}
	text, enough := "The two rockers are taken to be one curve and parallel, so it does not walk.", ""
	if !w.OneCurve || w.Scrub > 0 {
		text = fmt.Sprintf("In a rock of 10 degrees either way it turns on the floor by %.2f degrees and back, "+
			"leans sideways by up to %.2f degrees, and each rocker is dragged %s.",
			math.Abs(w.Heading)*180/math.Pi, w.Lean*180/math.Pi, v.fine(w.Scrub))
	}
	if !math.IsNaN(w.Enough) {
		enough = "How equal is equal enough: tail tips that stand " + v.fine(w.Enough) +
			" apart in height drag each rocker 1/32 in (0.8 mm) in a rock (our judgement of what nobody notices)."
	}
	return sheet.Block{Title: "Walks", Lines: sheet.Says(text, enough, "Assumed: both rockers roll along their own line as far as they can; "+
		"how much of the drag slides and how much walks, friction decides.")}
}

// stops says what corners do: blocks and lips.
func (v voice) stops(r trial.Rocking) []sheet.Block {
	if len(r.Stops) == 0 {
		return nil
	}
	var lines []sheet.Line
	for _, s := range r.Stops {
		left := ", and the hilltop lies on it."
		if !math.IsNaN(s.Left) {
			left = "; behind it " + v.degrees(s.Left) + " are left to the hilltop."
		}
		lines = append(lines, sheet.Line{Text: fmt.Sprintf("From a tilt of %s to %s it stands on a corner; the righting arm goes from %s to %s there%s",
			v.towards(s.From), v.towards(s.To), v.length(s.ArmFirst), v.length(s.ArmLast), left)})
	}
	return []sheet.Block{{Title: "Stops and corners", Lines: lines}}
}
