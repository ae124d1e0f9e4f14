package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"rockerwright/cmd/internal/design"
)

// A printedCell is one cell of a printed table and the column in which it ends.
type printedCell struct {
	text string
	end  int
}

var cellPattern = regexp.MustCompile(`\S+(?: \S+)*`)

// cellsOf parts a line where two spaces or more stand.
func cellsOf(line string) (cells []printedCell) {
	for _, at := range cellPattern.FindAllStringIndex(line, -1) {
		cells = append(cells, printedCell{line[at[0]:at[1]], utf8.RuneCountInString(line[:at[1]])})
	}
	return cells
}

// printedParts returns what stands under each heading of a printed page, which is a line of capitals, line by line; what
// comes before the first is under "".
func printedParts(page string) map[string][][]printedCell {
	parts, under := map[string][][]printedCell{}, ""
	heading := regexp.MustCompile(`^[A-Z][A-Z0-9 ,]+(:[A-Z0-9 ,]+)?$`)
	repeated := 0
	for line := range strings.Lines(page) {
		line = strings.TrimSuffix(line, "\n")
		if heading.MatchString(line) {
			under = line
			if _, there := parts[under]; there {
				repeated++
				under += fmt.Sprint(" #", repeated) // the next columns of a wide table
			}
		}
		parts[under] = append(parts[under], cellsOf(line))
	}
	return parts
}

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
	Rest          *float64 `json:"rest_tilt_deg"`
	Falls         *float64 `json:"seat_slope_deg"`
	Recline       *float64 `json:"back_recline_deg"`
	Period        *float64 `json:"period_s"`
	Effort        *float64 `json:"effort_back_n"`
	Slow          *float64 `json:"pull_slow_n"`
	Sudden        *float64 `json:"pull_sudden_n"`
	Back, Forward *struct {
		Margin *float64 `json:"margin_deg"`
		Lift   *float64 `json:"lift_m"`
	}
	Swings []struct {
		Release  float64  `json:"release_deg"`
		Period   *float64 `json:"period_s"`
		Reach    *float64 `json:"reach_deg"`
		Friction *float64 `json:"friction_needed"`
	}
}

