package validation

import (
	"math"
	"os"
	"strings"
	"testing"

	"rockerwright/sim"
)

// named returns a case, computed with a fault.
func named(t *testing.T, f Fault, name string) Case {
	t.Helper()
	for _, c := range cases(f) {
		if c.Group+"/"+c.Name == name {
			return c
		}
	}
	t.Fatalf("there is no case %q", name)
	return Case{}
}

// TestFaultsTurnRed makes one ingredient wrong at a time and holds that the case that the
// package's doc names turns red, and is green without the fault.
func TestFaultsTurnRed(t *testing.T) {
	doc, err := os.ReadFile("doc.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		what  string
		fault Fault
		name  string
	}{
		{"radius too large by 0.1 %", Fault{Radius: 1e-3}, "rolling halves/solid half cylinder"},
		{"centre too high by 0.1 %", Fault{Height: 1e-3}, "rolling halves/half shell"},
		{"inertia too large by 0.1 %", Fault{Inertia: 1e-3}, "rolling halves/solid hemisphere"},
		{"gravity too large by 0.1 %", Fault{Gravity: 1e-3}, "pendulum/simple, small"},
		{"front and back swapped", Fault{Swapped: true}, "going over/tilt"},
		{"slope left out", Fault{Level: true}, "slope/off-centre, 8 degrees"},
	} {
		if _, err := named(t, Fault{}, tt.name).Check(); err != nil {
			t.Errorf("%s without a fault: %v", tt.name, err)
		}
		if _, err := named(t, tt.fault, tt.name).Check(); err == nil {
			t.Errorf("%s: %s stays green", tt.what, tt.name)
		}
		held(t, string(doc), tt.what, tt.name)
	}
	for _, tt := range []struct {
		what, name   string
		term, frozen float64 // of m·H′·ρ·θ̇² that is kept; of the inertia that is frozen
		degrees      float64
	}{
		{"m·H′·ρ·θ̇² left out", "finite rock/from 30 degrees", 0, 0, 30},
		{"inertia frozen at the rest", "finite rock/from 20 degrees", 1, 1, 20},
	} {
		c := named(t, Fault{}, tt.name)
		c.Compute = func() (float64, error) { return stepped(tt.degrees*math.Pi/180, 1, 0), nil }
		if _, err := c.Check(); err != nil {
			t.Errorf("%s by steps of the whole equation: %v", tt.name, err)
		}
		c.Compute = func() (float64, error) { return stepped(tt.degrees*math.Pi/180, tt.term, tt.frozen), nil }
		if _, err := c.Check(); err == nil {
			t.Errorf("%s: %s stays green", tt.what, tt.name)
		}
		held(t, string(doc), tt.what, tt.name)
	}
}

// held checks that the doc has a row of the fault and its case.
func held(t *testing.T, doc, what, name string) {
	t.Helper()
	for line := range strings.Lines(doc) {
		if strings.Contains(line, what) && strings.Contains(line, name) {
			return
		}
	}
	t.Errorf("the package's doc has no row %q, %q", what, name)
}

// stepped is the period of the finite rocks' chair, R = 1, h = 0.6, k = 0.35 m, by Runge-Kutta
// steps of J·θ̈ + term·m·H′·ρ·θ̇² + m·g·H′ = 0, with a part of J frozen at the rest.
func stepped(from, term, frozen float64) float64 {
	const e, k2, h = 0.4, 0.35 * 0.35, 0.6
	speeding := func(tilt, rate float64) float64 {
		height, ahead := 1-e*math.Cos(tilt), e*math.Sin(tilt)
		j := frozen*(k2+h*h) + (1-frozen)*(k2+height*height+ahead*ahead)
		return -(term*ahead*rate*rate + sim.Gravity*ahead) / j
	}
	tilt, rate, time := from, 0.0, 0.0
	const dt = 1e-4
	for { // a quarter: to the rest
		a1 := speeding(tilt, rate)
		a2 := speeding(tilt+dt/2*rate, rate+dt/2*a1)
		a3 := speeding(tilt+dt/2*rate+dt*dt/4*a1, rate+dt/2*a2)
		a4 := speeding(tilt+dt*rate+dt*dt/2*a2, rate+dt*a3)
		next := tilt + dt*rate + dt*dt/6*(a1+a2+a3)
		if next <= 0 {
			return 4 * (time + dt*tilt/(tilt-next))
		}
		tilt, rate, time = next, rate+dt/6*(a1+2*a2+2*a3+a4), time+dt
	}
}
