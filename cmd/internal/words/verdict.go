package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// verdict returns the three blocks of the answer: the owner, others, hazards.
func (v voice) verdict(a *trial.Answer) []Line {
	r := &a.Report
	var lines []Line
	empty := &r.Loads[0]
	if !empty.Upright() {
		lines = append(lines, Line{Label: "EMPTY:", Text: v.whyNot(empty) + ".", Bad: true})
	}
	if len(r.Loads) == 1 {
		if len(lines) == 0 {
			lines = []Line{{Label: "THE PIECE ALONE", Text: v.stands(empty) + ". Nobody sits in this design: add [sitter]."}}
		}
		return lines
	}
	owner, others, hazards := v.byRole(r.Loads)
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
func (v voice) byRole(loads []check.Load) (owner, others, hazards []*check.Load) {
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
func (v voice) group(label string, loads []*check.Load, a *trial.Answer) Line {
	if len(loads) == 0 {
		return Line{Label: label + ":", Text: "nobody is given in this design: add [sitter]."}
	}
	var wrong []string
	if fallen := on(a, trial.Falls, loads); len(fallen) > 0 {
		text := v.whyNot(fallen[0])
		if len(fallen) > 1 {
			text += "; nor does it stand with " + list(v.names(fallen[1:], loads))
		}
		wrong = append(wrong, text)
	}
	if failing := on(a, trial.Fails, loads); len(failing) > 0 {
		wrong = append(wrong, v.named(failing, loads)+" "+v.fails)
	}
	if len(wrong) > 0 {
		return Line{Label: label + ":", Text: strings.Join(wrong, "; ") + ".", Bad: true}
	}
	back := check.LeastBack(loads)
	if label == "OTHERS" && back.Balance.Back.Exists() {
		return Line{Label: label + ":", Text: fmt.Sprintf("all keep the limits; least: %s, %s.", plain(short(back.Name)), v.degrees(back.Balance.Back.Angle))}
	}
	first := loads[0]
	text := v.stands(first)
	if label != "YOUR OWNER" {
		text = plain(short(first.Sitter)) + " " + text
	}
	switch {
	case !back.Balance.Back.Exists():
	case back.Sitter != first.Sitter: // a number stands beside the name of its own person
		text += fmt.Sprintf("; least: %s keeps %s", plain(short(back.Name)), v.degrees(back.Balance.Back.Angle))
	default:
		text += ", keeps " + v.degrees(back.Balance.Back.Angle)
		if back.Posture != person.Unsaid {
			text += " " + back.Posture.String()
		}
	}
	return Line{Label: label + ":", Text: text + "."}
}

// names returns what some loads of a group are called: where the owner is all of it, the postures.
func (v voice) names(loads, group []*check.Load) []string {
	alone := !slices.ContainsFunc(group, func(l *check.Load) bool { return l.Role != piece.Owner || l.Sitter != group[0].Sitter })
	var names []string
	for _, l := range loads {
		name := plain(short(l.Name))
		if alone && l.Posture != person.Unsaid {
			name = l.Posture.String()
		}
		names = append(names, name)
	}
	return names
}

// named joins the names of loads, and the verb that goes with them.
func (v voice) named(loads, group []*check.Load) string {
	names := v.names(loads, group)
	if len(names) > 1 {
		return list(names) + " are"
	}
	return names[0] + " is"
}

// stands says how a load rests and how long it rocks.
func (v voice) stands(l *check.Load) string {
	tilt := l.Balance.Rest.Tilt
	way := v.Back
	if tilt < 0 {
		way = v.Forward
	}
	where := "far " + way
	switch size := math.Abs(tilt) * 180 / math.Pi; {
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
func (v voice) hazards(a *trial.Answer, owner []*check.Load) Line {
	var said []string
	over := false
	for _, f := range of(a, trial.Hazardous) {
		name := plain(short(f.Load.Name))
		if f.Load.Posture == person.ArmsBehindHead && len(owner) > 0 && f.Who == owner[0].Sitter {
			name = f.Load.Posture.String()
		}
		said, over = append(said, v.hazard(f, name)), over || !f.Load.Upright()
	}
	return Line{Label: "HAZARDS:", Text: strings.Join(said, "; ") + ".", Bad: over}
}

// whyNot says why a load has no rest.
func (v voice) whyNot(l *check.Load) string {
	who := "it"
	if !l.Empty {
		who = plain(short(l.Name)) + ": it"
	}
	if l.Balance.Outcome == sim.Neutral {
		return who + " has no rest of its own: the balance point lies at the arc centre, so it stays wherever it is put. A larger radius gives it a rest"
	}
	if l.Balance.Outcome == sim.Rocks {
		return who + " rests only upside down, on its two tips"
	}
	arm, _ := l.Rig.Righting(0)
	return fmt.Sprintf("%s does not stand: %s, so it goes over %s by itself", who, v.reason(l.Rig), pick(arm > 0, v.overForward, v.overBack))
}

// reason says where the balance point lies that the piece cannot stand.
func (v voice) reason(r sim.Rig) string {
	switch g := r.Body.Centre; {
	case g.X < r.Profile.Tail().X:
		return "the balance point lies beyond the " + v.tail + " tip"
	case g.X > r.Profile.Nose().X:
		return "the balance point lies beyond the " + v.nose + " tip"
	case aboveCentre(r.Profile, r):
		return "the balance point lies above the arc centre"
	case r.Floor.Slope != 0:
		return "the floor slopes more than this curve can answer"
	}
	return "the balance point lies where no part of the curve can carry it"
}

// aboveCentre reports whether the balance point lies above the centre of the arc that
// touches the floor as drawn.
func aboveCentre(p rocker.Profile, r sim.Rig) bool {
	i, _ := p.Find(0)
	return r.Body.Centre.Y > p.Bearing(i).Centre().Y
}

// degrees returns an angle with its unit, singular where it is one or less.
func (v voice) degrees(x float64) string {
	text := v.shop(x, quantity.Angle)
	switch text {
	case "1", "1/2", "0.5":
		return text + " degree"
	}
	return text + " degrees"
}
