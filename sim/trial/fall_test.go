package trial

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/motion"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

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
		const h = 1e-4 // s; ½·h times some 10 rad/s² is nothing
		if over := r.Trace.Duration; !near((tilt(over+h)-tilt(over))/h, r.Trace.Last.Rate, 1e-2) {
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
