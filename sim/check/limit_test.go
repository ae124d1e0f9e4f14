package check

import (
	"errors"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestLimitsAreOfWhatWasFound holds that a limit on what only a load that has settled has, the push for one degree,
// is asked of such loads alone: none of the chair keeps 1 mN, of the owner as of whoever may sit.
func TestLimitsAreOfWhatWasFound(t *testing.T) {
	before := asks
	defer func() { asks = before }()
	push := func(_ *Balanced, l *Load) float64 { return l.EffortBack }
	asks = []ask{{Measure: piece.LimitOf("rest_tilt"), atMost: true, got: push}}
	d := sized()
	d.Limits = piece.Limits{RestTilt: 1e-3}
	r := checked(t, d)
	asked := 0
	for _, l := range r.Limits {
		if l.Name != "rest" && (l.Holds || !(l.Got > 0)) {
			t.Errorf("%s of %s: got %v, holds %v; want a push above zero that is too much", l.Name, l.Load, l.Got, l.Holds)
		} else if l.Name != "rest" {
			asked++
		}
	}
	if asked < 5 || r.May == nil || !r.May.Nobody {
		t.Errorf("%d loads asked, who may sit %+v; want many and nobody", asked, r.May)
	}
}

// TestNoLimitHoldsWithoutARest holds that no limit is measured, nor holds, on a load that has no rest.
func TestNoLimitHoldsWithoutARest(t *testing.T) {
	b := Balanced{}
	b.Design.Limits = piece.Limits{BackMargin: 1, BackLift: 1, ForwardMargin: 1, ForwardLift: 1, RestTilt: 1,
		SeatFallsLeast: piece.Wish{Asked: true}, SeatFallsMost: 1, SlidesOff: 1, OneRockLeast: 1, OneRockMost: 1, Push: 1}
	edge, err := rocker.Chain(0.3, rocker.Arc(1, 0.6))
	if err != nil {
		t.Fatal(err)
	}
	l := Load{Name: "owner", Sitter: "owner", Rig: sim.Rig{Profile: edge}}
	l.Person.Mass, l.Person.Centre.Y = 80, 1.2 // above the arc's centre
	l.settle(&b, body.Body{})
	limits, _ := b.limitsOf([]Load{l})
	if len(limits) != 1+11 {
		t.Errorf("%d limits, want a rest and 11", len(limits))
	}
	for _, limit := range limits {
		if limit.Holds || limit.Name != "rest" && !math.IsNaN(limit.Got) {
			t.Errorf("%s: got %v, holds %v; want NaN that does not hold", limit.Name, limit.Got, limit.Holds)
		}
	}
}

// TestLimitsOfSeating holds that what is asked of chairs alone is refused of a cradle, and of a chair asked.
func TestLimitsOfSeating(t *testing.T) {
	for _, kind := range []piece.Kind{piece.Chair, piece.Cradle, piece.Horse} {
		d := plain(0.8, 0.3, 0.3, 12, r2.Vec{Y: 0.2}, 1)
		d.Kind, d.Limits.Push = kind, 20
		var wrong *piece.KeyError
		if _, err := Balance(d); errors.As(err, &wrong) != (kind != piece.Chair) || wrong != nil && wrong.Key != "limits.push" {
			t.Errorf("%v: %v", kind, err)
		}
	}
}

// TestStandsOnlyJust holds of a nose so short that who rises stands, but might not, that the first to look at is the nose.
func TestStandsOnlyJust(t *testing.T) {
	d := sized()
	d.Rocker.Nose = 4 * quantity.In
	r := checked(t, d)
	found := false
	for _, l := range r.Limits {
		if l.Name == "rest" && l.Near {
			found = true
			if key := r.LookAt(l); key != "rocker.nose" {
				t.Errorf("%s: look at %s", l.Load, key)
			}
		}
	}
	if !found {
		t.Error("everybody stands surely")
	}
}

// TestEveryLimitIsAsked holds that each limit that a maker can set is asked by one row.
func TestEveryLimitIsAsked(t *testing.T) {
	rows := map[string]int{}
	for _, a := range asks {
		rows[a.Key]++
	}
	for _, m := range piece.Measures() {
		if strings.HasPrefix(m.Key, "limits.") && rows[m.Key] != 1 {
			t.Errorf("%s is asked by %d rows", m.Key, rows[m.Key])
		}
	}
}

// TestWorst: nothing is worse than no rest, not even four times a tilt that is allowed.
func TestWorst(t *testing.T) {
	tilted := Limit{Name: "rest_tilt", Want: 5, AtMost: true, Got: 20}
	for _, limits := range [][]Limit{{tilted, {Name: "rest"}}, {tilted, {Name: "back_margin", Want: 15, Got: math.NaN()}}} {
		if worst := worstOf(limits); worst != 1 {
			t.Errorf("of %+v the worst is %d, want the second", limits, worst)
		}
	}
}
