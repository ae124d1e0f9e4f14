package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/body/person"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/trial"
)

// verdict returns the three blocks of the answer: the owner, others, hazards.
func (v voice) verdict(a *trial.Answer) []sheet.Line {
	r := &a.Report
	var lines []sheet.Line
	empty := &r.Loads[0]
	switch alone := len(r.Loads) == 1; {
	case !empty.Upright():
		lines = []sheet.Line{{Label: "EMPTY:", Text: v.whyNot(empty) + ".", Bad: true}}
		if alone {
			return lines
		}
	case alone:
		return []sheet.Line{{Label: "THE PIECE ALONE", Text: v.stands(empty) + ". Nobody sits in this design: add [sitter]."}}
	}
	owner, others, hazards := byRole(r.Loads)
	lines = append(lines, v.group(v.owners, owner, a))
	if len(others) > 0 {
		lines = append(lines, v.group("OTHERS", others, a))
	}
	if len(hazards) > 0 {
		lines = append(lines, v.hazards(a, owner))
	}
	return lines
}

// byRole parts the loads with a person.
func byRole(loads []check.Load) (owner, others, hazards []*check.Load) {
	for i := range loads {
		l := &loads[i]
		switch {
		case l.Empty:
		case l.Role == piece.Owner:
			owner = append(owner, l)
		case l.Role == piece.Other:
			others = append(others, l)
		default:
			hazards = append(hazards, l)
		}
	}
	return owner, others, hazards
}

// group says how it stands with a group of loads.
func (v voice) group(label string, loads []*check.Load, a *trial.Answer) sheet.Line {
	line := sheet.Line{Label: label + ":"}
	if len(loads) == 0 {
		line.Text = "nobody is given in this design: add [sitter]."
		return line
	}
	var wrong []string
	if fallen := on(a, trial.Falls, loads); len(fallen) > 0 {
		text := v.whyNot(fallen[0])
		if len(fallen) > 1 {
			text += "; nor does it stand with " + list(names(fallen[1:], loads))
		}
		wrong = append(wrong, text)
	}
	if failing := names(on(a, trial.Fails, loads), loads); len(failing) > 0 {
		wrong = append(wrong, list(failing)+pick(len(failing) > 1, " are ", " is ")+v.fails)
	}
	first, back := loads[0], check.LeastBack(loads)
	keeps, limited := v.degrees(back.Balance.Back.Angle), back.Balance.Back.Exists()
	line.Text = v.stands(first)
	if label != "YOUR OWNER" {
		line.Text = brief(first.Sitter) + " " + line.Text
	}
	switch {
	case len(wrong) > 0:
		line.Text, line.Bad = strings.Join(wrong, "; "), true
	case !limited:
	case label == "OTHERS":
		line.Text = "all keep the limits; least: " + brief(back.Name) + ", " + keeps
	case back.Sitter != first.Sitter: // a number stands beside the name of its own person
		line.Text += "; least: " + brief(back.Name) + " keeps " + keeps
	default:
		line.Text += ", keeps " + keeps
		if back.Posture != person.Unsaid {
			line.Text += " " + back.Posture.String()
		}
	}
	line.Text += "."
	return line
}

// names returns what some loads of a group are called: where the owner is all of it, the postures.
func names(loads, group []*check.Load) []string {
	alone := !slices.ContainsFunc(group, func(l *check.Load) bool { return l.Role != piece.Owner || l.Sitter != group[0].Sitter })
	var names []string
	for _, l := range loads {
		names = append(names, pick(alone && l.Posture != person.Unsaid, l.Posture.String(), brief(l.Name)))
	}
	return names
}

// stands says how a load rests and how long it rocks.
func (v voice) stands(l *check.Load) string {
	way := pick(l.Balance.Rest.Tilt < 0, v.Forward, v.Back)
	where := "far " + way
	switch size := math.Abs(l.Balance.Rest.Tilt) * 180 / math.Pi; {
	case size < 0.5:
		where = "as drawn"
	case size < 4:
		where = "a little " + way
	case size < 10:
		where = "well " + way
	}
	if math.IsNaN(l.Balance.Period) {
		return "rests " + where + ", on a flat"
	}
	return fmt.Sprintf("rests %s, rocks in %s s", where, v.seconds(l.Balance.Period))
}

