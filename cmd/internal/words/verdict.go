package words

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// verdict returns the three blocks of the answer: the owner, others, hazards.
func verdict(w wording, a *trial.Answer) []sheet.Line {
	var lines []sheet.Line
	empty, alone := &a.Loads[0], len(a.Loads) == 1
	if !empty.Upright() {
		lines = []sheet.Line{{Label: "EMPTY:", Text: whyNot(w.phrases, empty) + ".", Bad: true}}
	} else if alone {
		lines = []sheet.Line{{Label: "THE PIECE ALONE", Text: stands(w, empty) +
			". Nobody sits in this design: add [sitter]."}}
	}
	if alone {
		return lines
	}
	owner := ofRole(a.Loads, piece.Owner)
	lines = append(lines, group(w, w.owners, owner, a))
	if others := ofRole(a.Loads, piece.Other); len(others) > 0 {
		lines = append(lines, group(w, "OTHERS", others, a))
	}
	if len(ofRole(a.Loads, piece.Hazard)) == 0 {
		return lines
	}
	var said []string // what hazards do to the piece, those that take it over first; nothing is asked of them
	over := false
	for _, f := range of(a, trial.Hazardous) {
		name := brief(f.Load.Name)
		if f.Load.Posture == person.ArmsBehindHead && len(owner) > 0 && f.Who == owner[0].Sitter {
			name = f.Load.Posture.String()
		}
		said, over = append(said, hazard(w, f, name)), over || !f.Load.Upright()
	}
	return append(lines, sheet.Line{Label: "HAZARDS:", Text: strings.Join(said, "; ") + ".", Bad: over})
}

// ofRole returns the loads with a person of a role.
func ofRole(loads []check.Load, role piece.Role) []*check.Load {
	var list []*check.Load
	for i := range loads {
		if l := &loads[i]; !l.Empty && l.Role == role {
			list = append(list, l)
		}
	}
	return list
}

// group says how it stands with a group of loads.
func group(w wording, label string, loads []*check.Load, a *trial.Answer) sheet.Line {
	line := sheet.Line{Label: label + ":"}
	if len(loads) == 0 {
		line.Text = "nobody is given in this design: add [sitter]."
		return line
	}
	failing := names(on(a, trial.Fails, loads), loads)
	wrong := given(when(len(failing) > 0, "%s %s %s", list(failing), pick(len(failing) > 1, "are", "is"), w.fails))
	if fallen := on(a, trial.Falls, loads); len(fallen) > 0 {
		wrong = slices.Insert(wrong, 0, whyNot(w.phrases, fallen[0])+
			when(len(fallen) > 1, "; nor does it stand with %s", list(names(fallen[1:], loads))))
	}
	first, back := loads[0], check.LeastBack(loads)
	keeps := w.degrees(back.Back.Angle)
	if len(first.Feet) > 0 && label != "OTHERS" && len(wrong) == 0 {
		return eased(w, label, loads)
	}
	line.Text = when(label != "YOUR OWNER", "%s ", brief(first.Sitter)) + stands(w, first)
	switch {
	case len(wrong) > 0:
		line.Text, line.Bad = strings.Join(wrong, "; "), true
	case !back.Back.Exists():
	case label == "OTHERS":
		line.Text = "all keep the limits; least: " + brief(back.Name) + ", " + keeps
	case back.Sitter != first.Sitter: // a number stands beside the name of its own person
		line.Text += "; least: " + brief(back.Name) + " keeps " + keeps
	default:
		line.Text += ", keeps " + keeps + when(back.Posture != person.Unsaid, " %v", back.Posture)
	}
	line.Text += "."
	return line
}

// eased says how it stands with an owner at ease, feet on the floor or off it.
func eased(w wording, label string, loads []*check.Load) sheet.Line {
	l, back := loads[0], check.LeastBack(loads)
	feet := pick(l.Feet[0].Stage == body.FeetOff, "off", "on")
	text := "the seat falls " + towards(w, l.SeatFall) + pressed(w, l) +
		when(!math.IsNaN(l.Balance.Period), ", one rock %s s", seconds(w.units, l.Balance.Period))
	if back.Back.Exists() {
		text += fmt.Sprintf(", %s left before going %s", w.degrees(back.Back.Angle), w.overBack) +
			when(back != l, ", %v", back.Posture)
	}
	return sheet.Line{Label: fmt.Sprintf("%s, %v, feet %s the floor:", label, l.Posture, feet), Text: text + "."}
}

