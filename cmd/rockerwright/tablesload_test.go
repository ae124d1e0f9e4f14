package main

import (
	"fmt"
	"math"
	"strings"
)

// rowLabels are the rows of the table of loads.
var rowLabels = []string{
	"seat falls back", "tilts at rest", "back leans from plumb", "one rock, there+back", "push for one degree",
	"before going back", "before going left", "before going forward", "before going right", "its weight must lift",
}

// labelled returns the label of a row that may be cut short.
func labelled(text string) string {
	if begins, cut := strings.CutSuffix(text, "…"); cut {
		for _, label := range rowLabels {
			if strings.HasPrefix(label, begins) {
				return label
			}
		}
	}
	return text
}

// columns compares the table of loads, each a column under its head.
func (r *pageReader) columns(table, who string, lines [][]printedCell) {
	var heads map[int]string
	var forward bool
	for i, cells := range lines {
		if len(cells) == 0 {
			heads = nil // the table ends
		}
		if len(cells) < 3 || i == 0 {
			continue
		}
		label := labelled(cells[0].text)
		switch label {
		case "seat falls back", "tilts at rest":
			heads = headsOver(lines[:i], cells[1:len(cells)-1])
		}
		if heads == nil {
			continue
		}
		for _, cell := range cells[1 : len(cells)-1] {
			l := r.load(heads[cell.end], who)
			if l == nil {
				continue
			}
			what, none := fmt.Sprintf("%q of %s", label, l.Name), l.Rest == nil
			length, half := r.length()
			switch label {
			case "seat falls back":
				r.holds(table, what, cell.text, l.Falls, 1, 0.25)
			case "as the feet press": // where that is a degree more
				var fall *float64
				if band := l.FallsBetween; len(band) == 2 && band[1]-band[0] >= 1 {
					fall = &band[1]
				}
				r.holds(table, what, cell.text, fall, 1, 0.25)
				none = false
			case "tilts at rest":
				r.holds(table, what, cell.text, l.Rest, 1, 0.25)
			case "back leans from plumb":
				r.holds(table, what, cell.text, l.Recline, 1, 0.25)
			case "one rock, there+back":
				r.holds(table, what, cell.text, l.Period, 1, 0.05)
			case "push for one degree":
				if l.Effort == nil {
					r.holds(table, what, cell.text, nil, 1, 0)
					break
				}
				unit, within := r.force(*l.Effort)
				r.holds(table, what, cell.text, l.Effort, unit, within)
			case "before going back", "before going left", "before going forward", "before going right":
				forward = strings.HasSuffix(label, "forward") || strings.HasSuffix(label, "right")
				margin, _ := r.margin(l, forward)
				r.holds(table, what, cell.text, margin, 1, 0.25)
			case "its weight must lift":
				_, lift := r.margin(l, forward)
				r.holds(table, what, cell.text, lift, length, half)
			default:
				r.t.Errorf("%s: there is a row %q, of which this test knows nothing", r.name, label)
			}
			if none != (cell.text == "no rest") && label != "push for one degree" {
				r.t.Errorf("%s: %s is printed as %q", r.name, what, cell.text)
			}
		}
	}
}

// limitWords are the printed names of limits.
var limitWords = map[string]string{
	"back_margin_deg": "tilt back", "back_lift_m": "lift back",
	"forward_margin_deg": "tilt forward", "forward_lift_m": "lift forward", "rest_tilt_deg": "tilt at rest",
	"seat_falls_least_deg": "seat falls", "seat_falls_most_deg": "seat falls",
	"empty_falls_least_deg": "seat falls", "empty_falls_most_deg": "seat falls", "slides_off_deg": "slope fwd",
	"one_rock_least_s": "one rock", "one_rock_most_s": "one rock", "push_n": "push", "legs_beyond_m": "leg beyond",
	"leans": "leans",
}

