package words

import (
	"fmt"
	"math"

	"rockerwright/sim"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// Rock returns the sheet of what happens when a piece is rocked, pushed and tried.
func Rock(r piece.Rocking, source string) Sheet {
	v := voiceOf(r.Report.Design)
	s := Sheet{Title: v.title(r.Report.Design), Source: source}
	s.Blocks = append(s.Blocks, Block{Lines: v.rocked(r)})
	s.Blocks = append(s.Blocks, v.survivals(r)...)
	s.Blocks = append(s.Blocks, v.fates(r)...)
	s.Blocks = append(s.Blocks, v.seating(r)...)
	s.Blocks = append(s.Blocks, v.slopes(r)...)
	s.Blocks = append(s.Blocks, v.cradle(r)...)
	s.Blocks = append(s.Blocks, v.room(r), v.sidewaysBlock(r), v.walks(r))
	s.Blocks = append(s.Blocks, v.stops(r)...)
	s.Blocks = append(s.Blocks, Block{Lines: []Line{
		{Text: "The piece and whoever sits in it are one rigid body that rolls without slipping; sliding, a rug's softness and people who move on are outside the model. Shoves last " + v.seconds(piece.ShoveTime) + " s (our judgement)."},
		v.disclaimer(),
	}})
	return s
}

// rocked says what became of the motion that was asked for.
func (v voice) rocked(r piece.Rocking) []Line {
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
		how += fmt.Sprintf(", pushed with %s at the top of the back for %s s", v.with(math.Abs(p.Force), quantity.Force), v.seconds(p.Time))
	}
	floor := "a floor that takes nothing and holds any force (name one: floor.surface)"
	if d.Floor.Surface != piece.NoSurface {
		floor = d.Floor.Surface.String()
	} else if r.Losses != (motion.Losses{}) || d.Floor.Friction > 0 {
		floor = "the floor of your file"
	}
	lines := []Line{{Label: upper(plain(short(r.Load.Name))) + ":", Text: how + ", on " + floor + "."}, v.became(r)}
	if !math.IsNaN(r.HalvesIn) {
		lines = append(lines, Line{Text: fmt.Sprintf("The tilt falls to half in %.0f rocks.", r.HalvesIn)})
	}
	if d.Floor.Surface != piece.NoSurface {
		lines = append(lines, Line{Text: fmt.Sprintf("The floor: friction %.2f, rolling loss %s. %s.", r.Load.Rig.Floor.Friction, fineWith(r.Losses.Rolling, quantity.Length, v.units), upperFirst(r.Ground.Basis))})
	}
	if t.Friction > 0 {
		lines = append(lines, Line{Text: fmt.Sprintf("The floor must hold a friction of %.2f, knocks counted.", t.Friction)})
	}
	return lines
}

// became says how the motion ended.
func (v voice) became(r piece.Rocking) Line {
	t := r.Trace
	turns := 0
	for _, e := range t.Events {
		if e.Kind == motion.Turns {
			turns++
		}
	}
	switch t.End {
	case motion.Slipped:
		return Line{Text: v.letsGo(t.Last.Tilt, t.Needs, r.Load.Rig.Floor.Friction) + fmt.Sprintf(" That is after %.2f s; what comes of sliding is outside the model.", t.Duration), Bad: true}
	case motion.WentOver:
		return Line{Text: fmt.Sprintf("It %s, after %.2f s.", t.Outcome, t.Duration), Bad: true}
	case motion.AtRest:
		return Line{Text: fmt.Sprintf("It turns %d times and is at rest after %.1f s.%s", turns, t.Duration, v.nearest(t))}
	case motion.TooManySteps:
		return Line{Text: fmt.Sprintf("Followed for %.2f s and given up after %d steps: it knocks too often to follow.", t.Duration, t.Steps), Bad: true}
	}
	return Line{Text: fmt.Sprintf("It is still rocking after %.0f s, having turned %d times.%s", t.Duration, turns, v.nearest(t))}
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
	need := fmt.Sprintf("needs %.2f", needs)
	if math.IsInf(needs, 1) {
		need = "it would have to pull the rocker down"
	}
	return fmt.Sprintf("The floor lets go at %s; %s, floor has %.2f.", v.degrees(math.Abs(tilt)), need, has)
}

