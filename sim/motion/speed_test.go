package motion

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/body"
	"rockerwright/rocker"
	"rockerwright/sim"
)

func FuzzRun(f *testing.F) {
	f.Add(uint64(1), 0.3, 0.5, 50.0)
	f.Add(uint64(7), -0.4, -2.0, 0.0)
	f.Fuzz(func(t *testing.T, seed uint64, tilt, rate, force float64) {
		if !(math.Abs(tilt) < 1.5 && math.Abs(rate) < 20 && math.Abs(force) < 1e4) {
			t.Skip("beyond any chair")
		}
		rng := rand.New(rand.NewPCG(seed, 1))
		var spans []rocker.Span
		for range 1 + rng.IntN(4) {
			switch rng.IntN(4) {
			case 0:
				spans = append(spans, rocker.Flat(0.02+0.1*rng.Float64()))
			case 1:
				spans = append(spans, rocker.Turn(0.2*rng.Float64()))
			default:
				spans = append(spans, rocker.Arc(0.4+2*rng.Float64(), 0.1+0.4*rng.Float64()))
			}
		}
		p, err := rocker.Chain(0.05, spans...)
		if err != nil {
			t.Skip("no rocker")
		}
		r := sim.Rig{Profile: p, Body: body.Body{Mass: 1 + 100*rng.Float64(),
			Centre: r2.Vec{X: 0.1 * rng.NormFloat64(), Y: rng.Float64()}, Inertia: 10 * rng.Float64()},
			Floor: sim.Floor{Slope: 0.1 * rng.NormFloat64(), Friction: rng.Float64()}}
		b := r.Balance()
		if b.Outcome != sim.Rocks {
			t.Skip("no rest")
		}
		trace := Run(r, b, Start{Tilt: tilt, Rate: rate, Push: Push{r2.Vec{Y: 1}, force, 0.3}},
			Options{Duration: 5, Losses: Losses{Rolling: 0.01 * rng.Float64(), Viscous: rng.Float64()}})
		for _, x := range []float64{trace.Duration, trace.Last.Tilt, trace.Last.Rate, trace.Lift} {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Fatalf("%+v", trace)
			}
		}
		if trace.End == TooManySteps {
			t.Fatalf("%d steps in %v s", trace.Steps, trace.Duration)
		}
	})
}

func BenchmarkMinute(b *testing.B) {
	for _, tt := range []struct {
		name   string
		rig    sim.Rig
		losses Losses
	}{{"one arc", chair(), Losses{}}, {"three arcs with losses", three(b), Losses{Rolling: 0.0002, Viscous: 0.3}}} {
		b.Run(tt.name, func(b *testing.B) {
			rest := tt.rig.Balance()
			b.ReportAllocs()
			var trace Trace
			for b.Loop() {
				trace = Run(tt.rig, rest, Start{Tilt: rest.Rest.Tilt + 15*degree}, Options{Losses: tt.losses})
			}
			if trace.End != TimeUp {
				b.Fatal(trace.End)
			}
			b.ReportMetric(float64(trace.Steps), "steps")
		})
	}
}

// BenchmarkCost shows that the cost is linear in the time simulated and in the joints
// crossed: ns over both should hold.
func BenchmarkCost(b *testing.B) {
	for _, arcs := range []int{1, 3, 5, 9} {
		spans := make([]rocker.Span, arcs)
		for i := range spans {
			spans[i] = rocker.Arc(1.067+0.05*float64((i*7)%5), 1.04/float64(arcs))
		}
		p, err := rocker.Chain(0.43, spans...)
		if err != nil {
			b.Fatal(err)
		}
		r := chair()
		r.Profile = p
		rest := r.Balance()
		for _, seconds := range []float64{15, 30, 60, 120} {
			b.Run(fmt.Sprintf("%d arcs/%g s", arcs, seconds), func(b *testing.B) {
				var trace Trace
				for b.Loop() {
					trace = Run(r, rest, Start{Tilt: rest.Rest.Tilt + 15*degree}, Options{Duration: seconds})
				}
				b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(trace.Steps), "ns/step")
			})
		}
	}
}