// limits compares the table of all limits, each by its load and words, of which an end may be cut off.
func (r *pageReader) limits(lines [][]printedCell) {
	rows := 0
	for _, cells := range lines {
		if len(cells) != 5 || cells[4].text != "ok" && cells[4].text != "NO" && cells[4].text != "near" {
			continue
		}
		rows++
		begins, _ := strings.CutSuffix(cells[0].text, "…")
		found := false
		for _, l := range r.answer.Limits {
			words, known := limitWords[l.Name]
			want, most := l.AtLeast, strings.HasPrefix(cells[1].text, "at most ")
			if l.AtMost != nil {
				want = l.AtMost
			}
			unit, within := 1.0, 0.25
			switch {
			case strings.HasSuffix(l.Name, "_m"):
				unit, within = r.length()
			case strings.HasSuffix(l.Name, "_s"):
				within = 0.05
			case strings.HasSuffix(l.Name, "_n"):
				unit, within = r.force(*want)
			}
			// of names that are cut alike what is wanted says which it is
			wanted := math.Abs(amountTold(strings.TrimPrefix(cells[1].text, "at most "))-*want/unit) <= within+1e-9
			if !known || !strings.HasPrefix(shortLoad(l.Load)+", "+words, begins) || most != (l.AtMost != nil) || !wanted {
				continue
			}
			found = true
			r.read["limits"]++
			what := l.Load + ", " + l.Name
			if strings.HasSuffix(l.Name, "_n") {
				unit, within = r.force(*l.Got)
			}
			r.holds("limits", what, cells[2].text, l.Got, unit, within)
			if cells[3].text != l.Basis {
				r.t.Errorf("%s: %s is %q, printed as %q", r.name, what, l.Basis, cells[3].text)
			}
			break
		}
		if !found {
			r.t.Errorf("%s: the answer has no limit %q", r.name, cells[0].text)
		}
	}
}

// shortLoad is a load as the table of limits has it: its posture behind the name, and at ease none.
func shortLoad(name string) string {
	return strings.Replace(strings.TrimSuffix(name, ", at ease"), ", ", " ", 1)
}

// pulls compares what tips the piece.
func (r *pageReader) pulls(lines [][]printedCell) {
	for _, cells := range lines {
		if len(cells) != 4 {
			continue
		}
		l := r.load(cells[0].text, "")
		if l == nil {
			continue
		}
		for i, want := range []*float64{l.Slow, l.Sudden} {
			unit, within := 1.0, 0.0
			if want != nil {
				unit, within = r.force(*want)
			}
			r.holds("pulls", l.Name, cells[i+1].text, want, unit, within)
		}
	}
}

// swings compares the times of a rock of one load: release, time, how far it carries and the friction.
func (r *pageReader) swings(who string, lines [][]printedCell) {
	l := r.load(who, "")
	if l == nil {
		return
	}
	n := 0
	for _, cells := range lines {
		if len(cells) != 5 || !strings.HasPrefix(cells[4].text, "degrees") {
			continue
		}
		if n >= len(l.Swings) {
			r.t.Fatalf("%s: more times of a rock of %s are printed than there are", r.name, who)
		}
		s := l.Swings[n]
		n++
		what := fmt.Sprintf("%s from %v", who, s.Release)
		r.holds("a load's swings", what+", release", cells[0].text, &s.Release, 1, 0.05)
		r.holds("a load's swings", what+", time", strings.TrimSuffix(cells[1].text, " s"), s.Period, 1, 0.005)
		reach := s.Reach
		if reach != nil {
			other := math.Abs(*reach)
			reach = &other
		}
		r.holds("a load's swings", what+", reach", cells[2].text, reach, 1, 0.25)
		r.holds("a load's swings", what+", friction", cells[3].text, s.Friction, 1, 0.005)
	}
}

// times compares the times of a rock of all loads.
func (r *pageReader) times(lines [][]printedCell) {
	for _, cells := range lines {
		if len(cells) < 3 || cells[len(cells)-1].text != "s" {
			continue
		}
		l := r.load(cells[0].text, "")
		if l == nil || len(l.Swings) != len(cells)-2 {
			r.t.Errorf("%s: %d times are printed of %s", r.name, len(cells)-2, cells[0].text)
			continue
		}
		for i, s := range l.Swings {
			r.holds("swings", fmt.Sprintf("%s from %v", l.Name, s.Release), cells[i+1].text, s.Period, 1, 0.05)
		}
	}
}
