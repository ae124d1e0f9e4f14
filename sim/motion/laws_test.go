package motion

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

// several returns a random rig of two to four arcs, one flat in every other of them, on a slope, and
// the same seen from the other side: front and back change places.
func several(t *testing.T, rng *rand.Rand) (r, mirrored sim.Rig) {
	t.Helper()
	var spans, turned []rocker.Span
	length := 0.0
	add := func(s rocker.Span) {
		spans, turned = append(spans, s), append([]rocker.Span{s}, turned...)
		length += s.Length
	}
	flat := rng.IntN(2) == 0
	for i := range 2 + rng.IntN(3) {
		if i == 1 && flat {
			add(rocker.Flat(0.02))
		}
		add(rocker.Arc(0.8+0.7*rng.Float64(), 0.2+0.2*rng.Float64()))
	}
	nose := length * (0.35 + 0.3*rng.Float64())
	build := func(nose float64, spans []rocker.Span) rocker.Profile {
		p, err := rocker.Chain(nose, spans...)
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	r = sim.Rig{Profile: build(nose, spans), Floor: sim.Floor{Slope: 0.06 * (rng.Float64() - 0.5)},
		Body: body.Body{Mass: 90, Centre: r2.Vec{X: 0.1 * (rng.Float64() - 0.5), Y: 0.5 + 0.1*rng.Float64()}, Inertia: 9}}
	mirrored = r
	mirrored.Profile = build(length-nose, turned)
	mirrored.Body.Centre.X, mirrored.Floor.Slope = -r.Body.Centre.X, -r.Floor.Slope
	return r, mirrored
}

// alike reports whether two numbers that ought to be one differ by roundings of a motion of seconds.
func alike(a, b float64) bool { return math.Abs(a-b) <= 1e-8*max(1, math.Abs(b)) || a == b }

// TestMirroredMotion: seen from the other side the same happens the other way, at the same instants: turns,
// knocks, what the floor must hold, what is left to the hilltops, going over, losses and pushes included.
func TestMirroredMotion(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 7))
	over := map[sim.Outcome]int{}
	for i := range 200 {
		r, m := several(t, rng)
		b, c := r.Balance(), m.Balance()
		if !b.Rest.Stable || math.IsNaN(b.Back.Angle) {
			continue
		}
		start := Start{Tilt: b.Rest.Tilt + 0.9*(rng.Float64()-0.5), Rate: 3 * (rng.Float64() - 0.5)}
		start.Push = Push{r2.Vec{X: -0.4, Y: 1}, 80 * (rng.Float64() - 0.5), 0.4}
		if i%4 == 0 { // from its rest, which may be on a flat
			start.Tilt = b.Rest.Tilt
		}
		start.Feet = Feet{60 * rng.Float64(), rng.Float64() - 0.5, r2.Vec{X: -0.1, Y: 0.6}, 0.1, 0.9 + 0.2*rng.Float64()}
		other := Start{-start.Tilt, -start.Rate, Push{r2.Vec{X: 0.4, Y: 1}, -start.Push.Force, 0.4}, start.Feet}
		other.Feet.At, other.Feet.Hips.X = -start.Feet.At, 0.1
		options := Options{Duration: 4, Losses: Losses{Rolling: 0.002 * rng.Float64(), Viscous: rng.Float64()}, Keep: true}
		if i%3 == 0 {
			r.Floor.Friction = 0.2
			m.Floor.Friction = 0.2
		}
		x, y := Run(r, b, start, options), Run(m, c, other, options)
		swapped := map[sim.Outcome]sim.Outcome{sim.GoesOverBackwards: sim.GoesOverForwards, sim.GoesOverForwards: sim.GoesOverBackwards}
		want, turned := swapped[x.Outcome]
		if !turned {
			want = x.Outcome
		}
		over[x.Outcome]++
		if y.Outcome != want || y.End != x.End || len(x.Events) != len(y.Events) {
			t.Errorf("rig %d: %v, %v, %d events; mirrored %v, %v, %d", i, x.Outcome, x.End, len(x.Events), y.Outcome, y.End, len(y.Events))
			continue
		}
		for k, e := range x.Events {
			if f := y.Events[k]; f.Kind != e.Kind || !alike(f.Time, e.Time) || !alike(-f.Tilt, e.Tilt) || !alike(-f.Rate, e.Rate) {
				t.Errorf("rig %d: event %d %+v, mirrored %+v", i, k, e, f)
			}
		}
		if !alike(x.Friction, y.Friction) || !alike(x.Needs, y.Needs) || !alike(x.Margin, y.Margin) || !alike(x.Lift, y.Lift) {
			t.Errorf("rig %d: friction %v %v, needs %v %v, margin %v %v, lift %v %v", i, x.Friction, y.Friction,
				x.Needs, y.Needs, x.Margin, y.Margin, x.Lift, y.Lift)
		}
		for _, time := range []float64{0.1, 0.3, 0.7, 1.5} {
			if time > x.Duration {
				break
			}
			l, k := x.Look(r, r.Rise(b.Rest.Tilt), time), y.Look(m, m.Rise(c.Rest.Tilt), time)
			if !alike(l.Energy, k.Energy) || math.Abs(l.Forward+k.Forward) > 1e-5 || math.Abs(l.Up-k.Up) > 1e-5 { // of some 900 N
				t.Errorf("rig %d at %v s: %+v, mirrored %+v", i, time, l, k)
			}
		}
	}
	if over[sim.Rocks] < 20 || over[sim.GoesOverBackwards] < 5 || over[sim.GoesOverForwards] < 5 || over[sim.FloorLetsGo] < 5 {
		t.Errorf("too little of something was compared: %v", over)
	}
}