// survivals returns the hardest that each load comes back from.
func (v voice) survivals(r piece.Rocking) []Block {
	if len(r.Survivals) == 0 {
		return nil
	}
	t := &Table{Head: []string{"WHAT IT SURVIVES", "let go back", "let go forward", "shove", "crest at", ""}}
	for _, s := range r.Survivals {
		t.Rows = append(t.Rows, Row{Cells: append([]string{plain(short(s.Load))}, v.survived(s)...)})
	}
	note := "Largest tilts from the rest, degrees, without losses; the least shove to the rear at the top of the back after which it goes over one way or the other; the speed of the top of the back at which it goes over backwards."
	return []Block{{Table: t}, {Lines: []Line{{Text: note}}}}
}

func (v voice) survived(s piece.Survival) []string {
	shove := v.with(s.Shove, quantity.Force)
	if s.ShoveNone && !math.IsNaN(s.Shove) {
		shove = "over " + shove
	}
	return []string{v.shop(s.Back, quantity.Angle), v.shop(s.Forward, quantity.Angle), shove, v.with(s.Speed, quantity.Speed), ""}
}

// fates returns the other trials: of each load those that end badly, and of the first that
// was tried all.
func (v voice) fates(r piece.Rocking) []Block {
	t := &Table{Head: []string{"Tried", "outcome", "kept", "of the lift", "friction"}}
	for i, s := range r.Survivals {
		for _, f := range s.Fates {
			bad := f.Outcome != sim.Rocks
			if !bad && i != min(1, len(r.Survivals)-1) {
				continue
			}
			t.Rows = append(t.Rows, Row{Cells: []string{plain(short(s.Load)) + ": " + f.Name, f.Outcome.String(), v.shop(f.Margin, quantity.Angle), fmt.Sprintf("%.0f %%", 100*f.Lift), fmt.Sprintf("%.2f", f.Friction)}, Bad: bad})
		}
	}
	if len(t.Rows) == 0 {
		return nil
	}
	return []Block{{Title: "OTHER TRIALS", Table: t}}
}

// seating returns the lever arms of published tests, with how far each is to be trusted.
func (v voice) seating(r piece.Rocking) []Block {
	if len(r.Seating) == 0 {
		return nil
	}
	lines := []Line{{Text: "Not a test certificate: the lever arms of published seating tests, tried on the piece alone with their weight on its seat. The tests are made on the finished piece by their own rules."}}
	for _, s := range r.Seating {
		text := fmt.Sprintf("%s (%s; %s): ", upperFirst(s.Name), s.Source, s.Confidence)
		switch {
		case s.Outcome != sim.Rocks && math.IsNaN(s.Force), s.Tips == 0 && s.Outcome == sim.NoRest:
			text += "does not stand under the weight alone."
		case math.IsNaN(s.Force):
			text += "goes over at a slow " + v.with(s.Tips, quantity.Force) + "; the force asked was not seen."
		case s.Outcome == sim.Rocks:
			text += fmt.Sprintf("%s for 5 s: comes back; goes over at a slow %s.", v.with(math.Abs(s.Force), quantity.Force), v.with(s.Tips, quantity.Force))
		default:
			text += fmt.Sprintf("%s for 5 s: %s; a slow %s takes it over.", v.with(math.Abs(s.Force), quantity.Force), s.Outcome, v.with(s.Tips, quantity.Force))
		}
		lines = append(lines, Line{Text: text, Bad: s.Outcome != sim.Rocks})
	}
	return []Block{{Title: "LEVER ARMS OF PUBLISHED TESTS", Lines: lines}}
}

