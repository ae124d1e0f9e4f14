package check

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/sim"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// multiple reports whether a number is a whole multiple of a step.
func multiple(x, step float64) bool { return math.Abs(math.Remainder(x, step)) < 1e-9*step }

// TestWhatALevelShows: however the seat is cut, slid, cushioned or the floor slopes, the seat falls back and the back
// leans as a level shows that is laid along them where they come to stand, and the front edge is as high as there.
func TestWhatALevelShows(t *testing.T) {
	for name, change := range map[string]func(d *piece.Design){
		"drawn":  func(*piece.Design) {},
		"cut":    func(d *piece.Design) { d.Seat.RearCut, d.Seat.FrontCut = 0.012, -0.004 },
		"slid":   func(d *piece.Design) { d.Seat.Slide = -0.02 },
		"uphill": func(d *piece.Design) { d.Floor.Slope, d.Seat.Cushion = 2*quantity.Deg, 0.03 },
		"all": func(d *piece.Design) {
			d.Seat.RearCut, d.Seat.Slide, d.Floor.Slope, d.Seat.Cushion = 0.01, 0.015, -quantity.Deg, 0.02
		},
	} {
		d := sized()
		change(&d)
		r := checked(t, d)
		meet, front := d.Seat.Meet(), d.Seat.FrontEdge()
		top, _ := d.TopOfBack()
		for _, l := range r.Loads {
			if l.Balance.Outcome != sim.Rocks {
				continue
			}
			at := func(p r2.Vec) r2.Vec { // along a level line, and over it
				along, over := l.Rig.Place(r.Placed(p), l.Balance.Rest.Tilt)
				return r2.Rotate(r2.Vec{X: along, Y: over}, d.Floor.Slope, r2.Vec{})
			}
			seat, back := r2.Sub(at(front), at(meet)), r2.Sub(at(top), at(meet))
			if fall, lean := math.Atan2(seat.Y, seat.X), math.Atan2(-back.X, back.Y); !near(l.SeatFall, fall, 1e-12) ||
				!near(l.BackRecline, lean, 1e-12) {
				t.Errorf("%s, %s: seat and back at %v and %v, a level shows %v and %v", name, l.Name, l.SeatFall, l.BackRecline, fall, lean)
			}
			if l.Name == "owner, upright" {
				_, high := l.Rig.Place(r.Placed(r2.Add(front, r2.Vec{Y: d.Seat.Cushion})), l.Balance.Rest.Tilt)
				if got := r.Fit[0]; got.Key != "seat.front" || !near(got.Have, high, 1e-12) {
					t.Errorf("%s: the front edge stands at %v, want %v", name, got.Have, high)
				}
			}
		}
	}
}

// TestRightingCurve: the righting arm, summed up from the rest to a hilltop, is the lift that takes the weight over it;
// the curve has each whole degree, from five and a part before the hilltop in front to as far behind the one at the
// back.
func TestRightingCurve(t *testing.T) {
	r := checked(t, sized())
	for _, l := range r.Loads {
		curve, b := l.Righting(), l.Balance
		if !l.Upright() {
			continue
		}
		if len(l.Legs) > 0 {
			b.Back = l.Back // on the law of the feet, as the curve is
		}
		back, forward := 0.0, 0.0
		for i, p := range curve {
			if i > 0 && p.Degree != curve[i-1].Degree+1 || !near(p.Tilt*180/math.Pi, float64(p.Degree), 1e-9) {
				t.Fatalf("%s: %+v behind %+v", l.Name, p, curve[max(0, i-1)])
			}
			if i == 0 {
				continue
			}
			// a strip of the area, cut where the rest and the hilltops are
			mean := (p.Arm + curve[i-1].Arm) / 2
			strip := func(from, to float64) float64 { return mean * max(0, min(to, p.Tilt)-max(from, curve[i-1].Tilt)) }
			back += strip(b.Rest.Tilt, b.Back.Tip)
			forward -= strip(b.Forward.Tip, b.Rest.Tilt)
		}
		if !near(back/b.Back.Lift, 1, 0.02) || len(l.Legs) == 0 && !near(forward/b.Forward.Lift, 1, 0.02) { // by strips of a degree
			t.Errorf("%s: areas %v and %v, lifts %v and %v", l.Name, back, forward, b.Back.Lift, b.Forward.Lift)
		}
		before := b.Forward.Tip/quantity.Deg - float64(curve[0].Degree)
		behind := float64(curve[len(curve)-1].Degree) - b.Back.Tip/quantity.Deg
		if before < 5 || before > 6 || behind < 5 || behind > 6 {
			t.Errorf("%s: the curve begins %v degrees before the hilltop in front, and ends %v behind the other", l.Name, before, behind)
		}
	}
	for _, tt := range []struct {
		tilt float64
		want bool
	}{{0, true}, {1.5, true}, {-1.5, true}, {1.6, false}, {-1.6, false}, {2.9, false}, {-2.9, false}} {
		l := Load{Balance: sim.Balance{Outcome: sim.Rocks, Rest: sim.Equilibrium{Tilt: tt.tilt}}}
		if got := l.Upright(); got != tt.want {
			t.Errorf("at rest at %v rad it stands upright: %v", tt.tilt, got)
		}
	}
}

