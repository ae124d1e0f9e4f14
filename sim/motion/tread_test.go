package motion

import (
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/sim"
)

// hips and ankle are somebody's who sits in a [chair].
var hips = r2.Vec{X: -0.15, Y: 0.5}

const ankle = 0.08 // m

// treads returns feet that push so hard there, on legs that reach so far.
func treads(force, at, reach float64) Feet { return Feet{force, at, hips, ankle, reach} }

// count returns how often something happened.
func count(events []Event, kind Kind) int {
	n := 0
	for _, e := range events {
		if e.Kind == kind {
			n++
		}
	}
	return n
}

// TestTreadBySecondMethod: where the legs are stretched, where it turns, back and then forward, and whether it goes over are
// those of plane geometry integrated in small steps: feet ahead of the contact and behind it, with losses, on a slope,
// started, and with a hand that pushes too.
func TestTreadBySecondMethod(t *testing.T) {
	var seen [FeetEnd + 1]int
	stretched := 0
	for _, slope := range []float64{0, 2 * degree} {
		r := chair()
		r.Floor.Slope = slope
		b := r.Balance()
		for _, force := range []float64{4, 70, 150, 320} {
			for _, at := range []float64{-0.35, 0.35, 0.6} {
				for i, losses := range []Losses{{}, {Rolling: 0.004}, {Rolling: 0.002, Viscous: 6}} {
					for _, reach := range []float64{0.9, 1.1} {
						start := Start{Tilt: b.Rest.Tilt, Feet: treads(force, at, reach)}
						if i == 1 && slope != 0 {
							start.Push = Push{r2.Vec{X: -0.4, Y: 1.08}, 40, 0.25}
						}
						if i == 2 {
							start.Rate = 0.4
						}
						want := plainly(r, start, losses).follow(2e-3)
						trace := Run(r, b, start, Options{Duration: 20, Losses: losses})
						got := slices.DeleteFunc(trace.Events, func(e Event) bool { return e.Kind == Joint || e.Kind == PushEnd })
						if len(got) < len(want) {
							t.Errorf("%+v: %+v, by the second method %+v", start, got, want)
							continue
						}
						for k, e := range want {
							seen[e.Kind]++
							if e.Kind == FeetEnd && e.Rate != 0 {
								stretched++
							}
							// the rule's error is of the fourth order, 2e-12 rad and 3e-10 s: half the step makes it 16 times less
							if g := got[k]; g.Kind != e.Kind || math.Abs(g.Tilt-e.Tilt) > 1e-10 || math.Abs(g.Time-e.Time) > 1e-8 {
								t.Errorf("%+v, %+v: %v %+v, by the second method %v %+v", start, losses, g.Kind, g, e.Kind, e)
							}
						}
					}
				}
			}
		}
	}
	t.Logf("compared %v, stretched in motion %d", seen, stretched)
	if seen[Turns] < 100 || seen[Over] < 5 || stretched < 10 || seen[FeetEnd]-stretched < 10 || seen[Settles] < 1 {
		t.Errorf("too little of something was compared: %v, stretched in motion %d", seen, stretched)
	}
}

// A walked is an edge of arcs and flats that bulge, span by span as its maker wrote it.
type walked struct {
	nose  float64
	spans []rocker.Span
}

// The edges of [chair] and [three] as their makers wrote them.
var (
	oneArc    = walked{0.43, []rocker.Span{rocker.Arc(1.067, 1.04)}}
	threeArcs = walked{0.43, []rocker.Span{rocker.Arc(1.4, 0.3), rocker.Arc(0.95, 0.4), rocker.Arc(1.5, 0.34)}}
)

// rig returns the chair on such an edge.
func (w walked) rig(t *testing.T, slope float64) sim.Rig {
	t.Helper()
	p, err := rocker.Chain(w.nose, w.spans...)
	if err != nil {
		t.Fatal(err)
	}
	r := chair()
	r.Profile, r.Floor.Slope = p, slope
	return r
}

// contact returns where it touches the floor at a roll, forward from where the origin did as drawn, m: what lies behind the
// origin is counted below zero.
func (w walked) contact(roll float64) float64 {
	from, left := 0.0, w.nose
	for _, s := range w.spans { // the tilt on the nose tip: all that turns before the origin
		if length := min(left, s.Length); s.Radius > 0 {
			from -= length / s.Radius
		}
		left -= min(left, s.Length)
	}
	at := w.nose
	for _, s := range w.spans {
		switch {
		case s.Radius > 0:
			at -= min(max(0, (roll-from)*s.Radius), s.Length)
			from += s.Length / s.Radius
		case roll >= from: // a flat
			at -= s.Length
		}
	}
	return at
}

