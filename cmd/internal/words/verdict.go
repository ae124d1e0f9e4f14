package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/body/person"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// verdict returns the three blocks of the answer: the owner, others, hazards, as
// long as the remarks allow.
func (v voice) verdict(r piece.Report, remarks remarks) []Line {
	var lines []Line
	empty := &r.Loads[0]
	if !empty.Upright() {
		text := v.whyNot(empty) + "."
		if remarks == terse {
			text = "it does not stand by itself: see --all."
		}
		lines = append(lines, Line{Label: "EMPTY:", Text: text, Bad: true})
	}
	if len(r.Loads) == 1 {
		if len(lines) == 0 {
			lines = []Line{{Label: "THE PIECE ALONE", Text: v.stands(empty) + ". Nobody sits in this design: add [sitter]."}}
		}
		return lines
	}
	owner, others, hazards := v.byRole(r.Loads)
	label := "YOUR OWNER"
	switch v.kind {
	case piece.Cradle:
		label = "INFANTS"
	case piece.Horse:
		label = "RIDERS"
	}
	lines = append(lines, v.group(label, owner, r))
	if len(others) > 0 {
		line := v.group("OTHERS", others, r)
		if remarks == terse && line.Bad {
			line.Text = fmt.Sprintf("not all of %d keep the limits, or stand: see --all.", len(others))
		}
		lines = append(lines, line)
	}
	if len(hazards) > 0 {
		lines = append(lines, v.hazards(hazards, owner, remarks <= brief))
	}
	return lines
}

// byRole parts the loads with a person.
func (v voice) byRole(loads []piece.Load) (owner, others, hazards []*piece.Load) {
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
func (v voice) group(label string, loads []*piece.Load, r piece.Report) Line {
	if len(loads) == 0 {
		return Line{Label: label + ":", Text: "nobody is given in this design: add [sitter]."}
	}
	name := ""
	if label != "YOUR OWNER" {
		name = plain(short(loads[0].Sitter)) + " "
	}
	for _, l := range loads {
		if !l.Upright() && l.Asked() {
			return Line{Label: label + ":", Text: v.whyNot(l) + ".", Bad: true}
		}
	}
	if failing := failingOf(loads, r.Limits); len(failing) > 0 {
		fault := "nearer to going over than we like"
		if v.kind == piece.Cradle {
			fault = "tilted further at rest than we like"
		}
		return Line{Label: label + ":", Text: v.named(failing, label) + " " + fault + ".", Bad: true}
	}
	if back := piece.LeastBack(loads); label == "OTHERS" && back.Balance.Back.Exists() {
		return Line{Label: label + ":", Text: fmt.Sprintf("all keep the limits; least: %s, %s.", plain(short(back.Name)), v.degrees(back.Balance.Back.Angle))}
	}
	text := name + v.stands(loads[0])
	if back := piece.LeastBack(loads); back.Balance.Back.Exists() {
		text += ", keeps " + v.degrees(back.Balance.Back.Angle)
		if back.Posture != person.Unsaid {
			text += " " + back.Posture.String()
		}
	}
	return Line{Label: label + ":", Text: text + "."}
}

// failingOf returns the loads, out of some, on which a limit does not hold.
func failingOf(loads []*piece.Load, limits []piece.Limit) []*piece.Load {
	var failing []*piece.Load
	for _, l := range loads {
		for _, limit := range limits {
			if !limit.Holds && limit.Load == l.Name && !slices.Contains(failing, l) {
				failing = append(failing, l)
			}
		}
	}
	return failing
}

// named joins the names of loads, and the verb that goes with them.
func (v voice) named(loads []*piece.Load, label string) string {
	var names []string
	for _, l := range loads {
		name := plain(short(l.Name))
		if label == "YOUR OWNER" && l.Posture != person.Unsaid {
			name = l.Posture.String()
		}
		names = append(names, name)
	}
	if len(names) > 1 {
		return list(names) + " are"
	}
	return names[0] + " is"
}

// stands says how a load rests and how long it rocks.
func (v voice) stands(l *piece.Load) string {
	tilt := l.Balance.Rest.Tilt
	way := v.backwards()
	if tilt < 0 {
		way = v.forwards()
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

// hazards says what hazards do to the piece; nothing is asked of them. Terse, only that
// they were tried.
func (v voice) hazards(loads, owner []*piece.Load, terse bool) Line {
	var said []string
	bad := false
	for _, l := range loads {
		b, name := l.Balance, plain(short(l.Name))
		if l.Posture == person.ArmsBehindHead && len(owner) > 0 && l.Sitter == owner[0].Sitter {
			name = l.Posture.String()
		}
		switch lift := min(b.Back.Lift, b.Forward.Lift); {
		case b.Outcome == sim.NoRest:
			arm, _ := l.Rig.Righting(0)
			said = append(said, fmt.Sprintf("%s: goes over %s", name, v.over(arm > 0)))
			bad = true
		case b.Outcome != sim.Rocks:
			said = append(said, v.whyNot(l))
			bad = true
		case !l.Upright():
			said = append(said, name+": goes right over, on to its tips")
			bad = true
		case math.IsNaN(lift):
			said = append(said, fmt.Sprintf("%s: rests tilted %s", name, v.degrees(math.Abs(b.Rest.Tilt))))
		default:
			said = append(said, fmt.Sprintf("%s: %s of lift left", name, v.with(lift, quantity.Length)))
		}
	}
	if terse && len(said) > 1 {
		said = []string{fmt.Sprintf("%d were tried: see --all", len(said))}
	}
	return Line{Label: "HAZARDS:", Text: strings.Join(said, "; ") + ".", Bad: bad}
}

// whyNot says why a load has no rest.
func (v voice) whyNot(l *piece.Load) string {
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
	way := v.over(arm > 0)
	return fmt.Sprintf("%s does not stand: %s, so it goes over %s by itself", who, v.reason(l.Rig), way)
}

// over returns the way in which the piece goes over.
func (v voice) over(forward bool) string {
	switch {
	case v.kind == piece.Cradle && forward:
		return v.forwards()
	case v.kind == piece.Cradle:
		return v.backwards()
	case forward:
		return "forwards"
	}
	return "backwards"
}

// reason says where the balance point lies that the piece cannot stand.
func (v voice) reason(r sim.Rig) string {
	nose, tail := v.tips()
	switch g := r.Body.Centre; {
	case g.X < r.Profile.Tail().X:
		return "the balance point lies beyond the " + tail + " tip"
	case g.X > r.Profile.Nose().X:
		return "the balance point lies beyond the " + nose + " tip"
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
