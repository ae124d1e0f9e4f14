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
	return sheet.Sheet{Title: v.title(r.Report.Design), Source: source, Blocks: slices.Concat([]sheet.Block{{Lines: v.rocked(r)}},
		v.hardest(r), v.slopes(r), v.cradle(r), v.besides(r), []sheet.Block{{Lines: last}})}
}

// hardest returns how hard it was tried.
func (v voice) hardest(r trial.Rocking) []sheet.Block {
	return slices.Concat(v.survivals(r), v.fates(r), v.seating(r))
}

// besides returns what room the piece takes, and what else it does on its floor.
func (v voice) besides(r trial.Rocking) []sheet.Block {
	return append([]sheet.Block{v.room(r), v.sideways(r), v.walks(r)}, v.stops(r)...)
}

// rocked says what became of the motion that was asked for.
func (v voice) rocked(r trial.Rocking) []sheet.Line {
	d, t := r.Report.Design, r.Trace
	rest := r.Load.Balance.Rest.Tilt
	how := "let go " + v.degrees(math.Abs(r.Start.Tilt-rest)) + " from its rest"
	if r.Start.Tilt == rest {
		how = "from its rest"
	}
	if r.Start.Rate != 0 {
		how += fmt.Sprintf(", started at %s a second", v.degrees(math.Abs(r.Start.Rate)))
	}
	if p := r.Start.Push; p.Force != 0 {
		how += fmt.Sprintf(", pushed with %s for %s s", v.force(math.Abs(p.Force)), v.seconds(p.Time))
	}
	floor := "a floor that takes nothing and holds any force (name one: floor.surface)"
	if d.Floor.Surface != piece.NoSurface {
		floor = [...]string{piece.Hardwood: "hardwood", piece.Boards: "boards", piece.Rug: "a rug", piece.Stone: "stone"}[d.Floor.Surface]
		if r.FloorTaken {
			floor += ", taken for want of floor.surface (our judgement)"
		}
	} else if r.Losses != (motion.Losses{}) || d.Floor.Friction > 0 {
		floor = "the floor of your file"
	}
	lines := []sheet.Line{{Label: strings.ToUpper(brief(r.Load.Name)) + ":", Text: how + ", on " + floor + "."}, v.became(r)}
	say := func(there bool, format string, args ...any) {
		if there {
			lines = append(lines, sheet.Line{Text: fmt.Sprintf(format, args...)})
		}
	}
	say(!math.IsNaN(r.HalvesIn), "The tilt falls to half in %.0f rocks.", r.HalvesIn)
	say(d.Floor.Surface != piece.NoSurface, "The floor: friction %.2f, rolling loss %s %s. %s.", r.Load.Rig.Floor.Friction,
		quantity.Fine(r.Losses.Rolling, quantity.Length, v.units), v.unit(), upperFirst(r.Ground.Basis))
	say(t.Friction > 0, "The floor must hold a friction of %.2f, knocks counted.", t.Friction)
	return lines
}

// became says how the motion ended.
func (v voice) became(r trial.Rocking) sheet.Line {
	t := r.Trace
	turns := 0
	for _, e := range t.Events {
		if e.Kind == motion.Turns {
			turns++
		}
	}
	over := fmt.Sprintf("after %.2f s", t.Duration)
	switch t.End {
	case motion.Slipped:
		if t.LiftsOff() {
			return sheet.Wrong("The rocker lifts off " + over + ", at " + v.degrees(math.Abs(t.Last.Tilt)) + "; what comes then is outside the model.")
		}
		return sheet.Wrong(v.letsGo(t.Last.Tilt, t.Needs, r.Load.Rig.Floor.Friction) +
			" That is " + over + "; what comes of sliding is outside the model.")
	case motion.WentOver:
		return sheet.Wrong("It " + v.renamed.Replace(t.Outcome.String()) + ", " + pick(t.Duration == 0, "at once", over) + ".")
	case motion.AtRest:
		return sheet.Line{Text: fmt.Sprintf("It turns %s and is at rest after %.1f s.%s", counted(turns, "time"), t.Duration, v.nearest(t))}
	case motion.TooManySteps:
		return sheet.Wrong(fmt.Sprintf("Followed for %.2f s and given up after %s: it knocks too often to follow.",
			t.Duration, counted(t.Steps, "step")))
	}
	return sheet.Line{Text: fmt.Sprintf("It is still rocking after %.0f s, having turned %s.%s", t.Duration, counted(turns, "time"), v.nearest(t))}
}

