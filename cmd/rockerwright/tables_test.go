package main

import (
	"bytes"
	"encoding/json"
	"math"
	"path/filepath"
	"strings"
	"testing"

	"rockerwright/cmd/internal/design"
)

// A checkAnswer is what check --json says of the numbers that are printed in tables.
type checkAnswer struct {
	Loads  []checkLoad
	Limits []struct {
		Name, Load, Basis string
		AtLeast           *float64 `json:"at_least"`
		AtMost            *float64 `json:"at_most"`
		Got               *float64
	}
	Fit []struct {
		What    string
		Have    float64  `json:"have_m"`
		AtLeast *float64 `json:"at_least_m"`
		AtMost  *float64 `json:"at_most_m"`
		Change  float64  `json:"change_m"`
	}
	People []struct {
		Name  string
		Sizes []struct {
			Name string
			M    *float64 `json:"value_m"`
			KG   *float64 `json:"value_kg"`
		}
	}
}

type checkLoad struct {
	Name          string
	Rest          *float64  `json:"rest_tilt_deg"`
	Falls         *float64  `json:"seat_slope_deg"`
	FallsBetween  []float64 `json:"seat_slope_band_deg"`
	Recline       *float64  `json:"back_recline_deg"`
	Period        *float64  `json:"period_s"`
	Effort        *float64  `json:"effort_back_n"`
	Slow          *float64  `json:"pull_slow_n"`
	Sudden        *float64  `json:"pull_sudden_n"`
	Back, Forward *struct {
		Margin *float64 `json:"margin_deg"`
		Lift   *float64 `json:"lift_m"`
		Of     string
	}
	Swings []struct {
		Release  float64  `json:"release_deg"`
		Period   *float64 `json:"period_s"`
		Reach    *float64 `json:"reach_deg"`
		Friction *float64 `json:"friction_needed"`
	}
}

// margin returns tilt and lift before going over: forward of a load whose feet stand on the floor the lesser lift of
// feet off and of the same person rising.
func (r *pageReader) margin(l *checkLoad, forward bool) (margin, lift *float64) {
	side := l.Back
	if forward {
		side = l.Forward
		who, _, _ := strings.Cut(l.Name, ",")
		for _, other := range r.answer.Loads {
			if side.Of == "feet off" && other.Name == who+", rising" && *other.Forward.Lift < *side.Lift {
				side = other.Forward
			}
		}
	}
	if side == nil {
		return nil, nil
	}
	return side.Margin, side.Lift
}

// A pageReader compares what is printed of a piece with its numbers.
type pageReader struct {
	t      *testing.T
	name   string
	answer checkAnswer
	metric bool
	read   map[string]int // cells, by their table
}

// Half of what is left out in print: of a sixteenth of an inch or a millimetre, of half a degree, of a quarter of a
// pound of force, of a tenth or a whole newton (from 10 on), of a pound.
func (r *pageReader) length() (unit, within float64) {
	if r.metric {
		return 1e-3, 0.5
	}
	return 0.0254, 1. / 32
}

func (r *pageReader) force(newtons float64) (unit, within float64) {
	switch {
	case !r.metric:
		return 0.45359237 * 9.80665, 1. / 8
	case math.Abs(newtons) >= 9.95:
		return 1, 0.5
	}
	return 1, 0.05
}

// holds compares a cell with a number of the answer, in the unit of the cell; nil is none.
func (r *pageReader) holds(table, what, cell string, want *float64, unit, within float64) {
	r.t.Helper()
	r.read[table]++
	none := cell == "–" || cell == "no rest" || cell == "level"
	if want == nil || none {
		if want != nil || !none {
			r.t.Errorf("%s, %s: %s is printed as %q, the answer has %v", r.name, table, what, cell, show(want))
		}
		return
	}
	number := strings.TrimPrefix(strings.TrimSuffix(strings.TrimSuffix(cell, " right"), " left"), "+")
	got := amountTold(number)
	if strings.HasSuffix(cell, " right") { // the nose of a cradle
		got = -got
	}
	if math.Abs(got-*want/unit) > within+1e-9 {
		r.t.Errorf("%s, %s: %s is printed as %q, the answer has %v", r.name, table, what, cell, *want/unit)
	}
}

func show(x *float64) any {
	if x == nil {
		return "none"
	}
	return *x
}

// load returns the load by the name that is printed, or by the person over the table and the posture over the column.
func (r *pageReader) load(name, who string) *checkLoad {
	for i := range r.answer.Loads {
		l := &r.answer.Loads[i]
		if strings.EqualFold(l.Name, name) || who != "" && strings.EqualFold(l.Name, who+", "+name) {
			return l
		}
	}
	r.t.Errorf("%s: the page has a load %q of %q, and the answer has none", r.name, name, who)
	return nil
}

// TestTables reads every number of every table that check prints back out of the page, of all kinds of piece in inches
// and in millimetres, and holds it to check's numbers for a program, within what is left out in print.
func TestTables(t *testing.T) {
	folder := t.TempDir()
	files := map[string]string{"metric person": filepath.Join(testdata, "check-metric", "metric.toml")}
	for _, kind := range design.Starts() {
		files[kind] = startIn(t, folder, kind)
		files[kind+", metric"] = filepath.Join(testdata, "papers", kind+"-metric.toml")
	}
	for _, more := range []string{"check-braces/chair.toml", "check-child/child.toml", "check-settee/settee.toml"} {
		files[more] = filepath.Join(testdata, filepath.FromSlash(more))
	}
	all := map[string]int{}
	for name, file := range files {
		called := func(args ...string) string {
			var out, errs bytes.Buffer
			if code := run(args, &out, &errs); code == noAnswer {
				t.Fatalf("%q: %s", args, &errs)
			}
			return out.String()
		}
		r := &pageReader{t: t, name: name, metric: strings.Contains(read(t, file), `"metric"`), read: all}
		if err := json.Unmarshal([]byte(called("check", file, "--json")), &r.answer); err != nil {
			t.Fatal(err)
		}
		first, _, _ := strings.Cut(r.answer.Loads[min(1, len(r.answer.Loads)-1)].Name, ",")
		seen := 0
		for heading, lines := range printedParts(called("check", file, "--all")) {
			heading, _, _ = strings.Cut(heading, " #")
			of, who, _ := strings.Cut(heading, ": ")
			switch {
			case heading == "":
				r.columns("first page", first, lines)
			case of == "EVERY LOAD":
				r.columns("every load", who, lines)
			case heading == "EVERY LIMIT":
				r.limits(lines)
			case heading == "WHAT TIPS IT":
				r.pulls(lines)
			case of == "TIME OF A ROCK":
				r.swings(who, lines)
			case heading == "TIME OF A ROCK, THERE AND BACK":
				r.times(lines)
			case heading == "FIT":
				r.fit(lines)
			case heading == "PEOPLE":
				r.people(lines)
			default:
				continue
			}
			seen++
		}
		if seen < 5 {
			t.Errorf("%s: %d tables were found", name, seen)
		}
	}
	t.Logf("cells read: %v", all)
	least := map[string]int{
		"first page": 200, "every load": 500, "limits": 80, "pulls": 100,
		"swings": 400, "a load's swings": 500, "fit": 50, "people": 30,
	}
	for table, want := range least {
		if all[table] < want {
			t.Errorf("%s: only %d cells were found", table, all[table])
		}
	}
}
