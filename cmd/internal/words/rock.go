package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/sim"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// Rock returns the sheet of what happens when a piece is rocked, pushed and tried.
func Rock(r trial.Rocking, source string) Sheet {
	v := voiceOf(r.Report.Design)
	s := Sheet{Title: v.title(r.Report.Design), Source: source}
	s.Blocks = append(s.Blocks, Block{Lines: v.rocked(r)})
	s.Blocks = append(s.Blocks, v.tried(r)...)
	s.Blocks = append(s.Blocks, Block{Lines: []Line{
		{Text: "The piece and whoever sits in it are one rigid body that rolls without slipping; sliding, a rug's softness and people who move on are outside the model. Shoves last " + v.seconds(trial.ShoveTime) + " s (our judgement)."},
		v.foot(),
	}})
	return s
}

// tried returns all that was tried beside the motion, and what room it takes.
func (v voice) tried(r trial.Rocking) []Block {
	blocks := v.hardest(r)
	blocks = append(append(blocks, v.slopes(r)...), v.cradle(r)...)
	return append(blocks, v.besides(r)...)
}

// hardest returns how hard it was tried.
func (v voice) hardest(r trial.Rocking) []Block {
	return append(append(v.survivals(r), v.fates(r)...), v.seating(r)...)
}

// besides returns what room the piece takes, and what else it does on its floor.
func (v voice) besides(r trial.Rocking) []Block {
	return append([]Block{v.room(r), v.sidewaysBlock(r), v.walks(r)}, v.stops(r)...)
}

// rocked says what became of the motion that was asked for.
func (v voice) rocked(r trial.Rocking) []Line {
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
		floor = map[piece.Surface]string{piece.Hardwood: "hardwood", piece.Boards: "boards", piece.Rug: "a rug", piece.Stone: "stone"}[d.Floor.Surface]
		if r.FloorTaken {
			floor += ", taken for want of floor.surface (our judgement)"
		}
	} else if r.Losses != (motion.Losses{}) || d.Floor.Friction > 0 {
		floor = "the floor of your file"
	}
	lines := []Line{{Label: strings.ToUpper(brief(r.Load.Name)) + ":", Text: how + ", on " + floor + "."}, v.became(r)}
	if !math.IsNaN(r.HalvesIn) {
		lines = append(lines, Line{Text: fmt.Sprintf("The tilt falls to half in %.0f rocks.", r.HalvesIn)})
	}
	if d.Floor.Surface != piece.NoSurface {
		lines = append(lines, Line{Text: fmt.Sprintf("The floor: friction %.2f, rolling loss %s %s. %s.", r.Load.Rig.Floor.Friction, quantity.Fine(r.Losses.Rolling, quantity.Length, v.units), v.unit(), upperFirst(r.Ground.Basis))})
	}
	if t.Friction > 0 {
		lines = append(lines, Line{Text: fmt.Sprintf("The floor must hold a friction of %.2f, knocks counted.", t.Friction)})
	}
	return lines
}

// became says how the motion ended.
func (v voice) became(r trial.Rocking) Line {
	t := r.Trace
	turns := 0
	for _, e := range t.Events {
		if e.Kind == motion.Turns {
			turns++
		}
	}
	switch t.End {
	case motion.Slipped:
		if t.LiftsOff() {
			return wrong(fmt.Sprintf("The rocker lifts off after %.2f s, at %s; what comes then is outside the model.", t.Duration, v.degrees(math.Abs(t.Last.Tilt))))
		}
		return wrong(v.letsGo(t.Last.Tilt, t.Needs, r.Load.Rig.Floor.Friction) + fmt.Sprintf(" That is after %.2f s; what comes of sliding is outside the model.", t.Duration))
	case motion.WentOver:
		when := fmt.Sprintf("after %.2f s", t.Duration)
		if t.Duration == 0 {
			when = "at once"
		}
		return wrong(fmt.Sprintf("It %s, %s.", v.renamed.Replace(t.Outcome.String()), when))
	case motion.AtRest:
		return Line{Text: fmt.Sprintf("It turns %s and is at rest after %.1f s.%s", counted(turns, "time"), t.Duration, v.nearest(t))}
	case motion.TooManySteps:
		return wrong(fmt.Sprintf("Followed for %.2f s and given up after %s: it knocks too often to follow.", t.Duration, counted(t.Steps, "step")))
	}
	return Line{Text: fmt.Sprintf("It is still rocking after %.0f s, having turned %s.%s", t.Duration, counted(turns, "time"), v.nearest(t))}
}

// nearest says how near the motion came to going over.
func (v voice) nearest(t motion.Trace) string {
	if math.IsInf(t.Margin, 1) {
		return ""
	}
	return fmt.Sprintf(" At the nearest it kept %s before going over, and used %.0f %% of the lift.", v.degrees(t.Margin), 100*t.Lift)
}

// letsGo says that the floor cannot hold.
func (v voice) letsGo(tilt, needs, has float64) string {
	if math.IsInf(needs, 1) {
		return fmt.Sprintf("The rocker lifts off at %s.", v.degrees(math.Abs(tilt)))
	}
	return fmt.Sprintf("The floor lets go at %s; needs %.2f, floor has %.2f.", v.degrees(math.Abs(tilt)), needs, has)
}

