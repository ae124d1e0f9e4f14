package readings

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/rocker"
	"rockerwright/sim"
)

const degree = math.Pi / 180

// A bow is a chair whose edge the test draws itself: tangent arcs from the nose, each with its centre and the tilts
// between which it touches the floor, and the two tips.
type bow struct {
	edge       rocker.Profile
	centres    []r2.Vec
	radii      []float64
	tilts      []float64 // of the joints from the nose on, one more than arcs
	tail, nose r2.Vec
	low        float64 // by how much the contact at rest is off, forward, m
}

// drawnBow draws arcs from the nose (radius, length), the low point so far along from there.
func drawnBow(t *testing.T, nose float64, radii, lengths []float64) bow {
	t.Helper()
	var spans []rocker.Span
	for i := range radii {
		spans = append(spans, rocker.Arc(radii[i], lengths[i]))
	}
	edge, err := rocker.Chain(nose, spans...)
	if err != nil {
		t.Fatal(err)
	}
	b := bow{edge: edge, radii: radii, centres: make([]r2.Vec, len(radii))}
	low, along := 0, 0.0 // the arc of the low point
	for along+lengths[low] < nose {
		along += lengths[low]
		low++
	}
	first := 0.0 // tilt at the nose: the edge turns by length over radius
	for i := range low {
		first -= lengths[i] / radii[i]
	}
	first -= (nose - along) / radii[low]
	b.tilts = []float64{first}
	for i := range radii {
		b.tilts = append(b.tilts, b.tilts[i]+lengths[i]/radii[i])
	}
	b.centres[low] = r2.Vec{Y: radii[low]}
	down := func(tilt float64) r2.Vec { return r2.Vec{X: -math.Sin(tilt), Y: -math.Cos(tilt)} }
	for i := low + 1; i < len(radii); i++ { // the next centre lies on the line to the joint
		b.centres[i] = r2.Add(b.centres[i-1], r2.Scale(radii[i-1]-radii[i], down(b.tilts[i])))
	}
	for i := low - 1; i >= 0; i-- {
		b.centres[i] = r2.Add(b.centres[i+1], r2.Scale(radii[i+1]-radii[i], down(b.tilts[i+1])))
	}
	last := len(radii) - 1
	b.nose = r2.Add(b.centres[0], r2.Scale(radii[0], down(b.tilts[0])))
	b.tail = r2.Add(b.centres[last], r2.Scale(radii[last], down(b.tilts[last+1])))
	return b
}

// plumb returns the tilt that brings a point upright over another one.
func plumb(over, under r2.Vec) float64 { return math.Atan2(over.X-under.X, over.Y-under.Y) }

// read makes exact readings of a level that shows zero more than the tilt: at rest the centre of the arc on the floor
// is upright over G, on its ends G over the tip; a tip's height is by turning it. ok is false where it stands otherwise.
func (b bow) read(g r2.Vec, zero float64) (r Readings, ok bool) {
	r = Readings{Edge: b.edge, Weight: 12}
	rest, on := 0.0, -1
	for i, c := range b.centres {
		if tilt := plumb(c, g); tilt >= b.tilts[i] && tilt <= b.tilts[i+1] && b.radii[i] > c.Y-g.Y && c.Y > g.Y {
			rest, on = tilt, i
		}
	}
	tail, nose := plumb(g, b.tail), plumb(g, b.nose)
	if on >= 0 {
		rest = plumb(r2.Add(b.centres[on], r2.Vec{X: b.low}), g)
	}
	if on < 0 || tail < b.tilts[len(b.tilts)-1] || nose > b.tilts[0] {
		return r, false
	}
	r.SeatFallsEmpty, r.BalancesOnTail, r.BalancesOnNose = rest+zero, tail+zero, nose+zero
	r.ReturnsFromTail, r.ReturnsFromNose = r.BalancesOnTail, r.BalancesOnNose
	height := func(q r2.Vec) float64 { // over the floor, which lies the arc's radius under its centre
		return r2.Rotate(r2.Sub(q, b.centres[on]), rest, r2.Vec{}).Y + b.radii[on]
	}
	r.NoseTip, r.TailTip = height(b.nose), height(b.tail)
	return r, true
}

// leastHeight holds that the height of G over the floor is least at rest and most on the ends, as the lowest of many
// points of the edge has it.
func leastHeight(t *testing.T, b bow, g r2.Vec, rest, tail, nose float64) {
	t.Helper()
	points := b.edge.Outline(1e-7)
	height := func(tilt float64) float64 {
		low := math.Inf(1)
		for _, p := range points {
			low = min(low, r2.Rotate(r2.Sub(p, g), tilt, r2.Vec{}).Y)
		}
		return -low
	}
	const by = 0.01 // rad; changes the height by some 30 µm
	for _, one := range []struct{ tilt, sign float64 }{{rest, 1}, {tail, -1}, {nose, -1}} {
		here := height(one.tilt)
		back, forward := one.sign*(height(one.tilt+by)-here), one.sign*(height(one.tilt-by)-here)
		if !(back > 0 && forward > 0) || math.Abs(back-forward) > 0.1*(back+forward) {
			t.Errorf("at %v rad the height changes by %v and %v", one.tilt, back, forward)
		}
	}
}

