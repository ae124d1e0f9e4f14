package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
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
	switch {
	case f.Level == trial.Falls:
		return upperFirst(v.whyNot(f.Load)) + "."
	case f.Limit != nil:
		cells := v.limitRow(*f.Limit).Cells
		return fmt.Sprintf("%s: want %s, got %s.", upperFirst(cells[0]), cells[1], cells[2])
	case f.Level == trial.Hazardous:
		return upperFirst(v.hazard(f, plain(short(f.Load.Name)))) + "."
	case f.Fit != nil:
		return upperFirst(v.unfit(f.Fit)) + "."
	case f.Misfit != nil:
		return upperFirst(plain(short(f.Who))+": "+v.trouble(*f.Misfit)) + "."
	}
	return v.warning(a, f).Text
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

// warnings says what is wrong with the piece itself, and what of it is only estimated.
func (v voice) warnings(a *trial.Answer) []Line {
	lines := make([]Line, 0, 4)
	for _, f := range of(a, trial.Warns) {
		lines = append(lines, v.warning(a, f))
	}
	return lines
}

// warning says one of them.
func (v voice) warning(a *trial.Answer, f *trial.Finding) Line {
	wood := func(what, who, share string) Line {
		return Line{Text: fmt.Sprintf("WOOD: %s, with %s %s of the bending strength of clear wood. Joints are not looked at.", what, plain(short(who)), share), Bad: true}
	}
	switch {
	case f.Doubt != nil:
		return v.doubtful(*f.Doubt, f.Kind)
	case f.Rises != nil:
		return v.suspect(f.Who, f.Rises)
	case f.Curve != nil:
		return v.unlike(f.Curve)
	case f.Beyond != nil:
		return v.beyond(f.Beyond)
	case f.Bent != nil && a.Design.Rocker.Made == piece.Sawn:
		return wood("a sawn rocker comes at its short grain", f.Who, "on one end, to "+ofStrength(f.Bent.Across))
	case f.Bent != nil:
		return wood("a rocker comes", f.Who, "on one end, to "+ofStrength(f.Bent.Along))
	}
	return wood("the braces of the back come", f.Load.Name, "leaning on them, to "+percent(f.Load.Give.Least)+" to "+percent(f.Load.Give.Most))
}

// beyond says which legs stand beyond the rockers.
func (v voice) beyond(b *piece.Beyond) Line {
	end := pick(b.Tail, v.tail, v.nose)
	stand := "stand"
	if b.Taken {
		stand = "are not drawn; taken " + takenUnder(b.Which) + " they would stand"
	}
	return Line{Text: fmt.Sprintf("LEGS: the %s legs %s %s beyond the %s: nothing carries them there. Lengthen the %s, or draw them where they stand: [[leg]] at.",
		b.Which, stand, v.with(b.By, quantity.Length), end, end), Bad: true}
}

// hazard says what a hazard of a name does.
func (v voice) hazard(f *trial.Finding, name string) string {
	switch b := f.Load.Balance; {
	case f.Load.Upright() && math.IsNaN(f.Got):
		return fmt.Sprintf("%s: rests tilted %s", name, v.degrees(math.Abs(b.Rest.Tilt)))
	case f.Load.Upright():
		return fmt.Sprintf("%s: %s of lift left", name, v.with(f.Got, quantity.Length))
	case f.Side != check.NoSide:
		return fmt.Sprintf("%s: goes over %s", name, pick(f.Side == check.Forward, v.overForward, v.overBack))
	case !math.IsNaN(b.Rest.Tilt) && b.Outcome.String() == "rocks":
		return name + ": goes right over, on to its tips"
	}
	return v.whyNot(f.Load)
}

// unfits says on the first page whether the piece fits its owner, sitting at ease, and whom it does not fit.
func (v voice) unfits(a *trial.Answer) []Line {
	if len(a.Fit) == 0 {
		return v.misfits(a)
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
	return append([]Line{{Text: "Fits the owner? " + upperFirst(text)}}, v.misfits(a)...)
}

// misfits says who does not fit, and how.
func (v voice) misfits(a *trial.Answer) []Line {
	var said []string
	at := map[string]int{}
	for _, f := range of(a, trial.Unfit) {
		if f.Misfit == nil {
			continue
		}
		if i, known := at[f.Who]; known {
			said[i] += ", " + v.trouble(*f.Misfit)
			continue
		}
		at[f.Who] = len(said)
		said = append(said, plain(short(f.Who))+": "+v.trouble(*f.Misfit))
	}
	if len(said) == 0 {
		return nil
	}
	return []Line{{Text: "Does not fit " + strings.Join(said, "; ") + "."}}
}

// unfit says by how much one measure is beyond custom.
func (v voice) unfit(f *check.Fit) string {
	way := off[f.Key][0]
	if f.Change > 0 {
		way = off[f.Key][1]
	}
	what, _, _ := strings.Cut(f.What, ",")
	return fmt.Sprintf("%s %s too %s", what, v.with(math.Abs(f.Change), quantity.Length), way)
}
