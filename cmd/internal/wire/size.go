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
	if len(rules) == 0 {
		rules = nil
	}
	return Object{
		{"old", feel(l.Old, l.OldPiece)},
		{"new", feel(l.New, l.Wanted)},
		{"ways", each(l.Ways[:], kept)},
		{"common_practice", rules},
	}
}

// feel is how a piece rocks with its owner at ease; all is null where it does not rock on an arc.
func feel(f size.Feel, r check.Balanced) Object {
	if !(f.Radius > 0) {
		none := math.NaN()
		f.Radius, f.Height, f.Gyration, f.Steadiness, f.Period = none, none, none, none, none
	}
	return Object{
		{"design", r.Design.Title}, {"load", f.Load.Name},
		{"radius_m", f.Radius}, {"height_m", f.Height}, {"gyration_m", f.Gyration},
		{"steadiness_m", f.Steadiness}, {"period_s", f.Period},
	}
}

// kept is one way to keep the feel: exact, and rounded to what a maker sets.
func kept(k size.Kept) Object {
	exact, scale := math.NaN(), math.NaN()
	var rounded Object
	if k.Found {
		exact, scale, rounded = k.Exact, k.Scale, rocker(k.Report)
	}
	return Object{
		{"keeps", k.Way.String()}, {"found", k.Found},
		{"radius_exact_m", exact}, {"scale", scale}, {"rounded", rounded},
	}
}

// rocker is a rocker, from nose to tail, and what it does; nil where nothing could be balanced on it.
func rocker(r check.Balanced) Object {
	if len(r.Loads) == 0 {
		return nil
	}
	nose, tail := r.Edge.Reach()
	failing := []string{}
	for _, l := range r.Limits {
		if !l.Holds {
			failing = append(failing, l.Load+": "+l.Name)
		}
	}
	arcs := r.Design.Rocker.Arcs
	if len(arcs) == 0 {
		arcs = []piece.Arc{{Radius: r.Design.Rocker.Radius, Length: nose + tail}}
	}
	return Object{
		{"arcs", each(arcs, arc)},
		{"nose_m", nose}, {"tail_m", tail},
		{"behind_low_point_m", r.Design.Seat.Behind}, {"tip_to_tip_m", r.Tape.TipToTip},
		{"limits_hold", r.Holds()},
		{"loads", each(r.Loads, onRocker)},
		{"limits_failing", failing},
	}
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
		{"back_margin_deg", degrees(b.Back.Angle)}, {"back_lift_m", b.Back.Lift},
		{"forward_margin_deg", degrees(b.Forward.Angle)}, {"forward_lift_m", b.Forward.Lift},
	}
}

// Sized returns the rockers found for the target of a design, and others to choose from.
func Sized(d piece.Design, found size.Solution, others []size.Proposal) Object {
	return Object{
		{"design", d.Title},
		{"met", found.Take().Met()},
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
		{"curve", p.Curve.String()}, {"met", p.Met()}, {"aims", each(p.Misses, aim)},
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
