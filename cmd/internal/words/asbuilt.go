package words

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

// AsBuilt returns the sheet of a finished piece beside its drawing, and under it what check says of it as built.
func AsBuilt(b check.Built, a trial.Answer, source string, changes []string) sheet.Sheet {
	w := wordingOf(b.As.Design)
	t := &sheet.Table{Head: []string{"As drawn, as built", "drawn", "measured", "±", "agrees", ""}, Wrap: true}
	var lines []sheet.Line
	if wrong := (*piece.KeyError)(nil); errors.As(b.Refused, &wrong) {
		d := b.Drawn.Design
		if m, _, err := d.Measure(wrong.Key); err == nil {
			lines = append(lines, sheet.Line{Label: "NOT USED:", Bad: true,
				Text: labelOf(d, m.Key, m.Label) + ": " + wrong.Reason + "."})
		}
	}
	for i, do := range Mends(b) {
		r := &b.Rows[i]
		write := besideNumbers(w.units, r.Kind)
		t.Mark(!r.Agrees(), besideName(w, b, r), write(r.Drawn), write(r.Read), write(r.Uncertain),
			pick(r.Agrees(), "yes", "NO"), pick(r.Kind == quantity.Ratio, "", quantity.Unit(r.Kind, w.System)))
		label := upperFirst(besideName(w, b, r))
		switch last := len(lines) - 1; {
		case do == "":
		case last >= 0 && lines[last].Text == upperFirst(do):
			lines[last].Label = strings.TrimSuffix(lines[last].Label, ":") + "; " + label + ":"
		default:
			lines = append(lines, sheet.Line{Label: label + ":", Text: upperFirst(do), Bad: true})
		}
	}
	read, _ := b.Drawn.Design.Curved()
	drawn := slices.ContainsFunc(b.Rows, func(r check.Beside) bool { return r.What != check.BesideTwins })
	lines = append(lines, sheet.Says(
		when(len(lines) == 0 && drawn, "It came out as drawn, as far as these readings tell."),
		when(!drawn, "Nothing is drawn to set these readings beside: see rockerwright measure."),
		when(len(b.As.Lacked) > 0, "Not read, so as drawn: %s.", list(lackedNames(b.As.Lacked))),
		"± holds 95 times in 100: the readings err as usual, and a prediction by a guessed weight and by who sits."+
			when(read, " Rises stand as if the straightedge lay level."))...)
	checked := Check(a, source, nil, nil)
	blocks := []sheet.Block{{Lines: changed(changes, false)}, {Table: t}, {Lines: lines},
		{Lines: []sheet.Line{{Label: "THE " + strings.ToUpper(w.piece) + " AS BUILT:",
			Text: "what was read stands for what is drawn."}}}}
	if len(changes) == 0 {
		blocks = blocks[1:]
	}
	if len(t.Rows) == 0 {
		blocks = slices.DeleteFunc(blocks, func(b sheet.Block) bool { return b.Table == t })
	}
	return sheet.Sheet{Title: name(b.As.Design) + " · drawn and built", Source: source, Blocks: append(blocks, checked.Blocks...)}
}

// Mends returns for each row of a finished piece what to do, "" where it agrees.
func Mends(b check.Built) []string {
	w := wordingOf(b.As.Design)
	var list []string
	for i := range b.Rows {
		text := ""
		if r := &b.Rows[i]; !r.Agrees() {
			text = mend(w, b, r)
		}
		list = append(list, text)
	}
	return list
}

