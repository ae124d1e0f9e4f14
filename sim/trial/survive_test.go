package trial

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestShoveSaysWhatEndsIt: pushed once more with the least shove, it ends as is said, in each way there is.
func TestShoveSaysWhatEndsIt(t *testing.T) {
	seen := map[string]bool{}
	for _, friction := range []float64{0, 0.05, 0.2} {
		d := sized()
		d.Floor.Friction = friction
		if friction == 0 { // pushed back, it comes over the nose
			d.Rocker.Nose = 12 * quantity.In
		}
		r := rocked(t, d, RockOptions{})
		for _, s := range r.Survivals {
			if s.ShoveNone != (s.EndedBy == "") {
				t.Errorf("%s: none %v, ended by %q", s.Load, s.ShoveNone, s.EndedBy)
				continue
			}
			again := rocked(t, d, RockOptions{Load: s.Load, Force: s.Shove, Duration: 10})
			if got := again.Trace.EndedBy(); got != s.EndedBy {
				t.Errorf("friction %v, %s: ended by %q, pushed again with %v N by %q", friction, s.Load, s.EndedBy, s.Shove, got)
			}
			seen[s.EndedBy] = true
		}
	}
	if len(seen) < 3 {
		t.Errorf("only %v were seen", seen)
	}
}

// TestSurvivalByHand: the speed that takes the top of the back over has the energy of the lift, and turns about where
// the piece touches; trials begin on the tips, at the tilts where the arc ends, or with the momentum of a fall about
// that place. On a slope too.
func TestSurvivalByHand(t *testing.T) {
	for _, slope := range []float64{0, 2 * quantity.Deg} {
		d := readingChair()
		d.Floor.Slope = slope
		r := checked(t, d)
		l, empty := find(t, r, "owner, at ease"), &r.Loads[0]
		s := survival(&r, l)
		radius := d.Rocker.Radius
		touch := func(tilt float64) r2.Vec { // where the arc touches the floor
			sin, cos := math.Sincos(tilt - slope)
			return vec(-radius*sin, radius*(1-cos))
		}
		about := func(l *check.Load, tilt float64) float64 { return l.Rig.Body.About(touch(tilt)) }
		rest := l.Balance.Rest.Tilt
		top, _ := d.TopOfBack()
		rate := math.Sqrt(2 * l.Rig.Body.Mass * g * l.Balance.Back.Lift / about(l, rest))
		if want := rate * r2.Norm(r2.Sub(top, touch(rest))); !near(s.Speed/want, 1, 1e-12) {
			t.Errorf("slope %v: at %v m/s it goes over, by its energy %v", slope, s.Speed, want)
		}
		from := empty.Balance.Rest.Tilt
		ahead := r2.Rotate(r2.Sub(l.Person.Centre, touch(from)), from-slope, r2.Vec{}).X // along the floor
		drop := -l.Person.Mass * math.Sqrt(2*g*0.10) * ahead / about(l, from)            // from 4 in, or 10 cm
		for name, start := range map[string]motion.Start{
			"from the nose tip": {Tilt: -d.Rocker.Nose/radius + slope}, "from the tail tip": {Tilt: d.Rocker.Tail/radius + slope},
			"drops in": {Tilt: from, Rate: drop},
		} {
			want := motion.Run(l.Rig, l.Balance, start, motion.Options{Duration: 12})
			followed := motion.Run(l.Rig, l.Balance, start, motion.Options{Duration: 12, Turns: 2}) // as far as a trial is
			i := slices.IndexFunc(s.Trials, func(r Result) bool { return r.Name == name })
			if i < 0 {
				t.Fatalf("no trial %s", name)
			}
			if got := s.Trials[i]; got.Outcome != want.Outcome || !near(got.Margin, want.Margin, 1e-9) ||
				!near(got.Tilt, followed.Last.Tilt, 1e-6) || got.Share != 1 {
				t.Errorf("slope %v, %s: %+v, begun by hand %v, %v left, at %v", slope, got.Name, got, want.Outcome, want.Margin,
					want.Last.Tilt)
			}
		}
	}
	toy := plain(0.02, 0.012, 0.012, 0.02, vec(0, 0.01), 3e-7) // so small that a shove lasts it for several rocks
	toy.Seat, toy.Back = piece.Seat{Rear: 0.01}, piece.Back{Height: 0.01}
	r := checked(t, toy)
	lift := math.Hypot(0.02*math.Sin(0.6), 0.01-0.02*(1-math.Cos(0.6))) - 0.01
	inertia := 3e-7 + 0.02*0.01*0.01
	want := 3 * math.Sqrt(2*0.02*g*lift*inertia) / (ShoveTime * 0.02) // three times J·ω/(t·y)
	if s := survival(&r, &r.Loads[0]); !s.ShoveNone || !near(s.Shove/want, 1, 1e-9) {
		t.Errorf("a toy is shoved with %v N, none %v; want none up to %v", s.Shove, s.ShoveNone, want)
	}
	if !multiple(ShoveTime, 0.1) || !multiple(DropHeight, 0.05) || !multiple(CaughtUnder, quantity.In/4) {
		t.Errorf("a shove of %v s, a drop of %v m, fingers of %v m: our judgement is round", ShoveTime, DropHeight, CaughtUnder)
	}
}
