package sim

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
)

// panics returns what a call panics with, "" where it does not.
func panics(call func()) (words string) {
	defer func() {
		if said := recover(); said != nil {
			words = fmt.Sprint(said)
		}
	}()
	call()
	return ""
}

// TestMisuse holds that what a program cannot mean is told in words of this package, or of the
// rocker's where the edge is missing.
func TestMisuse(t *testing.T) {
	good := arc(0.6, 0)
	b := good.Balance()
	with := func(change func(r *Rig)) Rig {
		r := good
		change(&r)
		return r
	}
	massless := with(func(r *Rig) { r.Body.Mass = 0 })
	wall := with(func(r *Rig) { r.Floor.Slope = 2 })
	upward := with(func(r *Rig) { r.Floor.Gravity = -Gravity })
	slippery := with(func(r *Rig) { r.Floor.Friction = math.NaN() })
	none := arc(1.5, 0).Balance() // the weight stands over the centre of the arc
	none.Outcome = NoRest
	for _, tt := range []struct {
		words string
		call  func()
	}{
		{"sim: a rig needs a floor edge", func() { Rig{}.Balance() }},
		{"sim: a rig needs a floor edge", func() { Rig{Body: good.Body}.Equilibria(nil) }},
		{"sim: a rig needs a mass above 0 kg; 0 is none", func() { massless.Balance() }},
		{"sim: a rig needs a mass", func() { with(func(r *Rig) { r.Body.Mass = -1 }).Balance() }},
		{"sim: a rig needs a mass", func() { with(func(r *Rig) { r.Body.Mass = math.NaN() }).BalanceAt(b.Rest) }},
		{"sim: a floor slopes by less than π/2 rad; 2 rad is none", func() { wall.Balance() }},
		{"sim: gravity", func() { upward.Balance() }},
		{"sim: gravity", func() { slippery.Balance() }},
		{"sim: this is no equilibrium of the rig", func() { good.BalanceAt(Equilibrium{Tilt: 0.1}) }},
		{"sim: this balance has no rest to rock about, its Outcome is: no rest", func() { good.Swing(none, 0.1) }},
		{"sim: this balance has no rest", func() { good.Period(none, 0.1) }},
		{"sim: this balance has no rest", func() { good.LargestRelease(none) }},
		{"sim: this balance has no rest", func() { good.LargestRate(none) }},
		{"sim: this balance has no rest", func() { good.Pull(none, r2.Vec{Y: 1}) }},
		{"sim: this balance has no rest", func() { good.Effort(none, r2.Vec{Y: 1}) }},
		{"sim: this balance has no rest", func() { good.Tread(none, 0.5, 0.1) }},
		{"sim: a release is a tilt", func() { good.Swing(b, math.NaN()) }},
		{"sim: nothing rocks between tilts of 0 and +Inf rad", func() { good.Sweep(0, math.Inf(1), r2.Vec{}) }},
		{"sim: two rockers stand apart, and 0 m is no track", func() { WalkOf(good.Profile, good.Profile, 0, 0, 0, 1) }},
		{"rocker: the zero Profile has no edge", func() { Rig{}.Righting(0) }},
		{"rocker: the zero Profile has no edge", func() { Rig{}.Place(r2.Vec{}, 0) }},
	} {
		if got := panics(tt.call); !strings.HasPrefix(got, tt.words) {
			t.Errorf("%q, want %q", got, tt.words)
		}
	}
}

// TestNoNumberIsAnAnswer: a piece whose inertia nobody knows stands, and has no period.
func TestNoNumberIsAnAnswer(t *testing.T) {
	known := arc(0.6, 0.01)
	unknown := known
	unknown.Body.Inertia = math.NaN()
	b, want := unknown.Balance(), known.Balance()
	if b.Outcome != Rocks || b.Rest != want.Rest || b.Back != want.Back || !math.IsNaN(b.Period) {
		t.Errorf("%+v, want that of %+v but for the period", b, want)
	}
	nowhere := Rig{Profile: rocker.Single(1, 0.4, 0.4), Body: body.Body{Mass: 1, Centre: r2.Vec{Y: math.NaN()}}}
	if b := nowhere.Balance(); b.Outcome != NoRest {
		t.Errorf("a weight that lies nowhere: %v", b.Outcome)
	}
}

// TestSweepEitherWay: a sweep from back to front needs the room of one from front to back.
func TestSweepEitherWay(t *testing.T) {
	r, q := arc(0.6, 0), r2.Vec{X: -0.3, Y: 1}
	if there, back := r.Sweep(-0.2, 0.3, q), r.Sweep(0.3, -0.2, q); there != back {
		t.Errorf("%+v and %+v", there, back)
	}
}
