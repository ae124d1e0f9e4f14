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
	w := wordingOf(a.Design)
	said := make([]string, len(a.Findings))
	for i := range a.Findings {
		f, text := &a.Findings[i], ""
		switch {
		case f.Level == trial.Falls:
			text = whyNot(w.phrases, f.Load)
		case f.Limit != nil:
			cells := limit(w, *f.Limit)
			text = fmt.Sprintf("%s: want %s, got %s", cells[0], cells[1], cells[2])
		case f.Level == trial.Hazardous:
			text = hazard(w, f, brief(f.Load.Name))
		case f.Fit != nil:
			text = unfit(w.units, f.Fit)
		case f.Misfit != nil:
			text = brief(f.Who) + ": " + trouble(w.units, *f.Misfit)
		default:
			said[i] = warning(w, &a, f).Text
			continue
		}
		said[i] = upperFirst(text) + "."
	}
	return said
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
func warning(w wording, a *trial.Answer, f *trial.Finding) sheet.Line {
	wood := func(what, who, how string, least, most float64) sheet.Line {
		return sheet.Wrong(fmt.Sprintf("WOOD: %s, with %s %s, to %s of the bending strength of clear wood. "+
			"Joints are not looked at.",
			what, brief(who), how, shares(least, most)))
	}
	switch b := f.Bent; {
	case f.Doubt != nil:
		return doubtful(w.units, *f.Doubt, f.Kind)
	case f.Rises != nil:
		return suspect(w.units, f.Who, f.Rises)
	case f.Curve != nil:
		return sheet.Wrong(fmt.Sprintf("The two rockers are not one curve: at station %d from the nose the %s one is %s higher, "+
			"more than reading error explains. Unequal rockers walk; clamp the two together and fair them as one.",
			f.Curve.Station, pick(f.Curve.Apart < 0, "right", "left"), fine(w.units, unsigned(f.Curve.Apart))))
	case f.Beyond != nil:
		end, stand := pick(f.Beyond.Tail, w.tail, w.nose), "stand"
		if f.Beyond.Taken {
			stand = "are not drawn; taken " + takenUnder(f.Beyond.Which) + " they would stand"
		}
		return sheet.Wrong(fmt.Sprintf("LEGS: the %s legs %s %s beyond the %s: nothing carries them there. "+
			"Lengthen the %s, or draw them where they stand: [[leg]] at.", f.Beyond.Which, stand,
			w.length(f.Beyond.By), end, end))
	case b != nil && a.Design.Rocker.Made == piece.Sawn:
		return wood("a sawn rocker comes at its short grain", f.Who, "on one end", b.Across.Least, b.Across.Most)
	case b != nil:
		return wood("a rocker comes", f.Who, "on one end", b.Along.Least, b.Along.Most)
	}
	return wood("the braces of the back come", f.Load.Name, "leaning on them", f.Load.Give.Least, f.Load.Give.Most)
}

// shares writes the range of a share.
func shares(least, most float64) string { return percent(least) + " to " + percent(most) }

// hazard says what a hazard of a name does.
func hazard(w wording, f *trial.Finding, name string) string {
	switch b := f.Load.Balance; {
	case f.Load.Upright() && math.IsNaN(f.Got):
		return name + ": rests tilted " + w.degrees(unsigned(b.Rest.Tilt))
	case f.Load.Upright():
		return name + ": " + w.length(f.Got) + " of lift left"
	case f.Side != check.NoSide:
		return name + ": goes over " + pick(f.Side == check.Forward, w.overForward, w.overBack)
	case !math.IsNaN(b.Rest.Tilt) && b.Outcome == sim.Rocks:
		return name + ": goes right over, on to its tips"
	}
	return whyNot(w.phrases, f.Load)
}

// misfits says who does not fit, and how; "" where all do.
func misfits(u units, a *trial.Answer) string {
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
		text, last = text+trouble(u, *f.Misfit), f.Who
	}
	return when(text != "", "%s.", text)
}

// unfit says by how much one measure is beyond common practice.
func unfit(u units, f *check.Fit) string {
	what, _, _ := strings.Cut(f.What, ",")
	return fmt.Sprintf("%s %s too %s", what, u.length(unsigned(f.Change)),
		pick(f.Change > 0, off[f.Key][1], off[f.Key][0]))
}
