package piece

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"rockerwright/sim/quantity"
)

// side returns a place in space from the side.
func side(p r3.Vec) r2.Vec { return r2.Vec{X: p.X, Y: p.Y} }

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
			at := d.foot(foot.which, edge)
			at.Y = d.foot(Front, edge).Y                                   // the turn is about the front foot
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

// TestLegsStandOnTheirLines: a leg runs by its rake and splay from the top edge up to the top of the seat, and enters
// it so thick below, square to it; with the seat cut and slid the line goes along with it and the foot comes to stand
// on the top edge again. The tracks are as far apart as the splay brings them below the seat's width.
func TestLegsStandOnTheirLines(t *testing.T) {
	over := func(s Seat, p r2.Vec) float64 { // the top of the seat, square to it
		way := r2.Unit(r2.Sub(s.FrontEdge(), s.Meet()))
		return r2.Cross(way, r2.Sub(p, s.Meet()))
	}
	onTop := map[Top]func(p r2.Vec) float64{
		Concentric: func(p r2.Vec) float64 { return 0.99 - r2.Norm(r2.Sub(p, r2.Vec{Y: 1.05})) },
		Straight:   func(p r2.Vec) float64 { return p.Y - 0.16 },
	}
	for top, off := range onTop {
		for _, carried := range []Seat{{}, {FrontCut: 0.01, RearCut: -0.02}, {Slide: 0.015}, {RearCut: 0.03, Slide: -0.02}} {
			d := drawnChair()
			if d.Rocker.Top = top; top == Straight {
				d.Rocker.Depth = 0.16 // over both tips
			}
			d.Seat.FrontCut, d.Seat.RearCut, d.Seat.Slide = carried.FrontCut, carried.RearCut, carried.Slide
			edge := edgeOf(t, d)
			c, on := d.Carry(edge), d.Rocker.OnBench(edge).TopEdge()
			for i, l := range d.Legs {
				drawn, err := d.StandLeg(l, on, Carry{})
				if err != nil {
					t.Fatal(err)
				}
				way := r3.Sub(drawn.Axis[1], drawn.Axis[0])
				if foot := drawn.Axis[0]; !near(foot.X, l.At, 1e-12) || !near(-way.X/way.Y, math.Tan(l.Rake), 1e-12) ||
					!near(-way.Z/way.Y, math.Tan(l.Splay), 1e-12) || !near(off(side(foot)), 0, 1e-12) {
					t.Errorf("%v, %s: from %v along %v", tops[top], l.Name, foot, way)
				}
				if at, in := over(d.Seat, side(drawn.Axis[1])), over(d.Seat, side(drawn.Enters)); !near(at, 0, 1e-12) ||
					!near(in, -0.05, 1e-12) {
					t.Errorf("%v, %s ends %v m over the seat and enters it at %v", tops[top], l.Name, at, in)
				}
				m := d.Members(edge)[4+i] // behind seat, back, arms and their posts
				line := r2.Sub(c.Point(side(drawn.Axis[1])), c.Point(side(drawn.Axis[0])))
				foot := side(m.Axis[0])
				if r2.Norm(r2.Sub(side(m.Axis[1]), c.Point(side(drawn.Axis[1])))) > 1e-12 ||
					r2.Norm(r2.Sub(side(m.Enters), c.Point(side(drawn.Enters)))) > 1e-12 ||
					!near(r2.Cross(r2.Unit(line), r2.Sub(foot, side(m.Axis[1]))), 0, 1e-12) || !near(off(foot), 0, 1e-12) {
					t.Errorf("%v, %s carried by %+v: from %v to %v", tops[top], l.Name, c, m.Axis[0], m.Axis[1])
				}
				if want := 0.25 + 0.40*math.Tan(0.12); !near(m.Axis[0].Z, want, 1e-12) { // half a seat, and the rear legs' splay
					t.Errorf("%s stands %v m out, want %v", l.Name, m.Axis[0].Z, want)
				}
			}
		}
	}
	d := drawnChair()
	front := r2.Vec{X: -0.19 + math.Sqrt(0.45*0.45-0.03*0.03), Y: 0.43}
	topEdge := 1.05 - math.Sqrt(0.99*0.99-front.X*front.X)
	if got := d.LegLength(edgeOf(t, d)); !near(got, front.Y-topEdge, 1e-12) {
		t.Errorf("a plumb front leg is %v m long, want %v", got, front.Y-topEdge)
	}
	low := Leg{At: 0.1, Rake: 0.2, Top: 0.3} // the centre line told by where it ends, with and without a seat
	for _, s := range []Seat{d.Seat, {Rear: 0.4}} {
		d.Seat = s
		m, err := d.StandLeg(low, d.Rocker.OnBench(edgeOf(t, d)).TopEdge(), Carry{})
		if err != nil || m.Enters.Y != 0.3 || !near(m.Enters.X, m.Axis[0].X-(0.3-m.Axis[0].Y)*math.Tan(0.2), 1e-12) ||
			!s.SlopeKnown() && m.Axis[1] != m.Enters {
			t.Errorf("a leg told up to 0.3 m on %+v: %+v, %v", s, m, err)
		}
	}
}

// TestBeyondTheEnds: the top edge of a concentric rocker with square ends ends on the radius through the tip, at
// (R − depth)·sin(length/R); a leg further out stands beyond it by the rest, and is drawn down to its depth over the
// floor edge.
func TestBeyondTheEnds(t *testing.T) {
	d := drawnChair()
	edge := edgeOf(t, d)
	nose, tail := 0.99*math.Sin(0.42/1.05), 0.99*math.Sin(0.58/1.05)
	for _, tt := range []struct {
		front, rear float64
		want        []Beyond
	}{
		{nose - 0.001, -tail + 0.001, nil},
		{nose + 0.003, -0.2, []Beyond{{Which: Front, By: 0.003}}},
		{0.1, -tail - 0.002, []Beyond{{Which: Rear, Tail: true, By: 0.002}}},
		{nose + 0.001, -tail - 0.004, []Beyond{{Which: Front, By: 0.001}, {Which: Rear, Tail: true, By: 0.004}}},
	} {
		d.Legs = []Leg{{Which: Front, At: tt.front}, {Which: Rear, At: tt.rear}}
		got := d.Beyond(edge)
		if !slices.EqualFunc(got, tt.want, func(a, b Beyond) bool {
			return a.Which == b.Which && a.Tail == b.Tail && !a.Taken && near(a.By, b.By, 1e-9)
		}) {
			t.Errorf("legs at %v and %v: %+v, want %+v", tt.front, tt.rear, got, tt.want)
		}
		for _, b := range tt.want {
			l, _ := d.Leg(b.Which)
			m, err := d.StandLeg(l, d.Rocker.OnBench(edge).TopEdge(), Carry{})
			if want := 0.06 + 1.05 - math.Sqrt(1.05*1.05-l.At*l.At); err == nil || !near(m.Axis[0].Y, want, 1e-9) {
				t.Errorf("a leg at %v is drawn down to %v, %v; want %v", l.At, m.Axis[0].Y, err, want)
			}
		}
	}
	d.Legs = nil
	d.Rocker.Nose = 0.24 // short of the front of the seat, 0.26 m ahead
	if got := d.Beyond(edgeOf(t, d)); len(got) != 1 || !got[0].Taken || got[0].Which != Front {
		t.Errorf("legs taken under a seat that reaches over the nose: %+v", got)
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
