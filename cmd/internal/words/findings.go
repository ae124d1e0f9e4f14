package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/trial"
)

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