// slopes returns a horse on its slope.
func (v voice) slopes(r piece.Rocking) []Block {
	if len(r.Slopes) == 0 {
		return nil
	}
	lines := []Line{{Text: "On a slope of 10 degrees (loads and slope: EN 71-1, 8.23.1, read in the text; not a test certificate):"}}
	for _, s := range r.Slopes {
		if s.Rests {
			lines = append(lines, Line{Text: fmt.Sprintf("%s: stands, %s before going over.", s.Name, v.degrees(s.Margin))})
		} else {
			lines = append(lines, Line{Text: s.Name + ": goes over.", Bad: true})
		}
	}
	return []Block{{Title: "ON A SLOPE", Lines: lines}}
}

// cradle returns a cradle against the tilts of 5 and 10 degrees, and what its ends limit.
func (v voice) cradle(r piece.Rocking) []Block {
	if v.kind != piece.Cradle {
		return nil
	}
	p := r.Report.Edge
	right, left := -p.Bearing(0).To, p.Bearing(p.Bearings()-1).From
	lines := []Line{{Text: fmt.Sprintf("The curve ends at a tilt of %s %s and %s %s, where it stands on a tip; nothing before that stops it. A limit of 5 or 10 degrees needs stops.",
		v.degrees(left), v.backwards(), v.degrees(right), v.forwards())}}
	for i := range r.Report.Loads {
		l := &r.Report.Loads[i]
		if !l.Upright() {
			continue
		}
		tilt := math.Abs(l.Balance.Rest.Tilt)
		word := "within 5 degrees"
		switch {
		case tilt > 10*math.Pi/180:
			word = "beyond 10 degrees"
		case tilt > 5*math.Pi/180:
			word = "between 5 and 10 degrees"
		}
		lines = append(lines, Line{Text: fmt.Sprintf("%s rests at %s: %s.", upperFirst(plain(short(l.Name))), v.degrees(tilt), word), Bad: tilt > 5*math.Pi/180})
	}
	return []Block{{Title: "AGAINST 5 AND 10 DEGREES", Lines: lines}}
}

// room says what room the piece needs, and where something is caught.
func (v voice) room(r piece.Rocking) Block {
	n := r.Room
	_, tail := v.tips()
	nose, _ := v.tips()
	text := fmt.Sprintf("Rocked between %s %s and %s %s, it reaches %s behind and %s ahead of where its low point touches",
		v.degrees(math.Abs(n.From)), v.forwards(), v.degrees(math.Abs(n.To)), v.backwards(), v.with(n.Behind, quantity.Length), v.with(n.Front, quantity.Length))
	if !math.IsNaN(n.Crest) {
		text += fmt.Sprintf(" (the top of the back %s behind)", v.with(n.Crest, quantity.Length))
	}
	text += "."
	caught := fmt.Sprintf("At rest the %s tip stands %s and the %s tip %s off the floor; on the way they come down to %s and %s. Along %s of each rocker the gap is less than %s: that is where fingers, toes and tails are caught (1 in is our judgement).",
		tail, v.with(n.TailAtRest, quantity.Length), nose, v.with(n.NoseAtRest, quantity.Length), v.with(math.Max(0, n.TailLow), quantity.Length), v.with(math.Max(0, n.NoseLow), quantity.Length),
		v.with(n.Caught, quantity.Length), v.with(piece.CaughtUnder, quantity.Length))
	return Block{Title: "ROOM", Lines: []Line{{Text: text}, {Text: caught}}}
}

// sidewaysBlock returns the margins to the side.
func (v voice) sidewaysBlock(r piece.Rocking) Block {
	if len(r.Sideways) == 0 {
		return Block{Title: "SIDEWAYS", Lines: []Line{{Text: "Give rocker.track or seat.width to learn how near it is to going over sideways."}}}
	}
	t := &Table{Head: []string{"Before going over one rocker", "degrees", "lift", ""}}
	for _, s := range r.Sideways {
		t.Rows = append(t.Rows, Row{Cells: []string{plain(short(s.Load)), v.shop(s.Angle, quantity.Angle), v.shop(s.Lift, quantity.Length), quantity.Unit(quantity.Length, v.units)}, Bad: s.Angle == 0})
	}
	return Block{Title: "SIDEWAYS", Table: t}
}