// survivals returns the hardest that each load comes back from.
func (v voice) survivals(r trial.Rocking) []Block {
	if len(r.Survivals) == 0 {
		return nil
	}
	back, forward := v.shortBack, v.shortForward
	if !slices.ContainsFunc(r.Survivals, func(s trial.Survival) bool { return !math.IsNaN(s.Shove) }) { // nowhere to push
		t := &Table{Caption: "Largest tilts, load by load", Over: []string{"", "let go", "let go", ""}, Head: []string{"WHAT IT SURVIVES", back, forward, ""}}
		for _, s := range r.Survivals {
			t.add(brief(s.Load), v.angle(s.Back), v.angle(s.Forward), "")
		}
		return []Block{{Table: t}, {Lines: says("Largest tilts from the rest, degrees, without losses.")}}
	}
	t := &Table{Caption: "Largest tilts, shoves and speeds, load by load", Over: []string{"", "let go", "let go", "", "which", "crest", ""},
		Head: []string{"WHAT IT SURVIVES", back, forward, "shove", "ends in", "at", ""}}
	for _, s := range r.Survivals {
		cells := v.survived(s)
		t.add(brief(s.Load), cells[0], cells[1], cells[2], v.ends(s), cells[3], "")
	}
	note := "Largest tilts from the rest, degrees, without losses; the least shove to the rear at the top of the back after which it goes over one way or the other, or the floor lets go; the speed of the top of the back at which it goes over backwards."
	return []Block{{Table: t}, {Lines: says(note)}}
}

// ends says in a cell what ends the least shove.
func (v voice) ends(s trial.Survival) string {
	if s.EndedBy == "" {
		return "–"
	}
	return strings.TrimPrefix(v.renamed.Replace(s.EndedBy), "goes ")
}

func (v voice) survived(s trial.Survival) []string {
	shove := v.force(s.Shove)
	if s.ShoveNone && !math.IsNaN(s.Shove) {
		shove = "over " + shove
	}
	return []string{v.angle(s.Back), v.angle(s.Forward), shove, v.with(s.Speed, quantity.Speed), ""}
}

// fates returns the other trials: of each load those that end badly, and of the first that
// was tried all.
func (v voice) fates(r trial.Rocking) []Block {
	t := &Table{Head: []string{"Tried", "outcome", "kept", "lift"}}
	for i, s := range r.Survivals {
		for _, f := range s.Fates {
			bad := f.Outcome != sim.Rocks
			if !bad && i != min(1, len(r.Survivals)-1) {
				continue
			}
			t.mark(bad, brief(s.Load)+": "+v.renamed.Replace(f.Name), v.renamed.Replace(f.Outcome.String()), v.angle(f.Margin), fmt.Sprintf("%.0f %%", 100*f.Lift))
		}
	}
	if len(t.Rows) == 0 {
		return nil
	}
	note := "Of the first load all trials, of the others those that end badly. Drops in: falls " + v.length(trial.DropHeight) + " on to the empty piece at its rest (our judgement). Kept: degrees to the hilltop at the nearest; lift: how much of it was used."
	return []Block{{Title: "Other trials", Table: t}, {Lines: says(note)}}
}

// survives is the block of check: what the worst of the loads comes back from.
func (v voice) survives(a trial.Answer) []Block {
	s := a.Survives
	if s == nil {
		return nil
	}
	cells := v.survived(*s)
	shove := fmt.Sprintf("a shove of %s at the top of the back for %s s ends it (%s)", cells[2], v.seconds(trial.ShoveTime), s.EndedBy)
	if s.ShoveNone {
		shove = "no shove that was tried at the top of the back takes it over"
	}
	lines := says(fmt.Sprintf("%s comes back when let go from up to %s degrees back or %s forward; %s; %s of the top of the back takes it over. rockerwright rock says the rest.",
		upperFirst(brief(s.Load)), cells[0], cells[1], shove, cells[3]))
	if math.IsNaN(s.Shove) {
		lines = says(fmt.Sprintf("%s comes back when let go from up to %s degrees %s or %s %s.", upperFirst(brief(s.Load)), cells[0], v.Back, cells[1], v.Forward))
	}
	for _, f := range s.Fates {
		switch f.Outcome {
		case sim.Rocks:
			lines = append(lines, Line{Text: fmt.Sprintf("%s: comes back, %s to spare.", upperFirst(v.renamed.Replace(f.Name)), v.degrees(f.Margin))})
		case sim.FloorLetsGo:
			lines = append(lines, wrong(upperFirst(v.renamed.Replace(f.Name))+": "+v.letsGo(f.Tilt, f.Needs, a.Loads[0].Rig.Floor.Friction)))
		default:
			lines = append(lines, wrong(upperFirst(v.renamed.Replace(f.Name))+": "+v.renamed.Replace(f.Outcome.String())+"."))
		}
	}
	return []Block{{Title: "What it survives", All: true, Lines: lines}}
}
