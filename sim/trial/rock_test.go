package trial

import (
	"math"
	"strings"
	"testing"

	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestSurvivalAgainstMotion holds that each number of what a chair survives does what it
// says when it is tried: just under it comes back, just over it goes over.
func TestSurvivalAgainstMotion(t *testing.T) {
	d := sized()
	r := rocked(t, d, RockOptions{})
	if len(r.Survivals) < 5 {
		t.Fatalf("%d survivals", len(r.Survivals))
	}
	for _, s := range r.Survivals {
		l := find(t, r.Report, s.Load)
		rest := l.Balance.Rest.Tilt
		over := func(start motion.Start) bool {
			return motion.Run(l.Rig, l.Balance, start, motion.Options{Duration: 20}).End == motion.WentOver
		}
		for _, release := range []float64{s.Back, -s.Forward} {
			if over(motion.Start{Tilt: rest + 0.999*release}) || !over(motion.Start{Tilt: rest + 1.001*release}) {
				t.Errorf("%s: release of %v", s.Load, release)
			}
		}
		if math.IsNaN(s.Shove) || s.ShoveNone {
			t.Errorf("%s: shove %v, none %v", s.Load, s.Shove, s.ShoveNone)
			continue
		}
		top, _ := d.TopOfBack()
		shove := func(force float64) bool {
			return over(motion.Start{Tilt: rest, Push: motion.Push{At: top, Force: force, Time: ShoveTime}})
		}
		if shove(0.99*s.Shove) || !shove(1.001*s.Shove) {
			t.Errorf("%s: a shove of %v N", s.Load, s.Shove)
		}
		// A push and hold of that force for so short works less than one that stays on.
		if b := l.Balance; b.Forward.Lift > 1.5*b.Back.Lift && s.Shove < r.Report.Pull(l).Sudden { // else it may go over forwards after it
			t.Errorf("%s: a shove of %v N for 0.3 s, held for good %v N", s.Load, s.Shove, r.Report.Pull(l).Sudden)
		}
	}
}

// TestLossesHelp holds that with a floor that takes something no trial comes nearer to
// going over.
func TestLossesHelp(t *testing.T) {
	bare := rocked(t, sized(), RockOptions{})
	lossy := sized()
	lossy.Floor.Rolling, lossy.Floor.Viscous = 0.002, 2
	less := rocked(t, lossy, RockOptions{})
	for i, s := range bare.Survivals {
		if o := less.Survivals[i]; o.Shove < s.Shove*(1-2e-3) { // found to a thousandth
			t.Errorf("%s: shove %v with losses, %v without", s.Load, o.Shove, s.Shove)
		}
	}
	if !math.IsNaN(bare.HalvesIn) || math.IsNaN(less.HalvesIn) {
		t.Errorf("halves in %v rocks without losses, %v with", bare.HalvesIn, less.HalvesIn)
	}
}

// TestSurfaces holds that a surface names friction and loss, that numbers override it, and
// that a floor too slippery for the rock ends it.
func TestSurfaces(t *testing.T) {
	d := sized()
	d.Floor.Surface = piece.Rug
	lost := func() motion.Losses {
		r := checked(t, d)
		return r.Losses(&r.Loads[0])
	}
	if f, l := d.StaticFloor(), lost(); f.Friction != 0.5 || l.Rolling != 0.004 {
		t.Errorf("rug: %+v, %+v", f, l)
	}
	d.Floor.Friction, d.Floor.Rolling = 0.05, 0.001
	if f, l := d.StaticFloor(), lost(); f.Friction != 0.05 || l.Rolling != 0.001 {
		t.Errorf("numbers override: %+v, %+v", f, l)
	}
	r := rocked(t, d, RockOptions{From: 12 * quantity.Deg})
	if r.Trace.Outcome != sim.FloorLetsGo || r.Trace.Needs <= 0.05 {
		t.Errorf("%v, needs %v", r.Trace.Outcome, r.Trace.Needs)
	}
	for s := piece.Hardwood; s <= piece.Stone; s++ {
		if g := piece.GroundOf(s); g.Friction <= 0 || g.Rolling <= 0 || !strings.Contains(g.Basis, "judgement") {
			t.Errorf("%v: %+v", s, g)
		}
	}
}

func BenchmarkShove(b *testing.B) {
	d := sized()
	r, err := check.Check(d)
	if err != nil {
		b.Fatal(err)
	}
	top, _ := d.TopOfBack()
	force := 0.0
	for b.Loop() {
		force, _, _ = shove(&r, &r.Loads[2], top)
	}
	if !(force > 0) {
		b.Fatal("no shove")
	}
}

// TestRockErrors holds what cannot be rocked, and a push at the seat.
func TestRockErrors(t *testing.T) {
	if _, err := Rock(sized(), RockOptions{Load: "nobody"}); err == nil || !strings.Contains(err.Error(), "small woman") {
		t.Errorf("a load that is not: %v", err)
	}
	if _, err := Rock(plain(0.5, 0.3, 0.3, 10, vec(0, 0.6), 1), RockOptions{}); err == nil ||
		!strings.Contains(err.Error(), "does not stand") {
		t.Errorf("a piece that falls: %v", err)
	}
	backless := plain(1, 0.3, 0.3, 10, vec(0, 0.5), 1)
	if _, err := Rock(backless, RockOptions{Force: 10}); err == nil || !strings.Contains(err.Error(), "push needs") {
		t.Errorf("a push at no back: %v", err)
	}
	if r, err := Rock(sized(), RockOptions{Force: 100, OnSeat: true, Rate: 0.1}); err != nil || r.Start.Push.At != sized().Seat.Meet() {
		t.Errorf("a push at the seat: %v, %+v", err, r.Start)
	}
}
