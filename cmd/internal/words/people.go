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
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// fits returns whom the piece fits, who they are, and how its wood bends under them.
func fits(w wording, a *trial.Answer) []sheet.Block {
	return slices.Concat(fitTable(w.units, a), extents(w, a), people(w.units, a.Report), gives(w.units, a.Report), bends(w, a.Report))
}

// off says in which way a measure is beyond common practice: too much, too little.
var off = map[string][2]string{
	"seat.front":  {"high", "low"},
	"seat.depth":  {"deep", "shallow"},
	"seat.width":  {"wide", "narrow"},
	"arms.height": {"high", "low"},
	"back.height": {"tall", "short"},
	"back.lumbar": {"high", "low"},
}

// fitTable returns have, want and change by of each measure.
func fitTable(u units, a *trial.Answer) []sheet.Block {
	t := &sheet.Table{Head: []string{"Owner, upright", "have", "want", "change by", "goes by"}}
	for _, f := range a.Fit {
		want, change := u.bare(f.Low)+" to "+u.bare(f.High), "–"
		if math.IsInf(f.High, 1) {
			want = u.bare(f.Low) + " or more"
		}
		if f.Change != 0 {
			change = pick(f.Change > 0, "+", "-") + u.bare(unsigned(f.Change))
		}
		what := when(f.Who != a.Fit[0].Who, "%s: ", brief(f.Who)) + f.What
		t.Mark(!f.Holds(), what, u.bare(f.Have), want, change, f.Size.String())
	}
	return below(sheet.Block{Title: "Fit", All: true, Table: t}, misfits(u, a, anybody), "In "+inUnits(u, "inches", "millimetres")+
		". The clearances between a person and a seat are common practice among chairmakers; change them to taste.")
}

// extents returns by how much people do not fit, legs stand beyond their rockers, and wood is thin or bends.
func extents(w wording, a *trial.Answer) []sheet.Block {
	t := &sheet.Table{Head: []string{"What is wrong of itself", "is", "at least", ""}}
	for _, f := range of(a, trial.Unfit, trial.Warns) {
		switch b := f.Bent; {
		case f.Misfit != nil && f.Misfit.Trouble != check.KneesOverChin:
			t.Add(brief(f.Who)+": "+f.What, w.bare(f.Misfit.By), "–", w.unit())
		case f.Beyond != nil:
			t.Add(f.Beyond.Which.String()+" legs, beyond the "+pick(f.Beyond.Tail, w.tail, w.nose), w.bare(f.Beyond.By), "–", w.unit())
		case f.What == trial.Thin:
			t.Add("depth of the rocker"+when(f.Key != "rocker.depth", ", at an end"), w.bare(f.Got), w.bare(f.Want), w.unit())
		case b != nil && a.Design.Rocker.Made == piece.Sawn:
			t.Add("a rocker, at its short grain", shares(b.Across.Least, b.Across.Most), "–", "of its strength")
		case b != nil:
			t.Add("a rocker, on one end", shares(b.Along.Least, b.Along.Most), "–", "of its strength")
		case f.What == trial.Braces:
			t.Add("the braces of the back", shares(f.Load.Give.Least, f.Load.Give.Most), "–", "of their strength")
		}
	}
	if len(t.Rows) == 0 {
		return nil
	}
	return []sheet.Block{{All: true, Table: t}}
}

// trouble says in what way a seat does not fit.
func trouble(u units, m check.Misfit) string {
	by := u.length(m.By)
	return map[check.Trouble]string{
		check.FeetHang: "feet " + by + " off the floor", check.KneesUp: "knees " + by + " above the hips",
		check.TooWide: "hips " + by + " wider than the seat", check.TooDeep: "seat " + by + " deeper than the thigh",
		check.KneesOverChin: "knees above the chin",
	}[m.Trouble]
}

// people returns what was given and what was estimated of each person.
func people(u units, r check.Report) []sheet.Block {
	first := slices.IndexFunc(r.Somebody, func(s check.Somebody) bool { return s.Role == piece.Owner })
	if first < 0 {
		return nil
	}
	owner := &r.Somebody[first]
	t := &sheet.Table{Head: []string{"Sizes of " + brief(owner.Name), "", "", ""}}
	for _, s := range person.Sizes() {
		text := u.length(owner.Person.Sizes[s])
		switch s {
		case person.Stature:
			text = quantity.Tall(owner.Person.Sizes[s], u.System)
		case person.Mass:
			text = mass(u, owner.Person.Sizes[s])
		}
		t.Add(s.String()+" ("+s.Science()+")", text, "", owner.Person.Sources[s].String())
	}
	var others []string
	for _, one := range r.Somebody {
		if sizes := one.Person.Sizes; one.Name != owner.Name {
			others = append(others, fmt.Sprintf("%s %s, %s", brief(one.Name), quantity.Tall(sizes[person.Stature], u.System),
				mass(u, sizes[person.Mass])))
		}
	}
	return below(sheet.Block{Title: "People", All: true, Table: t},
		"Estimated sizes go with the height in the ANSUR II survey of soldiers (2012), of children with the CDC "+
			"growth charts (2000). Weights of limbs are by de Leva (1996), of children by Jensen (1986, 1989). "+
			"Weight beyond the survey's mean for the height carries the balance point forward, as published of seated "+
			"adults (one source). People of one size differ by an inch all the same: sit your owner in a mock-up.",
		when(len(others) > 0, "Others: %s.", strings.Join(others, "; ")), postures(r))
}