// TestTreadWork: from event to event the energy gained is the work ∫N(x_feet − x_contact)dθ less what is lost, plus that of a
// hand: over arcs and on slopes, with a flat under way, and with the origin in the flat. The contact runs evenly with
// the roll between events, so that the mean of its two ends makes the integral exact.
func TestTreadWork(t *testing.T) {
	top := r2.Vec{X: -0.4, Y: 1.08}
	for _, tt := range []struct {
		name         string
		edge         walked
		slope, first float64 // of the floor, and how far it is let go from the rest, rad
		losses       Losses
		push         Push
		before       Kind // what happens before the legs are stretched
	}{
		{"three arcs", threeArcs, 0, -10 * degree, Losses{}, Push{}, Joint},
		{"on a slope", threeArcs, 3 * degree, -9 * degree, Losses{0.003, 5}, Push{top, 30, 0.4}, Joint},
		{"a flat under way", walked{0.4, []rocker.Span{rocker.Arc(1.2, 0.4), rocker.Flat(0.06), rocker.Arc(1.0, 0.6)}},
			-1 * degree, -5 * degree, Losses{0.002, 0}, Push{}, Knock},
		{"the origin in the flat", walked{0.43, []rocker.Span{rocker.Arc(1.2, 0.4), rocker.Flat(0.07), rocker.Arc(1.0, 0.6)}},
			2 * degree, -5 * degree, Losses{0.002, 5}, Push{top, 20, 0.3}, Knock},
	} {
		r := tt.edge.rig(t, tt.slope)
		b := r.Balance()
		feet := treads(260, 0.5, 0.9)
		trace := Run(r, b, Start{Tilt: b.Rest.Tilt + tt.first, Push: tt.push, Feet: feet}, Options{Duration: 3, Losses: tt.losses, Keep: true})
		end := slices.IndexFunc(trace.Events, func(e Event) bool { return e.Kind == FeetEnd })
		if end < 0 || count(trace.Events[:end], tt.before) == 0 || trace.Events[end].Rate == 0 || count(trace.Events, Turns) == 0 {
			t.Errorf("%s: %+v", tt.name, trace.Events)
			continue
		}
		var trodden, worst float64
		last := 0.0
		for i := 0; i <= len(trace.Events); i++ {
			until := trace.Duration
			if i < len(trace.Events) {
				until = trace.Events[i].Time
			}
			if until-last < 1e-6 {
				continue
			}
			const inside = 1e-9 // s, so that no arc beyond is meant
			from, to := last+inside, until-inside
			a, z := trace.At(from), trace.At(to)
			turned := z.Tilt - a.Tilt
			contact := (tt.edge.contact(a.Tilt-tt.slope) + tt.edge.contact(z.Tilt-tt.slope)) / 2
			want := -tt.losses.Rolling * r.Body.Mass * sim.Gravity * math.Cos(tt.slope) * math.Abs(turned)
			want -= tt.losses.Viscous * quad.Fixed(func(time float64) float64 { // smooth between events: 40 places take it to rounding
				rate := trace.At(time).Rate
				return rate * rate
			}, from, to, 40, quad.Legendre{}, 0)
			if i <= end {
				work := feet.Force * (feet.At - contact) * turned
				trodden += work
				want += work
			}
			if to < tt.push.Time {
				x, _ := r.Place(tt.push.At, a.Tilt)
				y, _ := r.Place(tt.push.At, z.Tilt)
				want += tt.push.Force * (x - y) // to the rear
			}
			worst = max(worst, math.Abs(energy(r, z)-energy(r, a)-want))
			last = until
		}
		t.Logf("%s: work of the feet %.3f J, off by %.1e J at most", tt.name, trodden, worst)
		if trodden < 10 || worst > 1e-9*trodden { // energies of some 600 J, whose digits end at 1e-13
			t.Errorf("%s: of %v J that the feet do %v J are missing or too many", tt.name, trodden, worst)
		}
	}
}

