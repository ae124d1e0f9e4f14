package wire

import (
	"math"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// WhatIf returns what each measure does.
func WhatIf(t size.Table) Object {
	return Object{
		{"design", t.Report.Design.Title}, {"now", readings(t.Now)}, {"fails_share", t.Fails},
		{"rows", each(t.Rows, row)},
	}
}

// read names the quantities that are read of a piece.
var read = [...]named{
	size.FallSitting:   {"seat_slope", quantity.Angle},
	size.FallEmpty:     {"seat_slope_empty", quantity.Angle},
	size.Time:          {"period", quantity.Time},
	size.Effort:        {"effort_back", quantity.Force},
	size.BackMargin:    {"back_margin", quantity.Angle},
	size.BackLift:      {"back_lift", quantity.Length},
	size.ForwardMargin: {"forward_margin", quantity.Angle},
}

func readings(r size.Readings) Object {
	var o Object
	for q, of := range read {
		o = append(o, pair{of.String(), amount(r[q], of.kind)})
	}
	return o
}

// row is one change. "hold_to" is null where it need not be exact, where no exactness helps, and of
// what is not made in a shop.
func row(r size.Row) Object {
	made := func(x float64) float64 {
		if !r.Made {
			return math.NaN()
		}
		return amount(x, r.Kind)
	}
	return Object{
		{"key", given(r.Key)}, {"label", r.Label}, {"unit", unit(r.Kind)}, {"change", amount(r.Change, r.Kind)},
		{"before", readings(r.Before)}, {"after", readings(r.After)},
		{"made", r.Made}, {"hold_to", made(r.HoldTo)},
		{"need_not_be_exact", r.Made && math.IsInf(r.HoldTo, 1)},
		{"no_exactness_helps", r.Made && math.IsNaN(r.HoldTo)},
		{"shop_holds", made(r.Shop)},
	}
}

// Study returns what became of many chairs with a shop's errors.
func Study(d piece.Design, s size.Study) Object {
	return Object{
		{"design", d.Title},
		{"asked", s.Asked}, {"chairs", s.Chairs}, {"stopped", s.Stopped()},
		{"any_limit_fails", s.Fails}, {"no_rest", s.Astray},
		{"measures", each(s.Varied, varied)},
		{"spreads", each(s.Spreads, func(one size.Spread) Object { return spread(one, s.Nominal) })},
		{"limits", each(s.Limits, func(f size.Failing) Object { return append(limit(f.Limit), pair{"fails", f.Fails}) })},
	}
}

// varied is a measure that is off.
func varied(v size.Varied) Object {
	kind := v.Measure.Kind
	return Object{
		{"key", v.Key},
		{"unit", unit(kind)},
		{"value", amount(v.Value, kind)}, {"tolerance_95", amount(v.Tolerance, kind)},
	}
}

// spread is how one quantity lies; shares are in the order of the measures.
func spread(s size.Spread, drawn size.Readings) Object {
	of := read[s.Quantity]
	return Object{
		{"quantity", of.String()}, {"drawn", amount(drawn[s.Quantity], of.kind)},
		{"below_5", amount(s.Low, of.kind)}, {"below_50", amount(s.Middle, of.kind)},
		{"below_95", amount(s.High, of.kind)},
		{"shares", s.Shares}, {"left_over", s.LeftOver},
	}
}
