package words

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// ofPiece is what a cell says of a piece.
func ofPiece(label, unit string, cell func(r *check.Balanced) string) reading {
	return reading{label, unit, func(c *Column) string { return cell(&c.Report) }}
}

// ofLength is a length of a piece; of one that has none, none is written.
func ofLength(u units, label string, of func(r *check.Balanced) float64) reading {
	return ofPiece(label, u.unit(), func(r *check.Balanced) string { return pick(of(r) != 0, u.bare(of(r)), "") })
}

// A chosen is one of the loads of a piece.
type chosen func(r *check.Balanced) *check.Load

// ofLoad is what a cell says of one load of a piece; where that does not rock, what becomes of it.
func ofLoad(choose chosen, label, unit string, cell func(l *check.Load) string) reading {
	return ofPiece(label, unit, func(r *check.Balanced) string {
		if l := choose(r); l != nil {
			return atRest(l, cell)
		}
		return "–"
	})
}

// atRest returns what a cell says of a load that rocks, of another what becomes of it.
func atRest(l *check.Load, cell func(l *check.Load) string) string {
	if l.Balance.Outcome != sim.Rocks {
		return l.Balance.Outcome.String()
	}
	return cell(l)
}

// marginOf is how near one load of a piece is to going over on a side.
func marginOf(u units, choose chosen, label, lift string, side func(l *check.Load) sim.Margin) []reading {
	return []reading{
		ofLoad(choose, label, "deg", func(l *check.Load) string { return u.angle(side(l).Angle) }),
		ofLoad(choose, lift, u.unit(), func(l *check.Load) string { return u.bare(side(l).Lift) }),
	}
}

func back(l *check.Load) sim.Margin    { return l.Back }
func forward(l *check.Load) sim.Margin { return l.Forward }

func tipToTip(u units) reading {
	return ofLength(u, "tip to tip", func(r *check.Balanced) float64 { return r.Tape.TipToTip })
}

// holds is whether all limits hold.
var holds = ofPiece("all limits hold", "", func(r *check.Balanced) string { return pick(r.Holds(), "yes", "NO") })

// rockerOf is the rocker itself, its arcs from nose to tail, its ends and its low point, and how it rests and rocks.
func rockerOf(w wording, columns []Column) []reading {
	most := 1
	for _, c := range columns {
		most = max(most, len(c.Report.Arcs()))
	}
	var list []reading
	for n := range most {
		arc := func(r *check.Balanced) (arc piece.Arc) {
			if arcs := r.Arcs(); n < len(arcs) {
				arc = arcs[n]
			}
			return arc
		}
		list = append(list, ofLength(w.units, "radius"+when(most > 1, " %d, from nose", n+1),
			func(r *check.Balanced) float64 { return arc(r).Radius }))
		if most > 1 {
			list = append(list, ofLength(w.units, "  along the curve", func(r *check.Balanced) float64 { return arc(r).Length }))
		}
	}
	list = append(list,
		ofPiece(w.nose+" along the curve", w.unit(),
			func(r *check.Balanced) string { n, _ := r.Edge.Reach(); return w.bare(n) }),
		ofPiece(w.tail+" along the curve", w.unit(),
			func(r *check.Balanced) string { _, t := r.Edge.Reach(); return w.bare(t) }))
	if columns[0].Report.Design.Seat.SlopeKnown() {
		list = append(list, ofPiece("behind the low point", w.unit(),
			func(r *check.Balanced) string { return w.bare(r.Design.Seat.Behind) }))
	}
	list = append(append(list, tipToTip(w.units)), restsOf(w, columns[0].Report.Design)...)
	list = append(list, ofLoad((*check.Balanced).Seated, "back leans, "+w.seated, "deg",
		func(l *check.Load) string { return w.angle(l.BackRecline) }))
	return append(list, rocksOf(w)...)
}

// rocksOf is time and push with the owner at ease, and how near it is to going back.
func rocksOf(w wording) []reading {
	return append([]reading{
		ofLoad((*check.Balanced).Seated, "one rock", "s",
			func(l *check.Load) string {
				return pick(math.IsNaN(l.Balance.Period), "–", fmt.Sprintf("%.2f", l.Balance.Period))
			}),
		ofLoad((*check.Balanced).Seated, "push for one degree", quantity.Unit(quantity.Force, w.System),
			func(l *check.Load) string { return effort(w.units, l) }),
	}, marginOf(w.units, (*check.Balanced).Leaning, "before going "+w.Back, "  weight must lift", back)...)
}

// restsAs begins the label of how a piece rests, before who is in it.
func restsAs(d piece.Design) string {
	return pick(d.Seat.SlopeKnown(), "seat falls, ", "tilts at rest, ")
}

