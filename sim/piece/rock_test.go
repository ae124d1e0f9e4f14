package piece

import (
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/motion"
)

// TestSurvivalAgainstMotion holds that each number of what a chair survives does what it
// says when it is tried: just under it comes back, just over it goes over.
func TestSurvivalAgainstMotion(t *testing.T) {
	d := sized()
	r, err := Rock(d, RockOptions{})
	if err != nil {
		t.Fatal(err)
	}
	if r.Report.Survives == nil || len(r.Survivals) < 5 {
		t.Fatalf("%+v, %d survivals", r.Report.Survives, len(r.Survivals))
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
		if b := l.Balance; b.Forward.Lift > 1.5*b.Back.Lift && s.Shove < l.Pull.Sudden { // else it may go over forwards after it
			t.Errorf("%s: a shove of %v N for 0.3 s, held for good %v N", s.Load, s.Shove, l.Pull.Sudden)
		}
	}
}

// TestLossesHelp holds that with a floor that takes something no trial comes nearer to
// going over.
func TestLossesHelp(t *testing.T) {
	bare, err := Rock(sized(), RockOptions{})
	if err != nil {
		t.Fatal(err)
	}
	lossy := sized()
	lossy.Floor.Rolling, lossy.Floor.Viscous = 0.002, 2
	less, err := Rock(lossy, RockOptions{})
	if err != nil {
		t.Fatal(err)
	}
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
	d.Floor.Surface = Rug
	if f, l := d.floor(), d.losses(nil); f.Friction != 0.5 || l.Rolling != 0.004 {
		t.Errorf("rug: %+v, %+v", f, l)
	}
	d.Floor.Friction, d.Floor.Rolling = 0.05, 0.001
	if f, l := d.floor(), d.losses(nil); f.Friction != 0.05 || l.Rolling != 0.001 {
		t.Errorf("numbers override: %+v, %+v", f, l)
	}
	r, err := Rock(d, RockOptions{From: 12 * degree})
	if err != nil {
		t.Fatal(err)
	}
	if r.Trace.Outcome != sim.FloorLetsGo || r.Trace.Needs <= 0.05 {
		t.Errorf("%v, needs %v", r.Trace.Outcome, r.Trace.Needs)
	}
	for s := Hardwood; s <= Stone; s++ {
		if g := GroundOf(s); g.Friction <= 0 || g.Rolling <= 0 || !strings.Contains(g.Basis, "judgement") {
			t.Errorf("%v: %+v", s, g)
		}
	}
}

// TestSeating holds the lever arms of the tests by statics: held just under its slow force
// the piece has a rest, pushed a little more for five seconds it goes over.
func TestSeating(t *testing.T) {
	d := sized()
	r, err := Rock(d, RockOptions{})
	if err != nil || len(r.Seating) != 4 {
		t.Fatal(err, r.Seating)
	}
	for _, s := range r.Seating {
		if s.Confidence == "" || s.Source == "" || !(s.Tips > 0) {
			t.Errorf("%+v", s)
		}
		if !math.IsNaN(s.Force) && math.Abs(s.Force) < 0.5*s.Tips && s.Outcome != sim.Rocks {
			t.Errorf("%s: %v under half of the force that tips it", s.Name, s.Outcome)
		}
	}
}

// TestSlopes holds a horse on ten degrees by the closed form of one arc: sin t = R·sin a/d.
func TestSlopes(t *testing.T) {
	d := plain(1.2, 0.9, 0.9, 12, vec(0, 0.4), 1)
	d.Kind, d.Seat, d.Sitters = Horse, Seat{Rear: 0.55, Behind: 0.12}, []Sitter{{Name: "own", Person: person.Given{Age: 4}}}
	r, err := Rock(d, RockOptions{})
	if err != nil || len(r.Slopes) != 4 {
		t.Fatal(err, r.Slopes)
	}
	for _, s := range r.Slopes {
		if !s.Rests || s.Margin <= 0 {
			t.Errorf("%+v", s)
		}
	}
}

