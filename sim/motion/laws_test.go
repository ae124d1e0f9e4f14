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
		other := Start{-start.Tilt, -start.Rate, Push{r2.Vec{X: 0.4, Y: 1}, -start.Push.Force, 0.4}}
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

// TestLookIsNewton: what the floor gives is the mass times the acceleration of the balance point, by second
// differences of its path, less weight and push, on a slope and from arc to arc; the energy gained is the work of
// the push.
func TestLookIsNewton(t *testing.T) {
	const h = 1e-4 // s; of accelerations of some m/s² the differences keep 1e-6
	r := three(t)
	r.Floor.Slope = 3 * degree
	b := r.Balance()
	sin, cos := math.Sincos(r.Floor.Slope)
	push := Push{r2.Vec{X: -0.4, Y: 1.08}, 60, 0.5}
	trace := Run(r, b, Start{Tilt: b.Rest.Tilt + 9*degree, Push: push}, Options{Duration: 3, Keep: true})
	looked := 0
	for i := 1; i < 300; i++ {
		time := float64(i)*0.01 + 0.003
		joint := false
		for _, e := range trace.Events {
			joint = joint || math.Abs(e.Time-time) < 3*h
		}
		if joint {
			continue
		}
		looked++
		var x, y [3]float64
		for k := range 3 {
			x[k], y[k] = r.Place(r.Body.Centre, trace.At(time+float64(k-1)*h).Tilt)
		}
		forward := r.Body.Mass * ((x[2]-2*x[1]+x[0])/(h*h) + sim.Gravity*sin)
		if time < push.Time {
			forward += push.Force // which is to the rear, and taken by the floor
		}
		up := r.Body.Mass * ((y[2]-2*y[1]+y[0])/(h*h) + sim.Gravity*cos)
		look := trace.Look(r, r.Rise(b.Rest.Tilt), time)
		if math.Abs(look.Forward-forward) > 1e-3 || math.Abs(look.Up-up) > 1e-3 {
			t.Errorf("at %v s the floor gives %v forward and %v up, by differences %v and %v", time, look.Forward, look.Up, forward, up)
		}
	}
	if looked < 250 {
		t.Errorf("looked at %d instants", looked)
	}
	lifted := r.Body.Mass * sim.Gravity * (r.Rise(b.Rest.Tilt+9*degree) - r.Rise(b.Rest.Tilt))
	if first := trace.Look(r, r.Rise(b.Rest.Tilt), 0); math.Abs(first.Energy-lifted) > 1e-9 {
		t.Errorf("let go with %v J", first.Energy)
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

// TestFrictionIsLooked: the largest |F|/N is that of the looks into each step, by the forces that
// [Trace.Look] gives.
func TestFrictionIsLooked(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 9))
	for range 50 {
		r, _ := several(t, rng)
		b := r.Balance()
		trace := Run(r, b, Start{Tilt: b.Rest.Tilt + 0.4*(rng.Float64()-0.5), Rate: rng.Float64(),
			Push: Push{r2.Vec{X: -0.4, Y: 1}, 70, 0.3}}, Options{Duration: 3, Keep: true})
		most := 0.0
		for _, s := range trace.steps {
			for i := range looks + 1 {
				// a little inside, where no other arc and no end of the push is meant
				time := s.start + s.span*(0.001+0.998*float64(i)/looks)
				l := trace.Look(r, 0, time)
				most = max(most, math.Abs(l.Forward)/l.Up)
			}
		}
		for _, e := range trace.Events {
			if e.Kind == Knock {
				most = math.NaN()
			}
		}
		if math.Abs(trace.Friction-most) > 2e-3*most { // a little inside
			t.Errorf("friction %v, looked at %v", trace.Friction, most)
		}
	}
}

// TestKnockIsNewton: in a knock the floor gives the change of the balance point's velocity, along the floor
// and square to it, read off its path; a floor that holds a little less lets go there.
func TestKnockIsNewton(t *testing.T) {
	p, err := rocker.Chain(0.43, rocker.Arc(1.2, 0.4), rocker.Flat(0.12), rocker.Arc(1.0, 0.6))
	if err != nil {
		t.Fatal(err)
	}
	r := chair()
	r.Profile = p
	r.Floor.Slope = 1 * degree
	b := r.Balance()
	start := Start{Tilt: -1 * degree, Rate: 0.8}
	trace := Run(r, b, start, Options{Duration: 3, Keep: true})
	for _, e := range trace.Events {
		if e.Kind != Knock {
			continue
		}
		const h = 1e-5                                             // s
		velocity := func(time, side float64) (along, up float64) { // one-sided, of the second order
			var x, y [3]float64
			for k := range 3 {
				x[k], y[k] = r.Place(r.Body.Centre, trace.At(time+side*h*float64(k)+side*1e-12).Tilt)
			}
			return side * (4*x[1] - 3*x[0] - x[2]) / (2 * h), side * (4*y[1] - 3*y[0] - y[2]) / (2 * h)
		}
		x0, y0 := velocity(e.Time, -1)
		x1, y1 := velocity(e.Time, 1)
		needs := math.Abs((x1 - x0) / (y1 - y0))
		if y1 <= y0 || needs < 0.05 {
			t.Errorf("the floor changes the velocity by %v along and %v up", x1-x0, y1-y0)
		}
		r.Floor.Friction = 0.999 * needs
		if let := Run(r, b, start, Options{Duration: 3}); let.End != Slipped ||
			math.Abs(let.Duration-e.Time) > 1e-9 || math.Abs(let.Needs-needs) > 1e-4 {
			t.Errorf("needs %v at %v s: on a little less %v after %v s, needs %v", needs, e.Time, let.End, let.Duration, let.Needs)
		}
		return
	}
	t.Error("no knock")
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

// TestDropped: somebody who drops 0.2 m ahead of the contact at 1.5 m/s, 60 kg, brings 18 kg·m²/s, which turns
// 36 kg·m² forward at half a radian a second.
func TestDropped(t *testing.T) {
	who := body.Body{Mass: 60, Centre: r2.Vec{X: 0.25, Y: 0.5}, Inertia: 3}
	if got := Dropped(who, r2.Vec{X: 0.05}, 1.5, 36); math.Abs(got+0.5) > 1e-15 {
		t.Errorf("%v rad/s, want -0.5", got)
	}
}

// TestRollingHolds: on a slope the rolling resistance holds a piece at rest where the moment is less than its own,
// μ m g cos α, and lets it go where it is more.
func TestRollingHolds(t *testing.T) {
	r := chair()
	r.Floor.Slope = 9 * degree
	b := r.Balance()
	const rolling = 0.004 // m
	weight := r.Body.Mass * sim.Gravity
	for _, tt := range []struct {
		part  float64
		stays bool
	}{{0.98, true}, {1.02, false}} {
		// the moment is weight times the righting arm, the steadiness its slope
		tilt := b.Rest.Tilt + tt.part*rolling*math.Cos(r.Floor.Slope)/b.Steadiness
		arm, _ := r.Righting(tilt)
		if share := weight * arm / (rolling * weight * math.Cos(r.Floor.Slope)); math.Abs(share-tt.part) > 0.01 {
			t.Fatalf("the moment is %v of the resistance, want %v", share, tt.part)
		}
		trace := Run(r, b, Start{Tilt: tilt}, Options{Duration: 1, Losses: Losses{Rolling: rolling}})
		if (trace.End == AtRest && trace.Duration == 0) != tt.stays {
			t.Errorf("with %v of the moment that the resistance holds: %v after %v s", tt.part, trace.End, trace.Duration)
		}
	}
}
