package wire

import (
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/trial"
)

// Rock returns how a load rocks, and what it survives.
func Rock(r trial.Rocking) Object {
	t := r.Trace
	return Object{
		{"design", r.Report.Design.Title}, {"load", r.Load.Name},
		{"floor_surface", r.Report.Design.Floor.Surface.String()}, // empty where the file gives numbers, or nothing
		{"floor_surface_taken", r.FloorTaken},
		{"outcome", t.Outcome.String()}, {"end", t.End.String()}, {"duration_s", t.Duration},
		{"last_tilt_deg", degrees(t.Last.Tilt)},
		{"friction_needed", t.Friction}, {"floor_let_go_at_friction", where(t.Needs > 0, t.Needs)},
		{"least_margin_deg", degrees(t.Margin)}, {"largest_lift_share", t.Lift},
		{"halves_in_rocks", r.HalvesIn}, {"events", each(t.Events, event)},
		{"survives", each(r.Survivals, survival)},
		{"seating_tests", each(r.Seating, seatTest)}, {"slopes", each(r.Slopes, slope)},
		{"room", room(r.Room)}, {"sideways", each(r.Sideways, sideway)}, {"walk", walk(r.Walk)},
		{"rocked_hard", each(r.Heaved, heaved)}, {"feet_push", each(r.Treads, tread)},
	}
}

// heaved is what becomes of a load rocked hard: with which of the leans it goes over, null where it comes back from all
// that are tried, and which way, empty where nobody can tell.
func heaved(h trial.Heaved) Object {
	with := func(m motion.Heaving) any { return where(m.Outcome != sim.Rocks, float64(len(m.Leans))) }
	way := ""
	if h.Way != sim.Rocks {
		way = h.Way.String()
	}
	return Object{
		{"load", h.Load}, {"lean_back_deg", degrees(h.Back)}, {"lean_forward_deg", degrees(h.Forward)},
		{"over_with_lean", with(h.Whole)}, {"outcome", way}, {"over_with_lean_of_a_fifth", with(h.Fifth)},
		{"leans_tried", check.MostLeans}, {"work_j", h.Whole.Work()}, {"lift_m", h.Lifts}, {"use", h.Use.String()},
	}
}

// tread is what a push of the feet on the floor does; turn_deg is null where it does not come back, which made says how, and
// ends_it_n where no push up to the own weight ends the rocking. Where the feet are out of reach all of that is null.
func tread(t trial.Tread) Object {
	return Object{
		{"load", t.Load}, {"ahead_of_hips_m", t.Ahead}, {"within_reach", t.Reaches}, {"one_degree_n", t.OneDegree}, {"push_n", t.Force},
		{"turn_deg", degrees(t.Turn)}, {"made", t.Made}, {"ends_it_n", where(!t.None, t.Hardest)}, {"ended_by", t.EndedBy},
	}
}

func event(e motion.Event) Object {
	return Object{{"kind", e.Kind.String()}, {"time_s", e.Time}, {"tilt_deg", degrees(e.Tilt)}, {"rate_rad_s", e.Rate}}
}

// survival is what a load comes back from. The shove is null where none was found or there is no back,
// and then nothing ended it.
func survival(s trial.Survival) Object {
	return Object{
		{"load", s.Load}, {"release_back_deg", degrees(s.Back)}, {"release_forward_deg", degrees(s.Forward)},
		{"shove_n", where(!s.ShoveNone, s.Shove)}, {"ended_by", s.EndedBy}, {"crest_speed_m_s", s.Speed},
		{"trials", each(s.Trials, fate)},
	}
}

func fate(f trial.Result) Object {
	return Object{
		{"name", f.Name}, {"outcome", f.Outcome.String()},
		{"least_margin_deg", degrees(f.Margin)}, {"largest_lift_share", f.Lift},
		{"use", f.Use.String()}, {"share", f.Share},
	}
}

func seatTest(s trial.SeatTest) Object {
	return Object{
		{"name", s.Name}, {"source", s.Source}, {"confidence", s.Confidence},
		{"force_n", s.Force}, {"tips_at_n", s.Tips}, {"outcome", s.Outcome.String()},
	}
}

func slope(s trial.SlopeTest) Object {
	return Object{
		{"name", s.Name}, {"slope_deg", degrees(s.Slope)}, {"stands", s.Rests}, {"margin_deg", degrees(s.Margin)},
	}
}

// room is what it sweeps, and by which load and limb; no name for the piece itself.
func room(n trial.Needed) Object {
	return Object{
		{"behind_m", n.Behind}, {"front_m", n.Front},
		{"crest_behind_m", n.Crest}, {"caught_under_m", n.Caught},
		{"behind_by", n.BehindBy}, {"front_by", n.FrontBy},
		{"hard_behind_m", n.Hard.Behind}, {"hard_front_m", n.Hard.Front},
		{"hard_behind_by", n.Hard.BehindBy}, {"hard_front_by", n.Hard.FrontBy},
		{"heels_m", n.Heels}, {"toes_m", n.Toes}, {"nose_comes_down_at_m", n.NoseComes},
	}
}

// sideway is how near a load is to going over sideways; the lean is of the person's own balance point.
func sideway(s check.Sideway) Object {
	return Object{{"load", s.Load}, {"margin_deg", degrees(s.Angle)}, {"lift_m", s.Lift}, {"lean_m", s.Lean}}
}

// walk is how the rockers walk, nil where their track is not known.
func walk(w *check.Walk) Object {
	if w == nil {
		return nil
	}
	return Object{
		{"heading_deg", degrees(w.Heading)}, {"lean_deg", degrees(w.Lean)},
		{"scrub_m", w.Scrub}, {"equal_enough_m", w.Enough},
	}
}
