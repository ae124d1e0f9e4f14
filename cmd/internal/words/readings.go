package words

import (
	"math"
	"strings"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// fourAbreast is how many loads stand side by side in a table of 80 columns.
const fourAbreast = 4

// readings returns the table of what a level, a watch and a spring scale show at each
// rest: the piece empty, then the owner's loads.
func (v voice) readings(r check.Report, remarks remarks) Block {
	shown := []*check.Load{&r.Loads[0]}
	owner, others, _ := byRole(r.Loads)
	if len(owner) < 2 {
		owner = append(owner, others...)
	}
	room := fourAbreast
	if len(owner) > 0 && owner[len(owner)-1].Sitter != owner[0].Sitter {
		room-- // names are longer than postures
	}
	for _, l := range owner {
		if len(shown) < room {
			shown = append(shown, l)
		}
	}
	t := v.readingsOf(r.Design, shown, remarks)
	t.Caption = "At each rest, and before going over"
	return Block{Table: t}
}

// readingsOf returns the readings of some loads, one a column, as many as the remarks have room for.
func (v voice) readingsOf(d piece.Design, loads []*check.Load, remarks remarks) *Table {
	t := &Table{}
	t.Over, t.Head = heads(loads)
	row := func(label, unit string, cell func(l *check.Load) string) {
		t.add(across(label, loads, func(l *check.Load) string {
			if l.Balance.Outcome != sim.Rocks {
				return l.Balance.Outcome.String()
			}
			return cell(l)
		}, unit)...)
	}
	margin := func(way string, side func(b sim.Balance) sim.Margin) {
		row("before going "+way, "degrees", func(l *check.Load) string { return v.angle(side(l.Balance).Angle) })
		if remarks > noLift {
			row("  its weight must lift", v.unit(), func(l *check.Load) string { return v.bare(side(l.Balance).Lift) })
		}
	}
	if d.Seat.SlopeKnown() {
		row("seat falls back", "degrees", func(l *check.Load) string { return v.towards(l.SeatFall) })
	}
	if d.Back.Drawn() {
		row("back leans from plumb", "degrees", func(l *check.Load) string { return v.towards(l.BackRecline) })
	}
	if !d.Seat.SlopeKnown() {
		row("tilts at rest", "degrees", func(l *check.Load) string { return v.towards(l.Balance.Rest.Tilt) })
	}
	row("one rock, there+back", "seconds", func(l *check.Load) string { return v.seconds(l.Balance.Period) })
	if _, known := d.TopOfBack(); known && remarks > noPush {
		row("push for one degree", quantity.Unit(quantity.Force, v.units)+", at top", v.effort)
	}
	margin(v.shortBack, back)
	margin(v.shortForward, forward)
	return t
}

// effort writes the push for one degree, or that the hilltop is nearer than that.
func (v voice) effort(l *check.Load) string {
	if l.Balance.Back.Angle <= math.Pi/180 {
		return "goes over"
	}
	return v.shop(l.EffortBack, quantity.Force)
}

// heads returns the names of loads in one line or two, as the heads of columns: of one
// person what follows the name, of several the names. With one line, over is nil.
func heads(loads []*check.Load) (over, head []string) {
	one := true
	for _, l := range loads {
		one = one && (l.Empty || l.Sitter == loads[len(loads)-1].Sitter)
	}
	over, head = make([]string, 1+len(loads)), make([]string, 1+len(loads))
	twoLines := false
	for i, l := range loads {
		name := l.Name
		if rest, found := strings.CutPrefix(l.Name, l.Sitter+", "); one && found {
			name = rest
		}
		over[i+1], head[i+1] = parted(plain(name), 13)
		twoLines = twoLines || head[i+1] != ""
	}
	if !twoLines {
		return nil, over
	}
	return over, head
}

// parted breaks a name into two lines of at most so many columns.
func parted(name string, room int) (first, second string) {
	if runes := []rune(name); len(runes) <= room {
		return name, ""
	}
	words := strings.Fields(name)
	for len(words) > 0 && len([]rune(first))+1+len([]rune(words[0])) <= room {
		first = strings.TrimSpace(first + " " + words[0])
		words = words[1:]
	}
	second = strings.Join(words, " ")
	if first == "" {
		first, second = cutTo(second, room), ""
	}
	return first, cutTo(second, room)
}
