package main

import (
	"encoding/json"
	"io"
	"math"

	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/size"
)

// A likeJSON is what size --like says to a program.
type likeJSON struct {
	Old    feelJSON   `json:"old"`
	New    feelJSON   `json:"new"`
	Ways   []wayJSON  `json:"ways"`
	Custom []ruleJSON `json:"common_practice"`
}

// A feelJSON is how a piece rocks with its owner at ease.
type feelJSON struct {
	Design     string `json:"design"`
	Load       string `json:"load"`
	Radius     number `json:"radius_m"`
	Height     number `json:"height_m"`
	Gyration   number `json:"gyration_m"`
	Steadiness number `json:"steadiness_m"`
	Period     number `json:"period_s"`
}

// A wayJSON is one way to keep the feel: exact, and rounded to what a maker sets.
type wayJSON struct {
	Keeps   string           `json:"keeps"`
	Found   bool             `json:"found"`
	Radius  number           `json:"radius_exact_m"`
	Scale   number           `json:"scale"`
	Rounded *sizedRockerJSON `json:"rounded"`
}

// A sizedRockerJSON is a rocker, and what it does.
type sizedRockerJSON struct {
	Arcs      []spanJSON     `json:"arcs"`
	Nose      number         `json:"nose_m"`
	Tail      number         `json:"tail_m"`
	Behind    number         `json:"behind_low_point_m"`
	TipToTip  number         `json:"tip_to_tip_m"`
	Holds     bool           `json:"limits_hold"`
	Loads     []sizeLoadJSON `json:"loads"`
	FailsMost []string       `json:"limits_failing"`
}

// A spanJSON is an arc, a flat or a corner, from nose to tail.
type spanJSON struct {
	Radius number `json:"radius_m,omitempty"`
	Length number `json:"length_m,omitempty"`
	Flat   number `json:"flat_m,omitempty"`
	Turn   number `json:"turn_deg,omitempty"`
}

// A sizeLoadJSON is a load on a rocker.
type sizeLoadJSON struct {
	Name       string `json:"name"`
	Outcome    string `json:"outcome"`
	Period     number `json:"period_s"`
	SeatFall   number `json:"seat_slope_deg"`
	BackLeans  number `json:"back_recline_deg"`
	Effort     number `json:"effort_back_n"`
	BackMargin number `json:"back_margin_deg"`
	BackLift   number `json:"back_lift_m"`
	Forward    number `json:"forward_margin_deg"`
	ForwardUp  number `json:"forward_lift_m"`
}

// A ruleJSON is a rule of the trade.
type ruleJSON struct {
	Rule   string `json:"rule"`
	Height number `json:"height_m"`
	Radius number `json:"radius_m"`
	Period number `json:"period_s"`
}

// customNames name the rules of the trade to a program.
var customNames = [...]string{"pi_seat_height", "pi_leg_length", "pi_navel_height", "centre_at_chin", "start_36_in", "start_40_in", "commonest_42_in"}

// printLikeJSON prints a likeness for a program.
func printLikeJSON(out io.Writer, l size.Likeness) error {
	j := likeJSON{Old: feelOf(l.Old, l.OldPiece), New: feelOf(l.New, l.Wanted)}
	for _, k := range l.Ways {
		w := wayJSON{Keeps: k.Way.String(), Found: k.Found, Radius: number(math.NaN()), Scale: number(math.NaN())}
		if k.Found {
			w.Radius, w.Scale, w.Rounded = number(k.Exact), number(k.Scale), sizedRockerOf(k.Report)
		}
		j.Ways = append(j.Ways, w)
	}
	for _, r := range l.Rules {
		j.Custom = append(j.Custom, ruleJSON{customNames[r.Name], number(r.Height), number(r.Radius), number(r.Period)})
	}
	return encoded(out, j)
}

// encoded prints a value as JSON, text as it is.
func encoded(out io.Writer, value any) error {
	encoder := json.NewEncoder(out)
	encoder.SetEscapeHTML(false)
	return encoder.Encode(value)
}

func feelOf(f size.Feel, r check.Balanced) feelJSON {
	if !(f.Radius > 0) {
		nan := number(math.NaN())
		return feelJSON{r.Design.Title, f.Load.Name, nan, nan, nan, nan, nan}
	}
	return feelJSON{r.Design.Title, f.Load.Name, number(f.Radius), number(f.Height), number(f.Gyration), number(f.Steadiness), number(f.Period)}
}