// hazards says what hazards do to the piece, those that take it over first; nothing is asked of them.
func (v voice) hazards(a *trial.Answer, owner []*check.Load) sheet.Line {
	var said []string
	over := false
	for _, f := range of(a, trial.Hazardous) {
		name := brief(f.Load.Name)
		if f.Load.Posture == person.ArmsBehindHead && len(owner) > 0 && f.Who == owner[0].Sitter {
			name = f.Load.Posture.String()
		}
		said, over = append(said, v.hazard(f, name)), over || !f.Load.Upright()
	}
	return sheet.Line{Label: "HAZARDS:", Text: strings.Join(said, "; ") + ".", Bad: over}
}

// whyNot says why a load has no rest.
func (v voice) whyNot(l *check.Load) string {
	who := "it"
	if !l.Empty {
		who = brief(l.Name) + ": it"
	}
	switch l.Balance.Outcome {
	case sim.Neutral:
		return who + " has no rest of its own: the balance point lies at the arc centre, " +
			"so it stays wherever it is put. A larger radius gives it a rest"
	case sim.Rocks:
		return who + " rests only upside down, on its two tips"
	}
	arm, _ := l.Rig.Righting(0)
	return fmt.Sprintf("%s does not stand: %s, so it goes over %s by itself", who, v.reason(l.Rig), pick(arm > 0, v.overForward, v.overBack))
}

// reason says where the balance point lies that the piece cannot stand: above the arc centre is above that of the arc
// that touches the floor as drawn.
func (v voice) reason(r sim.Rig) string {
	at, _ := r.Profile.Find(0)
	switch g := r.Body.Centre; {
	case g.X < r.Profile.Tail().X:
		return "the balance point lies beyond the " + v.tail + " tip"
	case g.X > r.Profile.Nose().X:
		return "the balance point lies beyond the " + v.nose + " tip"
	case g.Y > r.Profile.Bearing(at).Centre().Y:
		return "the balance point lies above the arc centre"
	case r.Floor.Slope != 0:
		return "the floor slopes more than this curve can answer"
	}
	return "the balance point lies where no part of the curve can carry it"
}

// Findings returns the sentence of each finding of an answer, in their order.
func Findings(a trial.Answer) []string {
	v := voiceOf(a.Design)
	said := make([]string, len(a.Findings))
	for i := range a.Findings {
		said[i] = v.finding(&a, &a.Findings[i])
	}
	return said
}

// finding says one finding by itself.
func (v voice) finding(a *trial.Answer, f *trial.Finding) string {
	text := ""
	switch {
	case f.Level == trial.Falls:
		text = v.whyNot(f.Load)
	case f.Limit != nil:
		cells := v.limit(*f.Limit)
		text = fmt.Sprintf("%s: want %s, got %s", cells[0], cells[1], cells[2])
	case f.Level == trial.Hazardous:
		text = v.hazard(f, brief(f.Load.Name))
	case f.Fit != nil:
		text = v.unfit(f.Fit)
	case f.Misfit != nil:
		text = brief(f.Who) + ": " + v.trouble(*f.Misfit)
	default:
		return v.warning(a, f).Text
	}
	return upperFirst(text) + "."
}

// of returns the findings of some levels.
func of(a *trial.Answer, levels ...trial.Level) []*trial.Finding {
	var list []*trial.Finding
	for i := range a.Findings {
		if f := &a.Findings[i]; slices.Contains(levels, f.Level) {
			list = append(list, f)
		}
	}
	return list
}

// on returns the loads, out of some, on which there are findings of a level, in the order of the loads.
func on(a *trial.Answer, level trial.Level, loads []*check.Load) []*check.Load {
	var found []*check.Load
	for _, l := range loads {
		if slices.ContainsFunc(of(a, level), func(f *trial.Finding) bool { return f.Load == l }) {
			found = append(found, l)
		}
	}
	return found
}

