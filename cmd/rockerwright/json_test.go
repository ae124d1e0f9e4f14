package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// asked returns the JSON that check prints for a design, decoded.
func asked(t *testing.T, text string, args ...string) map[string]any {
	t.Helper()
	path := filepath.Join(t.TempDir(), "chair.toml")
	overwrite(t, path, text)
	var out, errs bytes.Buffer
	if code := run(append([]string{"check", path, "--json"}, args...), &out, &errs); code == noAnswer {
		t.Fatalf("exit %d: %s", code, &errs)
	}
	var j map[string]any
	if err := json.Unmarshal(out.Bytes(), &j); err != nil {
		t.Fatalf("%v in %s", err, &out)
	}
	return j
}

const inchTwin = `title = "Twin"
[rocker]
nose = 17
arcs = [{radius = 40, length = 25}, {turn = 2}, {radius = 50, length = 16}]
[seat]
front = "16 1/2"
rear = "15-7/8"
depth = 18
width = 20
behind_low_point = 7
[back]
recline = 15
height = 28
[piece]
weight = 26
[sitter]
name = "owner"
weight = 180
ahead = "6 3/4"
above = 9.25
[floor]
slope = 1
`

const metricTwin = `title = "Twin"
units = "metric"
[rocker]
nose = 431.8
arcs = [{radius = "1.016 m", length = 635}, {turn = 2}, {radius = 1270, length = 406.4}]
[seat]
front = 419.1
rear = "403.225"
depth = "457,2"
width = 508
behind_low_point = "17.78 cm"
[back]
recline = 15
height = 711.2
[piece]
weight = 11.79340162
[sitter]
name = "owner"
weight = 81.6466266
ahead = 171.45
above = 234.95
[floor]
slope = 1
`

// TestTwinsGiveTheSameJSON: an inch file and its metric twin, to 1e-12 of the size of
// the piece, 1 (m, rad, s, degree) or more.
func TestTwinsGiveTheSameJSON(t *testing.T) {
	a, b := asked(t, inchTwin), asked(t, metricTwin)
	delete(a, "notes") // in the maker's units
	delete(b, "notes")
	compare(t, "", a, b)
}

// compare reports numbers that differ, and anything else that is not the same.
func compare(t *testing.T, path string, a, b any) {
	t.Helper()
	switch x := a.(type) {
	case map[string]any:
		y, _ := b.(map[string]any)
		for key := range x {
			compare(t, path+"."+key, x[key], y[key])
		}
	case []any:
		y, _ := b.([]any)
		if len(x) != len(y) {
			t.Errorf("%s: %d and %d", path, len(x), len(y))
			return
		}
		for i := range x {
			compare(t, fmt.Sprintf("%s[%d]", path, i), x[i], y[i])
		}
	case float64:
		y, isNumber := b.(float64)
		if !isNumber || math.Abs(x-y) > 1e-12*max(1, math.Abs(x)) {
			t.Errorf("%s: %v and %v", path, a, b)
		}
	default:
		if a != b {
			t.Errorf("%s: %v and %v", path, a, b)
		}
	}
}

// TestPeopleAndFit holds the parts of the answer that say who was posed and how the piece
// fits, on the built-in chair.
func TestPeopleAndFit(t *testing.T) {
	var stdout, stderr bytes.Buffer
	if code := run([]string{"check", "--json"}, &stdout, &stderr); code != allHold {
		t.Fatal(code, stderr.String())
	}
	var j struct {
		Loads []struct {
			Name, Posture, Role string
			Mass                float64 `json:"mass_kg"`
			Floor               float64 `json:"floor_carries_kg"`
			Feet                map[string]any
		}
		People []struct {
			Name  string
			Sizes []struct {
				Name   string
				Metres float64 `json:"value_m"`
				Mass   float64 `json:"value_kg"`
				Source string
			}
		}
		Fit []struct {
			Key    string
			Have   float64  `json:"have_m"`
			Low    float64  `json:"at_least_m"`
			High   *float64 `json:"at_most_m"`
			Change float64  `json:"change_m"`
			Basis  string
		}
		May struct {
			Lightest float64 `json:"lightest_kg"`
			Heaviest float64 `json:"heaviest_kg"`
		} `json:"who_may_sit"`
	}
	if err := json.Unmarshal(stdout.Bytes(), &j); err != nil {
		t.Fatal(err)
	}
	empty := j.Loads[0].Mass
	const owner = 180 * 0.45359237
	for _, l := range j.Loads {
		if strings.HasPrefix(l.Name, "owner, ") && l.Posture != "child on the lap" {
			got := l.Mass - empty
			if len(l.Feet) == 0 { // else as posed, feet and all
				got += l.Floor
			}
			if math.Abs(got-owner) > 1e-9 {
				t.Errorf("%s: the piece and the floor carry %v kg of %v", l.Name, got, owner)
			}
		}
		if (l.Role == "") != (l.Name == "empty") {
			t.Errorf("%s has the role %q", l.Name, l.Role)
		}
	}
	if p := j.People[0]; p.Name != "owner" || p.Sizes[0].Source != "given" ||
		math.Abs(p.Sizes[0].Metres-70*0.0254) > 1e-12 || math.Abs(p.Sizes[1].Mass-owner) > 1e-12 ||
		p.Sizes[2].Source != "estimated" {
		t.Errorf("the first person is %+v", p)
	}
	for _, f := range j.Fit {
		high := math.Inf(1)
		if f.High != nil {
			high = *f.High
		}
		if got := f.Have + f.Change; got < f.Low-1e-12 || got > high+1e-12 || f.Basis != "common practice" {
			t.Errorf("%s: %v changed by %v is not within %v and %v (%s)", f.Key, f.Have, f.Change, f.Low, high, f.Basis)
		}
	}
	if len(j.Fit) == 0 || !(j.May.Lightest < owner && owner < j.May.Heaviest) {
		t.Errorf("fit %+v, who may sit %+v", j.Fit, j.May)
	}
}