// nearest says how near the motion came to going over.
func (v voice) nearest(t motion.Trace) string {
	if math.IsInf(t.Margin, 1) {
		return ""
	}
	return " At the nearest it kept " + v.degrees(t.Margin) + " before going over, and used " + percent(t.Lift) + " of the lift."
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
	if len(r.Survivals) == 0 {
		return nil
	}
	t := &sheet.Table{Caption: "Largest tilts, shoves and speeds, load by load", Over: []string{"", "let go", "let go", "", "which", "crest", ""},
		Head: []string{"WHAT IT SURVIVES", v.shortBack, v.shortForward, "shove", "ends in", "at", ""}}
	note := "Largest tilts from the rest, degrees, without losses; the least shove to the rear at the top of the back after which " +
		"it goes over one way or the other, or the floor lets go; the speed of the top of the back at which it goes over backwards."
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
	return []sheet.Block{{Table: t}, {Lines: sheet.Says(note)}}
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
		for _, f := range s.Fates {
			bad := f.Outcome != sim.Rocks
			if !bad && i != min(1, len(r.Survivals)-1) {
				continue
			}
			t.Mark(bad, brief(s.Load)+": "+v.renamed.Replace(f.Name), v.renamed.Replace(f.Outcome.String()), v.angle(f.Margin), percent(f.Lift))
		}
	}
	if len(t.Rows) == 0 {
		return nil
	}
	note := "Of the first load all trials, of the others those that end badly. Drops in: falls " + v.length(trial.DropHeight) +
		" on to the empty piece at its rest (our judgement). Kept: degrees to the hilltop at the nearest; lift: how much of it was used."
	return []sheet.Block{{Title: "Other trials", Table: t}, {Lines: sheet.Says(note)}}
}

// survives is the block of check: what the worst of the loads comes back from.
func (v voice) survives(a trial.Answer) []sheet.Block {
	s := a.Survives
	if s == nil {
		return nil
	}
	comes := upperFirst(brief(s.Load)) + " comes back when let go from up to " + v.angle(s.Back) + " degrees "
	shove := fmt.Sprintf("a shove of %s at the top of the back for %s s ends it (%s)", v.shove(*s), v.seconds(trial.ShoveTime), s.EndedBy)
	if s.ShoveNone {
		shove = "no shove that was tried at the top of the back takes it over"
	}
	text := fmt.Sprintf("%sback or %s forward; %s; %s of the top of the back takes it over. rockerwright rock says the rest.",
		comes, v.angle(s.Forward), shove, v.with(s.Speed, quantity.Speed))
	if math.IsNaN(s.Shove) {
		text = fmt.Sprintf("%s%s or %s %s.", comes, v.Back, v.angle(s.Forward), v.Forward)
	}
	lines := sheet.Says(text)
	for _, f := range s.Fates {
		name, text := upperFirst(v.renamed.Replace(f.Name))+": ", v.renamed.Replace(f.Outcome.String())+"."
		switch f.Outcome {
		case sim.Rocks:
			text = "comes back, " + v.degrees(f.Margin) + " to spare."
		case sim.FloorLetsGo:
			text = v.letsGo(f.Tilt, f.Needs, a.Loads[0].Rig.Floor.Friction)
		}
		lines = append(lines, sheet.Line{Text: name + text, Bad: f.Outcome != sim.Rocks})
	}
	return []sheet.Block{{Title: "What it survives", All: true, Lines: lines}}
}
