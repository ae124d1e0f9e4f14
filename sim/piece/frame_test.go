package piece

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/sim/quantity"
)

// TestSlideFollowsTheTop: a seat slid forward by s goes along the top edge over the low point, which is a circle of
// some bend b there: it turns by s·b, and what stood over the low point comes to (s, depth + s²·b/2), to the third
// power of s. The bend is 1/(R − depth) of a concentric top, nothing of a straight one, and of a tapered one the mean
// of both sides, each as of a rocker that tapers alike on both. A chain of arcs slides as the arc over the low point.
func TestSlideFollowsTheTop(t *testing.T) {
	taper := func(nose, tail float64) Rocker {
		return Rocker{Radius: 1.25, Nose: 0.5, Tail: 0.4, Depth: 0.06, Top: Taper, NoseDepth: nose, TailDepth: tail}
	}
	alike := func(reach, tip float64) float64 { // of a top that tapers alike, by the circle through three of its points
		const s = 1e-3
		top := func(s float64) r2.Vec {
			depth := 0.06 + (tip-0.06)*s*s/reach/reach
			return r2.Vec{X: (1.25 - depth) * math.Sin(s/1.25), Y: 1.25 - (1.25-depth)*math.Cos(s/1.25)}
		}
		a, b, c := top(-s), top(0), top(s)
		return 2 * r2.Cross(r2.Sub(b, a), r2.Sub(c, a)) / (r2.Norm(r2.Sub(b, a)) * r2.Norm(r2.Sub(c, b)) * r2.Norm(r2.Sub(c, a)))
	}
	level := taper(0, 0)
	level.Nose, level.Tail = 0.5, 0.5
	level.NoseDepth = 0.06 - (1-0.06/1.25)*0.25/1.25/2 // so that D + a·s² is level: 2a = −(1 − D/R)/R
	level.TailDepth = level.NoseDepth
	for name, tt := range map[string]struct {
		rocker Rocker
		bend   float64
	}{
		"concentric": {Rocker{Radius: 1.05, Nose: 0.42, Tail: 0.58, Depth: 0.06}, 1 / 0.99},
		"arcs":       {Rocker{Arcs: []Arc{{Radius: 0.8, Length: 0.5}, {Radius: 1.3, Length: 0.5}}, Nose: 0.3, Depth: 0.05}, 1 / 0.75},
		"straight":   {Rocker{Radius: 1.05, Nose: 0.42, Tail: 0.58, Depth: 0.06, Top: Straight}, 0},
		"taper":      {taper(0.03, 0.04), (alike(0.5, 0.03) + alike(0.4, 0.04)) / 2},
		"swelling":   {taper(0.08, 0), (alike(0.5, 0.08) + 1/1.19) / 2},
		"level":      {level, 0},
		"solid":      {Rocker{Radius: 0.1, Nose: 0.1, Tail: 0.1, Depth: 0.12}, 0}, // its top has no room to bend
	} {
		for _, s := range []float64{1e-3, -2e-3} {
			d := Design{Rocker: tt.rocker, Seat: Seat{Slide: s}}
			c := d.Carry(edgeOf(t, d))
			low := c.Point(r2.Vec{Y: d.Rocker.Depth})
			if want := (r2.Vec{X: s, Y: d.Rocker.Depth + s*s*tt.bend/2}); r2.Norm(r2.Sub(low, want)) > math.Abs(s*s*s) {
				t.Errorf("%s: slid by %v m the low point's wood comes to %v, want %v", name, s, low, want)
			}
			if !near(c.Turn, s*tt.bend, 1e-5*math.Abs(s)) { // the circle through three points errs by 1e-6
				t.Errorf("%s: slid by %v m it turns by %v, want %v", name, s, c.Turn, s*tt.bend)
			}
		}
	}
}

// TestCutsLetDown: cut alike, the seat comes down by the cut without a turn; cut apart, it comes down over each foot by
// the cut there, and behind a pair that is drawn or taken alike. One carry after another is the carry of both.
func TestCutsLetDown(t *testing.T) {
	for _, legs := range [][]Leg{nil, drawnChair().Legs} {
		d := drawnChair()
		d.Legs = legs
		d.Seat.FrontCut, d.Seat.RearCut = 0.012, 0.012
		edge := edgeOf(t, d)
		even := d.Carry(edge)
		if got := even.Point(r2.Vec{X: 3, Y: 5}); even.Turn != 0 || r2.Norm(r2.Sub(got, r2.Vec{X: 3, Y: 5 - 0.012})) > 1e-14 {
			t.Errorf("%d legs cut alike: (3, 5) comes to %v", len(legs), got)
		}
		d.Seat.FrontCut, d.Seat.RearCut = -0.004, 0.006
		c := d.Carry(edge)
		for _, foot := range []struct {
			which Which
			cut   float64
		}{{Front, -0.004}, {Rear, 0.006}} {
			at := d.Foot(foot.which, edge)
			at.Y = d.Foot(Front, edge).Y                                   // the turn is about the front foot
			if down := at.Y - c.Point(at).Y; !near(down, foot.cut, 1e-5) { // a hundredth of a radian, to the third power
				t.Errorf("%d legs: cut by %v at the %v foot it comes down by %v", len(legs), foot.cut, foot.which, down)
			}
		}
		if rises := c.Point(r2.Vec{X: 1}).Y - c.Point(r2.Vec{}).Y; !(rises > 0) || !(c.Turn > 0) {
			t.Errorf("cut behind it leans by %v, and 1 m ahead it rises by %v", c.Turn, rises)
		}
		next := Carry{Turn: -0.3, About: r2.Vec{X: 0.2, Y: 0.7}, Move: r2.Vec{X: -0.1, Y: 0.4}}
		p := r2.Vec{X: 0.3, Y: 0.6}
		if got, want := c.then(next).Point(p), next.Point(c.Point(p)); r2.Norm(r2.Sub(got, want)) > 1e-15 {
			t.Errorf("carried twice: %v, by one carry %v", want, got)
		}
	}
}

