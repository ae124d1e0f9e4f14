package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// Rock returns the sheet of what happens when a piece is rocked, pushed and tried.
func Rock(r trial.Rocking, source string) sheet.Sheet {
	v := voiceOf(r.Report.Design)
	last := sheet.Says("The piece and whoever sits in it are one rigid body that rolls without slipping; "+
		"sliding, a rug's softness and people who move on are outside the model. "+
		"Shoves last "+v.seconds(trial.ShoveTime)+" s (our judgement).", v.disclaimer)
	return sheet.Sheet{Title: v.title(r.Report.Design), Source: source, Blocks: slices.Concat(titled("", v.rocked(r)), v.hardest(r),
		titled("On a slope", v.slopes(r)), titled(string(v.marked), v.cradle(r)), v.besides(r), titled("", last))}
}

// hardest returns how hard it was tried.
func (v voice) hardest(r trial.Rocking) []sheet.Block {
	return slices.Concat(v.survivals(r), v.fates(r), titled("Lever arms of published tests", v.seating(r)))
}

// besides returns what room the piece takes, and what else it does on its floor.
func (v voice) besides(r trial.Rocking) []sheet.Block {
	return append([]sheet.Block{v.room(r), v.sideways(r), v.walks(r)}, titled("Stops and corners", v.stops(r))...)
}

// rocked says what became of the motion that was asked for.
func (v voice) rocked(r trial.Rocking) []sheet.Line {
	d, t := r.Report.Design, r.Trace
	rest := r.Load.Balance.Rest.Tilt
	push, surface := r.Start.Push, d.Floor.Surface
	how := when(r.Start.Tilt != rest, "let go %s ", v.degrees(math.Abs(r.Start.Tilt-rest))) + "from its rest" +
		when(r.Start.Rate != 0, ", started at %s a second", v.degrees(math.Abs(r.Start.Rate))) +
		when(push.Force != 0, ", pushed with %s for %s s", v.force(math.Abs(push.Force)), v.seconds(push.Time))
	floor := "a floor that takes nothing and holds any force (name one: floor.surface)"
	if surface != piece.NoSurface {
		floor = [...]string{piece.Hardwood: "hardwood", piece.Boards: "boards", piece.Rug: "a rug", piece.Stone: "stone"}[surface] +
			when(r.FloorTaken, ", taken for want of floor.surface (our judgement)")
	} else if r.Losses != (motion.Losses{}) || d.Floor.Friction > 0 {
		floor = "the floor of your file"
	}
	done := sheet.Line{Label: strings.ToUpper(brief(r.Load.Name)) + ":", Text: how + ", on " + floor + "."}
	return append([]sheet.Line{done, v.became(r)}, sheet.Says(
		when(!math.IsNaN(r.HalvesIn), "The tilt falls to half in %.0f rocks.", r.HalvesIn),
		when(surface != piece.NoSurface, "The floor: friction %.2f, rolling loss %s %s. %s.", r.Load.Rig.Floor.Friction,
			quantity.Fine(r.Losses.Rolling, quantity.Length, v.units), v.unit(), upperFirst(r.Ground.Basis)),
		when(t.Friction > 0, "The floor must hold a friction of %.2f, knocks counted.", t.Friction))...)
}

// became says how the motion ended.
func (v voice) became(r trial.Rocking) sheet.Line {
	t, turns := r.Trace, 0
	for _, e := range t.Events {
		if e.Kind == motion.Turns {
			turns++
		}
	}
	nearest := when(!math.IsInf(t.Margin, 1), " At the nearest it kept %s before going over, and used %s of the lift.",
		v.degrees(t.Margin), percent(t.Lift))
	over := fmt.Sprintf("after %.2f s", t.Duration)
	switch t.End {
	case motion.Slipped:
		if t.LiftsOff() {
			return sheet.Wrong("The rocker lifts off " + over + ", at " + v.degrees(math.Abs(t.Last.Tilt)) +
				"; what comes then is outside the model.")
		}
		return sheet.Wrong(v.letsGo(t.Last.Tilt, t.Needs, r.Load.Rig.Floor.Friction) +
			" That is " + over + "; what comes of sliding is outside the model.")
	case motion.WentOver:
		return sheet.Wrong("It " + v.renamed.Replace(t.Outcome.String()) + ", " + pick(t.Duration == 0, "at once", over) + ".")
	case motion.AtRest:
		return sheet.Line{Text: fmt.Sprintf("It turns %s and is at rest after %.1f s.%s",
			counted(turns, "time"), t.Duration, nearest)}
	case motion.TooManySteps:
		return sheet.Wrong(fmt.Sprintf("Followed for %.2f s and given up after %s: it knocks too often to follow.",
			t.Duration, counted(t.Steps, "step")))
	}
	return sheet.Line{Text: fmt.Sprintf("It is still rocking after %.0f s, having turned %s.%s",
		t.Duration, counted(turns, "time"), nearest)}
}

