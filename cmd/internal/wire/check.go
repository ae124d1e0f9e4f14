package wire

import (
	"math"

	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/trial"
)

// Check returns what was found out about a design. released are the releases as they were given,
// degrees; notes are what it assumes, found says each of its findings, in words.
func Check(a trial.Answer, released []float64, notes, found []string) Object {
	r := &a.Report
	findings := make([]Object, len(a.Findings))
	for i, f := range a.Findings {
		findings[i] = finding(f, found[i])
	}
	var rockers []Object // fitted to the rises or points of the floor edge
	if r.Curve != nil && r.Curve.Drawn != nil {
		rockers = append(rockers, fitted("drawn", r.Curve.Drawn))
	}
	var survives Object // of the worst of the loads that are asked something
	if a.Survives != nil {
		survives = survival(*a.Survives)
	}
	return Object{
		{"design", r.Design.Title}, {"kind", r.Design.Kind.String()}, {"rocker", edge(r.Balanced)},
		{"loads", each(r.Loads, func(l check.Load) Object { return load(r, &l, released) })},
		{"limits", each(r.Limits, limit)}, {"worth_a_look", each(r.Look, limit)}, {"notes", notes},
		{"people", each(r.Somebody, somebody)}, {"fit", each(r.Fit, fit)}, {"who_may_sit", may(r.May)},
		{"legs_beyond", filled(each(r.Beyond, beyond))}, {"bending", filled(each(r.Bending, bending))},
		{"rockers", filled(rockers)}, {"survives", filled(survives)}, {"findings", findings},
	}
}

// finding is one thing that is wrong, and how it is said.
func finding(f trial.Finding, text string) Object {
	name, posture := "", ""
	if f.Load != nil {
		name, posture = f.Load.Name, f.Load.Posture.String()
	}
	return Object{
		{"level", f.Level.String()}, {"who", given(f.Who)}, {"load", given(name)},
		{"posture", given(posture)}, {"side", given(f.Side.String())},
		{"what", f.What}, {"key", given(f.Key)},
		{"got", amount(f.Got, f.Kind)}, {"want", amount(f.Want, f.Kind)},
		{"spread", amount(f.Spread, f.Kind)}, {"unit", unit(f.Kind)}, {"text", text},
	}
}

func load(r *check.Report, l *check.Load, released []float64) Object {
	b, body, pull := l.Balance, r.Whole(l), r.Pull(l)
	role := ""
	if !l.Empty {
		role = l.Role.String()
	}
	swings := make([]Object, 0, len(r.Releases))
	for i, release := range r.Releases {
		if l.Upright() && !l.Moves() {
			break
		}
		s := l.Swing(release)
		swings = append(swings, Object{
			{"release_deg", released[i]},
			{"period_s", s.Period}, {"reach_deg", degrees(s.Reach)}, {"friction_needed", s.Friction},
			{"outcome", s.Outcome.String()},
		})
	}
	return append(Object{
		{"name", l.Name}, {"mass_kg", body.Mass}, {"centre_m", []float64{body.Centre.X, body.Centre.Y}},
		{"inertia_kgm2", body.Inertia},
		{"outcome", b.Outcome.String()}, {"rests", each(l.Equilibria(), equilibrium)},
		{"rest_tilt_deg", where(b.Outcome == sim.Rocks, degrees(b.Rest.Tilt))},
		{"steadiness_m", b.Steadiness}, {"period_s", b.Period},
		{"effort_back_n", l.EffortBack}, {"effort_forward_n", l.EffortForward},
		{"pull_slow_n", pull.Slow}, {"pull_sudden_n", pull.Sudden},
		{"seat_slope_deg", degrees(l.SeatFall)}, {"back_recline_deg", degrees(l.BackRecline)},
		{"back", margin(l.Back)}, {"forward", forward(l)}, {"swings", swings},
		{"righting", each(l.Righting(), righting)},
		{"posture", given(l.Posture.String())}, {"role", given(role)},
		{"floor_carries_kg", floorCarries(l)}, // of the person, and the piece does not
		{"back_gives", filled(give(l.Give))},
	}, feet(r, l)...)
}

// forward is the margin forward: of people whose feet stand on the floor as if they were off it.
func forward(l *check.Load) Object {
	if len(l.Legs) == 0 {
		return margin(l.Forward)
	}
	return append(margin(l.OffBalance.Forward), Object{{"of", person.FeetOff.String()}}...)
}

// floorCarries returns what the floor carries of who is on a load at its rest, kg.
func floorCarries(l *check.Load) float64 {
	sum := l.Standing
	for _, f := range l.Feet {
		sum += f.Carried
	}
	return sum
}