// TestTwiceAsLarge: a piece whose lengths are all doubled by the table of measures is the same piece, twice as large:
// places and depths double, angles stay, and of the same wood it weighs 8 times as much, with 32 times the inertia.
func TestTwiceAsLarge(t *testing.T) {
	for _, top := range []Top{Concentric, Straight, Taper} {
		d := drawnChair()
		d.Piece, d.Rocker.Top, d.Rocker.NoseDepth, d.Rocker.TailDepth = Piece{}, top, 0.05, 0.04
		d.Seat.Slide, d.Seat.RearCut = 0.012, 0.007
		d.Parts = []Part{
			{Shape: Box, Length: 0.45, Height: 0.04, Width: 0.5, Density: 600, At: r2.Vec{X: 0.03, Y: 0.41}, Lean: 0.1},
			{Shape: Cone, Diameter: 0.05, TopDiameter: 0.03, Height: 0.6, Density: 700, Lean: 0.2, At: r2.Vec{X: -0.2, Y: 0.7}, Count: 2},
		}
		large := d.Clone()
		for _, key := range large.Keys() {
			if m, field, err := large.Measure(key); err != nil {
				t.Fatal(err)
			} else if m.Kind == quantity.Length {
				*field *= 2
			}
		}
		a, b := edgeOf(t, d), edgeOf(t, large)
		ca, cb := d.Carry(a), large.Carry(b)
		ma, errA := d.Masses(a)
		mb, errB := large.Masses(b)
		want := ma.Joined(ca)
		want.Mass, want.Inertia, want.Centre = want.Mass*8, want.Inertia*32, r2.Scale(2, want.Centre)
		if got := mb.Joined(cb); errA != nil || errB != nil || !alike(got, want, 1e-9) {
			t.Errorf("%v: twice as large %+v, want %+v", tops[top], got, want)
		}
		if !near(cb.Turn, ca.Turn, 1e-12) {
			t.Errorf("%v: the seat turns by %v, twice as large by %v", tops[top], ca.Turn, cb.Turn)
		}
		members := large.Members(b)
		for i, m := range d.Members(a) {
			for end := range m.Axis { // a taper's top is fitted by arcs to a hundredth of a millimetre
				if off := r3.Norm(r3.Sub(members[i].Axis[end], r3.Scale(2, m.Axis[end]))); off > 2e-5 {
					t.Errorf("%v: %s ends at %v, twice as large at %v", tops[top], m.Name, m.Axis[end], members[i].Axis[end])
				}
			}
		}
		if lengthA, lengthB := d.LegLength(a), large.LegLength(b); !near(lengthB, 2*lengthA, 2e-5) {
			t.Errorf("%v: a front leg is %v m long, twice as large %v", tops[top], lengthA, lengthB)
		}
	}
}

// TestSeatByHand: the seat falls back by the angle of the triangle of its ends, and an arm's post is plumb under its end;
// what cannot be such a triangle, and a leg that lies, are refused on either side. Braces bend as one bar on two ends.
func TestSeatByHand(t *testing.T) {
	d := drawnChair()
	list := d.Members(edgeOf(t, d))
	if arm, post := list[2], list[3]; !near(math.Tan(d.Seat.Fall()), 0.03/math.Sqrt(0.45*0.45-0.03*0.03), 1e-12) ||
		arm.Axis[0].Z != 0.25 || arm.Wide != [2]float64{0.05, 0.07} ||
		post.Axis[1] != arm.Axis[1] || !near(post.Length(), 0.20, 1e-15) || post.Axis[0].X != post.Axis[1].X {
		t.Errorf("the seat falls by %v, an arm is %+v and its post %+v", d.Seat.Fall(), arm, post)
	}
	braces := Braces{Count: 5, Width: 0.03, Thickness: 0.01, Length: 0.6, Wood: "white ash"}
	bar, strength, err := braces.Beam() // white ash: 103 MPa (Wood Handbook, FPL-GTR-190, table 5-3a)
	if _, stress := bar.Bend(300, 0.3); err != nil || strength != 103e6 || !near(stress, 300*0.6/4*6/(5*0.03*0.01*0.01), 1e-3) {
		t.Errorf("%v Pa of %v in the braces, %v", stress, strength, err)
	}
	for _, wrong := range []func(d *Design){
		func(d *Design) { d.Seat.Front = 0.90 }, func(d *Design) { d.Seat.Rear = 0.90 },
		func(d *Design) { d.Legs[1].Rake = 61 * quantity.Deg }, func(d *Design) { d.Legs[1].Rake = -61 * quantity.Deg },
		func(d *Design) { d.Legs[0].Splay = 61 * quantity.Deg }, func(d *Design) { d.Legs[0].Splay = -61 * quantity.Deg },
	} {
		d, good := drawnChair(), drawnChair()
		good.Legs[0].Rake, good.Legs[0].Splay = 59*quantity.Deg, -59*quantity.Deg
		if wrong(&d); d.Validate() == nil || good.Validate() != nil {
			t.Errorf("%+v with %+v: %v, and a leg at 59 degrees: %v", d.Seat, d.Legs, d.Validate(), good.Validate())
		}
	}
}