// postures says how the postures are meant, of those that were checked.
func postures(r check.Report) string {
	meant := map[person.Posture]string{
		person.AtEase: "at ease is trunk on the back, head a little behind it, feet on the floor, which carries what hangs " +
			"on knees and ankles free to turn: less as the knees rise",
		person.FeetOff: "feet off is on the back, knees 20 degrees short of straight",
		person.Upright: "upright is trunk plumb, off the back, feet on the floor",
		person.Rising: "rising is near the front edge with the feet drawn back on the floor, a bar on two supports: " +
			"the seat carries what the feet do not",
		person.PushingUp:      "pushing up has half of the weight on the ends of the arms, through the hands (our judgement)",
		person.RidingForward:  "riders lean 25 degrees fore and aft",
		person.ArmsBehindHead: "arms behind the head is at ease, elbows up",
	}
	var said []string
	for _, p := range person.Postures() {
		checked := func(l check.Load) bool { return l.Posture == p && len(l.Figures) > 0 }
		if meant[p] != "" && slices.ContainsFunc(r.Loads, checked) {
			said = append(said, meant[p])
		}
	}
	return when(len(said) > 0, "%s. Forward, feet on the floor may help, but are not counted: a foot may slip. "+
		"What is said of going forward is the lesser of feet off and rising.",
		upperFirst(strings.Join(said, "; ")))
}

// Findings returns the sentence of each finding of an answer, in their order.
func Findings(a trial.Answer) []string {
	w := wordingOf(a.Design)
	list := make([]string, len(a.Findings))
	for i := range a.Findings {
		list[i] = finding(w, &a, &a.Findings[i])
	}
	return list
}

// finding returns the sentence of a finding.
func finding(w wording, a *trial.Answer, f *trial.Finding) string {
	text := ""
	switch {
	case f.Level == trial.Falls:
		text = whyNot(w.phrases, f.Load)
	case f.Limit != nil:
		text = asked(w, f.Limit)
	case f.Level == trial.Hazardous:
		text = hazard(w, f, brief(f.Load.Name))
	case f.Fit != nil:
		text = unfit(w.units, f.Fit)
	case f.Misfit != nil:
		text = brief(f.Who) + ": " + trouble(w.units, *f.Misfit)
	default:
		return warning(w, a, f).Text
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
		end := pick(f.Beyond.Tail, w.tail, w.nose)
		return sheet.Wrong(fmt.Sprintf("LEGS: the %s legs%s %s %s beyond the %s, where nothing carries them: lengthen it, or draw them "+
			"where they stand ([[leg]] at).", f.Beyond.Which, when(f.Beyond.Taken, ", taken %s,", takenUnder(f.Beyond.Which)),
			pick(f.Beyond.Taken, "would stand", "stand"), w.length(f.Beyond.By), end))
	case f.What == trial.Thin:
		end := map[string]string{"rocker.tail_depth": " at the " + w.tail, "rocker.nose_depth": " at the " + w.nose}[f.Key]
		return sheet.Wrong(fmt.Sprintf("WOOD: the rocker is %s deep%s, less than %s: short grain may break off there (our judgement).",
			w.length(f.Got), end, w.length(f.Want)))
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
	case f.What == trial.RockedHard, f.Trial != nil:
		return inUse(w, []*trial.Finding{f})[0]
	case f.Side != check.NoSide && math.IsNaN(f.Got) && f.What != trial.LiftLeft:
		return name + ": " + f.What + " " + pick(f.Side == check.Forward, w.overForward, w.overBack)
	case f.Load.Upright() && math.IsNaN(f.Got):
		return name + ": rests " + pick(math.IsNaN(f.Load.SeatFall), "tilted "+w.degrees(unsigned(b.Rest.Tilt)),
			"with the seat falling "+towards(w, f.Load.SeatFall)+" degrees")
	case f.Load.Upright():
		return fmt.Sprintf("%s: %s of lift left, %s", name, w.length(f.Got), pick(f.Side == check.Forward, w.overForward, w.overBack))
	case !math.IsNaN(b.Rest.Tilt) && b.Outcome == sim.Rocks:
		return name + ": goes right over, on to its tips"
	}
	return whyNot(w.phrases, f.Load)
}

// misfits says who does not fit, and how, of some people; "" where all do.
func misfits(u units, a *trial.Answer, some func(name string) bool) string {
	text, last := "", ""
	for _, f := range of(a, trial.Unfit) {
		switch {
		case f.Misfit == nil || !some(f.Who):
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

// anybody is for everybody alike; others are all but the owners.
func anybody(string) bool { return true }
func others(a *trial.Answer) func(name string) bool {
	return func(name string) bool { return !owns(a)(name) }
}

// owns reports whether the piece is made for somebody.
func owns(a *trial.Answer) func(name string) bool {
	return func(name string) bool {
		return slices.ContainsFunc(a.Somebody, func(s check.Somebody) bool { return s.Name == name && s.Role == piece.Owner })
	}
}

// unfit says by how much one measure is beyond common practice.
func unfit(u units, f *check.Fit) string {
	what, _, _ := strings.Cut(f.What, ",")
	return fmt.Sprintf("%s %s too %s", what, u.length(unsigned(f.Change)),
		pick(f.Change > 0, off[f.Key][1], off[f.Key][0]))
}
