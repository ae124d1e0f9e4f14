package wire

import (
	"math"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// ruleNames name the rules of the trade.
var ruleNames = [...]string{
	"pi_seat_height", "pi_leg_length", "pi_navel_height", "centre_at_chin",
	"start_36_in", "start_40_in", "commonest_42_in",
}

// Like returns which radius keeps the feel of a piece.
func Like(l size.Likeness) Object {
	rules := each(l.Rules, func(r size.Rule) Object {
		return Object{{"rule", ruleNames[r.Name]}, {"height_m", r.Height}, {"radius_m", r.Radius}, {"period_s", r.Period}}
	})
	return Object{
		{"old", feel(l.Old, l.OldPiece)}, {"new", feel(l.New, l.Wanted)}, {"ways", each(l.Kept[:], kept)},
		{"common_practice", where(len(rules) > 0, rules)},
	}
}

// feel is how a piece rocks with its owner at ease; all is null where it does not rock on an arc.
func feel(f size.Feel, r check.Balanced) Object {
	onArc := f.Radius > 0
	return Object{
		{"design", r.Design.Title}, {"load", f.Load.Name},
		{"radius_m", where(onArc, f.Radius)}, {"height_m", where(onArc, f.Height)},
		{"gyration_m", where(onArc, f.Gyration)},
		{"steadiness_m", where(onArc, f.Steadiness)}, {"period_s", where(onArc, f.Period)},
	}
}

// kept is one way to keep the feel: exact, and rounded to what a maker sets.
func kept(k size.Kept) Object {
	return Object{
		{"keeps", k.Keep.String()}, {"found", k.Found},
		{"radius_exact_m", where(k.Found, k.Exact)}, {"scale", where(k.Found, k.Scale)},
		{"rounded", where(k.Found, rocker(k.Report))},
	}
}

// rocker is a rocker, from nose to tail, and what it does; nil where nothing could be balanced on it.
func rocker(r check.Balanced) Object {
	if len(r.Loads) == 0 {
		return nil
	}
	failing := []string{}
	for _, l := range r.Limits {
		if !l.Holds {
			failing = append(failing, l.Load+": "+l.Name)
		}
	}
	return append(edge(r),
		pair{"behind_low_point_m", r.Design.Seat.Behind}, pair{"tip_to_tip_m", r.Tape.TipToTip},
		pair{"limits_hold", r.Holds()},
		pair{"loads", each(r.Loads, onRocker)},
		pair{"limits_failing", failing})
}

// edge is the floor edge from nose to tail, as it is drawn or was measured.
func edge(r check.Balanced) Object {
	nose, tail := r.Edge.Reach()
	arcs := r.Design.Rocker.Arcs
	if len(arcs) == 0 {
		arcs = piece.Arcs(r.Edge.Drawn())
	}
	return Object{{"arcs", each(arcs, arc)}, {"nose_m", nose}, {"tail_m", tail}}
}

// arc is an arc, a flat or a corner.
func arc(a piece.Arc) Object {
	return Object{
		{"radius_m", given(a.Radius)}, {"length_m", given(a.Length)},
		{"flat_m", given(a.Flat)}, {"turn_deg", given(degrees(a.Turn))},
	}
}

// onRocker is a load on a rocker.
func onRocker(l check.Load) Object {
	b := l.Balance
	return Object{
		{"name", l.Name}, {"outcome", b.Outcome.String()}, {"period_s", b.Period},
		{"seat_slope_deg", degrees(l.SeatFall)}, {"back_recline_deg", degrees(l.BackRecline)},
		{"effort_back_n", l.EffortBack},
		{"back_margin_deg", degrees(l.Back.Angle)}, {"back_lift_m", l.Back.Lift},
		{"forward_margin_deg", degrees(l.Forward.Angle)}, {"forward_lift_m", l.Forward.Lift},
	}
}

// Sized returns the rockers found for the target of a design, and others to choose from.
func Sized(d piece.Design, found size.Solution, others []size.Proposal) Object {
	return Object{
		{"design", d.Title}, {"met", found.Take().Met()},
		{"best", found.Best}, // of proposals, counting from 0
		{"proposals", each(found.Proposals, proposal)}, {"others", each(others, proposal)},
	}
}

func proposal(p size.Proposal) Object {
	even := make([]Object, len(p.Even))
	for i, period := range p.Even {
		even[i] = Object{{"release_deg", degrees(size.EvenReleases[i])}, {"period_s", period}}
	}
	return Object{
		{"fitted_arcs", given(p.Fitted)}, // of even time
		{"curve", p.Shape.String()}, {"met", p.Met()}, {"aims", each(p.Misses, aim)},
		{"evenness", even}, {"rocker", rocker(p.Report)},
	}
}

// aims name what is aimed for.
var aims = [...]named{
	size.OneRock:        {"one_rock", quantity.Time},
	size.SeatFalls:      {"seat_slope", quantity.Angle},
	size.BackLeans:      {"back_recline", quantity.Angle},
	size.SeatFallsEmpty: {"seat_slope_empty", quantity.Angle},
	size.LargestTilt:    {"largest_tilt", quantity.Angle},
	size.Longest:        {"longest", quantity.Length},
	size.StockWidth:     {"stock_width", quantity.Length},
	size.StockLength:    {"stock_length", quantity.Length},
	size.SmallestRadius: {"smallest_radius", quantity.Length},
	size.OffJoints:      {"off_joints", quantity.Angle},
	size.Sensible:       {"sensible", quantity.Count},
}

// aim is how an aim came out.
func aim(m size.Miss) Object {
	of, load := aims[m.Aim], ""
	if m.Aim == size.KeepsLimit {
		of, load = named{m.Limit.Name, m.Limit.Kind}, m.Limit.Load
	}
	return Object{
		{"aim", of.String()}, {"load", given(load)},
		{"want", amount(m.Want, of.kind)}, {"got", amount(m.Got, of.kind)}, {"met", m.Met()},
	}
}

// WhatIf returns what each measure does.
func WhatIf(t size.Table) Object {
	return Object{
		{"design", t.Report.Design.Title}, {"now", readings(t.Now)}, {"fails_share", t.Fails},
		{"person_matters_most", t.PersonMatters()},
		{"rows", each(t.Rows, row)},
	}
}

// read names the quantities that are read of a piece.
var read = [...]named{
	size.FallAtEase:    {"seat_slope", quantity.Angle},
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
	return Object{
		{"key", given(r.Key)}, {"label", r.Label}, {"unit", unit(r.Kind)}, {"change", amount(r.Change, r.Kind)},
		{"before", readings(r.Before)}, {"after", readings(r.After)},
		{"made", r.Made}, {"hold_to", where(r.Made, amount(r.HoldTo, r.Kind))},
		{"need_not_be_exact", r.Made && math.IsInf(r.HoldTo, 1)},
		{"no_exactness_helps", r.Made && math.IsNaN(r.HoldTo)},
		{"shop_holds", where(r.Made, amount(r.Shop, r.Kind))},
	}
}

// Study returns what became of many chairs with a shop's errors.
func Study(d piece.Design, s size.Study) Object {
	return Object{
		{"design", d.Title}, {"asked", s.Asked}, {"chairs", s.Chairs}, {"stopped", s.Stopped()},
		{"any_limit_fails", s.Fails}, {"no_rest", s.Unusable}, {"measures", each(s.Varied, varied)},
		{"spreads", each(s.Spreads, func(one size.Spread) Object { return spread(one, s.Nominal) })},
		{"limits", each(s.Limits, func(f size.Failing) Object { return append(limit(f.Limit), pair{"fails", f.Fails}) })},
	}
}

// varied is a measure that is off.
func varied(v size.Varied) Object {
	kind := v.Measure.Kind
	return Object{
		{"key", v.Key}, {"unit", unit(kind)},
		{"value", amount(v.Value, kind)}, {"tolerance_95", amount(v.Tolerance, kind)},
	}
}

// spread is how one quantity lies; shares are in the order of the measures.
func spread(s size.Spread, drawn size.Readings) Object {
	of := read[s.Quantity]
	return Object{
		{"quantity", of.String()}, {"drawn", amount(drawn[s.Quantity], of.kind)},
		{"below_5", amount(s.Low, of.kind)}, {"below_50", amount(s.Middle, of.kind)},
		{"below_95", amount(s.High, of.kind)}, {"shares", s.Shares}, {"left_over", s.LeftOver},
	}
}
