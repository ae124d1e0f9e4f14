package main

import (
	"encoding/json"
	"io"
	"math"
	"strconv"
	"strings"

	"rockerwright/cmd/internal/words"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/trial"
)

// number is a float64 that is null in JSON where there is none.
type number float64

func (n number) MarshalJSON() ([]byte, error) {
	return n.append(make([]byte, 0, 24)), nil
}

// append adds the number to a text.
func (n number) append(text []byte) []byte {
	x := float64(n)
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return append(text, "null"...)
	}
	return strconv.AppendFloat(text, x+0, 'g', -1, 64) // never -0
}

// degrees returns an angle in degrees.
func degrees(x float64) number { return number(x * 180 / math.Pi) }

type reportJSON struct {
	Design string      `json:"design"`
	Kind   string      `json:"kind"`
	Loads  []loadJSON  `json:"loads"`
	Limits []limitJSON `json:"limits"`
	Look   []limitJSON `json:"worth_a_look"`
	Notes  []string    `json:"notes"`

	People  []personJSON  `json:"people"`
	Fit     []fitJSON     `json:"fit"`
	May     *mayJSON      `json:"who_may_sit"`
	Beyond  []beyondJSON  `json:"legs_beyond,omitempty"` // the rockers, where nothing carries them
	Bending []bendingJSON `json:"bending,omitempty"`     // of the rockers, where their sizes are given
	Rockers []rockerJSON  `json:"rockers,omitempty"`     // fitted to the rises or points of the floor edge

	Survives *survivalJSON `json:"survives,omitempty"` // of the worst of the loads that are asked something

	Findings []findingJSON `json:"findings"` // all that is wrong, the gravest first
}

// findingJSON is one thing that is wrong.
type findingJSON struct {
	Level   string `json:"level"`
	Who     string `json:"who,omitempty"`
	Load    string `json:"load,omitempty"`
	Posture string `json:"posture,omitempty"`
	Side    string `json:"side,omitempty"`
	What    string `json:"what"`
	Key     string `json:"key,omitempty"`
	Got     number `json:"got"`
	Want    number `json:"want"`
	Spread  number `json:"spread"`
	Unit    string `json:"unit"`
	Text    string `json:"text"`
}

func foundOf(a trial.Answer) []findingJSON {
	said := words.Findings(a)
	list := make([]findingJSON, len(said))
	for i, f := range a.Findings {
		j := findingJSON{Level: f.Level.String(), Who: f.Who, Side: f.Side.String(), What: f.What, Key: f.Key, Text: said[i]}
		j.Got, j.Unit = inUnit(f.Got, f.Kind)
		j.Want, _ = inUnit(f.Want, f.Kind)
		j.Spread, _ = inUnit(f.Spread, f.Kind)
		if f.Load != nil {
			j.Load, j.Posture = f.Load.Name, f.Load.Posture.String()
		}
		list[i] = j
	}
	return list
}

type loadJSON struct {
	Name          string      `json:"name"`
	Mass          number      `json:"mass_kg"`
	Centre        [2]number   `json:"centre_m"`
	Inertia       number      `json:"inertia_kgm2"`
	Outcome       string      `json:"outcome"`
	Rests         []restJSON  `json:"rests"`
	RestTilt      number      `json:"rest_tilt_deg"`
	Steadiness    number      `json:"steadiness_m"`
	Period        number      `json:"period_s"`
	EffortBack    number      `json:"effort_back_n"`
	EffortForward number      `json:"effort_forward_n"`
	PullSlow      number      `json:"pull_slow_n"`
	PullSudden    number      `json:"pull_sudden_n"`
	SeatSlope     number      `json:"seat_slope_deg"`
	BackRecline   number      `json:"back_recline_deg"`
	Back          marginJSON  `json:"back"`
	Forward       marginJSON  `json:"forward"`
	Swings        []swingJSON `json:"swings"`
	Righting      righting    `json:"righting"`
	Posture       string      `json:"posture,omitempty"`
	Role          string      `json:"role,omitempty"`
	Standing      number      `json:"floor_carries_kg"` // of the person, and the piece does not
	Give          *giveJSON   `json:"back_gives,omitempty"`
}

type restJSON struct {
	Tilt   number `json:"tilt_deg"`
	Height number `json:"height_m"`
	Stable bool   `json:"stable"`
}

type marginJSON struct {
	Tip    number  `json:"tip_tilt_deg"`
	Margin number  `json:"margin_deg"`
	Lift   number  `json:"lift_m"`
	Work   number  `json:"work_j"`
	Over   *number `json:"over_tilt_deg,omitempty"` // only where another rest follows the tip
}

type swingJSON struct {
	Release  number `json:"release_deg"`
	Period   number `json:"period_s"`
	Reach    number `json:"reach_deg"`
	Friction number `json:"friction_needed"`
	Outcome  string `json:"outcome"`
}

// righting is the righting curve, {"tilt_deg", "arm_m", "height_m"} at each whole degree:
// by far the longest part, and so written number by number.
type righting []check.Righting

