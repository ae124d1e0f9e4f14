package motion

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim"
)

// TestAgainstTheLift holds that a release just under the lift comes back, and one just
// over goes over.
func TestAgainstTheLift(t *testing.T) {
	r := chair()
	b := r.Balance()
	for _, way := range []float64{1, -1} {
		side := b.Back
		if way < 0 {
			side = b.Forward
		}
		for _, tt := range []struct {
			part float64
			goes bool
		}{{0.999, false}, {1.001, true}} {
			trace := Run(r, b, Start{Tilt: b.Rest.Tilt + way*side.Angle*tt.part}, Options{Duration: 20})
			goes := trace.End == WentOver
			if tt.goes && !goes {
				t.Errorf("from %v of the margin: %v", tt.part, trace.Outcome)
			}
			if !tt.goes && goes && trace.Outcome == map[float64]sim.Outcome{1: sim.GoesOverBackwards, -1: sim.GoesOverForwards}[way] {
				t.Errorf("from %v of the margin it goes over on that side", tt.part)
			}
		}
	}
}

// TestSettlesOnASlope holds that with losses the motion ends at the static rest on a slope:
// sin t = R·sin α/d over the arc's own rest.
func TestSettlesOnASlope(t *testing.T) {
	r := chair()
	r.Body.Centre.X = 0
	r.Floor.Slope = 2 * degree
	b := r.Balance()
	trace := Run(r, b, Start{Tilt: 0.2}, Options{Duration: 300, Losses: Losses{Viscous: 30}})
	want := math.Asin(1.067 * math.Sin(r.Floor.Slope) / (1.067 - 0.61))
	if math.Abs(trace.Last.Tilt-want) > 1e-9 {
		t.Errorf("at %v after %v s, want %v", trace.Last.Tilt, trace.Duration, want)
	}
}

// TestOverAtTheHilltop: the instant at which it goes over is that at which it passes the hilltop, by the quadrature of
// the energy, t = ∫ √(J/(J₀ω₀² − 2 m g (H − H₀))) dθ; let go beyond it, it goes over at once.
func TestOverAtTheHilltop(t *testing.T) {
	r := chair()
	b := r.Balance()
	least, _ := r.LargestRate(b)
	inertia := func(tilt float64) (j, height float64) {
		arm, height := r.Righting(tilt)
		return r.Body.Inertia + r.Body.Mass*(height*height+arm*arm), height
	}
	start, low := inertia(b.Rest.Tilt)
	for _, rate := range []float64{1.01 * least, 1.3 * least, 2 * least} {
		trace := Run(r, b, Start{Tilt: b.Rest.Tilt, Rate: rate}, Options{Duration: 20})
		var want float64
		joint := 0.0 // the end of the arc, where the integrand has a kink
		for i := range r.Profile.Bearings() {
			joint = max(joint, r.Profile.Bearing(i).From)
		}
		for _, part := range [][2]float64{{b.Rest.Tilt, joint}, {joint, b.Back.Tip}} {
			const n = 20000
			h := (part[1] - part[0]) / n
			for i := range n { // the middle of each: an error of h²
				j, height := inertia(part[0] + h*(float64(i)+0.5))
				want += h * math.Sqrt(j/(start*rate*rate-2*r.Body.Mass*sim.Gravity*(height-low)))
			}
		}
		last := trace.Events[len(trace.Events)-1]
		if trace.End != WentOver || last.Kind != Over || math.Abs(trace.Duration-want) > 1e-6 || math.Abs(last.Tilt-b.Back.Tip) > 1e-12 {
			t.Errorf("at %v rad/s: %v after %v s at %v rad; the hilltop at %v is passed after %v s", rate, trace.End,
				trace.Duration, last.Tilt, b.Back.Tip, want)
		}
	}
	for _, beyond := range []float64{b.Back.Tip + 0.01, b.Forward.Tip - 0.01} {
		if trace := Run(r, b, Start{Tilt: beyond}, Options{}); trace.End != WentOver || trace.Duration != 0 {
			t.Errorf("let go at %v rad, beyond the hilltop: %v after %v s, want at once", beyond, trace.End, trace.Duration)
		}
	}
}

// TestLetGoOnTheHilltop: let go on a hilltop itself the rig goes over there with its next step, or stays in balance, or
// comes back: it never stands still in time.
func TestLetGoOnTheHilltop(t *testing.T) {
	for _, high := range []float64{0.5, 0.6, 0.7, 0.8} {
		for _, ahead := range []float64{-0.05, 0, 0.02} {
			r := chair()
			r.Body.Centre = r2.Vec{X: ahead, Y: high}
			b := r.Balance()
			for _, side := range []float64{b.Back.Over, b.Forward.Over} {
				if trace := Run(r, b, Start{Tilt: side}, Options{}); trace.End == TooManySteps {
					t.Errorf("centre %v m high, %v ahead, let go at %v rad: %d steps to %v s", high, ahead, side,
						trace.Steps, trace.Duration)
				}
			}
		}
	}
}

// TestThresholdOfNothing: where the least push goes, the search ends.
func TestThresholdOfNothing(t *testing.T) {
	asked := 0
	least, none := Threshold(func(float64) bool { asked++; return true }, 100)
	if none || least > 1e-4 || asked > 40 { // 100 is halved 27 times to a millionth of it
		t.Errorf("least %v, none %v, asked %d times", least, none, asked)
	}
}
