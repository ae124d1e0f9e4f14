package words

import (
	"bytes"
	"math"
	"math/rand/v2"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/cmd/internal/sheet"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
	"rockerwright/sim/trial"
)

const (
	inch  = 0.0254
	pound = 0.45359237
)

// chair is a small design that a sentence can be read about.
func chair() piece.Design {
	return piece.Design{
		Title:  "Reading chair",
		Rocker: piece.Rocker{Radius: 42 * inch, Nose: 17 * inch, Tail: 24 * inch},
		Seat:   piece.Seat{Front: 16.5 * inch, Rear: 15.875 * inch, Depth: 18 * inch, Width: 20 * inch, Behind: 7 * inch},
		Back:   piece.Back{Recline: 15 * math.Pi / 180, Height: 28 * inch},
		Piece:  piece.Piece{Mass: 26 * pound},
		Sitters: []piece.Sitter{
			{Name: "owner", Mass: 180 * pound, Posture: person.Upright, Placed: piece.Place{Ahead: 6.75 * inch, Above: 9.25 * inch},
				AtEase: piece.Place{Ahead: 5.25 * inch, Above: 8.875 * inch}},
			{Name: "large man", Role: piece.Other, Mass: 253 * pound, AtEase: piece.Place{Ahead: 5.875 * inch, Above: 9.75 * inch}},
			{Name: "child on the tail", Role: piece.Hazard, Mass: 46 * pound, Placed: piece.Place{Ahead: -16 * inch, Above: -9 * inch}},
		},
		Limits: piece.Design{Kind: piece.Chair}.UsualLimits(),
	}
}

// become makes a design one of another kind, and asks of it what is usual there.
func become(kind piece.Kind) func(d *piece.Design) {
	return func(d *piece.Design) {
		d.Kind = kind
		d.Limits = d.UsualLimits()
	}
}

// said returns the first page about a design, or all of it.
func said(t *testing.T, d piece.Design, all bool) string {
	t.Helper()
	r, err := trial.Check(d)
	if err != nil {
		t.Fatal(err)
	}
	return printed(t, r, all)
}

// printed returns the first page of an answer, or all of it.
func printed(t *testing.T, r trial.Answer, all bool) string {
	t.Helper()
	var text bytes.Buffer
	command := func(key, value string) string { return "rockerwright check chair.toml " + key + "=" + value }
	if err := Check(r, "chair.toml", command, nil).Text(&text, all, false); err != nil {
		t.Fatal(err)
	}
	return text.String()
}

// TestFirstPageFits holds that a first answer is a page of 30 lines of 80 columns, also
// when things go wrong.
func TestFirstPageFits(t *testing.T) {
	for name, change := range map[string]func(d *piece.Design){
		"as it is":     func(*piece.Design) {},
		"short tail":   func(d *piece.Design) { d.Rocker.Tail = 10 * inch },
		"too round":    func(d *piece.Design) { d.Rocker.Radius = 22 * inch },
		"metric":       func(d *piece.Design) { d.Units = quantity.Metric },
		"nobody":       func(d *piece.Design) { d.Sitters = nil },
		"a long name":  func(d *piece.Design) { d.Title = strings.Repeat("chair ", 2000) },
		"a long owner": func(d *piece.Design) { d.Sitters[0].Name = strings.Repeat("Ann", 1000) },
		"hostile":      func(d *piece.Design) { d.Title, d.Sitters[0].Name = "\x1b[31m<b>\u202e", "a\nb\tc\x00" },
		"on a slope":   func(d *piece.Design) { d.Floor.Slope = 3 * math.Pi / 180 },
		"horse":        become(piece.Horse),
		"cradle":       become(piece.Cradle),
	} {
		d := chair()
		change(&d)
		text := said(t, d, false)
		if n := strings.Count(text, "\n"); n > 30 {
			t.Errorf("%s: %d lines, want 30 or fewer\n%s", name, n, text)
		}
		for line := range strings.Lines(said(t, d, true)) {
			if n := utf8.RuneCountInString(strings.TrimSuffix(line, "\n")); n > 80 && !strings.Contains(line, "rockerwright check") {
				t.Errorf("%s: a line of %d columns: %q", name, n, line)
			}
			if strings.ContainsAny(line, "\x1b\x00\t\u202e") || strings.Contains(line, "NaN") {
				t.Errorf("%s: not fit for a page: %q", name, line)
			}
		}
	}
}

