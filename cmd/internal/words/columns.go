package words

import (
	"fmt"

	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// narrow is how wide the head of a column may be, so that five stand side by side.
const narrow = 9

// A Column is one of several designs side by side.
type Column struct {
	Head   string // what sets it apart: "radius 40 in", or its file
	Report piece.Report
}

// Columns returns the sheet of several designs side by side, in the units of the first.
func Columns(title, source string, columns []Column) Sheet {
	v := voiceOf(columns[0].Report.Design)
	s := Sheet{Title: title, Source: source}
	t := &Table{Caption: "Side by side"}
	first, second := []string{""}, []string{""}
	for _, c := range columns {
		a, b := parted(plain(c.Head), narrow)
		first, second = append(first, a), append(second, b)
	}
	t.Head = append(first, "")
	if some(second) {
		t.Over, t.Head = t.Head, append(second, "")
	}
	row := func(label, unit string, cell func(r piece.Report) string) {
		cells := []string{label}
		for _, c := range columns {
			cells = append(cells, cell(c.Report))
		}
		t.Rows = append(t.Rows, Row{Cells: append(cells, unit)})
	}
	length := quantity.Unit(quantity.Length, v.units)
	nose, tail := v.tips()
	row(tail+" tip up", length, func(r piece.Report) string { return v.shop(r.Tape.TailTip, quantity.Length) })
	row(nose+" tip up", length, func(r piece.Report) string { return v.shop(r.Tape.NoseTip, quantity.Length) })
	row("tip to tip", length, func(r piece.Report) string { return v.shop(r.Tape.TipToTip, quantity.Length) })
	of := func(choose func(r piece.Report) *piece.Load, cell func(l *piece.Load) string) func(r piece.Report) string {
		return func(r piece.Report) string {
			l := choose(r)
			switch {
			case l == nil:
				return "–"
			case l.Balance.Outcome != sim.Rocks:
				return l.Balance.Outcome.String()
			}
			return cell(l)
		}
	}
	tilt := func(l *piece.Load) string {
		if l.SeatFall == l.SeatFall { // drawn
			return v.towards(l.SeatFall)
		}
		return v.towards(l.Balance.Rest.Tilt)
	}
	rests := "seat falls"
	if columns[0].Report.Design.Seat.Front == 0 {
		rests = "tilts at rest"
	}
	empty := func(r piece.Report) *piece.Load { return &r.Loads[0] }
	row(rests+", empty", "deg", of(empty, tilt))
	row(rests+", seated", "deg", of(v.seated, tilt))
	row("one rock", "s", of(v.seated, func(l *piece.Load) string { return v.seconds(l.Balance.Period) }))
	row("push for one degree", quantity.Unit(quantity.Force, v.units), of(v.seated, func(l *piece.Load) string { return v.shop(l.Pull.EffortBack, quantity.Force) }))
	row("before going "+v.backwards(), "deg", of(v.leaning, func(l *piece.Load) string { return v.shop(l.Balance.Back.Angle, quantity.Angle) }))
	row("  weight must lift", length, of(v.leaning, func(l *piece.Load) string { return v.shop(l.Balance.Back.Lift, quantity.Length) }))
	row("before going "+v.forwards(), "deg", of(v.seated, func(l *piece.Load) string { return v.shop(l.Balance.Forward.Angle, quantity.Angle) }))
	row("  weight must lift", length, of(v.seated, func(l *piece.Load) string { return v.shop(l.Balance.Forward.Lift, quantity.Length) }))
	row("all limits hold", "", func(r piece.Report) string {
		if r.Holds() {
			return "yes"
		}
		return "NO"
	})
	s.Blocks = append(s.Blocks, Block{Table: t}, Block{Lines: v.columnNotes(columns[0].Report)})
	return s
}

// columnNotes says for whom the columns were read.
func (v voice) columnNotes(r piece.Report) []Line {
	text := "Read for the piece alone."
	if seated, leaning := v.seated(r), v.leaning(r); seated != nil && !seated.Empty {
		text = fmt.Sprintf("Seated is %s; going %s is read for %s. For the rest of each, check it alone.", plain(short(seated.Name)), v.backwards(), plain(short(leaning.Name)))
	}
	return []Line{{Text: text}, v.disclaimer()}
}

// seated returns the load that stands for the owner at ease: the first with a person,
// or the piece alone.
func (v voice) seated(r piece.Report) *piece.Load {
	return &r.Loads[min(1, len(r.Loads)-1)]
}

// leaning returns the owner's load with the least lift at the back.
func (v voice) leaning(r piece.Report) *piece.Load {
	owner, _, _ := v.byRole(r.Loads)
	if l := piece.LeastBack(owner); l != nil {
		return l
	}
	return v.seated(r)
}

func some(texts []string) bool {
	for _, t := range texts {
		if t != "" {
			return true
		}
	}
	return false
}
