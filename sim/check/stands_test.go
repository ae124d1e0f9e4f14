package check

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker"
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
			if l.Name == "owner, sitting" {
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
		if !near(back/b.Back.Lift, 1, 0.02) || !near(forward/b.Forward.Lift, 1, 0.02) { // by strips of a degree
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

// tilted is somebody of 75 kg on a light piece of one arc of 1 m, drawn as a chain of arcs: the seat moves them along
// the floor, so the piece rests at atan(X/(R − Y)), X the part of the weight that is behind.
func tilted(behind float64, units quantity.System) piece.Design {
	return piece.Design{
		Units:  units,
		Rocker: piece.Rocker{Nose: 0.45, Arcs: []piece.Arc{{Radius: 1, Length: 0.95}}},
		Seat:   piece.Seat{Rear: 0.4, Behind: behind},
		Parts:  []piece.Part{{Shape: piece.Point, Mass: 5, At: vec(0, 0.3)}},
		Sitters: []piece.Sitter{{
			Name: "owner", Mass: 75, Sitting: piece.Place{Ahead: 0.2, Above: 0.2},
		}},
		Limits: piece.Limits{RestTilt: 5 * quantity.Deg},
	}
}

// TestCureIsTheNearest: what rests too far over is cured by the first whole half inch, or centimetre, of the seat
// forward or back after which it does not, by the closed form of one arc; what is told that it then gets is that.
func TestCureIsTheNearest(t *testing.T) {
	rest := func(behind float64) float64 {
		return math.Atan2(75*(behind-0.2)/80, 1-(75*0.6+5*0.3)/80)
	}
	for _, tt := range []struct {
		units quantity.System
		step  float64
	}{{quantity.Inch, quantity.In / 2}, {quantity.Metric, 0.010}} {
		for _, way := range []float64{1, -1} { // too far back, too far forward
			drawn := 0.2 + way*0.070
			drawn = tt.step * math.Round(drawn/tt.step)
			r := checked(t, tilted(drawn, tt.units))
			want := drawn
			for math.Abs(rest(want)) > 5*quantity.Deg {
				want -= way * tt.step
			}
			if r.Cause != RestsTilted || r.Try == nil || r.Try.Key != "seat.behind_low_point" || !near(r.Try.Value, want, 1e-9) ||
				!near(r.Try.Got, math.Abs(rest(want)), 1e-9) || r.Try.Limit.Holds || !near(r.Try.Limit.Got, math.Abs(rest(drawn)), 1e-9) {
				t.Errorf("%v, behind by %v: cause %v, %+v; want %v", tt.units, drawn, r.Cause, r.Try, want)
			}
			if key := r.LookAt(r.Try.Limit); key != "seat.behind_low_point" {
				t.Errorf("the first to look at is %q", key)
			}
		}
	}
	for key, arcs := range map[string][]piece.Arc{
		"rocker.arcs.3.flat":   {{Radius: 1, Length: 0.4}, {Radius: 2, Length: 0.4}, {Flat: 0.1}},
		"rocker.arcs.2.length": {{Flat: 0.1}, {Radius: 1, Length: 0.4}, {Turn: 0.1}},
	} {
		if got := lastArc(piece.Design{Rocker: piece.Rocker{Arcs: arcs}}); got != key {
			t.Errorf("the tail of %+v ends by %s, want %s", arcs, got, key)
		}
	}
}

// TestShares: a limit that gets just what it wants has a share of one, half of what is wanted a half, and of what may
// be at most so much twice as much nothing; so the worst is the one with the least.
func TestShares(t *testing.T) {
	least, most := Limit{Name: "back_margin", Want: 10}, Limit{Name: "rest_tilt", Want: 10, AtMost: true}
	for _, tt := range []struct{ got, least, most float64 }{{10, 1, 1}, {5, 0.5, 1.5}, {20, 2, 0}, {0, 0, 2}} {
		least.Got, most.Got = tt.got, tt.got
		if a, b := least.Share(), most.Share(); a != tt.least || b != tt.most {
			t.Errorf("of 10 wanted %v: %v, of 10 at most %v", tt.got, a, b)
		}
	}
	r, err := Check(sized())
	if err != nil || len(r.Look) != 1 {
		t.Fatal(err, r.Look)
	}
	// who is perched is looked at ahead: a bevel's whole degrees, less than is asked of who lies back
	if l := r.Look[0]; l.Holds != (l.Got >= l.Want) || !multiple(l.Want, quantity.Deg) || l.Want < quantity.Deg ||
		l.Want >= 15*quantity.Deg {
		t.Errorf("worth a look: %+v", l)
	}
	least.Got, most.Got = 8, 11
	if worst := worstOf([]Limit{most, least}); worst != 1 { // 0.8 beside 0.9
		t.Errorf("the worst is %d", worst)
	}
}

// TestFurthest scans what is well by hand: the end is that of the first stretch from the middle on, to a thousandth of
// a cell, on either side; where all is well it is where the looking ends.
func TestFurthest(t *testing.T) {
	for _, to := range []float64{180, 40} {
		for _, end := range []float64{0.03, 0.2, 0.51, 0.77, 0.999} { // of the way
			well := func(x float64) bool {
				way := (x - 80) / (to - 80)
				return way <= end || way > end+1.0/6 && way < end+1.0/3 // two cells further it is well again
			}
			if got, want := furthest(well, 80, to), 80+end*(to-80); math.Abs(got-want) > 1.001e-3*math.Abs(to-80)/12 {
				t.Errorf("from 80 to %v: %v, want %v", to, got, want)
			}
		}
		if got := furthest(func(float64) bool { return true }, 80, to); got != to {
			t.Errorf("all is well, and it ends at %v of %v", got, to)
		}
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

// TestWalkFollowsTheSlope: a load rocks ten degrees either way of where it rests on its floor, measured along the
// edge; a tip that no bend can raise so far is told. What is taken as unnoticed is less than a tape shows.
func TestWalkFollowsTheSlope(t *testing.T) {
	d := sized()
	d.Floor.Slope = 3 * quantity.Deg
	r := checked(t, d)
	for i := range r.Loads {
		l := &r.Loads[i]
		w := r.Walk(l)
		if !near((w.From+w.To)/2, l.Balance.Rest.Tilt-d.Floor.Slope, 1e-12) || !near(w.To-w.From, 20*quantity.Deg, 1e-12) {
			t.Errorf("%s rests at %v and rocks from %v to %v", l.Name, l.Balance.Rest.Tilt, w.From, w.To)
		}
	}
	for by, can := range map[float64]bool{0.05: true, -0.05: true, 0.15: false, -0.12: false, 5: false} { // it stands 0.12 m up
		if _, ok := risen(rocker.Single(1, 0.4, 0.5), by); ok != can {
			t.Errorf("a tip is bent up by %v m: %v", by, ok)
		}
	}
	if _, ok := risen(rocker.Single(0.5, 1.5, 0.3), 0.1); ok { // its long nose curls in before
		t.Error("a short tail is bent up by 0.1 m")
	}
	if !multiple(Unnoticed, quantity.In/64) || !(Unnoticed < quantity.In/16) {
		t.Errorf("%v m of scrub are unnoticed", Unnoticed)
	}
	last := r.Releases[len(r.Releases)-1]
	if !slices.IsSorted(r.Releases) || !multiple(last, quantity.Deg) || last > math.Pi/6 { // a release further goes over mostly
		t.Errorf("let go from %v", r.Releases)
	}
	d.Measured.ScaleStep = 0.4
	if got := readingsOf(d, r.Edge, nil).ScaleError; got != 0.2 {
		t.Errorf("scales that show each 0.4 kg are off by %v at most", got)
	}
}

// TestAtTheEndOfASettee: who sits at the end has the balance point as far in from the end of any seat, never past its
// middle; further than half a pair of hips (0.17 m and more, ANSUR II), and by no more than a hand.
func TestAtTheEndOfASettee(t *testing.T) {
	end := func(width float64) float64 {
		d := sized()
		d.Kind, d.Seat.Width = piece.Settee, width
		r := checked(t, d)
		i := slices.IndexFunc(r.Sideways(), func(s Sideway) bool { return s.Load == "one at the end, sitting" })
		return r.Sideways()[i].Lean
	}
	in := 0.6 - end(1.2)
	if !near(0.7-end(1.4), in, 1e-12) || !multiple(in, 0.01) || in < 0.17 || in > 0.30 || end(0.4) != 0 {
		t.Errorf("one sits %v and %v in from the end, of a narrow one %v beside the middle", in, 0.7-end(1.4), end(0.4))
	}
}

// TestGyration: who is placed by a balance point alone turns like a seated person, whose radius of gyration is the
// middle of 0.29 to 0.33 m (a chain of segments); a hazard so placed is a point.
func TestGyration(t *testing.T) {
	for role, want := range map[piece.Role]float64{piece.Owner: 0.31, piece.Other: 0.31, piece.Hazard: 0} {
		loads := placed(nil, piece.Sitter{Mass: 80, Role: role, Centre: vec(0.1, 0.6), Posture: person.Sitting}, r2.Vec{})
		if got := math.Sqrt(loads[0].Person.Inertia / 80); !near(got, want, 1e-12) {
			t.Errorf("%v turns about %v m", role, got)
		}
	}
}