// mend says what to do where one row does not agree.
func mend(w wording, b check.Built, r *check.Beside) string {
	more := r.Read > r.Drawn
	switch {
	case r.Mend == check.Reread:
		return "read this station again; the others agree, so it was left out."
	case r.Mend == check.NoCurve:
		return "no one bend of the drawn curve explains these rises: read again, at more stations, or fair the edge " +
			"(rockerwright measure has the arcs)."
	case r.Mend == check.FurtherIn:
		return "as drawn it would not come back from there: let go from less."
	case r.Mend == check.MakeAlike:
		return "the two are not alike and will walk: clamp them together and fair them as one."
	case r.What == check.BesideRadius:
		return fmt.Sprintf("it came out %s: use the measured radius, rocker.radius = %s.", pick(more, "flatter", "rounder"), w.length(r.Read))
	case r.What == check.BesideBending:
		return fmt.Sprintf("it came out %s: make every radius of the drawn curve %s of what it is.",
			pick(more, "flatter", "rounder"), hundredths(r.Read, 1)+" %")
	case r.What == check.BesideLeft, r.What == check.BesideRight:
		return "its curve came out otherwise: see the radius, and use the measured one."
	case r.What == check.BesideWeight:
		return "weigh it again; if it stays, " + weighed(w, b, r)
	case r.What == check.BesideAhead:
		return fmt.Sprintf("its weight lies further %s: read again; if it stays, weigh seat, back and rockers one by one ([[part]]).",
			pick(more, w.Forward, w.Back))
	case r.What == check.BesideAbove:
		return fmt.Sprintf("its weight lies %s: read again; if it stays, weigh seat, back and rockers one by one ([[part]]).",
			pick(more, "higher", "lower"))
	case tiltName(w, r.What) != "":
		return "read it again; if it stays, its weight lies otherwise than drawn: see the balance point."
	case r.What == check.BesideRidden:
		return "time it again with the same " + pick(w.infants == "", "person", "bag laid as said") +
			"; if it stays, that balances otherwise than its size says."
	}
	return fmt.Sprintf("it rocks %s: count ten there-and-backs again; if it stays, mend curve and balance point first.",
		pick(more, "slower", "quicker"))
}

// weighed says how a weight that stays is drawn.
func weighed(w wording, b check.Built, r *check.Beside) string {
	d := b.Drawn.Design
	switch {
	case d.Piece.Mass > 0:
		return "draw it so: [piece] weight = " + besideNumbers(w.units, quantity.Mass)(r.Read) + "."
	case len(d.Parts) > 0:
		return "weigh the parts one by one: a wood is not as heavy as drawn."
	}
	return "draw it so, under [body]."
}

// besideName returns what a row is called.
func besideName(w wording, b check.Built, r *check.Beside) string {
	switch r.What {
	case check.BesideWeight:
		return "weight"
	case check.BesideAhead:
		return "balance point, " + w.ahead
	case check.BesideAbove:
		return "balance point, over floor"
	case check.BesideRocks:
		return "ten rocks, empty"
	case check.BesideRidden:
		return "ten rocks, " + brief(b.Drawn.Loads[b.Drawn.Sitting()].Name)
	case check.BesideLeft:
		return fmt.Sprintf("rise at station %d, %s", r.Station, w.leftRocker)
	case check.BesideRight:
		return fmt.Sprintf("rise at station %d, %s", r.Station, w.rightRocker)
	case check.BesideTwins:
		return fmt.Sprintf("%s against %s, station %d", w.leftRocker, w.rightRocker, r.Station)
	case check.BesideRadius:
		return "floor edge radius"
	case check.BesideBending:
		return "all radii"
	}
	return tiltName(w, r.What)
}

// tiltName returns what a reading of a level or of a tip is called; "" of any other.
func tiltName(w wording, reading string) string {
	return map[string]string{
		"seat_falls_empty": "seat falls, empty", "balances_on_tail": "just balances on the " + w.tail + " ends",
		"balances_on_nose": "just balances on the " + w.nose + " ends",
		"nose_tip":         w.nose + " tip, at rest", "tail_tip": w.tail + " tip, at rest",
	}[reading]
}

// besideNumbers returns how numbers of a kind are written that are compared.
func besideNumbers(u units, kind quantity.Kind) func(x float64) string {
	return func(x float64) string {
		switch {
		case u.with(x, kind) == "–":
			return "–"
		case kind == quantity.Length:
			return quantity.Compared(x, u.System)
		case kind == quantity.Mass:
			return quantity.Tenths(x, kind, u.System)
		case kind == quantity.Ratio:
			return hundredths(x, 1) + " %"
		}
		return u.shop(x, kind)
	}
}

// lackedNames returns in words what was not read.
func lackedNames(lacked []string) []string {
	var list []string
	for _, one := range [...][2]string{{"weight", "the weight"}, {"dowel_ahead", "the balance point fore and aft"},
		{"dowel_above", "the height of the balance point"}} {
		if slices.Contains(lacked, one[0]) {
			list = append(list, one[1])
		}
	}
	return list
}
