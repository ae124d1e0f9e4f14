package check

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"

	"rockerwright/sim/piece"
	"rockerwright/sim/quantity"
)

// TestOnTips by hand: an arc of 1 m turns by its length until it stands on its tip, a flat by nothing.
func TestOnTips(t *testing.T) {
	d := plain(1, 0.4, 0.5, 80, r2.Vec{Y: 0.6}, 10)
	for name, r := range map[string]piece.Rocker{
		"one arc":  d.Rocker,
		"two arcs": {Nose: 0.4, Arcs: []piece.Arc{{Radius: 1, Length: 0.4}, {Radius: 0.5, Length: 0.25}}},
	} {
		d.Rocker = r
		b, err := Balance(d)
		if err != nil {
			t.Fatal(err)
		}
		if forward, back := b.OnTips(); math.Abs(forward-0.4) > 1e-12 || math.Abs(back-0.5) > 1e-12 {
			t.Errorf("%s stands on its tips at %v forward and %v back, want 0.4 and 0.5", name, forward, back)
		}
	}
}

// TestArcs: one radius is one arc of both ends, and of a list flats and corners are left out.
func TestArcs(t *testing.T) {
	one, two := piece.Arc{Radius: 1, Length: 0.9}, piece.Arc{Radius: 0.5, Length: 0.2}
	for _, tt := range []struct {
		drawn piece.Rocker
		want  []piece.Arc
	}{
		{piece.Rocker{Radius: 1, Nose: 0.4, Tail: 0.5}, []piece.Arc{one}},
		{piece.Rocker{Arcs: []piece.Arc{one, {Flat: 0.1}, {Turn: 0.1}, two}}, []piece.Arc{one, two}},
	} {
		b := Balanced{Design: piece.Design{Rocker: tt.drawn}}
		if got := b.Arcs(); !slices.Equal(got, tt.want) {
			t.Errorf("%+v: %v, want %v", tt.drawn, got, tt.want)
		}
	}
}

// TestRadii: 2 in or 50 mm either way, none of which is not more than zero.
func TestRadii(t *testing.T) {
	for _, tt := range []struct {
		units quantity.System
		want  []float64
	}{
		{quantity.Metric, []float64{0.95, 1, 1.05}},
		{quantity.Metric, []float64{0.04, 0.09}},
		{quantity.Inch, []float64{40 * 0.0254, 42 * 0.0254, 44 * 0.0254}},
	} {
		b := Balanced{Design: piece.Design{Units: tt.units, Rocker: piece.Rocker{Radius: tt.want[len(tt.want)-2]}}}
		same := func(a, b float64) bool { return math.Abs(a-b) < 1e-12 }
		if got := b.Radii(); !slices.EqualFunc(got, tt.want, same) {
			t.Errorf("%v, want %v", got, tt.want)
		}
	}
}

// TestRests: of two rests the one that moves more.
func TestRests(t *testing.T) {
	if a, b := (Spread{EmptyRest: 2, Rest: 1}).Rests(), (Spread{EmptyRest: 1, Rest: 3}).Rests(); a != 2 || b != 3 {
		t.Errorf("%v and %v, want 2 and 3", a, b)
	}
}

// TestYieldSpread: wood that is as much softer as other is stiffer: what they yield are reciprocals of numbers about one.
func TestYieldSpread(t *testing.T) {
	least, most := YieldSpread()
	if math.Abs(1/least+1/most-2) > 1e-12 || !(least < 1) || !(most > 1) {
		t.Errorf("from %v to %v of the yield", least, most)
	}
}