// TestLevelRoundTrip reads two hundred chairs of one to three arcs by a level and one weighing: with the zero of the
// level drawn, by the heights of the tips, and as one more unknown; all give the balance point, and the last two the zero.
func TestLevelRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(20, 1))
	between := func(a, b float64) float64 { return a + (b-a)*rng.Float64() }
	done, worst := 0, 0.0
	for tried := 0; done < 200; tried++ {
		if tried > 2000 {
			t.Fatal("too few chairs that stand")
		}
		arcs := 1 + rng.IntN(3)
		var radii, lengths []float64
		for range arcs {
			radii, lengths = append(radii, between(0.8, 1.4)), append(lengths, between(0.9, 1.1)/float64(arcs))
		}
		b := drawnBow(t, between(0.36, 0.5), radii, lengths)
		g, zero := r2.Vec{X: between(-0.08, 0.06), Y: between(0.25, 0.6)}, between(-0.5, 0.5)
		whole, ok := b.read(g, zero)
		if !ok {
			continue
		}
		done++
		if done < 20 {
			leastHeight(t, b, g, whole.SeatFallsEmpty-zero, whole.BalancesOnTail-zero, whole.BalancesOnNose-zero)
		}
		for name, change := range map[string]func(r *Readings){
			"three tilts, zero unknown":  func(r *Readings) { r.NoseTip, r.TailTip = 0, 0 },
			"three tilts and heights":    func(r *Readings) {},
			"on its ends, seat drawn":    func(r *Readings) { *r = r.drawn(zero); r.SeatFallsEmpty, r.NoseTip, r.TailTip = 0, 0, 0 },
			"rest and tail, seat drawn":  func(r *Readings) { *r = r.drawn(zero); r.onlyTail(); r.NoseTip, r.TailTip = 0, 0 },
			"rest, tail and tail height": func(r *Readings) { r.onlyTail(); r.NoseTip = 0 },
			"rest, tail and nose height": func(r *Readings) { r.onlyTail(); r.TailTip = 0 },
			"ends and tail height":       func(r *Readings) { r.SeatFallsEmpty, r.NoseTip = 0, 0 },
		} {
			r := whole
			change(&r)
			result, err := r.Read()
			if err != nil || len(result.Doubts) > 0 {
				t.Errorf("%s: %v, %+v", name, err, result.Doubts)
				continue
			}
			off := max(r2.Norm(r2.Sub(result.Body.Centre, g)), math.Abs(result.Zero.Value-zero))
			if worst = max(worst, off); off > 1e-12 {
				t.Errorf("%s: balance point %v, was %v; zero %v, was %v", name, result.Body.Centre, g, result.Zero.Value, zero)
			}
		}
	}
	t.Logf("worst %.1g m or rad", worst)
}

// drawn returns the readings on a seat that is drawn to fall so far.
func (r Readings) drawn(fall float64) Readings {
	r.SeatDrawn, r.SeatFall = true, fall
	return r
}

func (r *Readings) onlyTail() { r.BalancesOnNose, r.ReturnsFromNose = 0, 0 }

// TestEndsAreFinished holds a corner's radius against a rocker that is drawn with the corner as an arc of its own,
// balanced by package sim.
func TestEndsAreFinished(t *testing.T) {
	const radius, nose, tail, e = 1.067, 0.43, 0.61, 0.02
	for _, tt := range []struct {
		name string
		end  End
		arc  rocker.Span // the corner
		off  float64     // where it begins, before the tip along the edge
	}{
		{"square", End{}, rocker.Arc(1e-9, 1e-9), 0},
		{"round", End{Radius: e, Round: true}, rocker.Arc(e, e*math.Pi/2), 0},
		{"eased", End{Radius: e}, rocker.Arc(e, e*math.Pi/2), radius * math.Asin(e/(radius-e))},
	} {
		physical, err := rocker.Chain(nose-tt.off+tt.arc.Length, tt.arc, rocker.Arc(radius, nose+tail-2*tt.off), tt.arc)
		if err != nil {
			t.Fatal(err)
		}
		balance := sim.Rig{Profile: physical, Body: known}.Balance()
		r := Readings{Edge: rocker.Single(radius, nose, tail), Weight: 12, NoseEnd: tt.end, TailEnd: tt.end,
			SeatFallsEmpty: balance.Rest.Tilt, BalancesOnTail: balance.Rest.Tilt + balance.Back.Angle,
			BalancesOnNose: balance.Rest.Tilt - balance.Forward.Angle}
		result, err := r.Read()
		if err != nil || r2.Norm(r2.Sub(result.Body.Centre, known.Centre)) > 1e-8 { // the square's is 1e-9 m
			t.Errorf("%s: %v, %v; was %v", tt.name, result.Body.Centre, err, known.Centre)
		}
	}
}