// walks says how the piece walks.
func (v voice) walks(r piece.Rocking) Block {
	w := r.Walk
	if w == nil {
		return Block{Title: "WALKS", Lines: []Line{{Text: "Give rocker.track or seat.width to learn how unequal rockers walk."}}}
	}
	text := "The two rockers are taken to be one curve and parallel, so it does not walk."
	if !w.OneCurve || w.Scrub > 0 {
		text = fmt.Sprintf("In a rock of 10 degrees either way it turns on the floor by %.2f degrees and back, leans sideways by up to %.2f degrees, and each rocker is dragged %s.",
			math.Abs(w.Heading)*180/math.Pi, w.Lean*180/math.Pi, fineWith(w.Scrub, quantity.Length, v.units))
	}
	lines := []Line{{Text: text}}
	if !math.IsNaN(w.Enough) {
		lines = append(lines, Line{Text: fmt.Sprintf("How equal is equal enough: tail tips that stand %s apart in height drag each rocker 1/32 in (0.8 mm) in a rock (our judgement of what nobody notices).", fineWith(w.Enough, quantity.Length, v.units))})
	}
	lines = append(lines, Line{Text: "Assumed: both rockers roll along their own line as far as they can; how much of the drag slides and how much walks, friction decides."})
	return Block{Title: "WALKS", Lines: lines}
}

// stops says what corners do: blocks and lips.
func (v voice) stops(r piece.Rocking) []Block {
	if len(r.Stops) == 0 {
		return nil
	}
	var lines []Line
	for _, s := range r.Stops {
		lines = append(lines, Line{Text: fmt.Sprintf("From a tilt of %s to %s it stands on a corner; the righting arm goes from %s to %s there.",
			v.towards(s.From), v.towards(s.To), v.with(s.ArmFirst, quantity.Length), v.with(s.ArmLast, quantity.Length))})
	}
	return []Block{{Title: "STOPS AND CORNERS", Lines: lines}}
}

// survives is the block of check: what the worst of the loads comes back from.
func (v voice) survives(r piece.Report) []Block {
	s := r.Survives
	if s == nil {
		return nil
	}
	cells := v.survived(*s)
	lines := []Line{{Text: fmt.Sprintf("%s comes back when let go from up to %s degrees back or %s forward; a shove of %s at the top of the back for %s s takes it over, or %s of the top of the back. rockerwright rock says the rest.",
		upperFirst(plain(short(s.Load))), cells[0], cells[1], cells[2], v.seconds(piece.ShoveTime), cells[3])}}
	if math.IsNaN(s.Shove) {
		lines = []Line{{Text: fmt.Sprintf("%s comes back when let go from up to %s degrees %s or %s %s.", upperFirst(plain(short(s.Load))), cells[0], v.backwards(), cells[1], v.forwards())}}
	}
	for _, f := range s.Fates {
		switch f.Outcome {
		case sim.Rocks:
			lines = append(lines, Line{Text: fmt.Sprintf("%s: comes back, %s to spare.", upperFirst(f.Name), v.degrees(f.Margin))})
		case sim.FloorLetsGo:
			lines = append(lines, Line{Text: upperFirst(f.Name) + ": " + v.letsGo(f.Tilt, f.Needs, r.Loads[0].Rig.Floor.Friction), Bad: true})
		default:
			lines = append(lines, Line{Text: upperFirst(f.Name) + ": " + f.Outcome.String() + ".", Bad: true})
		}
	}
	return []Block{{Title: "WHAT IT SURVIVES", All: true, Lines: lines}}
}