// anyDesign draws a chair or settee of any sort, for a person of any sort.
func anyDesign(rng *rand.Rand) piece.Design {
	between := func(low, high float64) float64 { return low + (high-low)*rng.Float64() }
	d := chair()
	d.Kind = piece.Kind(rng.IntN(2))
	d.Units = quantity.System(rng.IntN(2))
	d.Rocker.Radius, d.Rocker.Tail = between(0.55, 1.4), between(0.2, 0.7)
	d.Seat.Rear = between(0.15, 0.6)
	d.Seat.Front = d.Seat.Rear + between(-0.03, 0.06)
	d.Seat.Depth, d.Seat.Width, d.Seat.Behind = between(0.25, 0.65), between(0.25, 0.7), between(0, 0.4)
	d.Arms.Height, d.Back.Height = between(0.1, 0.4), between(0.3, 0.9)
	d.Floor.Slope, d.Floor.Friction = between(-0.05, 0.05), between(0.1, 0.6)
	d.Rocker.Depth, d.Rocker.Width, d.Rocker.Wood = between(0.02, 0.06), between(0.01, 0.04), "white ash"
	d.Back.Braces = piece.Braces{Count: 5, Width: 0.03, Thickness: between(0.008, 0.02), Length: d.Back.Height, Wood: "white ash"}
	d.Sitters = []piece.Sitter{{Name: "owner", Person: person.Given{Sex: person.Sex(rng.IntN(3)), Percentile: between(1, 99)}}}
	if rng.IntN(4) == 0 {
		d.Sitters[0].Person = person.Given{Age: between(2, 12)}
	}
	return d
}

// TestNothingWrongIsLeftOut holds of any design that its first page names every load on which a limit
// fails, every limit that does, every hazard that takes it over and everybody who does not fit;
// and that it is a page of 30 lines, or else one on which nothing else stands.
func TestNothingWrongIsLeftOut(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 9))
	pages, longer, used := 0, 0, 0
	for n := range 400 {
		d := anyDesign(rng)
		r, err := trial.Standing(d)
		if err != nil {
			t.Fatal(err)
		}
		text := printed(t, r, false)
		flat := strings.Join(strings.Fields(text), " ")
		w := wordingOf(d)
		name := func(l *check.Load) string {
			owner := ofRole(r.Loads, piece.Owner)
			if l.Posture == person.ArmsBehindHead {
				return l.Posture.String()
			}
			if l.Role == piece.Owner {
				return names([]*check.Load{l}, owner)[0]
			}
			return l.Name
		}
		for i := range r.Loads {
			l := &r.Loads[i]
			if l.Role == piece.Hazard && !l.Empty && l.Balance.Outcome == sim.NoRest && !strings.Contains(flat, name(l)+": goes over") {
				t.Errorf("design %d: %q takes it over, and is not named\n%s", n, l.Name, text)
			}
		}
		sentences := Findings(r)
		for i, f := range r.Findings {
			told := f.Level > trial.Fails || f.Level == trial.Falls && strings.Contains(flat, name(f.Load)) ||
				f.Level == trial.Fails && strings.Contains(flat, who(f.Load)+" "+gets(w, f.Limit))
			if f.What == trial.RockedHard || f.Trial != nil {
				one := inUse(w, []*trial.Finding{&f})[0]
				_, deed, _ := strings.Cut(one[len(brief(f.Who)):], ": ") // the same of several people is said once
				told = slices.ContainsFunc(strings.Split(flat, "; "), func(said string) bool {
					return strings.Contains(said, brief(f.Who)) && strings.Contains(said, deed)
				})
				used++
			}
			if !told || sentences[i] == "" {
				t.Errorf("design %d: %q is not told\n%s", n, sentences[i], text)
			}
		}
		for _, l := range r.Limits {
			on, _ := r.LoadNamed(l.Load)
			if found := slices.ContainsFunc(r.Findings, func(f trial.Finding) bool {
				return f.Limit != nil &&
					f.Limit.Name == l.Name && f.Limit.Load == l.Load
			}); found != ((!l.Holds || l.Near) &&
				(l.Name == "rest" || on.Upright())) {
				t.Errorf("design %d: %+v, found %v", n, l, found)
			}
		}
		if r.Holds() != r.Report.Balanced.Holds() {
			t.Errorf("design %d: the answer and the limits do not agree on whether it holds", n)
		}
		failing := 0
		for _, l := range r.Limits {
			if l.Fails() && (l.Name == "rest" || !math.IsNaN(l.Got)) {
				failing++
			}
		}
		if n%4 == 0 { // which takes as long as all the rest
			numbersInRows(t, n, printed(t, r, true))
		}
		if failing > 0 && n%8 == 0 {
			all := printed(t, r, true)
			_, rows, _ := strings.Cut(all, "EVERY LIMIT")
			if got := strings.Count(rows, "NO\n"); got < failing {
				t.Errorf("design %d: %d limits fail, %d rows say so\n%s", n, failing, got, all)
			}
		}
		for _, m := range r.Misfits {
			if !strings.Contains(flat, m.Name+": "+trouble(w.units, m)) && !strings.Contains(flat, ", "+trouble(w.units, m)) {
				t.Errorf("design %d: how it does not fit %s is not told\n%s", n, m.Name, text)
			}
		}
		pages++
		if strings.Count(text, "\n") <= sheet.Page {
			continue
		}
		longer++
		for _, gives := range []string{"Try next", "What limits it", "Estimated, not given", "its weight must lift",
			"\npush for one degree", "see --all"} {
			if strings.Contains(flat, gives) || strings.Contains(text, gives) {
				t.Errorf("design %d: more than a page, and %q stands on it\n%s", n, gives, text)
			}
		}
	}
	if longer == 0 || longer > pages/2 || used < 20 {
		t.Errorf("%d of %d first pages are longer than a page; %d tell of what is done every day or hard", longer, pages, used)
	}
}

