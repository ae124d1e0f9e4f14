package check

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestChangeByMendsTheFit holds that a measure changed by what is said is within custom.
func TestChangeByMendsTheFit(t *testing.T) {
	d := sized()
	d.Seat.Depth, d.Seat.Width, d.Arms.Height, d.Back.Height = 0.60, 0.30, 0.40, 0.30
	r := checked(t, d)
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
		again := checked(t, changed)
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

// TestRecommended holds that a chair sized to anyone fits that person, keeps the limits
// and falls back as a relaxed seat does.
func TestRecommended(t *testing.T) {
	for _, units := range []quantity.System{quantity.Inch, quantity.Metric} {
		for _, sex := range []person.Sex{person.Woman, person.Man} {
			for percentile := 5.0; percentile <= 95; percentile += 15 {
				d := sized()
				d.Units = units
				d.Limits = piece.Design{Kind: piece.Chair}.UsualLimits()
				d.Sitters = []piece.Sitter{{Name: "owner", Person: person.Given{Sex: sex, Percentile: percentile}}}
				made, keys, err := Recommended(d)
				if err != nil || len(keys) == 0 {
					t.Fatal(err, keys)
				}
				r := checked(t, made)
				step := quantity.In / 8 // read off a tape
				if units == quantity.Metric {
					step = 0.005
				}
				for _, f := range r.Fit {
					if f.Size != person.SittingHeight && math.Abs(f.Change) > 1e-9 {
						t.Errorf("%v, percentile %g: %s is off by %v", sex, percentile, f.What, f.Change)
					}
					middle := (f.Low + f.High) / 2
					if _, typed, _ := made.Measure(f.Key); !multiple(*typed, step) ||
						!math.IsInf(f.High, 1) && !near(f.Have, middle, step) {
						t.Errorf("%v, percentile %g: %s is %v, typed %v; want %v", sex, percentile, f.What, f.Have, *typed, middle)
					}
				}
				if room := made.Seat.Width - r.Fit[2].Low; !near(room, 2*quantity.In, step) { // beside the hips
					t.Errorf("%v, percentile %g: the seat is %v wider than it must be", sex, percentile, room)
				}
				if !r.Holds() {
					t.Errorf("%v, percentile %g: the limits do not hold", sex, percentile)
				}
				// rounded to what a tape is read to
				if fall := find(t, r, "owner, at ease").SeatFall; math.Abs(fall-restFall) > quantity.Deg {
					t.Errorf("%v, percentile %g: the seat falls back %v degrees", sex, percentile, fall/quantity.Deg)
				}
			}
		}
	}
}

// TestClearances: what custom asks is in half inches and leaves room, never more than four inches of it; for the mean
// person it meets what the trade builds (common practice: seat 12 to 18 in high and 15 to 18 in deep, arms 7 to 9 in
// and a bulge about 8 in over the seat). A cushion takes from what stands over it, two on a settee need twice the width,
// and what must change is what is missing, up or down.
func TestClearances(t *testing.T) {
	d := sized()
	d.Back.Lumbar = 8 * quantity.In
	d.Sitters[0] = piece.Sitter{Name: "owner"} // the mean of both
	bare, err := Check(d)
	if err != nil || len(bare.Fit) != len(clearances) {
		t.Fatal(err, bare.Fit)
	}
	trade := map[string][2]float64{"seat.front": {12, 18}, "seat.depth": {15, 18}, "arms.height": {7, 9}, "back.lumbar": {8, 8}}
	d.Seat.Cushion = 0.02
	soft := checked(t, d)
	d.Kind = piece.Settee
	two := checked(t, d)
	for i, f := range bare.Fit {
		size := bare.Somebody[0].Person.Sizes[f.Size]
		for _, room := range []float64{f.Low - size, f.High - size} {
			if !math.IsInf(room, 1) && (!multiple(room, quantity.In/2) || math.Abs(room) > 4.01*quantity.In) {
				t.Errorf("%s: custom asks %v m of room", f.What, room)
			}
		}
		if f.Key == "arms.height" && f.High-size > quantity.In { // or the shoulders are lifted
			t.Errorf("arms may stand %v m over the elbow", f.High-size)
		}
		if built, known := trade[f.Key]; known && (f.Low > built[1]*quantity.In || f.High < built[0]*quantity.In) {
			t.Errorf("%s: custom asks %v to %v m of the mean person, the trade builds %v in", f.What, f.Low, f.High, built)
		}
		_, drawn, _ := d.Measure(f.Key)
		over := map[string]float64{"arms.height": 0.02, "back.height": 0.02, "back.lumbar": 0.02}[f.Key]
		if f.Key != "seat.front" && (f.Have != *drawn || !near(soft.Fit[i].Have, *drawn-over, 1e-12)) {
			t.Errorf("%s is drawn %v m, measured %v, with a cushion %v", f.What, *drawn, f.Have, soft.Fit[i].Have)
		}
		if want := f.Low * map[bool]float64{true: 2, false: 1}[f.Key == "seat.width"]; !near(two.Fit[i].Low, want, 1e-12) {
			t.Errorf("%s: of two custom asks %v, of one %v", f.What, two.Fit[i].Low, f.Low)
		}
		if have := f.Have + f.Change; have < f.Low-1e-12 || have > f.High+1e-12 ||
			f.Change != 0 && !near(have, f.Low, 1e-12) && !near(have, f.High, 1e-12) {
			t.Errorf("%s changed by %v is %v of %v to %v", f.What, f.Change, have, f.Low, f.High)
		}
	}
}

// TestMisfitsByHowMuch holds by how much somebody does not fit, from the person's own sizes and joints: feet hang by
// what their toes are over the floor where they carry nothing; knees are high where they stand a hand or more over the
// hips.
func TestMisfitsByHowMuch(t *testing.T) {
	for _, high := range []float64{-0.25, -0.13, 0, 0.005, 0.02, 0.06, 0.10} {
		d := sized()
		d.Seat.Front, d.Seat.Rear = d.Seat.Front+high, d.Seat.Rear+high
		d.Seat.Width, d.Seat.Depth = 0.40, 0.50
		r := checked(t, d)
		want := map[Misfit]bool{}
		for _, one := range r.Somebody {
			l := find(t, r, one.Name+", at ease")
			sizes := one.Person.Sizes
			knee := r2.Vec{}
			knee.X, knee.Y = l.Rig.Place(l.Figures[0].Knee, l.Balance.Rest.Tilt)
			if _, _, toe := l.Legs[0].Bars(knee); toe.Y > 1e-9 {
				if l.Feet[0].Carried != 0 {
					t.Errorf("%s: feet %v m off the floor carry %v kg", one.Name, toe.Y, l.Feet[0].Carried)
				}
				want[Misfit{one.Name, FeetHang, toe.Y}] = true
			}
			if by := sizes[person.Hips] - 0.40; by > 0 {
				want[Misfit{one.Name, TooWide, by}] = true
			}
			if by := 0.50 - sizes[person.ThighLength]; by > 0 {
				want[Misfit{one.Name, TooDeep, by}] = true
			}
			if by := l.Figures[0].Knee.Y - l.Figures[0].Hip.Y; by > kneesHigh {
				want[Misfit{one.Name, KneesUp, by}] = true
			}
		}
		for _, m := range r.Misfits {
			ok := false
			for w := range want {
				ok = ok || w.Name == m.Name && w.Trouble == m.Trouble && near(w.By, m.By, 1e-12)
			}
			if !ok {
				t.Errorf("%v m higher: %+v, want %v", high, m, want)
			}
		}
		if len(r.Misfits) != len(want) {
			t.Errorf("%v m higher: %d misfits, want %d", high, len(r.Misfits), len(want))
		}
	}
	low := sized()
	low.Seat.Front, low.Seat.Rear, low.Back.Recline = 0.09, 0.08, 1.4
	if r, err := Check(low); err != nil || !slices.ContainsFunc(r.Misfits, func(m Misfit) bool { return m.Trouble == KneesOverChin }) {
		t.Errorf("lying back on the floor nobody's knees stand over the chin: %+v, %v", r.Misfits, err)
	}
	if r, err := Check(sized()); err != nil || len(r.Misfits) > 0 && r.Misfits[0].Name == "owner" {
		t.Errorf("the owner does not fit the own chair: %+v, %v", r.Misfits, err)
	}
	if !multiple(kneesHigh, 0.01) || kneesHigh < 4*quantity.In || kneesHigh > 6*quantity.In {
		t.Errorf("knees are high from %v m", kneesHigh)
	}
}

// TestMay holds that the limits hold inside what is said and fail just outside.
func TestMay(t *testing.T) {
	d := sized()
	var m May
	for lift := 0.2; ; lift -= 0.001 { // the first that the middle person keeps, with little to spare
		d.Limits = piece.Limits{ForwardLift: lift}
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
		{"heaviest", m.Heaviest == highMass, person.Measures{person.Stature: m.Middle[person.Stature], person.Mass: m.Heaviest},
			person.Measures{person.Stature: m.Middle[person.Stature], person.Mass: m.Heaviest * 1.01}},
		{"lightest", m.Lightest == lowMass, person.Measures{person.Stature: m.Middle[person.Stature], person.Mass: m.Lightest},
			person.Measures{person.Stature: m.Middle[person.Stature], person.Mass: m.Lightest * 0.99}},
		{"tallest", m.Tallest == highStature, person.Measures{person.Stature: m.Tallest},
			person.Measures{person.Stature: m.Tallest * 1.002}},
		{"shortest", m.Shortest == lowStature, person.Measures{person.Stature: m.Shortest},
			person.Measures{person.Stature: m.Shortest * 0.998}},
	} {
		if !b.keepsFor(tt.in) {
			t.Errorf("%s: the limits do not hold", tt.name)
		}
		if !tt.any && b.keepsFor(tt.out) {
			t.Errorf("%s: the limits hold beyond too", tt.name)
		}
	}
}
