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
	w := wordingOf(r.Report.Design)
	last := sheet.Says("The piece and whoever sits in it are one rigid body that rolls without slipping; "+
		"sliding and a rug's softness are outside the model, and so are people who move but as is said above. "+
		"Shoves last "+seconds(w.units, trial.ShoveTime)+" s (our judgement).", w.disclaimer)
	return sheet.Sheet{Title: title(&r.Report.Balanced), Source: source,
		Blocks: slices.Concat(titled("", rocked(w, r)), hardest(w, r),
			titled("On a slope", slopes(w.units, r)), titled(string(w.marked), cradle(w, r)), besides(w, r), titled("", last))}
}

// hardest returns how hard it was tried.
func hardest(w wording, r trial.Rocking) []sheet.Block {
	return slices.Concat(fates(w, r), survivals(w, r), rockedHard(w, r), trodden(w, r), titled("Lever arms of published tests", seating(w, r)))
}

// rocked says what became of the motion that was asked for.
func rocked(w wording, r trial.Rocking) []sheet.Line {
	d, t := r.Report.Design, r.Trace
	push, surface := r.Start.Push, d.Floor.Surface
	how := when(r.Released() != 0, "let go %s ", w.degrees(unsigned(r.Released()))) + "from its rest" +
		when(r.Start.Rate != 0, ", started at %s a second", w.degrees(unsigned(r.Start.Rate))) +
		when(r.Start.Feet.Force != 0, ", pushed with the feet with %s", force(w.units, r.Start.Feet.Force)) +
		when(push.Force != 0, ", pushed with %s for %s s", force(w.units, unsigned(push.Force)), seconds(w.units, push.Time))
	floor := "a floor that takes nothing and holds any force (name one: surface, under [floor])"
	if surface != piece.NoSurface {
		floor = [...]string{piece.Hardwood: "hardwood", piece.Boards: "boards", piece.Rug: "a rug", piece.Stone: "stone"}[surface] +
			when(r.FloorTaken, ", taken, for no surface is named under [floor] (our judgement)")
	} else if r.Losses != (motion.Losses{}) || d.Floor.Friction > 0 {
		floor = "the floor of your file"
	}
	done := sheet.Line{Label: strings.ToUpper(brief(r.Load.Name)) + ":", Text: how + ", on " + floor + "."}
	return append([]sheet.Line{done, became(w, r)}, sheet.Says(
		when(!math.IsNaN(r.HalvesIn), "The tilt falls to half in %.0f rocks.", r.HalvesIn),
		when(surface != piece.NoSurface, "The floor: friction %.2f, rolling loss %s %s. %s.", r.Load.Rig.Floor.Friction,
			quantity.Fine(r.Losses.Rolling, quantity.Length, w.System), w.unit(), upperFirst(r.Ground.Basis)),
		when(t.Friction > 0, "The floor must hold a friction of %.2f, knocks counted.", t.Friction))...)
}

func became(w wording, r trial.Rocking) sheet.Line {
	t, turns := r.Trace, counted(r.Turns(), "time")
	known := r.Load.Empty || r.Losses.Viscous > 0
	unknown := when(!known, " What body and cushion take is not known until rocks are counted (halves, under [floor]): "+
		"this is no forecast of how long it rocks.")
	nearest := when(!math.IsInf(t.Margin, 1), " At the nearest it kept %s before going over, and used %s of the lift.",
		w.degrees(t.Margin), percent(t.Lift))
	over := fmt.Sprintf("after %.2f s", t.Duration)
	switch t.End {
	case motion.Slipped:
		if t.LiftsOff() {
			return sheet.Wrong("The rocker lifts off " + over + ", at " + w.degrees(unsigned(t.Last.Tilt)) +
				"; what comes then is outside the model.")
		}
		return sheet.Wrong(letsGo(w.units, t.Last.Tilt, t.Needs, r.Load.Rig.Floor.Friction) +
			" That is " + over + "; what comes of sliding is outside the model.")
	case motion.WentOver:
		return sheet.Wrong("It " + w.renamed.Replace(t.Outcome.String()) + ", " + pick(t.Duration == 0, "at once",
			over) + ".")
	case motion.AtRest:
		return sheet.Line{Text: fmt.Sprintf("It turns %s and is at rest after %.1f s.%s%s",
			turns, t.Duration, nearest, unknown)}
	case motion.TooManySteps:
		return sheet.Wrong(fmt.Sprintf("Followed for %.2f s and given up after %s: it knocks too often to follow.",
			t.Duration, counted(t.Steps, "step")))
	}
	return sheet.Line{Text: fmt.Sprintf("It is still rocking after %.0f s, having turned %s.%s%s",
		t.Duration, turns, nearest, unknown)}
}