// number is one as it stands in a sentence or a table: 7, 2 5/16, 0.3, −1/2.
var number = regexp.MustCompile(`\d+ \d+/\d+|\d+/\d+|\d+\.\d+|\d+`)

// numbersInRows holds that every number of the sentences of the verdict, on the page of --all, stands in a row of a table below.
func numbersInRows(t *testing.T, n int, all string) {
	t.Helper()
	head, rows, found := strings.Cut(all, "\nRocker tips")
	_, head, told := strings.Cut(head, "\n\n")
	if !found || !told {
		t.Fatalf("design %d: no verdict on\n%s", n, all)
	}
	known := map[string]bool{}
	for line := range strings.Lines(rows) {
		if strings.Contains(strings.TrimSpace(line), "  ") { // a row of a table
			for _, x := range number.FindAllString(line, -1) {
				known[x] = true
			}
		}
	}
	for _, x := range number.FindAllString(strings.Join(strings.Fields(head), " "), -1) {
		if !known[x] {
			t.Errorf("design %d: %s stands in no row below\n%s", n, x, head)
		}
	}
}

// TestWeakWood holds that a rocker whose short grain may take all of the wood's strength is told on the
// first page and to the owner, with its share; and that only a sawn one has short grain.
func TestWeakWood(t *testing.T) {
	for made, warned := range map[piece.Made]bool{piece.Sawn: true, piece.Laminated: false, piece.Steamed: false, 0: false} {
		d := chair()
		d.Rocker.Wood, d.Rocker.Depth, d.Rocker.Width, d.Rocker.Made = "black walnut", 1.75*inch, 1.25*inch, made
		r, err := trial.Standing(d)
		if err != nil {
			t.Fatal(err)
		}
		most := 0.0
		for _, b := range r.Bending {
			if most = max(most, b.Across.Most); b.Along.Most > 1 {
				t.Fatalf("along the grain it comes to %v: another case", b.Along.Most)
			}
		}
		if most <= 1 {
			t.Fatalf("the short grain comes to %v only: no case", most)
		}
		page := strings.Join(strings.Fields(said(t, d, false)), " ")
		owner := whom(wordingOf(d), &r)
		for name, text := range map[string]string{"first page": page, "owner's page": owner} {
			told := strings.Contains(text, "short grain") &&
				strings.Contains(text, percent(most)+" of the bending strength of clear wood. Joints "+
					"are not looked at.")
			if told != warned || strings.Contains(text, "WOOD:") != warned {
				t.Errorf("made %v: the %s warns: %v, want %v:\n%s", made, name, told, warned, text)
			}
		}
	}
}