// warning says what is wrong with the piece itself.
func (v voice) warning(a *trial.Answer, f *trial.Finding) sheet.Line {
	wood := func(what, who, how string, least, most float64) sheet.Line {
		return sheet.Wrong(fmt.Sprintf("WOOD: %s, with %s %s, to %s of the bending strength of clear wood. Joints are not looked at.",
			what, brief(who), how, shares(least, most)))
	}
	switch b := f.Bent; {
	case f.Doubt != nil:
		return v.doubtful(*f.Doubt, f.Kind)
	case f.Rises != nil:
		return v.suspect(f.Who, f.Rises)
	case f.Curve != nil:
		return v.unlike(f.Curve)
	case f.Beyond != nil:
		return v.beyond(f.Beyond)
	case b != nil && a.Design.Rocker.Made == piece.Sawn:
		return wood("a sawn rocker comes at its short grain", f.Who, "on one end", b.Across.Least, b.Across.Most)
	case b != nil:
		return wood("a rocker comes", f.Who, "on one end", b.Along.Least, b.Along.Most)
	}
	return wood("the braces of the back come", f.Load.Name, "leaning on them", f.Load.Give.Least, f.Load.Give.Most)
}

// shares writes the range of a share.
func shares(least, most float64) string { return percent(least) + " to " + percent(most) }

// beyond says which legs stand beyond the rockers.
func (v voice) beyond(b *piece.Beyond) sheet.Line {
	end, stand := pick(b.Tail, v.tail, v.nose), "stand"
	if b.Taken {
		stand = "are not drawn; taken " + takenUnder(b.Which) + " they would stand"
	}
	return sheet.Wrong(fmt.Sprintf("LEGS: the %s legs %s %s beyond the %s: nothing carries them there. "+
		"Lengthen the %s, or draw them where they stand: [[leg]] at.", b.Which, stand, v.length(b.By), end, end))
}

// hazard says what a hazard of a name does.
func (v voice) hazard(f *trial.Finding, name string) string {
	switch b := f.Load.Balance; {
	case f.Load.Upright() && math.IsNaN(f.Got):
		return name + ": rests tilted " + v.degrees(math.Abs(b.Rest.Tilt))
	case f.Load.Upright():
		return name + ": " + v.length(f.Got) + " of lift left"
	case f.Side != check.NoSide:
		return name + ": goes over " + pick(f.Side == check.Forward, v.overForward, v.overBack)
	case !math.IsNaN(b.Rest.Tilt) && b.Outcome == sim.Rocks:
		return name + ": goes right over, on to its tips"
	}
	return v.whyNot(f.Load)
}

// unfits says on the first page whether the piece fits its owner, sitting at ease, and whom it does not fit.
func (v voice) unfits(a *trial.Answer) []sheet.Line {
	if len(a.Fit) == 0 {
		return sheet.Says(v.misfits(a))
	}
	var wrong []string
	for _, f := range of(a, trial.Unfit) {
		if f.Fit != nil {
			wrong = append(wrong, v.unfit(f.Fit))
		}
	}
	text := "every measure is within custom, sitting."
	if len(wrong) > 0 {
		text = strings.Join(wrong, "; ") + " (sitting); the rest within custom."
	}
	return sheet.Says("Fits the owner? "+upperFirst(text), v.misfits(a))
}

// misfits says who does not fit, and how; "" where all do.
func (v voice) misfits(a *trial.Answer) string {
	text, last := "", ""
	for _, f := range of(a, trial.Unfit) {
		switch {
		case f.Misfit == nil:
			continue
		case f.Who == last:
			text += ", "
		default:
			text += pick(text == "", "Does not fit ", "; ") + brief(f.Who) + ": "
		}
		text, last = text+v.trouble(*f.Misfit), f.Who
	}
	if text == "" {
		return ""
	}
	return text + "."
}

// unfit says by how much one measure is beyond custom.
func (v voice) unfit(f *check.Fit) string {
	what, _, _ := strings.Cut(f.What, ",")
	return fmt.Sprintf("%s %s too %s", what, v.length(math.Abs(f.Change)), pick(f.Change > 0, off[f.Key][1], off[f.Key][0]))
}