func (r righting) MarshalJSON() ([]byte, error) {
	text := append(make([]byte, 0, 2+80*len(r)), '[')
	for i, p := range r {
		if i > 0 {
			text = append(text, ',')
		}
		text = number(p.Degree).append(append(text, `{"tilt_deg":`...))
		text = number(p.Arm).append(append(text, `,"arm_m":`...))
		text = number(p.Height).append(append(text, `,"height_m":`...))
		text = append(text, '}')
	}
	return append(text, ']'), nil
}

type limitJSON struct {
	Name    string  `json:"name"`
	Load    string  `json:"load"`
	AtLeast *number `json:"at_least,omitempty"`
	AtMost  *number `json:"at_most,omitempty"`
	Got     number  `json:"got"`
	Holds   bool    `json:"holds"`
	Basis   string  `json:"basis"`
}

// printJSON prints the answers for a program: one object, or an array where several
// designs were asked for. released are the releases as they were given, degrees.
func printJSON(out io.Writer, answers []answered, released []float64) error {
	reports := make([]reportJSON, len(answers))
	for i, a := range answers {
		reports[i] = reportOf(a.report, released)
	}
	encoder := json.NewEncoder(out)
	encoder.SetEscapeHTML(false)
	if len(reports) == 1 {
		return encoder.Encode(reports[0])
	}
	return encoder.Encode(reports)
}

func reportOf(a trial.Answer, released []float64) reportJSON {
	r := a.Report
	j := reportJSON{
		Design: r.Design.Title, Kind: r.Design.Kind.String(),
		Loads:  make([]loadJSON, len(r.Loads)),
		Limits: limitsOf(r.Limits), Look: limitsOf(r.Look), Notes: words.Notes(r),
		People: peopleOf(r), Fit: fitOf(r), May: mayOf(r.May), Beyond: beyondOf(r), Bending: bendingOf(r),
	}
	if r.Curve != nil && r.Curve.Drawn != nil {
		j.Rockers = []rockerJSON{rockerOf("drawn", r.Curve.Drawn)}
	}
	if a.Survives != nil {
		one := survivalOf(*a.Survives)
		j.Survives = &one
	}
	j.Findings = foundOf(a)
	for i := range r.Loads {
		j.Loads[i] = loadOf(&r, &r.Loads[i], released)
	}
	return j
}

func loadOf(r *check.Report, l *check.Load, released []float64) loadJSON {
	b, body, pull := l.Balance, l.Rig.Body, r.Pull(l)
	j := loadJSON{
		Name: l.Name, Mass: number(body.Mass), Centre: [2]number{number(body.Centre.X), number(body.Centre.Y)}, Inertia: number(body.Inertia),
		Outcome: b.Outcome.String(), RestTilt: number(math.NaN()), Steadiness: number(b.Steadiness), Period: number(b.Period),
		EffortBack: number(l.EffortBack), EffortForward: number(l.EffortForward), PullSlow: number(pull.Slow), PullSudden: number(pull.Sudden),
		SeatSlope: degrees(l.SeatFall), BackRecline: degrees(l.BackRecline),
		Back: marginOf(b.Back), Forward: marginOf(b.Forward),
		Rests: []restJSON{}, Swings: []swingJSON{}, Righting: l.Righting(),
	}
	j.Posture, j.Standing, j.Give = l.Posture.String(), number(l.Standing), giveOf(l.Give)
	if !l.Empty {
		j.Role = l.Role.String()
	}
	if b.Outcome == sim.Rocks {
		j.RestTilt = degrees(b.Rest.Tilt)
	}
	for _, e := range l.Equilibria() {
		j.Rests = append(j.Rests, restJSON{degrees(e.Tilt), number(e.Height), e.Stable})
	}
	for i, release := range r.Releases {
		s := l.Swing(release)
		j.Swings = append(j.Swings, swingJSON{number(released[i]), number(s.Period), degrees(s.Reach), number(s.Friction), s.Outcome.String()})
	}
	return j
}

func marginOf(m sim.Margin) marginJSON {
	j := marginJSON{Tip: degrees(m.Tip), Margin: degrees(m.Angle), Lift: number(m.Lift), Work: number(m.Work)}
	if m.Exists() && m.Over != m.Tip {
		over := degrees(m.Over)
		j.Over = &over
	}
	return j
}

// limitsOf returns limits with the unit of their numbers at the end of their name.
func limitsOf(limits []check.Limit) []limitJSON {
	list := make([]limitJSON, len(limits))
	for i, l := range limits {
		list[i] = limitJSON{Name: l.Name, Load: l.Load, Holds: l.Holds, Basis: l.Basis}
		var unit string
		if list[i].Got, unit = inUnit(l.Got, l.Kind); unit != "1" {
			list[i].Name += "_" + strings.ToLower(unit)
		}
		if least, _ := inUnit(l.AtLeast, l.Kind); math.IsNaN(l.AtMost) {
			list[i].AtLeast = &least
		} else {
			most, _ := inUnit(l.AtMost, l.Kind)
			list[i].AtMost = &most
		}
	}
	return list
}
