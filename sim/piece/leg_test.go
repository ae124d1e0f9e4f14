package piece

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"
)

// side returns a place in space from the side.
func side(p r3.Vec) r2.Vec { return r2.Vec{X: p.X, Y: p.Y} }

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