// TestTreadIsNewton: what the floor gives under the rockers and under the feet is together the mass times the
// acceleration of the balance point, by second differences of its path, less weight and push.
func TestTreadIsNewton(t *testing.T) {
	const h = 1e-4 // s; of accelerations of some m/s² the differences keep 1e-6
	r := three(t)
	r.Floor.Slope = 3 * degree
	b := r.Balance()
	sin, cos := math.Sincos(r.Floor.Slope)
	push, feet := Push{r2.Vec{X: -0.4, Y: 1.08}, 40, 0.2}, treads(260, 0.5, 0.88)
	trace := Run(r, b, Start{Tilt: b.Rest.Tilt - 9*degree, Push: push, Feet: feet}, Options{Duration: 1.5, Keep: true})
	stretched := slices.IndexFunc(trace.Events, func(e Event) bool { return e.Kind == FeetEnd })
	if stretched < 0 || trace.End != TimeUp {
		t.Fatalf("it ends by %v: %+v", trace.End, trace.Events)
	}
	until := trace.Events[stretched].Time
	trodden, free := 0, 0
	for i := 1; i < 1490; i++ {
		time := float64(i)*0.001 + 0.0003
		if slices.ContainsFunc(trace.Events, func(e Event) bool { return math.Abs(e.Time-time) < 3*h }) {
			continue
		}
		var x, y [3]float64
		for k := range 3 {
			x[k], y[k] = r.Place(r.Body.Centre, trace.At(time+float64(k-1)*h).Tilt)
		}
		forward := r.Body.Mass * ((x[2]-2*x[1]+x[0])/(h*h) + sim.Gravity*sin)
		if time < push.Time {
			forward += push.Force
		}
		up := r.Body.Mass * ((y[2]-2*y[1]+y[0])/(h*h) + sim.Gravity*cos)
		if time < until {
			up -= feet.Force
			trodden++
		} else {
			free++
		}
		look := trace.Look(r, 0, time)
		if math.Abs(look.Forward-forward) > 1e-3 || math.Abs(look.Up-up) > 1e-3 { // 93 kg of 1e-6 m/s², and a margin of ten
			t.Errorf("at %v s the floor gives %v forward and %v up, by differences %v and %v", time, look.Forward, look.Up, forward, up)
		}
	}
	if trodden < 300 || free < 300 {
		t.Errorf("looked at %v instants with feet on the floor and %v after them", trodden, free)
	}
}

// TestTreadTakesGrip: what the feet carry the rockers do not press on the floor with: the largest |F|/N is that of the forces which
// [TestTreadIsNewton] holds, and on a floor that holds less the piece slips where that is reached.
func TestTreadTakesGrip(t *testing.T) {
	r := chair() // on one arc it grows without a jump
	b := r.Balance()
	start := Start{Tilt: b.Rest.Tilt + 8*degree, Rate: -1.2, Feet: treads(250, 0.4, 0.95)}
	options := Options{Duration: 0.3, Keep: true}
	trace := Run(r, b, start, options)
	grip := func(trace *Trace, time float64) float64 {
		look := trace.Look(r, 0, time)
		return math.Abs(look.Forward) / look.Up
	}
	most := 0.0
	for i := range 3000 {
		most = max(most, grip(&trace, float64(i)*1e-4))
	}
	if len(trace.Events) > 0 || math.Abs(trace.Friction-most) > 2e-3 { // a step is looked at five times
		t.Errorf("friction %v, by the forces %v: %+v", trace.Friction, most, trace.Events)
	}
	r.Floor.Friction = 0.9 * most
	slipped := Run(r, b, start, options)
	needs := grip(&trace, slipped.Duration)
	if slipped.End != Slipped || slipped.Duration == 0 || math.Abs(needs-r.Floor.Friction) > 1e-9 { // found by halving, to rounding
		t.Errorf("on a floor that holds %v: %v after %v s, where it needs %v", r.Floor.Friction, slipped.End, slipped.Duration, needs)
	}
}