// margin returns tilt and lift before going over.
func (l checkLoad) margin(forward bool) (margin, lift *float64) {
	side := l.Back
	if forward {
		side = l.Forward
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

// rowLabels are the rows of the table of loads.
var rowLabels = []string{
	"seat falls back", "tilts at rest", "back leans from plumb", "one rock, there+back", "push for one degree",
	"before going back", "before going left", "before going forward", "before going right", "its weight must lift",
}

// labelled returns the label of a row that may be cut short.
func labelled(text string) string {
	if begins, cut := strings.CutSuffix(text, "…"); cut {
		for _, label := range rowLabels {
			if strings.HasPrefix(label, begins) {
				return label
			}
		}
	}
	return text
}

// columns compares the table of loads, each a column under its head.
func (r *pageReader) columns(table, who string, lines [][]printedCell) {
	var heads map[int]string
	var forward bool
	for i, cells := range lines {
		if len(cells) == 0 {
			heads = nil // the table ends
		}
		if len(cells) < 3 || i == 0 {
			continue
		}
		label := labelled(cells[0].text)
		switch label {
		case "seat falls back", "tilts at rest":
			heads = headsOver(lines[:i], cells[1:len(cells)-1])
		}
		if heads == nil {
			continue
		}
		for _, cell := range cells[1 : len(cells)-1] {
			l := r.load(heads[cell.end], who)
			if l == nil {
				continue
			}
			what, none := fmt.Sprintf("%q of %s", label, l.Name), l.Rest == nil
			length, half := r.length()
			switch label {
			case "seat falls back":
				r.holds(table, what, cell.text, l.Falls, 1, 0.25)
			case "tilts at rest":
				r.holds(table, what, cell.text, l.Rest, 1, 0.25)
			case "back leans from plumb":
				r.holds(table, what, cell.text, l.Recline, 1, 0.25)
			case "one rock, there+back":
				r.holds(table, what, cell.text, l.Period, 1, 0.05)
			case "push for one degree":
				if l.Effort == nil {
					r.holds(table, what, cell.text, nil, 1, 0)
					break
				}
				unit, within := r.force(*l.Effort)
				r.holds(table, what, cell.text, l.Effort, unit, within)
			case "before going back", "before going left", "before going forward", "before going right":
				forward = strings.HasSuffix(label, "forward") || strings.HasSuffix(label, "right")
				margin, _ := l.margin(forward)
				r.holds(table, what, cell.text, margin, 1, 0.25)
			case "its weight must lift":
				_, lift := l.margin(forward)
				r.holds(table, what, cell.text, lift, length, half)
			default:
				r.t.Errorf("%s: there is a row %q, of which this test knows nothing", r.name, label)
			}
			if none != (cell.text == "no rest") && label != "push for one degree" {
				r.t.Errorf("%s: %s is printed as %q", r.name, what, cell.text)
			}
		}
	}
}

// headsOver returns the heads of columns, by where a column ends: a head may stand on several lines.
func headsOver(lines [][]printedCell, columns []printedCell) map[int]string {
	heads := map[int]string{}
	for _, column := range columns {
		for i := len(lines) - 1; i >= 0 && len(lines[i]) > 0; i-- {
			for _, cell := range lines[i] {
				if cell.end == column.end {
					heads[column.end] = strings.TrimSpace(cell.text + " " + heads[column.end])
				}
			}
		}
	}
	return heads
}

// limitWords are the printed names of limits.
var limitWords = map[string]string{
	"back_margin_deg": "tilt, going back", "back_lift_m": "lift, going back",
	"forward_margin_deg": "tilt, going forward", "forward_lift_m": "lift, going forward", "rest_tilt_deg": "tilt at rest",
}

// limits compares the table of all limits, each by its load and words, of which an end may be cut off.
func (r *pageReader) limits(lines [][]printedCell) {
	rows := 0
	for _, cells := range lines {
		if len(cells) != 5 || cells[4].text != "ok" && cells[4].text != "NO" {
			continue
		}
		rows++
		begins, _ := strings.CutSuffix(cells[0].text, "…")
		found := false
		for _, l := range r.answer.Limits {
			words, known := limitWords[l.Name]
			if !known || !strings.HasPrefix(l.Load+", "+words, begins) {
				continue
			}
			found = true
			unit, within := 1.0, 0.25
			if strings.HasSuffix(l.Name, "_m") {
				unit, within = r.length()
			}
			want := l.AtLeast
			if l.AtMost != nil {
				want = l.AtMost
			}
			what := l.Load + ", " + l.Name
			r.holds("limits", what+", wanted", strings.TrimPrefix(cells[1].text, "at most "), want, unit, within)
			r.holds("limits", what, cells[2].text, l.Got, unit, within)
			if cells[3].text != l.Basis {
				r.t.Errorf("%s: %s is %q, printed as %q", r.name, what, l.Basis, cells[3].text)
			}
			break
		}
		if !found {
			r.t.Errorf("%s: the answer has no limit %q", r.name, cells[0].text)
		}
	}
}

// pulls compares what tips the piece.
func (r *pageReader) pulls(lines [][]printedCell) {
	for _, cells := range lines {
		if len(cells) != 4 {
			continue
		}
		l := r.load(cells[0].text, "")
		if l == nil {
			continue
		}
		for i, want := range []*float64{l.Slow, l.Sudden} {
			unit, within := 1.0, 0.0
			if want != nil {
				unit, within = r.force(*want)
			}
			r.holds("pulls", l.Name, cells[i+1].text, want, unit, within)
		}
	}
}

// swings compares the times of a rock of one load: release, time, how far it carries and the friction.
func (r *pageReader) swings(who string, lines [][]printedCell) {
	l := r.load(who, "")
	if l == nil {
		return
	}
	n := 0
	for _, cells := range lines {
		if len(cells) != 5 || !strings.HasPrefix(cells[4].text, "degrees") {
			continue
		}
		if n >= len(l.Swings) {
			r.t.Fatalf("%s: more times of a rock of %s are printed than there are", r.name, who)
		}
		s := l.Swings[n]
		n++
		what := fmt.Sprintf("%s from %v", who, s.Release)
		r.holds("a load's swings", what+", release", cells[0].text, &s.Release, 1, 0.05)
		r.holds("a load's swings", what+", time", strings.TrimSuffix(cells[1].text, " s"), s.Period, 1, 0.005)
		reach := s.Reach
		if reach != nil {
			other := math.Abs(*reach)
			reach = &other
		}
		r.holds("a load's swings", what+", reach", cells[2].text, reach, 1, 0.25)
		r.holds("a load's swings", what+", friction", cells[3].text, s.Friction, 1, 0.005)
	}
}

// times compares the times of a rock of all loads.
func (r *pageReader) times(lines [][]printedCell) {
	for _, cells := range lines {
		if len(cells) < 3 || cells[len(cells)-1].text != "s" {
			continue
		}
		l := r.load(cells[0].text, "")
		if l == nil || len(l.Swings) != len(cells)-2 {
			r.t.Errorf("%s: %d times are printed of %s", r.name, len(cells)-2, cells[0].text)
			continue
		}
		for i, s := range l.Swings {
			r.holds("swings", fmt.Sprintf("%s from %v", l.Name, s.Release), cells[i+1].text, s.Period, 1, 0.05)
		}
	}
}

// fit compares how the piece fits its owner.
func (r *pageReader) fit(lines [][]printedCell) {
	unit, within := r.length()
	n := 0
	for _, cells := range lines {
		if len(cells) != 5 || cells[1].text == "have" {
			continue
		}
		if n >= len(r.answer.Fit) {
			r.t.Fatalf("%s: more lines of fit are printed than there are", r.name)
		}
		f := r.answer.Fit[n]
		n++
		if begins, _ := strings.CutSuffix(cells[0].text, "…"); !strings.HasPrefix(f.What, begins) {
			r.t.Errorf("%s: %q is printed for %q", r.name, cells[0].text, f.What)
		}
		r.holds("fit", f.What+", have", cells[1].text, &f.Have, unit, within)
		low, high, both := strings.Cut(cells[2].text, " to ")
		switch {
		case both:
			r.holds("fit", f.What+", at least", low, f.AtLeast, unit, within)
			r.holds("fit", f.What+", at most", high, f.AtMost, unit, within)
		case strings.HasSuffix(low, " or more"):
			r.holds("fit", f.What+", at least", strings.TrimSuffix(low, " or more"), f.AtLeast, unit, within)
		default:
			r.holds("fit", f.What+", at most", strings.TrimSuffix(low, " or less"), f.AtMost, unit, within)
		}
		change := &f.Change
		if f.Change == 0 {
			change = nil
		}
		r.holds("fit", f.What+", change", cells[3].text, change, unit, within)
	}
	if n != len(r.answer.Fit) && n > 0 {
		r.t.Errorf("%s: %d of %d lines of fit are printed", r.name, n, len(r.answer.Fit))
	}
}

// people compares the sizes of the first person.
func (r *pageReader) people(lines [][]printedCell) {
	size := regexp.MustCompile(`^(.*?) \(.*\)$`)
	feet := regexp.MustCompile(`^(\d+) ft(?: (.*) in)?$`)
	for _, cells := range lines {
		if len(cells) != 3 {
			continue
		}
		m := size.FindStringSubmatch(cells[0].text)
		if m == nil {
			r.t.Errorf("%s: a size is %q", r.name, cells[0].text)
			continue
		}
		for _, s := range r.answer.People[0].Sizes {
			if s.Name != m[1] {
				continue
			}
			text, unit, within := cells[1].text, 0.0254, 1./32
			if r.metric {
				unit, within = 1e-3, 0.5
			}
			if f := feet.FindStringSubmatch(text); f != nil { // stature, to the inch
				text, within = fmt.Sprint(12*amount(f[1])+amount(f[2])), 0.5
			}
			want := s.M
			if s.KG != nil {
				want, unit, within = s.KG, 0.45359237, 0.5
				if r.metric {
					unit = 1
				}
			}
			r.holds("people", s.Name, text, want, unit, within)
		}
	}
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

// numberCell is a cell of a number alone, with its unit or which way it goes.
var numberCell = regexp.MustCompile(`^[-+]?\d[\d ./]*( (fwd|right|left|in|mm|lb|N|s|degrees?|ft/s|m/s))?$`)

// TestColumns: where a number stands under a number in a printed table, both end in the same column, but for the last,
// which is set as words are.
func TestColumns(t *testing.T) {
	pages, err := filepath.Glob(filepath.Join(testdata, "*", "stdout"))
	if err != nil {
		t.Fatal(err)
	}
	pairs := 0
	for _, page := range pages {
		var above []printedCell
		for line := range strings.Lines(read(t, page)) {
			cells := cellsOf(strings.TrimSuffix(line, "\n"))
			if len(cells) == len(above) {
				for i := 1; i < len(cells)-1; i++ {
					if !numberCell.MatchString(cells[i].text) || !numberCell.MatchString(above[i].text) {
						continue
					}
					if pairs++; cells[i].end != above[i].end {
						t.Errorf("%s: %q does not end under %q: %s", page, cells[i].text, above[i].text, line)
					}
				}
			}
			above = cells
		}
	}
	if pairs < 1000 {
		t.Errorf("%d pairs were found", pairs)
	}
}