// TestVerdicts holds what the first lines say in each case.
func TestVerdicts(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(d *piece.Design)
		want   []string
	}{
		{"holds", func(*piece.Design) {}, []string{"YOUR OWNER: rests well back, rocks in 2.0 s",
			"OTHERS: nearest to going over is large man", "HAZARDS: child on the tail", "limits hold", "Balance only, not strength"}},
		{"short tail", func(d *piece.Design) { d.Rocker.Tail = 11 * inch },
			[]string{"FAILS: Lift, going back, 13/16 in asked: owner 7/16", "look at the tail", "Try next:",
				"rockerwright check chair.toml rocker.tail="}},
		{"above the centre", func(d *piece.Design) { d.Rocker.Radius = 23 * inch },
			[]string{"above the arc centre", "does not stand"}},
		{"a short nose", func(d *piece.Design) { d.Rocker.Nose = 5.875 * inch },
			[]string{"LEGS: the front legs, taken under the seat's front edge, would stand", "beyond the nose, where nothing carries them"}},
		{"nobody", func(d *piece.Design) { d.Sitters = nil }, []string{"nobody is given", "add [sitter]", "OTHERS: nearest"}},
		{"the piece alone", func(d *piece.Design) {
			d.Sitters = nil
			d.Seat, d.Piece, d.Body = piece.Seat{}, piece.Piece{}, body.Body{Mass: 12, Centre: r2.Vec{Y: 0.43}, Inertia: 1.6}
		}, []string{"THE PIECE ALONE", "add [sitter]"}},
		{"a person by height", func(d *piece.Design) { d.Sitters = []piece.Sitter{{Name: "owner", Mass: 80}} },
			[]string{"FIT: for owner, upright, seat depth"}},
		{"a flat", func(d *piece.Design) {
			d.Rocker = piece.Rocker{Nose: 0.3, Arcs: []piece.Arc{{Radius: 1, Length: 0.25}, {Flat: 0.3}, {Radius: 1, Length: 0.25}}}
		}, []string{"on a flat", "rocker of 2 arcs"}},
		{"a single arc in a list", func(d *piece.Design) {
			d.Rocker = piece.Rocker{Nose: 0.43, Arcs: []piece.Arc{{Radius: 1.067, Length: 1.04}}}
		}, []string{"rocker of 1 arc ·"}},
		{"cradle", become(piece.Cradle), []string{"INFANTS:", "to the left", "5 and 10 degrees"}},
	} {
		d := chair()
		tt.change(&d)
		text := strings.Join(strings.Fields(said(t, d, false)), " ")
		for _, want := range tt.want {
			if !strings.Contains(text, want) {
				t.Errorf("%s: does not say %q:\n%s", tt.name, want, text)
			}
		}
	}
}

// TestNeverSays holds the words that are not ours to say.
func TestNeverSays(t *testing.T) {
	for kind := piece.Chair; kind <= piece.Horse; kind++ {
		d := chair()
		become(kind)(&d)
		text := strings.ToLower(said(t, d, true))
		for _, word := range []string{"safe", " fast", " slow ", "certified", "complies"} {
			if strings.Contains(text, word) {
				t.Errorf("%v: the sheet says %q", kind, word)
			}
		}
	}
}

// TestColumnsHold checks that several designs stand side by side within the page.
func TestColumnsHold(t *testing.T) {
	var columns []Column
	for _, radius := range []float64{36, 39, 42, 48, 20} {
		d := chair()
		d.Rocker.Radius = radius * inch
		r, err := check.Check(d)
		if err != nil {
			t.Fatal(err)
		}
		columns = append(columns, Column{Head: "radius " + quantity.With(radius*inch, quantity.Length, d.Units), Report: r.Balanced})
	}
	var text bytes.Buffer
	if err := Columns("Side by side", "chair.toml", columns).Text(&text, false, false); err != nil {
		t.Fatal(err)
	}
	for line := range strings.Lines(text.String()) {
		if n := utf8.RuneCountInString(line) - 1; n > 80 {
			t.Errorf("a line of %d columns: %q", n, line)
		}
	}
	if !strings.Contains(text.String(), "no rest") || !strings.Contains(text.String(), "NO") {
		t.Errorf("the column that does not stand says neither no rest nor NO:\n%s", text.String())
	}
}

// TestBoldIsNotTheOnlyCarrier holds that without bold the same words are there.
func TestBoldIsNotTheOnlyCarrier(t *testing.T) {
	r, err := trial.Check(chair())
	if err != nil {
		t.Fatal(err)
	}
	sheet := Check(r, "chair.toml", func(key, value string) string { return key + value }, []string{"a = b"})
	var plain, bold bytes.Buffer
	if err := sheet.Text(&plain, true, false); err != nil {
		t.Fatal(err)
	}
	if err := sheet.Text(&bold, true, true); err != nil {
		t.Fatal(err)
	}
	stripped := strings.NewReplacer("\x1b[1m", "", "\x1b[0m", "").Replace(bold.String())
	if stripped != plain.String() || bold.String() == plain.String() {
		t.Error("bold changes more than the weight of letters, or nothing")
	}
}

