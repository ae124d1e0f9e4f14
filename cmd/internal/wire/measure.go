package wire

import (
	"math"

	"rockerwright/rocker/rises"
	"rockerwright/sim/check"
	shop "rockerwright/sim/readings"
	"rockerwright/sim/trial"
	"rockerwright/validation"
)

// Measure returns what the readings of a finished piece say.
func Measure(f check.Balanced) Object {
	values, doubts, rockers, slips := []Object{}, []Object{}, []Object{}, []Object{}
	if r := f.Read; r != nil {
		values = []Object{
			value("mass_kg", r.Mass), value("ahead_m", r.Ahead), value("above_m", r.Above), value("inertia_kgm2", r.Inertia),
		}
		if zero := r.Zero; !math.IsNaN(zero.Value) {
			zero.Value, zero.Uncertain = degrees(zero.Value), degrees(zero.Uncertain)
			values = append(values, value("level_zero_deg", zero))
		}
		doubts, slips = each(r.Doubts, doubt), each(r.Slips, slip)
	}
	var one any // null where only one was read
	apart := math.NaN()
	if c := f.Curve; c != nil {
		for _, side := range []struct {
			name string
			fit  *rises.Fit
		}{{"drawn", c.Drawn}, {"left", c.Left}, {"right", c.Right}} {
			if side.fit != nil {
				rockers = append(rockers, fitted(side.name, side.fit))
			}
		}
		if c.Left != nil && c.Right != nil {
			one, apart = c.One, math.Abs(c.Apart)
		}
	}
	return Object{
		{"design", f.Design.Title}, {"values", values}, {"doubts", doubts}, {"rockers", rockers},
		{"rockers_one_curve", one}, {"rockers_apart_m", apart}, {"slips_noticed", slips},
	}
}

func value(name string, v shop.Value) Object {
	return Object{{"name", name}, {"value", v.Value}, {"uncertain_95", v.Uncertain}, {"limited_by", v.Limits()}}
}

func doubt(d shop.Doubt) Object {
	kind := trial.KindOf(d.Reading)
	return Object{{"reading", d.Reading}, {"read", amount(d.Read, kind)}, {"expected", amount(d.Expected, kind)}}
}

func slip(s shop.Slip) Object {
	return Object{{"reading", s.Reading}, {"noticed_deg", degrees(s.Noticed)}}
}

// fitted is the curve of a side, as its stations say; a suspect counts from 1 at the nose.
func fitted(side string, f *rises.Fit) Object {
	arcs := each(f.Arcs, func(a rises.Arc) Object {
		return Object{{"radius_m", a.Radius}, {"uncertain_95_m", a.Uncertain}, {"from_m", a.From}, {"to_m", a.To}}
	})
	return Object{{"side", side}, {"arcs", arcs}, {"explained", f.Explains}, {"suspect_station", where(f.Suspect >= 0, f.Suspect+1)}}
}

// Case returns a case with a known answer, what was computed for it, and whether it holds.
func Case(c validation.Case, got float64, holds bool) Object {
	allowed := c.Tolerance
	if c.Accuracy > 0 {
		allowed = c.Accuracy * math.Abs(c.Want)
	}
	return Object{
		{"group", c.Group}, {"name", c.Name}, {"checks", c.Checks}, {"source", c.Source},
		{"unit", c.Unit}, {"want", c.Want}, {"got", got}, {"allowed", allowed},
		{"why", c.Why}, {"from_memory", c.Memory}, {"holds", holds},
	}
}