// feet are the entries of a load whose feet stand on the floor, of two people those of the first and the weights of both.
func feet(r *check.Report, l *check.Load) Object {
	some := func(angle float64) any { return where(!math.IsNaN(angle), degrees(angle)) }
	list := Object{{"rest_spread_deg", some(r.RestSpread(l))}}
	if len(l.Feet) == 0 {
		return list
	}
	pressed := l.Standing
	for _, f := range l.Feet {
		pressed += f.Pressed
	}
	first := l.Feet[0]
	fall, _ := l.PressedFall()
	return append(list,
		Object{
			{"rest_band_deg", []float64{degrees(l.Balance.Rest.Tilt), degrees(l.Pressed)}},
			{"seat_slope_band_deg", []any{some(l.SeatFall), some(fall)}},
			{"floor_carries_band_kg", []float64{floorCarries(l), pressed}},
			{"feet", Object{
				{"stage", first.Stage.String()}, {"heel_lifts_deg", some(first.HeelLifts)}, {"toe_leaves_deg", some(first.ToeLeaves)},
				{"assumes", "knees and ankles free to turn, a floor without friction; at the end of the band the calves press"},
			}},
			{"rigid", false},
		}...)
}

func equilibrium(e sim.Equilibrium) Object {
	return Object{{"tilt_deg", degrees(e.Tilt)}, {"height_m", e.Height}, {"stable", e.Stable}}
}

func margin(m sim.Margin) Object {
	var over any = absent{}
	if m.Exists() && m.Over != m.Tip { // another rest follows the tip
		over = degrees(m.Over)
	}
	return Object{
		{"tip_tilt_deg", degrees(m.Tip)}, {"margin_deg", degrees(m.Angle)},
		{"lift_m", m.Lift}, {"work_j", m.Work}, {"over_tilt_deg", over},
	}
}

func righting(p check.Righting) Object {
	return Object{{"tilt_deg", p.Degree}, {"arm_m", p.Arm}, {"height_m", p.Height}}
}

func limit(l check.Limit) Object {
	bound := "at_least"
	if l.AtMost {
		bound = "at_most"
	}
	return Object{
		{"name", named{l.Name, l.Kind}.String()}, {"load", l.Load},
		{bound, amount(l.Want, l.Kind)},
		{"got", amount(l.Got, l.Kind)}, {"holds", l.Holds}, {"basis", l.Basis},
		{"spread", amount(l.Spread, l.Kind)}, {"near", l.Near},
	}
}

// somebody is a person who was posed by sizes.
func somebody(one check.Somebody) Object {
	sizes := each(person.Sizes(), func(s person.Size) Object {
		value := "value_m"
		if s == person.Mass {
			value = "value_kg"
		}
		return Object{{"name", s.String()}, {value, one.Person.Sizes[s]}, {"source", one.Person.Sources[s].String()}}
	})
	age := where(one.Person.Age > 0, one.Person.Age) // not of a grown-up
	return Object{{"name", one.Name}, {"role", one.Role.String()}, {"age_years", age}, {"sizes", sizes}}
}

// fit is how a measure suits a person; a bound is null where common practice asks nothing.
func fit(f check.Fit) Object {
	return Object{
		{"who", f.Who}, {"key", f.Key}, {"what", f.What}, {"size", f.Size.String()},
		{"have_m", f.Have}, {"at_least_m", f.Low}, {"at_most_m", f.High}, {"change_m", f.Change},
		{"basis", "common practice"},
	}
}

// may says who may sit, nil where that was not asked; all four are null where nobody may.
func may(m *check.May) Object {
	if m == nil {
		return nil
	}
	return Object{
		{"lightest_kg", where(!m.Nobody, m.Lightest)}, {"heaviest_kg", where(!m.Nobody, m.Heaviest)},
		{"shortest_m", where(!m.Nobody, m.Shortest)}, {"tallest_m", where(!m.Nobody, m.Tallest)},
	}
}

// give is how a back bends under who leans on it.
func give(g *check.Give) Object {
	if g == nil {
		return nil
	}
	return Object{
		{"force_n", g.Force}, {"yield_m", g.Yield}, {"turn_deg", degrees(g.Turn)},
		{"stress_pa", g.Stress}, {"strength_share", g.Share},
	}
}

func bending(b check.Bending) Object {
	return Object{
		{"end", endOf(b.Tail)}, {"load", b.Load}, {"force_n", b.Force},
		{"along_grain_share_most", b.Along.Most}, {"short_grain_share_most", b.Across.Most},
	}
}

func beyond(b piece.Beyond) Object {
	return Object{{"legs", b.Which.String()}, {"end", endOf(b.Tail)}, {"by_m", b.By}, {"taken", b.Taken}}
}

func endOf(tail bool) string {
	if tail {
		return "tail"
	}
	return "nose"
}