// TestTreadLiftsOff: the rockers leave the floor where what it gives under them, N_r = W + m·h·φ̈ − N with J·φ̈ = N·x − W·h
// at the start, is nothing: h is how far the balance point lies ahead of the contact, x how far the feet do. At the
// rest, with h = 0, the feet then lift the whole weight.
func TestTreadLiftsOff(t *testing.T) {
	r := chair()
	r.Body.Centre.X = 0 // its rest is at 0
	b := r.Balance()
	weight, arm := r.Body.Mass*sim.Gravity, 1.067-r.Body.Centre.Y // of the balance point under the centre of the arc
	for _, at := range []float64{-0.3, 0.3, 0.6} {
		for _, tilt := range []float64{0, -8 * degree, 5 * degree} {
			ahead, height := arm*math.Sin(tilt), 1.067-arm*math.Cos(tilt)
			m, j := r.Body.Mass, r.Body.Inertia+r.Body.Mass*(ahead*ahead+height*height)
			x := at + 1.067*tilt
			limit := weight * (1 - m*ahead*ahead/j) / (1 - m*ahead*x/j)
			for _, part := range []float64{1 - 1e-9, 1 + 1e-9} { // a thousand roundings of a dozen operations
				trace := Run(r, b, Start{Tilt: tilt, Feet: treads(part*limit, at, 2)}, Options{Duration: 0.001})
				if lifts := trace.LiftsOff() && trace.Duration == 0; lifts != (part > 1) {
					t.Errorf("feet at %v with %v of %v N at %v rad: %v after %v s", at, part, limit, tilt, trace.End, trace.Duration)
				}
				if part > 1 && (trace.Outcome != sim.FloorLetsGo || trace.EndedBy() != "lifts off" || count(trace.Events, LetsGo) != 1) {
					t.Errorf("feet with %v N: %v, %q, %+v", part*limit, trace.Outcome, trace.EndedBy(), trace.Events)
				}
			}
		}
	}
	for _, slope := range []float64{0, 5 * degree} { // just where the rocker touches at the rest they turn it nowhere
		r.Floor.Slope = slope
		b := r.Balance()
		at, options := -1.067*(b.Rest.Tilt-slope), Options{Duration: 1, Losses: Losses{Rolling: 1e-6}}
		for part, want := range map[float64]End{0.999: AtRest, 1.001: Slipped} {
			trace := Run(r, b, Start{Tilt: b.Rest.Tilt, Feet: treads(part*weight*math.Cos(slope), at, 2)}, options)
			if trace.End != want || trace.LiftsOff() != (part > 1) {
				t.Errorf("feet at the contact with %v of what presses on the floor: %v, want %v", part, trace.End, want)
			}
		}
	}
}

// TestSlowTread: a little more than the static push that holds a tilt sets the piece off back from there, a little less lets it
// roll forward; with rolling resistance, more than both together.
func TestSlowTread(t *testing.T) {
	for _, tt := range []struct {
		edge  walked
		slope float64
	}{{oneArc, 0}, {threeArcs, 0}, {threeArcs, 2 * degree}} {
		r := tt.edge.rig(t, tt.slope)
		b := r.Balance()
		resists := 0.003 * r.Body.Mass * sim.Gravity * math.Cos(tt.slope)
		for turn := 1 * degree; turn < b.Back.Angle; turn += 1.7 * degree {
			const at, little = 0.7, 1e-9 // a part of the force; roundings are a million times less
			tilt := b.Rest.Tilt + turn
			tread, lever := r.Tread(b, at, turn), at-tt.edge.contact(tilt-tt.slope)
			for _, push := range []struct{ force, rolling, want float64 }{
				{tread * (1 - little), 0, -1}, {tread * (1 + little), 0, 1},
				{(tread + resists/lever) * (1 - little), 0.003, -1}, {(tread + resists/lever) * (1 + little), 0.003, 1},
			} {
				start, options := Start{Tilt: tilt, Feet: treads(push.force, at, 3)}, Options{Duration: 0.001, Losses: Losses{Rolling: push.rolling}}
				trace := Run(r, b, start, options)
				stays := push.rolling > 0 && trace.End == AtRest // where the weight alone does not roll it forward either
				if trace.Last.Rate*push.want <= 0 && !(stays && push.want < 0) {
					t.Errorf("%v degrees: with %v N, of which %v hold it: %v rad/s", turn/degree, push.force, tread, trace.Last.Rate)
				}
			}
		}
	}
}

// TestTreadTooLittle: feet that push less than the rolling resistance holds do nothing, which is told once; with a little
// more the piece sets off. At the rest the moment of the weight is none, and the contact lies radius times roll to the rear.
func TestTreadTooLittle(t *testing.T) {
	r := chair()
	r.Floor.Slope = 4 * degree
	b := r.Balance()
	const rolling, at = 0.004, 0.4
	lever := at + 1.067*(b.Rest.Tilt-r.Floor.Slope)
	limit := rolling * r.Body.Mass * sim.Gravity * math.Cos(r.Floor.Slope) / lever
	options := Options{Duration: 2, Losses: Losses{Rolling: rolling}}
	little := Run(r, b, Start{Tilt: b.Rest.Tilt, Feet: treads(limit*(1-1e-9), at, 2)}, options) // 1e-9: a million roundings
	still := State{Tilt: b.Rest.Tilt}
	want := []Event{{FeetEnd, still}, {Settles, still}}
	if !slices.Equal(little.Events, want) || little.End != AtRest || little.Last != still {
		t.Errorf("%v, %+v", little.End, little.Events)
	}
	more := Run(r, b, Start{Tilt: b.Rest.Tilt, Feet: treads(limit*(1+1e-9), at, 2)}, Options{Duration: 0.01, Losses: options.Losses})
	if !(more.Last.Rate > 0) {
		t.Errorf("with a little more: %v, %+v", more.End, more.Last)
	}
}