// TestWhatIsLeft: the margin and the lift of a motion are those of its turning points and of where it was
// let go, read off the static answer.
func TestWhatIsLeft(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 8))
	for range 100 {
		r, _ := several(t, rng)
		b := r.Balance()
		if !b.Rest.Stable || math.IsNaN(b.Back.Angle) || math.IsNaN(b.Forward.Angle) {
			continue
		}
		back, forward := r.LargestRelease(b)
		for _, release := range []float64{0.2 * back, 0.95 * back, -0.5 * math.Abs(forward)} {
			trace := Run(r, b, Start{Tilt: b.Rest.Tilt + release}, Options{Duration: 3})
			margin, lift := math.Inf(1), 0.0
			look := func(tilt float64) {
				side := b.Back
				if tilt < b.Rest.Tilt {
					side = b.Forward
				}
				margin = min(margin, math.Abs(b.Back.Tip-tilt), math.Abs(b.Forward.Tip-tilt))
				lift = max(lift, (r.Rise(tilt)-r.Rise(b.Rest.Tilt))/side.Lift)
			}
			look(b.Rest.Tilt + release)
			for _, e := range trace.Events {
				if e.Kind == Turns {
					look(e.Tilt)
				}
			}
			if trace.End == TimeUp && (math.Abs(trace.Margin-margin) > 1e-9 || math.Abs(trace.Lift-lift) > 1e-9) {
				t.Errorf("let go at %v rad: margin %v, lift %v; at its turning points %v, %v", release, trace.Margin,
					trace.Lift, margin, lift)
			}
		}
	}
}

// TestRollsRound: which point of the edge the frame is laid in changes nothing of how a piece that is nearly a wheel
// rolls on, past the seam of the frame's own tilts, and goes over.
func TestRollsRound(t *testing.T) {
	rng := rand.New(rand.NewPCG(10, 10))
	gone := 0
	for i := range 100 {
		const radius = 0.5
		turn := 5 + rng.Float64()
		slope := 0.01 * float64(i%2)
		at := func(part float64) sim.Rig {
			return sim.Rig{Profile: rocker.Single(radius, radius*turn*part, radius*turn*(1-part)), Floor: sim.Floor{Slope: slope},
				Body: body.Body{Mass: 30, Centre: r2.Vec{X: 0, Y: radius}, Inertia: 3}}
		}
		const first = 0.3
		second := 0.4 + 0.3*rng.Float64()
		r, o := at(first), at(second)
		// the balance point lies out of the centre by the same way in the piece
		shift := (second - first) * turn // what the other's tilts are smaller by
		out, way := 0.05+0.1*rng.Float64(), 2*math.Pi*rng.Float64()
		r.Body.Centre = r2.Add(r.Body.Centre, r2.Vec{X: out * math.Cos(way), Y: out * math.Sin(way)})
		o.Body.Centre = r2.Add(o.Body.Centre, r2.Vec{X: out * math.Cos(way+shift), Y: out * math.Sin(way+shift)})
		b, c := r.Balance(), o.Balance()
		if math.IsNaN(b.Rest.Tilt) || math.Abs(math.Remainder(c.Rest.Tilt+shift-b.Rest.Tilt, 2*math.Pi)) > 1e-9 {
			continue // which of two rests that lie alike is taken hangs on the frame
		}
		rate := 6 * (rng.Float64() - 0.5)
		x, y := Run(r, b, Start{Tilt: b.Rest.Tilt, Rate: rate}, Options{Duration: 6}),
			Run(o, c, Start{Tilt: c.Rest.Tilt, Rate: rate}, Options{Duration: 6})
		if x.End == WentOver {
			gone++
		}
		if x.End != y.End || x.Outcome != y.Outcome || !alike(x.Duration, y.Duration) || !alike(x.Margin, y.Margin) ||
			slope == 0 && !alike(x.Lift, y.Lift) || math.Abs(math.Remainder(y.Last.Tilt+shift-x.Last.Tilt, 2*math.Pi)) > 1e-7 {
			t.Errorf("rig %d: %v, %v after %v s at %v, %v left, lift %v", i, x.End, x.Outcome, x.Duration, x.Last.Tilt,
				x.Margin, x.Lift)
			t.Errorf("from an origin %v rad off: %v, %v after %v s at %v, %v left, lift %v", shift, y.End, y.Outcome,
				y.Duration, y.Last.Tilt, y.Margin, y.Lift)
		}
	}
	if gone < 10 {
		t.Errorf("%d went over", gone)
	}
}