// sizedRockerOf returns a rocker and its loads.
func sizedRockerOf(r check.Balanced) *sizedRockerJSON {
	nose, tail := r.Edge.Reach()
	j := &sizedRockerJSON{Nose: number(nose), Tail: number(tail), Behind: number(r.Design.Seat.Behind), TipToTip: number(r.Tape.TipToTip), Holds: r.Holds(), FailsMost: []string{}}
	for _, l := range r.Limits {
		if !l.Holds {
			j.FailsMost = append(j.FailsMost, l.Load+": "+l.Name)
		}
	}
	drawn := r.Design.Rocker.Arcs
	if len(drawn) == 0 {
		drawn = []piece.Arc{{Radius: r.Design.Rocker.Radius, Length: nose + tail}}
	}
	for _, a := range drawn {
		j.Arcs = append(j.Arcs, spanJSON{number(a.Radius), number(a.Length), number(a.Flat), degrees(a.Turn)})
	}
	for i := range r.Loads {
		l := &r.Loads[i]
		b := l.Balance
		j.Loads = append(j.Loads, sizeLoadJSON{l.Name, b.Outcome.String(), number(b.Period), degrees(l.SeatFall), degrees(l.BackRecline), number(l.EffortBack),
			degrees(b.Back.Angle), number(b.Back.Lift), degrees(b.Forward.Angle), number(b.Forward.Lift)})
	}
	return j
}

// A sizedJSON is what size says of a target to a program.
type sizedJSON struct {
	Design    string         `json:"design"`
	Met       bool           `json:"met"`
	Best      int            `json:"best"` // of proposals, counting from 0
	Proposals []proposalJSON `json:"proposals"`
	Others    []proposalJSON `json:"others"`
}

// A proposalJSON is a rocker that was found.
type proposalJSON struct {
	Fitted int             `json:"fitted_arcs,omitempty"` // of even time
	Curve  string          `json:"curve"`
	Met    bool            `json:"met"`
	Aims   []aimJSON       `json:"aims"`
	Even   []evenJSON      `json:"evenness"`
	Rocker sizedRockerJSON `json:"rocker"`
}

// An aimJSON is how an aim came out. Angles are degrees, lengths metres, times seconds.
type aimJSON struct {
	Aim  string `json:"aim"`
	Load string `json:"load,omitempty"`
	Want number `json:"want"`
	Got  number `json:"got"`
	Met  bool   `json:"met"`
}

// An evenJSON is the time of a rock from one release.
type evenJSON struct {
	Release number `json:"release_deg"`
	Period  number `json:"period_s"`
}

// aimNames name the aims to a program, with their units.
var aimNames = [...]string{"one_rock_s", "seat_slope_deg", "back_recline_deg", "seat_slope_empty_deg", "largest_tilt_deg", "", "longest_m", "stock_width_m", "stock_length_m", "smallest_radius_m", "off_joints_deg", "sensible"}

// printSizedJSON prints the rockers found for a target.
func printSizedJSON(out io.Writer, d piece.Design, found size.Solution, others []size.Proposal) error {
	j := sizedJSON{Design: d.Title, Met: found.Take().Met(), Best: found.Best, Others: []proposalJSON{}}
	for _, p := range found.Proposals {
		j.Proposals = append(j.Proposals, proposalOf(p))
	}
	for _, p := range others {
		j.Others = append(j.Others, proposalOf(p))
	}
	return encoded(out, j)
}

func proposalOf(p size.Proposal) proposalJSON {
	j := proposalJSON{Curve: p.Curve.String(), Fitted: p.Fitted, Met: p.Met(), Aims: []aimJSON{}, Even: []evenJSON{}}
	if len(p.Report.Loads) > 0 {
		j.Rocker = *sizedRockerOf(p.Report)
	}
	for i, release := range p.Even.Releases {
		j.Even = append(j.Even, evenJSON{degrees(release), number(p.Even.Periods[i])})
	}
	for _, m := range p.Misses {
		name, in := aimNames[m.Aim], m.Aim == size.SeatFalls || m.Aim == size.BackLeans || m.Aim == size.SeatFallsEmpty || m.Aim == size.LargestTilt || m.Aim == size.OffJoints
		load := ""
		if m.Aim == size.KeepsLimit {
			name, load = limitsOf([]check.Limit{m.Limit})[0].Name, m.Limit.Load
			in = m.Limit.Kind == quantity.Angle
		}
		want, got := number(m.Want), number(m.Got)
		if in {
			want, got = degrees(m.Want), degrees(m.Got)
		}
		j.Aims = append(j.Aims, aimJSON{name, load, want, got, m.Met()})
	}
	return j
}