// restsOf is how the seat falls, empty and with somebody in it.
func restsOf(w wording, d piece.Design) []reading {
	tilt := func(l *check.Load) string {
		if !math.IsNaN(l.SeatFall) { // drawn
			return towards(w, l.SeatFall)
		}
		return towards(w, l.Balance.Rest.Tilt)
	}
	rests := restsAs(d)
	return []reading{
		ofLoad(func(r *check.Balanced) *check.Load { return &r.Loads[0] }, rests+"empty", "deg", tilt),
		ofLoad((*check.Balanced).Seated, rests+w.seated, "deg", tilt),
	}
}

// fourAbreast is how many loads stand side by side in a table of 80 columns.
const fourAbreast = 4

// readingsBlock returns the table of what a level, a watch and a spring scale show at each
// rest: the piece empty, then the owner's loads.
func readingsBlock(w wording, r check.Report, remarks remarks) sheet.Block {
	shown := []*check.Load{&r.Loads[0]}
	owner := ofRole(r.Loads, piece.Owner)
	if len(owner) < 2 {
		owner = append(owner, ofRole(r.Loads, piece.Other)...)
	}
	room := fourAbreast
	if len(owner) > 0 && owner[len(owner)-1].Sitter != owner[0].Sitter {
		room-- // names are longer than postures
	}
	last, traits := len(owner)-1, r.Design.Traits()
	if last > 0 && traits.Seating && !traits.ForTwo && owner[last].Role == piece.Owner {
		owner = firsts(owner) // each of several who take turns has a column
	}
	shown = append(shown, owner[:min(len(owner), room-1)]...)
	t := readingsOf(w, &r.Balanced, shown, remarks)
	t.Caption = "At each rest, and before going over"
	return sheet.Block{Table: t}
}

// firsts returns loads with the first of each person in front.
func firsts(loads []*check.Load) []*check.Load {
	var first, rest []*check.Load
	for i, l := range loads {
		if i == 0 || l.Sitter != loads[i-1].Sitter {
			first = append(first, l)
		} else {
			rest = append(rest, l)
		}
	}
	return append(first, rest...)
}

// readingsOf returns the readings of some loads, one a column, as many as the remarks have room for.
func readingsOf(w wording, r *check.Balanced, loads []*check.Load, remarks remarks) *sheet.Table {
	d := r.Design
	rests := "degrees"
	if l := loads[min(1, len(loads)-1)]; l.Moves() { // the first person's
		if spread := r.RestSpread(l); !math.IsNaN(spread) {
			rests += " ±" + w.angle(spread)
		}
	}
	t := headed(heads(loads))
	row := func(label, unit string, cell func(l *check.Load) string) {
		t.Add(sheet.Across(label, loads, func(l *check.Load) string { return atRest(l, cell) }, unit)...)
	}
	margin := func(way string, side func(l *check.Load) sim.Margin) {
		row("before going "+way, "degrees", func(l *check.Load) string { return w.angle(side(l).Angle) })
		if remarks > noLift {
			row("  its weight must lift", w.unit(), func(l *check.Load) string { return w.bare(side(l).Lift) })
		}
	}
	if d.Seat.SlopeKnown() {
		row("seat falls back", rests, func(l *check.Load) string { return towards(w, l.SeatFall) })
	}
	if d.Back.Drawn() {
		row("back leans from plumb", rests, func(l *check.Load) string { return towards(w, l.BackRecline) })
	}
	if !d.Seat.SlopeKnown() {
		row("tilts at rest", "degrees", func(l *check.Load) string { return towards(w, l.Balance.Rest.Tilt) })
	}
	row("one rock, there+back", "seconds", func(l *check.Load) string { return seconds(w.units, l.Balance.Period) })
	if _, known := d.TopOfBack(); known && remarks > noPush {
		row("push for one degree", quantity.Unit(quantity.Force, w.System)+", at top",
			func(l *check.Load) string { return effort(w.units, l) })
	}
	margin(w.shortBack, back)
	margin(w.shortForward, forward)
	return t
}

// effort writes the push for one degree, or that the hilltop is nearer than that.
func effort(u units, l *check.Load) string {
	if l.Back.Angle <= quantity.Deg {
		return "goes over"
	}
	return u.shop(l.EffortBack, quantity.Force)
}

// heads returns the names of loads in two lines, as the heads of columns: of one
// person what follows the name, of several the names.
func heads(loads []*check.Load) (first, second []string) {
	last := loads[len(loads)-1].Sitter
	several := slices.ContainsFunc(loads, func(l *check.Load) bool { return !l.Empty && l.Sitter != last })
	for _, l := range loads {
		name := strings.TrimPrefix(l.Name, l.Sitter+", ")
		if several {
			name = l.Name
		}
		a, b := parted(sheet.Plain(name), 13)
		first, second = append(first, a), append(second, b)
	}
	return first, second
}
