package check

import (
	"math"
	"testing"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestFitAtTheRest holds that the front edge is measured as the chair stands with its
// owner, by the rigid turn about the rest's contact, not as drawn.
func TestFitAtTheRest(t *testing.T) {
	d := sized()
	r, err := Check(d)
	if err != nil {
		t.Fatal(err)
	}
	rest := find(t, r, "owner, sitting").Balance.Rest.Tilt
	front := d.Seat.FrontEdge()
	// On one arc of radius R a point (x, y) stands R + x·sin θ + (y − R)·cos θ over the floor.
	want := d.Rocker.Radius + front.X*math.Sin(rest) + (front.Y-d.Rocker.Radius)*math.Cos(rest)
	if got := r.Fit[0]; got.Key != "seat.front" || math.Abs(got.Have-want) > 1e-12 {
		t.Errorf("front edge %+v, want %v", got, want)
	}
}

// TestChangeByMendsTheFit holds that a measure changed by what is said is within custom.
func TestChangeByMendsTheFit(t *testing.T) {
	d := sized()
	d.Seat.Depth, d.Seat.Width, d.Arms.Height, d.Back.Height = 0.60, 0.30, 0.40, 0.30
	r, err := Check(d)
	if err != nil {
		t.Fatal(err)
	}
	wrong := 0
	for _, f := range r.Fit {
		if f.Holds() || f.Size == person.SittingHeight || f.Key == "seat.front" {
			continue
		}
		wrong++
		changed := d.Clone()
		_, field, err := changed.Measure(f.Key)
		if err != nil {
			t.Fatal(err)
		}
		*field += f.Change
		again, err := Check(changed)
		if err != nil {
			t.Fatal(err)
		}
		for _, g := range again.Fit {
			if g.Key == f.Key && g.Size == f.Size && math.Abs(g.Change) > 1e-9 {
				t.Errorf("%s changed by %v still lacks %v", f.Key, f.Change, g.Change)
			}
		}
	}
	if wrong != 4 {
		t.Errorf("%d measures do not fit, want 4", wrong)
	}
}

// TestMisfits holds who is said not to fit a seat too high, too low, too narrow, too deep.
func TestMisfits(t *testing.T) {
	for _, tt := range []struct {
		name    string
		change  func(d *piece.Design)
		who     string
		trouble Trouble
	}{
		{"high", func(d *piece.Design) { d.Seat.Front, d.Seat.Rear = 0.55, 0.53 }, "owner", FeetHang},
		{"narrow", func(d *piece.Design) { d.Seat.Width = 0.3 }, "large man", TooWide},
		{"deep", func(d *piece.Design) { d.Seat.Depth = 0.6 }, "small woman", TooDeep},
		{"low", func(d *piece.Design) { d.Seat.Front, d.Seat.Rear = 0.24, 0.22 }, "large man", KneesUp},
		{"on the floor, far back", func(d *piece.Design) { d.Seat.Front, d.Seat.Rear, d.Back.Recline = 0.09, 0.08, 1.4 }, "large man", KneesOverChin},
	} {
		d := sized()
		tt.change(&d)
		r, err := Check(d)
		if err != nil {
			t.Fatalf("%s: %v", tt.name, err)
		}
		found := false
		for _, m := range r.Misfits {
			found = found || m.Name == tt.who && m.Trouble == tt.trouble
		}
		if !found {
			t.Errorf("%s: %s is not said to have trouble %d: %+v", tt.name, tt.who, tt.trouble, r.Misfits)
		}
	}
	if r, err := Check(sized()); err != nil || len(r.Misfits) > 0 && r.Misfits[0].Name == "owner" {
		t.Errorf("the owner does not fit the own chair: %+v, %v", r.Misfits, err)
	}
}

// TestRecommended holds that a chair sized to anyone fits that person, keeps the limits
// and falls back as a relaxed seat does.
func TestRecommended(t *testing.T) {
	for _, units := range []quantity.System{quantity.Inch, quantity.Metric} {
		for _, sex := range []person.Sex{person.Woman, person.Man} {
			for percentile := 5.0; percentile <= 95; percentile += 15 {
				d := sized()
				d.Units = units
				d.Limits = piece.DefaultLimits(piece.Chair)
				d.Sitters = []piece.Sitter{{Name: "owner", Person: person.Given{Sex: sex, Percentile: percentile}}}
				made, keys, err := Recommended(d)
				if err != nil || len(keys) == 0 {
					t.Fatal(err, keys)
				}
				r, err := Check(made)
				if err != nil {
					t.Fatal(err)
				}
				for _, f := range r.Fit {
					if f.Size != person.SittingHeight && math.Abs(f.Change) > 1e-9 {
						t.Errorf("%v, percentile %g: %s is off by %v", sex, percentile, f.What, f.Change)
					}
				}
				if !r.Holds() {
					t.Errorf("%v, percentile %g: the limits do not hold", sex, percentile)
				}
				if fall := find(t, r, "owner, sitting").SeatFall; math.Abs(fall-restFall) > quantity.Deg { // rounded to what a tape is read to
					t.Errorf("%v, percentile %g: the seat falls back %v degrees", sex, percentile, fall/quantity.Deg)
				}
			}
		}
	}
}

// TestMay holds that the limits hold inside what is said and fail just outside.
func TestMay(t *testing.T) {
	d := sized()
	var m May
	for lift := 0.2; ; lift -= 0.001 { // the first that the middle person keeps, with little to spare
		d.Limits = piece.Limits{BackLift: lift}
		r, err := Check(d)
		if err != nil || r.May == nil || lift < 0.01 {
			t.Fatalf("%v, %+v", err, r.May)
		}
		if m = *r.May; !m.Nobody {
			break
		}
	}
	if m.Lightest == lowMass && m.Heaviest == highMass && m.Shortest == lowStature && m.Tallest == highStature {
		t.Fatalf("these limits keep nobody out: %+v", m)
	}
	b, err := Balance(d)
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		name    string
		any     bool
		in, out person.Measures
	}{
		{"heaviest", m.Heaviest == highMass, person.Measures{person.Stature: m.Middle[person.Stature], person.Mass: m.Heaviest}, person.Measures{person.Stature: m.Middle[person.Stature], person.Mass: m.Heaviest * 1.01}},
		{"lightest", m.Lightest == lowMass, person.Measures{person.Stature: m.Middle[person.Stature], person.Mass: m.Lightest}, person.Measures{person.Stature: m.Middle[person.Stature], person.Mass: m.Lightest * 0.99}},
		{"tallest", m.Tallest == highStature, person.Measures{person.Stature: m.Tallest}, person.Measures{person.Stature: m.Tallest * 1.002}},
		{"shortest", m.Shortest == lowStature, person.Measures{person.Stature: m.Shortest}, person.Measures{person.Stature: m.Shortest * 0.998}},
	} {
		if !b.keepsFor(tt.in) {
			t.Errorf("%s: the limits do not hold", tt.name)
		}
		if !tt.any && b.keepsFor(tt.out) {
			t.Errorf("%s: the limits hold beyond too", tt.name)
		}
	}
}
