package trial

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/body/person"
	"rockerwright/rocker/rises"
	"rockerwright/sim"
	"rockerwright/sim/check"
	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

const g = 9.80665 // m/s², standard

func near(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

// multiple reports whether a number is a whole multiple of a step.
func multiple(x, step float64) bool { return math.Abs(math.Remainder(x, step)) < 1e-9*step }

// turned returns a place as it lies when the piece is tilted, from a point that it is turned about.
func turned(p, about r2.Vec, tilt float64) r2.Vec {
	return r2.Rotate(r2.Sub(p, about), tilt, r2.Vec{})
}

// TestHalves: turns that fall by one factor from rock to rock halve after ln 2/ln(1/factor) of them, in whole rocks;
// those to the front are not counted, and what does not come to half has no number.
func TestHalves(t *testing.T) {
	for _, factor := range []float64{0.95, 0.8, 0.6, 0.4} {
		const rest = -0.3 // rad
		var trace motion.Trace
		for n := range 20 {
			for _, way := range []float64{1, -0.97} {
				e := motion.Event{Kind: motion.Turns}
				e.Tilt = rest + way*0.2*math.Pow(factor, float64(n))
				trace.Events = append(trace.Events, e, motion.Event{Kind: motion.Joint})
			}
		}
		if got, want := halvesIn(trace, rest), math.Ceil(math.Ln2/-math.Log(factor)); got != want {
			t.Errorf("by %v a rock: halves in %v, want %v", factor, got, want)
		}
		trace.Events = trace.Events[:2]
		if got := halvesIn(trace, rest); !math.IsNaN(got) {
			t.Errorf("one turn halves in %v", got)
		}
	}
}

// TestStopsByHand: a corner behind or before the low point holds the piece from the tilt of the arc that ends there to
// that of the one that begins; the arm there is how far the balance point lies ahead of it, turned by the tilt, and what
// is left goes on to where that is nought. All tilts are against the vertical, on a slope too.
func TestStopsByHand(t *testing.T) {
	const near42, corner, bend = 1.0668, 0.28, 10 * quantity.Deg
	for _, slope := range []float64{0, 1.5 * quantity.Deg} {
		for _, way := range []float64{1, -1} { // a corner behind, a corner in front
			d := plain(0, 0.43, 0, 40, vec(0.01, 0.55), 4)
			d.Floor.Slope = slope
			d.Rocker.Arcs = []piece.Arc{{Radius: near42, Length: 0.43 + corner}, {Turn: bend}, {Radius: 1.5, Length: 0.15}}
			if way < 0 {
				slices.Reverse(d.Rocker.Arcs)
				d.Rocker.Nose = 0.15 + corner
			}
			l := &checked(t, d).Loads[0]
			list := stops(l)
			if len(list) != 1 {
				t.Fatalf("stops %+v", list)
			}
			sin, cos := math.Sincos(corner / near42)
			at := r2.Vec{X: -way * near42 * sin, Y: near42 * (1 - cos)}
			arm := func(tilt float64) float64 { return turned(d.Body.Centre, at, tilt).X }
			first, last := way*corner/near42+slope, way*(corner/near42+bend)+slope
			if way < 0 {
				first, last = last, first
			}
			s := list[0]
			if !near(s.From, first, 1e-12) || !near(s.To, last, 1e-12) || !near(s.ArmFirst, arm(first), 1e-12) ||
				!near(s.ArmLast, arm(last), 1e-12) {
				t.Errorf("slope %v, way %v: %+v, want from %v to %v, arms %v and %v", slope, way, s, first, last, arm(first), arm(last))
			}
			tip, from := l.Balance.Back.Tip, last
			if way < 0 {
				tip, from = l.Balance.Forward.Tip, first
			}
			before, _ := l.Rig.Righting(tip - 1e-6)
			after, _ := l.Rig.Righting(tip + 1e-6)
			if !near(s.Left, math.Abs(tip-from), 1e-12) || !(before*after < 0) {
				t.Errorf("slope %v, way %v: %v are left to a hilltop at %v", slope, way, s.Left, tip)
			}
		}
	}
}

// TestFallEnds: a fall ends where the first of what was drawn, here the middle of a light rail far behind or ahead,
// comes to the floor; a piece of which nothing comes there is followed on to its side and no further than 3/4 of a half
// turn.
func TestFallEnds(t *testing.T) {
	follow := func(d piece.Design, way float64) (tilt func(float64) float64, span float64) {
		report := checked(t, d)
		back, forward := report.Loads[0].Rig.LargestRate(report.Loads[0].Balance)
		rate := 1.02 * back
		if way < 0 {
			rate = -1.02 * forward
		}
		r, err := Follow(report, RockOptions{Rate: rate})
		if err != nil || r.Trace.End != motion.WentOver || !(r.Trace.Duration > 0.1) {
			t.Fatal(err, r.Trace.End, r.Trace.Duration)
		}
		tilt, span = r.Whole()
		const h = 1e-4                                                                             // s
		if over := r.Trace.Duration; !near((tilt(over+h)-tilt(over))/h, r.Trace.Last.Rate, 1e-2) { // ½·h times some 10 rad/s²
			t.Errorf("at the hilltop it turns by %v rad/s, and then on from %v to %v", r.Trace.Last.Rate, tilt(over), tilt(over+h))
		}
		return tilt, span
	}
	for _, way := range []float64{1, -1} {
		d := piece.Design{
			Rocker: piece.Rocker{Radius: 1, Nose: 0.4, Tail: 0.4},
			Parts: []piece.Part{
				{Shape: piece.Point, Mass: 20, At: vec(0, 0.4)},
				{Shape: piece.Box, Length: 0.3, Height: 0.5, Mass: 0.1, Lean: 0.6, At: vec(-way*0.6, 0.9)},
			},
		}
		tilt, span := follow(d, way)
		over := func(time float64) float64 {
			_, over := checked(t, d).Loads[0].Rig.Place(d.Parts[1].At, tilt(time))
			return over
		}
		if before, end := over(span-fallenStep), over(span); before <= 0 || end > 0 || end < -0.1 { // 5 ms of a fall at 10 m/s or so
			t.Errorf("the rail is %v and then %v over the floor", before, end)
		}
		if tilt, span = follow(plain(0.5, 0.7, 0.7, 40, vec(0, 0.45), 2), way); math.Abs(tilt(span)) < 3*math.Pi/4 ||
			math.Abs(tilt(span)) > 3*math.Pi/4+0.1 {
			t.Errorf("it ends at %v rad", tilt(span))
		}
	}
}

// TestGoodRock: a load is let go at 15 degrees, or nine tenths of the largest release where that is less, and comes as
// far as its weight then carries it: its balance point stands as high at both ends.
func TestGoodRock(t *testing.T) {
	for _, high := range []float64{0.45, 0.70, 0.85} {
		l := &checked(t, plain(1.05, 0.35, 0.30, 60, vec(-0.01, high), 5)).Loads[0]
		from, to := rock(l)
		largest, _ := l.Rig.LargestRelease(l.Balance)
		if want := l.Balance.Rest.Tilt + min(math.Pi/12, largest*9/10); !near(to, want, 1e-12) ||
			!near(l.Rig.Rise(from), l.Rig.Rise(to), 1e-9) || !(from < l.Balance.Rest.Tilt) {
			t.Errorf("%v m up: from %v to %v, want to %v; it rises by %v and %v", high, from, to, want, l.Rig.Rise(from), l.Rig.Rise(to))
		}
	}
}

// TestCaughtByHand: on one arc of radius R less than an inch of room is left over R·acos(1 − 1 in/R) of edge either way
// of where it stands, as far as the edge reaches.
func TestCaughtByHand(t *testing.T) {
	for _, tt := range []struct{ nose, tail, x float64 }{{0.5, 0.6, 0.01}, {0.5, 0.6, -0.02}, {0.1, 0.6, 0}, {0.5, 0.2, -0.02}} {
		d := plain(1.05, tt.nose, tt.tail, 60, vec(tt.x, 0.6), 5)
		r := checked(t, d)
		half, at := 1.05*math.Acos(1-0.0254/1.05), 1.05*math.Atan2(tt.x, 0.45) // at: ahead of the low point
		want := min(tt.nose, at+half) - max(-tt.tail, at-half)
		if got := needed(&r.Loads[0], r).Caught; !near(got, want, (tt.nose+tt.tail)/200) { // looked at 200 places
			t.Errorf("nose %v, tail %v, balance point %v ahead: %v m, want %v", tt.nose, tt.tail, tt.x, got, want)
		}
	}
}

// seatOn is a piece of plain numbers with a drawn seat and back, on one arc of 1.05 m.
func seatOn(nose, tail float64) piece.Design {
	d := plain(1.05, nose, tail, 12, vec(-0.03, 0.45), 1.5)
	d.Seat = piece.Seat{Rear: 0.40, Front: 0.43, Depth: 0.45, Behind: 0.20, Width: 0.5}
	d.Back = piece.Back{Recline: 0.25, Height: 0.70}
	return d
}

// TestSeatingByHand holds the lever arms that are quoted (ISO 7174-1, 7.1.1 and 7.1.2: 600 N 50 mm from the front edge,
// or 175 mm from the back with a force 300 mm over the seat or at the top of a lower back; EN 1022: 60 mm, 20 N) by
// statics: the slow force is the most of m·g·Z/y, which stands where the arc ends. That end is put at a whole quarter of
// a degree from the rest, where it is looked.
func TestSeatingByHand(t *testing.T) {
	const radius = 1.05
	centre, meet, fall := vec(0, radius), vec(-0.20, 0.40), math.Asin(0.03/0.45)
	on := func(way float64) r2.Vec { return r2.Add(meet, r2.Scale(way, vec(math.Cos(fall), math.Sin(fall)))) }
	for _, high := range []float64{0.70, 0.22} {
		up := min(0.300, high)
		behind := r2.Add(meet, vec(-up*math.Tan(0.25), up))
		for i, tt := range []struct {
			load, at r2.Vec
			way      float64 // + back
			force    float64
		}{
			{on(0.45 - 0.050), on(0.45 - 0.050), -1, math.NaN()},
			{on(0.45 - 0.060), on(0.45 - 0.060), -1, -20},
			{on(0.175), behind, 1, math.NaN()},
			{on(0.175), behind, 1, 285.7 - 285.7*on(0.175).Y},
		} {
			whole := body.Join(body.Body{Mass: 12, Centre: vec(-0.03, 0.45)}, body.Body{Mass: 600 / g, Centre: tt.load})
			hangs := r2.Sub(whole.Centre, centre)
			rest := math.Atan2(-hangs.X, -hangs.Y)
			const turn = 80 * quantity.Deg / 4
			tilt := rest + tt.way*turn // at the end of the arc
			nose, tail := 0.6, 0.6
			if tt.way < 0 {
				nose = -radius * tilt
			} else {
				tail = radius * tilt
			}
			d := seatOn(nose, tail)
			d.Back.Height = high
			got := seating(checked(t, d))[i]
			want := whole.Mass * g * r2.Norm(hangs) * math.Sin(turn) / (radius + turned(tt.at, centre, tilt).Y)
			if !near(got.Tips/want, 1, 1e-9) || math.IsNaN(tt.force) != math.IsNaN(got.Force) || got.Force < tt.force-1e-9 ||
				got.Force > tt.force+1e-9 {
				t.Errorf("%s: tips under %v N, by statics %v; asks %v N, want %v", got.Name, got.Tips, want, got.Force, tt.force)
			}
			if got.Source == "" || got.Confidence == "" || got.Force < 0 && got.Outcome != sim.Rocks {
				t.Errorf("%+v", got)
			}
		}
	}
	for height, want := range map[float64]float64{0.720: 80.0, 0.400: 171.4, 1: 0} { // EN 1022 as it is remembered
		if got := RearForce(height); !near(got, want, 0.05) {
			t.Errorf("a seat of %v m is pulled with %v N, want %v", height, got, want)
		}
	}
}

// TestNoChildIsTried: no child's chair is put under a grown-up's weight.
func TestNoChildIsTried(t *testing.T) {
	d := sized()
	d.Sitters = []piece.Sitter{{Name: "our child", Person: person.Given{Age: 5}}}
	child := checked(t, d)
	if tried := seating(child); len(tried) != 0 || !child.ForAChild() {
		t.Errorf("a child's chair is tried with a grown-up's 600 N: %+v", tried)
	}
}

// TestSlopesByHand stands a horse's riders of 25 and 50 kg on ten degrees (EN 71-1, 8.23.1) by the closed forms of one
// arc: it rests at θ₀ + asin(R·sin α/d), and goes over a tip where the balance point stands plumb over it.
func TestSlopesByHand(t *testing.T) {
	const radius, reach = 1.2, 0.9
	d := plain(radius, reach, reach, 12, vec(0, 0.4), 1)
	d.Kind, d.Seat = piece.Horse, piece.Seat{Rear: 0.55, Behind: 0.12}
	d.Sitters = []piece.Sitter{{Name: "own", Person: person.Given{Age: 4}}}
	r := checked(t, d)
	rider := find(t, r, "own, riding").Person
	list, i := slopes(r), 0
	for _, mass := range []float64{25, 50} {
		whole := body.Join(d.Body, body.Body{Mass: mass, Centre: rider.Centre})
		hangs := r2.Sub(whole.Centre, vec(0, radius))
		for _, slope := range []float64{math.Pi / 18, -math.Pi / 18} {
			rest := math.Atan2(-hangs.X, -hangs.Y) + math.Asin(radius*math.Sin(slope)/r2.Norm(hangs))
			margin := math.Inf(1)
			for _, way := range []float64{1, -1} {
				tip := vec(-way*radius*math.Sin(reach/radius), radius*(1-math.Cos(reach/radius)))
				over := r2.Sub(whole.Centre, tip)
				margin = min(margin, way*(math.Atan2(over.X, over.Y)-rest))
			}
			if got := list[i]; !got.Rests || got.Slope != slope || !near(got.Margin, margin, 1e-9) {
				t.Errorf("%s: %+v, by hand %v from a rest at %v", got.Name, got, margin, rest)
			}
			i++
		}
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
		l, empty := find(t, r, "owner, sitting"), &r.Loads[0]
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
		for i, start := range []motion.Start{
			{Tilt: -d.Rocker.Nose/radius + slope}, {Tilt: d.Rocker.Tail/radius + slope}, {Tilt: from, Rate: drop},
		} {
			want := motion.Run(l.Rig, l.Balance, start, motion.Options{Duration: 12})
			if got := s.Trials[i]; got.Outcome != want.Outcome || !near(got.Margin, want.Margin, 1e-9) ||
				!near(got.Tilt, want.Last.Tilt, 1e-6) {
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

// TestFindingsAreWhatTheReportSays: whatever a report has that does not hold is one finding, with its numbers and a
// measure that the design has; the gravest come first, and of limits those that miss most.
func TestFindingsAreWhatTheReportSays(t *testing.T) {
	for name, change := range map[string]func(d *piece.Design){
		"short":   func(d *piece.Design) { d.Rocker.Tail = 8 * quantity.In },
		"high":    func(d *piece.Design) { d.Seat.Front, d.Seat.Rear = 0.60, 0.58 },
		"narrow":  func(d *piece.Design) { d.Seat.Width, d.Seat.Depth = 0.28, 0.60 },
		"stub":    func(d *piece.Design) { d.Rocker.Nose = 5 * quantity.In },
		"falling": func(d *piece.Design) { d.Rocker.Radius = 20 * quantity.In },
		"weak": func(d *piece.Design) {
			d.Rocker.Depth, d.Rocker.Width, d.Rocker.Wood = 0.02, 0.02, "black walnut"
			d.Back.Braces = piece.Braces{Count: 1, Width: 0.03, Thickness: 0.006, Length: 0.6, Wood: "white ash"}
		},
	} {
		d := sized()
		change(&d)
		a, err := Standing(d)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		want := [levels]int{Unfit: len(a.Misfits), Warns: len(a.Beyond)}
		if name == "weak" {
			want[Warns] += 2 // braces and rockers, each once
		}
		for _, l := range a.Limits {
			switch stands := a.Load(l.Load).Upright(); {
			case !l.Holds && l.Name == "rest":
				want[Falls]++
			case !l.Holds && stands:
				want[Fails]++
			}
		}
		for _, f := range a.Fit {
			if !f.Holds() && f.Size != person.SittingHeight { // a rest for the head is a wish
				want[Unfit]++
			}
		}
		var got [levels]int
		for i, f := range a.Findings {
			got[f.Level]++
			if _, _, err := d.Measure(f.Key); f.Key != "" && err != nil {
				t.Errorf("%s: %s looks at %v", name, f.What, err)
			}
			if i > 0 && f.Level < a.Findings[i-1].Level || f.Level == Fails && !(f.Limit.Share() < 1) ||
				f.Fit != nil && (f.Got != f.Fit.Have || f.Want-f.Got != f.Fit.Change) || f.Misfit != nil && f.Got != f.Misfit.By ||
				f.Bent != nil && !(f.Got > 1) || f.Beyond != nil && f.Got != f.Beyond.By {
				t.Errorf("%s: %+v is told otherwise than it was found, or behind what is less grave", name, f)
			}
		}
		if want[Hazardous], want[WorthALook] = got[Hazardous], got[WorthALook]; got != want || a.Holds() != (want[Falls]+want[Fails] == 0) {
			t.Errorf("%s: findings %v, want %v; holds %v", name, got, want, a.Holds())
		}
	}
	for _, apart := range []float64{0.004, -0.004} { // left or right higher
		list := Uneven(&piece.Traced{Apart: apart, Left: &rises.Fit{Suspect: -1, Explains: true},
			Right: &rises.Fit{Suspect: 3, Without: 0.02}})
		if len(list) != 2 || list[0].Key != "measured.right" || list[0].Want != 0.02 || list[1].Got != 0.004 {
			t.Errorf("rockers apart by %v: %+v", apart, list)
		}
	}
}
