package main

import (
	"math"

	"rockerwright/sim/trial"
)

type rockingJSON struct {
	Design    string         `json:"design"`
	Load      string         `json:"load"`
	Surface   string         `json:"floor_surface"`       // empty where the file says it by numbers, or nothing
	Taken     bool           `json:"floor_surface_taken"` // nothing was said of the floor
	Outcome   string         `json:"outcome"`
	End       string         `json:"end"`
	Duration  number         `json:"duration_s"`
	LastTilt  number         `json:"last_tilt_deg"`
	Friction  number         `json:"friction_needed"`
	Needs     number         `json:"floor_let_go_at_friction"` // null where it did not
	Margin    number         `json:"least_margin_deg"`
	Lift      number         `json:"largest_lift_share"`
	HalvesIn  number         `json:"halves_in_rocks"`
	Events    []eventJSON    `json:"events"`
	Survivals []survivalJSON `json:"survives"`
	Seating   []seatTestJSON `json:"seating_tests"`
	Slopes    []slopeJSON    `json:"slopes"`
	Room      roomJSON       `json:"room"`
	Sideways  []sidewayJSON  `json:"sideways"`
	Walk      *walkJSON      `json:"walk"`
}

type eventJSON struct {
	Kind string `json:"kind"`
	Time number `json:"time_s"`
	Tilt number `json:"tilt_deg"`
	Rate number `json:"rate_rad_s"`
}

type survivalJSON struct {
	Load    string     `json:"load"`
	Back    number     `json:"release_back_deg"`
	Forward number     `json:"release_forward_deg"`
	Shove   number     `json:"shove_n"`  // null where none was found, or there is no back
	EndedBy string     `json:"ended_by"` // what ends that shove; empty where none was found
	Speed   number     `json:"crest_speed_m_s"`
	Fates   []fateJSON `json:"trials"`
}

type fateJSON struct {
	Name    string `json:"name"`
	Outcome string `json:"outcome"`
	Margin  number `json:"least_margin_deg"`
	Lift    number `json:"largest_lift_share"`
}

type seatTestJSON struct {
	Name       string `json:"name"`
	Source     string `json:"source"`
	Confidence string `json:"confidence"`
	Force      number `json:"force_n"`
	Tips       number `json:"tips_at_n"`
	Outcome    string `json:"outcome"`
}

type slopeJSON struct {
	Name   string `json:"name"`
	Slope  number `json:"slope_deg"`
	Stands bool   `json:"stands"`
	Margin number `json:"margin_deg"`
}

type roomJSON struct {
	Behind number `json:"behind_m"`
	Front  number `json:"front_m"`
	Crest  number `json:"crest_behind_m"`
	Caught number `json:"caught_under_m"`

	BehindBy string `json:"behind_by"` // load and limb; empty for the piece itself
	FrontBy  string `json:"front_by"`
}

type sidewayJSON struct {
	Load  string `json:"load"`
	Angle number `json:"margin_deg"`
	Lift  number `json:"lift_m"`
	Lean  number `json:"lean_m"` // of the person's own balance point to the side
}

type walkJSON struct {
	Heading number `json:"heading_deg"`
	Lean    number `json:"lean_deg"`
	Scrub   number `json:"scrub_m"`
	Enough  number `json:"equal_enough_m"`
}

func rockingOf(r trial.Rocking) rockingJSON {
	t := r.Trace
	j := rockingJSON{
		Design: r.Report.Design.Title, Load: r.Load.Name, Surface: r.Report.Design.Floor.Surface.String(), Taken: r.FloorTaken, Outcome: t.Outcome.String(), End: t.End.String(), Duration: number(t.Duration),
		LastTilt: degrees(t.Last.Tilt), Friction: number(t.Friction), Needs: number(math.NaN()), Margin: degrees(t.Margin), Lift: number(t.Lift), HalvesIn: number(r.HalvesIn),
		Events: []eventJSON{}, Survivals: []survivalJSON{}, Seating: []seatTestJSON{}, Slopes: []slopeJSON{}, Sideways: []sidewayJSON{},
		Room: roomJSON{number(r.Room.Behind), number(r.Room.Front), number(r.Room.Crest), number(r.Room.Caught), r.Room.BehindBy, r.Room.FrontBy},
	}
	if t.Needs > 0 {
		j.Needs = number(t.Needs)
	}
	for _, e := range t.Events {
		j.Events = append(j.Events, eventJSON{e.Kind.String(), number(e.Time), degrees(e.Tilt), number(e.Rate)})
	}
	for _, s := range r.Survivals {
		j.Survivals = append(j.Survivals, survivalOf(s))
	}
	for _, s := range r.Seating {
		j.Seating = append(j.Seating, seatTestJSON{s.Name, s.Source, s.Confidence, number(s.Force), number(s.Tips), s.Outcome.String()})
	}
	for _, s := range r.Slopes {
		j.Slopes = append(j.Slopes, slopeJSON{s.Name, degrees(s.Slope), s.Rests, degrees(s.Margin)})
	}
	for _, s := range r.Sideways {
		j.Sideways = append(j.Sideways, sidewayJSON{s.Load, degrees(s.Angle), number(s.Lift), number(s.Lean)})
	}
	if w := r.Walk; w != nil {
		j.Walk = &walkJSON{degrees(w.Heading), degrees(w.Lean), number(w.Scrub), number(w.Enough)}
	}
	return j
}

func survivalOf(s trial.Survival) survivalJSON {
	j := survivalJSON{Load: s.Load, Back: degrees(s.Back), Forward: degrees(s.Forward), Shove: number(s.Shove), EndedBy: s.EndedBy, Speed: number(s.Speed), Fates: []fateJSON{}}
	if s.ShoveNone {
		j.Shove = number(math.NaN())
	}
	for _, f := range s.Fates {
		j.Fates = append(j.Fates, fateJSON{f.Name, f.Outcome.String(), degrees(f.Margin), number(f.Lift)})
	}
	return j
}