// letsGo says that the floor cannot hold.
func (v voice) letsGo(tilt, needs, has float64) string {
	if math.IsInf(needs, 1) {
		return fmt.Sprintf("The rocker lifts off at %s.", v.degrees(math.Abs(tilt)))
	}
	return fmt.Sprintf("The floor lets go at %s; needs %.2f, floor has %.2f.", v.degrees(math.Abs(tilt)), needs, has)
}

// survivals returns the hardest that each load comes back from.
func (v voice) survivals(r trial.Rocking) []sheet.Block {
	t := &sheet.Table{Caption: "Largest tilts, shoves and speeds, load by load",
		Over: []string{"", "let go", "let go", "", "which", "crest", ""},
		Head: []string{"WHAT IT SURVIVES", v.shortBack, v.shortForward, "shove", "ends in", "at", ""}}
	note := "Largest tilts from the rest, degrees, without losses; " +
		"the least shove to the rear at the top of the back after which " +
		"it goes over one way or the other, or the floor lets go; " +
		"the speed of the top of the back at which it goes over backwards."
	pushed := slices.ContainsFunc(r.Survivals, func(s trial.Survival) bool { return !math.IsNaN(s.Shove) })
	if !pushed { // nowhere to push
		t.Caption, t.Over, t.Head = "Largest tilts, load by load", append(t.Over[:3], ""), append(t.Head[:3], "")
		note = "Largest tilts from the rest, degrees, without losses."
	}
	for _, s := range r.Survivals {
		cells := []string{brief(s.Load), v.angle(s.Back), v.angle(s.Forward)}
		if pushed {
			ends := cmp.Or(strings.TrimPrefix(v.renamed.Replace(s.EndedBy), "goes "), "–")
			cells = append(cells, v.shove(s), ends, v.with(s.Speed, quantity.Speed))
		}
		t.Add(append(cells, "")...)
	}
	return below(sheet.Block{Table: t}, note)
}

// shove writes the least shove that ends in going over, or the largest that was tried.
func (v voice) shove(s trial.Survival) string {
	return pick(s.ShoveNone && !math.IsNaN(s.Shove), "over ", "") + v.force(s.Shove)
}

// fates returns the other trials: of each load those that end badly, and of the first that
// was tried all.
func (v voice) fates(r trial.Rocking) []sheet.Block {
	t := &sheet.Table{Head: []string{"Tried", "outcome", "kept", "lift"}}
	for i, s := range r.Survivals {
		for _, f := range s.Trials {
			if bad := f.Outcome != sim.Rocks; bad || i == min(1, len(r.Survivals)-1) {
				t.Mark(bad, brief(s.Load)+": "+v.renamed.Replace(f.Name), v.renamed.Replace(f.Outcome.String()), v.angle(f.Margin), percent(f.Lift))
			}
		}
	}
	return below(sheet.Block{Title: "Other trials", Table: t},
		"Of the first load all trials, of the others those that end badly. Drops in: falls "+v.length(trial.DropHeight)+
			" on to the empty piece at its rest (our judgement). Kept: degrees to the hilltop at the nearest; "+
			"lift: how much of it was used.")
}

// survives is the block of check: what the worst of the loads comes back from.
func (v voice) survives(a trial.Answer) []sheet.Block {
	s := a.Survives
	if s == nil {
		return nil
	}
	shove := fmt.Sprintf("a shove of %s at the top of the back for %s s ends it (%s)",
		v.shove(*s), v.seconds(trial.ShoveTime), s.EndedBy)
	if s.ShoveNone {
		shove = "no shove that was tried at the top of the back takes it over"
	}
	back, forward := v.Back, v.Forward+"."
	if !math.IsNaN(s.Shove) {
		back, forward = "back", fmt.Sprintf("forward; %s; %s of the top of the back takes it over. "+
			"rockerwright rock says the rest.",
			shove, v.with(s.Speed, quantity.Speed))
	}
	lines := sheet.Says(fmt.Sprintf("%s comes back when let go from up to %s degrees %s or %s %s",
		upperFirst(brief(s.Load)), v.angle(s.Back), back, v.angle(s.Forward), forward))
	for _, f := range s.Trials {
		text := v.renamed.Replace(f.Outcome.String()) + "."
		switch f.Outcome {
		case sim.Rocks:
			text = "comes back, " + v.degrees(f.Margin) + " to spare."
		case sim.FloorLetsGo:
			text = v.letsGo(f.Tilt, f.Needs, a.Loads[0].Rig.Floor.Friction)
		}
		lines = append(lines, sheet.Line{Text: upperFirst(v.renamed.Replace(f.Name)) + ": " + text, Bad: f.Outcome != sim.Rocks})
	}
	return []sheet.Block{{Title: "What it survives", All: true, Lines: lines}}
}

