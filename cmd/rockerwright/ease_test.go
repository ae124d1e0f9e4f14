package main

import (
	"bytes"
	"encoding/json"
	"math"
	"strings"
	"testing"
)

// TestWhoRises: of an owner who is only ever rising or pushing up the commands say where it rests and what it keeps
// forward, nothing of motion, and nothing that is no number.
func TestWhoRises(t *testing.T) {
	for _, posture := range []string{"rising", "pushing up"} {
		for _, command := range []string{"check", "check --all", "whatif", "report --text", "size target.one_rock=2.2"} {
			var stdout, stderr bytes.Buffer
			args := append(strings.Fields(command), "sitter.posture="+posture)
			if code := run(args, &stdout, &stderr); code == noAnswer || stderr.Len() > 0 {
				t.Errorf("%s: %d, %s", args, code, &stderr)
			}
			for _, never := range []string{"on a flat", "NaN", "Inf"} {
				if strings.Contains(stdout.String(), never) {
					t.Errorf("%s says %q", args, never)
				}
			}
		}
		var stdout, stderr bytes.Buffer
		code := run([]string{"rock", "sitter.posture=" + posture}, &stdout, &stderr)
		if code != noAnswer || !strings.Contains(stderr.String(), "part of the weight on the floor") {
			t.Errorf("rock of who is %s: %d, %q", posture, code, &stderr)
		}
	}
}

// TestBuiltInAtEase holds the built-in chair with its owner at ease to what was worked out for it by hand and by a
// second program, apart from this one: 5 ft 10 in and 180 lb, on the back, feet on the floor. The tolerances are what
// the two left open: the rounding of what they printed, and of the toe where the mass of a foot lies.
func TestBuiltInAtEase(t *testing.T) {
	var stdout, stderr bytes.Buffer
	if code := run([]string{"check", "--json"}, &stdout, &stderr); code != allHold {
		t.Fatal(code, stderr.String())
	}
	var j struct {
		Loads []struct {
			Name        string
			Rest        float64    `json:"rest_tilt_deg"`
			Period      *float64   `json:"period_s"`
			Fall        float64    `json:"seat_slope_deg"`
			Band        [2]float64 `json:"seat_slope_band_deg"`
			Carries     float64    `json:"floor_carries_kg"`
			CarriesBand [2]float64 `json:"floor_carries_band_kg"`
			Spread      *float64   `json:"rest_spread_deg"`
			Rigid       *bool
			Back        struct {
				Margin *float64 `json:"margin_deg"`
				Tip    *float64 `json:"tip_tilt_deg"`
				Work   *float64 `json:"work_j"`
			}
			Forward struct{ Of string }
			Swings  []any
			Feet    struct {
				Stage  string
				Lifts  float64 `json:"heel_lifts_deg"`
				Leaves float64 `json:"toe_leaves_deg"`
			}
		}
	}
	if err := json.Unmarshal(stdout.Bytes(), &j); err != nil {
		t.Fatal(err)
	}
	l := j.Loads[1]
	drawn := l.Fall - l.Rest // the fall of the seat at tilt 0
	for _, tt := range []struct {
		what              string
		got, want, within float64
	}{
		{"fall at which the heel lifts", l.Feet.Lifts + drawn, 7.1, 0.1},
		{"fall at the relaxed rest", l.Fall, 11.8, 0.2},
		{"fall with the calves pressing", l.Band[1], 15.0, 0.2},
		{"share of the floor there, kg", l.CarriesBand[1], 5.44, 0.01},
		{"fall at which the toe leaves", l.Feet.Leaves + drawn, 18, 2},
		{"fall at the hilltop", *l.Back.Tip + drawn, 48.6, 0.2},
		{"before going back", *l.Back.Margin, 37, 0.5},
		{"work to the hilltop, J", *l.Back.Work, 50, 2},
		{"one rock, s", *l.Period, 2.15, 0.07},
		{"spread of the rest for 25 mm of balance point", *l.Spread, 3, 0.5},
	} {
		if math.Abs(tt.got-tt.want) > tt.within {
			t.Errorf("%s: %v, want %v", tt.what, tt.got, tt.want)
		}
	}
	if l.Name != "owner, at ease" || l.Feet.Stage != "heel lifted" || l.Rigid == nil || *l.Rigid || l.Forward.Of != "feet off" ||
		l.Band[0] != l.Fall || l.CarriesBand[0] != l.Carries {
		t.Errorf("%+v", l)
	}
	for _, l := range j.Loads {
		if partly := l.Name == "owner, rising" || l.Name == "owner, pushing up"; partly &&
			(l.Period != nil || l.Back.Margin != nil || len(l.Swings) > 0 || l.Carries <= 0) {
			t.Errorf("%s has part of the weight on the floor, and something is said of its motion: %+v", l.Name, l)
		}
	}
}
