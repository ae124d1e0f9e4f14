package readings

import (
	"math"
	"slices"
	"strings"
)

// keys returns the keys of what was read with a level, or of a tip over the floor.
func (r *Readings) keys() []string {
	var keys []string
	rest, tail, nose := r.tiltings()
	for _, t := range []*tilting{rest, tail, nose} {
		if t != nil {
			keys = append(keys, t.name)
		}
	}
	if r.NoseTip != 0 {
		keys = append(keys, "nose_tip")
	}
	if r.TailTip != 0 {
		keys = append(keys, "tail_tip")
	}
	return keys
}

// levelNames returns the first and the last of these keys; "" where there is none.
func (r *Readings) levelNames() (first, last string) {
	if keys := r.keys(); len(keys) > 0 {
		return keys[0], keys[len(keys)-1]
	}
	return "", ""
}

// lacking says of a level's readings that do not hold the balance point what to read next.
func (r Readings) lacking(lines []line) error {
	first, _ := r.levelNames()
	rest, tail, nose := r.tiltings()
	heights := r.NoseTip != 0 || r.TailTip != 0
	var next []string
	held := len(lines)
	for _, one := range []struct {
		name string
		read bool
	}{{"seat_falls_empty", rest != nil}, {"balances_on_tail", tail != nil}, {"balances_on_nose", nose != nil}} {
		if one.read {
			held++
		} else {
			next = append(next, one.name)
		}
	}
	unknown := 2
	switch {
	case heights && rest == nil:
		held++ // the tilt at rest is known
		next = slices.DeleteFunc(next, func(name string) bool { return name == "seat_falls_empty" })
	}
	zeroed := r.SeatDrawn || heights && rest != nil || rest == nil && tail == nil && nose == nil
	if !zeroed {
		unknown++
	}
	switch {
	case held >= unknown || len(next) == 0:
		return wrong(first, "no balance point goes with these tilts and the other readings: read again, all on one mark of the empty "+
			"piece, back +, forward -")
	case zeroed:
		return missed(wrong(next[0], "what was read gives one line through the balance point, and it takes two that cross: with the level on "+
			"the same mark read "+strings.Join(next, " or ")))
	}
	return missed(wrong(next[0], "what the level shows on its mark at tilt 0 is one more unknown: with the level on the same mark read "+
		strings.Join(next, " and ")+" too; or measure at rest the height of the tips over the floor (nose_tip, tail_tip), or draw "+
		"the seat on which it lies (front, rear, depth)"))
}

// checkLevel returns what no reading of a level or of a tip over the floor can be.
func (r Readings) checkLevel() error {
	for _, one := range []struct {
		name  string
		value float64
	}{
		{"seat_falls_empty", r.SeatFallsEmpty}, {"balances_on_tail", r.BalancesOnTail}, {"returns_from_tail", r.ReturnsFromTail},
		{"balances_on_nose", r.BalancesOnNose}, {"returns_from_nose", r.ReturnsFromNose},
	} {
		switch {
		case math.IsNaN(one.value), math.IsInf(one.value, 0):
			return wrong(one.name, "this is no number")
		case math.Abs(one.value) >= math.Pi:
			return wrong(one.name, "a level shows less than 180 degrees, back + and forward -")
		}
	}
	switch {
	case r.NoseTip < 0:
		return wrong("nose_tip", "at rest no tip lies under the floor")
	case r.TailTip < 0:
		return wrong("tail_tip", "at rest no tip lies under the floor")
	case r.SeatDrawn && !(math.Abs(r.SeatFall) < math.Pi):
		return wrong("seat", "the drawn seat has no slope")
	}
	return nil
}
