package words

import (
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

// verdict returns the blocks of the answer: what fails, the owner, others, hazards.
func verdict(w wording, a *trial.Answer, remarks remarks) []sheet.Line {
	var lines []sheet.Line
	empty, alone := &a.Loads[0], len(a.Loads) == 1
	if !empty.Upright() {
		lines = []sheet.Line{{Label: "EMPTY:", Text: whyNot(w.phrases, empty) + lookAt(a, empty) + ".", Bad: true}}
	} else if alone {
		lines = []sheet.Line{{Label: "THE PIECE ALONE", Text: stands(w, empty) +
			". Nobody sits in this design: add [sitter]."}}
	}
	if failing := failing(a); len(failing) > 0 {
		lines = append(lines, sheet.Line{Label: "FAILS:", Text: told(w, a.Design, failing), Bad: true})
	}
	if a.Holds() || remarks > onlyFails {
		lines = append(lines, tooNear(w, a)...)
	}
	lines = append(lines, wrongs(w, a)...)
	if alone {
		return lines
	}
	owner := ofRole(a.Loads, piece.Owner)
	lines = append(lines, group(w, w.owners, owner, a))
	if others := ofRole(a.Loads, piece.Other); len(others) > 0 {
		lines = append(lines, group(w, "OTHERS", others, a))
	}
	var said []string // what hazards do to the piece, those that take it over first; nothing is asked of them
	over := false
	used := inUse(w, of(a, trial.Hazardous))
	for _, f := range of(a, trial.Hazardous) {
		if f.What == trial.RockedHard || f.Trial != nil {
			if said, over = append(said, used...), true; len(used) > 0 {
				used = nil // all at once
			}
			continue
		}
		name := brief(f.Load.Name)
		if f.Load.Posture == person.ArmsBehindHead && len(owner) > 0 && f.Who == owner[0].Sitter {
			name = f.Load.Posture.String()
		}
		said, over = append(said, hazard(w, f, name)), over || f.What != trial.LiftLeft
	}
	if len(said) == 0 {
		return lines
	}
	return append(lines, sheet.Line{Label: "HAZARDS:", Text: strings.Join(said, "; ") + ".", Bad: over})
}

// lookAt names the measure to look at first where a load does not stand; "" where none is known.
func lookAt(a *trial.Answer, l *check.Load) string {
	for _, f := range of(a, trial.Falls) {
		if f.Load == l && f.Key != "" {
			return ". Look at the " + measure(a.Design, f.Key)
		}
	}
	return ""
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
	first := loads[0]
	near, side := check.Nearest(loads)
	switch fallen := on(a, trial.Falls, loads); {
	case len(fallen) > 0:
		line.Text, line.Bad = whyNot(w.phrases, fallen[0])+
			when(len(fallen) > 1, "; nor does it stand with %s", list(names(fallen[1:], loads)))+lookAt(a, fallen[0]), true
	case label == "OTHERS" && near == nil:
		line.Text = "no tilt was found at which it goes over with them"
	case label == "OTHERS":
		line.Text = "nearest to going over is " + brief(near.Name) + ": " + left(w, near, side, ",")
	default:
		if len(first.Feet) > 0 {
			line.Label = eased(w, label, first)
			line.Text = "the seat falls " + towards(w, first.SeatFall) + pressed(w, first) +
				when(!math.IsNaN(first.Balance.Period), ", one rock %s s", seconds(w.units, first.Balance.Period))
		} else {
			line.Text = when(label != "YOUR OWNER", "%s ", brief(first.Sitter)) + stands(w, first)
		}
		if near != nil {
			other := near.Sitter != first.Sitter
			line.Text += ", " + when(other, "nearest to going over is %s: ", brief(near.Name)) +
				left(w, near, side, " left before going") +
				when(!other && near != first && near.Posture != person.Unsaid, ", %v", near.Posture)
		}
	}
	if line.Text += "."; label == "OTHERS" {
		unfit := misfits(w.units, a, others(a))
		line.Text += when(unfit != "", " %s", unfit)
	}
	return line
}

// left says how much is left before a load goes over on a side, in words between.
func left(w wording, l *check.Load, side check.Side, between string) string {
	return w.degrees(side.Of(l).Angle) + between + " " + pick(side == check.Forward, w.overForward, w.overBack) +
		when(side == check.Forward && len(l.Legs) > 0, ", feet off")
}

// eased labels what is said of an owner at ease, feet on the floor or off it.
func eased(w wording, label string, l *check.Load) string {
	return fmt.Sprintf("%s, %v, feet %s the floor:", label, l.Posture, pick(l.Feet[0].Stage == body.FeetOff, "off", "on"))
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