// pressed says how far the seat falls where the calves press, where that is a degree more or further.
func pressed(w wording, l *check.Load) string {
	fall, told := l.PressedFall()
	return when(told, " (to %s by the feet)", towards(w, fall))
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
func stands(w wording, l *check.Load) string {
	way := pick(l.Balance.Rest.Tilt < 0, w.Forward, w.Back)
	where := "far " + way
	switch size := unsigned(l.Balance.Rest.Tilt); {
	case size < 0.5*quantity.Deg:
		where = "as drawn"
	case size < 4*quantity.Deg:
		where = "a little " + way
	case size < 10*quantity.Deg:
		where = "well " + way
	}
	switch {
	case !l.Moves():
		return "rests " + where
	case math.IsNaN(l.Balance.Period):
		return "rests " + where + ", on a flat"
	}
	return "rests " + where + ", rocks in " + seconds(w.units, l.Balance.Period) + " s"
}

// whyNot says why a load has no rest: the arc centre, above which the balance point may lie, is that of the arc that
// touches the floor as drawn.
func whyNot(say *phrases, l *check.Load) string {
	who := when(!l.Empty, "%s: ", brief(l.Name)) + "it "
	switch l.Balance.Outcome {
	case sim.Neutral:
		return who + "has no rest of its own: the balance point lies at the arc centre, " +
			"so it stays wherever it is put. A larger radius gives it a rest"
	case sim.Rocks:
		return who + "rests only upside down, on its two tips"
	}
	at, _ := l.Rig.Profile.Find(0)
	why := "the balance point lies where no part of the curve can carry it"
	switch g := l.Rig.Body.Centre; {
	case g.X < l.Rig.Profile.Tail().X:
		why = "the balance point lies beyond the " + say.tail + " tip"
	case g.X > l.Rig.Profile.Nose().X:
		why = "the balance point lies beyond the " + say.nose + " tip"
	case g.Y > l.Rig.Profile.Bearing(at).Centre().Y:
		why = "the balance point lies above the arc centre"
	case l.Rig.Floor.Slope != 0:
		why = "the floor slopes more than this curve can answer"
	}
	arm, _ := l.Rig.Righting(0)
	return fmt.Sprintf("%sdoes not stand: %s, so it goes over %s by itself", who, why,
		pick(arm > 0, say.overForward, say.overBack))
}

// ranked returns the limits with those that fail first, then those that are nearest to
// it. Of a load that does not rest only that is listed, of one that does all else.
func ranked(limits []check.Limit) []check.Limit {
	list := slices.DeleteFunc(slices.Clone(limits), func(l check.Limit) bool {
		return l.Name == "rest" && l.Holds || l.Name != "rest" && math.IsNaN(l.Got)
	})
	share := func(l check.Limit) float64 {
		if l.Name == "rest" {
			return math.Inf(-1)
		}
		return l.Share()
	}
	slices.SortStableFunc(list, func(a, b check.Limit) int { return cmp.Compare(share(a), share(b)) })
	return list
}

// limitTable returns limits as a table: want, got, whose.
func limitTable(w wording, limits []check.Limit) *sheet.Table {
	t := &sheet.Table{Caption: "What we ask of it", Head: []string{"What we ask", "want", "got", "whose"}}
	for _, l := range limits {
		t.Mark(!l.Holds, limit(w, l)...)
	}
	if len(limits) == 0 {
		t.Add("that it stands", "yes", "yes", check.Physics)
	}
	return t
}

// limit returns the cells of a limit: what is asked, what is wanted, what there is, and by whom it is asked. Where
// rounding to the shop's step would make a failing value look like the one asked, it is given finer.
func limit(w wording, l check.Limit) []string {
	name, basis := sheet.Cut(sheet.Plain(l.Load), 30), l.Basis+"  "+pick(l.Holds, "ok", "NO")
	if l.Name == "rest" {
		return []string{name + " stands", "a rest", "none", basis}
	}
	got := w.shop(l.Got, l.Kind)
	if !l.Holds && got == w.shop(l.Want, l.Kind) {
		got = quantity.Fine(l.Got, l.Kind, w.System)
	}
	want := when(l.AtMost, "at most ") + w.with(l.Want, l.Kind)
	return []string{name + ", " + limitName(w.phrases, l.Name), want, got, basis}
}