// TestPointOfOneMass keeps the helper designs honest: a piece of one point mass reads
// as far over as its place says.
func TestPointOfOneMass(t *testing.T) {
	d := piece.Design{Rocker: piece.Rocker{Radius: 1, Nose: 0.5, Tail: 0.5},
		Body: body.Body{Mass: 10, Centre: r2.Vec{X: -0.5 * math.Tan(5*math.Pi/180), Y: 0.5}, Inertia: 1}}
	if text := said(t, d, false); !strings.Contains(strings.Join(strings.Fields(text), " "), "tilts at rest 5 degrees") {
		t.Errorf("a point %v m behind 0.5 m under the centre should tilt 5 degrees:\n%s", 0.5*math.Tan(5*math.Pi/180), text)
	}
}

// TestRockSays holds what the sheet of a motion says, by what became of it.
func TestRockSays(t *testing.T) {
	for _, tt := range []struct {
		name    string
		change  func(d *piece.Design)
		options trial.RockOptions
		want    []string
	}{
		{"rocks", func(d *piece.Design) { d.Floor.Surface = piece.Boards }, trial.RockOptions{},
			[]string{"on boards", "still rocking after 30 s", "WHAT IT SURVIVES", "Not a test certificate",
				"read in the text", "second-hand", "from memory", "SIDEWAYS", "does not walk", "equal enough"}},
		{"slips", func(d *piece.Design) { d.Floor.Friction = 0.05 }, trial.RockOptions{From: 0.2},
			[]string{"The floor lets go at", "floor has 0.05", "sliding is outside the model"}},
		{"over", func(*piece.Design) {}, trial.RockOptions{From: 1}, []string{"It goes over backwards, at once"}},
		{"lifts off", func(*piece.Design) {}, trial.RockOptions{Rate: 300 * math.Pi / 180},
			[]string{"The rocker lifts off after 0.", "what comes then is outside the model"}},
		{"settles", func(d *piece.Design) { d.Floor.Rolling = 0.01 }, trial.RockOptions{},
			[]string{"is at rest after", "falls to half in"}},
		{"cradle", become(piece.Cradle), trial.RockOptions{},
			[]string{"AGAINST 5 AND 10 DEGREES", "nothing before that stops it"}},
	} {
		d := chair()
		tt.change(&d)
		r, err := trial.Rock(d, tt.options)
		if err != nil {
			t.Fatalf("%s: %v", tt.name, err)
		}
		var b strings.Builder
		if err := Rock(r, "chair.toml").Text(&b, true, false); err != nil {
			t.Fatal(err)
		}
		for line := range strings.Lines(b.String()) {
			if len([]rune(line)) > 81 {
				t.Errorf("%s: a line of %d columns: %s", tt.name, len([]rune(line)), line)
			}
		}
		text := strings.Join(strings.Fields(b.String()), " ")
		for _, want := range tt.want {
			if !strings.Contains(text, want) {
				t.Errorf("%s: does not say %q:\n%s", tt.name, want, text)
			}
		}
		for _, word := range []string{"safe", " fast", " slow ", "complies"} {
			if strings.Contains(strings.ToLower(text), word) {
				t.Errorf("%s: says %q", tt.name, word)
			}
		}
	}
}

// TestLetsGoInWords: a floor that would have to pull holds no share of anything, so nothing is said of its friction.
func TestLetsGoInWords(t *testing.T) {
	w := wordingOf(chair())
	const tilt = 20 * math.Pi / 180
	if got, want := letsGo(w.units, tilt, math.Inf(1), 0), "The rocker lifts off at 20 degrees."; got != want {
		t.Errorf("said %q, want %q", got, want)
	}
	if got, want := letsGo(w.units, -tilt, 0.41, 0.3), "The floor lets go at 20 degrees; needs 0.41, floor has 0.30."; got != want {
		t.Errorf("said %q, want %q", got, want)
	}
}

// TestNoPushBeyondTheHilltop: a piece that goes over before one degree has no push for it, whatever number stands there.
func TestNoPushBeyondTheHilltop(t *testing.T) {
	w := wordingOf(chair())
	for margin, want := range map[float64]string{0.5: "goes over", 1: "goes over", 1.5: "2 1/4"} {
		l := &check.Load{Back: sim.Margin{Angle: margin * math.Pi / 180}, EffortBack: 2.25 * pound * sim.Gravity}
		if got := effort(w.units, l); got != want {
			t.Errorf("with %v degrees to the hilltop the push is %q, want %q", margin, got, want)
		}
	}
}
