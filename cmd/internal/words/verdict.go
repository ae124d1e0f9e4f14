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