// TestTreadHoldsNoLonger: feet that hold a piece where it would not stay by itself stop, as it stays, and it rolls from there
// as without them; so also where a hand pushes at the same time, which alone sets it off.
func TestTreadHoldsNoLonger(t *testing.T) {
	r := chair()
	b := r.Balance()
	options := Options{Duration: 3, Losses: Losses{Rolling: 0.004}}
	const turn, at = 6 * degree, 0.5
	held := Start{Tilt: b.Rest.Tilt + turn, Feet: treads(r.Tread(b, at, turn), at, 2)}
	pushed := Start{Tilt: b.Rest.Tilt, Push: Push{r2.Vec{X: -0.4, Y: 1}, 40, 0.5}}
	// the hand's 40 N a metre up against feet behind the contact
	pushed.Feet = treads(40/0.35, -0.35, 2)
	for _, start := range []Start{held, pushed} {
		with := Run(r, b, start, options)
		start.Feet = Feet{}
		without := Run(r, b, start, options)
		if len(with.Events) == 0 || with.Events[0] != (Event{FeetEnd, State{Tilt: start.Tilt}}) {
			t.Errorf("%+v: first comes %+v", start, with.Events)
			continue
		}
		if !slices.Equal(with.Events[1:], without.Events) || with.Last != without.Last || with.Outcome != without.Outcome {
			t.Errorf("%+v: %+v, without feet %+v", start, with.Events, without.Events)
		}
	}
}

// TestTreadStretched: legs that are stretched at the start, or are to push with nothing, do nothing, and nothing is told of them.
func TestTreadStretched(t *testing.T) {
	r := three(t)
	b := r.Balance()
	start := Start{Tilt: b.Rest.Tilt, Rate: 0.7}
	options := Options{Duration: 3, Keep: true}
	want := Run(r, b, start, options)
	for _, feet := range []Feet{treads(200, 0.5, 0.7), treads(0, 0.5, 1)} { // ankles and hips are 0.77 m apart
		start.Feet = feet
		if got := Run(r, b, start, options); !reflect.DeepEqual(got, want) {
			t.Errorf("%+v: %+v, want %+v", feet, got.Events, want.Events)
		}
	}
}

// TestTreadStretchedAtAJoint: legs that are stretched just where one arc ends push until there, and it is told once, whether
// the rounding finds it before the joint or only behind it.
func TestTreadStretchedAtAJoint(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 11))
	for i := range 600 {
		spans := []rocker.Span{rocker.Arc(1+0.3*rng.Float64(), 0.5), rocker.Arc(1.3+0.2*rng.Float64(), 0.5)}
		if i%2 == 0 {
			spans = slices.Insert(spans, 1, rocker.Flat(0.03))
		}
		r := walked{0.38 + 0.05*rng.Float64(), spans}.rig(t, 0)
		joint := r.Profile.Bearing(1).To
		b := r.Balance()
		feet := Feet{400, 0.5 + 0.2*rng.Float64(), r2.Vec{X: -0.1 - 0.1*rng.Float64(), Y: 0.5}, ankle, 0}
		along, over := r.Place(feet.Hips, joint)
		feet.Reach = math.Hypot(along-feet.At, over-ankle)
		feet.Reach = math.Nextafter(feet.Reach, [...]float64{feet.Reach, 0, 2}[i%3])
		trace := Run(r, b, Start{Tilt: b.Rest.Tilt - 2*degree, Feet: feet}, Options{Duration: 0.8})
		end := slices.IndexFunc(trace.Events, func(e Event) bool { return e.Kind == FeetEnd })
		if count(trace.Events, FeetEnd) != 1 || math.Abs(trace.Events[end].Tilt-joint) > 1e-14 || trace.Duration != 0.8 { // a dozen roundings
			t.Fatalf("%+v: %v after %v s: %+v", feet, trace.End, trace.Duration, trace.Events)
		}
	}
}
