package size

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// A Row is one change and what it does, worked out exactly.
type Row struct {
	Alteration Alteration
	Key        string // of ChangeMeasure
	Label      string
	Kind       quantity.Kind
	Change     float64 // SI
	Before     Readings
	After      Readings
	Effect     float64 // the largest change of any reading, in steps that a maker can tell
	Made       bool    // a shop holds it to a tolerance
	HoldTo     float64 // ± SI, 95 times in 100, of what is made; +Inf where it need not be exact; NaN where not even exactness helps
	Shop       float64 // what the shop usually holds, ± SI
	Outcome    sim.Outcome
}

// Moved returns by how much the change moves a quantity, SI; the effort as a part of what it was before.
func (r *Row) Moved(q Quantity) float64 {
	if q == Effort {
		return r.After[q]/r.Before[q] - 1
	}
	return r.After[q] - r.Before[q]
}

// A Table is the answer to what each measure does.
type Table struct {
	Report check.Balanced // as drawn
	Now    Readings
	Rows   []Row   // the largest effect first; what need not be exact behind what must
	Fails  float64 // share of chairs in which a limit fails with every measure at the shop's usual, and these very people
}

// WhatIf changes one thing at a time. A measure is changed by four times what a shop usually
// holds, or by its least step where it is not made. Errors are of package piece.
func WhatIf(d piece.Design) (Table, error) {
	if err := countable(d); err != nil {
		return Table{}, err
	}
	sitters, err := check.SittersOf(d)
	if err != nil {
		return Table{}, err
	}
	t := Table{}
	if t.Report, err = sitters.Balance(d); err != nil {
		return t, err
	}
	t.Now = readingsOf(t.Report)
	named := map[*float64]bool{} // a measure with two names has one row
	for _, key := range d.Keys() {
		_, field, err := d.Measure(key)
		if err != nil || named[field] {
			continue
		}
		named[field] = true
		if row, ok := changed(d, sitters, key); ok {
			row.Before = t.Now
			t.Rows = append(t.Rows, row)
		}
	}
	t.Rows = append(t.Rows, altered(d, sitters, t.Report)...)
	t.Fails = t.holdTo(d, sitters)
	for i := range t.Rows {
		t.Rows[i].effect()
	}
	slices.SortStableFunc(t.Rows, func(a, b Row) int {
		switch {
		case a.loose() == b.loose():
			return cmp.Compare(b.Effect, a.Effect)
		case a.loose():
			return 1
		}
		return -1
	})
	return t, nil
}

// loose reports whether the row is of something made that need not be exact.
func (r Row) loose() bool { return r.Made && math.IsInf(r.HoldTo, 1) }

// PersonMatters reports whether the rest at ease is off by more because people of one size differ than by any
// measure that is made, off by what a shop usually holds; not where a measure leaves it no rest.
func (t *Table) PersonMatters() bool {
	spread := t.Report.RestSpread(t.Report.Seated())
	for i := range t.Rows {
		if r := &t.Rows[i]; r.Made && !(math.Abs(r.Moved(FallAtEase)*r.Shop/r.Change) < spread) {
			return false
		}
	}
	return spread > 0
}

func (r *Row) effect() {
	for i, before := range r.Before {
		switch after := r.After[i]; {
		case math.IsNaN(before):
		case math.IsNaN(after):
			r.Effect = math.Inf(1) // there is no such thing any more
		default:
			r.Effect = max(r.Effect, math.Abs(after-before)/quantitySteps[i])
		}
	}
}

// changed returns the row of one measure; ok is false where it is not drawn, or none that a maker changes.
func changed(d piece.Design, sitters check.Sitters, key string) (Row, bool) {
	d = d.Clone()
	m, field, err := d.Measure(key)
	section, _, _ := strings.Cut(m.Key, ".")
	if err != nil || m.Fitted || section != "sitter" && !m.Made() || *field == 0 && !mayBeZero(d, m) {
		return Row{}, false
	}
	tolerance := d.Tolerance(m)
	row := Row{
		Key: key, Label: m.Label, Kind: m.Kind, Change: cmp.Or(4*m.Tolerance, m.Step),
		Made: m.Made() && tolerance > 0, HoldTo: math.Inf(1), Shop: tolerance,
	}
	*field += row.Change
	if section == "sitter" { // other people, then
		if sitters, err = check.SittersOf(d); err != nil {
			return row, false
		}
	}
	return row, row.ask(d, sitters)
}

// ask fills in what becomes of the design; it reports whether there is an answer.
func (r *Row) ask(d piece.Design, sitters check.Sitters) bool {
	report, err := sitters.Balance(d)
	if err != nil {
		return false
	}
	r.After = readingsOf(report)
	r.Outcome = report.Seated().Balance.Outcome
	return true
}