// letsGo says that the floor cannot hold.
func letsGo(u units, tilt, needs, has float64) string {
	if math.IsInf(needs, 1) {
		return fmt.Sprintf("The rocker lifts off at %s.", u.degrees(unsigned(tilt)))
	}
	return fmt.Sprintf("The floor lets go at %s; needs %.2f, floor has %.2f.", u.degrees(unsigned(tilt)), needs, has)
}

// survivals returns the hardest that each load comes back from.
func survivals(w wording, r trial.Rocking) []sheet.Block {
	t := &sheet.Table{Caption: "Largest tilts, shoves and speeds, load by load",
		Over: []string{"", "let go", "let go", "", "which", "crest", ""},
		Head: []string{"WHAT IT SURVIVES", w.shortBack, w.shortForward, "shove", "ends in", "at", ""}}
	note := "Largest tilts from the rest, degrees, without losses; the least shove to the rear at the top of the " +
		"back after which it goes over one way or the other, or the floor lets go; the speed of the top of the " +
		"back at which it goes over backwards."
	pushed := slices.ContainsFunc(r.Survivals, func(s trial.Survival) bool { return !math.IsNaN(s.Shove) })
	if !pushed { // nowhere to push
		t.Caption, t.Over, t.Head = "Largest tilts, load by load", append(t.Over[:3], ""), append(t.Head[:3], "")
		note = "Largest tilts from the rest, degrees, without losses."
	}
	for _, s := range r.Survivals {
		cells := []string{brief(s.Load), w.angle(s.Back), w.angle(s.Forward)}
		if pushed {
			ends := cmp.Or(strings.TrimPrefix(w.renamed.Replace(s.EndedBy), "goes "), "–")
			cells = append(cells, shove(w.units, s), ends, w.with(s.Speed, quantity.Speed))
		}
		t.Add(append(cells, "")...)
	}
	return below(sheet.Block{Table: t}, note)
}

// shove writes the least shove that ends in going over, or the largest that was tried.
func shove(u units, s trial.Survival) string {
	return pick(s.ShoveNone && !math.IsNaN(s.Shove), "over ", "") + force(u, s.Shove)
}

// fates returns the other trials: of each load those that end badly, and of the first that was tried all.
func fates(w wording, r trial.Rocking) []sheet.Block {
	var blocks []sheet.Block
	parts, drops := false, false
	for _, use := range []trial.Use{trial.Daily, trial.Play, trial.Stunt} {
		t := &sheet.Table{Head: []string{"TRIED, " + strings.ToUpper(use.String()), "outcome", "kept", "lift"}}
		for i, s := range r.Survivals {
			for _, f := range s.Trials {
				bad := f.Outcome != sim.Rocks && f.Outcome != sim.FloorLetsGo
				if f.Use == use && (bad || i == min(1, len(r.Survivals)-1)) {
					parts, drops = parts || f.Share < 1, drops || f.Name == trial.DropsIn
					t.Mark(bad, who(r.Report.Load(s.Load))+": "+w.renamed.Replace(f.Name)+when(f.Share < 1, " (%s)", percent(f.Share)),
						ended(w, f.Outcome.String()), w.angle(f.Margin), percent(f.Lift))
				}
			}
		}
		if len(t.Rows) > 0 {
			blocks = append(blocks, sheet.Block{Table: t})
		}
	}
	if len(blocks) == 0 {
		return nil
	}
	return append(blocks, sheet.Block{Lines: sheet.Says(
		"Of all but the first load only what goes over. " +
			when(drops, "Drops in: falls %s on to the empty piece at its rest (our judgement). ", w.length(trial.DropHeight)) +
			"Kept: degrees to the hilltop at the nearest; lift: how much of it was used." +
			when(parts, " In brackets: that is the least of it that goes over; over a flat it comes back from more."))})
}