// TestContract holds the fields of the contract, by name, of a load with all of them.
func TestContract(t *testing.T) {
	j := asked(t, inchTwin, "--release", "5,-0.1,170")
	fields := func(v any) string {
		var names []string
		for name := range v.(map[string]any) {
			names = append(names, name)
		}
		slices.Sort(names)
		return strings.Join(names, " ")
	}
	load := j["loads"].([]any)[1].(map[string]any)
	first := func(name string) any { return load[name].([]any)[0] }
	for _, tt := range []struct {
		what string
		got  any
		want string
	}{
		{"report", j, "design findings fit kind limits loads notes people rocker survives who_may_sit worth_a_look"},
		{"load", load,
			"back back_recline_deg centre_m effort_back_n effort_forward_n floor_carries_kg forward " +
				"inertia_kgm2 mass_kg name outcome period_s posture pull_slow_n pull_sudden_n " +
				"rest_spread_deg rest_tilt_deg rests righting role seat_slope_deg steadiness_m swings"},
		{"rest", first("rests"), "height_m stable tilt_deg"},
		{"margin", load["back"], "lift_m margin_deg tip_tilt_deg work_j"},
		{"swing", first("swings"), "friction_needed outcome period_s reach_deg release_deg"},
		{"righting", first("righting"), "arm_m height_m tilt_deg"},
		{"limit", j["limits"].([]any)[0], "at_least basis got holds load name near spread"},
	} {
		if got := fields(tt.got); got != tt.want {
			t.Errorf("%s: %s\nwant %s", tt.what, got, tt.want)
		}
	}
	swings := load["swings"].([]any)
	for i, given := range []float64{5, -0.1, 170} {
		s := swings[i].(map[string]any)
		if s["release_deg"] != given {
			t.Errorf("release %v comes back as %v", given, s["release_deg"])
		}
		if over := s["outcome"] != "rocks"; over != (s["period_s"] == nil) || over != (s["reach_deg"] == nil) ||
			over != (s["friction_needed"] == nil) {
			t.Errorf("swing %+v", s)
		}
	}
	if name := j["loads"].([]any)[0].(map[string]any)["name"]; name != "empty" {
		t.Errorf("the first load is %v", name)
	}
}

// TestProgramWrittenFile: plain numbers of a program arrive bit for bit and give the
// closed form to 12 digits.
func TestProgramWrittenFile(t *testing.T) {
	const radius, h, k2, mass = 1.0234567891234567, 0.6123456789012345, 0.12345678901234567, 81.23456789012345
	text := fmt.Sprintf("units = \"metric\"\n[rocker]\nradius = \"%v m\"\nnose = \"%v m\"\ntail = \"%v m\"\n"+
		"[body]\nmass = %v\ncentre = [\"%v m\", \"%v m\"]\ninertia = %v\n",
		radius, 0.4, 0.5, mass, 1e-05, h, mass*k2)
	l := asked(t, text)["loads"].([]any)[0].(map[string]any)
	if l["mass_kg"] != mass || l["centre_m"].([]any)[1] != h || l["centre_m"].([]any)[0] != 1e-05 {
		t.Errorf("mass %v, centre %v", l["mass_kg"], l["centre_m"])
	}
	apart := math.Hypot(1e-05, radius-h)
	rest := radius - apart
	want := 2 * math.Pi * math.Sqrt((k2+rest*rest)/(9.80665*apart))
	if got := l["period_s"].(float64); math.Abs(got-want) > 1e-12*want {
		t.Errorf("period %v, want %v", got, want)
	}
}

// TestSeveralDesigns come as an array.
func TestSeveralDesigns(t *testing.T) {
	var out, errs bytes.Buffer
	if code := run([]string{"check", "--json", "rocker.radius=40,42,44,46,48,50,52"}, &out, &errs); code != allHold {
		t.Fatalf("exit %d: %s", code, &errs)
	}
	var list []map[string]any
	if err := json.Unmarshal(out.Bytes(), &list); err != nil || len(list) != 7 {
		t.Errorf("%d designs, %v", len(list), err)
	}
}
