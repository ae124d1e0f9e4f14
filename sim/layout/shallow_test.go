package layout

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"rockerwright/rocker/bench"
	"rockerwright/sim/check"
	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestTooShallowByHand: tips of 42 in, 24 in along, are 42(1 − cos(24/42)) = 6.677 in high: 6 11/16 does, 169.6 mm: 170.
func TestTooShallowByHand(t *testing.T) {
	d := reading()
	d.Rocker.Radius, d.Rocker.Nose, d.Rocker.Tail = 42*inch, 17*inch, 24*inch
	d.Rocker.Top, d.Rocker.Depth = piece.Straight, 4*inch
	for units, want := range map[quantity.System]float64{quantity.Inch: 6.6875 * inch, quantity.Metric: 0.170} {
		d.Units = units
		var wrong *piece.KeyError
		if _, err := Of(d, Options{}); !errors.As(err, &wrong) || wrong.Key != "rocker.depth" || wrong.Give != "depth" ||
			math.Abs(wrong.Value-want) > 1e-12 {
			t.Errorf("%v, want %v", err, want)
		}
	}
}

// TestTooShallowIsMended types in what is offered, for rockers of all shapes, in inches and in millimetres: it is
// drawn, and a step of the shop's scale less is not.
func TestTooShallowIsMended(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 14))
	asked := 0
	for range 400 {
		d := reading()
		d.Legs, d.Arms = nil, piece.Arms{}
		d.Units = []quantity.System{quantity.Inch, quantity.Metric}[rng.IntN(2)]
		k := &d.Rocker
		k.Top, k.Radius, k.Nose, k.Tail = piece.Straight, 0.8+rng.Float64(), 0.3+0.3*rng.Float64(), 0.3+0.4*rng.Float64()
		if rng.IntN(2) == 0 {
			k.Arcs = []piece.Arc{{Radius: 0.8 + rng.Float64(), Length: k.Nose}, {Radius: 0.8 + rng.Float64(), Length: k.Tail}}
			k.Radius, k.Tail = 0, 0
		}
		k.NoseEnd, k.TailEnd = bench.Finish(rng.IntN(3)), bench.Finish(rng.IntN(3))
		k.Sole, k.Depth = 0.01*float64(rng.IntN(2)), 0.03+0.2*rng.Float64()
		given := k.Depth
		l := Layout{}
		_, err := Of(d, Options{})
		var wrong *piece.KeyError
		if err == nil || !errors.As(err, &wrong) || wrong.Key != "rocker.depth" {
			if err != nil && !strings.Contains(err.Error(), "leg") {
				t.Fatalf("%+v: %v", k, err)
			}
			continue
		}
		asked++
		if k.Depth = wrong.Value; k.Depth <= given {
			t.Fatalf("%v was given, and %v is offered", given, k.Depth)
		}
		drawn := func() error {
			report, err := check.Balance(d)
			if err != nil {
				return err
			}
			l = Layout{Design: d, Report: report, Shop: d.Shop.Usual(d.Units)}
			return l.rocker()
		}
		if err := drawn(); err != nil {
			t.Errorf("%+v: %v does not do: %v", k, wrong.Value, err)
		}
		step := map[quantity.System]float64{quantity.Inch: inch / 16, quantity.Metric: 1e-3}[d.Units]
		if k.Depth -= step; k.Depth > given+1e-9 && drawn() == nil {
			t.Errorf("%+v: %v less than %v does", k, step, wrong.Value)
		}
	}
	if asked < 100 {
		t.Errorf("%d asked", asked)
	}
}