// seating returns the lever arms of published tests, with how far each is to be trusted.
func (v voice) seating(r trial.Rocking) []sheet.Line {
	switch {
	case r.Report.ForAChild():
		return sheet.Says("Not tried: the tests that were found load a seat with a grown-up's 600 N (135 lb), " +
			"and this is a child's " + v.piece + ". They say nothing of it, either way.")
	case len(r.Seating) == 0:
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
	return lines
}

// slopes says how a horse stands on its slope.
func (v voice) slopes(r trial.Rocking) []sheet.Line {
	var lines []sheet.Line
	for i, s := range r.Slopes {
		if i == 0 {
			lines = sheet.Says("On a slope of 10 degrees (loads and slope: EN 71-1, 8.23.1, read in the text; " +
				"not a test certificate):")
		}
		stands := pick(s.Rests, "stands, "+v.degrees(s.Margin)+" before going over.", "goes over.")
		lines = append(lines, sheet.Line{Text: s.Name + ": " + stands, Bad: !s.Rests})
	}
	return lines
}

// cradle says how a cradle rests against the tilts of 5 and 10 degrees, and what its ends limit.
func (v voice) cradle(r trial.Rocking) []sheet.Line {
	if v.marked == "" {
		return nil
	}
	p := r.Report.Edge
	right, left := -p.Bearing(0).To, p.Bearing(p.Bearings()-1).From
	lines := sheet.Says(fmt.Sprintf("The curve ends at a tilt of %s %s and %s %s, where it stands on a tip; "+
		"nothing before that stops it. "+
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
	return lines
}

// room says what room the piece needs, and where something is caught.
func (v voice) room(r trial.Rocking) sheet.Block {
	n := r.Room
	return sheet.Block{Title: "Room", Lines: sheet.Says(fmt.Sprintf("From where its low point touches it reaches %s, "+
		"with anybody who is checked in it, "+
		"each in a good rock, 15 degrees from the own rest (here between %s %s and %s %s)%s.",
		v.reaches(r), v.degrees(math.Abs(n.From)), v.Forward, v.degrees(math.Abs(n.To)), v.Back,
		when(!math.IsNaN(n.Crest), "; the top of the back alone %s behind here", v.length(n.Crest))),
		fmt.Sprintf("At rest the %s tip stands %s and the %s tip %s off the floor; on the way they come down to %s and %s. "+
			"Along %s of each rocker the gap is less than %s: that is where fingers, toes and tails are caught "+
			"(1 in is our judgement).",
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
	text := "The two rockers are taken to be one curve and parallel, so it does not walk."
	if !w.OneCurve || w.Scrub > 0 {
		text = fmt.Sprintf("In a rock of 10 degrees either way it turns on the floor by %.2f degrees and back, "+
			"leans sideways by up to %.2f degrees, and each rocker is dragged %s.",
			math.Abs(w.Heading)*180/math.Pi, w.Lean*180/math.Pi, v.fine(w.Scrub))
	}
	return sheet.Block{Title: "Walks", Lines: sheet.Says(text,
		when(!math.IsNaN(w.Enough), "How equal is equal enough: "+
			"tail tips that stand %s apart in height drag each rocker 1/32 in (0.8 mm) in a rock "+
			"(our judgement of what nobody notices).", v.fine(w.Enough)),
		"Assumed: both rockers roll along their own line as far as they can; "+
			"how much of the drag slides and how much walks, friction decides.")}
}

// stops says what corners do: blocks and lips.
func (v voice) stops(r trial.Rocking) []sheet.Line {
	var lines []sheet.Line
	for _, s := range r.Stops {
		left := pick(math.IsNaN(s.Left), ", and the hilltop lies on it.", "; behind it "+v.degrees(s.Left)+" are left to the hilltop.")
		lines = append(lines, sheet.Line{Text: fmt.Sprintf("From a tilt of %s to %s it stands on a corner; "+
			"the righting arm goes from %s to %s there%s",
			v.towards(s.From), v.towards(s.To), v.length(s.ArmFirst), v.length(s.ArmLast), left)})
	}
	return lines
}