// TestSpreadByTrying makes each of seat, back, arms, legs and rockers a fifth heavier or lighter by hand, the others
// making up for it, and looks where the piece then rests; of a piece on heavy rockers these matter most.
func TestSpreadByTrying(t *testing.T) {
	t.Run("chair", func(t *testing.T) { spreadByTrying(t, readingChair()) })
	t.Run("sledge", func(t *testing.T) {
		d := readingChair()
		d.Rocker.Depth, d.Rocker.Width = 0.12, 0.15
		spreadByTrying(t, d)
	})
}

func spreadByTrying(t *testing.T, d piece.Design) {
	r := checked(t, d)
	m, err := d.Estimate(r.Edge)
	if err != nil {
		t.Fatal(err)
	}
	want := Spread{Estimated: true}
	members := append(m.Seat, m.Rockers)
	for i := range members {
		for _, factor := range []float64{1 - 1.0/5, 1 + 1.0/5} {
			changed := slices.Clone(members)
			changed[i] = changed[i].Scaled(factor)
			empty := body.Join(changed...)
			empty = empty.Scaled(d.Piece.Mass / empty.Mass)
			for _, l := range r.Loads {
				rig := l.Rig
				rig.Body = body.Join(empty, l.Person)
				now := rig.Balance()
				moved := math.Abs(now.Rest.Tilt - l.Balance.Rest.Tilt)
				if l.Empty {
					want.EmptyRest = max(want.EmptyRest, moved)
				} else {
					want.Rest = max(want.Rest, moved)
				}
				want.Margin = max(want.Margin, math.Abs(now.Back.Angle-l.Balance.Back.Angle))
			}
		}
	}
	if got := r.Spread; !near(got.EmptyRest, want.EmptyRest, 1e-9) || !near(got.Rest, want.Rest, 1e-9) ||
		!near(got.Margin, want.Margin, 1e-9) {
		t.Errorf("spread %+v, by trying %+v", got, want)
	}
}

// TestUpsideDown: a rocker that lies on its two tips, the balance point over the floor, has a rest there, whether or
// not its tips are as far apart from the low point.
func TestUpsideDown(t *testing.T) {
	for _, tail := range []float64{0.90, 0.91} {
		r := checked(t, plain(0.5, 0.9, tail, 10, vec(0, 0.3), 1))
		list := r.Loads[0].Equilibria()
		tips := r2.Sub(r.Edge.Nose(), r.Edge.Tail())
		below := r2.Cross(r2.Unit(tips), r2.Sub(vec(0, 0.3), r.Edge.Tail())) // the chord, by so much
		if last := list[len(list)-1]; len(list) != 4 || !last.Stable || !near(math.Abs(last.Tilt), math.Pi, 0.02) ||
			!near(last.Height, -below, 1e-12) {
			t.Errorf("tail %v: %+v, want one %v over the floor", tail, list, -below)
		}
	}
}

// TestGyration: who is placed by a balance point alone turns like a seated person, whose radius of gyration is the
// middle of 0.29 to 0.33 m (a chain of segments); a hazard so placed is a point.
func TestGyration(t *testing.T) {
	for role, want := range map[piece.Role]float64{piece.Owner: 0.31, piece.Other: 0.31, piece.Hazard: 0} {
		loads := placed(nil, piece.Sitter{Mass: 80, Role: role, Centre: vec(0.1, 0.6), Posture: person.AtEase}, r2.Vec{})
		if got := math.Sqrt(loads[0].Person.Inertia / 80); !near(got, want, 1e-12) {
			t.Errorf("%v turns about %v m", role, got)
		}
	}
}