// TestWalkIsKept holds that like, parallel rockers do not walk, that a difference at the
// tips does, and that the difference said to be enough scrubs as much as is unnoticed.
func TestWalkIsKept(t *testing.T) {
	d := sized()
	r, err := Rock(d, RockOptions{})
	if err != nil || r.Walk == nil || !r.Walk.OneCurve || r.Walk.Heading != 0 || r.Walk.Scrub != 0 {
		t.Fatal(err, r.Walk)
	}
	d.Rocker.Unequal = r.Walk.Enough
	again, err := Rock(d, RockOptions{})
	if err != nil || math.Abs(again.Walk.Scrub/Unnoticed-1) > 0.02 { // from a trial of 1 mm, straight
		t.Errorf("%v: scrub %v, want %v", err, again.Walk.Scrub, Unnoticed)
	}
	left := tape(must(risen(r.Report.Edge, d.Rocker.Unequal)))
	right := tape(r.Report.Edge)
	if got := left.TailTip - right.TailTip; math.Abs(got/d.Rocker.Unequal-1) > 1e-6 { // the radius by halving
		t.Errorf("the tail tip rises by %v, want %v", got, d.Rocker.Unequal)
	}
}

func must[T any](x T, ok bool) T {
	if !ok {
		panic("not one arc")
	}
	return x
}

func vec(x, y float64) r2.Vec { return r2.Vec{X: x, Y: y} }

func BenchmarkShove(b *testing.B) {
	d := sized()
	r, err := Check(d, Options{})
	if err != nil {
		b.Fatal(err)
	}
	top, _ := d.TopOfBack()
	force := 0.0
	for b.Loop() {
		force, _, _ = d.shove(&r.Loads[2], top)
	}
	if !(force > 0) {
		b.Fatal("no shove")
	}
}

// TestSeatingActsAtThePad: the slow force of the forward tests by statics, F·y = m·g·Z, with y the height of the pad
// 50 and 60 mm from the front edge, rolled by hand on the arc or about its nose tip; and no child's
// chair is put under a grown-up's weight.
func TestSeatingActsAtThePad(t *testing.T) {
	d := sized()
	r, err := Rock(d, RockOptions{})
	if err != nil {
		t.Fatal(err)
	}
	const g = 9.80665
	edge := r.Report.Edge
	nose, radius := edge.Nose(), d.Rocker.Radius
	for i, from := range []float64{0.050, 0.060} {
		front, meet := d.Seat.FrontEdge(), d.Seat.Meet()
		pad := r2.Sub(front, r2.Scale(from, r2.Unit(r2.Sub(front, meet))))
		rig := loadedAt(&r.Report.Loads[0], 600/g, pad)
		b := rig.Balance()
		most := 0.0
		for turn := 0.0; turn < b.Forward.Angle; turn += 0.01 * degree {
			tilt := b.Rest.Tilt - turn
			sin, cos := math.Sincos(tilt)
			over := func(c r2.Vec) float64 { return (pad.X-c.X)*sin + (pad.Y-c.Y)*cos } // over a point that the piece turns about
			height := radius + over(r2.Vec{Y: radius})
			if tilt < -d.Rocker.Nose/radius {
				height = over(nose)
			}
			arm, _ := rig.Righting(tilt)
			most = max(most, -rig.Body.Mass*g*arm/height)
		}
		if got := r.Seating[i].Tips; math.Abs(got/most-1) > 1e-2 { // it looks each quarter of a degree of some 25, over which the force grows in proportion
			t.Errorf("%s: goes over under %v N, by statics at the pad %v", r.Seating[i].Name, got, most)
		}
	}
	d.Sitters = []Sitter{{Name: "our child", Person: person.Given{Age: 5}}}
	child, err := Rock(d, RockOptions{})
	if err != nil || len(child.Seating) != 0 || !child.Report.ForAChild() {
		t.Errorf("a child's chair is tried with a grown-up's 600 N: %v, %+v", err, child.Seating)
	}
}
