package bench

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
)

// TestStave lays the staves as a polygon about the centre of the curve, by vectors: widths,
// bevels, where the shaped faces come to, and the chord over all.
func TestStave(t *testing.T) {
	rng := rand.New(rand.NewPCG(29, 30))
	for range 200 {
		c := Coopered{Radius: 0.2 + rng.Float64(), Staves: 1 + rng.IntN(9), Stock: 0.03 + 0.03*rng.Float64()}
		c.Chord = 2 * c.Radius * rng.Float64() * 0.9
		s, err := c.Stave()
		if err != nil {
			var size *SizeError
			if !errors.As(err, &size) || size.What != "a stock" {
				t.Fatalf("%+v: %v", c, err)
			}
			continue
		}
		whole := 2 * math.Asin(c.Chord/2/c.Radius)
		turn := whole / float64(c.Staves)
		inner := func(k int) r2.Vec { return r2.Scale(c.Radius, ahead(turn*float64(k))) }
		if got := r2.Norm(r2.Sub(inner(c.Staves), inner(0))); math.Abs(got-c.Chord) > near {
			t.Errorf("%+v: chord %v", c, got)
		}
		a, b := inner(0), inner(1)
		out := r2.Unit(r2.Add(a, b)) // square to the stave
		// the joints run along the radii: from a corner outwards until it is a stock further out
		long := c.Stock / r2.Dot(r2.Unit(a), out)
		oa, ob := r2.Add(a, r2.Scale(long, r2.Unit(a))), r2.Add(b, r2.Scale(long, r2.Unit(b)))
		middle := r2.Scale(0.5, r2.Add(a, b))
		outside := r2.Norm(middle) + c.Stock // the round face touches the flats
		for _, tt := range []struct {
			name      string
			got, want float64
		}{
			{"hollow width", s.Hollow, r2.Norm(r2.Sub(b, a))},
			{"round width", s.Round, r2.Norm(r2.Sub(ob, oa))},
			{"bevel", math.Cos(s.Bevel), r2.Dot(r2.Unit(a), out)},
			{"left", s.Thick, outside - c.Radius},
		} {
			if math.Abs(tt.got-tt.want) > near {
				t.Errorf("%+v: %s %v, want %v", c, tt.name, tt.got, tt.want)
			}
		}
	}
}

func TestStaveErrors(t *testing.T) {
	for _, c := range []Coopered{{}, {Chord: 1, Radius: 1, Staves: 0, Stock: 0.1},
		{Chord: 2.1, Radius: 1, Staves: 3, Stock: 0.1}, {Chord: 1.8, Radius: 1, Staves: 1, Stock: 0.05},
		{Chord: math.NaN(), Radius: 1, Staves: 3, Stock: 1}} {
		var size *SizeError
		if _, err := c.Stave(); !errors.As(err, &size) {
			t.Errorf("%+v: %v", c, err)
		}
	}
}

// TestSagittaRadius: an arc's own chord and rise give its radius back.
func TestSagittaRadius(t *testing.T) {
	for _, half := range []float64{0.1, 0.5, 1.5, 3} {
		got, err := SagittaRadius(2*1.3*math.Sin(half), 1.3*(1-math.Cos(half)))
		if err != nil || math.Abs(got-1.3) > 1e-12 { // 1 − cos 0.1 loses two digits
			t.Errorf("half angle %v: %v, %v", half, got, err)
		}
	}
	if _, err := SagittaRadius(1, 0); err == nil {
		t.Error("no rise has a radius")
	}
}

// TestNotchJoint by hand, in quarter inches: a leg of 6 in a seat of 7, let in by 5, with
// rabbets of 1: back 7·4, sides 2·7·5, shoulders 4·1·5 are 118; with rabbets of 2: 14 + 70 + 40.
func TestNotchJoint(t *testing.T) {
	const q = inch / 4
	n := NotchJoint{Leg: 6 * q, Seat: 7 * q, Depth: 5 * q}
	choices, err := n.RabbetChoices(math.Pi / 2)
	if err != nil || math.Abs(choices[0].GlueArea-118*q*q) > 1e-15 || math.Abs(choices[1].GlueArea-124*q*q) > 1e-15 ||
		math.Abs(choices[0].Transition-q) > 1e-15 || math.Abs(choices[1].Transition-2*q) > 1e-15 {
		t.Errorf("%+v, %v", choices, err)
	}
	if got, err := TransitionRadius(q, math.Pi/3); err != nil || math.Abs(got-2*q) > 1e-15 { // cos 60° is ½
		t.Errorf("a cove of 60 degrees: %v, %v", got, err)
	}
	for _, bad := range []NotchJoint{{}, {Leg: 1, Seat: 1, Depth: 2}, {Leg: 1, Seat: 1, Depth: 1, Rabbet: 0.5},
		{Leg: 1, Seat: 1, Depth: 1, Rabbet: -1}} {
		var size *SizeError
		if _, err := bad.GlueArea(); !errors.As(err, &size) {
			t.Errorf("%+v: %v", bad, err)
		}
	}
	var size *SizeError
	if _, err := (NotchJoint{Leg: inch, Seat: inch, Depth: inch}).RabbetChoices(1); !errors.As(err, &size) {
		t.Errorf("half an inch out of either side of an inch: %v", err)
	}
	if _, err := n.RabbetChoices(2); !errors.As(err, &size) {
		t.Errorf("a cove of 2 rad: %v", err)
	}
}
