package motion

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim"
)

// panics returns what a call panics with, "" where it does not.
func panics(call func()) (words string) {
	defer func() {
		if said := recover(); said != nil {
			words = fmt.Sprint(said)
		}
	}()
	call()
	return ""
}

// TestMisuse holds that what a program cannot mean is told in words, and that a threshold that
// cannot be looked for is none.
func TestMisuse(t *testing.T) {
	rig := chair()
	b := rig.Balance()
	rest := Start{Tilt: b.Rest.Tilt}
	for _, tt := range []struct {
		words string
		rig   sim.Rig
		b     sim.Balance
		start Start
		o     Options
	}{
		{"sim: a rig needs a floor edge", sim.Rig{}, b, rest, Options{}},
		{"motion: this balance has no rest to move about, its Outcome is: neutral", rig,
			sim.Balance{Outcome: sim.Neutral}, rest, Options{}},
		{"motion: nothing starts with {Tilt:NaN", rig, b, Start{Tilt: math.NaN()}, Options{}},
		{"motion: nothing starts with {Tilt:0 Rate:+Inf", rig, b, Start{Rate: math.Inf(1)}, Options{}},
		{"motion: nothing starts with", rig, b, Start{Push: Push{Force: math.NaN(), Time: 1}}, Options{}},
		{"motion: nothing starts with", rig, b, Start{Push: Push{Force: 1, Time: -1}}, Options{}},
		{"motion: nothing starts with", rig, b, Start{Push: Push{Force: math.Inf(-1), Time: 1}}, Options{}},
		{"motion: nothing starts with", rig, b, Start{Push: Push{At: r2.Vec{X: math.Inf(1)}}}, Options{}},
		{"motion: nothing starts with", rig, b, Start{Push: Push{At: r2.Vec{Y: math.Inf(1)}}}, Options{}},
		{"motion: nothing starts with", rig, b, Start{Feet: Feet{Force: math.NaN()}}, Options{}},
		{"motion: nothing starts with", rig, b, Start{Feet: Feet{At: math.Inf(-1)}}, Options{}},
		{"motion: nothing starts with", rig, b, Start{Feet: Feet{Hips: r2.Vec{X: math.NaN()}}}, Options{}},
		{"motion: nothing starts with", rig, b, Start{Feet: Feet{Hips: r2.Vec{Y: math.Inf(1)}}}, Options{}},
		{"motion: nothing starts with", rig, b, Start{Feet: Feet{Ankle: math.NaN()}}, Options{}},
		{"motion: nothing starts with", rig, b, Start{Feet: Feet{Reach: math.Inf(1)}}, Options{}},
		{"motion: nothing is followed with {Duration:-1", rig, b, rest, Options{Duration: -1}},
		{"motion: nothing is followed with", rig, b, rest, Options{Losses: Losses{Rolling: -0.001}}},
		{"motion: nothing is followed with", rig, b, rest, Options{Losses: Losses{Viscous: math.NaN()}}},
	} {
		if got := panics(func() { Run(tt.rig, tt.b, tt.start, tt.o) }); !strings.HasPrefix(got, tt.words) {
			t.Errorf("%q, want %q", got, tt.words)
		}
	}
	for _, most := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if _, none := Threshold(func(float64) bool { return true }, most); !none {
			t.Errorf("a threshold up to %v", most)
		}
	}
}