// survives is the block of check: what the worst of the loads comes back from.
func survives(w wording, a trial.Answer) []sheet.Block {
	s := a.Survives
	if s == nil {
		return nil
	}
	shove := fmt.Sprintf("a shove of %s at the top of the back for %s s ends it (%s)",
		shove(w.units, *s), seconds(w.units, trial.ShoveTime), s.EndedBy)
	if s.ShoveNone {
		shove = "no shove that was tried at the top of the back takes it over"
	}
	back, forward := w.Back, w.Forward+"."
	if !math.IsNaN(s.Shove) {
		back, forward = "back", fmt.Sprintf("forward; %s; %s of the top of the back takes it over. "+
			"rockerwright rock says the rest.",
			shove, w.with(s.Speed, quantity.Speed))
	}
	lines := sheet.Says(fmt.Sprintf("%s comes back when let go from up to %s degrees %s or %s %s",
		upperFirst(brief(s.Load)), w.angle(s.Back), back, w.angle(s.Forward), forward))
	for _, f := range s.Trials {
		text := w.renamed.Replace(f.Outcome.String()) + "."
		switch f.Outcome {
		case sim.Rocks:
			text = "comes back, " + w.degrees(f.Margin) + " to spare."
		case sim.FloorLetsGo:
			text = letsGo(w.units, f.Tilt, f.Needs, a.Loads[0].Rig.Floor.Friction)
		}
		lines = append(lines, sheet.Line{Text: upperFirst(w.renamed.Replace(f.Name)) + ": " + text,
			Bad: f.Outcome != sim.Rocks})
	}
	return []sheet.Block{{Title: "What it survives", All: true, Lines: lines}}
}

// seating returns the lever arms of published tests, with how far each is to be trusted.
func seating(w wording, r trial.Rocking) []sheet.Line {
	switch {
	case r.Report.ForAChild():
		return sheet.Says("Not tried: the tests that were found load a seat with a grown-up's 600 N (135 lb), " +
			"and this is a child's " + w.piece + ". They say nothing of it, either way.")
	case len(r.Seating) == 0:
		return nil
	}
	lines := sheet.Says("Not a test certificate: the lever arms of published seating tests, " +
		"tried on the piece alone with their weight on its seat. The tests are made on the finished piece by their own rules.")
	for _, s := range r.Seating {
		text, tips := force(w.units, unsigned(s.Force))+" for 5 s: ", force(w.units, s.Tips)+" put on gently"
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
func slopes(u units, r trial.Rocking) []sheet.Line {
	var lines []sheet.Line
	for i, s := range r.Slopes {
		if i == 0 {
			lines = sheet.Says("On a slope of 10 degrees (loads and slope: EN 71-1, 8.23.1, read in the text; " +
				"not a test certificate):")
		}
		stands := pick(s.Rests, "stands, "+u.degrees(s.Margin)+" before going over.", "goes over.")
		lines = append(lines, sheet.Line{Text: s.Name + ": " + stands, Bad: !s.Rests})
	}
	return lines
}

// cradle says how a cradle rests against the tilts of 5 and 10 degrees, and what its ends limit.
func cradle(w wording, r trial.Rocking) []sheet.Line {
	if w.marked == "" {
		return nil
	}
	right, left := r.Report.OnTips()
	lines := sheet.Says(fmt.Sprintf("The curve ends at a tilt of %s %s and %s %s, where it stands on a tip; "+
		"nothing before that stops it. "+
		"A limit of 5 or 10 degrees needs stops.", w.degrees(left), w.Back, w.degrees(right), w.Forward))
	for i := range r.Report.Loads {
		l := &r.Report.Loads[i]
		if !l.Upright() {
			continue
		}
		tilt := unsigned(l.Balance.Rest.Tilt)
		word := "within 5 degrees"
		switch {
		case tilt > 10*quantity.Deg:
			word = "beyond 10 degrees"
		case tilt > 5*quantity.Deg:
			word = "between 5 and 10 degrees"
		}
		text := upperFirst(brief(l.Name)) + " rests at " + w.degrees(tilt) + ": " + word + "."
		lines = append(lines, sheet.Line{Text: text, Bad: tilt > 5*quantity.Deg})
	}
	return lines
}
